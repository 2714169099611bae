package pair

// fits tells whether the bag shares one blank. Callers ask only for bags whose
// smaller parts share one.
func (c *cutter) fits(b *bag) verdict {
	if b.fit == unasked {
		c.steps++
		b.fit = c.decide(b)
	}
	return b.fit
}

func (c *cutter) decide(b *bag) verdict {
	if !c.roomy(b) {
		return no
	}
	if len(c.options(b, allSides)) > 0 {
		return yes
	}
	if !c.slantable(b) {
		return no
	}
	if b.slant = c.slanted(b); b.slant != nil {
		return yes
	}
	if b.n > 2 && !c.pinned(b) {
		return open
	}
	return no
}

// roomy is what is quick to see: areas, and the four corners.
func (c *cutter) roomy(b *bag) bool {
	var sum load
	for i := range b.n {
		if sum.add(&c.kinds[b.key[i]-1]); !c.bears(sum) {
			return false
		}
	}
	return true
}

// load is what some pieces take of a blank at least.
type load struct {
	area, grown int64
	corners     int
	shaped      bool
}

func (l *load) add(k *kind) {
	l.area += k.area
	l.grown += k.grown
	l.corners += k.corners
	l.shaped = l.shaped || k.shaped
}

// bears tells whether the load does not exclude one blank. Rectangles that lie
// a kerf apart in x or y stay disjoint when each is grown by the kerf to the
// right and to the top, within the blank grown so; slanted cuts need not.
func (c *cutter) bears(l load) bool {
	return l.area <= 2*c.w*c.h && l.corners <= 4 &&
		(l.shaped || l.grown <= (c.w+c.kerf)*(c.h+c.kerf))
}

// two tells whether pieces of kinds k and l share a blank, exactly.
func (c *cutter) two(k, l int) bool {
	a, b := &c.kinds[k], &c.kinds[l]
	var both load
	both.add(a)
	both.add(b)
	if !c.bears(both) {
		return false
	}
	if a.shaped && b.shaped || (a.shaped || b.shaped) && c.least == 0 {
		return c.twoSlanted(a, b) // straight cuts are among these
	}
	return c.twoStraight(k, l)
}

// twoSlanted tells whether a slanted cut divides the two kinds in one blank.
func (c *cutter) twoSlanted(a, b *kind) bool {
	for _, s := range a.spots {
		for _, t := range b.spots {
			if apart(s.ring, t.ring, c.kerf) {
				return true
			}
		}
	}
	return false
}
