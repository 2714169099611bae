package report

import (
	"fmt"
	"strings"

	"dryfit/internal/plan"
	"dryfit/internal/tiling"
)

// Goods lists how many tiles to buy and how the number comes about.
func Goods(p plan.Plan) Table {
	t := Table{Title: "Tiles to buy", Empty: "No face is laid out.",
		Columns: numbers(text("Tile", "Set whole", "Cut up", "For breakage", "Spares", "Buy", "In boxes of", "Boxes", "Left over"), 1, 2, 3, 4, 5, 6, 7, 8)}
	for _, g := range p.Tiling.Goods {
		row := []string{GoodName(p, g), fmt.Sprint(g.Whole), fmt.Sprint(g.CutFrom), fmt.Sprint(g.Breakage), fmt.Sprint(g.Spares), fmt.Sprint(g.Buy), "not given", "", ""}
		if g.PerBox > 0 {
			row[6], row[7], row[8] = fmt.Sprint(g.PerBox), fmt.Sprint(g.Boxes), fmt.Sprint(g.Leftover)
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

// Bound says how good the cutting plan of a good is.
func Bound(g tiling.Good) string {
	if g.CutFrom == 0 {
		return "nothing is cut from it"
	}
	words := fmt.Sprintf("%s cut up; ", Count(g.CutFrom, "tile is", "tiles are"))
	if g.Least >= g.CutFrom {
		return words + "no way needs fewer"
	}
	return words + fmt.Sprintf("no way needs fewer than %d, so at most %d could be saved", g.Least, g.CutFrom-g.Least)
}

// Cutting lists which piece comes out of which tile.
func Cutting(p plan.Plan, g tiling.Good) Table {
	t := Table{Title: "Cutting plan: " + GoodName(p, g), Empty: "Nothing is cut from it.", Columns: numbers(text("Tile", "Pieces", "Cut"), 0)}
	for _, s := range ByTile(g) {
		t.Rows = append(t.Rows, []string{fmt.Sprint(s[0].Tile), strings.Join(pieceNames(s), ", "), box})
	}
	return t
}

func pieceNames(s []tiling.Source) []string {
	out := make([]string, len(s))
	for i, x := range s {
		out[i] = x.Piece
	}
	return out
}

// ByTile groups a good's sources by the tile they come from, in the order of the tiles' numbers.
func ByTile(g tiling.Good) [][]tiling.Source {
	out := make([][]tiling.Source, g.CutFrom)
	for _, s := range g.From {
		if s.Tile >= 1 && s.Tile <= len(out) {
			out[s.Tile-1] = append(out[s.Tile-1], s)
		}
	}
	full := out[:0]
	for _, s := range out {
		if len(s) > 0 {
			full = append(full, s)
		}
	}
	return full
}

// ProofWords says what proves that no cutting plan needs fewer tiles.
func ProofWords(g tiling.Good) string {
	switch g.Proof {
	case "area":
		return "the pieces' area"
	case "corners":
		return "the factory corners to keep"
	case "matching":
		return "a largest matching of pieces that share a tile"
	case "lp":
		return "linear programming over all ways to cut a tile"
	case "":
		return "none needed"
	}
	return g.Proof
}

// KerfWords says what a cut takes between two pieces of one tile.
func KerfWords(p plan.Plan) string {
	switch t := p.Document.Tools; {
	case t.Snap.Or(false):
		return "Scored and snapped: a cut takes nothing."
	case t.Kerf.Known:
		return "The blade takes " + p.Style.Format(t.Kerf.V) + " between two pieces of one tile."
	}
	return "A blade's width is kept between two pieces of one tile; yours is not given, the usual one is taken."
}
