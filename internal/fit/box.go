package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/geom"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

type length = unit.Length

// farFromDoor is beyond what a leaf could come near to: farther things are not listed.
const farFromDoor = 12 * unit.Inch

// boxes holds each box against the finished face, its plate, and receptacles against the basins.
func (c *checker) boxes() {
	for _, b := range c.at.Boxes {
		s := subject{b.Name, b.Doc.At, "box"}
		if electric(b.Doc) {
			c.boxDepth(s, b)
		}
		c.plateOverHole(s, b)
	}
	c.receptacles()
}

// electric reports whether a box is held against the electrical code: one that says what it is for, and not a valve or a panel.
func electric(b document.Box) bool {
	return b.Kind.Known && b.Kind.V != document.ValvePlate && b.Kind.V != document.AccessPanel
}

// boxDepth: how far the front edge is behind the finished face, and the ring that brings it out.
func (c *checker) boxDepth(s subject, b place.Box) {
	burns := known(b.Doc.Burns, b.Doc.At, "surface burns")
	of := rule.BoxBack
	if b.Doc.Burns.V {
		of = rule.BoxBackWood
	}
	const mend = "order an extension ring that brings the box out to the finished face"
	if !burns.Known() {
		// Tile and board do not burn; the stricter limit is not taken for granted either.
		c.atMost(s, "depth", "{0}: front edge behind the finished face", b.Back.Add(burns), of, mend)
	} else {
		c.atMost(s, "depth", "{0}: front edge behind the finished face", b.Back.Using(burns.Facts()...), of, mend)
	}
	c.least(s, "proud", "{0}: front edge not before the finished face", b.Back, asked{limit: figure.Number(0), cite: "a plate must lie on the face", advice: true, mend: "set the box back before the wall is closed"})
	c.tell(s, "ring", "{0}: thickness of the extension ring to order", figure.Max(b.Back, figure.Number(0)))
	if b.Doc.Gap.Known || b.Doc.Gap.Unknown || b.Gap.Known() {
		c.atMost(s, "gap", "{0}: gap between the box and the surface round it", b.Gap, rule.BoxGap, "fill the gap")
	}
}

// plateOverHole: the cover plate must hide the hole, gap and all.
func (c *checker) plateOverHole(s subject, b place.Box) {
	side := func(id string, plate, box document.Value[length], plateKey, boxKey string) {
		if !plate.Known && !plate.Unknown {
			return
		}
		over := fact(plate, b.Doc.At, plateKey).Sub(fact(box, b.Doc.At, boxKey)).Half().Sub(b.Gap)
		c.least(s, id, "{0}: plate over the edge of the hole", over, sheet(figure.Number(0), "cut closer to the box or order a larger plate"))
	}
	side("plate across", b.Doc.PlateWide, b.Doc.Width, "plate width", "width")
	side("plate up", b.Doc.PlateHigh, b.Doc.Height, "plate height", "height")
}

// receptacles: each basin wants one within reach and not far under its top.
func (c *checker) receptacles() {
	a, ok := c.law(rule.ReceptacleTo, rule.AtMost, "have a receptacle set nearer to the basin; a licensed electrician decides")
	if !ok {
		return
	}
	for _, basin := range c.at.Basins {
		s := subject{basin.Name, basin.Doc.At, "box"}
		best, by, found := c.nearestReceptacle(basin)
		if !found {
			c.list.Add(diag.Unchecked, "not-checked-receptacle", basin.Doc.At, "not checked: a receptacle within {1} of the outside edge of {0}: no box is told as one", "write kind: receptacle at the box", diag.T(basin.Name), diag.F(a.limit.V)).Rule = a.rule
			continue
		}
		c.most(s, "receptacle", "{0}: outside edge to the receptacle {1}", best, a, diag.T(by.Name))
		surface := basin.Rim
		if t, ok := c.at.Top(basin.Top); ok {
			surface = t.Surface
		}
		c.atMost(s, "receptacle low", "{0}: receptacle {1} below the top", surface.Sub(by.Y), rule.ReceptacleLow, "have it set higher; a licensed electrician decides", diag.T(by.Name))
	}
}

// nearestReceptacle measures from the outside edge of a basin: along the wall where both are on one, else straight across the plan.
func (c *checker) nearestReceptacle(b place.Basin) (best figure.Figure, by place.Box, found bool) {
	for _, box := range c.at.Boxes {
		if !box.Doc.Kind.Known || box.Doc.Kind.V != document.ReceptacleBox {
			continue
		}
		d := c.toBox(b, box)
		if !found || d.Known() && (!best.Known() || d.V < best.V) {
			best, by, found = d, box, true
		}
	}
	return best, by, found
}

func (c *checker) toBox(b place.Basin, box place.Box) figure.Figure {
	half := b.Wide.Half()
	if b.Wall == box.Wall {
		return figure.Max(hypot(figure.Max(box.X.Sub(b.MidX).Abs().Sub(half), figure.Number(0)), b.MidOff.Sub(b.Deep.Half())), figure.Number(0))
	}
	w, ok1 := c.at.Wall(b.Wall)
	o, ok2 := c.at.Wall(box.Wall)
	all := b.MidX.Add(b.MidOff).Add(half).Add(b.Deep).Add(box.X)
	if !ok1 || !ok2 || !all.Known() {
		return all.Add(figure.Missing(missingOr(all, box.Doc.At.Path+" > in")...))
	}
	d := geom.Dist(w.Frame.At(b.MidX.V, b.MidOff.V), o.Frame.At(box.X.V, 0)) - min(half.V, b.Deep.V/2)
	return figure.Number(max(d, 0)).Using(all.Facts()...).Using(surveyPath)
}
