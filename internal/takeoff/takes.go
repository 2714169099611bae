package takeoff

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// taken is how much of a good a measured share takes.
type taken struct {
	takes   unit.Quantity
	known   bool
	typical bool
	source  string // where a figure is from that is no label's
	missing string
}

// takes turns a share as measured into an amount of the good, by its label first and by a typical figure last.
func (m *maker) takes(g document.Good, named bool, p part) taken {
	switch p.Amount.Of {
	case unit.ByVolume:
		return m.fills(g, named, p)
	case unit.ByArea:
		return m.coats(g, named, p)
	}
	if by, sold := soldBy(g); sold && by != p.Amount.Of {
		return taken{missing: "how much " + p.Amount.Of.String() + " a pack holds"}
	}
	return taken{takes: p.Amount, known: true}
}

// soldBy is the dimension that a good's packs are sold by.
func soldBy(g document.Good) (unit.Dimension, bool) {
	if len(g.Packs) == 0 {
		return 0, false
	}
	return g.Packs[0].Size.Of, true
}

// fills is for what fills a space: mortar, grout, sealant, filler. What is sold by volume fills its own.
func (m *maker) fills(g document.Good, named bool, p part) taken {
	by, sold := soldBy(g)
	if sold && by == unit.ByVolume || g.Kind == document.Sealant || g.Kind == document.WoodFinish {
		return taken{takes: p.Amount, known: true}
	}
	for _, v := range []document.Value[unit.Rate]{g.Yields, g.Density} {
		if q, ok := v.V.For(p.Amount); v.Known && ok {
			return taken{takes: q, known: true}
		}
	}
	if r, ok := coverOf(g, p.trowel); ok && p.area > 0 {
		q, _ := r.For(unit.Spreads(p.area))
		return taken{takes: q, known: true}
	}
	ready := g.Grain.Known && g.Grain.V == document.ReadyMixed
	if p.typical == nil || ready {
		return taken{missing: "its yield"}
	}
	q, _ := p.typical.Rate.For(p.Amount)
	m.assume(placeOf(g, named), p.typical.Cite(), "{0}: {1}, which is typical and no label's", diag.T(p.typical.What), sayRate(p.typical.Rate, m.doc.Units))
	return taken{takes: q, known: true, typical: true, source: p.typical.What + " (" + p.typical.Cite() + ")"}
}

// coverOf is the label's coverage for a trowel.
func coverOf(g document.Good, t document.Trowel) (unit.Rate, bool) {
	t.Held = 0
	for _, c := range g.CoversWith {
		with := c.Trowel
		with.Held = 0
		if with == t {
			return c.Covers, true
		}
	}
	return unit.Rate{}, false
}

// coats is for what is spread over an area: sealer, paint, membrane, board, sheets.
func (m *maker) coats(g document.Good, named bool, p part) taken {
	by, sold := soldBy(g)
	if sold && by == unit.ByArea {
		return taken{takes: p.Amount, known: true}
	}
	n := m.coatsOf(g, named, p)
	amount := p.Amount.Share(int64(n), 1)
	if q, ok := g.Covers.V.For(amount); g.Covers.Known && ok {
		return taken{takes: q, known: true}
	}
	if p.typical == nil {
		if !named && !sold {
			return taken{takes: p.Amount, known: true}
		}
		return taken{missing: "the area that it covers"}
	}
	q, _ := p.typical.Rate.For(amount)
	m.assume(placeOf(g, named), p.typical.Cite(), "{0} covers {1}, which is typical and no label's", diag.T(p.typical.What), sayRate(p.typical.Rate, m.doc.Units))
	return taken{takes: q, known: true, typical: true, source: p.typical.What + " (" + p.typical.Cite() + ")"}
}

func (m *maker) coatsOf(g document.Good, named bool, p part) int {
	switch {
	case p.fixed:
		return p.coats
	case g.Coats.Known:
		return g.Coats.V
	case p.coats == 0:
		return 1
	case p.told:
		return p.coats
	}
	m.assume(placeOf(g, named), "common practice", "{0} coats of {1}", diag.N(p.coats), diag.T(nameOf(g, named, g.Kind.String())))
	return p.coats
}

func sayRate(r unit.Rate, s unit.System) diag.Value { return diag.T(unit.DefaultStyle(s).Rate(r)) }
