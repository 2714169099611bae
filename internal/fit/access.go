package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// access holds an accessible room against the 2010 ADA Standards, 603 to 609, where they were chosen.
func (c *checker) access() {
	if !c.ada() {
		return
	}
	for _, b := range c.at.Basins {
		c.knees(b)
	}
	for _, w := range c.at.WCs {
		c.clearAt(w)
	}
	for _, f := range c.at.Fittings {
		if w, ok := c.at.WC(f.Doc.Serves.Text); ok && f.Doc.Kind == document.GrabBar {
			c.barAt(f, w)
		}
	}
}

// knees: room for knees and toes under a basin that is used sitting.
func (c *checker) knees(b place.Basin) {
	s := subject{b.Name, b.Doc.At, "access"}
	const mend = "raise the top, set the trap back, or take the cabinet from under it"
	c.atLeast(s, "knees up", "{0}: underside at the front above the finished floor", c.undersideUp(b), rule.KneeHeight, mend)
	if a, ok := c.law(rule.KneeDeepLow, rule.AtLeast, mend); ok {
		c.least(s, "knees deep at 9 in", "{0}: knee space 9 in above the floor", c.kneeDepth(b, kneeLow), a)
	}
	if a, ok := c.law(rule.KneeDeepHigh, rule.AtLeast, mend); ok {
		c.least(s, "knees deep at 27 in", "{0}: knee space 27 in above the floor", c.kneeDepth(b, kneeHigh), a)
	}
	c.taper(s, b, mend)
	if a, ok := c.law(rule.ToeDeep, rule.AtLeast, mend); ok {
		c.least(s, "toes deep", "{0}: toe space", c.kneeDepth(b, 0), a)
	}
}

// taper: between 9 and 27 in the space that is asked shrinks by 1 in for every 6 in of height; what stands in it is held against it at its
// lowest point.
func (c *checker) taper(s subject, b place.Basin, mend string) {
	law, ok := c.law(rule.KneeDeepLow, rule.AtLeast, mend)
	if !ok {
		return
	}
	front := c.basinFront(b)
	for _, e := range c.under(b) {
		low := max(e.High.Lo-c.room.FinishedFloor, kneeLow)
		need, asks := rule.KneeDepth(low)
		if !asks || e.High.Hi-c.room.FinishedFloor <= kneeLow || low == kneeLow {
			continue
		}
		ask := law
		ask.limit = figure.Number(need)
		c.least(s, "knees under "+e.Name, "{0}: knee space before {1}, at its lowest", front.Sub(figure.Number(e.Z.Hi).Using(e.Uses...)), ask, diag.T(e.Name))
	}
}

// undersideUp is the underside of what is over the knees at the front: of the top, or of the basin's rim.
func (c *checker) undersideUp(b place.Basin) figure.Figure {
	if t, ok := c.at.Top(b.Top); ok {
		return c.up(t.Underside)
	}
	return c.up(b.Underside)
}

// kneeDepth is how far one gets in under a basin at a height over the floor: to the wall, or to what stands there first.
func (c *checker) kneeDepth(b place.Basin, height unit.Length) figure.Figure {
	front := c.basinFront(b)
	if !front.Known() {
		return front
	}
	depth := front
	for _, e := range c.under(b) {
		at := c.room.FinishedFloor + height
		if e.High.Lo <= at && e.High.Hi >= at {
			depth = figure.Min(depth, front.Sub(figure.Number(e.Z.Hi).Using(e.Uses...)))
		}
	}
	// Trap and valves that are not placed might be there.
	for _, w := range c.at.Wastes {
		if w.Basin == b.Name && !c.placed(w.Doc.At.Path) {
			depth = depth.Add(figure.Missing(w.Doc.At.Path + " > trap"))
		}
	}
	return depth
}

func (c *checker) placed(owner string) bool {
	for _, e := range c.at.Solids {
		if e.Owner == owner {
			return true
		}
	}
	return false
}

// under lists what stands under a basin, within the width that knees need.
func (c *checker) under(b place.Basin) []space.Envelope {
	var out []space.Envelope
	if !b.MidX.Known() {
		return nil
	}
	knees := space.Span{Lo: b.MidX.V - 15*unit.Inch, Hi: b.MidX.V + 15*unit.Inch}
	for _, e := range c.at.Solids {
		if e.Wall == b.Wall && e.X.Meets(knees) && e.Kind != space.Top && e.Kind != space.Leaf && e.Kind != space.Fitting && e.Kind != space.Tap && e.Kind != space.Screw {
			out = append(out, e)
		}
	}
	return out
}

// clearAt: 60 in from the side wall and 56 in from the wall behind a WC.
func (c *checker) clearAt(w place.WC) {
	s := subject{w.Name, w.Doc.At, "access"}
	middle, deep := figure.Number(28*unit.Inch), figure.Number(56*unit.Inch)
	left, _ := c.toSide(w.Wall, -1, w.X, middle, deep, w.Floor)
	right, _ := c.toSide(w.Wall, 1, w.X, middle, deep, w.Floor)
	c.atLeast(s, "clear width", "{0}: clear floor from side wall to side wall", left.Add(right), rule.WCClearWide, "make the room wider at the WC")
	ahead, by := c.ahead(w.Wall, w.X, fact(w.Doc.Width, w.Doc.At, "width"), w.Front)
	c.atLeast(s, "clear depth", "{0}: clear floor from the wall behind it to {1}", ahead.Add(w.Front), rule.WCClearDeep, "make the room deeper at the WC", diag.T(by))
}

// barAt: a bar on a side wall counts from the wall behind the WC, one behind it from its center line.
func (c *checker) barAt(f place.Fitting, w place.WC) {
	s := subject{f.Name, f.Doc.At, "access"}
	length := f.Right.Sub(f.Left)
	const mend = "order a longer bar or move it, with blocking where its screws come"
	if f.Wall == w.Wall {
		c.atLeast(s, "rear bar", "{0}: length", length, rule.RearBar, mend)
		near, far := figure.Min(w.X.Sub(f.Left), f.Right.Sub(w.X)), figure.Max(w.X.Sub(f.Left), f.Right.Sub(w.X))
		c.atLeast(s, "rear bar, nearer end", "{0}: beyond the center of {1}, on the nearer side", near, rule.RearBarShort, mend, diag.T(w.Name))
		c.atLeast(s, "rear bar, farther end", "{0}: beyond the center of {1}, on the farther side", far, rule.RearBarLong, mend, diag.T(w.Name))
		return
	}
	c.atLeast(s, "side bar", "{0}: length", length, rule.SideBar, mend)
	one, two := c.offRear(f, f.Left, w), c.offRear(f, f.Right, w)
	c.atMost(s, "side bar, near end", "{0}: its nearer end off the wall behind {1}", figure.Min(one, two), rule.SideBarStart, mend, diag.T(w.Name))
	c.atLeast(s, "side bar, far end", "{0}: its farther end off the wall behind {1}", figure.Max(one, two), rule.SideBarEnd, mend, diag.T(w.Name))
}

// offRear is how far a place on a side wall is off the wall behind a WC.
func (c *checker) offRear(f place.Fitting, x figure.Figure, w place.WC) figure.Figure {
	on, ok1 := c.at.Wall(f.Wall)
	behind, ok2 := c.at.Wall(w.Wall)
	if !ok1 || !ok2 || !x.Known() {
		return x.Add(figure.Missing(missingOr(x, f.Doc.At.Path+" > in")...))
	}
	_, z := behind.Frame.Of(on.Frame.At(x.V, 0))
	return figure.Number(z).Using(x.Facts()...).Using(surveyPath)
}
