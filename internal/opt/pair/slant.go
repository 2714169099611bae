package pair

// slantable tells whether a bag may be divided by slanted cuts (rule 5).
func (c *cutter) slantable(b *bag) bool {
	shaped := 0
	for _, k := range b.kinds() {
		if c.kinds[k].shaped {
			shaped++
		}
	}
	return shaped == b.n || shaped > 0 && c.least == 0
}

// pinned tells whether no piece of the bag can slide in the blank.
func (c *cutter) pinned(b *bag) bool {
	for _, k := range b.kinds() {
		if !c.kinds[k].pinned {
			return false
		}
	}
	return true
}

// slanted looks for a spot for each piece of the bag such that straight cuts in
// any direction divide them. For two pieces this finds a way if there is one:
// the places of one against the other that leave no room for the cut form a
// convex set, so if any place is free, an end of travel is.
func (c *cutter) slanted(b *bag) []int {
	ks := b.kinds()
	rings := make([][]Pt, 0, b.n)
	at := make([]int, b.n)
	if c.seat(ks, at, rings) {
		return at
	}
	return nil
}

// seat places the pieces from len(rings) on.
func (c *cutter) seat(ks, at []int, rings [][]Pt) bool {
	n := len(rings)
	if n == len(ks) {
		return n <= 2 || c.separable(rings)
	}
	for i, s := range c.kinds[ks[n]].spots {
		c.spend(n)
		if !c.clearOf(s.ring, rings) {
			continue
		}
		at[n] = i
		if c.seat(ks, at, append(rings, s.ring)) {
			return true
		}
	}
	return false
}

// clearOf tells whether a cut passes between ring and each of the others.
func (c *cutter) clearOf(ring []Pt, others [][]Pt) bool {
	for _, o := range others {
		if !apart(ring, o, c.kerf) {
			return false
		}
	}
	return true
}

// separable tells whether edge-to-edge cuts divide the rings: one cut leaves
// some on either hand, and each hand is separable in turn.
func (c *cutter) separable(rings [][]Pt) bool {
	if len(rings) < 2 {
		return true
	}
	for mask := 1; mask < 1<<len(rings); mask += 2 { // the first is on hand 1
		hands := deal(rings, mask)
		if len(hands[0]) > 0 && apart(around(hands[0]), around(hands[1]), c.kerf) &&
			c.separable(hands[0]) && c.separable(hands[1]) {
			return true
		}
	}
	return false
}

// deal divides rings by the bits of mask.
func deal(rings [][]Pt, mask int) (hands [2][][]Pt) {
	for i, r := range rings {
		hand := mask >> i & 1
		hands[hand] = append(hands[hand], r)
	}
	return hands
}

// around is the convex hull of several rings.
func around(rings [][]Pt) []Pt {
	if len(rings) == 1 {
		return rings[0]
	}
	var pts []Pt
	for _, r := range rings {
		pts = append(pts, r...)
	}
	return convex(pts)
}
