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

// wastes holds each waste against its basin, its trap and the pipe in the wall.
func (c *checker) wastes() {
	for _, w := range c.at.Wastes {
		s := subject{w.Name, w.Doc.At, "waste"}
		b, ok := c.at.Basin(w.Basin)
		c.clamp(s, w, b, ok)
		c.trap(s, w, b)
		c.arm(s, w)
	}
}

// clamp: the thread must hold basin, top and washers; the waste and the basin must agree about the overflow.
func (c *checker) clamp(s subject, w place.Waste, b place.Basin, served bool) {
	d := w.Doc
	c.least(s, "clamp", "{0}: thread, against basin, what is left of the top, and washers", fact(d.Thread, d.At, "thread"), sheet(w.Clamps, "let the top in from below or recess the basin deeper, as long as the least wood stays; or order a waste with a longer thread"))
	if served {
		has := known(b.Doc.Overflow, b.Doc.At, "overflow")
		made := known(d.ForOverflow, d.At, "for overflow")
		c.holds(s, "overflow", "{0}: made for a basin {1} overflow", b.Doc.Overflow.V == d.ForOverflow.V, diag.T(withOr(d.ForOverflow.V)+" overflow"), diag.T("the basin is "+withOr(b.Doc.Overflow.V)+" one"),
			asked{cite: "data sheets", mend: "order the waste that goes with the basin"}, has.Add(made), diag.T(withOr(d.ForOverflow.V)))
	}
}

func withOr(has bool) string {
	if has {
		return "with"
	}
	return "without"
}

// trap: its seal, its size, how far it may be below and beside the outlet, and whether it goes between tailpiece and wall.
func (c *checker) trap(s subject, w place.Waste, b place.Basin) {
	d := w.Doc
	seal, size := fact(d.Trap.Seal, d.At, "trap > seal"), fact(d.Trap.Size, d.At, "trap > size")
	const other = "order another trap"
	c.atLeast(s, "seal least", "{0}: seal of its trap", seal, rule.TrapSeal, other)
	c.atMost(s, "seal most", "{0}: seal of its trap", seal, rule.TrapSeal, other)
	c.atLeast(s, "trap size", "{0}: size of its trap", size, rule.BasinTrap, other)
	// The weir is the lowest inside of the outlet: half of its pipe under its center.
	c.atMost(s, "outlet to weir, down", "{0}: from the outlet of {1} down to the weir of its trap", b.Bottom.Sub(w.TailY).Add(w.Drop).Add(size.Half()), rule.WeirDown, "raise the pipe in the wall", diag.T(w.Basin))
	c.atMost(s, "outlet to weir, across", "{0}: from the outlet of {1} across to the weir of its trap", fact(d.Trap.Weir, d.At, "trap > weir"), rule.WeirAcross, other, diag.T(w.Basin))
	least, most := ends(d.Trap.Drop, d.At, "trap > drop")
	c.least(s, "trap drop least", "{0}: from the end of the tailpiece down to the trap's outlet", w.Drop, sheet(least, "shorten the tailpiece, raise the basin or lower the pipe in the wall"))
	c.most(s, "trap drop most", "{0}: from the end of the tailpiece down to the trap's outlet", w.Drop, sheet(most, "lengthen the tailpiece, lower the basin or raise the pipe in the wall"))
	from, to := ends(d.Trap.Reach, d.At, "trap > reach")
	c.least(s, "trap reach least", "{0}: from the tailpiece to the finished wall", w.Level, sheet(from, "move the basin's waste away from the wall"))
	c.most(s, "trap reach most", "{0}: from the tailpiece to the finished wall", w.Level, sheet(to, "order a longer tube"))
}

// arm: from the weir to the vent it must be neither so short that the trap is sucked dry nor fall more than its own diameter.
func (c *checker) arm(s subject, w place.Waste) {
	d := w.Doc
	size := fact(d.Trap.Size, d.At, "trap > size")
	law, ok := c.book.TrapArm(size.V)
	if !size.Known() || !ok {
		c.most(s, "arm length", "{0}: trap arm, from weir to vent", w.Arm, asked{limit: size.Add(figure.Missing(d.At.Path + " > trap > size")), cite: "trap arm table"})
		return
	}
	on := func(limit unit.Length, r rule.Rule) asked {
		return asked{limit: figure.Number(limit).Using(size.Facts()...), rule: r.ID, cite: r.Cite(), mend: "move the vent, or the pipe in the wall"}
	}
	c.most(s, "arm length", "{0}: trap arm, from weir to vent", w.Arm, on(law.Most, law.Length))
	if law.Least > 0 {
		c.least(s, "arm least", "{0}: trap arm, from weir to vent, of two diameters", w.Arm, on(law.Least, c.record(rule.ArmLeast, rule.AtLeast)))
	}
	if law.MostDrop > 0 {
		c.most(s, "arm fall most", "{0}: fall of the trap arm, of one diameter", w.Fall, on(law.MostDrop, c.record(rule.ArmDrop, rule.AtMost)))
	}
	if law.Fall > 0 {
		// The document's fall is kept in millionths; so is the limit's, or 1/48 would miss 1/4 in a foot by a hair.
		share := law.Fall.MulDiv(int64(unit.One), int64(unit.Foot))
		c.least(s, "arm fall least", "{0}: fall of the trap arm", w.Fall, asked{limit: w.Arm.Times(int64(share), int64(unit.One)), rule: law.Slope.ID, cite: law.Slope.Cite(), mend: "let the pipe fall more"})
	}
	if !d.Fall.Known && !d.Fall.Unknown {
		c.assume(d.At, law.Slope.Cite(), "the arm of {0} falls 1/4 in a foot", diag.T(w.Name))
	}
}

func (c *checker) record(of rule.Subject, side rule.Bound) rule.Rule {
	e, ok := c.book.Least(of)
	if side == rule.AtMost {
		e, ok = c.book.Most(of)
	}
	if !ok {
		return rule.Rule{}
	}
	return e.Rule
}

// stops holds each stop valve against the pipe that it stands on and what it feeds.
func (c *checker) stops() {
	for _, v := range c.at.Stops {
		s := subject{v.Name, v.Doc.At, "supply"}
		stub, ok := c.at.Stub(v.Stub)
		if !ok {
			continue
		}
		least, most := ends(v.Doc.Takes, v.Doc.At, "takes")
		c.least(s, "pipe least", "{0}: pipe before the finished face", stub.Out, sheet(least, "lengthen the pipe before the wall is closed, or order a valve that takes less"))
		c.most(s, "pipe most", "{0}: pipe before the finished face", stub.Out, sheet(most, "cut the pipe shorter when the tile is set"))
		plate := fact(v.Doc.Plate, v.Doc.At, "plate")
		c.atLeast(s, "plate over the hole", "{0}: escutcheon over the rim of the hole that is drilled, all round", plate.Sub(stub.Hole).Half(), rule.PlateCover, "drill a smaller hole or order a larger escutcheon")
		room := stub.Hole.Sub(fact(stub.Doc.Diameter, stub.Doc.At, "diameter")).Half()
		c.atLeast(s, "hole least", "{0}: hole in the tile beyond the pipe, all round", room, rule.PipeClear, "drill a larger hole")
		c.atMost(s, "hole most", "{0}: hole in the tile beyond the pipe, all round", room, rule.PipeClear, "drill a smaller hole")
		c.hose(s, v)
	}
}

// hose: its length against the straight way and its slack.
func (c *checker) hose(s subject, v place.Stop) {
	limit, ok := c.hoseWay(v)
	slack, found := c.book.Least(rule.HoseSlack)
	if !ok || !found {
		return
	}
	a := asked{limit: limit, rule: slack.Rule.ID, cite: slack.Cite(), advice: slack.Rule.Advice && !slack.Own, mend: "order a longer hose"}
	c.least(s, "hose", "{0}: hose, against its way with slack", v.Hose, a)
}

// hoseWay is how long a hose must be: its straight way, with slack. It is false where the hose has no end that is known.
func (c *checker) hoseWay(v place.Stop) (figure.Figure, bool) {
	x, y, off, ok := c.inlet(v)
	if !ok {
		return x, false
	}
	way := hypot(hypot(v.X.Sub(x), v.Y.Sub(y)), v.Off.Half().Sub(off))
	if slack, found := c.book.Least(rule.HoseSlack); found {
		way = way.Times(int64(slack.Rule.Ratio), int64(unit.One))
	}
	return way, true
}

// inlet is where a hose ends: under the deck at the tap, or at the tank of a WC. A wall tap has none.
func (c *checker) inlet(v place.Stop) (x, y, off figure.Figure, ok bool) {
	for _, t := range c.at.Taps {
		if t.Name == v.Serves && t.Doc.Mounted == document.Deck {
			top, onTop := c.at.Top(t.Doc.On.Text)
			if !onTop {
				return t.X, t.Y, t.Off, true
			}
			return t.X, top.Underside, t.Off, true
		}
	}
	w, ok := c.at.WC(v.Serves)
	if !ok {
		return x, y, off, false
	}
	d := w.Doc
	return w.X.Sub(fact(d.InletLeft, d.At, "inlet left")), w.Floor.Add(fact(d.InletUp, d.At, "inlet up")), fact(d.InletOff, d.At, "inlet off"), true
}

// hypot is the distance of two lengths square to each other. It moves with each by its share.
func hypot(a, b figure.Figure) figure.Figure {
	f := a.Add(b)
	if !f.Known() {
		return f
	}
	d := geom.Dist(geom.Point{}, geom.Point{X: a.V, Y: b.V})
	if d == 0 {
		return f
	}
	return a.Times(int64(a.V), int64(d)).Add(b.Times(int64(b.V), int64(d))).Moving(d)
}
