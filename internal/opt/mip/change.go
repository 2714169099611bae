package mip

import "slices"

// leastChange goes on from an x that misses least: to the fewest changes, the least cost, the first in order.
func (s *solver) leastChange(r *Result) {
	x := r.X
	most, cost := s.measure(x)
	miss := s.miss(x)
	for k := 0; k < most; k++ {
		found := s.leastCostOf(goal{miss, k, endless}, x)
		if s.spent {
			return
		}
		if found {
			break
		}
		r.LeastChanged = k + 1
	}
	k, _ := s.measure(x)
	if k == most {
		s.leastCostOf(goal{miss, k, cost - 1}, x)
	}
	if s.spent {
		return
	}
	_, r.LeastCost = s.measure(x)
	s.first(goal{miss, k, r.LeastCost}, x)
}

// leastCostOf finds the cheapest x of a goal and writes it; false: there is none.
func (s *solver) leastCostOf(g goal, x []int64) bool {
	found := false
	s.underCost(s.all(), 0, &g, x, &found)
	return found
}

func (s *solver) underCost(b box, depth int, g *goal, x []int64, found *bool) {
	if !s.step() || !s.tighten(b, *g) || s.needed(b, *g) > g.changed {
		return
	}
	keep := func() {
		*found = true
		copy(x, s.try)
		_, cost := s.measure(x)
		g.cost = cost - 1
	}
	for j := range s.try {
		s.try[j] = b.near(j)
	}
	if s.miss(s.try) <= g.miss {
		keep()
		return
	}
	f := s.look(b)
	if s.beyond(f, *g) {
		return
	}
	s.middle(s.try)
	if s.meets(*g) {
		keep()
		if s.leastCost(b) > g.cost {
			return
		}
	}
	j, sides := s.splitCost(b)
	if j < 0 {
		return
	}
	s.eachSide(b, depth, j, sides, func(c box) bool {
		s.underCost(c, depth+1, g, x, found)
		return true
	})
}

// beyond says that weights of the rows prove no x of the frame to meet the goal. It leaves the linear program's x behind.
func (s *solver) beyond(f *frame, g goal) bool {
	if g.cost < endless {
		s.guess(f, g, true)
		return s.costBound(f, g) > g.cost
	}
	s.guess(f, g, false)
	return s.missBound(f, g) > g.miss
}

// meets says that the tried x meets the goal.
func (s *solver) meets(g goal) bool {
	changed, cost := s.measure(s.try)
	return changed <= g.changed && cost <= g.cost && s.miss(s.try) <= g.miss
}

// splitCost chooses where to part a box: a variable that may be 0 or not, the one that does most for the row that lacks most; when all are
// decided, the widest.
func (s *solver) splitCost(b box) (int, []side) {
	row := s.lacksMost(b)
	best, most := -1, int64(-1)
	for j := range s.vars {
		if !b.open(j) {
			continue
		}
		does := int64(0)
		if row >= 0 {
			does = b.most(j, s.rows[row].A[j])
		}
		if does > most {
			best, most = j, does
		}
	}
	if best >= 0 {
		sides := parts(b.lo[best], b.hi[best])
		if row >= 0 && s.rows[row].A[best] > 0 {
			slices.Reverse(sides)
		}
		return best, sides
	}
	return s.split(b)
}

// lacksMost returns the row that lacks most at the corner nearest to 0; -1: none lacks.
func (s *solver) lacksMost(b box) int {
	best, most := -1, int64(0)
	for i := range s.rows {
		lacks := s.rows[i].B
		for _, j := range s.uses[i] {
			lacks -= s.rows[i].A[j] * b.near(j)
		}
		if lacks > most {
			best, most = i, lacks
		}
	}
	return best
}

// needed returns how many variables at least are not 0 in the x of a box that meet a goal's miss: those that are moved, and for the row that
// asks for most the fewest of the others.
func (s *solver) needed(b box, g goal) int {
	moved, more := 0, 0
	for j := range s.vars {
		if b.moved(j) {
			moved++
		}
	}
	spare := g.miss
	for i := range s.rows {
		s.act[i] = s.rows[i].most(b)
		spare -= max(0, s.rows[i].B-s.act[i])
	}
	for i := range s.rows {
		more = max(more, s.neededBy(i, b, s.rows[i].B-max(0, s.rows[i].B-s.act[i])-spare))
	}
	return moved + more
}

// neededBy returns how many of the open variables row i needs to come to what it needs.
func (s *solver) neededBy(i int, b box, need int64) int {
	helps := s.need[:0]
	for _, j := range s.uses[i] {
		a := s.rows[i].A[j]
		if b.open(j) {
			helps = append(helps, b.most(j, a))
		} else {
			need -= b.most(j, a)
		}
	}
	if need <= 0 {
		return 0
	}
	slices.Sort(helps)
	count := 0
	for k := len(helps) - 1; k >= 0 && need > 0; k-- {
		need -= helps[k]
		count++
	}
	return count
}

// first moves an x that meets a goal to the one that is first in dictionary order: one variable after the other, as low as the goal leaves it.
func (s *solver) first(g goal, x []int64) {
	for j := range s.vars {
		for !s.spent {
			b := s.all()
			for i := range j {
				b.fix(i, x[i])
			}
			b.hi[j] = x[j] - 1
			if b.lo[j] > b.hi[j] || !s.any(b, 0, g, x) {
				break
			}
		}
	}
}

// any finds an x of a box that meets a goal.
func (s *solver) any(b box, depth int, g goal, x []int64) bool {
	if !s.step() || !s.tighten(b, g) || s.needed(b, g) > g.changed {
		return false
	}
	for j := range s.try {
		s.try[j] = b.near(j)
	}
	if !s.meets(g) {
		if s.beyond(s.look(b), g) {
			return false
		}
		s.middle(s.try)
	}
	if s.meets(g) {
		copy(x, s.try)
		return true
	}
	j, sides := s.splitCost(b)
	if j < 0 {
		return false
	}
	found := false
	s.eachSide(b, depth, j, sides, func(c box) bool {
		found = s.any(c, depth+1, g, x)
		return !found
	})
	return found
}
