package bar

import (
	"math"
	"slices"
)

// branch looks through all plans of at most target for the cheapest; it tells
// whether it saw them all. Every plan is made of patterns of the pool, so each
// node is a linear program over them with rows added: how many sticks hold two
// given kinds together (Vance, Computational Optimization and Applications 9,
// 1998) is a whole number, and so is how many sticks of a stock are used.
func (s *search) branch(target int64) bool {
	pool, all := s.pool(target)
	if !all {
		return false
	}
	b := &brancher{search: s, target: target, sure: true, a: newMaster(s.m, s.steps)}
	b.a.seed(pool)
	if !b.a.primal(b.a.lp) {
		return false
	}
	if left := b.drop(); left != nil && !s.plain {
		b.divePool(left)
	}
	if s.done() {
		return true
	}
	b.node(b.a.lp.clone())
	return b.sure && !s.steps.over()
}

// divePool dives on the pool alone.
func (b *brancher) divePool(left *spare) {
	x := *b.search
	x.a = b.a
	x.diveIn(&diver{search: &x, target: b.target, spare: left})
	b.take(x.best)
	if b.cost <= b.target {
		b.target = b.cost - 1
	}
}

type brancher struct {
	*search
	a      *master // over the pool
	target int64
	sure   bool // nothing was left out
}

// stop is the cost, in the program's units, that no plan of the target reaches.
func (b *brancher) stop() float64 { return float64(b.target)/b.a.unit + 10*near }

// nodeWork is what a node takes for each pattern.
const nodeWork = 50

// node solves a program whose basis may have negative values, and what is below.
func (b *brancher) node(l *program) {
	if b.steps.over() {
		b.sure = false
		return
	}
	b.steps.spend(len(l.inv) + nodeWork*len(b.a.pats))
	end := b.a.dual(l, b.stop())
	if end == optimal && l.value() <= b.stop() {
		b.split(l)
		return
	}
	if !b.above(l) {
		b.sure = false
	}
}

// split takes a plan, or makes two nodes.
func (b *brancher) split(l *program) {
	set, sum := b.fractional(l)
	if set == nil {
		b.accept(l)
		return
	}
	low := math.Floor(sum + near)
	save := l.clone()
	b.under(l, set, -1, -(low + 1))
	if b.cost <= b.target {
		b.target = b.cost - 1
	}
	b.under(save, set, 1, low)
}

// under solves the program with a row more: sign times how often the set is used
// is at most most.
func (b *brancher) under(l *program, set []int, sign, most float64) {
	row := int32(len(l.b))
	in := make(map[int]bool, len(set))
	cols := l.cols
	for _, c := range set {
		in[c] = true
		cols.rows[c] = append(cols.rows[c], row)
		cols.vals[c] = append(cols.vals[c], sign)
	}
	l.addRow(most, 1, func(c int) float64 {
		if in[c] {
			return sign
		}
		return 0
	})
	b.node(l)
	for _, c := range set {
		cols.rows[c] = cols.rows[c][:len(cols.rows[c])-1]
		cols.vals[c] = cols.vals[c][:len(cols.vals[c])-1]
	}
}

// accept takes a whole-number solution.
func (b *brancher) accept(l *program) {
	var cover []pattern
	for i, c := range l.basis {
		if c < 0 {
			continue
		}
		for range int(math.Floor(l.x[i] + 0.5)) {
			cover = append(cover, b.a.pats[c])
		}
	}
	if !b.covers(cover) {
		b.sure = false
		return
	}
	b.take(cover)
	if b.cost <= b.target {
		b.target = b.cost - 1
	} else {
		b.sure = false
	}
}

// covers counts a plan.
func (b *brancher) covers(cover []pattern) bool {
	need, left := slices.Clone(b.m.need), b.m.left()
	for _, p := range cover {
		p.within(need)
		if p.stick != lacking {
			left[p.stick]--
		}
	}
	return slices.Max(need) == 0 && slices.Min(left) >= 0
}

// fractional is a set of columns that must be used a whole number of times and
// are not, and how often they are.
func (b *brancher) fractional(l *program) (set []int, sum float64) {
	used, value := b.used(l)
	if len(used) == 0 {
		return nil, 0
	}
	if set, sum = b.byStick(used, value); set != nil {
		return set, sum
	}
	if set, sum = b.byPair(used, value); set != nil {
		return set, sum
	}
	best := -1
	for i := range used {
		if best < 0 || middle(value[i]) > middle(value[best]) {
			best = i
		}
	}
	return []int{used[best]}, value[best]
}

// used are the columns of the basis that are not whole.
func (b *brancher) used(l *program) (cols []int, value []float64) {
	whole := true
	for i, c := range l.basis {
		if c >= 0 && l.x[i] > near {
			cols, value = append(cols, c), append(value, l.x[i])
			whole = whole && middle(l.x[i]) < near
		}
	}
	if whole {
		return nil, nil
	}
	return cols, value
}

// middle is how far a number is from the nearest whole one.
func middle(v float64) float64 { return math.Abs(v - math.Floor(v+0.5)) }

// byStick branches on how many sticks of a stock are used.
func (b *brancher) byStick(used []int, value []float64) (set []int, sum float64) {
	if len(b.m.sticks) == 1 && !b.m.scarce {
		return nil, 0
	}
	sums := make([]float64, len(b.m.sticks)+1)
	for i, c := range used {
		sums[b.a.pats[c].stick+1] += value[i]
	}
	best := 0
	for s := range sums {
		if middle(sums[s]) > middle(sums[best]) {
			best = s
		}
	}
	if middle(sums[best]) < near {
		return nil, 0
	}
	for c, p := range b.a.pats {
		if p.stick+1 == best {
			set = append(set, c)
		}
	}
	return set, sums[best]
}

// byPair branches on how many sticks hold two kinds, or one kind twice.
func (b *brancher) byPair(used []int, value []float64) (set []int, sum float64) {
	n := len(b.m.sizes)
	sums := make([]float64, n*n)
	for i, c := range used {
		eachPair(b.a.pats[c], func(j, k int) { sums[j*n+k] += value[i] })
	}
	best := 0
	for i := range sums {
		if middle(sums[i]) > middle(sums[best])+near {
			best = i
		}
	}
	if middle(sums[best]) < near {
		return nil, 0
	}
	for c, p := range b.a.pats {
		has := false
		eachPair(p, func(j, k int) { has = has || j*n+k == best })
		if has {
			set = append(set, c)
		}
	}
	return set, sums[best]
}

// eachPair names the pairs of kinds in a pattern, each once, the first not after
// the second; a kind with itself where there are two of it.
func eachPair(p pattern, do func(j, k int)) {
	for i, t := range p.takes {
		if i > 0 && p.takes[i-1].kind == t.kind {
			continue
		}
		n := 0
		last := -1
		for _, u := range p.takes[i:] {
			if u.kind == t.kind {
				n += u.n
			} else if u.kind != last {
				do(t.kind, u.kind)
			}
			last = u.kind
		}
		if n > 1 {
			do(t.kind, t.kind)
		}
	}
}
