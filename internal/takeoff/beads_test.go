package takeoff

import (
	"math"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/place"
	"dryfit/internal/unit"
)

func outline(kind document.OutlineKind, wide, deep, radius unit.Length) document.Value[document.Outline] {
	return document.Value[document.Outline]{Known: true, V: document.Outline{Kind: kind, Across: wide * mm, Deep: deep * mm, Radius: radius * mm}}
}

func number(l unit.Length) figure.Figure { return figure.Number(l * mm) }

// oval is the length of an ellipse by the second approximation of Ramanujan (1914), good to a millionth for such shapes.
func oval(a, b float64) float64 {
	h := math.Pow((a-b)/(a+b), 2)
	return math.Pi * (a + b) * (1 + 3*h/(10+math.Sqrt(4-3*h)))
}

// How long the bead round each thing is, in millimetres, by the formula of its shape.
func TestBeadLengths(t *testing.T) {
	basin := func(kind document.BasinKind, outline, foot document.Value[document.Outline], off unit.Length) place.Plan {
		return place.Plan{
			Basins: []place.Basin{{Name: "bowl", Wall: "back", Top: "slab", MidOff: number(off), Doc: document.Basin{Name: "bowl", Kind: kind, Outline: outline, Foot: foot}}},
			Tops:   []place.Top{{Name: "slab", Wall: "back", Depth: number(500), Left: figure.Missing("x"), Doc: document.Slab{Name: "slab"}}},
		}
	}
	wc := func(foot document.Value[document.Outline]) place.Plan {
		return place.Plan{WCs: []place.WC{{Name: "pan", Wall: "back", Doc: document.WC{Name: "pan", Foot: foot}}}}
	}
	none := document.Value[document.Outline]{}
	round, ellipse := outline(document.RoundOutline, 400, 400, 0), outline(document.OvalOutline, 457, 330, 0)
	rounded := outline(document.RectangleOutline, 500, 380, 60)
	for _, c := range []struct {
		what   string
		places place.Plan
		want   float64
	}{
		{"a drop-in, round", basin(document.DropIn, round, none, 260), math.Pi * 400},
		{"an undermount, oval", basin(document.Undermount, ellipse, none, 260), oval(228.5, 165)},
		{"a vessel on its foot", basin(document.Vessel, ellipse, outline(document.RoundOutline, 200, 200, 0), 260), math.Pi * 200},
		{"a vessel, its foot not told", basin(document.Vessel, ellipse, none, 260), 0},
		// The front 100 of its 400 are before the top: of the circle 120 of 360 degrees.
		{"semi-recessed, a quarter before its top", basin(document.SemiRecessed, round, none, 400), math.Pi * 400 * 240 / 360},
		// Flat for 500 - 2 x 60, then each corner until it is 6 off: 60 acos(54/60).
		{"hung on the wall", basin(document.WallHungBasin, rounded, none, 190), 380 + 2*60*math.Acos(0.9)},
		{"hung 10 off the wall", basin(document.WallHungBasin, rounded, none, 200), 0},
		{"a WC on its foot", wc(outline(document.RectangleOutline, 230, 500, 115)), 2*(500-230) + math.Pi*230},
		{"a WC, its foot not told", wc(none), 0},
	} {
		m := &maker{places: c.places, doc: document.Room{Units: unit.Millimetres, Goods: []document.Good{{Name: "silicone", Kind: document.Sealant}}}}
		m.beads()
		got := unit.Volume(0)
		for _, n := range m.needs {
			for _, p := range n.parts {
				got += unit.Volume(p.Amount.N)
			}
		}
		if long := float64(got) / 18; math.Abs(long-c.want) > 0.003*c.want { // a fillet of 6 mm is 18 mm²
			t.Errorf("%s: %.2f mm, want %.2f", c.what, long, c.want)
		}
		told := false
		for _, f := range m.findings {
			told = told || f.Code == "bead-unknown" && f.Values[0].Text != "slab"
		}
		if told != strings.Contains(c.what, "not told") {
			t.Errorf("%s: %v", c.what, m.findings)
		}
	}
}

// A top of 600 with 3 mm behind it and 2 mm told at its left end, 520 deep: joints of 3 and 2 mm, 1/4 in deep; no gap behind is a fillet.
func TestBeadsOfTops(t *testing.T) {
	top := place.Top{Name: "slab", Wall: "back", Left: number(100), Right: number(700), Depth: number(523), Back: number(3), Thick: number(40),
		Doc: document.Slab{Name: "slab", Gap: document.WallGap{Left: document.Value[unit.Length]{V: 2 * mm, Known: true}}}}
	for _, c := range []struct {
		back unit.Length
		want float64 // mm³
	}{{3, 600*3*6.35 + 520*2*6.35}, {0, 600*18 + 523*2*6.35}} {
		top.Back = number(c.back)
		m := &maker{places: place.Plan{Tops: []place.Top{top}}, doc: document.Room{Units: unit.Millimetres}}
		m.beads()
		got := 0.0
		for _, p := range m.needs[0].parts {
			got += float64(p.Amount.N)
		}
		if len(m.needs) != 1 || len(m.needs[0].parts) != 2 || math.Abs(got-c.want) > 2 {
			t.Errorf("gap %d: %.1f mm³, want %.1f", c.back, got, c.want)
		}
	}
}

// Round a basin in a stone top a sealant must not stain.
func TestBeadBesideStone(t *testing.T) {
	acid := document.Good{Name: "silicone", Kind: document.Sealant, NeutralCure: document.Value[bool]{Known: true}, NonStaining: document.Value[bool]{V: true, Known: true}}
	for made, want := range map[document.TopKind]string{document.StoneTop: "sealant-acid", document.StaveTop: ""} {
		m := &maker{doc: document.Room{Goods: []document.Good{acid}}, places: place.Plan{
			Basins: []place.Basin{{Name: "bowl", Top: "slab", MidOff: number(260), Doc: document.Basin{Name: "bowl", Kind: document.DropIn, Outline: outline(document.RoundOutline, 400, 400, 0)}}},
			Tops:   []place.Top{{Name: "slab", Doc: document.Slab{Name: "slab", Made: document.Value[document.TopKind]{V: made, Known: true}}, Left: number(0), Right: number(600), Depth: number(500), Back: number(0)}}}}
		m.beads()
		if got := firstOf(m.findings, diag.Look); got != want {
			t.Errorf("top %d: %q, want %q", made, got, want)
		}
	}
}

func firstOf(l diag.List, c diag.Class) string {
	for _, f := range l {
		if f.Class == c {
			return f.Code
		}
	}
	return ""
}
