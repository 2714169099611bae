package tiling

import (
	"slices"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/opt/pair"
	"dryfit/internal/rule"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// blank is the tile that pieces are cut from and how it may be cut.
type blank struct {
	size       bond.Size
	hex        bool
	turns      document.Turns
	kerf       unit.Length
	leastStrip unit.Length
}

func (m *maker) blank(g good, size int) blank {
	b := blank{size: g.sizes[size], hex: g.tile.Shape == document.Hexagon, turns: g.tile.Turns.Or(document.HalfTurn)}
	if m.doc.Tools.Snap.Or(false) {
		b.leastStrip = g.tile.LeastStrip.Or(m.doc.Tools.LeastStrip.Or(rule.LeastStrip.Limit))
		return b
	}
	b.kerf = m.doc.Tools.Kerf.Or(defaultKerf)
	return b
}

// told is the blank as the plan tells it.
func (b blank) told() Blank {
	return Blank{Length: b.size.Length, Width: b.size.Width, Quarter: b.turns == document.AnyTurn, Half: b.turns != document.NoTurn,
		Kerf: b.kerf, LeastStrip: b.leastStrip}
}

// defaultKerf is a wet saw's blade with its wander (common practice).
const defaultKerf = unit.Inch / 16

// Budgets of steps for the packing: while layouts are compared, and for the plan itself. More steps rarely save a tile;
// the gap to the bound is printed.
const (
	judging = 3000
	packing = 12_000
)

// pack finds the fewest blanks for the cut pieces of one size, within a budget of steps. A
// hexagon yields one piece: its bound is by area.
func (b blank) pack(pieces []piece.Piece, budget int) pair.Result {
	if b.hex {
		return b.onePiece(pieces)
	}
	p := pair.Problem{W: int64(b.size.Length), H: int64(b.size.Width), Kerf: int64(b.kerf), LeastStrip: int64(b.leastStrip), Budget: budget}
	for _, c := range pieces {
		p.Pieces = append(p.Pieces, b.piece(c))
	}
	return pair.Pack(p)
}

func (b blank) onePiece(pieces []piece.Piece) pair.Result {
	r := pair.Result{Blanks: len(pieces), Proof: pair.ProofArea}
	var area unit.Area
	for i, p := range pieces {
		box := p.InTile.Bounds()
		r.Placements = append(r.Placements, pair.Placement{Piece: i, Blank: i, Turn: pair.Turn0, X: int64(box.Min.X), Y: int64(box.Min.Y)})
		area += p.Area
	}
	tile := b.size.Length.Times(b.size.Width) // of the hexagon's bounds: more than its area, so the bound holds
	r.Lower = int((area + tile - 1) / tile)
	return r
}

// piece is a cut piece as the packing sees it: its bounds, the factory sides it keeps, its outline if not a rectangle.
func (b blank) piece(c piece.Piece) pair.Piece {
	box := c.InTile.Bounds()
	p := pair.Piece{W: int64(box.W()), H: int64(box.H()), Keep: keeps(c), Turns: b.turned()}
	if c.Area != box.W().Times(box.H()) && convex(c.InTile) {
		for _, v := range c.InTile[0] {
			p.Shape = append(p.Shape, pair.Pt{X: int64(v.P.X - box.Min.X), Y: int64(v.P.Y - box.Min.Y)})
		}
	}
	return p
}

// turned: a quarter turn is allowed where the tile has no direction, a half turn where upside down looks the same.
func (b blank) turned() pair.Turn {
	switch b.turns {
	case document.AnyTurn:
		return pair.AllTurns
	case document.HalfTurn:
		return pair.HalfTurns
	}
	return pair.Turn0
}

// keeps collects the factory sides that must stay on the piece.
func keeps(c piece.Piece) (k pair.Side) {
	for _, e := range c.Edges {
		if e.Keep {
			k |= sideOf(e.Label)
		}
	}
	return k
}

func sideOf(l geom.Label) pair.Side {
	switch l {
	case lay.Left:
		return pair.Left
	case lay.Bottom:
		return pair.Bottom
	case lay.Right:
		return pair.Right
	case lay.Top:
		return pair.Top
	}
	return 0
}

func convex(s geom.Region) bool {
	if len(s) != 1 {
		return false
	}
	r := s[0]
	for i := range r {
		if geom.Side(r[i].P, r[(i+1)%len(r)].P, r[(i+2)%len(r)].P) < 0 {
			return false
		}
	}
	return true
}

// count is how many tiles a layout takes.
type count struct {
	whole, cut   int
	tiles, least int // for the cut pieces alone
	neck         unit.Length
	neckAt       string
}

// count packs the cut pieces of a laid field, size by size. What goes in uncut takes a whole tile.
func (m *maker) count(g good, pieces []piece.Piece) count {
	var c count
	bySize := make([][]piece.Piece, len(g.sizes))
	for _, p := range pieces {
		if n := p.Cut.Neck; n > 0 && (c.neck == 0 || n < c.neck) {
			c.neck, c.neckAt = n, p.Address
		}
		if p.Uncut() {
			c.whole++
			continue
		}
		c.cut++
		bySize[p.Size] = append(bySize[p.Size], p)
	}
	for size, cut := range bySize {
		if len(cut) > 0 {
			r := m.blank(g, size).pack(cut, judging)
			c.tiles, c.least = c.tiles+r.Blanks, c.least+r.Lower
		}
	}
	return c
}

func quarter(t pair.Turn) int {
	return slices.Index([]pair.Turn{pair.Turn0, pair.Turn90, pair.Turn180, pair.Turn270}, t)
}
