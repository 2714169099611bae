package pair

// options lists the ways to cut a bag from a panel of which the sides f are the
// blank's own, with cuts parallel to the sides.
func (c *cutter) options(b *bag, f Side) []option {
	if b.done[f] {
		return b.opts[f]
	}
	var opts []option
	if b.n == 1 {
		opts = c.pieceOptions(int(b.key[0])-1, f)
	} else {
		for _, s := range c.split(b) {
			opts = c.join(opts, f, Left, s[0], s[1])
			opts = c.join(opts, f, Bottom, s[0], s[1])
			if f == allSides && len(opts) > 0 {
				break // the whole blank has one size: one way is all ways
			}
		}
	}
	b.opts[f], b.done[f] = opts, true
	return opts
}

// pieceOptions lists the ways to trim a panel to one piece of kind k.
func (c *cutter) pieceOptions(k int, f Side) []option {
	var opts []option
	for i, p := range c.kinds[k].poses {
		if !f.has(p.keep) {
			continue
		}
		x, okX := c.single(p.w, f.has(Left|Right), c.w)
		y, okY := c.single(p.h, f.has(Bottom|Top), c.h)
		if okX && okY {
			opts = c.spread(opts, f, option{x: x, y: y, pose: i})
		}
	}
	return opts
}

// join adds the ways to cut a panel in two with a on the low side and b on the
// high side. cut is Left for an upright cut and Bottom for a level one.
func (c *cutter) join(opts []option, f, cut Side, a, b *bag) []option {
	high := cut.turned(2)
	as := c.options(a, f&^high)
	if len(as) == 0 {
		return opts
	}
	bs := c.options(b, f&^cut)
	c.spend(len(as) * len(bs))
	for i := range as {
		for j := range bs {
			o := option{cut: cut, a: a, b: b, i: i, j: j}
			if c.meet(&o, f, as[i], bs[j]) {
				opts = c.spread(opts, f, o)
			}
		}
	}
	return opts
}

// meet works out the panels from which o cuts s and t.
func (c *cutter) meet(o *option, f Side, s, t option) bool {
	var ok1, ok2 bool
	if o.cut == Left {
		o.x, ok1 = c.along(s.x, t.x, f.has(Left|Right), c.w)
		o.y, ok2 = across(s.y, t.y)
	} else {
		o.x, ok2 = across(s.x, t.x)
		o.y, ok1 = c.along(s.y, t.y, f.has(Bottom|Top), c.h)
	}
	return ok1 && ok2
}

// spread adds o with and without waste taken off the panel first.
func (c *cutter) spread(opts []option, f Side, o option) []option {
	ys := c.forms(o.y, f.has(Bottom|Top))
	for _, x := range c.forms(o.x, f.has(Left|Right)) {
		for _, y := range ys {
			if x.v <= c.w && y.v <= c.h {
				o.x, o.y = x, y
				opts = keepBest(opts, o)
			}
		}
	}
	return opts
}

// twoStraight tells whether pieces of kinds k and l share a blank with cuts
// parallel to its sides.
func (c *cutter) twoStraight(k, l int) bool {
	a, b := c.ones[k], c.ones[l]
	for _, cut := range []Side{Left, Bottom} {
		if c.joins(cut, a, b) || c.joins(cut, b, a) {
			return true
		}
	}
	return false
}

// joins tells whether the blank is cut in two with a on the low side.
func (c *cutter) joins(cut Side, a, b *bag) bool {
	o := option{cut: cut}
	for _, s := range c.options(a, allSides&^cut.turned(2)) {
		for _, t := range c.options(b, allSides&^cut) {
			if c.meet(&o, allSides, s, t) {
				return true
			}
		}
	}
	return false
}
