package sched

// pairs gives each two jobs that can never run at once a switch: on, the first ends before the second starts; off, the
// second before the first. What is learned about a switch holds at every time, so proofs get shorter.
func (e *engine) pairs() {
	m := e.m
	most := make([]int, len(m.cap))
	for r, c := range m.cap {
		for _, a := range c {
			most[r] = max(most[r], a)
		}
	}
	before := m.order()
	for i := range m.jobs {
		for j := range i {
			if m.clashing(i, j, most) && !before[i][j] && !before[j][i] && !(m.fixed[i] && m.fixed[j]) {
				e.addPair(i, j)
			}
		}
	}
}

func (e *engine) addPair(i, j int) {
	x := e.addVariable(0, 1)
	e.addConditional(arc{Lag: AtLeast(End(i), Start(j), 0), lag: -1, when: atLeast(x, 1)})
	e.addConditional(arc{Lag: AtLeast(End(j), Start(i), 0), lag: -1, when: atMost(x, 0)})
}

func (e *engine) addConditional(a arc) {
	n := len(e.arcs)
	e.arcs = append(e.arcs, a)
	e.out[a.From.Job] = append(e.out[a.From.Job], n)
	e.in[a.To.Job] = append(e.in[a.To.Job], n)
	e.switched[a.when.side] = append(e.switched[a.when.side], n)
}

// clashing: whenever both jobs run, some tick has both hold more than the resource ever has. That tick is the start of
// the later one, where it works; the other may pause there unless it never pauses or keeps the same calendar.
func (m *model) clashing(i, j int, most []int) bool {
	a, b := &m.p.Jobs[i], &m.p.Jobs[j]
	if a.Duration == 0 || b.Duration == 0 {
		return false
	}
	same := a.Calendar == b.Calendar && !a.Fixed && !b.Fixed
	for _, u := range m.uses[i] {
		for _, v := range m.uses[j] {
			if u.resource != v.resource {
				continue
			}
			first, second := a.sure(u, same), b.sure(v, same)
			if min(a.opening(u)+second, b.opening(v)+first) > most[u.resource] {
				return true
			}
		}
	}
	return false
}

// sure is what a running job holds at the start of another: all, if it can not be pausing there.
func (j *Job) sure(u hold, same bool) int {
	if same || j.Calendar == Clock || j.Whole && !j.Fixed {
		return u.working
	}
	return u.paused
}

// opening is what a job holds at its own start, which is a working tick unless it is fixed.
func (j *Job) opening(u hold) int {
	if j.Fixed && j.Calendar != Clock {
		return u.paused
	}
	return u.working
}

// order tells which jobs lags put wholly before which: order[i][j] when i always ends before j starts.
func (m *model) order() [][]bool {
	n := m.jobs
	before := make([][]bool, n)
	for i := range before {
		before[i] = make([]bool, n)
	}
	for _, a := range m.arcs {
		if a.From.End && !a.To.End && a.Ticks >= 0 && a.To.Job < n {
			before[a.From.Job][a.To.Job] = true
		}
	}
	for k := range n {
		for i := range n {
			if !before[i][k] {
				continue
			}
			for j := range n {
				before[i][j] = before[i][j] || before[k][j]
			}
		}
	}
	return before
}
