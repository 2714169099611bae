package geom

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

func TestSimple(t *testing.T) {
	for _, c := range []struct {
		ring string
		ok   bool
		i, j int
	}{
		{"0 0, 4 0, 4 4, 0 4", true, 0, 0},
		{"0 0, 2 0, 4 0, 4 4, 0 4", true, 0, 0},            // straight vertex
		{"0 0, 4 4, 4 0, 0 4", false, 0, 2},                // bow tie
		{"0 0, 4 0, 4 4, 2 0, 0 4", false, 0, 2},           // vertex on an edge
		{"0 0, 4 0, 8 0, 2 0, 2 4", false, 0, 2},           // overlap; the first pair in order of edges
		{"0 0, 4 0, 2 0, 2 4", false, 0, 1},                // straight back
		{"0 0, 4 0, 4 0, 4 4", false, 0, 1},                // no length
		{"0 0, 4 0", false, 0, 1},                          // there and back
		{"0 0", false, 0, 0},                               // no ring
		{"2 0, 4 0, 4 4, 0 4, 0 0, 3 0", false, 0, 4},      // the seam
		{"0 0, 4 0, 4 4, 2 2, 4 6, 0 6, 2 2", false, 2, 5}, // pinched at a vertex
	} {
		ok, i, j := parse(t, c.ring)[0].Simple()
		if ok != c.ok || i != c.i || j != c.j {
			t.Errorf("%s: %v %d %d, want %v %d %d", c.ring, ok, i, j, c.ok, c.i, c.j)
		}
	}
}

// The slow way: solve every pair of edges for a common point in fractions.
func TestSimpleAgainstFractions(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 7).Draw(t, "corners")
		ordinate := rapid.Int64Range(0, 6)
		r := make(Ring, n)
		for i := range r {
			r[i].P = pt(unit.Length(ordinate.Draw(t, "x")), unit.Length(ordinate.Draw(t, "y")))
		}
		ok, i, j := r.Simple()
		wantOK, wantI, wantJ := slowSimple(r)
		if ok != wantOK || i != wantI || j != wantJ {
			t.Fatalf("%s: %v %d %d, want %v %d %d", show(Region{r}), ok, i, j, wantOK, wantI, wantJ)
		}
	})
}

func slowSimple(r Ring) (ok bool, i, j int) {
	n := len(r)
	for i := range n {
		for j := i + 1; j < n; j++ {
			common := commonPoints(r[i].P, r.end(i), r[j].P, r.end(j))
			allowed := 0
			if j == i+1 || i == 0 && j == n-1 {
				allowed = 1
			}
			if common > allowed || r[i].P == r.end(i) && common > 0 && allowed > 0 || r[j].P == r.end(j) && common > 0 && allowed > 0 {
				return false, i, j
			}
		}
	}
	return true, 0, 0
}

// commonPoints returns how many points two closed segments share: 0, 1, or 2 for more.
func commonPoints(a, b, c, d Point) int {
	if bigCross(Point{}, b.Sub(a), d.Sub(c)).Sign() != 0 {
		den := new(big.Rat).SetInt(bigCross(Point{}, b.Sub(a), d.Sub(c)))
		s := new(big.Rat).Quo(new(big.Rat).SetInt(bigCross(Point{}, c.Sub(a), d.Sub(c))), den)
		u := new(big.Rat).Quo(new(big.Rat).SetInt(bigCross(Point{}, c.Sub(a), b.Sub(a))), den)
		if unitInterval(s) && unitInterval(u) {
			return 1
		}
		return 0
	}
	seen := map[Point]bool{} // parallel: a common stretch has two of the four ends
	for _, p := range []Point{a, b} {
		if between(p, c, d) {
			seen[p] = true
		}
	}
	for _, p := range []Point{c, d} {
		if between(p, a, b) {
			seen[p] = true
		}
	}
	return len(seen)
}

func unitInterval(r *big.Rat) bool { return r.Sign() >= 0 && r.Cmp(big.NewRat(1, 1)) <= 0 }

// between reports whether p lies on the closed segment c d.
func between(p, c, d Point) bool {
	if bigCross(c, d, p).Sign() != 0 {
		return false
	}
	return min(c.X, d.X) <= p.X && p.X <= max(c.X, d.X) && min(c.Y, d.Y) <= p.Y && p.Y <= max(c.Y, d.Y)
}
