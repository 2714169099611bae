package unit

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

// The grid makes every figure of both systems whole: 16 CFR 500.19 (1 in = 2.54 cm, 1 ft = 30.48 cm, exactly).
func TestGrid(t *testing.T) {
	for _, c := range []struct {
		what      string
		got, want Length
	}{
		{"2.54 cm", 254 * Centimetre / 100, Inch},
		{"30.48 cm", 3048 * Centimetre / 100, Foot},
		{"91.44 cm", 9144 * Centimetre / 100, Yard},
		{"1000 um", 1000 * Micrometre, Millimetre},
		{"1000 mm", 1000 * Millimetre, Metre},
		{"128/128 in", 128 * (Inch / 128), Inch},
		{"100/100 in", 100 * (Inch / 100), Inch},
	} {
		if c.got != c.want {
			t.Errorf("%s: %d, want %d", c.what, c.got, c.want)
		}
	}
	if Reach.MM() < 33_000 {
		t.Error("the reach is less than 33 m")
	}
}

// 1 ft² = 929.0304 cm² exactly: 16 CFR 500.19.
func TestArea(t *testing.T) {
	cm2 := Centimetre.Times(Centimetre)
	if 10_000*Foot.Times(Foot) != 9_290_304*cm2 {
		t.Error("a square foot is not 929.0304 cm²")
	}
	if Foot.Times(Foot) != SquareFoot || Inch.Times(Inch) != SquareInch || Millimetre.Times(Millimetre) != SquareMillimetre {
		t.Error("the named areas are not the products of the named lengths")
	}
	if a := Reach.Times(Reach); a <= 0 {
		t.Error("an area within reach overflows")
	}
	if got := Metre.Times(Metre).M2(); got != 1 {
		t.Error("1 m² is", got)
	}
}

// Rounding by definition, in big rationals: floor(x/mark + 1/2) * mark.
func TestRoundings(t *testing.T) {
	floor := func(r *big.Rat) int64 {
		return new(big.Int).Div(r.Num(), r.Denom()).Int64() // Div rounds toward minus infinity for a positive divisor
	}
	half := big.NewRat(1, 2)
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Int64Range(-int64(Reach), int64(Reach)).Draw(t, "length"))
		mark := Length(rapid.Int64Range(1, int64(Inch)).Draw(t, "mark"))
		x := big.NewRat(int64(l), int64(mark))
		if got, want := l.Round(mark), Length(floor(new(big.Rat).Add(x, half)))*mark; got != want {
			t.Fatalf("Round(%d, %d) = %d, want %d", l, mark, got, want)
		}
		if got, want := l.Floor(mark), Length(floor(x))*mark; got != want {
			t.Fatalf("Floor(%d, %d) = %d, want %d", l, mark, got, want)
		}
		if got, want := l.Ceil(mark), -Length(floor(new(big.Rat).Neg(x)))*mark; got != want {
			t.Fatalf("Ceil(%d, %d) = %d, want %d", l, mark, got, want)
		}
		num, den := rapid.Int64Range(-1_000_000, 1_000_000).Draw(t, "num"), rapid.Int64Range(1, 1_000_000).Draw(t, "den")
		exact := new(big.Rat).Mul(big.NewRat(int64(l), 1), big.NewRat(num, den))
		if got, want := l.MulDiv(num, den), Length(floor(exact.Add(exact, half))); got != want {
			t.Fatalf("MulDiv(%d, %d, %d) = %d, want %d", l, num, den, got, want)
		}
	})
}

// Identities: 1. Floor ≤ l ≤ Ceil, less than a mark apart; 2. all three are multiples and keep multiples;
// 3. Round is Floor or Ceil; 4. a mark of nothing changes nothing; 5. half a mark goes up, also below zero.
func TestRoundingIdentities(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Int64Range(-int64(Reach), int64(Reach)).Draw(t, "length"))
		mark := Length(rapid.Int64Range(1, int64(Foot)).Draw(t, "mark"))
		f, c, r := l.Floor(mark), l.Ceil(mark), l.Round(mark)
		if f > l || l > c || c-f >= 2*mark || f%mark != 0 || c%mark != 0 || (r != f && r != c) {
			t.Fatal(l, mark, f, c, r)
		}
		if f.Floor(mark) != f || f.Ceil(mark) != f || f.Round(mark) != f {
			t.Fatal("a multiple moved")
		}
		if l.Round(0) != l || l.Floor(-1) != l || l.Ceil(0) != l {
			t.Fatal("no mark, but it moved")
		}
	})
	for _, c := range []struct{ l, mark, want Length }{{3, 2, 4}, {-3, 2, -2}, {1, 2, 2}, {-1, 2, 0}, {-5, 10, 0}, {-6, 10, -10}, {5, 10, 10}} {
		if got := c.l.Round(c.mark); got != c.want {
			t.Errorf("%d to %d: %d, want %d", c.l, c.mark, got, c.want)
		}
	}
}

func TestFromFloats(t *testing.T) {
	for _, c := range []struct {
		got, want int64
	}{
		{int64(FromMM(25.4)), 406_400}, {int64(FromMM(-25.4)), -406_400}, {int64(FromFloat(0.5)), 1}, {int64(FromFloat(-0.5)), 0}, {int64(FromFloat(-1.5)), -1},
		{int64(VolumeOf(0.5)), 1}, {int64(AngleOf(math.Pi / 2)), 90_000_000}, {int64(AngleOf(-math.Pi)), -180_000_000},
		{int64((One / 4).Of(8)), 2}, {int64((One / 3).Of(30)), 10}, {int64(Liter), 100 * 100 * 100},
	} {
		if c.got != c.want {
			t.Errorf("got %d, want %d", c.got, c.want)
		}
	}
	if math.Abs((90*Degree).Radians()-math.Pi/2) > 1e-15 {
		t.Error("90 degrees")
	}
}
