package unit

import "testing"

// Conversions: 16 CFR 500.19 (1 lb 453.592 g, 1 fl oz 29.5735 mL, 1 gal 3.78541 L, 1 ft² 929.0304 cm²), to more digits from the exact inch and pound.
func TestParseQuantity(t *testing.T) {
	for _, c := range []struct {
		in   string
		sys  System
		of   Dimension
		n    int64
		rest string
	}{
		{"50 lb bag", Inches, ByMass, int64(50 * Pound), "bag"},
		{"25 kg", Millimetres, ByMass, int64(25 * Kilogram), ""},
		{"8 oz", Inches, ByMass, int64(8 * Ounce), ""},
		{"1/2 lb", Inches, ByMass, int64(8 * Ounce), ""},
		{"10.1 fl oz cartridge", Inches, ByVolume, 298_693, "cartridge"}, // 10.1 x 29.5735295625 mL
		{"1 gal pail", Inches, ByVolume, 3_785_412, "pail"},
		{"300 mL tube", Millimetres, ByVolume, 300_000, "tube"},
		{"0.45 cu ft", Inches, ByVolume, 12_742_581, ""}, // 0.45 x 28.316846592 L
		{"95 sq ft per 50 lb", Inches, ByArea, int64(95 * SquareFoot), "per 50 lb"},
		{"3 x 5 ft sheet", Inches, ByArea, int64(15 * SquareFoot), "sheet"},
		{"36 x 60 sheet", Inches, ByArea, int64(15 * SquareFoot), "sheet"},
		{"1200 x 600 board", Millimetres, ByArea, int64((1200 * Millimetre).Times(600 * Millimetre)), "board"},
		{"2-1/2 ft roll", Inches, ByLength, int64(30 * Inch), "roll"},
		{"30 m roll", Millimetres, ByLength, int64(30 * Metre), "roll"},
		{"100 pieces bag", Inches, ByCount, 100, "bag"},
	} {
		q, rest, err := ParseQuantity(c.in, c.sys)
		if err != nil || q != (Quantity{c.of, c.n}) || rest != c.rest {
			t.Errorf("%q: %v %q %v, want %v %d", c.in, q, rest, err, c.of, c.n)
		}
	}
	for _, bad := range []string{"", "bag", "50", "50 stone", "0 lb", "1.5 pieces", "99999999999999999 kg", "3 x ft", "-5 lb"} {
		if q, _, err := ParseQuantity(bad, Inches); err == nil {
			t.Errorf("%q reads as %v", bad, q)
		}
	}
}

func TestShareRoundsUp(t *testing.T) {
	for _, c := range [][4]int64{{10, 11, 10, 11}, {10, 1, 3, 4}, {9, 1, 3, 3}, {1, 1, 1000, 1}, {0, 11, 10, 0}} {
		if got := (Quantity{ByMass, c[0]}).Share(c[1], c[2]); got.N != c[3] {
			t.Errorf("%v: %d", c, got.N)
		}
	}
}

func TestSayQuantity(t *testing.T) {
	for _, c := range []struct {
		q      Quantity
		in, mm string
	}{
		{Weighs(50 * Pound), "50 lb", "22.7 kg"},
		{Weighs(8 * Ounce), "8 oz", "227 g"},
		{Weighs(1250 * Gram), "2.76 lb", "1.25 kg"},
		{Fills(298_693), "10.1 fl oz", "299 mL"},
		{Fills(3_785_412), "4 qt", "3.79 L"},
		{Fills(19 * Liter), "5.02 gal", "19 L"},
		{Spreads(95 * SquareFoot), "95 sq ft", "8.83 m²"},
		{Stretches(30 * Foot), "30 ft", "9.14 m"},
		{Count(270), "270", "270"},
		{Weighs(99_960 * Gram), "220 lb", "100 kg"},
	} {
		if s := DefaultStyle(Inches).Say(c.q); s != c.in {
			t.Errorf("%v: %s, want %s", c.q, s, c.in)
		}
		if s := DefaultStyle(Millimetres).Say(c.q); s != c.mm {
			t.Errorf("%v: %s, want %s", c.q, s, c.mm)
		}
	}
}
