package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/figure"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// wholeRoom holds what the room itself owes: height, clear floor, air.
func (c *checker) wholeRoom() {
	s := subject{"the room", diag.Place{Path: "survey", Line: c.doc.Survey.At.Line, Column: c.doc.Survey.At.Column}, "room"}
	for _, b := range c.at.Basins {
		c.headroom(b)
		c.clearFloor(b)
	}
	if len(c.doc.Fittings) > 0 && !c.hasFan() {
		c.list.Add(diag.Note, "fan-none", s.at, "no fan is told: a room with a WC or a shower needs one, or a window that opens", "write it under fittings with kind: fan")
	}
}

func (c *checker) hasFan() bool {
	for _, f := range c.at.Fittings {
		if f.Doc.Kind.String() == "fan" {
			return true
		}
	}
	return false
}

// headroom: the ceiling before each basin.
func (c *checker) headroom(b place.Basin) {
	s := subject{b.Name, b.Doc.At, "room"}
	w, ok := c.at.Wall(b.Wall)
	if !ok {
		return
	}
	front := c.basinFront(b)
	where := b.MidX.Add(front)
	high := c.ceilingAt(w, b.MidX, front)
	c.atLeast(s, "ceiling", "{0}: ceiling above the finished floor, in front of it", high.Sub(c.floor()).Using(where.Facts()...), rule.CeilingHeight, "move the basin to where the room is high enough")
}

const (
	downPath = "survey > level line > down"
	upPath   = "survey > level line > up"
)

// ceilingAt is the ceiling's height at a place before a wall: a plane through the three corners that were read nearest to it.
func (c *checker) ceilingAt(w place.Wall, x, off figure.Figure) figure.Figure {
	all := x.Add(off)
	if !all.Known() {
		return all
	}
	p := w.Frame.At(x.V, off.V)
	y, ok := plane(c.room.Survey.Corners, p)
	if !ok {
		return figure.Missing(upPath)
	}
	return figure.Fact(upPath, 0).Moving(y)
}

// clearFloor is what is free before a basin, 30 in wide about its middle: less deep where something stands in it. Knees go under a basin that has
// no cabinet, and what is clear there counts as far as a guide allows.
func (c *checker) clearFloor(b place.Basin) {
	s := subject{b.Name, b.Doc.At, "room"}
	wide, ok := c.book.Least(rule.FloorWide)
	a, ok2 := c.law(rule.FloorDeep, rule.AtLeast, "move the basin or what stands before it")
	if !ok || !ok2 {
		return
	}
	front := c.basinFront(b)
	d, by := c.ahead(b.Wall, b.MidX, figure.Number(wide.Rule.Limit), front)
	if c.ada() && !c.hasCabinet(b) {
		under := figure.Min(c.kneeDepth(b, kneeLow), figure.Number(kneeMost))
		d = d.Add(under)
	}
	c.least(s, "clear floor", "{0}: clear floor {2} wide, to {1}", d, a, diag.T(by), diag.F(wide.Rule.Limit))
}

// Heights and depths of knee space, 2010 ADA 306: what is asked is in the rules; these say where it is measured.
const (
	kneeLow  = 9 * unit.Inch
	kneeHigh = 27 * unit.Inch
	kneeMost = 25 * unit.Inch
)

func (c *checker) ada() bool {
	for _, s := range c.out.Sets {
		if s == "ADA 2010" {
			return true
		}
	}
	return false
}

// hasCabinet reports whether a cabinet stands under a basin.
func (c *checker) hasCabinet(b place.Basin) bool {
	t, ok := c.at.Top(b.Top)
	return ok && t.Doc.On.V != ""
}
