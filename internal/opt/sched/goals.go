package sched

// goals makes each goal in turn as small as it can, with the finish and the goals before it held.
func (m *model) goals(starts []int, steps int) ([]int, []GoalValue, int) {
	var out []GoalValue
	used := 0
	for i := range m.p.Goals {
		share := (steps - used) / (len(m.p.Goals) - i)
		better, bound, took := m.minimize(i, starts, out, share)
		starts = better
		used += took
		out = append(out, GoalValue{m.value(m.p.Goals[i], starts), bound})
	}
	return starts, out, used
}

// minimize finds the least of one goal, with the finish and the goals before it held. bound is proven.
func (m *model) minimize(i int, starts []int, held []GoalValue, steps int) (best []int, bound, took int) {
	e := newEngine(m)
	ok := e.root() && e.restrict() < 0 && e.raise(atMost(m.jobs, m.finish(starts)), reason{}) && e.propagate()
	for k := 0; k < i && ok; k++ {
		var switches []int
		if switches, ok = e.dayRules(m.p.Goals[k]); ok {
			ok = e.count(e.cards[e.addCard(switches, held[k].Value)])
		}
	}
	if !ok {
		panic("sched: a schedule that was found breaks its own rules")
	}
	return e.fewest(m.p.Goals[i], starts, steps)
}

// fewest goes down from the count of a goal in a schedule to the least there is under all that binds the engine.
func (e *engine) fewest(g Goal, starts []int, steps int) (best []int, bound, took int) {
	m := e.m
	now := m.value(g, starts)
	if now == 0 {
		return starts, 0, e.steps
	}
	switches, ok := e.dayRules(g)
	if !ok || !e.propagate() {
		panic("sched: a schedule that was found breaks its own rules")
	}
	bound = max(1, e.on(switches)) // some job works on some day
	c := e.addCard(switches, now)
	s := newSearch(e, e.steps+steps)
	for now > bound {
		s.undo(0)
		s.prefer = append([]int(nil), starts...)
		s.cards[c].most = now - 1
		v := exhausted
		if s.count(s.cards[c]) {
			v = s.next()
		}
		if v == exhausted {
			return starts, now, e.steps
		}
		if v == spent {
			return starts, bound, e.steps
		}
		starts = s.starts()
		now = m.value(g, starts)
	}
	return starts, bound, e.steps
}

// Fewest is the least that a goal counts in any schedule, whenever that ends. False: no schedule was found.
func Fewest(p *Problem, g Goal, o Options) (GoalValue, bool) {
	q := *p
	q.Goals = []Goal{g}
	if o.Steps <= 0 {
		o.Steps = DefaultSteps
	}
	r := Solve(&q, Options{Steps: o.Steps / 2})
	if r.Starts == nil {
		return GoalValue{}, false
	}
	m, _ := newModel(&q)
	best, bound, _ := m.ready().fewest(g, r.Starts, o.Steps/2)
	return GoalValue{m.value(g, best), bound}, true
}

func (e *engine) on(switches []int) int {
	n := 0
	for _, x := range switches {
		n += e.lo(x)
	}
	return n
}

// tidy starts jobs earlier where that costs no goal anything.
func (b *board) tidy(starts []int) []int {
	b.load(starts)
	m := b.m
	copy(b.low, b.root)
	limit := m.values(b.start)
	for _, j := range b.byTime(false) {
		if m.fixed[j] {
			continue
		}
		was := b.start[j]
		b.take(j)
		lo, _ := b.window(j)
		b.put(j, b.earliest(j, lo, was))
		if !m.within(b.start) || exceeds(m.values(b.start), limit) {
			b.take(j)
			b.put(j, was)
		}
	}
	return append([]int(nil), b.start...)
}

// exceeds asks whether any value is over its limit.
func exceeds(values, limits []int) bool {
	for i, v := range values {
		if v > limits[i] {
			return true
		}
	}
	return false
}
