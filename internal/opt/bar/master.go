package bar

// master is the linear program over patterns: each kind is covered, no limited
// stick is used more often than there are. Its columns are made as needed.
type master struct {
	m     *model
	lp    *program
	pats  []pattern // of the columns
	known map[string]int
	rowOf []int   // of each limited stick; -1 for others
	unit  float64 // of money, so that costs of sticks are at most 1
	knap  knapsack
	sack  knapsack // for what is left after a first run
	steps *steps
}

// steps is the budget.
type steps struct{ used, limit, work int }

// part is a budget of a part of the whole from here on.
func (s *steps) part(of int) *steps {
	return &steps{used: s.used, limit: min(s.limit, s.used+s.limit/of), work: s.work}
}

// stepWork is how many elementary operations make a step.
const stepWork = 4096

func (s *steps) spend(work int) {
	s.work += work
	s.used += s.work / stepWork
	s.work %= stepWork
}

func (s *steps) over() bool { return s.used >= s.limit }

func newMaster(m *model, st *steps) *master {
	a := &master{m: m, known: map[string]int{}, unit: 1, steps: st}
	for _, s := range m.sticks {
		a.unit = max(a.unit, float64(s.price))
		a.rowOf = append(a.rowOf, -1)
	}
	a.lp = &program{cols: &columns{}}
	for k, n := range m.need {
		col := a.add(pattern{lacking, []take{{k, 0, 1}}})
		a.lp.begin(float64(n), -1, col)
	}
	for s, st := range m.sticks {
		if st.limited {
			a.rowOf[s] = len(a.lp.b)
			a.lp.begin(float64(st.count), 1, ^len(a.lp.b))
		}
	}
	a.lp.identity()
	return a
}

// add makes a column of a pattern; -1 where it is there already.
func (a *master) add(p pattern) int {
	key := p.key()
	if _, ok := a.known[key]; ok {
		return -1
	}
	a.steps.spend(addWork)
	var rows []int32
	var vals []float64
	for i, t := range p.takes {
		if i > 0 && p.takes[i-1].kind == t.kind {
			vals[len(vals)-1] += float64(t.n)
			continue
		}
		rows, vals = append(rows, int32(t.kind)), append(vals, float64(t.n))
	}
	if p.stick != lacking && a.rowOf[p.stick] >= 0 {
		rows, vals = append(rows, int32(a.rowOf[p.stick])), append(vals, 1)
	}
	col := a.lp.cols.add(float64(a.m.price(p))/a.unit, rows, vals)
	a.known[key] = col
	a.pats = append(a.pats, p)
	return col
}

// seed adds what a plan uses.
func (a *master) seed(plan []pattern) {
	for _, p := range plan {
		a.add(p)
	}
}

// spent counts what the simplex did since it had that many pivots.
func (a *master) spent(l *program, since int) {
	m := len(l.b)
	a.steps.spend((l.pivots - since) * (m*m + 4*len(l.cols.cost)))
}

// primal and dual run the simplex within what is left to spend.
func (a *master) primal(l *program) bool {
	since := l.pivots
	ok := l.primal(a.pivotsLeft(l))
	a.spent(l, since)
	return ok
}

func (a *master) dual(l *program, stop float64) ending {
	since := l.pivots
	e := l.dual(a.pivotsLeft(l), stop)
	a.spent(l, since)
	return e
}

// hurry is how many pivots for each row are enough where another place will do
// as well.
const hurry = 4

func (a *master) hurried(l *program, run func(limit int) bool) bool {
	since := l.pivots
	ok := run(min(hurry*len(l.b), a.pivotsLeft(l)))
	a.spent(l, since)
	return ok
}

func (a *master) pivotsLeft(l *program) int {
	m := len(l.b)
	return max(a.steps.limit-a.steps.used, 0)*stepWork/(m*m+4*len(l.cols.cost)+1) + 1
}
