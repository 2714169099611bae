package geom

// Cross returns (b-a)×(c-a): twice the signed area of the triangle a b c. It is exact for points within
// unit.Reach. Identities, for all points within reach:
//
//  1. Cross(a,b,c) = Cross(b,c,a) = Cross(c,a,b)
//  2. Cross(a,c,b) = -Cross(a,b,c)
//  3. Cross(a,a,c) = Cross(a,b,a) = Cross(a,b,b) = 0
//  4. Cross(a+d,b+d,c+d) = Cross(a,b,c)
//  5. Cross(-a,-b,-c) = Cross(a,b,c)
//  6. Cross(a,b,c) = Cross(p,a,b) + Cross(p,b,c) + Cross(p,c,a)
//  7. mirroring in either axis, or swapping x and y, changes only the sign
func Cross(a, b, c Point) int64 {
	return int64(b.X-a.X)*int64(c.Y-a.Y) - int64(b.Y-a.Y)*int64(c.X-a.X)
}

// Side returns +1 if p lies left of the directed line a->b, 0 on it, -1 right of it: the sign of Cross.
func Side(a, b, p Point) int { return sign(Cross(a, b, p)) }

func sign(v int64) int {
	switch {
	case v > 0:
		return 1
	case v < 0:
		return -1
	}
	return 0
}

// dot returns (b-a)·(d-c).
func dot(a, b, c, d Point) int64 {
	return int64(b.X-a.X)*int64(d.X-c.X) + int64(b.Y-a.Y)*int64(d.Y-c.Y)
}

// onSegment reports whether p lies on the closed segment a b.
func onSegment(a, b, p Point) bool {
	return Cross(a, b, p) == 0 && dot(p, a, p, b) <= 0
}

// segmentsMeet reports whether the closed segments a b and c d share a point.
func segmentsMeet(a, b, c, d Point) bool {
	if !(Bound(a, b)).touches(Bound(c, d)) {
		return false
	}
	return Side(a, b, c)*Side(a, b, d) <= 0 && Side(c, d, a)*Side(c, d, b) <= 0
}
