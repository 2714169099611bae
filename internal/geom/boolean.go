package geom

import (
	"fmt"
	"math"

	sf "github.com/peterstace/simplefeatures/geom"

	"dryfit/internal/unit"
)

// InvalidError says that a region given to a boolean operation is none: a ring crosses or touches itself.
type InvalidError struct {
	Operand int // 0 for the receiver, from 1 for the arguments
	Ring    int
	I, J    int // the first two edges that clash
}

func (e *InvalidError) Error() string {
	return fmt.Sprintf("operand %d, ring %d: edges %d and %d meet", e.Operand, e.Ring, e.I, e.J)
}

// Minus returns g less the union of the openings, which may touch, overlap and reach over the outline. Every edge keeps
// the label of the edge it lies on, g's before an opening's. Constructed corners are rounded half up once.
func (g Region) Minus(openings []Region) (Region, error) {
	if err := valid(append([]Region{g}, openings...)); err != nil {
		return nil, err
	}
	var all []sf.Geometry
	for _, o := range openings {
		all = append(all, toLibrary(o))
	}
	holes, err := sf.UnaryUnion(sf.NewGeometryCollection(all).AsGeometry())
	if err != nil {
		return nil, fmt.Errorf("union of openings: %w", err)
	}
	left, err := sf.Difference(toLibrary(g), holes)
	if err != nil {
		return nil, fmt.Errorf("outline less openings: %w", err)
	}
	return relabeled(left, sources(g, false), sources(flatten(openings), true)), nil
}

// And returns what g and h share. Every edge keeps the label of the edge it lies on, g's before h's.
func (g Region) And(h Region) (Region, error) { return g.combine(h, sf.Intersection) }

// Union returns what lies in g, in h or in both. Every edge keeps the label of the edge it lies on, g's before h's.
func (g Region) Union(h Region) (Region, error) { return g.combine(h, sf.Union) }

func (g Region) combine(h Region, op func(a, b sf.Geometry) (sf.Geometry, error)) (Region, error) {
	if err := valid([]Region{g, h}); err != nil {
		return nil, err
	}
	out, err := op(toLibrary(g), toLibrary(h))
	if err != nil {
		return nil, fmt.Errorf("combining regions: %w", err)
	}
	return relabeled(out, sources(g, false), sources(h, false)), nil
}

func valid(operands []Region) error {
	for k, g := range operands {
		for n, r := range g {
			if ok, i, j := r.Simple(); !ok {
				return &InvalidError{k, n, i, j}
			}
		}
	}
	return nil
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
