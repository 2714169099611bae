package takeoff

import (
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// Geometry of a full notch; worked out by hand. Equal notch and tooth leave half of the depth; V notches that touch half of it too; 1/4 x 3/8 x 1/4 in leaves 3/16 in.
func TestComb(t *testing.T) {
	v := func(w, d, s unit.Length) document.Trowel {
		return document.Trowel{Notch: document.VNotch, Width: w, Depth: d, Tooth: s}
	}
	u := func(w, d, s unit.Length) document.Trowel {
		return document.Trowel{Notch: document.UNotch, Width: w, Depth: d, Tooth: s}
	}
	held := func(t document.Trowel, deg unit.Angle) document.Trowel { t.Held = deg * unit.Degree; return t }
	for _, c := range []struct {
		what string
		t    document.Trowel
		want unit.Length
	}{
		{"6 mm", equal(6 * mm), 3 * mm}, {"8 mm", equal(8 * mm), 4 * mm}, {"10 mm", equal(10 * mm), 5 * mm}, {"12 mm", equal(12 * mm), 6 * mm},
		{"1/2 in", equal(in / 2), in / 4},
		{"1/4 x 3/8 x 1/4", square(in/4, 3*in/8, in/4), 3 * in / 16},
		{"wide apart", square(6*mm, 6*mm, 12*mm), 2 * mm},
		{"V touching", v(6*mm, 6*mm, 0), 3 * mm},
		{"V apart", v(6*mm, 6*mm, 6*mm), 3 * mm / 2},
		{"U as deep as its radius: pi r²/2 / 4r = pi r/8", u(16*mm, 8*mm, 16*mm), 50_265}, // pi mm = 3.14159 mm
		{"U: [2r(d-r) + pi r²/2]/p = (16 x 4 + 100.531)/32 = 5.14159 mm", u(16*mm, 12*mm, 16*mm), 82_265},
		{"held at 30 degrees: half", held(equal(12*mm), 30), 3 * mm},
		{"held at 60 degrees: 0.866", held(equal(12*mm), 60), 83_138}, // 6 x 0.8660254
		{"none", document.Trowel{}, 0},
	} {
		if got := Comb(c.t); got != c.want {
			t.Errorf("%s: %d, want %d", c.what, got, c.want)
		}
	}
}

// The mean is never over the depth, and grows with depth and width, for every notch.
func TestCombGrows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := document.Notch(rapid.IntRange(0, 2).Draw(t, "notch"))
		w := unit.Length(rapid.IntRange(16_000, 400_000).Draw(t, "w"))
		d := w/2 + unit.Length(rapid.IntRange(1, 400_000).Draw(t, "d"))
		s := unit.Length(rapid.IntRange(1, 400_000).Draw(t, "s"))
		base := Comb(document.Trowel{Notch: n, Width: w, Depth: d, Tooth: s})
		if base < 0 || base > d || Comb(document.Trowel{Notch: n, Width: w, Depth: d + 160, Tooth: s}) < base || Comb(document.Trowel{Notch: n, Width: w, Depth: d, Tooth: s + 160}) > base {
			t.Fatal(n, w, d, s, base)
		}
	})
}

// A side of 24 in takes a 1/2 x 1/2 in square notch (common practice); DIN 18157-1 (from memory): 50 mm: 3, 108: 4, 200: 6, over: 8.
func TestPropose(t *testing.T) {
	for _, c := range []struct {
		edge   unit.Length
		ribbed bool
		sys    unit.System
		want   document.Trowel
	}{
		{24 * in, false, unit.Inches, equal(in / 2)},
		{12 * in, false, unit.Inches, square(in/4, 3*in/8, in/4)},
		{12 * in, true, unit.Inches, equal(in / 2)},
		{15 * in, false, unit.Inches, square(in/4, 3*in/8, in/4)},
		{50 * mm, false, unit.Millimetres, equal(3 * mm)},
		{108 * mm, false, unit.Millimetres, equal(4 * mm)},
		{200 * mm, false, unit.Millimetres, equal(6 * mm)},
		{201 * mm, false, unit.Millimetres, equal(8 * mm)},
		{597 * mm, false, unit.Millimetres, equal(12 * mm)},
	} {
		if got, source := propose(c.edge, c.ribbed, c.sys); got != c.want || source == "" {
			t.Errorf("%d: %v", c.edge, got)
		}
	}
}
