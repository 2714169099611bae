package geom

import (
	"math/bits"

	"dryfit/internal/unit"
)

// crossing returns the point where the line on which p and q have the signed distances dp and dq cuts p q, that is
// p + (q-p)·dp/(dp-dq), rounded half up once. It gives the same point for q, p and for negated distances.
// dp must differ from dq, and their difference must fit in an int64.
func crossing(p, q Point, dp, dq int64) Point {
	return Point{along(p.X, q.X, dp, dp-dq), along(p.Y, q.Y, dp, dp-dq)}
}

// along returns from + (to-from)·n/d, rounded half up.
func along(from, to unit.Length, n, d int64) unit.Length {
	if from == to {
		return from
	}
	return from + unit.Length(mulDiv(int64(to-from), n, d))
}

// mulDiv returns floor(a·n/d + 1/2), with the product in 128 bits. The quotient must fit in an int64.
func mulDiv(a, n, d int64) int64 {
	negative := (a < 0) != (n < 0) != (d < 0)
	ud := abs(d)
	hi, lo := bits.Mul64(abs(a), abs(n))
	q, rest := bits.Div64(hi%ud, lo, ud)
	switch {
	case !negative && rest >= ud-rest:
		return int64(q) + 1
	case negative && rest > ud-rest:
		return -int64(q) - 1
	case negative:
		return -int64(q)
	}
	return int64(q)
}

func abs(v int64) uint64 {
	if v < 0 {
		return uint64(-v)
	}
	return uint64(v)
}

// Intersect returns where the line through a and b meets the line through c and d, rounded half up once. It is false
// if they are parallel or meet beyond unit.Reach.
func Intersect(a, b, c, d Point) (Point, bool) {
	da, db := Cross(c, d, a), Cross(c, d, b)
	if da == db || !reachable(a.X, b.X, da, da-db) || !reachable(a.Y, b.Y, da, da-db) {
		return Point{}, false
	}
	return crossing(a, b, da, db), true
}

// reachable reports whether from + (to-from)·n/d lies within unit.Reach.
func reachable(from, to unit.Length, n, d int64) bool {
	hi, lo := bits.Mul64(abs(int64(to-from)), abs(n))
	if hi >= abs(d) {
		return false
	}
	q, _ := bits.Div64(hi, lo, abs(d))
	return q < uint64(4*unit.Reach) && along(from, to, n, d).Abs() <= unit.Reach
}
