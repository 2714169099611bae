package piece

import (
	"cmp"
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/unit"
)

// Describe says all that a setter must know of one piece.
func Describe(in Input) Piece {
	course, column := in.Numbers.Of(in.Laid)
	out := Piece{
		Address: address(in.Mark, course, column, in.Laid.Part), Course: course, Column: column,
		Size: in.Laid.Size, Turn: in.Laid.Turn, Whole: in.Laid.Whole,
		OnFace: lay.OnPattern(in.Laid, in.Bond).Out(in.Frame), Area: in.Laid.Shape.Area(),
	}
	w := newWork(in)
	out.InTile = in.Laid.Shape
	if len(w.under) > 0 {
		out.InTile = lay.Own(w.Laid.Shape, w.proto)
	}
	out.Edges = w.edges(out.InTile)
	out.Cut = w.cut()
	out.Holes = w.holes()
	return out
}

// work is a piece on the bench, as it lies in the pattern: what a person calls left is at the left of the tile in place, and
// not of a tile that lies on its own.
type work struct {
	Input
	proto bond.Proto
	l, w  unit.Length // of the whole tile as it lies
	hex   bool
	shape geom.Region // as it is really cut: without trifles
	lines []line
	has   [7]bool // factory sides on the piece, by -label
	under []stood
}

func newWork(in Input) *work {
	p := in.Bond.Protos[in.Laid.Proto]
	w := &work{Input: in, proto: p, l: p.W, w: p.H, hex: p.Ring != nil}
	w.Laid.Shape = lay.Lying(in.Laid.Shape, p)
	w.Laid.Holes = slices.Clone(in.Laid.Holes)
	for i, h := range w.Laid.Holes {
		w.Laid.Holes[i].Center = lay.LyingPoint(h.Center, p)
	}
	w.read()
	w.slide()
	return w
}

// read finds the cuts and the factory sides of the piece as it lies in the tile.
func (w *work) read() {
	w.has = [7]bool{}
	w.shape, w.lines = w.worth(w.Laid.Shape, w.cutsOf(w.Laid.Shape))
	for _, r := range w.shape {
		for _, v := range r {
			if v.Edge < 0 {
				w.has[-v.Edge] = true
			}
		}
	}
}

// cutsOf returns the cuts of all rings of a shape.
func (w *work) cutsOf(shape geom.Region) []line {
	var out []line
	for _, r := range shape {
		out = append(out, cutLines(r, w.hex)...)
	}
	return out
}

// factory names the sides of a tile as it lies, by -label.
var factory = [7]string{"", isFactory + "left", isFactory + "bottom", isFactory + "right", isFactory + "top"}

// isFactory begins the name of every factory side.
const isFactory = "factory "

// hexagonal names the sides of a hexagon, by -label: standing on a corner, and turned to stand on a side.
var hexagonal = [2][7]string{
	{"", isFactory + "lower right", isFactory + "right", isFactory + "upper right",
		isFactory + "upper left", isFactory + "left", isFactory + "lower left"},
	{"", isFactory + "upper right", isFactory + "top", isFactory + "upper left",
		isFactory + "lower left", isFactory + "bottom", isFactory + "lower right"},
}

// side names a factory side of the tile's own frame.
func (w *work) side(own geom.Label) string {
	if w.hex {
		return hexagonal[w.proto.Turn&1][-own]
	}
	return factory[-lay.TurnSide(own, w.proto.Turn)]
}

// edges lists every label of the outline in the tile's own frame: factory sides first, then cuts.
func (w *work) edges(own geom.Region) []PieceEdge {
	all := labels(own)
	out := make([]PieceEdge, len(all))
	for i, l := range all {
		if l < 0 {
			out[i] = PieceEdge{Label: l, Name: w.side(l), Keep: !w.free(l)}
		} else {
			out[i] = PieceEdge{Label: l, Name: "cut: " + w.edge(l).Name}
		}
	}
	return out
}

// labels returns the labels of a region once each: -1, -2 …, then cuts in ascending order.
func labels(g geom.Region) []geom.Label {
	out := make([]geom.Label, 0, 8)
	for _, r := range g {
		for _, v := range r {
			if !slices.Contains(out, v.Edge) {
				out = append(out, v.Edge)
			}
		}
	}
	slices.SortFunc(out, func(a, b geom.Label) int {
		if a < 0 && b < 0 {
			return cmp.Compare(b, a)
		}
		return cmp.Compare(a, b)
	})
	return out
}
