package site

import (
	"testing"

	"dryfit/internal/document"
)

// The alcove is taped to the board: its corners A and B are at 0 and 60 in; floor y = -40, ceiling y = 56. Finish 9/16 in on the sides.
func TestRoomPlaces(t *testing.T) {
	r := alcove(t)
	r.Walls[0].CeilingLine = r.stations("30 50")
	r.Lines = []document.Line{
		{Name: "basin line", In: document.Name{Text: "back"}, Across: r.across("20 from A")},
		{Name: "lamp line", In: document.Name{Text: "back"}, Across: r.across("4 right of basin line")},
	}
	r.lay("white", "back", "left", "right")
	got := r.solve()
	for _, c := range []struct{ across, width, lo, hi string }{
		{"24 from A", "0", "24", "24"},
		{"24 from A", "10", "24", "34"},
		{"24 from B", "10", "26", "36"},
		{"6 from left", "0", "6", "6"},
		{"6 from right", "0", "54", "54"},
		{"24 to 48 from B", "0", "12", "36"},
		{"on lamp line", "3", "22-1/2", "25-1/2"},
		{"center 2 left of lamp line", "3", "20-1/2", "23-1/2"},
	} {
		lo, hi, ok := got.Across("back", r.across(c.across), r.in(c.width))
		if !ok {
			t.Errorf("%s: not found", c.across)
		}
		wantLength(t, c.across+" low", lo, c.lo)
		wantLength(t, c.across+" high", hi, c.hi)
	}
	for _, c := range []struct{ up, height, lo, hi string }{
		{"48 above floor", "0", "8", "8"},
		{"top 84 above floor", "10", "34", "44"},
		{"0 to 84 above floor", "0", "-40", "44"},
		{"6 below ceiling", "10", "34", "44"}, // the ceiling's lowest point, 50 in over the level line
		{"3 to 5 below level", "0", "-5", "-3"},
	} {
		lo, hi, ok := got.Up("back", r.up(c.up), r.in(c.height))
		if !ok {
			t.Errorf("%s: not found", c.up)
		}
		wantLength(t, c.up+" low", lo, c.lo)
		wantLength(t, c.up+" high", hi, c.hi)
	}
}

// A corner is where the tape touched it: the stud 1/2 in behind the board, the tile's face 9/16 in before it.
func TestPlaceBySurface(t *testing.T) {
	r := alcove(t)
	r.lay("white", "back", "left", "right")
	got := r.solve()
	for _, c := range []struct {
		to   document.Surface
		a, b string // 10 in from A and from B
	}{{document.Stud, "9-1/2", "50-1/2"}, {document.Board, "10", "50"}, {document.TileFace, "10-9/16", "49-7/16"}} {
		for from, want := range map[string]string{"A": c.a, "B": c.b} {
			a := r.across("10 from " + from)
			a.Touches = val(c.to)
			lo, _, _ := got.Across("back", a, 0)
			wantLength(t, "10 in from "+from, lo, want)
		}
	}
}

func TestNoSuchPlace(t *testing.T) {
	r := nicheRoom(t)
	r.lay("white", "floor")
	got := r.solve()
	for _, across := range []string{"10 from C", "10 left of nothing", "on nothing"} {
		if _, _, ok := got.Across("back", r.across(across), 0); ok {
			t.Errorf("%s is on the back wall", across)
		}
	}
	if _, _, ok := got.Across("no wall", r.across("10 from A"), 0); ok {
		t.Error("a place on no wall")
	}
	for _, face := range []string{"floor", "niche > sill", "niche > left", "no wall"} {
		if _, _, ok := got.Up(face, r.up("10 above floor"), 0); ok {
			t.Errorf("%s has no heights", face)
		}
	}
	if _, _, ok := got.Up("niche > back", r.up("50 above floor"), 0); !ok {
		t.Error("a niche's back has the wall's heights")
	}
	if lo, _, ok := got.Across("niche > left jamb", r.across("3 from left"), 0); !ok || lo != r.in("3") {
		t.Error("a jamb has two ends")
	}
}

// A stub-out and a box in the floor, by their distances square off two walls, taped to the board; a center line of the first wall runs on over
// the floor, whose frame begins 1/2 in left of that wall's board.
func TestFloorPlaces(t *testing.T) {
	r := alcove(t)
	r.lay("white", "floor", "back")
	r.Lines = []document.Line{{Name: "basin line", In: document.Name{Text: "back"}, Across: r.across("20 from A")}}
	off := func(back, left string) []document.AtWall {
		return []document.AtWall{{Wall: "back", Value: val(r.in(back))}, {Wall: "left", Value: val(r.in(left))}}
	}
	r.Stubs = []document.Stub{{Name: "flange", In: document.Name{Text: "floor"}, Diameter: val(r.in("4")), FloorAt: off("12", "15")},
		{Name: "stray", In: document.Name{Text: "floor"}, FloorAt: off("12", "75")},
		{Name: "lost", In: document.Name{Text: "floor"}, FloorAt: off("12", "15")[:1]}}
	r.Boxes = []document.Box{{Name: "hatch", In: document.Name{Text: "floor"}, FloorAt: off("20", "40"), Width: val(r.in("6")), Height: val(r.in("4"))}}
	got := r.solve()
	f := got.face("floor")
	if len(f.Holes) != 1 {
		t.Fatalf("holes %+v", f.Holes)
	}
	wantNear(t, "flange across", f.Holes[0].Center.X, "15-1/2")
	wantNear(t, "flange off the back wall", f.Holes[0].Center.Y, "-12-1/2")
	wantNear(t, "hatch", f.Openings[0].Rect.Min.X, "37-1/2")
	wantNear(t, "hatch", f.Openings[0].Rect.Max.Y, "-18-1/2")
	wantLength(t, "basin line on the floor", f.Lines[0].X, "20-1/2")
	got.wantSaid("stub-outside", "stray is outside floor")
	got.wantSaid("place-unknown", "lost")
}

// A pipe 1 in across whose center is 3/8 in from the corner reaches over the edge of its wall.
func TestStubOverEdge(t *testing.T) {
	r := alcove(t)
	r.stub("riser", "back", "3/8 from A", "20 above floor", "1")
	r.stub("clear", "back", "3/4 from A", "30 above floor", "1")
	got := r.solve()
	got.wantSaid("stub-over-edge", "riser", "1 in across")
	for _, f := range got.list {
		if f.Code == "stub-over-edge" && f.At.Path == "stub-outs > clear" {
			t.Error("the other one is clear of the edge")
		}
	}
}
