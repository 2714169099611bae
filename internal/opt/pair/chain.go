package pair

// within tells whether a piece of kind l lies in the outline of one of kind k,
// in every pose: what shares a blank with k then shares one with l. A least strip
// spoils that, since a little less of a piece may leave too little to cut off.
func (c *cutter) within(k, l *kind) bool {
	if len(k.spots) > len(l.spots) || k.shaped != l.shaped || c.least > 0 && !k.shaped {
		return false
	}
	for _, s := range k.spots {
		if !l.coveredAt(s.ring) {
			return false
		}
	}
	return true
}

// coveredAt tells whether some spot of the kind lies in the ring.
func (k *kind) coveredAt(ring []Pt) bool {
	for _, t := range k.spots {
		if inside(t.ring, ring) {
			return true
		}
	}
	return false
}

// inside tells whether ring lies in the convex ring around, edges included.
func inside(ring, around []Pt) bool {
	for i, a := range around {
		b := around[(i+1)%len(around)]
		for _, p := range ring {
			if cross(a, b, p) < 0 {
				return false
			}
		}
	}
	return true
}

// chain is pieces each of which lies in all those before it, of which no three
// share a blank: if the last three do not, no three do. It begins at kind from.
func (s *solver) chain(from int) []int {
	part := make([]int, len(s.need))
	last := []int{}
	for k := from; k < len(s.need); k++ {
		kd := &s.c.kinds[k]
		if !kd.pinned || len(last) > 0 && !s.c.within(&s.c.kinds[last[len(last)-1]], kd) {
			continue
		}
		for range s.need[k] {
			if n := len(last); n > 1 && s.threeFit(last[n-2], last[n-1], k) {
				return part
			}
			last = append(last, k)
			part[k]++
		}
	}
	return part
}

// threeFit tells whether three pieces may share a blank.
func (s *solver) threeFit(i, j, k int) bool {
	if !s.shares(i, j) || !s.shares(j, k) || !s.shares(i, k) {
		return false
	}
	two := s.c.grow(s.c.ones[i], j)
	return s.c.fits(s.c.grow(two, k)) != no
}
