package piece

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/lay"
)

// A trifle is a cut that would take less than lay.LeastWidth off a tile, where the edge's joint forgives that much: nobody cuts it, the
// joint is so much narrower there. A piece with inward corners is not made by cuts right across: its trifles are hollows.

// worth returns the piece without its trifles: the outline that is really cut, and its cuts.
func (w *work) worth(shape geom.Region, lines []line) (geom.Region, []line) {
	if !convex(shape) {
		shape = w.filled(shape)
		lines = w.cutsOf(shape)
	}
	if !convex(shape) {
		return shape, lines
	}
	for i := 0; i < len(lines); i++ {
		if rest := without(lines, i); w.trifle(lines[i], w.made(rest)) {
			shape = w.made(rest)
			lines, i = w.named(shape, rest), -1
		}
	}
	return shape, lines
}

// convex reports whether a piece has no inward corner and no opening.
func convex(shape geom.Region) bool {
	_, bays := turns(shape[0])
	return len(shape) == 1 && bays == 0
}

func without(lines []line, i int) []line {
	out := make([]line, 0, len(lines))
	out = append(out, lines[:i]...)
	return append(out, lines[i+1:]...)
}

// made cuts the whole tile along the lines; the cut of line i is labelled i+1.
func (w *work) made(lines []line) geom.Region {
	out := lay.Lying(lay.Factory(w.proto), w.proto)
	for i, l := range lines {
		out = out.HalfPlane(l.a, l.b, geom.Label(i+1))
	}
	return out
}

// named returns the cuts of an outline that made labelled, each meeting what its line met.
func (w *work) named(shape geom.Region, lines []line) []line {
	var out []line
	for _, r := range shape {
		for _, l := range cutLines(r, w.hex) {
			l.meets = lines[l.meets[0]-1].meets
			out = append(out, l)
		}
	}
	return out
}

// trifle reports whether a line takes next to nothing off a shape, and the joint forgives it.
func (w *work) trifle(l line, from geom.Region) bool {
	most := min(lay.LeastWidth-1, w.least(l).Forgive)
	for _, r := range from {
		for _, v := range r {
			if geom.Side(l.a, l.b, v.P) < 0 && geom.DistToLine(v.P, l.a, l.b) > most {
				return false
			}
		}
	}
	return most >= 0 && len(from) > 0
}
