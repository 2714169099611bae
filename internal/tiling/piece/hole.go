package piece

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/unit"
)

// holes describes what is drilled through the piece.
func (w *work) holes() []PieceHole {
	var out []PieceHole
	for _, h := range w.Laid.Holes {
		out = append(out, w.hole(h))
	}
	return out
}

func (w *work) hole(h lay.Hole) PieceHole {
	out := PieceHole{Drill: h.Drill, Bit: bit(w.Tools.Bits, h.Drill), Bite: h.Bite}
	if h.Index < len(w.Field.Holes) {
		out.Name = w.Field.Holes[h.Index]
	}
	out.FromX, out.EdgeX, out.CutX, out.CutEdgeX = w.locate(toLeft, h.Center)
	out.FromY, out.EdgeY, out.CutY, out.CutEdgeY = w.locate(toBottom, h.Center)
	if !h.Bite {
		out.ToEdge = (2*lay.Rim(w.Laid.Shape, h.Center) - h.Drill).MulDiv(1, 2)
	}
	return out
}

// bit returns the least bit that is wide enough; 0 if there is none.
func bit(bits []unit.Length, drill unit.Length) unit.Length {
	var best unit.Length
	for _, b := range bits {
		if b >= drill && (best == 0 || b < best) {
			best = b
		}
	}
	return best
}

// locate measures a center along one axis: from the left (or bottom) factory side if the piece has it, else from the other, else from
// the cut there. Where the piece is cut on that axis, the center from the cut is given as well: the factory side is at the last joint that was set,
// the cut is at the wall that the pipe was measured from.
func (w *work) locate(f facing, p geom.Point) (from unit.Length, edge string, cut unit.Length, cutEdge string) {
	cut, cutEdge = w.nearestCut(f, p)
	switch o := f.opposite(); {
	case w.onPiece(f):
		return w.from(f, p), w.sideName(f), cut, cutEdge
	case w.onPiece(o):
		return w.from(o, p), w.sideName(o), cut, cutEdge
	case cutEdge != "":
		return cut, cutEdge, 0, ""
	}
	return w.from(f, p), w.sideName(f), 0, ""
}

// onPiece reports whether any of the tile's outermost side in that direction is left.
func (w *work) onPiece(f facing) bool {
	if !w.hex {
		return w.has[-f.label()]
	}
	b := w.shape.Bounds()
	return [...]bool{b.Min.X == 0, b.Min.Y == 0, b.Max.X == w.l, b.Max.Y == w.w}[f]
}

// nearestCut finds the nearest cut that a line through p along the axis meets.
func (w *work) nearestCut(f facing, p geom.Point) (best unit.Length, name string) {
	for _, l := range w.lines {
		if l.facing.upright() != f.upright() {
			continue
		}
		a, b := l.ends()
		if t := along(f, p); along(f, a) <= t && t <= along(f, b) {
			if d := (place(f, p) - l.at(f, t)).Abs(); name == "" || d < best {
				best, name = d, "cut: "+w.meets(l)
			}
		}
	}
	return best, name
}
