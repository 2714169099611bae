package bar

import "slices"

// remnantShare is the part of the budget that goes into the remnant at most: it is
// worth less than the money.
const remnantShare = 3

// remnant improves the best plan to leave the longest remnant, and gives a
// length that none exceeds. A plan leaves a remnant just if the pieces and one
// more of that length cost no more, so it is found by halving.
func (s *search) remnant(kerf int64) (longest int64) {
	s.steps = s.steps.part(remnantShare)
	have, none := max(s.m.leaves(s.best), kerf), kerf+1 // sizes: left now; one too many
	for _, st := range s.m.sticks {
		if st.count > 0 {
			none = max(none, st.longestRun()+1)
		}
	}
	open := none // the least that was not settled
	for have+1 < open && !s.steps.over() {
		try := have + (open-have)/2
		x := s.further(try)
		switch {
		case x.fits():
			s.best = x.withoutLast()
			s.cost = s.m.cost(s.best)
			have = max(try, s.m.leaves(s.best))
		case x.lower > s.cost:
			none, open = try, try
		default:
			open = try
		}
	}
	return none - 1 - kerf
}

// further searches with one more piece.
func (s *search) further(size int64) *search {
	x := newSearch(s.m.withExtra(size), s.steps, s.cost)
	x.run(s.a.pats)
	return x
}

// fits tells whether the plan holds the last kind for no more than is enough.
func (s *search) fits() bool {
	last := len(s.m.sizes) - 1
	for _, p := range s.best {
		for _, t := range p.takes {
			if t.kind == last {
				return p.stick != lacking && s.cost <= s.enough
			}
		}
	}
	return false
}

// withoutLast is the plan with the last kind taken out.
func (s *search) withoutLast() []pattern {
	need := slices.Clone(s.m.need)
	need[len(need)-1] = 0
	var plan []pattern
	for _, p := range s.best {
		if q := p.within(need); len(q.takes) > 0 {
			plan = append(plan, q)
		}
	}
	return plan
}

// leaves is the size of the longest remnant of a plan, its kerf included.
func (m *model) leaves(plan []pattern) int64 {
	var most int64
	used := make([]int, len(m.sticks))
	for _, p := range plan {
		if p.stick == lacking {
			continue
		}
		used[p.stick]++
		for run, size := range m.sticks[p.stick].runs {
			for _, t := range p.takes {
				if t.run == run {
					size -= m.sizes[t.kind] * int64(t.n)
				}
			}
			most = max(most, size)
		}
	}
	for s, st := range m.sticks {
		if st.price == 0 && (used[s] < st.count || !st.limited) {
			most = max(most, st.longestRun())
		}
	}
	return most
}
