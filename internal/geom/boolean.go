package geom

import (
	"fmt"
	"math"

	sf "github.com/peterstace/simplefeatures/geom"

	"dryfit/internal/unit"
)

// Minus returns g less the union of the openings, which may touch, overlap and reach over the outline. Every edge keeps
// the label of the edge it lies on, g's before an opening's. Constructed corners are rounded half up once. An operand
// that is no region gives an *InvalidError.
func (g Region) Minus(openings []Region) (Region, error) {
	if err := valid(append([]Region{g}, openings...)); err != nil {
		return nil, err
	}
	var all []sf.Geometry
	for _, o := range openings {
		all = append(all, toLibrary(o))
	}
	left, err := guarded(func() (sf.Geometry, error) {
		taken, err := sf.UnaryUnion(sf.NewGeometryCollection(all).AsGeometry())
		if err != nil {
			return taken, err
		}
		return sf.Difference(toLibrary(g), taken)
	})
	return relabeled(left, sources(g, false), sources(flatten(openings), true)), err
}

// And returns what g and h share. Every edge keeps the label of the edge it lies on, g's before h's. An operand
// that is no region gives an *InvalidError.
func (g Region) And(h Region) (Region, error) { return g.combine(h, sf.Intersection) }

// Union returns what lies in g, in h or in both. Every edge keeps the label of the edge it lies on, g's before h's. An
// operand that is no region gives an *InvalidError.
func (g Region) Union(h Region) (Region, error) { return g.combine(h, sf.Union) }

func (g Region) combine(h Region, op func(a, b sf.Geometry) (sf.Geometry, error)) (Region, error) {
	if err := valid([]Region{g, h}); err != nil {
		return nil, err
	}
	out, err := guarded(func() (sf.Geometry, error) { return op(toLibrary(g), toLibrary(h)) })
	return relabeled(out, sources(g, false), sources(h, false)), err
}

// guarded turns the library's panics, which answer rings that it can not sort into inside and outside, into errors.
func guarded(op func() (sf.Geometry, error)) (g sf.Geometry, err error) {
	defer func() {
		if trouble := recover(); trouble != nil {
			g, err = sf.Geometry{}, fmt.Errorf("combining regions: %v", trouble)
		}
	}()
	if g, err = op(); err != nil {
		return sf.Geometry{}, fmt.Errorf("combining regions: %w", err)
	}
	return g, nil
}

func flatten(gs []Region) Region {
	var out Region
	for _, g := range gs {
		out = append(out, g...)
	}
	return out
}

// toLibrary hands a region over; whole counts within reach are exact in the library's numbers.
func toLibrary(g Region) sf.Geometry {
	var polygons []sf.Polygon
	for _, part := range g.Parts() {
		var rings []sf.LineString
		for _, r := range part {
			rings = append(rings, lineString(r))
		}
		polygons = append(polygons, sf.NewPolygon(rings))
	}
	return sf.NewMultiPolygon(polygons).AsGeometry()
}

func lineString(r Ring) sf.LineString {
	var xy []float64
	for i := 0; i <= len(r); i++ {
		p := r[i%len(r)].P
		xy = append(xy, float64(p.X), float64(p.Y))
	}
	return sf.NewLineString(sf.NewSequence(xy, sf.DimXY))
}

// fromLibrary takes the areas of a result; points and lines, where operands only touch, are left out. Corners
// are rounded here.
func fromLibrary(g sf.Geometry) Region {
	var out Region
	for _, single := range g.Dump() {
		p, ok := single.AsPolygon()
		if !ok {
			continue
		}
		p = p.ForceCCW()
		for _, ls := range p.DumpRings() {
			out = append(out, ringOf(ls.Coordinates()))
		}
	}
	return out
}

func ringOf(s sf.Sequence) Ring {
	r := make(Ring, 0, s.Length())
	for i := range s.Length() - 1 {
		xy := s.GetXY(i)
		r = append(r, Vertex{P: Point{roundCount(xy.X), roundCount(xy.Y)}})
	}
	return r
}

// roundCount rounds a coordinate that the library constructed, half up.
func roundCount(v float64) unit.Length { return unit.Length(math.Floor(v + 0.5)) }
