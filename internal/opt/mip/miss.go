package mip

import "slices"

// leastMiss finds an x that misses least and writes it; it returns the miss that is proven the least.
func (s *solver) leastMiss(x []int64) int64 {
	best := s.miss(x)
	root := s.all()
	floor := int64(0)
	if best > 0 {
		floor = s.underMiss(root, 0, x, &best)
	}
	if s.spent {
		return min(floor, best)
	}
	return best
}

// underMiss searches a box for an x that misses less than best, and returns what the box is known to miss by at least.
func (s *solver) underMiss(b box, depth int, x []int64, best *int64) int64 {
	if !s.step() {
		return 0
	}
	g := goal{*best - 1, len(s.vars), endless}
	if !s.tighten(b, g) {
		return *best
	}
	f := s.look(b)
	s.guess(f, g, false)
	floor := s.missBound(f, g)
	if floor >= *best {
		return floor
	}
	s.middle(s.try)
	s.improve(x, best)
	if floor >= *best {
		return floor
	}
	j, sides := s.split(b)
	if j < 0 {
		return floor
	}
	s.eachSide(b, depth, j, sides, func(c box) bool {
		s.underMiss(c, depth+1, x, best)
		return *best > floor
	})
	return floor
}

// eachSide goes through the parts of a box until one asks to stop.
func (s *solver) eachSide(b box, depth, j int, sides []side, visit func(box) bool) {
	for _, p := range sides {
		c := s.at(depth + 1)
		c.set(b)
		c.lo[j], c.hi[j] = p.lo, p.hi
		if !visit(c) || s.spent {
			return
		}
	}
}

// improve moves the tried x along one variable after the other while that misses less, and keeps it where it is the best so far.
func (s *solver) improve(x []int64, best *int64) {
	miss := s.miss(s.try)
	for range 4 {
		before := miss
		for j := range s.vars {
			miss = s.slide(j, miss)
		}
		if miss == before {
			break
		}
	}
	if miss < *best {
		*best = miss
		copy(x, s.try)
	}
}

// slide puts variable j where the tried x misses least.
func (s *solver) slide(j int, miss int64) int64 {
	ones := s.ones[:0]
	was := s.try[j]
	s.try[j] = 0
	for i := range s.rows {
		lacks := s.rows[i].B
		for _, k := range s.uses[i] {
			lacks -= s.rows[i].A[k] * s.try[k]
		}
		ones = append(ones, One{s.rows[i].A[j], lacks})
	}
	s.ones = ones
	f := Single(s.vars[j], ones)
	s.try[j] = was
	if f.Miss < miss {
		s.try[j] = f.X
		return f.Miss
	}
	return miss
}

// split parts a box where the linear program leaves a variable between two whole numbers, in the one whose steps do most to the rows; where it
// leaves none, the widest. -1: the box is a point.
func (s *solver) split(b box) (int, []side) {
	best, most := -1, 0.0
	for j := range s.vars {
		if b.lo[j] == b.hi[j] {
			continue
		}
		over := s.x[j] - float64(floor(s.x[j]))
		over = min(over, 1-over)
		if over < between {
			over = 0
		}
		wide := float64(b.hi[j]-b.lo[j]) / maxTotal
		if does := (over + wide) / s.scale[j]; does > most {
			best, most = j, does
		}
	}
	if best < 0 {
		return -1, nil
	}
	at := floor(s.x[best])
	sides := halves(b.lo[best], b.hi[best], at)
	if s.x[best]-float64(at) > 0.5 {
		slices.Reverse(sides)
	}
	return best, sides
}

// between is how far from a whole number a guess counts as lying between two.
const between = 1e-6
