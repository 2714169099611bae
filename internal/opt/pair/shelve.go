package pair

// Many small pieces to a blank are more than bags hold. Here each piece goes
// into the panel that it leaves the least of, and the rest of the panel is cut
// in two; four rules are tried.

// panel is a part of a blank that is still free.
type panel struct {
	rect
	sides Side // those that are the blank's own
}

// shelf is a blank being filled.
type shelf struct {
	free []panel
	laid []laid
}

// shelve offers the best of the rules.
func (s *solver) shelve() {
	for _, bySide := range []bool{false, true} {
		for _, upright := range []bool{false, true} {
			var blanks [][]laid
			for _, sh := range s.fill(bySide, upright) {
				blanks = append(blanks, sh.laid)
			}
			s.offerLaid(blanks)
		}
	}
}

// fill puts the pieces in, by falling area or by falling longer side, and cuts
// what is left upright or level first.
func (s *solver) fill(bySide, upright bool) []*shelf {
	size := func(k int) int64 { return s.c.kinds[k].area }
	if bySide {
		size = func(k int) int64 { return max(s.c.kinds[k].poses[0].w, s.c.kinds[k].poses[0].h) }
	}
	var shelves []*shelf
	for _, k := range s.bySize(size) {
		for range s.need[k] {
			shelves = s.put(shelves, k, upright)
		}
	}
	return shelves
}

// put finds room for a piece of kind k, in a new blank if need be.
func (s *solver) put(shelves []*shelf, k int, upright bool) []*shelf {
	for _, sh := range shelves {
		if s.c.set(sh, k, upright) {
			return shelves
		}
	}
	sh := &shelf{free: []panel{{rect{0, 0, s.c.w, s.c.h}, allSides}}}
	if !s.c.set(sh, k, upright) { // a piece with a Shape that LeastStrip does not bind
		sh.laid, sh.free = s.c.layout(s.c.ones[k]), nil
	}
	return append(shelves, sh)
}

// set puts a piece of kind k into the panel that fits it closest.
func (c *cutter) set(sh *shelf, k int, upright bool) bool {
	at, pose, least := -1, 0, int64(0)
	for i, p := range sh.free {
		for j, ps := range c.kinds[k].poses {
			if !c.takes(p, ps) {
				continue
			}
			if waste := min(p.w-ps.w, p.h-ps.h); at < 0 || waste < least {
				at, pose, least = i, j, waste
			}
		}
	}
	if at < 0 {
		return false
	}
	p := sh.free[at]
	sh.free = append(sh.free[:at], sh.free[at+1:]...)
	l, rest := c.cutOut(p, c.kinds[k].poses[pose], upright)
	l.kind, l.pose = k, pose
	sh.laid, sh.free = append(sh.laid, l), append(sh.free, rest...)
	return true
}

// takes tells whether a pose can be cut from the panel.
func (c *cutter) takes(p panel, ps pose) bool {
	return p.sides.has(ps.keep) &&
		c.cuttable(ps.w, p.w, ps.keep.has(Left|Right)) &&
		c.cuttable(ps.h, p.h, ps.keep.has(Bottom|Top))
}

func (c *cutter) cuttable(size, panel int64, span bool) bool {
	return size == panel || size < panel && !span && size >= c.least && panel-size >= c.least
}

// cutOut places the pose in a corner of the panel and gives the panels left.
func (c *cutter) cutOut(p panel, ps pose, upright bool) (laid, []panel) {
	x, right := low(p.sides, ps.keep, Left)
	y, top := low(p.sides, ps.keep, Bottom)
	beside, over := p, p
	beside.w, over.h = p.w-ps.w-c.kerf, p.h-ps.h-c.kerf
	if upright {
		over.w = ps.w
	} else {
		beside.h = ps.h
	}
	var l laid
	l.x, beside.x, over.x = ranks(p.x, p.w, ps.w, beside.w, over.w, x)
	l.y, over.y, beside.y = ranks(p.y, p.h, ps.h, over.h, beside.h, y)
	beside.sides &^= right.turned(2)
	over.sides &^= top.turned(2)
	if upright && ps.w < p.w {
		over.sides &^= right
	}
	if !upright && ps.h < p.h {
		beside.sides &^= top
	}
	return l, c.usable(beside, over)
}

// low tells whether a piece lies against the low side (Left or Bottom) of its
// panel, and which side is then away from it. A piece that need not keep a side
// of the blank leaves it to others.
func low(sides, keep, side Side) (bool, Side) {
	other := side.turned(2)
	if keep&other != 0 && keep&side == 0 || keep&(side|other) == 0 && sides&(side|other) == side {
		return false, side
	}
	return true, other
}

// ranks places a piece, the panel beyond it and the panel in line with it along
// one axis of a panel that begins at and has the full size.
func ranks(at, full, piece, beyond, inline int64, low bool) (p, b, i int64) {
	if low {
		return at, at + full - beyond, at
	}
	return at + full - piece, at, at + full - inline
}

// usable drops panels that are too small to cut from.
func (c *cutter) usable(panels ...panel) (out []panel) {
	for _, p := range panels {
		if p.w > 0 && p.h > 0 && p.w >= c.least && p.h >= c.least {
			out = append(out, p)
		}
	}
	return out
}
