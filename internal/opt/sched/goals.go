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

// minimize finds the least of one goal. bound is proven.
func (m *model) minimize(i int, starts []int, held []GoalValue, steps int) (best []int, bound, took int) {
	g := m.p.Goals[i]
	now := m.value(g, starts)
	if now == 0 {
		return starts, 0, 0
	}
	e := newEngine(m)
	ok := e.root() && e.raise(atMost(m.jobs, m.finish(starts)), reason{}) && e.propagate()
	for k := 0; k < i && ok; k++ {
		var switches []int
		if switches, ok = e.dayRules(m.p.Goals[k]); ok {
			e.addCard(switches, held[k].Value)
			ok = e.count(e.cards[k])
		}
	}
	switches, fine := e.dayRules(g)
	if !ok || !fine || !e.propagate() {
		panic("sched: a schedule that was found breaks its own rules")
	}
	bound = 1 // some job works on some day
	if on := e.on(switches); on > bound {
		bound = on
	}
	e.addCard(switches, now)
	s := newSearch(e, e.steps+steps)
	for now > bound {
		s.undo(0)
		s.prefer = append([]int(nil), starts...)
		s.cards[i].most = now - 1
		v := exhausted
		if s.count(s.cards[i]) {
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
		for i, v := range m.values(b.start) {
			if v > limit[i] {
				b.take(j)
				b.put(j, was)
				break
			}
		}
	}
	return append([]int(nil), b.start...)
}
