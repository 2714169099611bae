package site

import (
	"math"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// A wall of 59 in (board) by 96 in whose right side leans 1/4 in to the left at the top; nobody wrote the neighbor's lean. Its own readings are
// computed from that shape by Pythagoras, so they fit it, and the adjustment has to find it to within the looseness of "plumb": a
// diagonal right to 1/32 in stands against a plumb right to 1 in.
func TestDiagonalsFindTheLean(t *testing.T) {
	r := rectangle60(t, exact60)
	w := &r.Walls[0]
	w.WidthTo = val(document.Board)
	w.WidthTop = val(r.in("58-3/4"))
	w.Heights = r.at("A 96, B 96")
	w.Diagonals = r.at("A 0, B 0")
	w.Diagonals[0].Value.V = unit.FromFloat(math.Hypot(58.75, 96) * float64(unit.Inch))
	w.Diagonals[1].Value.V = unit.FromFloat(math.Hypot(59, 96) * float64(unit.Inch))
	got := r.solve()
	bottom, top := side(got.face("back"), labelRight)
	if d := (bottom.X - top.X).In(); d < 0.24 || d > 0.26 {
		t.Errorf("the side leans %.3f in, want 0.25", d)
	}
	bottom, top = side(got.face("back"), labelLeft)
	if d := (top.X - bottom.X).In(); d < -0.01 || d > 0.01 {
		t.Errorf("the left side leans %.3f in", d)
	}
	got.wantNot("wall-readings-disagree")
	got.wantNot("wall-reading-suspect")
}

// A diagonal written 1 in too long is found out by the width, the heights and the other diagonal.
func TestWallReadingSuspect(t *testing.T) {
	r := rectangle60(t, exact60)
	w := &r.Walls[0]
	w.WidthTo = val(document.Board)
	w.WidthTop = val(r.in("59"))
	w.Heights = r.at("A 96, B 96")
	w.Diagonals = r.at("A 0, B 0")
	w.Diagonals[0].Value.V = unit.FromFloat((math.Hypot(59, 96) + 1) * float64(unit.Inch))
	w.Diagonals[1].Value.V = unit.FromFloat(math.Hypot(59, 96) * float64(unit.Inch))
	r.Walls[1].Lean, r.Walls[3].Lean = r.at("B 0"), r.at("A 0") // plumb by reading
	r.solve().wantSaid("wall-reading-suspect", "back", "the diagonal from A is the likeliest", "1 in")
}

// Readings to the studs are reduced: 60 in at the top between studs are 59 in between boards, and nothing leans.
func TestWallReadingsReduced(t *testing.T) {
	r := rectangle60(t, exact60)
	w := &r.Walls[0]
	w.WidthTop = val(r.in("60"))
	w.Diagonals = r.at("A 0")
	w.Diagonals[0].Value.V = unit.FromFloat(math.Hypot(60, 96) * float64(unit.Inch))
	f := r.solve().face("back")
	bottom, top := side(f, labelRight)
	wantNear(t, "bottom", bottom.X, "59")
	wantNear(t, "top", top.X, "59")
}
