package lay_test

import (
	sf "github.com/peterstace/simplefeatures/geom"

	"dryfit/internal/geom"
)

// clippedArea is the area of the part of a region in a convex ring, by the textbook method of Sutherland and Hodgman
// (Communications of the ACM 17, 1974, p. 32) on floating point numbers. It is right in area for any rings, and only in area.
func clippedArea(g geom.Region, convex geom.Ring) float64 {
	var sum float64
	o := convex[0].P
	for _, r := range g {
		poly := floats(r, o)
		for i := range convex {
			a, b := float(convex[i].P, o), float(convex[(i+1)%len(convex)].P, o)
			poly = keepLeft(poly, a, b)
		}
		sum += area(poly)
	}
	return sum
}

type xy struct{ x, y float64 }

func float(p, o geom.Point) xy { return xy{float64(p.X - o.X), float64(p.Y - o.Y)} }

func floats(r geom.Ring, o geom.Point) []xy {
	var out []xy
	for _, v := range r {
		out = append(out, float(v.P, o))
	}
	return out
}

func keepLeft(poly []xy, a, b xy) []xy {
	side := func(p xy) float64 { return (b.x-a.x)*(p.y-a.y) - (b.y-a.y)*(p.x-a.x) }
	var out []xy
	for i, p := range poly {
		q := poly[(i+1)%len(poly)]
		sp, sq := side(p), side(q)
		if sp >= 0 {
			out = append(out, p)
		}
		if sp*sq < 0 {
			t := sp / (sp - sq)
			out = append(out, xy{p.x + t*(q.x-p.x), p.y + t*(q.y-p.y)})
		}
	}
	return out
}

func area(poly []xy) float64 {
	var sum float64
	for i, p := range poly {
		q := poly[(i+1)%len(poly)]
		sum += p.x*q.y - p.y*q.x
	}
	return sum / 2
}

// library hands a region to the second library, whose intersections, differences and areas are its own.
func library(t interface{ Fatalf(string, ...any) }, g geom.Region) sf.Geometry {
	var rings []sf.LineString
	for _, r := range g {
		var c []float64
		for i := range len(r) + 1 {
			p := r[i%len(r)].P
			c = append(c, float64(p.X), float64(p.Y))
		}
		rings = append(rings, sf.NewLineString(sf.NewSequence(c, sf.DimXY)))
	}
	p := sf.NewPolygon(rings)
	if err := p.Validate(); err != nil {
		t.Fatalf("no valid polygon: %v", err)
	}
	return p.AsGeometry()
}
