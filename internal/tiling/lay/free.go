package lay

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// probe is how deep a strip beyond the joint is looked at for more field: as deep as the least piece is wide.
const probe = LeastWidth

// free finds the factory sides of a cut rectangle that no neighbor meets: beyond the joint there is no field. Sides of hexagons
// always count as met.
func (s *setter) free(p Piece) (out [7]bool) {
	if s.b.Protos[p.Proto].Ring != nil {
		return out
	}
	m := s.molds[p.Proto]
	for l := Left; l >= Top; l-- {
		out[-l] = true
	}
	for _, r := range m.out(p.Shape) {
		for i, v := range r {
			if v.Edge < 0 && s.met(v.P.Add(p.At), r[(i+1)%len(r)].P.Add(p.At)) {
				out[-v.Edge] = false
			}
		}
	}
	return out
}

// met reports whether field lies beyond the joint outside the edge a->b, whose piece is on its left.
func (s *setter) met(a, b geom.Point) bool {
	out := outward(a, b)
	j := s.b.Joint
	from, to := a.Add(out(j)), b.Add(out(j+probe))
	return s.index.Classify(geom.Bound(from, to)) != geom.Outside
}

// outward returns steps to the right of an axis-parallel edge.
func outward(a, b geom.Point) func(unit.Length) geom.Point {
	switch {
	case b.X > a.X:
		return func(d unit.Length) geom.Point { return geom.Point{Y: -d} }
	case b.X < a.X:
		return func(d unit.Length) geom.Point { return geom.Point{Y: d} }
	case b.Y > a.Y:
		return func(d unit.Length) geom.Point { return geom.Point{X: d} }
	}
	return func(d unit.Length) geom.Point { return geom.Point{X: -d} }
}
