package geom

import (
	"dryfit/internal/unit"

	sf "github.com/peterstace/simplefeatures/geom"
)

// source is an edge of an operand, directed as it would run in the result.
type source struct {
	a, b  Point
	label Label
}

// sources lists the edges of a region, turned round if the region is taken away.
func sources(g Region, reversed bool) []source {
	var out []source
	for _, r := range g {
		for i, v := range r {
			s := source{v.P, r.end(i), v.Edge}
			if reversed {
				s.a, s.b = s.b, s.a
			}
			out = append(out, s)
		}
	}
	return out
}

// relabeled takes a result over and labels each of its edges from the source that it lies on, the first ones before
// the second ones.
func relabeled(result sf.Geometry, first, second []source) Region {
	all := append(first, second...)
	var out Region
	for _, r := range fromLibrary(result) {
		for i := range r {
			r[i].Edge = labelOf(r[i].P, r.end(i), all)
		}
		if r = r.Clean(); r != nil {
			out = append(out, r)
		}
	}
	return out
}

// onGrid is how far a rounded corner may lie off the edge that it was constructed on: less than a count by rounding
// both coordinates, and as much again where the edge's other end was rounded too.
const onGrid unit.Length = 2

// labelOf returns the label of the first source that runs the same way and has both ends on it, exactly if there is
// one, else within the grid, the nearest first.
func labelOf(a, b Point, all []source) Label {
	best, least := Label(0), onGrid+1
	for _, s := range all {
		if dot(s.a, s.b, a, b) <= 0 {
			continue
		}
		if onSegment(s.a, s.b, a) && onSegment(s.a, s.b, b) {
			return s.label
		}
		if d := max(DistToSegment(a, s.a, s.b), DistToSegment(b, s.a, s.b)); d < least {
			best, least = s.label, d
		}
	}
	return best
}
