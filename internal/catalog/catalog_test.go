package catalog

import (
	"testing"

	"dryfit/internal/unit"
)

// 1 US gal = 231 in³ spread a thousandth of an inch wet covers 231,000 in² = 1604 sq ft; four thousandths 401 sq ft. 10 m² for a liter are 0.1 mm.
func TestWetFilm(t *testing.T) {
	thousandth := unit.Inch / 1000 // 406.4 counts: a hair under, exactly enough for whole square feet
	for _, c := range []struct {
		sqft int
		want unit.Length
	}{{1604, thousandth}, {401, 4 * unit.Inch / 1000}} {
		r, _, _ := perGallon(c.sqft, 0, 0)
		if got := WetFilm(r); (got - c.want).Abs() > 2 {
			t.Errorf("%d sq ft: %d, want %d", c.sqft, got, c.want)
		}
	}
	tenth := unit.Rate{Amount: unit.Spreads(10 * unit.Metre.Times(unit.Metre)), Per: unit.Fills(unit.Liter)}
	if got := WetFilm(tenth); got != unit.Millimetre/10 {
		t.Error(got)
	}
	if WetFilm(unit.Rate{}) != 0 {
		t.Error("nothing has a film")
	}
}

// A square metre 5 mm thick is 5 L; 100 sq ft 3/16 in thick are 1.5625 cu ft = 44.2451 L.
func TestSpread(t *testing.T) {
	if v := Spread(unit.Metre.Times(unit.Metre), 5*unit.Millimetre); v != 5*unit.Liter {
		t.Error(v)
	}
	if v := Spread(100*unit.SquareFoot, 3*unit.Inch/16); v != 44_245_073 { // 1.5625 x 28,316,846.592 = 44,245,072.8
		t.Error(v)
	}
}

// Every typical figure lies in its own range and says where it is from.
func TestTypical(t *testing.T) {
	for _, f := range []Typical{DryGrout, DryMortar, WetMortar, WetGrout, CeramicTile, PorcelainTile, StoneTile, GlassTile, SealerOpen, SealerMedium, SealerDense, PaintCoat} {
		if f.Rate.Amount.N < f.Least.N || f.Rate.Amount.N > f.Most.N || f.Cite() == "" || f.What == "" {
			t.Errorf("%+v", f)
		}
	}
}
