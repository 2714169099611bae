package mip

// box is the x between two corners.
type box struct{ lo, hi []int64 }

func newBox(n int) box { return box{make([]int64, n), make([]int64, n)} }

func (b box) set(from box) {
	copy(b.lo, from.lo)
	copy(b.hi, from.hi)
}

// near returns the nearest to 0 of variable j.
func (b box) near(j int) int64 { return max(b.lo[j], min(b.hi[j], 0)) }

// moved says that variable j is not 0 anywhere in the box.
func (b box) moved(j int) bool { return b.lo[j] > 0 || b.hi[j] < 0 }

// open says that variable j may be 0 or not.
func (b box) open(j int) bool { return !b.moved(j) && b.lo[j] < b.hi[j] }

func (b box) fix(j int, x int64) { b.lo[j], b.hi[j] = x, x }

// most returns the greatest a·x of variable j.
func (b box) most(j int, a int64) int64 { return max(a*b.lo[j], a*b.hi[j]) }

// goal is what a box is searched for.
type goal struct {
	miss    int64 // at most this missed
	changed int   // at most so many changed
	cost    int64 // at most this spent
}

const endless = 1 << 60

// rounds bounds how often the rows are gone through for one box; the search goes on with what
// they have shown by then.
const rounds = 24

// tighten narrows the box to what the goal leaves; false: nothing.
func (s *solver) tighten(b box, g goal) bool {
	for range rounds {
		again, ok := s.byCount(b, g)
		if !ok {
			return false
		}
		more, ok := s.byCost(b, g)
		if !ok {
			return false
		}
		rows, ok := s.byRows(b, g)
		if !ok {
			return false
		}
		if !again && !more && !rows {
			break
		}
	}
	return true
}

// byCount holds what is not yet moved at 0 where no more may be.
func (s *solver) byCount(b box, g goal) (changed, ok bool) {
	moved := 0
	for j := range b.lo {
		if b.moved(j) {
			moved++
		}
	}
	if moved < g.changed {
		return false, true
	}
	for j := range b.lo {
		if b.open(j) {
			b.fix(j, 0)
			changed = true
		}
	}
	return changed, moved == g.changed
}

// byCost takes off the steps that cost too much beside the least of the others.
func (s *solver) byCost(b box, g goal) (changed, ok bool) {
	if g.cost >= endless {
		return false, true
	}
	left := g.cost - s.leastCost(b)
	if left < 0 {
		return false, false
	}
	for j, v := range s.vars {
		if v.Cost == 0 {
			continue
		}
		near := b.near(j)
		reach := max(near, -near) + left/v.Cost
		changed = b.raise(j, -reach) || changed
		changed = b.lower(j, reach) || changed
	}
	return changed, true
}

func (s *solver) leastCost(b box) (cost int64) {
	for j, v := range s.vars {
		near := b.near(j)
		cost += v.Cost * max(near, -near)
	}
	return cost
}

func (b box) raise(j int, x int64) bool {
	if x <= b.lo[j] {
		return false
	}
	b.lo[j] = x
	return true
}

func (b box) lower(j int, x int64) bool {
	if x >= b.hi[j] {
		return false
	}
	b.hi[j] = x
	return true
}

// byRows takes off what leaves a row too short beside the others at their best.
func (s *solver) byRows(b box, g goal) (changed, ok bool) {
	spare := g.miss
	for i := range s.rows {
		s.act[i] = s.rows[i].most(b)
		spare -= max(0, s.rows[i].B-s.act[i])
	}
	if spare < 0 {
		return false, false
	}
	for i := range s.rows {
		r := &s.rows[i]
		need := r.B - max(0, r.B-s.act[i]) - spare
		if r.least(b) >= need {
			continue
		}
		for _, j := range s.uses[i] {
			a := r.A[j]
			rest := need - (s.act[i] - b.most(j, a))
			moved := false
			if a > 0 {
				moved = b.raise(j, ceilDiv(rest, a))
			} else {
				moved = b.lower(j, floorDiv(rest, a))
			}
			if b.lo[j] > b.hi[j] {
				return true, false
			}
			if moved {
				changed = true
				s.act[i] = r.most(b)
			}
		}
	}
	return changed, true
}

func (r *Row) most(b box) (sum int64) {
	for j, a := range r.A {
		if a != 0 {
			sum += b.most(j, a)
		}
	}
	return sum
}

func (r *Row) least(b box) (sum int64) {
	for j, a := range r.A {
		if a != 0 {
			sum += min(a*b.lo[j], a*b.hi[j])
		}
	}
	return sum
}
