package unit

import "testing"

// 231 cubic inches spread a thousandth of an inch thick are 231,000 sq in, 1604 sq ft; at 200 sq ft a gallon, 300 sq ft take a gallon and a half.
func TestRate(t *testing.T) {
	gallon := Fills(3_785_412)
	perGallon := Rate{Spreads(200 * SquareFoot), gallon}
	if q, ok := perGallon.For(Spreads(300 * SquareFoot)); !ok || q != Fills(5_678_118) {
		t.Error(q, ok)
	}
	if q, ok := perGallon.For(gallon); !ok || q != Spreads(200*SquareFoot) {
		t.Error(q, ok)
	}
	if _, ok := perGallon.For(Count(1)); ok {
		t.Error("pieces are no part of it")
	}
	if _, ok := (Rate{}).For(gallon); ok {
		t.Error("an empty rate gives something")
	}
	for _, c := range []struct {
		r      Rate
		in, mm string
	}{
		{perGallon, "200 sq ft per gal", "4.91 m² per L"},                                               // 18.58 m² / 3.785 L
		{Rate{Weighs(1600 * Gram), Fills(Liter)}, "13.4 lb per gal", "1.6 kg per L"},                    // 1.6 x 3.7854 / 0.45359
		{Rate{Spreads(15 * SquareFoot), Count(1)}, "15 sq ft per piece", "1.39 m² per piece"},           // 15 x 0.092903
		{Rate{Weighs(32 * Kilogram), Spreads(Metre.Times(Metre))}, "6.55 lb per sq ft", "32 kg per m²"}, // 32 / 0.45359 x 0.092903
	} {
		if in, mm := DefaultStyle(Inches).Rate(c.r), DefaultStyle(Millimetres).Rate(c.r); in != c.in || mm != c.mm {
			t.Errorf("%s, %s; want %s, %s", in, mm, c.in, c.mm)
		}
	}
}
