package unit

import (
	"errors"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Lengths as people type them. The right side is in counts of 1/16000 mm, worked out by hand from
// 1 in = 2.54 cm exactly and 1 ft = 30.48 cm exactly (16 CFR 500.19, also NIST SP 811 appendix B.8, from memory):
// 1 in = 25.4 x 16000 = 406400, 1/8 in = 50800, 1/16 in = 25400, 1 ft = 304.8 x 16000 = 4876800.
func TestParse(t *testing.T) {
	for _, c := range []struct {
		typed string
		bare  System
		want  Length
	}{
		// The forms that the design names.
		{`2498`, Millimetres, 39_968_000},
		{`2498 mm`, Inches, 39_968_000},
		{`2.498 m`, Inches, 39_968_000},
		{`98 3/8`, Inches, 98*406_400 + 3*50_800},
		{`98-3/8 in`, Millimetres, 98*406_400 + 3*50_800},
		{`8' 2-3/8"`, Millimetres, 8*4_876_800 + 2*406_400 + 3*50_800},
		{`8ft 2 3/8in`, Millimetres, 8*4_876_800 + 2*406_400 + 3*50_800},
		{`12.7 cm`, Inches, 5 * 406_400},
		// The published conversions.
		{`1 in`, Millimetres, 2_540 * 160}, // 2.54 cm; 1 cm = 160000
		{`1 ft`, Millimetres, 3_048 * 1_600},
		{`2.54 cm`, Inches, 406_400},
		{`30.48 cm`, Inches, 4_876_800},
		// Spacing, case, other marks and words.
		{`  98   3/8  `, Inches, 98*406_400 + 3*50_800},
		{`98 - 3/8`, Inches, 98*406_400 + 3*50_800},
		{`98 -3/8`, Inches, 98*406_400 + 3*50_800},
		{`98-in`, Millimetres, 98 * 406_400},
		{`8'2"`, Millimetres, 8*4_876_800 + 2*406_400},
		{`8'-2"`, Millimetres, 8*4_876_800 + 2*406_400},
		{`8' - 2"`, Millimetres, 8*4_876_800 + 2*406_400},
		{`8' 2`, Millimetres, 8*4_876_800 + 2*406_400},
		{`8'`, Millimetres, 8 * 4_876_800},
		{`8 FT 2 IN`, Millimetres, 8*4_876_800 + 2*406_400},
		{`8 ft. 2 in.`, Millimetres, 8*4_876_800 + 2*406_400},
		{`8 feet 2 inches`, Millimetres, 8*4_876_800 + 2*406_400},
		{`1 foot 1 inch`, Millimetres, 13 * 406_400},
		{`8′ 2⅜″`, Millimetres, 8*4_876_800 + 2*406_400 + 3*50_800},
		{`8’ 2”`, Millimetres, 8*4_876_800 + 2*406_400},
		{"15-\u20609/32", Inches, 15*406_400 + 9*12_700}, // as a page writes it, so that no line breaks within
		{"15‑9/32", Inches, 15*406_400 + 9*12_700},
		{`2′′`, Millimetres, 2 * 406_400},
		{`2''`, Millimetres, 2 * 406_400},
		{`96½`, Inches, 96*406_400 + 203_200},
		{`½`, Inches, 203_200},
		{`3⁄16`, Inches, 3 * 25_400},
		{`2 m 498 mm`, Inches, 39_968_000},
		{`2 metres`, Inches, 32_000_000},
		{`2 meters`, Inches, 32_000_000},
		{`3 millimeters`, Inches, 48_000},
		{`3 millimetres`, Inches, 48_000},
		{`3 centimeters`, Inches, 480_000},
		// Signs and small things.
		{`-1/8`, Inches, -50_800},
		{`−1/8`, Inches, -50_800},
		{`+1/4`, Inches, 101_600},
		{`- 5 mm`, Inches, -80_000},
		{`-1' 6"`, Inches, -18 * 406_400},
		{`0`, Inches, 0},
		{`.5`, Inches, 203_200},
		{`5.`, Inches, 5 * 406_400},
		{`9/8`, Inches, 9 * 50_800},
		{`1/128`, Inches, 3_175},
		{`0.01 in`, Millimetres, 4_064},
		{`0.001 mm`, Inches, 16},
		{`0.0000625 mm`, Inches, 1},
		{`1000 m`, Inches, 16_000_000_000},
	} {
		got, err := Parse(c.typed, c.bare)
		if err != nil || got != c.want {
			t.Errorf("%q in %v: got %d, %v; want %d", c.typed, c.bare, got, err, c.want)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	for _, c := range []struct{ typed, why string }{
		{``, "nothing to read"},
		{`   `, "nothing to read"},
		{`-`, "nothing to read"},
		{`in`, "a number is missing"},
		{`twelve`, "a number is missing"},
		{`12 inchs`, `stray text "inchs"`},
		{`12 furlongs`, "stray text"},
		{`12 mm mm`, "a number is missing"},
		{`12,5`, "stray text"},
		{`1e3`, "stray text"},
		{`98-`, "ends in a hyphen"},
		{`98 - `, "ends in a hyphen"},
		{`8' -`, "a number is missing"},
		{`--5`, "a number is missing"},
		{`1.2.3`, "stray text"},
		{`.`, "is no number"},
		{`3/0`, "can not be read"},
		{`3/`, "can not be read"},
		{`1.5/2`, "can not be read"},
		{`/8`, "a number is missing"},
		{`3/8/2`, "stray text"},
		{`98 9/8`, "1 or more"},
		{`98.5 3/8`, "a decimal and a fraction"},
		{`2" 8'`, "larger to the smaller"},
		{`8' 3'`, "larger to the smaller"},
		{`8 3`, "stray text"},
		{`8' 12"`, "12 inches or more"},
		{`8' 14`, "12 inches or more"},
		{`1/3`, "finer than"},
		{`0.00001 mm`, "finer than"},
		{`1001 m`, "longer than a kilometre"},
		{`999999999999999999999999999`, ""},
		{`NaN`, "a number is missing"},
		{`0x10`, "stray text"},
		{"12\x00", "stray text"},
		{"12 \xff", "stray text"},
	} {
		got, err := Parse(c.typed, Inches)
		var p *ParseError
		if !errors.As(err, &p) || got != 0 {
			t.Errorf("%q: got %d, %v", c.typed, got, err)
			continue
		}
		if !strings.Contains(p.Why, c.why) || p.Text != c.typed {
			t.Errorf("%q: said %q, want %q", c.typed, p.Why, c.why)
		}
	}
}

// The examples that stand beside every unreadable length must themselves be lengths.
func TestExamplesAreLengths(t *testing.T) {
	for _, e := range strings.Split(Examples, ", ") {
		if _, err := Parse(e, Inches); err != nil {
			t.Error(err)
		}
	}
}

// A length printed exactly reads back as itself: in millimetres always, in inches on the grid of 1/128 in.
func TestExactReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Int64Range(-int64(Reach), int64(Reach)).Draw(t, "length"))
		back(t, Style{System: Millimetres}.Exact(l), l)
		back(t, l.JSON()+" mm", l)
		onGrid := l.Round(Inch / 128)
		back(t, Style{System: Inches}.Exact(onGrid), onGrid)
	})
}

// A length printed for a tape reads back as the nearest mark.
func TestFormatReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Int64Range(-int64(Reach), int64(Reach)).Draw(t, "length"))
		s := rapid.SampledFrom([]Style{DefaultStyle(Inches), DefaultStyle(Millimetres), {Inches, ThirtySecond}, {Millimetres, Millimetre / 2}}).Draw(t, "style")
		back(t, s.Format(l), l.Round(s.Mark))
		got, err := Parse(s.Bare(l), s.System)
		if err != nil || got != l.Round(s.Mark) {
			t.Fatalf("%q: %d, %v", s.Bare(l), got, err)
		}
	})
}

func back(t *rapid.T, typed string, want Length) {
	got, err := Parse(typed, Inches)
	if err != nil || got != want {
		t.Fatalf("%q: got %d, %v; want %d", typed, got, err, want)
	}
}

func FuzzParse(f *testing.F) {
	for _, e := range strings.Split(Examples, ", ") {
		f.Add(e)
	}
	for _, e := range []string{`-1/8`, `8′ 2⅜″`, `1/3`, `''`, `8'-2"`, "1\x00", "½½", "9999999999999999999/8", `1 m 2 cm 3 mm`} {
		f.Add(e)
	}
	f.Fuzz(func(t *testing.T, typed string) {
		l, err := Parse(typed, Inches)
		if err != nil {
			if l != 0 {
				t.Errorf("%q: an error and a value", typed)
			}
			return
		}
		if l.Abs() > 1000*Metre {
			t.Errorf("%q: %d is over a kilometre", typed, l)
		}
		if again, err := Parse(l.JSON(), Millimetres); err != nil || again != l {
			t.Errorf("%q: %d prints as %s, which reads as %d, %v", typed, l, l.JSON(), again, err)
		}
	})
}
