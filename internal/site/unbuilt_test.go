package site

import (
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// The back wall is 60 in wide. Each row leaves it out by another fact; the window is told all the same.
func TestPlacesOnAWallLeftOut(t *testing.T) {
	for _, c := range []struct {
		what  string
		spoil func(*room)
		code  string
	}{
		{"its board", func(r *room) { r.Walls[0].BuildUp = r.layers("board") }, "face-unsolved"},
		{"its neighbor's board", func(r *room) { r.Walls[1].BuildUp = r.layers("board") }, "face-unsolved"},
		{"the ceiling", func(r *room) { r.Survey.Up = nil }, "ceiling-unknown"},
	} {
		r := alcove(t)
		c.spoil(r)
		r.opening("window", "back", document.Window, "50 from A", "48 above floor", "20", "30")
		r.opening("vent", "back", document.Plain, "10 from A", "48 above floor", "8", "8")
		r.stub("supply", "back", "center 75 from A", "center 20 above floor", "5/8")
		r.Boxes = []document.Box{{Name: "switch", In: document.Name{Text: "back"}, Across: r.across("center 70 from A"),
			Up: r.up("center 44 above floor"), Width: val(r.in("2")), Height: val(r.in("3"))}}
		got := r.solve()
		got.wantSaid(c.code, "back")
		for _, name := range []string{"window", "supply", "switch"} {
			got.wantSaid("outside-wall", name+" reaches", "outside back")
		}
		for _, f := range got.list {
			if f.Code == "outside-wall" && f.Values[0].Text == "vent" {
				t.Errorf("%s: %s", c.what, f.Say(unit.DefaultStyle(unit.Inches)))
			}
		}
	}
}

// The ceiling is 96 in over the floor.
func TestHeightsOnAWallLeftOut(t *testing.T) {
	r := alcove(t)
	r.Walls[0].BuildUp = r.layers("board")
	r.opening("window", "back", document.Window, "10 from A", "80 above floor", "20", "30")
	r.opening("door", "back", document.Door, "34 from A", "0 above floor", "20", "80")
	got := r.solve()
	got.wantSaid("outside-wall", "window reaches 14 in outside back")
	for _, f := range got.list {
		if f.Code == "outside-wall" && f.Values[0].Text == "door" {
			t.Error("a door on the floor was said to be outside")
		}
	}
}

// Readings along the back wall, 60 in from board to board and 61 from stud to stud: within half an inch of its end they are taken.
func TestStationsBeyondTheWall(t *testing.T) {
	for _, c := range []struct {
		key  string
		list func(*document.Wall) *[]document.Station
	}{
		{"floor", func(w *document.Wall) *[]document.Station { return &w.FloorLine }},
		{"ceiling", func(w *document.Wall) *[]document.Station { return &w.CeilingLine }},
		{"profile", func(w *document.Wall) *[]document.Station { return &w.Profile }},
		{"studs", func(w *document.Wall) *[]document.Station { return &w.Studs }},
	} {
		r := alcove(t)
		*c.list(&r.Walls[0]) = r.stations("0 0, 62 0")
		r.solve().wantSaid("station-beyond", "the "+c.key+" of back", "62 in")
		*c.list(&r.Walls[0]) = r.stations("0 0, 61-1/2 0")
		r.solve().wantNot("station-beyond")
	}
}

// Pipes of 5/8 and 1-1/2 in take 5/16 + 3/4 = 1-1/16 in between their centers.
func TestPipesThatOverlap(t *testing.T) {
	for _, c := range []struct {
		waste   string
		overlap bool
	}{{"center 37 from A", true}, {"center 37-1/16 from A", false}, {"center 36 from A", true}} {
		r := alcove(t)
		r.stub("supply", "back", "center 36 from A", "center 20 above floor", "5/8")
		r.stub("waste", "back", c.waste, "center 20 above floor", "1-1/2")
		if got := r.solve(); c.overlap {
			got.wantSaid("stubs-overlap", "waste and supply overlap on back", "1-1/16 in")
		} else {
			got.wantNot("stubs-overlap")
		}
	}
}
