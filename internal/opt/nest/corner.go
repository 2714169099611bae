package nest

// corners lays parts one after the other into a corner of what is free in sheets
// that are all open from the start, each time cutting the rest of the free
// rectangle in two. One run is so quick that thousands of orders of the parts can
// be tried: those that found no place come sooner the next time.
type corners struct {
	m     *model
	open  []int  // sheets
	kinds []kind // of the model, and an extra one that is not cut
	roots []int  // by open sheet: its first corner
	order []int  // kinds, one for each part
	laid  []corner
	gaps  []gap
	left  []int // kinds that found no place
	seed  uint64
	ops   int
}

// corner is a part with what lies beside it and above it. The cut goes first.
type corner struct {
	kind         int
	turned       bool
	w, h         int64
	cut          Cut
	beside, over int // corners, or none
}

const none = -1

// gap is a free rectangle: a sheet, or beside or over a corner.
type gap struct {
	w, h  int64
	sheet int // of open, where nothing lies in it yet; else none
	by    int
	over  bool
}

// habit is how one run chooses.
type habit struct {
	fit   int // what is to be small: the lesser side that is left, the greater, the area
	split int // which of the two rectangles that are left is to be whole
}

const habits = 9

func habitOf(n int) habit { return habit{n % 3, n / 3 % 3} }

// areaShift keeps sums of areas within a word.
const areaShift = 16

// lay runs through the order. It gives the area that found no place, in coarse
// units and one more for each part: nothing just if all lie.
func (c *corners) lay(b habit) (missed int64) {
	c.laid, c.gaps, c.left = c.laid[:0], c.gaps[:0], c.left[:0]
	for i, s := range c.open {
		c.roots[i] = none
		c.gaps = append(c.gaps, gap{c.m.sheets[s].w, c.m.sheets[s].h, i, none, false})
	}
	for _, k := range c.order {
		if !c.put(k, b) {
			c.left = append(c.left, k)
			missed += c.kinds[k].w*c.kinds[k].h>>areaShift + 1
		}
	}
	return missed
}

// put lays a part into the gap that it fits best.
func (c *corners) put(kind int, b habit) bool {
	q := c.kinds[kind]
	best, turned, least := none, false, int64(-1)
	c.ops += len(c.gaps)
	for i, g := range c.gaps {
		if q.w <= g.w && q.h <= g.h {
			if v := b.rest(g.w-q.w, g.h-q.h, g, q); best == none || v < least {
				best, turned, least = i, false, v
			}
		}
		if q.turns && q.h <= g.w && q.w <= g.h {
			if v := b.rest(g.w-q.h, g.h-q.w, g, q); best == none || v < least {
				best, turned, least = i, true, v
			}
		}
	}
	if best == none {
		return false
	}
	c.cut(best, kind, turned, b)
	return true
}

// rest is what a fit leaves.
func (b habit) rest(dw, dh int64, g gap, q kind) int64 {
	switch b.fit {
	case 0:
		return min(dw, dh)
	case 1:
		return max(dw, dh)
	}
	return g.w*g.h - q.w*q.h
}

// cut lays a part in the corner of a gap and divides the rest.
func (c *corners) cut(at, kind int, turned bool, b habit) {
	g := c.gaps[at]
	w, h := c.kinds[kind].w, c.kinds[kind].h
	if turned {
		w, h = h, w
	}
	n := len(c.laid)
	if kind == len(c.m.kinds) {
		w, h = c.whole(w, g.w), c.whole(h, g.h)
	}
	dw, dh := g.w-w, g.h-h
	cut := b.first(dw, dh, w, h)
	if g.sheet != none && c.m.first != Whole {
		cut = c.m.first
	}
	c.laid = append(c.laid, corner{kind, turned, w, h, cut, none, none})
	c.hang(g, n)
	side, top := gap{dw, g.h, none, n, false}, gap{w, dh, none, n, true}
	if cut == Rip {
		side.h, top.w = h, g.w
	}
	c.gaps[at] = c.gaps[len(c.gaps)-1]
	c.gaps = c.gaps[:len(c.gaps)-1]
	for _, f := range []gap{side, top} {
		if f.w > 0 && f.h > 0 {
			c.gaps = append(c.gaps, f)
		}
	}
}

// whole takes all of a gap for the extra part where nothing of use would be left
// of it: nobody cuts a strip off an offcut to throw it away, least of all to have
// begun with the cut that must be the first.
func (c *corners) whole(size, gap int64) int64 {
	if gap-size < c.m.least+c.m.kerf {
		return gap
	}
	return size
}

// first is the cut that leaves what the habit likes.
func (b habit) first(dw, dh, w, h int64) Cut {
	rip := dw < dh // the greater rest stays whole
	switch b.split {
	case 1:
		rip = !rip
	case 2:
		rip = dw*h < dh*w // the lesser corner piece is cut off
	}
	if rip {
		return Rip
	}
	return Crosscut
}

// hang ties a corner to where its gap was.
func (c *corners) hang(g gap, n int) {
	switch {
	case g.sheet != none:
		c.roots[g.sheet] = n
	case g.over:
		c.laid[g.by].over = n
	default:
		c.laid[g.by].beside = n
	}
}
