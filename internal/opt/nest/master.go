package nest

import "math"

// pool keeps every filling once.
type pool struct {
	list []pattern
	seen map[string]bool
}

func newPool() *pool { return &pool{seen: map[string]bool{}} }

// add tells whether the filling is new.
func (l *pool) add(p pattern) bool {
	if p.sheet == lacking || len(p.takes) == 0 {
		return false
	}
	k := p.key()
	if l.seen[k] {
		return false
	}
	l.seen[k] = true
	l.list = append(l.list, p)
	return true
}

// master is the linear program over fillings for what is needed and in stock.
type master struct {
	m     *model
	l     *program
	need  []int
	stock []int
	cols  []pattern // of the program, behind the columns of single parts
	money float64   // one unit of cost
	free  bool      // fillings may hold more of a kind than is needed
}

func (m *model) newMaster(need, stock []int) *master {
	a := &master{m: m, need: need, stock: stock, money: 1}
	for _, s := range m.sheets {
		a.money = max(a.money, float64(s.price))
	}
	a.l = newProgram(need, stock, float64(m.lack)/a.money)
	return a
}

// take adds a filling as far as it is of use; no more of a kind counts than is
// needed.
func (a *master) take(p pattern) {
	if p.sheet == lacking || a.stock[p.sheet] == 0 {
		return
	}
	c := column{cost: float64(a.m.sheets[p.sheet].price) / a.money}
	for _, t := range p.takes {
		n := t.n
		if !a.free {
			n = min(n, a.need[t.kind])
		}
		if n > 0 {
			c.rows, c.vals = append(c.rows, int32(t.kind)), append(c.vals, float64(n))
		}
	}
	if len(c.rows) == 0 {
		return
	}
	c.rows, c.vals = append(c.rows, int32(len(a.need)+p.sheet)), append(c.vals, 1)
	a.l.add(c)
	a.cols = append(a.cols, p)
}

// maxPivots ends a linear program that does not come to an end.
const maxPivots = 4000

func (a *master) solve(st *steps) bool {
	a.l.ops = 0
	ok := a.l.solve(maxPivots)
	st.spend(a.l.ops)
	return ok
}

// duals are the worths of parts in whole weights and what a sheet must earn
// above its price because there are not enough of it.
func (a *master) duals() (worth, excess []int64) {
	for k := range a.need {
		worth = append(worth, a.m.weight(a.l.y[k]*a.money))
	}
	for s := range a.stock {
		excess = append(excess, a.m.weight(-a.l.y[len(a.need)+s]*a.money))
	}
	return worth, excess
}

// weight rounds money down to whole weights, no less than nothing and no more
// than a part that is left out.
func (m *model) weight(money float64) int64 {
	return int64(math.Floor(min(max(money, 0), float64(m.lack)) * float64(m.scale)))
}

// chosen is a filling and how often the linear program takes it.
type chosen struct {
	p pattern
	x float64
}

// taken lists the fillings of the basis, the most taken first by row order.
func (a *master) taken() (out []chosen) {
	single := len(a.need)
	for i, b := range a.l.basis {
		if b >= single && a.l.x[i] > 1e-6 {
			out = append(out, chosen{a.cols[b-single], a.l.x[i]})
		}
	}
	return out
}
