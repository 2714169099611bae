package geom

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

// Rows of three points: plain, in one line, in one point, a count off a line, at the ends of the reach.
var triples = []string{
	"0 0, 4 0, 0 3", "0 0, 2 2, 5 5", "1 1, 1 1, 7 3", "3 3, 3 3, 3 3", "0 0, 1000000 1, 2000000 2",
	"0 0, 1000000 1, 2000000 3", "-536870912 -536870912, 536870912 -536870912, 536870912 536870912",
	"-536870912 536870912, 536870912 -536870912, 536870911 -536870911", "-536870912 -536870912, 536870912 536870911, 536870911 536870910",
	"536870912 -536870912, -536870912 536870912, 536870912 536870912",
}

func TestCrossIdentities(t *testing.T) {
	for _, row := range triples {
		v := parse(t, row)[0]
		identities(t, v[0].P, v[1].P, v[2].P)
	}
	rapid.Check(t, func(t *rapid.T) { identities(t, drawPoint(t), drawPoint(t), drawPoint(t)) })
}

func drawPoint(t *rapid.T) Point {
	ordinate := rapid.Int64Range(-int64(unit.Reach), int64(unit.Reach))
	return pt(unit.Length(ordinate.Draw(t, "x")), unit.Length(ordinate.Draw(t, "y")))
}

// identities are numbered as in the contract of Cross.
func identities(t rapid.TB, a, b, c Point) {
	t.Helper()
	v, o := Cross(a, b, c), Point{}
	neg := func(p Point) Point { return o.Sub(p) }
	flip := func(p Point) Point { return pt(-p.X, p.Y) }
	swap := func(p Point) Point { return pt(p.Y, p.X) }
	half := func(p Point) Point { return pt(p.X/2, p.Y/2) }
	p, q, r, d := half(a), half(b), half(c), half(swap(c))
	for _, check := range []struct {
		number    int
		got, want int64
	}{
		{1, Cross(b, c, a), v}, {1, Cross(c, a, b), v}, {2, Cross(a, c, b), -v},
		{3, Cross(a, a, c), 0}, {3, Cross(a, b, a), 0}, {3, Cross(a, b, b), 0},
		{4, Cross(p.Add(d), q.Add(d), r.Add(d)), Cross(p, q, r)},
		{5, Cross(neg(a), neg(b), neg(c)), v}, {6, Cross(d, a, b) + Cross(d, b, c) + Cross(d, c, a), v},
		{7, Cross(flip(a), flip(b), flip(c)), -v}, {7, Cross(swap(a), swap(b), swap(c)), -v},
	} {
		if check.got != check.want {
			t.Errorf("identity %d of %v %v %v: %d, want %d", check.number, a, b, c, check.got, check.want)
		}
	}
	if want := bigCross(a, b, c); want.Cmp(big.NewInt(v)) != 0 || want.Sign() != Side(a, b, c) {
		t.Errorf("Cross(%v, %v, %v) = %d, in long numbers %d", a, b, c, v, want)
	}
}

// bigCross is the determinant in numbers of any length.
func bigCross(a, b, c Point) *big.Int {
	n := func(l unit.Length) *big.Int { return big.NewInt(int64(l)) }
	p := new(big.Int).Mul(n(b.X-a.X), n(c.Y-a.Y))
	return p.Sub(p, new(big.Int).Mul(n(b.Y-a.Y), n(c.X-a.X)))
}
