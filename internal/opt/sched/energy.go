package sched

// overfull asks whether some span of ticks must hold more work than its capacity, wherever jobs start within their
// bounds (energetic reasoning: Baptiste, Le Pape, Nuijten, Annals of OR 92 (1999) 305-333).
func (e *engine) overfull() bool {
	for r, room := range e.m.cap {
		sum := make([]int, len(room)+1)
		for t, c := range room {
			sum[t+1] = sum[t] + c
		}
		if e.overfullAt(r, sum) {
			return true
		}
	}
	return false
}

func (e *engine) overfullAt(r int, room []int) bool {
	users := e.m.users[r]
	works := e.worked(users)
	for _, i := range users {
		from := e.lo(i)
		for _, k := range users {
			to := e.m.shape[k].end[e.hi(k)]
			if to <= from {
				continue
			}
			e.steps += len(users)
			need := 0
			for _, j := range users {
				need += e.least(j, from, to, works[j]) * e.m.workAmount(j, r)
			}
			if need > room[to]-room[from] {
				return true
			}
		}
	}
	return false
}

// worked tabulates for each job the ticks its calendar works before each tick; nil: all.
func (e *engine) worked(jobs []int) map[int][]int {
	tables := map[int][]int{} // by calendar
	out := map[int][]int{}
	for _, j := range jobs {
		c := e.m.p.Jobs[j].Calendar
		if c == Clock {
			continue
		}
		if tables[c] == nil {
			sum := make([]int, e.m.horizon+2)
			for t, w := range e.m.shape[j].works {
				sum[t+1] = sum[t]
				if w {
					sum[t+1]++
				}
			}
			tables[c] = sum
		}
		out[j] = tables[c]
	}
	return out
}

// least is the fewest ticks that j works within a span: it has least there at its first or at its last start.
func (e *engine) least(j, from, to int, worked []int) int {
	return min(e.worksIn(j, e.lo(j), from, to, worked), e.worksIn(j, e.hi(j), from, to, worked))
}

func (e *engine) worksIn(j, s, from, to int, worked []int) int {
	a, b := max(s, from), min(e.m.shape[j].end[s], to)
	if a >= b {
		return 0
	}
	if worked == nil {
		return b - a
	}
	return worked[b] - worked[a]
}

// workAmount is what j holds of r while it works.
func (m *model) workAmount(j, r int) int {
	for _, u := range m.uses[j] {
		if u.resource == r {
			return u.working
		}
	}
	return 0
}
