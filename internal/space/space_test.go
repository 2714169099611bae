package space

import (
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/unit"

	"pgregory.net/rapid"
)

const mm = unit.Millimetre

func rect(x0, y0, x1, y1 unit.Length) geom.Ring {
	return geom.RectRing(geom.Rect{Min: geom.Point{X: x0 * mm, Y: y0 * mm}, Max: geom.Point{X: x1 * mm, Y: y1 * mm}}, 0, 0, 0, 0)
}

func TestDistance(t *testing.T) {
	for _, c := range []struct {
		what string
		a, b geom.Ring
		want unit.Length
	}{
		{"side by side", rect(0, 0, 10, 10), rect(14, 0, 20, 10), 4},
		{"3-4-5 from corner to corner", rect(0, 0, 10, 10), rect(13, 14, 20, 20), 5},
		{"touching", rect(0, 0, 10, 10), rect(10, 0, 20, 10), 0},
		{"2 deep", rect(0, 0, 10, 10), rect(8, 0, 20, 10), -2},
		{"one in the other", rect(0, 0, 30, 30), rect(10, 10, 12, 12), -12},
		{"the same", rect(0, 0, 10, 10), rect(0, 0, 10, 10), -10},
	} {
		if got, back := Distance(c.a, c.b), Distance(c.b, c.a); got != c.want*mm || back != got {
			t.Errorf("%s: %s and %s, want %d mm", c.what, got.JSON(), back.JSON(), c.want)
		}
	}
}

func TestApart(t *testing.T) {
	low := Envelope{Plan: rect(0, 0, 10, 10), High: Span{0, 5 * mm}}
	for _, c := range []struct {
		what string
		b    Envelope
		want unit.Length
	}{
		{"over it", Envelope{Plan: rect(0, 0, 10, 10), High: Span{8 * mm, 9 * mm}}, 3},
		{"beside it", Envelope{Plan: rect(12, 0, 20, 10), High: Span{0, 5 * mm}}, 2},
		{"over and beside", Envelope{Plan: rect(13, 0, 20, 10), High: Span{9 * mm, 10 * mm}}, 5},
		{"in it, 1 from the top", Envelope{Plan: rect(2, 2, 8, 8), High: Span{4 * mm, 10 * mm}}, -1},
	} {
		if got := Apart(low, c.b); got != c.want*mm {
			t.Errorf("%s: %s, want %d mm", c.what, got.JSON(), c.want)
		}
	}
}

// A wall along +x with the room below it, as a plan is drawn: z grows toward -y.
func TestWallAlongX(t *testing.T) {
	w := Wall{Name: "w", Left: geom.Point{X: 5 * mm}, Right: geom.Point{X: 105 * mm}, From: 2 * mm}
	if p := w.At(12*mm, 30*mm); p != (geom.Point{X: 15 * mm, Y: -30 * mm}) {
		t.Errorf("%+v", p)
	}
	e := w.Box(Envelope{}, Span{12 * mm, 22 * mm}, Span{0, 7 * mm}, Span{0, 30 * mm})
	if e.Plan.Area2() != 2*int64(10*mm)*int64(30*mm) || e.High != e.Y {
		t.Errorf("%+v", e)
	}
}

// Of undoes At to a few microns, whichever way the wall runs.
func TestWallThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := rapid.Int64Range(-4000, 4000)
		w := Wall{Left: geom.Point{X: unit.Length(l.Draw(t, "x")) * mm, Y: unit.Length(l.Draw(t, "y")) * mm}, From: unit.Length(l.Draw(t, "from"))}
		w.Right = w.Left.Add(geom.Point{X: unit.Length(l.Draw(t, "dx"))*mm + 1, Y: unit.Length(l.Draw(t, "dy")) * mm})
		if geom.Dist(w.Left, w.Right) < 100*mm {
			return
		}
		x, z := unit.Length(l.Draw(t, "along"))*mm, unit.Length(l.Draw(t, "off"))*mm
		gotX, gotZ := w.Of(w.At(x, z))
		const slack = 64 // a length of 100 mm is known to half a count in 1.6 million: 9 counts in 1.8 m, and some for the rounding
		if (gotX-x).Abs() > slack || (gotZ-z).Abs() > slack {
			t.Fatalf("%d %d, want %d %d", gotX, gotZ, x, z)
		}
	})
}
