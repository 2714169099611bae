package sched

// reshape updates what a job holds whatever happens, when one of its bounds moves between from and to.
func (e *engine) reshape(side, from, to, sign int) {
	j := side >> 1
	if j >= e.m.jobs || len(e.m.uses[j]) == 0 {
		return
	}
	end := e.m.shape[j].end
	if side&1 == 0 {
		e.shift(j, max(e.hi(j), end[from]), end[to], sign)
	} else {
		e.shift(j, -to, min(-from, end[e.lo(j)]), sign)
	}
}

// shift adds what j holds between two ticks to the load, or takes it off.
func (e *engine) shift(j, a, b, sign int) {
	if a >= b {
		return
	}
	for _, u := range e.m.uses[j] {
		load, room := e.load[u.resource], e.m.cap[u.resource]
		for t := a; t < b; t++ {
			load[t] += sign * e.m.amount(j, u, t)
			if load[t] > room[t] && sign > 0 {
				e.overR, e.overT = u.resource, t
			}
		}
		if sign > 0 {
			e.dirtyLo[u.resource] = min(e.dirtyLo[u.resource], a)
			e.dirtyHi[u.resource] = max(e.dirtyHi[u.resource], b)
		}
	}
}

// timetable moves starts off ticks where others leave too little. It stops after the first resource that changed
// something, so that cheaper rules go on first.
func (e *engine) timetable() bool {
	if e.overR >= 0 {
		e.conflict = e.covering(e.overR, e.overT, -1, e.m.cap[e.overR][e.overT]+1, e.conflict[:0])
		return false
	}
	for r := range e.load {
		lo, hi := e.dirtyLo[r], e.dirtyHi[r]
		if lo >= hi {
			continue
		}
		e.dirtyLo[r], e.dirtyHi[r] = len(e.load[r]), 0
		before := len(e.trail)
		for _, j := range e.m.users[r] {
			if !e.set(j) && !e.settle(j, r, lo, hi) {
				return false
			}
		}
		if len(e.trail) > before {
			return true
		}
	}
	return true
}

// settle tightens the bounds of j against the load of r, where it has changed between two ticks.
func (e *engine) settle(j, r, lo, hi int) bool {
	end := e.m.shape[j].end
	if e.lo(j) < hi && end[e.lo(j)] > lo {
		for !e.set(j) {
			t := e.clash(j, r, e.lo(j), min(end[e.lo(j)], e.hi(j)), true)
			if t < 0 {
				break
			}
			if !e.push(j, r, t, atLeast(j, t+1), atLeast(j, e.m.shape[j].firstEnder(t+1))) {
				return false
			}
		}
	}
	if e.hi(j) < hi && end[e.hi(j)] > lo {
		for !e.set(j) {
			t := e.clash(j, r, max(e.hi(j), end[e.lo(j)]), end[e.hi(j)], false)
			if t < 0 {
				break
			}
			if !e.push(j, r, t, atMost(j, e.m.shape[j].lastEnder(t)), atMost(j, t)) {
				return false
			}
		}
	}
	return true
}

// push makes l true because j must not run at t: own says that it would if l were false.
func (e *engine) push(j, r, t int, l, own lit) bool {
	need := e.m.cap[r][t] - e.m.holds(j, r, t) + 1
	e.scratch = e.covering(r, t, j, need, append(e.scratch[:0], own))
	return e.raiseFor(l, e.scratch)
}

// clash is the last (or first) tick from a to before b where j finds too little of r, or -1.
func (e *engine) clash(j, r, a, b int, last bool) int {
	load, room := e.load[r], e.m.cap[r]
	for i := a; i < b; i++ {
		t := i
		if last {
			t = a + b - 1 - i
		}
		if h := e.m.holds(j, r, t); h > 0 && load[t]+h > room[t] {
			return t
		}
	}
	return -1
}

// covering appends lits by which jobs other than skip hold need or more of r at t; jobs that are not needed are left out.
func (e *engine) covering(r, t, skip, need int, to []lit) []lit {
	surplus := e.load[r][t] - need
	if skip >= 0 && e.covers(skip, t) {
		surplus -= e.m.holds(skip, r, t)
	}
	for _, i := range e.m.users[r] {
		if i == skip || !e.covers(i, t) {
			continue
		}
		h := e.m.holds(i, r, t)
		if h <= surplus {
			surplus -= h
			continue
		}
		if h > 0 {
			s := e.m.shape[i]
			to = append(to, atLeast(i, s.firstEnder(t+1)), atMost(i, s.prevStart(t)))
		}
	}
	return to
}

// covers: j runs at t whenever it starts within its bounds.
func (e *engine) covers(j, t int) bool { return e.hi(j) <= t && t < e.m.shape[j].end[e.lo(j)] }
