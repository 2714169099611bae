package document

import (
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// scalarNode makes the node of a value that stands on line 1.
func scalarNode(s string) *text.Node {
	return &text.Node{Kind: text.Scalar, Text: s, AsIs: true, At: diag.Place{Path: "x", Line: 1, Column: 1}}
}

func TestAcross(t *testing.T) {
	in := unit.Inch
	for _, c := range []struct {
		typed string
		want  Across
	}{
		{"24 from A", Across{Lo: 24 * in, From: "A"}},
		{"24  from   A", Across{Lo: 24 * in, From: "A"}},
		{"center 36 from A", Across{Lo: 36 * in, From: "A", Center: true}},
		{"middle 36 from A", Across{Lo: 36 * in, From: "A", Center: true}},
		{"24 to 48 from B", Across{Lo: 24 * in, Hi: 48 * in, Both: true, From: "B"}},
		{"48 to 24 from B", Across{Lo: 24 * in, Hi: 48 * in, Both: true, From: "B"}},
		{`2' 3-1/2" from A`, Across{Lo: 27*in + in/2, From: "A"}},
		{`1 ft to 2 ft from A`, Across{Lo: 12 * in, Hi: 24 * in, Both: true, From: "A"}},
		{"3 left of basin line", Across{Lo: 3 * in, From: "basin line", Side: LeftOf}},
		{"3 right of the line to B", Across{Lo: 3 * in, From: "the line to B", Side: RightOf}},
		{"on basin line", Across{From: "basin line", Side: On, Center: true}},
		{"0 from left", Across{From: "left"}},
		{"24 from A to tile face", Across{Lo: 24 * in, From: "A", Touches: Value[Surface]{V: TileFace, Known: true}}},
		{"24 to 48 from A to stud", Across{Lo: 24 * in, Hi: 48 * in, Both: true, From: "A", Touches: Value[Surface]{V: Stud, Known: true}}},
	} {
		r := &reader{}
		got, ok := readAcross(r, scalarNode(c.typed))
		c.want.Given = true
		c.want.At, got.Touches.At = got.At, diag.Place{}
		if !ok || got != c.want {
			t.Errorf("%q: %+v, want %+v", c.typed, got, c.want)
		}
	}
	for _, typed := range []string{"", "24", "from A", "24 of A", "24 from", "near A", "on", "center 24 to 48 from A", "24 to 24 from A", "-3 from A", "40 m from A"} {
		r := &reader{}
		if got, ok := readAcross(r, scalarNode(typed)); ok || got.Given || !r.found.Stops() {
			t.Errorf("%q was taken for %+v", typed, got)
		}
	}
}

func TestUp(t *testing.T) {
	in := unit.Inch
	for _, c := range []struct {
		typed string
		want  Up
	}{
		{"48 above floor", Up{Lo: 48 * in}},
		{"48 above the finished floor", Up{Lo: 48 * in}},
		{"48 to 84 above floor", Up{Lo: 48 * in, Hi: 84 * in, Both: true}},
		{"center 50 above floor", Up{Lo: 50 * in, Part: Middle}},
		{"top 7 ft above floor", Up{Lo: 84 * in, Part: Top}},
		{"bottom 3 above level", Up{Lo: 3 * in, Datum: AboveLevel}},
		{"3 below level line", Up{Lo: 3 * in, Datum: BelowLevelLine}},
		{"8 above level", Up{Lo: 8 * in, Datum: AboveLevel}},
		{"6 below ceiling", Up{Lo: 6 * in, Datum: BelowCeiling}},
		{"0 above floor", Up{}},
	} {
		r := &reader{}
		got, ok := readUp(r, scalarNode(c.typed))
		c.want.Given, c.want.At = true, got.At
		if !ok || got != c.want {
			t.Errorf("%q: %+v, want %+v", c.typed, got, c.want)
		}
	}
	for _, typed := range []string{"", "48", "above floor", "48 below floor", "48 above ceiling", "48 over floor", "top 48 to 84 above floor", "x above floor"} {
		r := &reader{}
		if got, ok := readUp(r, scalarNode(typed)); ok || got.Given || !r.found.Stops() {
			t.Errorf("%q was taken for %+v", typed, got)
		}
	}
}

func TestLayer(t *testing.T) {
	for _, c := range []struct {
		typed string
		what  LayerKind
		label string
		thick unit.Length // 0: silent, -1: unknown
	}{
		{"board 1/2", BoardLayer, "board", unit.Inch / 2},
		{"board 12.5 mm", BoardLayer, "board", 25 * unit.Millimetre / 2},
		{"self-leveling screed 3/4", BoardLayer, "self-leveling screed", 3 * unit.Inch / 4},
		{"board -1/2", BoardLayer, "board", -2},
		{"uncoupling mat 1/8", MembraneLayer, "uncoupling mat", unit.Inch / 8},
		{"Bed .25", BedLayer, "Bed", unit.Inch / 4},
		{"mortar", BedLayer, "mortar", 0},
		{"tile", TileLayer, "tile", 0},
		{"tile 3/8", TileLayer, "tile", 3 * unit.Inch / 8},
		{"board unknown", BoardLayer, "board", -1},
	} {
		r := &reader{}
		got, ok := readLayer(r, scalarNode(c.typed))
		switch {
		case c.thick == -2:
			if ok || !r.found.Stops() {
				t.Errorf("%q was taken", c.typed)
			}
			continue
		case c.thick == -1 && !got.Thick.Unknown, c.thick == 0 && got.Thick.Known, c.thick > 0 && got.Thick.V != c.thick:
			t.Errorf("%q: %+v", c.typed, got.Thick)
		}
		if !ok || got.What != c.what || got.Label != c.label {
			t.Errorf("%q: %+v", c.typed, got)
		}
	}
}

func TestSize(t *testing.T) {
	in, mm := unit.Inch, unit.Millimetre
	for _, c := range []struct {
		typed   string
		a, b, c unit.Length
	}{
		{"24 x 12 x 3/8", 24 * in, 12 * in, 3 * in / 8},
		{"12x24x3/8", 24 * in, 12 * in, 3 * in / 8},
		{"600 x 300 x 10 mm", 600 * mm, 300 * mm, 10 * mm},
		{"600 mm x 300 mm x 3/8 in", 600 * mm, 300 * mm, 3 * in / 8},
		{"60 x 30 x 1 cm", 600 * mm, 300 * mm, 10 * mm},
		{"24 × 12", 24 * in, 12 * in, 0},
		{`2' x 1' x 3/8"`, 24 * in, 12 * in, 3 * in / 8},
		{"24 x 12 x unknown", 24 * in, 12 * in, 0},
	} {
		r := &reader{}
		s, ok := sizeForm.read(r, scalarNode(c.typed))
		if !ok || s.a.V != c.a || s.b.V != c.b || s.c.V != c.c || len(r.found) > 0 {
			t.Errorf("%q: %v %v", c.typed, s, r.found)
		}
	}
}

// NIST SP 811 appendix B.8 (from memory): 1 psi = 6894.757 Pa, 1 lbf/ft² = 47.88026 Pa; a fall of 2 % is 1 in 50.
func TestMeasured(t *testing.T) {
	for _, c := range []struct {
		f     form[int64]
		typed string
		want  int64
	}{
		{modulus, "1000 psi", 6_894_757}, {modulus, "11 GPa", 11_000_000_000}, {modulus, "9000MPa", 9_000_000_000}, {modulus, "1.6e6 psi", 11_031_611_669},
		{load, "100 psf", 4_788}, {load, "2.4 kPa", 2_400}, {load, "2 kN/m²", 2_000},
		{yearlyRange, "180 F", 100_000}, {yearlyRange, "100 °C", 100_000}, {yearlyRange, "40 K", 40_000},
	} {
		r := &reader{}
		got, ok := c.f.read(r, scalarNode(c.typed))
		if !ok || got != c.want {
			t.Errorf("%q: %d, want %d %v", c.typed, got, c.want, r.found)
		}
	}
	for typed, want := range map[string]unit.Ratio{"2 %": 20_000, "2%": 20_000, "1/50": 20_000, "0.02": 20_000, ".02": 20_000, "none": 0, "1/3 %": 3_333} {
		r := &reader{}
		if got, ok := slope.read(r, scalarNode(typed)); !ok || got != want {
			t.Errorf("%q: %d, want %d", typed, got, want)
		}
	}
}
