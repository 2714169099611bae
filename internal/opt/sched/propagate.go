package sched

// propagate follows all rules until nothing changes. On false the conflict is set.
func (e *engine) propagate() bool {
	for {
		for e.head < len(e.trail) {
			r := e.trail[e.head]
			side := r.side
			e.head++
			if !e.follow(side>>1, side&1 == 0) || !e.visit(side, r.from, r.to) {
				return false
			}
			for _, c := range e.cardsOf[side>>1] {
				if !e.count(e.cards[c]) {
					return false
				}
			}
		}
		if !e.timetable() {
			return false
		}
		if e.head == len(e.trail) && e.clean() {
			return true
		}
	}
}

func (e *engine) clean() bool {
	for r := range e.dirtyLo {
		if e.dirtyLo[r] < e.dirtyHi[r] {
			return false
		}
	}
	return true
}

// follow carries the rise of a side along the arcs that it concerns.
func (e *engine) follow(x int, lower bool) bool {
	if x > e.m.jobs {
		return e.enforce(e.switched[2*x]) && e.enforce(e.switched[2*x+1])
	}
	if lower {
		for _, i := range e.out[x] {
			if !e.forward(i) {
				return false
			}
		}
		return true
	}
	for _, i := range e.in[x] {
		if !e.backward(i) {
			return false
		}
	}
	return true
}

func (e *engine) enforce(arcs []int) bool {
	for _, i := range arcs {
		if !e.forward(i) || !e.backward(i) {
			return false
		}
	}
	return true
}

func (e *engine) forward(i int) bool {
	a := &e.arcs[i]
	if a.when.side >= 0 && !e.holds(a.when) {
		return e.excludes(a.when) || e.possible(a)
	}
	s := e.m.startFor(a.To, e.m.time(a.From, e.lo(a.From.Job))+a.Ticks)
	return e.raise(atLeast(a.To.Job, s), reason{byArc, i, 0})
}

func (e *engine) backward(i int) bool {
	a := &e.arcs[i]
	if a.when.side >= 0 && !e.holds(a.when) {
		return e.excludes(a.when) || e.possible(a)
	}
	s := e.m.startUntil(a.From, e.m.time(a.To, e.hi(a.To.Job))-a.Ticks)
	return e.raise(atMost(a.From.Job, s), reason{byArc, i, 0})
}

// possible switches an arc off that the bounds of its jobs no longer allow.
func (e *engine) possible(a *arc) bool {
	late := e.m.time(a.To, e.hi(a.To.Job))
	if e.m.time(a.From, e.lo(a.From.Job))+a.Ticks <= late {
		return true
	}
	e.scratch = append(e.scratch[:0], atMost(a.To.Job, e.hi(a.To.Job)),
		atLeast(a.From.Job, e.m.startFor(a.From, late-a.Ticks+1)))
	return e.raiseFor(a.when.not(), e.scratch)
}

// root makes the bounds consistent before any decision.
func (e *engine) root() bool {
	for i := range e.arcs {
		if !e.forward(i) || !e.backward(i) {
			return false
		}
	}
	return e.propagate()
}
