package fit

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// Part is a small part of plumbing that nothing comes with, as it must be to suit what is fitted: what is bought is the answer of the checks.
type Part struct {
	Kind document.GoodKind
	For  string // "from hot valve to basin tap"
	At   diag.Place
	// As is the size that the document gives it and the checks were made with; valid if AsKnown.
	As      unit.Length
	AsKnown bool
	// Least and Most are the sizes that reach, cover or hold; each valid if known.
	Least, Most           unit.Length
	LeastKnown, MostKnown bool
	Missing               []string // facts without which that can not be told
}

// parts lists what is to be bought for each stop, waste and WC.
func (c *checker) parts() {
	for _, v := range c.at.Stops {
		c.stopParts(v)
	}
	for _, w := range c.at.Wastes {
		c.wasteParts(w)
	}
	for _, w := range c.at.WCs {
		c.wcParts(w)
	}
}

// needs adds a part between two sizes; a figure that does not limit it is left out by its flag.
func (c *checker) needs(p Part, as document.Value[unit.Length], least, most *figure.Figure) {
	p.As, p.AsKnown = as.V, as.Known
	for _, l := range []struct {
		f     *figure.Figure
		v     *unit.Length
		known *bool
	}{{least, &p.Least, &p.LeastKnown}, {most, &p.Most, &p.MostKnown}} {
		switch {
		case l.f == nil:
		case l.f.Known():
			*l.v, *l.known = l.f.V, true
		default:
			p.Missing = append(p.Missing, l.f.Missing...)
		}
	}
	slices.Sort(p.Missing)
	p.Missing = slices.Compact(p.Missing)
	c.out.Parts = append(c.out.Parts, p)
}

// stopParts: a line from the stop to what it feeds, unless that has hoses of its own, and an escutcheon over the hole in the tile.
func (c *checker) stopParts(v place.Stop) {
	d := v.Doc
	if stub, ok := c.at.Stub(v.Stub); ok {
		c.escutcheon("on "+v.Stub, d.At, d.Plate, stub)
	}
	if !d.Hose.Known && !d.Hose.Unknown && c.ownHoses(v.Serves) {
		return
	}
	line := Part{Kind: document.SupplyLine, For: "from " + v.Name + " to " + v.Serves, At: d.At}
	way, ok := c.hoseWay(v)
	if !ok {
		c.needs(line, d.Hose, nil, nil)
		return
	}
	c.needs(line, d.Hose, &way, nil)
}

// ownHoses: a tap whose own hoses reach to the stop takes no line.
func (c *checker) ownHoses(tap string) bool {
	for _, t := range c.doc.Taps {
		if t.Name == tap {
			return t.Hoses.Known || t.Hoses.Unknown
		}
	}
	return false
}

// escutcheon covers the hole that is drilled round a pipe.
func (c *checker) escutcheon(where string, at diag.Place, plate document.Value[unit.Length], stub place.Stub) {
	p := Part{Kind: document.Escutcheon, For: where, At: at}
	cover, ok := c.book.Least(rule.PlateCover)
	if !ok {
		c.needs(p, plate, &stub.Hole, nil)
		return
	}
	least := stub.Hole.Plus(2 * cover.Rule.Limit)
	c.needs(p, plate, &least, nil)
}

// wasteParts: the trap, the tailpiece that lets it hang at the pipe, and an escutcheon over the hole round that.
func (c *checker) wasteParts(w place.Waste) {
	d := w.Doc
	size := fact(d.Trap.Size, d.At, "trap > size")
	c.needs(Part{Kind: document.TrapGood, For: "of " + w.Name, At: d.At}, d.Trap.Size, &size, &size)
	least, most := ends(d.Trap.Drop, d.At, "trap > drop")
	shortest, longest := w.Hang.Sub(most), w.Hang.Sub(least)
	c.needs(Part{Kind: document.Tailpiece, For: "of " + w.Name, At: d.At}, d.Tail, &shortest, &longest)
	if stub, ok := c.at.Stub(w.Stub); ok {
		c.escutcheon("on "+w.Stub, d.At, document.Value[unit.Length]{}, stub)
	}
}

// wcParts: a seal, and of one over a flange its bolts and the ring that brings the flange up to the finished floor.
func (c *checker) wcParts(w place.WC) {
	d := w.Doc
	c.needs(Part{Kind: document.WCSeal, For: "of " + w.Name, At: d.At}, document.Value[unit.Length]{}, nil, nil)
	if d.Kind != document.FloorWC {
		return
	}
	need := fact(d.BoltsNeed, d.At, "bolts need").Sub(w.FlangeOver)
	c.needs(Part{Kind: document.WCBolts, For: "of " + w.Name, At: d.At}, d.Bolts, &need, nil)
	under := figure.Max(w.FlangeOver.Neg(), figure.Number(0))
	if under.Known() && under.V > 0 {
		c.needs(Part{Kind: document.FlangeRing, For: "of " + w.Name, At: d.At}, document.Value[unit.Length]{}, &under, nil)
	}
}
