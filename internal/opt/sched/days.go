package sched

import "sort"

// touching is the starts from a to b with which j works on a day, or is done on it where it takes no time. b < a: none.
func (m *model) touching(j int, day Span) (a, b int) {
	sh := m.shape[j]
	if m.p.Jobs[j].Duration == 0 {
		return sh.nextStart(day.From), sh.prevStart(day.To - 1)
	}
	first, last := day.From, day.To-1
	if sh.works != nil {
		for first < day.To && !sh.works[first] {
			first++
		}
		for last >= day.From && !sh.works[last] {
			last--
		}
		if first > last {
			return 0, -1
		}
	}
	return sh.firstEnder(first + 1), sh.prevStart(last)
}

// daysOf gives for each day of a goal whether it counts.
func (m *model) daysOf(g Goal, starts []int) []bool {
	used := make([]bool, len(m.days))
	for _, j := range g.Jobs {
		s := starts[j]
		first := sort.Search(len(m.days), func(d int) bool { return m.days[d].To > s })
		for d := first; d < len(m.days) && m.days[d].From <= m.shape[j].end[s]; d++ { // it can touch no other
			if !used[d] {
				a, b := m.touching(j, m.days[d])
				used[d] = a <= s && s <= b
			}
		}
	}
	if g.Kind == DaysSpanned {
		fillBetween(used)
	}
	return used
}

func fillBetween(used []bool) {
	first, last := -1, -1
	for d, u := range used {
		if u {
			last = d
			if first < 0 {
				first = d
			}
		}
	}
	for d := max(first, 0); d <= last; d++ {
		used[d] = true
	}
}

func (m *model) value(g Goal, starts []int) int {
	n := 0
	for _, u := range m.daysOf(g, starts) {
		if u {
			n++
		}
	}
	return n
}

func (m *model) values(starts []int) []int {
	var out []int
	for _, g := range m.p.Goals {
		out = append(out, m.value(g, starts))
	}
	return out
}

// within asks whether a schedule keeps the limits.
func (m *model) within(starts []int) bool {
	for _, l := range m.p.Limits {
		if m.value(l.Goal, starts) > l.Most {
			return false
		}
	}
	return true
}

// restrict makes the limits rules of the search, and gives the first that can not be kept, or -1.
func (e *engine) restrict() int {
	for i, l := range e.m.p.Limits {
		switches, ok := e.dayRules(l.Goal)
		if !ok || !e.count(e.cards[e.addCard(switches, l.Most)]) || !e.propagate() {
			return i
		}
	}
	return -1
}

// dayRules gives a goal a switch for each day, on when the day counts, and rules from starts to switches. False: no
// schedule is left.
func (e *engine) dayRules(g Goal) (switches []int, ok bool) {
	for range e.m.days {
		switches = append(switches, e.addVariable(0, 1))
	}
	for _, j := range g.Jobs {
		for d, day := range e.m.days {
			if a, b := e.m.touching(j, day); a <= b && !e.addClause(atMost(j, a-1), atLeast(j, b+1), atLeast(switches[d], 1)) {
				return nil, false
			}
		}
	}
	return switches, g.Kind != DaysSpanned || e.between(switches)
}

// between has every day count that lies between two that count: begun says that one has been, coming that one will be.
func (e *engine) between(days []int) bool {
	var begun, coming []int
	for range days {
		begun, coming = append(begun, e.addVariable(0, 1)), append(coming, e.addVariable(0, 1))
	}
	for d, x := range days {
		ok := e.addClause(atMost(x, 0), atLeast(begun[d], 1)) && e.addClause(atMost(x, 0), atLeast(coming[d], 1)) &&
			e.addClause(atMost(begun[d], 0), atMost(coming[d], 0), atLeast(x, 1))
		if d > 0 {
			ok = ok && e.addClause(atMost(begun[d-1], 0), atLeast(begun[d], 1)) &&
				e.addClause(atMost(coming[d], 0), atLeast(coming[d-1], 1))
		}
		if !ok {
			return false
		}
	}
	return true
}
