package tiling

import (
	"dryfit/internal/diag"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// slim tells of cut pieces that are narrower than their tile is thick: they break at the saw or in the hand (our own
// judgment). A search avoids them; a layout that is pinned or carried round a corner may not.
func (m *maker) slim(g *ground, pieces []piece.Piece) {
	thick := g.good.tile.Thick
	if !thick.Known {
		return
	}
	n, least, worst := 0, thick.V, ""
	for _, p := range pieces {
		w := narrow(p)
		if p.Uncut() || w >= thick.V {
			continue
		}
		n++
		if w < least {
			least, worst = w, p.Address
		}
	}
	if n > 0 {
		m.found(diag.Look, "cuts-too-thin", g.field.At, "pieces of {1} on {2} that are narrower than their tile is thick: {0}, the narrowest {3} with {4}; they break at the saw",
			"move the layout, or leave them out where a wider joint or a trim hides the gap", diag.N(n), diag.T(g.field.Name),
			diag.T(g.canvas.face.Name), diag.T(worst), diag.F(least))
	}
}

// narrow is the lesser extent of a piece as it lies in its tile.
func narrow(p piece.Piece) unit.Length {
	b := p.InTile.Bounds()
	return min(b.W(), b.H())
}
