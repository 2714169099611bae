package export

import (
	"dryfit/internal/plan"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// good is how much of one size of a tile is needed.
type good struct {
	Tile     string   `json:"tile" doc:"the user's name of it"`
	At       place    `json:"at" doc:"in the document"`
	Size     int      `json:"size" doc:"index of the size, of a good that comes in several"`
	Blank    blank    `json:"blank" doc:"the whole tile and how it may be cut"`
	Whole    int      `json:"whole" doc:"set uncut"`
	CutFrom  int      `json:"cutFrom" doc:"cut up"`
	Least    int      `json:"least" doc:"proven: no cutting plan cuts up fewer"`
	Proof    string   `json:"proof" doc:"what proves it"`
	Breakage int      `json:"breakage" doc:"the person's own number"`
	Spares   int      `json:"spares" doc:"the person's own number"`
	Buy      int      `json:"buy" doc:"whole, cut up, breakage and spares together"`
	PerBox   int      `json:"perBox,omitempty" doc:"tiles in a box; absent: not given"`
	Boxes    int      `json:"boxes,omitempty" doc:"to buy"`
	Leftover *int     `json:"leftover,omitempty" doc:"tiles over, of full boxes"`
	Sources  []source `json:"sources" doc:"which cut piece comes out of which tile"`
}

// blank is a whole tile with how it may be cut.
type blank struct {
	Length     unit.Length `json:"length" doc:"real, after a dry lay"`
	Width      unit.Length `json:"width" doc:"real, after a dry lay"`
	Quarter    bool        `json:"quarter" doc:"a piece may lie a quarter turned in it"`
	Half       bool        `json:"half" doc:"a piece may lie upside down in it"`
	Kerf       unit.Length `json:"kerf" doc:"lost between two pieces; 0 where tile is snapped"`
	LeastStrip unit.Length `json:"leastStrip" doc:"narrowest strip that snaps; 0 where tile is sawn"`
}

// source says where in which tile a piece lies.
type source struct {
	Piece string `json:"piece" doc:"its id"`
	Tile  int    `json:"tile" doc:"counted from 1 among the tiles of the good that are cut up"`
	Turn  int    `json:"turn" doc:"quarter turns of the piece's outline, counter-clockwise"`
	At    point  `json:"at" doc:"lower left corner of the turned outline's bounds, in the tile's own frame"`
}

func goodsOf(p plan.Plan) []good {
	return list(p.Tiling.Goods, func(g tiling.Good) good {
		out := good{Tile: g.Tile, At: placeOf(tileNamed(p, g.Tile).At), Size: g.Size, Blank: blank(g.Blank), Whole: g.Whole, CutFrom: g.CutFrom,
			Least: g.Least, Proof: g.Proof, Breakage: g.Breakage, Spares: g.Spares, Buy: g.Buy, PerBox: g.PerBox, Boxes: g.Boxes}
		if g.PerBox > 0 {
			out.Leftover = &g.Leftover
		}
		out.Sources = list(g.From, func(s tiling.Source) source { return source{s.Piece, s.Tile, s.Turn, pointOf(s.At)} })
		return out
	})
}
