package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// taps holds each tap against the basin that it fills, the wall or deck that it stands in, and what is near its handle.
func (c *checker) taps() {
	for _, t := range c.at.Taps {
		s := subject{t.Name, t.Doc.At, "tap"}
		b, ok := c.at.Basin(t.Doc.Serves.Text)
		if ok {
			c.overBasin(s, t, b)
			c.jet(s, t, b)
		}
		if t.Doc.Mounted == document.FromWall {
			c.inWall(s, t)
		} else {
			c.onDeck(s, t, b, ok)
		}
		c.covers(s, t)
		c.handle(s, t, b, ok)
		c.flow(s, t)
	}
}

// overBasin: room for hands and the air gap between outlet and rim, and an outlet that is before the wall and over the bowl.
func (c *checker) overBasin(s subject, t place.Tap, b place.Basin) {
	over := t.OutletY.Sub(b.Rim)
	const raise = "raise the tap, lower the basin or choose another"
	c.atLeast(s, "hand gap", "{0}: outlet above the rim of {1}, for hands", over, rule.HandGap, raise, diag.T(b.Name))
	c.airGap(s, t, b, over, raise)
	c.least(s, "outlet before the wall", "{0}: outlet before the finished wall", t.OutletOff, asked{limit: figure.Number(0), cite: "an outlet behind the wall is none", mend: "look at reach, fixes to and body: the figures contradict each other"})
	inner := b.Deep.Half().Sub(b.Edge)
	c.least(s, "outlet over the bowl, front", "{0}: outlet short of the front of the bowl of {1}", b.MidOff.Add(inner).Sub(t.OutletOff), sheet(figure.Number(0), "choose a tap of shorter reach or a deeper basin"), diag.T(b.Name))
	c.least(s, "outlet over the bowl, back", "{0}: outlet past the back of the bowl of {1}", t.OutletOff.Sub(b.MidOff.Sub(inner)), sheet(figure.Number(0), "choose a tap of longer reach, or move the basin back"), diag.T(b.Name))
	aside := t.X.Sub(b.MidX).Abs()
	c.least(s, "outlet over the bowl, side", "{0}: outlet within the sides of the bowl of {1}", b.Wide.Half().Sub(b.Edge).Sub(aside), sheet(figure.Number(0), "move the tap or the basin along the wall"), diag.T(b.Name))
}

// airGap is between the outlet and the highest that dirty water can rise; more is asked near a wall.
func (c *checker) airGap(s subject, t place.Tap, b place.Basin, over figure.Figure, mend string) {
	o := t.Doc.Outlet
	opening := fact(o.Opening, t.Doc.At, "outlet > opening")
	if !opening.Known() || !t.OutletOff.Known() {
		a := asked{limit: opening.Add(t.OutletOff), cite: "air gap"}
		if law, ok := c.law(rule.GapAway, rule.AtLeast, mend); ok {
			a.rule, a.cite, a.mend = law.rule, law.cite, mend
			c.least(s, "air gap", "{0}: air gap from the outlet to the rim of {1}", over, a, diag.T(b.Name))
		}
		return
	}
	back := t.OutletOff.V - opening.V/2
	beside := unit.Length(-1)
	for _, side := range sides {
		if d, _ := c.toSide(t.Wall, side.way, t.X, t.OutletOff, figure.Number(0), t.OutletY); d.Known() && (beside < 0 || d.V-opening.V/2 < beside) {
			beside = max(d.V-opening.V/2, 0)
		}
	}
	near := rule.NearTo(opening.V, min(back, atLeastZero(beside, back)), max(back, beside))
	least, r, ok := c.book.AirGap(opening.V, near)
	if !ok {
		return
	}
	limit := figure.Number(least).Using(opening.Facts()...).Using(t.OutletOff.Facts()...)
	c.least(s, "air gap", "{0}: air gap from the outlet to the rim of {1}", over, asked{limit: limit, rule: r.ID, cite: r.Cite(), mend: mend}, diag.T(b.Name))
}

// atLeastZero is a distance, or another one where it is none.
func atLeastZero(d, other unit.Length) unit.Length {
	if d < 0 {
		return other
	}
	return d
}

// inWall: the body's depth range against the build-up, on both sides.
func (c *checker) inWall(s subject, t place.Tap) {
	least, most := ends(t.Doc.Body.Depth, t.Doc.At, "body > depth")
	c.least(s, "body depth least", "{0}: plate of its body behind the finished face", t.Depth, sheet(least, "set the body deeper, or thicken the build-up, before the wall is closed"))
	c.most(s, "body depth most", "{0}: plate of its body behind the finished face", t.Depth, sheet(most, "set the body farther out, before the wall is closed, or order the maker's extension"))
}

// onDeck: the deck's thickness, the wall behind and the bowl before it.
func (c *checker) onDeck(s subject, t place.Tap, b place.Basin, served bool) {
	plate := fact(t.Doc.Plate, t.Doc.At, "plate").Half()
	c.least(s, "foot to the wall", "{0}: foot to the finished wall", t.Off.Sub(plate), sheet(figure.Number(0), "move the tap away from the wall"))
	top, ok := c.at.Top(t.Doc.On.Text)
	if !ok {
		return
	}
	least, most := ends(t.Doc.Grips, t.Doc.At, "grips")
	const mend = "let the underside of the top in, or choose a longer shank"
	c.least(s, "deck least", "{0}: thickness of the top that it clamps", top.Thick, sheet(least, mend))
	c.most(s, "deck most", "{0}: thickness of the top that it clamps", top.Thick, sheet(most, mend))
	if served && b.Top == top.Name {
		c.least(s, "foot to the basin", "{0}: foot to the back of {1}", b.MidOff.Sub(b.Deep.Half()).Sub(t.Off).Sub(plate), sheet(figure.Number(0), "move the tap back or the basin forward"), diag.T(b.Name))
	}
}

// covers: the hole must hide under its plate.
func (c *checker) covers(s subject, t place.Tap) {
	if !t.Doc.Hole.Known && !t.Doc.Hole.Unknown {
		return
	}
	hole, plate := fact(t.Doc.Hole, t.Doc.At, "hole"), fact(t.Doc.Plate, t.Doc.At, "plate")
	c.atLeast(s, "plate over the hole", "{0}: plate over the rim of its hole, all round", plate.Sub(hole).Half(), rule.PlateCover, "drill a smaller hole or order a larger plate")
}

// handle: room for fingers over its whole swing.
func (c *checker) handle(s subject, t place.Tap, b place.Basin, served bool) {
	if !t.Doc.Handle.Given {
		return
	}
	const mend = "turn or move the tap, or what is near its handle"
	if served {
		beside := t.HandleX.Sub(b.MidX).Abs().Sub(b.Wide.Half()).Sub(t.Swings)
		behind := b.MidOff.Sub(b.Deep.Half()).Sub(t.HandleOff).Sub(t.Swings)
		if over := figure.Max(beside, behind); !over.Known() || over.V < 0 {
			c.atLeast(s, "handle to the basin", "{0}: handle, over its swing, above the rim of {1}", t.HandleY.Sub(t.Swings).Sub(b.Rim), rule.HandleClear, mend, diag.T(b.Name))
		}
	}
	if t.Doc.Mounted == document.Deck {
		c.atLeast(s, "handle to the wall", "{0}: handle, over its swing, to the finished wall behind it", t.HandleOff.Sub(t.Swings), rule.HandleClear, mend)
	}
	for _, side := range sides {
		d, wall := c.toSide(t.Wall, side.way, t.HandleX, t.HandleOff, figure.Number(0), t.HandleY)
		c.atLeast(s, "handle to the "+side.name, "{0}: handle, over its swing, to {1} on the {2}", d.Sub(t.Swings), rule.HandleClear, mend, diag.T(wall), diag.T(side.name))
	}
	for _, f := range c.at.Fittings {
		if f.Wall != t.Wall || !c.faces(f, t.HandleX, t.Swings) {
			continue
		}
		gap := f.Bottom.Sub(t.HandleY.Add(t.Swings))
		if gap.Known() && f.Top.V < t.HandleY.V {
			gap = t.HandleY.Sub(t.Swings).Sub(f.Top)
		}
		c.atLeast(s, "handle to "+f.Name, "{0}: handle, over its swing, to {1}", gap, rule.HandleClear, mend, diag.T(f.Name))
	}
}

// faces reports whether a fitting stands over or under a stretch about a place along its wall; one that is not placed might.
func (c *checker) faces(f place.Fitting, x, half figure.Figure) bool {
	if !f.Left.Known() || !f.Right.Known() || !x.Known() || !half.Known() {
		return true
	}
	return f.Left.V < x.V+half.V && f.Right.V > x.V-half.V
}

// flow: what codes and specifications allow a basin tap.
func (c *checker) flow(s subject, t place.Tap) {
	f := t.Doc.Outlet.Flow
	e, ok := c.book.Most(rule.TapFlow)
	if !ok || !f.Known && !f.Unknown {
		return
	}
	c.holds(s, "flow", "{0}: what flows at most", f.V.Hi <= e.Rule.Flow+flowGrain, diag.T(sayFlow(f.V.Hi)), diag.T("at most "+sayFlow(e.Rule.Flow)),
		asked{rule: e.Rule.ID, cite: e.Cite(), advice: e.Rule.Advice && !e.Own, mend: "fit a flow regulator, or ask for the flow at 60 psi"}, known(f, t.Doc.At, "outlet > flow"))
}
