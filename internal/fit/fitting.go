package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// fittings holds heights against those who use the room, and fans against what they owe.
func (c *checker) fittings() {
	for _, f := range c.at.Fittings {
		s := subject{f.Name, f.Doc.At, "fitting"}
		switch f.Doc.Kind {
		case document.Mirror:
			c.mirror(s, f)
		case document.Light:
			c.light(s, f)
		case document.Fan:
			c.fan(s, f)
		case document.PaperHolder:
			c.paper(s, f)
		case document.TowelBar, document.GrabBar, document.Hook, document.WallShelf:
			c.bar(s, f)
		}
	}
}

// up is a height over the finished floor.
func (c *checker) up(y figure.Figure) figure.Figure { return y.Sub(c.floor()) }

// mirror: all who use the room must see their eyes in it.
func (c *checker) mirror(s subject, f place.Fitting) {
	of := rule.MirrorBare
	if f.Doc.Serves.Text != "" {
		of = rule.MirrorBottom
	}
	const mend = "hang it lower or higher, or take a taller one"
	c.atMost(s, "bottom", "{0}: bottom above the finished floor", c.up(f.Bottom), of, mend)
	c.atLeast(s, "top", "{0}: top above the finished floor", c.up(f.Top), rule.MirrorTop, mend)
	for _, p := range c.doc.People {
		eyes, ok := c.eyes(p)
		if !ok {
			continue
		}
		own := asked{limit: eyes, cite: "so that " + p.Name + " sees himself or herself", advice: true, mend: mend}
		c.most(s, "eyes of "+p.Name+", bottom", "{0}: bottom not above the eyes of {1}", c.up(f.Bottom), own, diag.T(p.Name))
		c.least(s, "eyes of "+p.Name+", top", "{0}: top not below the eyes of {1}", c.up(f.Top), own, diag.T(p.Name))
	}
}

// eyes are told, or reckoned from the height of a standing person.
func (c *checker) eyes(p document.Person) (figure.Figure, bool) {
	if p.Eyes.Known || p.Eyes.Unknown || !p.Tall.Known {
		return fact(p.Eyes, p.At, "eyes"), p.Eyes.Known || p.Eyes.Unknown || p.Tall.Unknown
	}
	e, ok := c.book.Usual(rule.EyeHeight)
	if !ok || p.Seat.V {
		return figure.Missing(p.At.Path + " > eyes"), true
	}
	c.assume(p.At, e.Cite(), "the eyes of {0} are at {1} of the height", diag.T(p.Name), diag.Percent(e.Rule.Ratio))
	return fact(p.Tall, p.At, "tall").Times(int64(e.Rule.Ratio), int64(unit.One)), true
}

func (c *checker) light(s subject, f place.Fitting) {
	if f.Wall == "" && f.Doc.In.Text == "" {
		return // in the ceiling
	}
	const mend = "set it lower or higher before its box is closed in"
	c.atLeast(s, "light least", "{0}: middle above the finished floor", c.up(f.Y), rule.LightUp, mend)
	c.atMost(s, "light most", "{0}: middle above the finished floor", c.up(f.Y), rule.LightUp, mend)
}

// fan: what a code asks of it by how it runs, and what custom asks by the floor's area.
func (c *checker) fan(s subject, f place.Fitting) {
	d := f.Doc
	flow := known(d.Flow, d.At, "flow")
	of := rule.FanRuns
	if d.Runs.V == document.RunsAlways {
		of = rule.FanAlways
	}
	if e, ok := c.book.Least(of); ok {
		uses := flow.Add(known(d.Runs, d.At, "runs"))
		c.holds(s, "fan", "{0}: what it moves, as installed", d.Flow.V.Lo+flowGrain >= e.Rule.Flow, diag.T(sayAir(d.Flow.V.Lo)), diag.T("at least "+sayAir(e.Rule.Flow)),
			asked{rule: e.Rule.ID, cite: e.Cite(), advice: e.Rule.Advice && !e.Own, mend: "order a larger fan, or shorten its duct"}, uses)
	}
	if e, ok := c.book.Least(rule.FanByArea); ok && c.room.Survey.Fixed && d.Runs.V != document.RunsAlways {
		feet := (c.room.Survey.Area + unit.SquareFoot - 1) / unit.SquareFoot // begun ones count
		need := unit.Flow(int64(feet)*e.Rule.Number) * unit.CubicFtMinute
		c.holds(s, "fan by area", "{0}: what it moves, for the floor's area", d.Flow.V.Lo+flowGrain >= need, diag.T(sayAir(d.Flow.V.Lo)), diag.T("at least "+sayAir(need)),
			asked{rule: e.Rule.ID, cite: e.Cite(), advice: true, mend: "order a larger fan"}, flow)
	}
}

// paper: within reach before the bowl, at a height that suits.
func (c *checker) paper(s subject, f place.Fitting) {
	const mend = "move it along the wall or up"
	c.atLeast(s, "paper least", "{0}: above the finished floor", c.up(f.Y), rule.PaperUp, mend)
	c.atMost(s, "paper most", "{0}: above the finished floor", c.up(f.Y), rule.PaperUp, mend)
	w, ok := c.at.WC(f.Doc.Serves.Text)
	if !ok {
		return
	}
	ahead := c.aheadOf(w, f)
	c.atLeast(s, "paper ahead least", "{0}: ahead of the front of {1}", ahead, rule.PaperAhead, mend, diag.T(w.Name))
	c.atMost(s, "paper ahead most", "{0}: ahead of the front of {1}", ahead, rule.PaperAhead, mend, diag.T(w.Name))
}

// aheadOf is how far a thing on a side wall is before the front of a WC.
func (c *checker) aheadOf(w place.WC, f place.Fitting) figure.Figure {
	all := f.X.Add(w.Front)
	on, ok1 := c.at.Wall(f.Wall)
	behind, ok2 := c.at.Wall(w.Wall)
	if !ok1 || !ok2 || !all.Known() {
		return all.Add(figure.Missing(missingOr(all, f.Doc.At.Path+" > in")...))
	}
	_, z := behind.Frame.Of(on.Frame.At(f.X.V, 0))
	return figure.Number(z - w.Front.V).Using(all.Facts()...).Using(surveyPath)
}

// bar: heights, and what is to be set in the open wall for it.
func (c *checker) bar(s subject, f place.Fitting) {
	if f.Doc.Kind == document.GrabBar {
		const mend = "set it lower or higher, with blocking where its screws come"
		c.atLeast(s, "bar least", "{0}: top of the bar above the finished floor", c.up(f.Top), rule.BarHeight, mend)
		c.atMost(s, "bar most", "{0}: top of the bar above the finished floor", c.up(f.Top), rule.BarHeight, mend)
		if c.ada() {
			thick := fact(f.Doc.Bar, f.Doc.At, "bar")
			c.atLeast(s, "bar thick least", "{0}: diameter of the bar", thick, rule.BarThick, "order another bar")
			c.atMost(s, "bar thick most", "{0}: diameter of the bar", thick, rule.BarThick, "order another bar")
		}
	}
	c.tell(s, "blocking", "{0}: middle of the blocking above the finished floor, before the wall is closed", c.up(f.Y))
}
