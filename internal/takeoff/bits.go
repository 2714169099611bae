package takeoff

import (
	"fmt"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// bits lists the core bits that are not at hand, by the hole, and the blade by what it has to cut.
func (m *maker) bits() {
	style := unit.DefaultStyle(m.doc.Units).Fine()
	type hole struct {
		size unit.Length
		n    int
	}
	var holes []hole
	var cut unit.Length
	for _, f := range m.tiles.Faces {
		for _, z := range f.Fields {
			for _, p := range z.Chosen().Pieces {
				cut += cutLength(p.InTile)
				for _, h := range p.Holes {
					if h.Bit > 0 || h.Bite || h.Drill <= 0 {
						continue
					}
					i := slices.IndexFunc(holes, func(x hole) bool { return x.size == h.Drill })
					if i < 0 {
						holes, i = append(holes, hole{size: h.Drill}), len(holes)
					}
					holes[i].n++
				}
			}
		}
	}
	for _, h := range holes {
		what := "core bit for a hole of " + style.Format(h.size)
		g, named := m.good(document.CoreBit, "", anyGood)
		m.add(document.CoreBit, what, g, named, part{Part: Part{For: fmt.Sprintf("holes of that size: %d", h.n), Amount: unit.Count(1)}})
	}
	if g, named := m.good(document.SawBlade, "", anyGood); named && cut > 0 {
		m.add(document.SawBlade, "blade", g, true, part{Part: Part{For: "cuts of " + unit.DefaultStyle(m.doc.Units).Say(unit.Stretches(cut)) + " in all", Amount: unit.Count(1)}})
		m.assume(g.At, "no label says how long a blade lasts", "one blade is enough")
	}
}

// cutLength is how long the saw's cuts round a piece are.
func cutLength(g geom.Region) unit.Length {
	var sum unit.Length
	for _, r := range g {
		for i, v := range r {
			if v.Edge > 0 {
				sum += geom.Dist(v.P, r[(i+1)%len(r)].P)
			}
		}
	}
	return sum
}

// rest takes in goods of which the person says how much is needed, and tells of those that nothing here reckons.
func (m *maker) rest() {
	for _, g := range m.doc.Goods {
		used := slices.ContainsFunc(m.needs, func(n *need) bool { return n.named && n.good.Name == g.Name })
		switch {
		case used || g.InsteadOf.Known || g.InsteadOf.Unknown:
		case g.Needs.Known:
			m.add(g.Kind, g.Name, g, true, part{Part: Part{For: "as you say", Amount: g.Needs.V}})
		default:
			m.found(diag.Unchecked, "good-unused", g.At, "not reckoned: nothing in this room takes {0}", "say which faces it is for, or how much: needs: 2 pieces", diag.T(g.Name))
		}
	}
}
