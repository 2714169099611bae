package sheet

import (
	"fmt"

	"dryfit/internal/draw"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// scales are reductions 1:n, largest drawing first. ISO 5455 has 2, 5, 10 and their decades; 20, 25 and 50 are usual
// on buildings (ISO 5455 names 20 and 50; 25 is common practice).
var scales = [...]int64{2, 5, 10, 20, 25, 50, 100, 200}

// view places a face on a page: 1 to n, one point of the face at one of the page.
type view struct {
	n  int64
	at draw.XY
	of geom.Point
}

// perUm is how many counts of a length make a micrometre.
const perUm = int64(unit.Micrometre)

// um is a length on paper, rounded half up: the only place where a face's length is rounded for drawing.
func (v view) um(l unit.Length) draw.Um { return draw.Um(l.MulDiv(1, perUm*v.n)) }

// point is where a point of the face stands on the page.
func (v view) point(p geom.Point) draw.XY {
	return v.at.Plus(draw.At(v.um(p.X-v.of.X), v.um(p.Y-v.of.Y)))
}

func (v view) x(x unit.Length) draw.Um { return v.at.X + v.um(x-v.of.X) }
func (v view) y(y unit.Length) draw.Um { return v.at.Y + v.um(y-v.of.Y) }

func (v view) box(r geom.Rect) draw.Box { return draw.Box{Lo: v.point(r.Min), Hi: v.point(r.Max)} }

func (v view) rings(g geom.Region) [][]draw.XY {
	out := make([][]draw.XY, len(g))
	for i, r := range g {
		out[i] = make([]draw.XY, len(r))
		for k, p := range r {
			out[i][k] = v.point(p.P)
		}
	}
	return out
}

func (v view) words() string { return fmt.Sprintf("1:%d", v.n) }

// largest is the largest scale at which a size fits into a room; the smallest that there is where none does.
func largest(w, h unit.Length, room draw.Box) int64 {
	for _, n := range scales {
		v := view{n: n}
		if v.um(w) <= room.W() && v.um(h) <= room.H() {
			return n
		}
	}
	return scales[len(scales)-1]
}
