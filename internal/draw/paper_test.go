package draw

import (
	"math"
	"testing"
)

// ISO 216: A0 has 1 m², each size is the one before halved, sides as 1 to the square root of 2, whole millimetres.
// ASME Y14.1: A is 8.5 x 11 in, B is 11 x 17 in.
func TestPapers(t *testing.T) {
	for name, want := range map[string][2]float64{
		"Letter": {8.5 * 25.4, 11 * 25.4}, "Tabloid": {11 * 25.4, 17 * 25.4},
		"A4": {210, 297}, "A3": {297, 420},
	} {
		p := paperNamed(t, name)
		if float64(p.W) != math.Round(want[0]*1000) || float64(p.H) != math.Round(want[1]*1000) {
			t.Errorf("%s is %d by %d, want %v mm", name, p.W, p.H, want)
		}
		if l := p.Landscape(); l.W != p.H || l.H != p.W || l.Box().W() != p.H {
			t.Errorf("%s on its side is %v", name, l)
		}
	}
	if A3.H != 2*A4.W || A3.W != A4.H {
		t.Error("A3 halved is not A4")
	}
}

func paperNamed(t *testing.T, name string) Paper {
	for _, p := range Papers() {
		if p.Name == name {
			return p
		}
	}
	t.Fatalf("no %s", name)
	return Paper{}
}

func TestBoxes(t *testing.T) {
	b := Span(0, 0, 10, 10)
	for _, c := range []struct {
		other        Box
		meets, holds bool
	}{
		{Span(2, 2, 8, 8), true, true},
		{Span(0, 0, 10, 10), true, true},
		{Span(10, 0, 20, 10), false, false},
		{Span(9, 9, 20, 20), true, false},
		{Span(-5, 10, 5, 12), false, false},
	} {
		if b.Meets(c.other) != c.meets || c.other.Meets(b) != c.meets || b.Holds(c.other) != c.holds {
			t.Errorf("%v and %v: meets %v, holds %v", b, c.other, b.Meets(c.other), b.Holds(c.other))
		}
	}
}

// ISO 128-20, table 3, in line widths (from memory): each pattern starts with a dash and ends with a gap.
func TestPatternsScaleWithTheLine(t *testing.T) {
	for d, parts := range map[Dash]int{Solid: 0, Dashed: 2, Chain: 4, Dotted: 2, ChainTwo: 6} {
		thin, wide := Line(Narrow).As(d).Pattern(), Line(2*Narrow).As(d).Pattern()
		if len(thin) != parts {
			t.Errorf("line type %d has %d parts, want %d", d, len(thin), parts)
		}
		for i := range thin {
			if thin[i] <= 0 || wide[i] != 2*thin[i] {
				t.Errorf("line type %d: part %d is %d, and %d at twice the width", d, i, thin[i], wide[i])
			}
		}
	}
}

// No two colors of the palette are near each other in sRGB; tints run from white to the color itself.
func TestPaletteTells(t *testing.T) {
	palette := []Color{Black, Orange, SkyBlue, BluishGreen, Yellow, Blue, Vermilion, ReddishPurple}
	for i, a := range palette {
		for _, b := range palette[:i] {
			if d := distance(a, b); d < 60 {
				t.Errorf("%v and %v are %.0f apart", a, b, d)
			}
		}
		if a.Tint(100) != a || a.Tint(0) != White {
			t.Errorf("tints of %v: %v, %v", a, a.Tint(100), a.Tint(0))
		}
	}
}

func distance(a, b Color) float64 {
	dr, dg, db := float64(a.R)-float64(b.R), float64(a.G)-float64(b.G), float64(a.B)-float64(b.B)
	return math.Sqrt(dr*dr + dg*dg + db*db)
}
