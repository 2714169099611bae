package tiling

import (
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/site"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// describer returns what says all of one laid piece of the field.
func (m *maker) describer(g *ground, numbers piece.Numbers) func(lay.Piece) piece.Piece {
	f := m.pieceField(g, numbers)
	return func(p lay.Piece) piece.Piece { return piece.Describe(piece.Input{Laid: p, Field: f}) }
}

func (m *maker) pieceField(g *ground, numbers piece.Numbers) piece.Field {
	f := piece.Field{Bond: g.bond, Frame: g.frame, Numbers: numbers, Mark: g.mark, Edges: m.pieceEdges(g.canvas.edges), Tools: m.tools(g)}
	for _, h := range g.canvas.face.Holes {
		f.Holes = append(f.Holes, h.Name)
	}
	return f
}

func (m *maker) pieceEdges(edges []site.Edge) map[geom.Label]piece.Edge {
	out := make(map[geom.Label]piece.Edge, len(edges))
	for i, e := range edges {
		out[geom.Label(i+1)] = piece.Edge{Name: e.Name, Joint: e.Joint, Forgive: forgive(e, m.mark()), Hidden: e.Hidden}
	}
	return out
}

// forgive is by how much a cut may be off at an edge: what the joint has over the least joint, and what the other face's
// tile hides. Where there is no joint, at a free end or under a cover plate, a mark of the tape is no matter.
func forgive(e site.Edge, mark unit.Length) unit.Length {
	if e.Joint == 0 {
		return mark + max(0, e.Hidden)
	}
	return max(0, e.Joint-rule.JointLeast.Limit) + max(0, e.Hidden)
}

// mark is the finest mark that cuts are read to.
func (m *maker) mark() unit.Length { return m.doc.Mark.Or(unit.DefaultStyle(m.doc.Units).Mark) }

// tools is what the person cuts with, and how sure a size is: one tape reading and the tile's own variation.
func (m *maker) tools(g *ground) piece.Tools {
	t := piece.Tools{Mark: m.mark(), LeastStrip: m.blank(g.good, 0).leastStrip,
		Tolerance: m.doc.Survey.Accuracy.Or(rule.TapeAccuracy.Limit) + m.variation(g.good.tile)}
	for _, b := range m.doc.Tools.CoreBits {
		if b.Known {
			t.Bits = append(t.Bits, b.V)
		}
	}
	return t
}
