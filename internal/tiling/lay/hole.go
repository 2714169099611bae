package lay

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/unit"
)

// pierce returns the hole that a hit makes in a piece, if the circle shares area with it.
func (s *setter) pierce(p Piece, h Hit) (Hole, bool) {
	if !near(s.b.Protos[p.Proto], p.At, h) {
		return Hole{}, false
	}
	center := s.molds[p.Proto].point(h.Center.Sub(p.At))
	rim := Rim(p.Shape, center)
	inside := p.Shape.Contains(center) >= 0
	bite := 2*rim < h.Drill
	if !inside && !bite {
		return Hole{}, false
	}
	return Hole{Index: h.Index, Center: center, Drill: h.Drill, Bite: bite}, true
}

// near reports whether the circle's square meets the tile's.
func near(p bond.Proto, at geom.Point, h Hit) bool {
	r := h.Drill.MulDiv(1, 2)
	box := geom.Rect{Min: geom.Point{X: h.Center.X - r, Y: h.Center.Y - r}, Max: geom.Point{X: h.Center.X + r, Y: h.Center.Y + r}}
	return box.Overlaps(geom.Rect{Min: at, Max: at.Add(geom.Point{X: p.W, Y: p.H})})
}

// Rim returns the distance from a point to the nearest edge of a shape, rounded half up; it does not tell inside from
// outside.
func Rim(g geom.Region, p geom.Point) unit.Length {
	best := unit.Length(-1)
	for _, r := range g {
		for i, v := range r {
			d := geom.DistToSegment(p, v.P, r[(i+1)%len(r)].P)
			if best < 0 || d < best {
				best = d
			}
		}
	}
	return best
}
