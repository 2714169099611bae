package tiling

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/opt/pair"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// used is one size of one good over the whole room: how many go up whole, and every cut piece.
type used struct {
	good  good
	size  int
	whole int
	names []string
	cut   []piece.Piece
}

// usage collects goods in the order in which they are first laid.
type usage struct{ list []*used }

func (u *usage) of(g good, size int) *used {
	for _, e := range u.list {
		if e.good.tile.Name == g.tile.Name && e.size == size && e.good.sizes[size] == g.sizes[size] {
			return e
		}
	}
	e := &used{good: g, size: size}
	u.list = append(u.list, e)
	return e
}

// add takes a field's pieces in; offcuts serve any face that takes the same tile.
func (u *usage) add(g good, mark string, f Field) {
	for _, p := range f.Chosen().Pieces {
		e := u.of(g, p.Size)
		if p.Uncut() {
			e.whole++
			continue
		}
		e.names = append(e.names, mark+" "+p.Address)
		e.cut = append(e.cut, p)
	}
}

// totals packs each good over the whole room and adds what the person asked for on top.
func (m *maker) totals(u usage) []Good {
	var out []Good
	for _, e := range u.list {
		r := m.blank(e.good, e.size).pack(e.cut, packing)
		m.unfit(e, r)
		g := m.total(e, r)
		g.Blank = m.blank(e.good, e.size).told()
		out = append(out, g)
	}
	return out
}

func (m *maker) total(e *used, r pair.Result) Good {
	t := e.good.tile
	g := Good{Tile: t.Name, Size: e.size, Whole: e.whole, CutFrom: r.Blanks, Least: r.Lower, Proof: r.Proof,
		From: sources(e.names, r.Placements), PerBox: t.PerBox.Or(0)}
	g.Breakage = m.onTop(t, t.Breakage, "breakage")
	g.Spares = m.onTop(t, t.Spares, "spares")
	if e.size > 0 {
		g.Breakage, g.Spares = 0, 0 // a set's breakage and spares are counted once, with its first size
	}
	g.Buy = g.Whole + g.CutFrom + g.Breakage + g.Spares
	if g.PerBox > 0 {
		g.Boxes = (g.Buy + g.PerBox - 1) / g.PerBox
		g.Leftover = g.Boxes*g.PerBox - g.Buy
	}
	return g
}

// onTop is the person's own number; none given is none added, and said.
func (m *maker) onTop(t document.Tile, v document.Value[int], what string) int {
	if !v.Known {
		m.assume(t.At, "no {0} added for {1}: none is given", "your own number counts", diag.T(what), diag.T(t.Name))
	}
	return v.Or(0)
}

// sources lists which piece comes out of which tile, in the order of the pieces.
func sources(names []string, placements []pair.Placement) []Source {
	var out []Source
	for i, p := range placements {
		if p.Blank >= 0 {
			out = append(out, Source{Piece: names[i], Tile: p.Blank + 1, Turn: quarter(p.Turn),
				At: geom.Point{X: unit.Length(p.X), Y: unit.Length(p.Y)}})
		}
	}
	return out
}

// unfit tells of pieces that no tile can yield and of strips too narrow to snap.
func (m *maker) unfit(e *used, r pair.Result) {
	for _, i := range r.Unfit {
		m.found(diag.Stop, "piece-unfit", e.good.tile.At, "piece {0} can not be cut from {1}",
			"move the layout, or choose a larger tile", diag.T(e.names[i]), diag.T(e.good.tile.Name))
	}
	for _, i := range r.Tight {
		m.found(diag.Look, "strip-narrow", e.good.tile.At, "piece {0} leaves or is a strip under {1}, which does not snap cleanly",
			"cut it with a wet saw, or move the layout", diag.T(e.names[i]), diag.L(m.blank(e.good, e.size).leastStrip))
	}
}
