package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/geom"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/space"
)

// doors holds each leaf against the floor that will be under it, and against all that stands in its sweep.
func (c *checker) doors() {
	for _, d := range c.at.Doors {
		s := subject{d.Name, d.Doc.At, "door"}
		c.doorBottom(s, d)
		c.threshold(s, d)
		c.sweep(s, d)
		c.atLeast(s, "clear width", "{0}: clear width with the leaf open", d.Width.Sub(factOrZero(d.Doc.Leaf.Thick, d.Doc.Leaf.At, "thickness")), rule.DoorClear, "hang a wider leaf")
	}
}

// doorBottom: what the build-up leaves under the leaf at the highest floor that it sweeps. Less than is wanted is cut off.
func (c *checker) doorBottom(s subject, d place.Door) {
	l := d.Doc.Leaf
	if !l.GapNow.Known && !l.GapNow.Unknown && !l.GapWanted.Known {
		return
	}
	rise := d.Rise
	if l.Opens.Known && l.Opens.V == document.OpensOut {
		rise = figure.Number(0) // it sweeps the hall's floor
	}
	left := fact(l.GapNow, l.At, "gap now").Sub(d.FloorUp).Sub(rise)
	ask := asked{limit: figure.Number(0), cite: "common practice", advice: true, mend: "cut as much off its bottom, with all else set; of a hollow leaf keep the solid rail"}
	if law, ok := c.law(rule.DoorGap, rule.AtLeast, ask.mend); ok {
		ask = law
	}
	if l.GapWanted.Known || l.GapWanted.Unknown {
		ask = asked{limit: fact(l.GapWanted, l.At, "gap wanted"), cite: "the gap that is wanted", advice: true, mend: ask.mend}
	}
	c.least(s, "gap under it", "{0}: gap that the finished floor leaves under it, at the highest floor that it sweeps", left, ask)
	c.tell(s, "cut off", "{0}: to cut off its bottom", figure.Max(ask.limit.Sub(left), figure.Number(0)))
	if d.RiseRead {
		c.assume(l.At, "our own", "the floor that {0} sweeps is nowhere higher than along {1} within its reach", diag.T(d.Name), diag.T(d.Wall))
	}
	if l.JambGap.Known || l.JambGap.Unknown {
		c.tell(s, "jamb cut off", "{0}: to cut off its jambs and casings, so that the floor runs under them", figure.Max(d.FloorUp.Sub(fact(l.JambGap, l.At, "jamb gap")), figure.Number(0)))
	}
}

// threshold is the step between the two finished floors.
func (c *checker) threshold(s subject, d place.Door) {
	l := d.Doc.Leaf
	if !l.HallFloor.Known && !l.HallFloor.Unknown {
		return
	}
	step := d.FloorUp.Sub(fact(l.HallFloor, l.At, "hall floor"))
	c.tell(s, "step", "{0}: step up into the room", step)
	c.atMost(s, "step most", "{0}: step of the threshold, with a bevel", step.Abs(), rule.StepBeveled, "thin the floor's build-up, or ramp the threshold")
}

// sweep holds the leaf's way against everything that stands in the room. What it shares no height with is passed over.
func (c *checker) sweep(s subject, d place.Door) {
	l := d.Doc.Leaf
	if l.Opens.Known && l.Opens.V == document.OpensOut {
		return
	}
	a, ok := c.law(rule.LeafClear, rule.AtLeast, "hang the leaf on the other side, let it open outward, or move what is in its way")
	if !ok {
		return
	}
	way := known(l.Hinge, l.At, "hinge").Add(known(l.Opens, l.At, "opens")).Add(d.Width)
	if len(d.Sweep) == 0 || !way.Known() {
		c.least(s, "leaf", "{0}: leaf, over its way, to what stands in the room", way.Add(figure.Missing(missingOr(way, l.At.Path+" > hinge")...)), a)
		return
	}
	w, _ := c.at.Wall(d.Wall)
	leaf := w.Frame.Outline(space.Envelope{}, d.Sweep, d.High)
	handle := factOrZero(l.Handle, l.At, "handle")
	reach := leaf.Plan.Bounds()
	reach.Min, reach.Max = reach.Min.Sub(geom.Point{X: farFromDoor, Y: farFromDoor}), reach.Max.Add(geom.Point{X: farFromDoor, Y: farFromDoor})
	for _, e := range c.at.Solids {
		if len(e.Plan) > 0 && !reach.Overlaps(e.Plan.Bounds()) {
			continue
		}
		if e.Owner == d.Doc.At.Path || len(e.Plan) == 0 || e.Kind == space.Leaf || e.Kind == space.Trim && e.Wall == d.Wall || e.High.Hi <= leaf.High.Lo || e.High.Lo >= leaf.High.Hi {
			continue
		}
		// The handle is on the leaf's room side: it passes nothing that the leaf itself does not, but at the end of the way it comes nearest.
		apart := figure.Number(space.Distance(leaf.Plan, e.Plan)).Using(way.Facts()...).Using(e.Uses...).Using(d.Doc.At.Path + " > across").Using(handle.Facts()...)
		if apart.V > farFromDoor {
			continue
		}
		c.least(s, "leaf: "+e.Name, "{0}: leaf, over its way, to {1}", apart, a, diag.T(e.Name))
	}
}

// missingOr names what is missing, or what must be.
func missingOr(f figure.Figure, path string) []string {
	if len(f.Missing) > 0 {
		return f.Missing
	}
	return []string{path}
}

func factOrZero(v document.Value[length], owner diag.Place, key string) figure.Figure {
	if v.Known || v.Unknown {
		return fact(v, owner, key)
	}
	return figure.Number(0)
}
