package bond

import (
	"math"

	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// hexagon lays hexagons in courses, corner up; with Upright the pattern is turned by a quarter (flat side up). The outline is
// rounded once: its slanted sides are within a count of true.
func hexagon(_ Spec, g Goods, _ *diag.List) Bond {
	flats, corners := hexSize(g.Sizes[0])
	ring := hexRing(flats, corners)
	pitch := flats + g.Joint
	rise := courseRise(flats, corners, g.Joint)
	b := Bond{U: geom.Point{X: pitch}, V: geom.Point{Y: 2 * rise}, Courses: true,
		CourseBy: [2]int{0, 2}, ColumnBy: [2]int{1, 0}}
	for k := range 2 {
		at := geom.Point{X: pitch.MulDiv(int64(k), 2), Y: rise * unit.Length(k)}
		b.Protos = append(b.Protos, Proto{At: at, W: flats, H: corners, Ring: ring, Course: k})
	}
	return b
}

// hexSize returns the width across the flats and the length across the corners: as told, or of a regular hexagon, 2/√3
// of the flats, rounded once.
func hexSize(s Size) (flats, corners unit.Length) {
	if s.Length > s.Width {
		return s.Width, s.Length
	}
	return s.Width, unit.FromFloat(float64(s.Width) * 2 / math.Sqrt(3))
}

// hexRing returns the outline from the lower left corner of its bounds, first the lower right side, labelled -1 … -6.
func hexRing(flats, corners unit.Length) geom.Ring {
	half := flats.MulDiv(1, 2)
	low := corners.MulDiv(1, 4)
	high := corners - low
	return geom.Ring{
		{P: geom.Point{X: half}, Edge: -1}, {P: geom.Point{X: flats, Y: low}, Edge: -2},
		{P: geom.Point{X: flats, Y: high}, Edge: -3}, {P: geom.Point{X: half, Y: corners}, Edge: -4},
		{P: geom.Point{Y: high}, Edge: -5}, {P: geom.Point{Y: low}, Edge: -6},
	}
}

// courseRise returns the pitch of the courses that leaves the joint between slanted sides. A slanted side runs flats/2 across and
// c = corners/4 up, so a step of (pitch/2, rise) moves it square to itself by (pitch/2·c + rise·flats/2)/s with
// s = √(c² + flats²/4); opposite sides are (flats/2·c + 3c·flats/2)/s apart, and the joint is the difference. For a
// regular hexagon this is √3/2 of the pitch.
func courseRise(flats, corners, joint unit.Length) unit.Length {
	f, c, j := float64(flats)/2, float64(corners)/4, float64(joint)
	s := math.Hypot(f, c)
	return unit.FromFloat((4*f*c + j*s - (f+j/2)*c) / f)
}
