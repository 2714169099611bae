package bar

// filler fills runs with the largest piece that fits and, of what goes with it,
// what leaves least (minimum bin slack: Gupta and Ho, Production Planning &
// Control 10, 1999), looked for in a limited number of nodes.
type filler struct {
	m     *model
	need  []int
	nodes int
	used  []int
	best  []int
	slack int64
}

func newFiller(m *model, need []int) *filler {
	return &filler{m: m, need: need, used: make([]int, len(need)), best: make([]int, len(need))}
}

// fill finds what to take into a run of that size; it is in best.
func (f *filler) fill(size int64, nodes int) (filled int64) {
	f.nodes, f.slack = nodes, size+1
	for i, k := range f.m.order {
		if f.need[k] > 0 && f.m.sizes[k] <= size {
			f.used[k]++
			f.need[k]--
			f.extend(i, size-f.m.sizes[k])
			f.used[k]--
			f.need[k]++
			return size - f.slack
		}
	}
	clear(f.best)
	return 0
}

// extend tries all that goes into the rest from place i of the order on.
func (f *filler) extend(i int, rest int64) {
	if rest < f.slack {
		f.slack = rest
		copy(f.best, f.used)
	}
	for ; i < len(f.m.order) && f.slack > 0 && f.nodes > 0; i++ {
		k := f.m.order[i]
		if f.need[k] == 0 || f.m.sizes[k] > rest {
			continue
		}
		f.nodes--
		f.used[k]++
		f.need[k]--
		f.extend(i, rest-f.m.sizes[k])
		f.used[k]--
		f.need[k]++
	}
}

// stick fills all runs of a stick, without taking it off need.
func (f *filler) stick(s, nodes int) (p pattern, filled int64) {
	var takes []take
	for run, size := range f.m.sticks[s].runs {
		filled += f.fill(size, nodes)
		for k, n := range f.best {
			if n > 0 {
				takes = append(takes, take{k, run, n})
				f.need[k] -= n
			}
		}
	}
	for _, t := range takes {
		f.need[t.kind] += t.n
	}
	return newPattern(s, takes), filled
}

// greedy covers what is needed, each time by the stick that costs least for what
// it holds. need and left are used up. Nodes limit the look for each run.
func (m *model) greedy(need, left []int, nodes int) []pattern {
	f := newFiller(m, need)
	var plan []pattern
	for {
		p, ok := f.cheapest(left, nodes)
		if !ok {
			return append(plan, m.lackingOf(need)...)
		}
		left[p.stick]--
		for _, t := range p.takes {
			need[t.kind] -= t.n
		}
		plan = append(plan, p)
	}
}

// cheapest is the filled stick of least price for the length it holds; of equal
// ones the one that is fuller.
func (f *filler) cheapest(left []int, nodes int) (best pattern, ok bool) {
	var most int64
	for s := range f.m.sticks {
		if left[s] == 0 {
			continue
		}
		p, filled := f.stick(s, nodes)
		if filled == 0 {
			continue
		}
		if !ok || f.m.better(s, filled, best.stick, most) {
			best, most, ok = p, filled, true
		}
	}
	return best, ok
}

// better compares price for what is held, then how much of the stick is wasted.
func (m *model) better(s int, filled int64, than int, held int64) bool {
	a, b := m.sticks[s].price*held, m.sticks[than].price*filled
	if a != b {
		return a < b
	}
	return m.sticks[s].capacity()-filled < m.sticks[than].capacity()-held
}

// lackingOf is a pattern for each piece that is still needed.
func (m *model) lackingOf(need []int) []pattern {
	var plan []pattern
	for k, n := range need {
		for range n {
			plan = append(plan, pattern{lacking, []take{{k, 0, 1}}})
		}
	}
	return plan
}

// left is how many there are of each stick.
func (m *model) left() []int {
	var n []int
	for _, s := range m.sticks {
		n = append(n, s.count)
	}
	return n
}
