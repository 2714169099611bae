package parts

import (
	"strings"
	"testing"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Letter upright shows 195.9 x 227.4 mm; a sheet more shows 10 mm less.
func TestMosaicGrid(t *testing.T) {
	for _, c := range []struct {
		w, h       draw.Um
		cols, rows int
	}{
		{100_000, 100_000, 1, 1}, {195_900, 227_400, 1, 1}, {195_901, 227_400, 2, 1},
		{381_800, 444_800, 2, 2}, {381_801, 444_801, 3, 3},
	} {
		m := Mosaic{Area: draw.Span(0, 0, c.w, c.h), Paper: draw.Letter}
		cols, rows := m.Grid()
		if cols != c.cols || rows != c.rows || len(m.Pages()) != cols*rows {
			t.Errorf("%d by %d um: %d by %d sheets", c.w, c.h, cols, rows)
		}
	}
}

// Lay the sheets side by side as their offsets say: every piece of the drawing shows somewhere, at its place, and
// the trim lines of neighbors fall on each other.
func TestMosaicShowsEverythingInItsPlace(t *testing.T) {
	m := Mosaic{Title: "Niche template", Area: draw.Span(7_000, 3_000, 507_000, 603_000), Paper: draw.A4}
	for x := m.Area.Lo.X; x <= m.Area.Hi.X; x += 25_000 {
		for y := m.Area.Lo.Y; y <= m.Area.Hi.Y; y += 25_000 {
			m.Items = append(m.Items, draw.Circle{C: draw.At(x, y), R: 1_000, Pen: draw.Line(draw.Narrow)})
		}
	}
	cols, rows := m.Grid()
	seen, trims := map[draw.XY]bool{}, map[draw.Box]int{}
	for i, p := range m.Pages() {
		back := m.offset(i%cols, i/cols)
		back = draw.At(-back.X, -back.Y)
		g := p.Items[0].(draw.Group)
		for _, it := range g.Items {
			seen[it.(draw.Circle).C.Plus(back)] = true
		}
		for _, it := range p.Items[1:] {
			if path, ok := it.(draw.Path); ok && path.Class == "trim" {
				b := path.Reach()
				trims[draw.Box{Lo: b.Lo.Plus(back), Hi: b.Hi.Plus(back)}]++
			}
		}
	}
	for _, it := range m.Items {
		if !seen[it.(draw.Circle).C] {
			t.Errorf("%v is on no sheet", it)
		}
	}
	if want := (cols-1)*rows + cols*(rows-1); len(trims) != want {
		t.Errorf("%d seams, want %d", len(trims), want)
	}
	for b, n := range trims {
		if n != 2 {
			t.Errorf("seam %v is on %d sheets", b, n)
		}
	}
}

func TestMosaicLettering(t *testing.T) {
	for _, inches := range []bool{false, true} {
		m := Mosaic{Title: strings.Repeat("Niche ", 80), Area: draw.Span(0, 0, 300_000, 300_000), Paper: draw.Letter, Inches: inches,
			Items: []draw.Item{draw.Group{Items: []draw.Item{draw.Text{At: draw.At(185_000, 150_000), Size: 2_500, Body: "on the seam"}}}}}
		shown := 0
		for _, p := range m.Pages() {
			if over := typeset.Overlaps(p); len(over) > 0 {
				t.Error(over)
			}
			shown += strings.Count(bodies(p), "on the seam")
		}
		if shown < 2 {
			t.Errorf("a word on the seam shows %d times", shown)
		}
	}
}

func TestPlacesOfSheets(t *testing.T) {
	for want, at := range map[string][2]int{"A1": {0, 0}, "C2": {2, 1}, "Z1": {25, 0}, "AA1": {26, 0}, "AB3": {27, 2}} {
		if got := place(at[0], at[1]); got != want {
			t.Errorf("%v is %q, want %q", at, got, want)
		}
	}
}
