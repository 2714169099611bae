package lay

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

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

// met reports whether a neighbor lies outside the edge a->b, whose piece is on its left: whether the field goes on, somewhere along
// the edge, for at least LeastWidth beyond the joint. A narrower strip is dropped and is no neighbor.
func (s *setter) met(a, b geom.Point) bool {
	out := outward(a, b)
	deep := s.b.Joint + LeastWidth
	return s.index.Classify(geom.Bound(a.Add(out(deep-1)), b.Add(out(deep)))) != geom.Outside
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
