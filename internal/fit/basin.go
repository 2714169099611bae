package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/place"
	"dryfit/internal/rule"
)

// basins holds each basin against its top, its walls and those who use it.
func (c *checker) basins() {
	for _, b := range c.at.Basins {
		s := subject{b.Name, b.Doc.At, "basin"}
		height := b.Rim.Sub(c.floor())
		c.atLeast(s, "rim height least", "{0}: rim above the finished floor", height, rule.RimHeight, "raise the top or the basin")
		c.atMost(s, "rim height most", "{0}: rim above the finished floor", height, rule.RimHeight, "lower the top, or sink the basin in a recess of it")
		for _, person := range c.doc.People {
			c.suits(s, person, height)
		}
		c.hollow(s, b)
		c.basinOnTop(s, b)
		c.beside(s, b.Wall, b.X, b.MidOff, b.Deep, b.Rim, rule.BasinSide, "center to the side wall")
		c.edgeBeside(s, b)
		c.jetless(s, b)
	}
}

// hollow: a vessel is as high as it is deep, with its bottom; less contradicts itself.
func (c *checker) hollow(s subject, b place.Basin) {
	if d := b.Doc; d.Kind == document.Vessel {
		inside := fact(d.Depth, d.At, "depth").Add(fact(d.Bottom, d.At, "bottom"))
		c.least(s, "height", "{0}: its height, against its depth inside and its bottom", fact(d.Height, d.At, "height"), asked{limit: inside, cite: "the figures of one basin", mend: "look at height, depth and bottom: the figures contradict each other"})
	}
}

// suits holds the rim against the heights that a person likes.
func (c *checker) suits(s subject, p document.Person, height figure.Figure) {
	if !p.Wants.Known && !p.Wants.Unknown {
		return
	}
	least, most := ends(p.Wants, p.At, "rim")
	wish := func(limit figure.Figure) asked {
		return asked{limit: limit, cite: "what suits " + p.Name, advice: true, mend: "raise or lower the top, or let {1} choose"}
	}
	c.least(s, "rim for "+p.Name+" least", "{0}: rim above the finished floor for {1}", height, wish(least), diag.T(p.Name))
	c.most(s, "rim for "+p.Name+" most", "{0}: rim above the finished floor for {1}", height, wish(most), diag.T(p.Name))
}

// basinOnTop: the basin must lie on its top, or its cut-out keep wood beside it; a recess must leave wood under it.
func (c *checker) basinOnTop(s subject, b place.Basin) {
	t, ok := c.at.Top(b.Top)
	if !ok {
		return
	}
	wide, deep := b.Wide, b.Deep
	cut := b.Doc.Kind != document.Vessel
	what := "{0}: top left beside it, on the {1}"
	ask := asked{limit: figure.Number(0), cite: "the top must carry it", mend: "choose a smaller basin or a larger top, or move the basin"}
	if cut {
		room := c.leastBeside(t)
		ask = asked{limit: room, cite: "common practice", advice: true, mend: "move the basin, or make the top larger"}
		if law, found := c.law(rule.WoodBeside, rule.AtLeast, ask.mend); found && !t.Doc.Least.Known {
			ask = law
		}
		what = "{0}: top left beside its cut-out, on the {1}"
	}
	for _, side := range []struct {
		name string
		left figure.Figure
	}{
		{"left", b.MidX.Sub(wide.Half()).Sub(t.Left)},
		{"right", t.Right.Sub(b.MidX.Add(wide.Half()))},
		{"front", t.Depth.Sub(b.MidOff.Add(deep.Half()))},
		{"back", b.MidOff.Sub(deep.Half()).Sub(t.Back)},
	} {
		c.least(s, "on its top, "+side.name, what, side.left, ask, diag.T(side.name))
	}
	if r := t.Doc.Recess; r.Given && (!r.For.Known || r.For.V == b.Name) {
		c.recess(s, b, t)
	}
}

func (c *checker) leastBeside(t place.Top) figure.Figure {
	if t.Doc.Least.Known || t.Doc.Least.Unknown {
		return fact(t.Doc.Least, t.Doc.At, "least wood")
	}
	return figure.Number(0)
}

// recess: what is left of the top under it, and what has to be cut.
func (c *checker) recess(s subject, b place.Basin, t place.Top) {
	left := t.Thick.Sub(b.Recess)
	if t.Doc.LeastLow.Known || t.Doc.LeastLow.Unknown {
		c.least(s, "top under recess", "{0}: top left under its recess", left, asked{limit: fact(t.Doc.LeastLow, t.Doc.At, "least under"), cite: "your own least", mend: "make the recess shallower or the top thicker"})
	} else {
		c.atLeast(s, "top under recess", "{0}: top left under its recess", left, rule.WoodUnder, "make the recess shallower or the top thicker")
	}
	foot := b.Doc.Foot
	room := figure.Number(recessRoom)
	if r := t.Doc.Recess.Room; r.Known || r.Unknown {
		room = fact(r, t.Doc.Recess.At, "room")
	}
	wide, deep := figure.Missing(b.Doc.At.Path+" > foot"), figure.Missing(b.Doc.At.Path+" > foot")
	if foot.Known {
		wide, deep = figure.Fact(b.Doc.At.Path+" > foot", foot.V.Across), figure.Fact(b.Doc.At.Path+" > foot", foot.V.Deep)
	}
	c.tell(s, "recess width", "{0}: width of the recess to cut, with its room all round", wide.Add(room).Add(room))
	c.tell(s, "recess depth", "{0}: its recess from back to front", deep.Add(room).Add(room))
	c.tell(s, "recess middle", "{0}: middle of the recess off the finished wall", b.MidOff)
	c.tell(s, "recess deep", "{0}: how deep the recess is cut", b.Recess)
}

// edgeBeside holds the edge of a basin against the side walls.
func (c *checker) edgeBeside(s subject, b place.Basin) {
	a, ok := c.law(rule.BasinEdge, rule.AtLeast, "move the basin along the wall")
	if !ok {
		return
	}
	for _, side := range sides {
		d, wall := c.toSide(b.Wall, side.way, b.MidX, b.MidOff, b.Deep, b.Rim)
		c.least(s, "edge to the "+side.name+" wall", "{0}: edge to {1}, on the {2}", d.Sub(b.Wide.Half()), a, diag.T(wall), diag.T(side.name))
	}
}

// jetless tells of a basin that no tap serves.
func (c *checker) jetless(s subject, b place.Basin) {
	for _, t := range c.at.Taps {
		if t.Doc.Serves.Text == b.Name {
			return
		}
	}
	c.list.Add(diag.Note, "basin-without-tap", b.Doc.At, "no tap serves {0}", "write the tap under taps with serves: {0}", diag.T(b.Name))
}
