package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/place"
	"dryfit/internal/rule"
)

// wcs holds each WC against the wall behind it, its flange or carrier, and what is round it.
func (c *checker) wcs() {
	for _, w := range c.at.WCs {
		s := subject{w.Name, w.Doc.At, "WC"}
		switch w.Doc.Kind {
		case document.FloorWC:
			c.overFlange(s, w)
		case document.WallHungWC:
			c.hung(s, w)
		case document.HorizontalWC:
			c.level(s, w)
		}
		c.baseboards(s, w)
		middle := w.Back.Add(w.Front).Half()
		c.beside(s, w.Wall, w.X, middle, w.Front.Sub(w.Back), w.Floor.Add(w.Seat), rule.WCSide, "center to the side wall")
		c.atMostBeside(s, w, middle)
		c.besideCabinets(s, w)
		c.apart(s, w.Wall, w.X, rule.WCCenters)
		c.atLeast(s, "seat least", "{0}: seat above the finished floor", w.Seat, rule.WCSeat, "choose a pan of another height")
		c.atMost(s, "seat most", "{0}: seat above the finished floor", w.Seat, rule.WCSeat, "choose a pan of another height")
		c.supply(s, w)
		c.inFront(s, w.Wall, w.X, fact(w.Doc.Width, w.Doc.At, "width"), w.Front, rule.WCFront, w.Name)
	}
	for _, b := range c.at.Basins {
		s := subject{b.Name, b.Doc.At, "basin"}
		c.apart(s, b.Wall, b.X, rule.BasinCenters)
		c.inFront(s, b.Wall, b.MidX, b.Wide, c.basinFront(b), rule.BasinFront, b.Name)
	}
}

// basinFront is the front of a basin or of what it stands on.
func (c *checker) basinFront(b place.Basin) figure.Figure {
	front := b.MidOff.Add(b.Deep.Half())
	if t, ok := c.at.Top(b.Top); ok {
		return figure.Max(front, t.Depth)
	}
	return front
}

// overFlange: the rough-in that is left when the wall is finished, the gap behind the tank, the flange's height and bolts.
func (c *checker) overFlange(s subject, w place.WC) {
	d := w.Doc
	roughIn, gap := fact(d.RoughIn, d.At, "rough-in"), fact(d.Gap, d.At, "tank gap")
	c.least(s, "rough-in", "{0}: outlet off the finished wall", w.Off, sheet(roughIn.Sub(gap), "choose a pan of a shorter rough-in, or thin the build-up behind it"))
	c.tell(s, "rough-in short of the sheet", "{0}: outlet off the finished wall, over the sheet's rough-in", w.Off.Sub(roughIn))
	c.atLeast(s, "tank gap least", "{0}: gap behind its tank", w.Back, rule.WCTankGap, "choose a pan of a shorter rough-in, or thin the build-up behind it")
	c.atMost(s, "tank gap most", "{0}: gap behind its tank", w.Back, rule.WCTankGap, "choose a pan of a longer rough-in")
	c.atLeast(s, "flange least", "{0}: flange above the finished floor", w.FlangeOver, rule.WCFlange, "add extension rings of the thickness that it misses, and seal each")
	c.atMost(s, "flange most", "{0}: flange above the finished floor", w.FlangeOver, rule.WCFlange, "lower the flange before the floor is closed, or shim the pan all round")
	c.tell(s, "flange ring", "{0}: flange below the finished floor, to be made up by rings", figure.Max(w.FlangeOver.Neg(), figure.Number(0)))
	// Bolts are held by the flange: as far as it is below the floor they must be longer.
	need := fact(d.BoltsNeed, d.At, "bolts need").Sub(w.FlangeOver)
	c.least(s, "bolts", "{0}: bolts over the flange", fact(d.Bolts, d.At, "bolts"), sheet(need, "order longer bolts"))
}

// hung: what the label of the frame allows between it and the finished face, and bolts and pipe that reach through the build-up.
func (c *checker) hung(s subject, w place.WC) {
	d, k := w.Doc, w.Doc.Carrier
	depth := w.BuildUp.Add(fact(k.Behind, d.At, "carrier > behind"))
	least, most := ends(k.Wall, d.At, "carrier > wall")
	c.least(s, "frame least", "{0}: front of its frame behind the finished face", depth, sheet(least, "set the frame back before the wall is closed, or thicken the build-up"))
	c.most(s, "frame most", "{0}: front of its frame behind the finished face", depth, sheet(most, "set the frame forward before the wall is closed, or thin the build-up"))
	c.least(s, "frame bolts", "{0}: bolts out of the finished face", fact(k.Bolts, d.At, "carrier > bolts").Sub(depth), sheet(fact(k.BoltNeed, d.At, "carrier > bolts need"), "order longer bolts"))
	c.least(s, "frame pipe", "{0}: outlet pipe out of the finished face", fact(k.Pipe, d.At, "carrier > pipe").Sub(depth), sheet(fact(k.PipeNeed, d.At, "carrier > pipe needs"), "order a longer pipe; do not cut the one that is there"))
}

// level: a horizontal outlet must meet the pipe in the wall.
func (c *checker) level(s subject, w place.WC) {
	stub, ok := c.at.Stub(w.Doc.Outlet.Text)
	if !ok {
		return
	}
	height := stub.Y.Sub(w.Floor)
	least, most := ends(w.Doc.OutletUp, w.Doc.At, "outlet up")
	c.least(s, "outlet least", "{0}: pipe in the wall above the finished floor", height, sheet(least, "raise the pipe in the wall, or order a connector that is set off"))
	c.most(s, "outlet most", "{0}: pipe in the wall above the finished floor", height, sheet(most, "lower the pipe in the wall, or order a connector that is set off"))
}

// baseboards: one that runs behind the tank or a skirted foot takes of the gap there.
func (c *checker) baseboards(s subject, w place.WC) {
	for _, t := range c.doc.Trim {
		if t.Kind != document.Baseboard || !alongWall(t, w.Wall) {
			continue
		}
		stock, ok := c.doc.StockNamed(t.Stock.Text)
		if !ok {
			continue
		}
		thick, high := fact(stock.Thick, stock.At, "size"), fact(stock.Width, stock.At, "size")
		under := fact(w.Doc.TankFrom, w.Doc.At, "tank from")
		behind := known(w.Doc.Skirted, w.Doc.At, "skirted")
		if behind.Known() && !w.Doc.Skirted.V && under.Known() && high.Known() && high.V <= under.V {
			continue // the tank stands over it, and the foot stops short of it
		}
		c.least(s, "baseboard: "+t.Name, "{0}: room behind it for {1}", w.Back.Add(behind).Using(high.Facts()...), sheet(thick, "stop the baseboard at both sides of the pan"), diag.T(t.Name))
	}
}

func alongWall(t document.Trim, wall string) bool {
	for _, a := range t.Along {
		if a.Text == wall {
			return true
		}
	}
	return len(t.Along) == 0
}

// atMostBeside: the accessible WC stands no farther from its side wall than a bar can be reached.
func (c *checker) atMostBeside(s subject, w place.WC, middle figure.Figure) {
	a, ok := c.law(rule.WCSide, rule.AtMost, "move the WC toward its side wall")
	if !ok {
		return
	}
	left, _ := c.toSide(w.Wall, -1, w.X, middle, w.Front.Sub(w.Back), w.Floor.Add(w.Seat))
	right, _ := c.toSide(w.Wall, 1, w.X, middle, w.Front.Sub(w.Back), w.Floor.Add(w.Seat))
	c.most(s, "center to the nearer side wall", "{0}: center to the nearer side wall", figure.Min(left, right), a)
}

// besideCabinets holds the center line against cabinets and tops on the same wall, which count as a partition.
func (c *checker) besideCabinets(s subject, w place.WC) {
	a, ok := c.law(rule.WCSide, rule.AtLeast, "move the WC, or make the cabinet or its top narrower")
	if !ok {
		return
	}
	near := func(name string, left, right figure.Figure) {
		d := left.Sub(w.X)
		if right.Known() && w.X.Known() && right.V <= w.X.V {
			d = w.X.Sub(right)
		}
		c.least(s, "center to "+name, "{0}: center to {1}", d, a, diag.T(name))
	}
	for _, k := range c.at.Cabinets {
		if k.Wall == w.Wall {
			near(k.Name, k.Left, k.Right)
		}
	}
	for _, t := range c.at.Tops {
		if t.Wall == w.Wall {
			near(t.Name, t.Left, t.Right)
		}
	}
}

// supply: the stop must clear the baseboard and stay under the tank.
func (c *checker) supply(s subject, w place.WC) {
	stub, ok := c.at.Stub(w.Doc.Supply.Text)
	if !ok || stub.InFloor {
		return
	}
	up := stub.Y.Sub(w.Floor)
	c.atLeast(s, "supply least", "{0}: supply above the finished floor", up, rule.WCSupplyUp, "raise the pipe in the wall")
	c.atMost(s, "supply most", "{0}: supply above the finished floor", up, rule.WCSupplyUp, "lower the pipe in the wall")
}
