package mip

// One is a row with one variable: A·x >= B.
type One struct{ A, B int64 }

// Fix is the best that one variable can do.
type Fix struct {
	X    int64
	Miss int64 // what the rows lack together at X; 0 where all hold
}

// Single returns the x within [v.Lo, v.Hi] that misses least, of these the
// nearest to 0, of two the lower.
//
// What the rows lack is convex in x and straight between the places where a row
// begins to hold. So the nearest of its least is 0, an end, or a whole number
// beside such a place.
func Single(v Var, rows []One) Fix {
	at := []int64{0, v.Lo, v.Hi}
	for _, r := range rows {
		if r.A != 0 {
			lower := floorDiv(r.B, r.A)
			at = append(at, lower, lower+1)
		}
	}
	best := Fix{X: 0, Miss: missAt(0, rows)}
	for _, x := range at {
		if x < v.Lo || x > v.Hi {
			continue
		}
		if f := (Fix{x, missAt(x, rows)}); f.before(best) {
			best = f
		}
	}
	return best
}

func (f Fix) before(g Fix) bool {
	switch {
	case f.Miss != g.Miss:
		return f.Miss < g.Miss
	case max(f.X, -f.X) != max(g.X, -g.X):
		return max(f.X, -f.X) < max(g.X, -g.X)
	}
	return f.X < g.X
}

func missAt(x int64, rows []One) (miss int64) {
	for _, r := range rows {
		miss += max(0, r.B-r.A*x)
	}
	return miss
}

// floorDiv is the floor of a/b, for b of either sign.
func floorDiv(a, b int64) int64 {
	q := a / b
	if a%b != 0 && (a < 0) != (b < 0) {
		q--
	}
	return q
}

// ceilDiv is the ceiling of a/b.
func ceilDiv(a, b int64) int64 { return -floorDiv(-a, b) }
