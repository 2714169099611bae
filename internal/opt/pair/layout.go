package pair

// laid is a piece of a kind placed in a blank.
type laid struct {
	kind, pose int
	x, y       int64
}

// rect is a panel in the blank.
type rect struct{ x, y, w, h int64 }

// layout places the pieces of a bag that fits.
func (c *cutter) layout(b *bag) []laid {
	c.fits(b) // it may be known that a bag fits before it is known how
	if b.slant == nil {
		return c.place(nil, b, allSides, 0, rect{0, 0, c.w, c.h})
	}
	var out []laid
	for i, k := range b.kinds() {
		s := c.kinds[k].spots[b.slant[i]]
		out = append(out, laid{k, s.pose, s.x, s.y})
	}
	return out
}

// place cuts the bag from the panel by its option i for sides f.
func (c *cutter) place(out []laid, b *bag, f Side, i int, r rect) []laid {
	o := c.options(b, f)[i]
	r.x, r.w = trimTo(o.x, r.x, r.w, f&Right != 0)
	r.y, r.h = trimTo(o.y, r.y, r.h, f&Top != 0)
	if o.cut == 0 {
		return append(out, c.seatPiece(int(b.key[0])-1, o.pose, r))
	}
	low, high := f&^o.cut.turned(2), f&^o.cut
	s, t := c.options(o.a, low)[o.i], c.options(o.b, high)[o.j]
	ra, rb := r, r
	if o.cut == Left {
		ra.w, rb.w = c.share(s.x, t.x, r.w)
		rb.x += r.w - rb.w
	} else {
		ra.h, rb.h = c.share(s.y, t.y, r.h)
		rb.y += r.h - rb.h
	}
	out = c.place(out, o.a, low, o.i, ra)
	return c.place(out, o.b, high, o.j, rb)
}

// trimTo takes the waste off a panel that the span says to trim. Where the high
// side is the blank's own, the low side is not, and the waste comes off there.
func trimTo(s span, at, size int64, high bool) (int64, int64) {
	if s.trim == 0 {
		return at, size
	}
	if high {
		at += size - s.trim
	}
	return at, s.trim
}

// share divides a panel's size between the two sides of a cut.
func (c *cutter) share(s, t span, size int64) (int64, int64) {
	s, _ = c.raised(s)
	t, _ = c.raised(t)
	if t.up {
		return s.v, size - c.kerf - s.v
	}
	return size - c.kerf - t.v, t.v
}

// seatPiece puts a piece in its panel, against the sides it keeps.
func (c *cutter) seatPiece(k, p int, r rect) laid {
	ps := c.kinds[k].poses[p]
	if ps.keep&Right != 0 {
		r.x += r.w - ps.w
	}
	if ps.keep&Top != 0 {
		r.y += r.h - ps.h
	}
	return laid{k, p, r.x, r.y}
}
