package web

import (
	"context"
	"net/http"
	"strconv"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/store"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// One press moves the crossing by what it says: from where the pattern is, and again from there. The figures are added
// by hand on the document's own words.
func TestPressesAddUp(t *testing.T) {
	s := open(t, nil)
	press := func(base, name, um string) {
		t.Helper()
		if w := s.post("/room/1/pin", "base", base, "back", "/room/1/layout", "face", "basin wall", "field", "main", name, um); w.Code != 303 {
			t.Fatalf("%d %s", w.Code, w.Body)
		}
	}
	press("1", "dx", "0") // hold it where it is, at a mark of the tape
	first := pinOf(t, s)
	press("2", "dx", "6350") // a quarter inch: 6.35 mm
	press("3", "dx", "-6350")
	if back := pinOf(t, s); back != first {
		t.Errorf("right and left again: %q, it was %q", back, first)
	}
	press("4", "dy", "25400")
	press("5", "dy", "-25400")
	if back := pinOf(t, s); back != first {
		t.Errorf("up and down again: %q, it was %q", back, first)
	}
	if w := s.post("/room/1/pin", "base", "6", "back", "/room/1/layout", "face", "basin wall", "field", "main", "free", "1"); w.Code != 303 || strings.Contains(s.head(1), "pin:") {
		t.Errorf("let go: %d", w.Code)
	}
	if s.head(1) != string(demo.Rooms()[0].Text) {
		t.Error("letting go did not give back the document as it was")
	}
}

// A floor moves like a wall, square off two of its walls. The demo's floor is not square, so what is told off walls is
// held against how far the pattern of the plan has moved: by what was asked, to the nearest mark of each of two walls.
func TestFloorMoves(t *testing.T) {
	for _, room := range []string{"1", "2"} {
		s := open(t, nil)
		n := 1
		press := func(pairs ...string) geom.Point {
			t.Helper()
			w := s.post("/room/"+room+"/pin", append([]string{"base", strconv.Itoa(n), "back", "/room/" + room + "/layout?face=floor", "face", "floor", "field", "main"}, pairs...)...)
			if w.Code != 303 {
				t.Fatalf("room %s, %v: %d %s", room, pairs, w.Code, w.Body)
			}
			n++
			return s.originOf(room)
		}
		free := s.originOf(room)
		first := press("dx", "0")
		near(t, "held where it is", first, free)
		near(t, "to the right", press("dx", "6350"), first.Add(geom.Point{X: 6350 * unit.Micrometre}))
		near(t, "back, and up", press("dx", "-6350", "dy", "25400"), first.Add(geom.Point{Y: 25400 * unit.Micrometre}))
		near(t, "far", press("dx", "300000", "dy", "-425400"), first.Add(geom.Point{X: 300 * unit.Millimetre, Y: -400 * unit.Millimetre}))
		if doc := s.head(store.RoomID(room[0] - '0')); !strings.Contains(doc, "pin: {off: {") {
			t.Errorf("no place off two walls in\n%s", doc)
		}
	}
}

func (s *site) originOf(room string) geom.Point {
	s.Helper()
	p, err := plan.Make(context.Background(), "x", []byte(s.head(store.RoomID(room[0]-'0'))), plan.Options{UpTo: plan.UpToTiling, Face: "floor"})
	if err != nil {
		s.Fatal(err)
	}
	for _, f := range p.Tiling.Faces {
		if f.Name == "floor" {
			return f.Fields[0].Chosen().Origin
		}
	}
	s.Fatal("the floor is not laid")
	return geom.Point{}
}

// near: half a mark off each of two walls that are within 6 degrees of square, and a mark of the metric room is larger.
func near(t *testing.T, what string, got, want geom.Point) {
	t.Helper()
	if d := got.Sub(want); d.X.Abs() > unit.Millimetre || d.Y.Abs() > unit.Millimetre {
		t.Errorf("%s: the pattern is at %v, want %v", what, got, want)
	}
}

// One of the floor's other layouts is laid where the search found it.
func TestChooseFloorLayout(t *testing.T) {
	s := open(t, nil)
	p, err := plan.Make(t.Context(), "x", []byte(s.head(1)), plan.Options{UpTo: plan.UpToTiling, Face: "floor"})
	if err != nil || len(p.Tiling.Faces) != 1 || len(p.Tiling.Faces[0].Fields[0].Layouts) < 2 {
		t.Fatalf("the floor has no two layouts to choose from: %v", err)
	}
	if w := s.post("/room/1/pin", "base", "1", "back", "/room/1/layout?face=floor", "face", "floor", "field", "main", "layout", "1"); w.Code != 303 {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	near(t, "the other layout", s.originOf("1"), p.Tiling.Faces[0].Fields[0].Layouts[1].Origin)
	has(t, s.get("/room/1/layout?face=floor"), "Lay this one", "Move by finger", "Arrow keys move the pattern")
}

func pinOf(t *testing.T, s *site) string {
	t.Helper()
	_, rest, ok := strings.Cut(s.head(1), "pin: {")
	if !ok {
		t.Fatal("no pin in the document")
	}
	pin, _, _ := strings.Cut(rest, "}")
	return pin
}

// Choosing a layout lays it: the plan of the document has the origin that the search offered, to the nearest mark.
func TestChooseLayout(t *testing.T) {
	s := open(t, nil)
	before, err := plan.Make(t.Context(), "x", []byte(s.head(1)), plan.Options{UpTo: plan.UpToTiling, Face: "basin wall"})
	if err != nil {
		t.Fatal(err)
	}
	want := before.Tiling.Faces[0].Fields[0].Layouts[1]
	if w := s.post("/room/1/pin", "base", "1", "back", "/room/1/layout", "face", "basin wall", "field", "main", "layout", "1"); w.Code != 303 {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	after, err := plan.Make(t.Context(), "x", []byte(s.head(1)), plan.Options{UpTo: plan.UpToTiling, Face: "basin wall"})
	if err != nil {
		t.Fatal(err)
	}
	got := after.Tiling.Faces[0].Fields[0]
	mark := after.Style.Mark / 2
	if off := got.Chosen().Origin.Sub(want.Origin); !got.Held || off.X.Abs() > mark || off.Y.Abs() > mark {
		t.Errorf("held %v, off by %v", got.Held, off)
	}
	has(t, s.get("/room/1/layout"), "Lay this one", "other 1") // the others are still offered
}

func TestPinRefuses(t *testing.T) {
	s := open(t, nil)
	for _, c := range [][]string{
		{"face", "no such wall", "field", "main", "dx", "1"},
		{"face", "basin wall", "field", "no such field", "dx", "1"},
		{"face", "basin wall", "field", "main", "layout", "99"},
		{"face", "basin wall", "field", "main", "layout", "-1"},
		{"face", "floor", "field", "main", "layout", "99"},
	} {
		w := s.post("/room/1/pin", append([]string{"base", "1", "back", "/room/1/layout"}, c...)...)
		if w.Code != http.StatusUnprocessableEntity {
			t.Errorf("%v: %d", c, w.Code)
		}
	}
}

// While a hand moves a pattern the stages run up to tiling of that face and no further.
func TestPreviewRunsOneFace(t *testing.T) {
	s := openTiles(t)
	s.server.plans = &planner{}
	w := s.post("/room/1/pin", "base", "1", "back", "/room/1/layout?face=basin+wall", "face", "basin wall", "field", "main", "dx", "5000", "preview", "1")
	if w.Code != 200 {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	for k := range s.server.plans.made {
		if k.upTo == plan.All || k.upTo == plan.UpToTiling && (k.face != "basin wall" || !k.quick) {
			t.Errorf("a drag planned %+v", k)
		}
	}
	if strings.Contains(s.head(1), "pin") {
		t.Error("a preview was kept")
	}
	v := view{Text: []byte(s.head(1))}
	if v.Tree, _ = text.Parse(v.Text); text.At(v.Tree, []string{"lay", "basin wall", "fields", "main", "tile"}) == nil {
		t.Error("the field is gone")
	}
}
