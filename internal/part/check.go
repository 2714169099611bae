package part

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Check lists what can not be made: a size that is nothing or less once edging and allowances are reckoned, a cut deeper than the
// part, or one that lies beside it. Every finding names the part and the numbers.
func (p Part) Check() diag.List {
	c := checker{p: p}
	if c.sizes() {
		c.channels()
		c.holes()
		c.cutouts()
		c.ends()
		c.tapers()
		c.profiles()
	}
	return c.found
}

type checker struct {
	p     Part
	found diag.List
}

// stop adds a finding. {0} is the part; the values follow.
func (c *checker) stop(code, text, mend string, values ...diag.Value) {
	c.found.Add(diag.Stop, code, c.p.At, text, mend, append([]diag.Value{diag.T(c.p.Name)}, values...)...)
}

// sizes reports whether the part is there at all.
func (c *checker) sizes() bool {
	for _, d := range [...]struct {
		what           string
		finished, sawn unit.Length
	}{
		{"length", c.p.Size.Length, c.p.Cut().Length},
		{"width", c.p.Size.Width, c.p.Cut().Width},
		{"thickness", c.p.Size.Thick, c.p.Cut().Thick},
	} {
		switch {
		case d.finished <= 0:
			c.stop("part-size", "{0} would have a {1} of {2}: nothing is left of it", "make what it belongs to larger, or what takes from it smaller", diag.T(d.what), diag.X(d.finished))
		case d.sawn <= 0:
			c.stop("part-size", "{0} has a {1} of {2}, and its edging takes all of it", "use thinner edging, or make the part larger", diag.T(d.what), diag.X(d.finished))
		}
	}
	return len(c.found) == 0
}

func (c *checker) channels() {
	for _, k := range c.p.Channels {
		across, up, deep := c.p.Size.Extent(k.On)
		what := k.Kind.String()
		if k.Area.W() <= 0 || k.Area.H() <= 0 || !within(k.Area, across, up) {
			c.beside(what, k.On)
		}
		c.depth(what, k.On, k.Depth, deep)
	}
}

func (c *checker) holes() {
	for _, h := range c.p.Holes {
		across, up, deep := c.p.Size.Extent(h.On)
		r := h.Diameter / 2
		area := geom.Rect{Min: h.At.Sub(geom.Point{X: r, Y: r}), Max: h.At.Add(geom.Point{X: r, Y: r})}
		if h.Along == UpAxis {
			area.Min.Y, area.Max.Y = area.Min.Y-h.Slot/2, area.Max.Y+h.Slot/2
		} else {
			area.Min.X, area.Max.X = area.Min.X-h.Slot/2, area.Max.X+h.Slot/2
		}
		if h.Diameter <= 0 || h.Slot < 0 || !within(area, across, up) {
			c.beside("hole", h.On)
		}
		if !h.Through {
			c.depth("hole", h.On, h.Depth, deep)
		}
	}
}

func (c *checker) cutouts() {
	for _, k := range c.p.Cutouts {
		simple, _, _ := k.Outline.Simple()
		if !simple || k.Outline.Area() == 0 || !k.Outline.Bounds().Overlaps(geom.Rect{Max: geom.Point{X: c.p.Size.Length, Y: c.p.Size.Width}}) {
			c.beside("cut-out", Face)
		}
	}
}

// steepest is how far a saw swings at most: nothing sensible is left of an end at 80° and more.
const steepest = 80 * unit.Degree

func (c *checker) ends() {
	for _, e := range c.p.Ends {
		if !e.On.IsEnd() || abs(e.Miter) > steepest || abs(e.Bevel) > steepest {
			c.stop("part-angle", "the {1} of {0} can not be sawn at {2} and {3}", "check the angle that was measured", diag.T(e.On.String()), diag.Angle(e.Miter), diag.Angle(e.Bevel))
			return
		}
	}
	front, rear := c.p.Points()
	face, back := c.p.Faces()
	if short := min(front, rear, face, back); short < 0 {
		c.stop("part-size", "the mitered ends of {0} cross: its short side would be {1}", "make it longer or narrower, or join it otherwise", diag.X(short))
	}
}

func (c *checker) tapers() {
	for _, t := range c.p.Tapers {
		if t.On.IsEnd() {
			c.beside("taper", t.On)
			continue
		}
		_, _, deep := c.p.Size.Extent(t.On)
		if min(t.From, t.To) < 0 || max(t.From, t.To) > c.p.Size.Length || t.From == t.To {
			c.beside("taper", t.On)
		}
		c.depth("taper", t.On, t.Less, deep)
	}
}

func (c *checker) profiles() {
	for _, f := range c.p.Profiles {
		if f.A == f.B || f.A == f.B.Opposite() {
			c.beside(f.Kind.String(), f.A)
			continue
		}
		_, _, a := c.p.Size.Extent(f.A)
		_, _, b := c.p.Size.Extent(f.B)
		c.depth(f.Kind.String(), f.A, f.Reach, min(a, b))
	}
}

// depth holds a cut against the stock that it goes into.
func (c *checker) depth(what string, on Side, depth, deep unit.Length) {
	switch {
	case depth <= 0:
		c.stop("part-depth", "a {1} in the {2} of {0} has a depth of {3}", "give it a depth", diag.T(what), diag.T(on.String()), diag.X(depth))
	case depth >= deep:
		c.stop("part-thin", "a {1} in the {2} of {0} is {3} deep, and the part is {4} there: the stock is too thin for it", "use thicker stock, or a joint that goes less deep", diag.T(what), diag.T(on.String()), diag.X(depth), diag.X(deep))
	}
}

func (c *checker) beside(what string, on Side) {
	c.stop("part-outside", "a {1} in the {2} of {0} lies beside the part or has no size", "move it onto the part", diag.T(what), diag.T(on.String()))
}

// within reports whether an area lies on a side that reaches so far; it may touch the rim.
func within(r geom.Rect, across, up unit.Length) bool {
	return r.Min.X >= 0 && r.Min.Y >= 0 && r.Max.X <= across && r.Max.Y <= up
}

func abs(a unit.Angle) unit.Angle { return max(a, -a) }
