package geom

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

// ratRound is floor(r + 1/2).
func ratRound(r *big.Rat) *big.Int {
	r = new(big.Rat).Add(r, big.NewRat(1, 2))
	return new(big.Int).Div(r.Num(), r.Denom()) // Euclidean, so floor
}

func TestMulDivAgainstLongNumbers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Int64Range(-1<<30, 1<<30).Draw(t, "a")
		d := rapid.Int64Range(1, 1<<62).Draw(t, "d")
		n := rapid.Int64Range(-d, d).Draw(t, "n")
		if rapid.Bool().Draw(t, "small") { // ties are common among small numbers
			a, d, n = a%16, d%8+1, n%16
		}
		if rapid.Bool().Draw(t, "negative") {
			d = -d
		}
		exact := new(big.Rat).SetFrac(new(big.Int).Mul(big.NewInt(a), big.NewInt(n)), big.NewInt(d))
		if want := ratRound(exact); big.NewInt(mulDiv(a, n, d)).Cmp(want) != 0 {
			t.Fatalf("%d·%d/%d = %d, want %d", a, n, d, mulDiv(a, n, d), want)
		}
	})
}

func TestIntersect(t *testing.T) {
	for _, c := range []struct{ lines, want string }{
		{"0 0, 4 4, 0 4, 4 0", "2 2"},
		{"0 0, 1 1, 10 0, 10 1", "10 10"},                               // beyond both
		{"0 0, 3 0, 1 1, 2 -1", "2 0"},                                  // 1.5 goes up
		{"0 0, 3 0, -1 1, -2 -1", "-1 0"},                               // -1.5 goes up
		{"0 0, 3 0, 0 1, 3 1", "none"},                                  // parallel
		{"0 0, 3 0, 1 0, 2 0", "none"},                                  // one line
		{"0 0, 1000000 0, 0 1000000, 1000000 999999", "none"},           // meet 10^12 away
		{"0 0, 536870912 1, 0 1, 536870912 0", "268435456 1"},           // 1/2 goes up
		{"0 0, 0 0, 1 1, 2 2", "none"},                                  // a point is no line
		{"-536870912 0, 536870912 0, 0 -536870912, 0 536870912", "0 0"}, // the whole reach
	} {
		v := parse(t, c.lines)[0]
		got := "none"
		if p, ok := Intersect(v[0].P, v[1].P, v[2].P, v[3].P); ok {
			got = showVertex(Vertex{P: p})
		}
		if got != c.want {
			t.Errorf("%s: %s, want %s", c.lines, got, c.want)
		}
	}
}

// A line met from either side, and walked either way, is met in the same point: pieces on both sides of a cut fit.
func TestIntersectSymmetric(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b, c, d := drawPoint(t), drawPoint(t), drawPoint(t), drawPoint(t)
		p, ok := Intersect(a, b, c, d)
		q, ok2 := Intersect(b, a, d, c)
		if p != q || ok != ok2 {
			t.Fatalf("%v and %v", p, q)
		}
		if ok && (p.X.Abs() > unit.Reach || p.Y.Abs() > unit.Reach) {
			t.Fatalf("%v is beyond reach", p)
		}
	})
}
