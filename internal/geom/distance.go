package geom

import (
	"math"
	"math/bits"

	"dryfit/internal/unit"
)

// Dist returns the distance of two points, rounded half up.
func Dist(p, q Point) unit.Length { return unit.Length(roundedRoot(dot(p, q, p, q))) }

// DistToLine returns the distance of p to the line through a and b, rounded half up; to a if they are one point.
func DistToLine(p, a, b Point) unit.Length {
	if a == b {
		return Dist(p, a)
	}
	return unit.Length(roundedQuotient(abs(Cross(a, b, p)), uint64(dot(a, b, a, b))))
}

// DistToSegment returns the distance of p to the segment a b, rounded half up.
func DistToSegment(p, a, b Point) unit.Length {
	switch {
	case dot(a, b, a, p) <= 0:
		return Dist(p, a)
	case dot(b, a, b, p) <= 0:
		return Dist(p, b)
	}
	return DistToLine(p, a, b)
}

// roundedRoot returns floor(√v + 1/2), the r for which r² - r < v ≤ r² + r: whole numbers on both sides of (r ± 1/2)².
func roundedRoot(v int64) int64 {
	r := int64(math.Sqrt(float64(v)) + 0.5)
	for r > 0 && r*r-r >= v {
		r--
	}
	for r*r+r < v {
		r++
	}
	return r
}

// roundedQuotient returns floor(c/√q + 1/2), the greatest r with (2r-1)²·q ≤ 4c². c and q are below 2^62.
func roundedQuotient(c, q uint64) int64 {
	r := uint64(float64(c)/math.Sqrt(float64(q)) + 0.5)
	for r > 0 && !notBelow(c, q, r) {
		r--
	}
	for notBelow(c, q, r+1) {
		r++
	}
	return int64(r)
}

// notBelow reports whether c/√q ≥ r - 1/2 for r > 0, in 128 bits.
func notBelow(c, q, r uint64) bool {
	hi, lo := bits.Mul64((2*r-1)*(2*r-1), q)
	wantHi, wantLo := bits.Mul64(2*c, 2*c)
	return hi < wantHi || hi == wantHi && lo <= wantLo
}
