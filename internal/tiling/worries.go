package tiling

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// worries tells what a setter would look at twice in the chosen layout's pieces: thin necks, holes near an edge or
// without a bit, tapers that show, joints that rounding leaves too wide.
func (m *maker) worries(g *ground, pieces []piece.Piece) {
	for _, p := range pieces {
		m.neck(g, p)
		m.taper(g, p)
		for _, s := range p.Cut.Steps {
			m.wide(g, p, s)
		}
		for _, h := range p.Holes {
			m.hole(g, p, h)
		}
	}
	m.smallCuts(g, pieces)
	m.shownCuts(g, pieces)
	m.slim(g, pieces)
}

// thinNeck is the width below which an L- or U-shaped piece is likely to break at the saw or in the hand (our own
// judgment: four times a common tile's thickness).
const thinNeck = 38 * unit.Millimetre

func (m *maker) neck(g *ground, p piece.Piece) {
	if n := p.Cut.Neck; n > 0 && n < thinNeck {
		m.found(diag.Look, "neck-thin", g.field.At, "piece {0} on {1} has a neck of {2}: it is likely to break",
			"cut it in two where a joint will not show, or move the layout", diag.T(p.Address), diag.T(g.canvas.face.Name), diag.L(n))
	}
}

// rake: a cut that leans by more than one in so many is a rake under a roof or a pattern at 45 degrees, and not a taper
// that somebody would take for a mistake (our own judgment).
const rake = 8

func (m *maker) taper(g *ground, p piece.Piece) {
	if !p.Cut.TaperShows || len(p.Cut.Steps) == 0 {
		return
	}
	s := p.Cut.Steps[0]
	size := g.good.sizes[p.Size]
	if (s.From-s.To).Abs()*rake > min(size.Length, size.Width) {
		return
	}
	m.found(diag.Note, "taper-shows", g.field.At, "piece {0} on {1} runs from {2} to {3}: so much taper on so narrow a piece shows",
		"a wider cut there hides the taper", diag.T(p.Address), diag.T(g.canvas.face.Name), diag.L(s.SawFrom), diag.L(s.SawTo))
}

func (m *maker) wide(g *ground, p piece.Piece, s piece.Step) {
	if s.Wide {
		m.found(diag.Note, "joint-wide", g.field.At, "piece {0} on {1}, rounded to the tape, leaves {2} at {3}: cut it closer than the mark",
			"scribe this piece at the wall", diag.T(p.Address), diag.T(g.canvas.face.Name), diag.F(s.Leaves), diag.T(s.Edge))
	}
}

func (m *maker) hole(g *ground, p piece.Piece, h piece.PieceHole) {
	face := diag.T(g.canvas.face.Name)
	if h.Bit == 0 && !h.Bite {
		m.found(diag.Look, "no-core-bit", g.field.At, "no core bit of yours drills {0} for {1} (piece {2} on {3})",
			"buy or hire the bit, or add it under tools: core bits", diag.F(h.Drill), diag.T(h.Name), diag.T(p.Address), face)
	}
	switch {
	case h.Bite:
		m.found(diag.Note, "hole-on-joint", g.field.At, "the hole for {0} crosses the edge of piece {1} on {2}: cut it as a notch",
			"", diag.T(h.Name), diag.T(p.Address), face)
	case h.ToEdge < rule.EdgeOfHole.Limit:
		m.found(diag.Look, "hole-near-edge", g.field.At, "the hole for {0} leaves {1} to the edge of piece {2} on {3}: under {4} a tile breaks easily ({5})",
			"move the layout, or open the hole to the edge as a notch", diag.T(h.Name), diag.F(h.ToEdge), diag.T(p.Address), face,
			diag.F(rule.EdgeOfHole.Limit), diag.T(rule.EdgeOfHole.Cite())).Rule = rule.EdgeOfHole.ID
	}
}

// shownCuts tells of cut edges that nothing covers: stone can be re-finished, other tile wants a profile or a factory edge.
func (m *maker) shownCuts(g *ground, pieces []piece.Piece) {
	for i, e := range g.canvas.edges {
		n := cutAt(pieces, geom.Label(i+1))
		if n == 0 || !e.Shows || e.Miter {
			continue
		}
		mend := "put the factory edge there, or a profile over it"
		if g.good.tile.Kind == document.Stone {
			mend = "re-finish the cut edges like the face, or put the factory edge there"
		}
		m.found(diag.Note, "cut-edge-shows", g.field.At, "pieces of {1} on {2} whose cut edge shows at {3}: {0}", mend,
			diag.N(n), diag.T(g.name()), diag.T(g.canvas.face.Name), diag.T(e.Name))
	}
}

// cutAt counts the pieces that an edge cuts.
func cutAt(pieces []piece.Piece, l geom.Label) int {
	n := 0
	for _, p := range pieces {
		if !p.Uncut() && slices.ContainsFunc(p.Edges, func(e piece.PieceEdge) bool { return e.Label == l }) {
			n++
		}
	}
	return n
}

// smallCuts counts the pieces that show less than half a tile, where the published advice is to avoid them.
func (m *maker) smallCuts(g *ground, pieces []piece.Piece) {
	n := 0
	for _, p := range pieces {
		s := g.good.sizes[p.Size]
		if v := p.Cut.Visible; !p.Uncut() && v < rule.HalfTile.Ratio.Of(min(s.Length, s.Width)) {
			n++
		}
	}
	if n > 0 {
		m.found(diag.Note, "cuts-under-half", g.field.At, "pieces of {1} on {2} that show less than half a tile: {0} ({3})",
			"where it can be avoided: see the other layouts", diag.N(n), diag.T(g.field.Name), diag.T(g.canvas.face.Name),
			diag.T(rule.HalfTile.Cite())).Rule = rule.HalfTile.ID
	}
}

// wideAtFloor tells where the whole tiles of the first course do not reach down to the joint at the floor.
func (m *maker) wideAtFloor(g *ground, l *Ledger) {
	if l != nil && l.JointMost > l.Joint {
		m.found(diag.Note, "floor-joint-wide", g.field.At, "the joint under the first course of {0} widens from {1} to {2} where the floor is lowest",
			"baseboard or sealant hides it; a course that starts lower closes it", diag.T(g.canvas.face.Name), diag.F(l.Joint), diag.F(l.JointMost))
	}
}
