package site

import (
	"strings"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

func (r *room) rect(x0, y0, x1, y1 string) geom.Rect {
	return geom.Rect{Min: geom.Point{X: r.in(x0), Y: r.in(y0)}, Max: geom.Point{X: r.in(x1), Y: r.in(y1)}}
}

// The alcove's finished floor is its bare floor, 40 in below the level line, so that "48 above floor" is y = 8.
func TestOpeningsPlaced(t *testing.T) {
	for _, c := range []struct {
		what                      string
		kind                      document.OpeningKind
		across, up, width, height string
		x0, y0, x1, y1            string
	}{
		{"left edge from the left corner", document.Window, "12 from A", "48 above floor", "20", "30", "12", "8", "32", "38"},
		{"right edge from the right corner", document.Window, "12 from B", "48 above floor", "20", "30", "28", "8", "48", "38"},
		{"center", document.Window, "center 30 from A", "center 60 above floor", "21", "31", "19-1/2", "4-1/2", "40-1/2", "35-1/2"},
		{"two edges", document.Niche, "10 to 24 from B", "48 to 62 above floor", "", "", "36", "8", "50", "22"},
		{"top below the ceiling", document.Niche, "10 from A", "6 below ceiling", "12", "12", "10", "38", "22", "50"},
		{"from the level line", document.Niche, "10 from A", "3 above level", "12", "12", "10", "3", "22", "15"},
		{"top below the level line", document.Niche, "10 from A", "3 below level", "12", "12", "10", "-15", "22", "-3"},
		{"left of a line", document.Niche, "3 left of tap line", "top 84 above floor", "12", "12", "21", "32", "33", "44"},
		{"right of a line", document.Niche, "3 right of tap line", "48 above floor", "12", "12", "39", "8", "51", "20"},
		{"on a line", document.Niche, "on tap line", "48 above floor", "12", "12", "30", "8", "42", "20"},
		{"a door stands on the floor", document.Door, "10 from A", "", "30", "80", "10", "-41", "40", "40"},
	} {
		r := alcove(t)
		r.Lines = []document.Line{{Name: "tap line", In: document.Name{Text: "back"}, Across: r.across("36 from A")}}
		r.opening("it", "back", c.kind, c.across, c.up, c.width, c.height)
		got := r.solve()
		f := got.face("back")
		if len(f.Openings) != 1 || f.Openings[0].Rect != r.rect(c.x0, c.y0, c.x1, c.y1) {
			t.Errorf("%s: got %v, want %v; said:\n%s", c.what, f.Openings, r.rect(c.x0, c.y0, c.x1, c.y1), got.said())
		}
	}
}

// A place that was taped to the studs is 1/2 in farther from the board's corner than the same figure to the board.
func TestPlaceTapedToStud(t *testing.T) {
	r := alcove(t)
	o := r.opening("it", "back", document.Window, "12 from A", "48 above floor", "20", "30")
	o.Across.Touches = val(document.Stud)
	wantLength(t, "left edge", r.solve().face("back").Openings[0].Rect.Min.X, "11-1/2")
}

func TestOpeningsWrong(t *testing.T) {
	for _, c := range []struct {
		across, up, width, height string
		code, says                string
	}{
		{"50 from A", "48 above floor", "20", "30", "outside-wall", "10 in outside back"},
		{"10 from A", "80 above floor", "20", "30", "outside-wall", "14 in outside back"},
		{"10 from D", "48 above floor", "20", "30", "place-unknown", "back"},
		{"10 from A", "48 above floor", "20", "", "place-unknown", "back"},
		{"3 left of no line", "48 above floor", "20", "30", "place-unknown", "back"},
	} {
		r := alcove(t)
		r.opening("it", "back", document.Window, c.across, c.up, c.width, c.height)
		got := r.solve()
		got.wantSaid(c.code, "it", c.says)
		if n := len(got.face("back").Openings); n != 0 {
			t.Errorf("%+v: %d openings", c, n)
		}
	}
}

func TestOpeningsOverlap(t *testing.T) {
	r := alcove(t)
	r.opening("window", "back", document.Window, "10 from A", "48 above floor", "20", "30")
	r.opening("niche", "back", document.Niche, "29 from A", "70 above floor", "12", "12")
	r.solve().wantSaid("openings-overlap", "niche overlaps window")
}

// A window that is not tiled round keeps a joint to its frame: 20 x 30 in with 1/8 in all round.
func TestJointToFrame(t *testing.T) {
	r := alcove(t)
	r.lay("white", "back")
	r.opening("window", "back", document.Window, "10 from A", "48 above floor", "20", "30")
	f := r.solve().face("back")
	if s := f.Cut.Spans(geom.Horizontal, r.in("20")); len(s) != 2 || s[0].Hi != r.in("9-7/8") || s[1].Lo != r.in("30-1/8") {
		t.Errorf("spans beside the window: %v", s)
	}
	whole := r.in("60").Times(r.in("96"))
	if got := f.Board.Area(); got != whole-r.in("20").Times(r.in("30")) {
		t.Errorf("board area %v", got.SqFt())
	}
}

func TestStubs(t *testing.T) {
	r := alcove(t)
	r.stub("supply", "back", "center 36 from A", "center 20 above floor", "5/8").Hole = val(r.in("1-1/4"))
	r.stub("waste", "back", "70 from A", "18 above floor", "1-1/2")
	r.opening("window", "back", document.Window, "10 from A", "48 above floor", "20", "30")
	r.stub("in the window", "back", "20 from A", "50 above floor", "1")
	got := r.solve()
	f := got.face("back")
	if len(f.Holes) != 1 || f.Holes[0].Center != (geom.Point{X: r.in("36"), Y: r.in("-20")}) || f.Holes[0].Drill != r.in("1-1/4") {
		t.Errorf("holes %+v", f.Holes)
	}
	got.wantSaid("stub-outside", "waste is outside back")
	got.wantSaid("stub-outside", "in the window is outside back")
}

// A box of 2 x 3 in centered 30 in from A and 44 in over the floor takes its area from the board.
func TestBox(t *testing.T) {
	r := alcove(t)
	r.Boxes = []document.Box{{Name: "switch", In: document.Name{Text: "back"}, Across: r.across("center 30 from A"),
		Up: r.up("center 44 above floor"), Width: val(r.in("2")), Height: val(r.in("3"))}}
	f := r.solve().face("back")
	if len(f.Openings) != 1 || f.Openings[0].Rect != r.rect("29", "2-1/2", "31", "5-1/2") || f.Openings[0].Kind != "box" {
		t.Errorf("box %+v", f.Openings)
	}
	if f.Board.Area() != r.in("60").Times(r.in("96"))-r.in("2").Times(r.in("3")) {
		t.Error("the box is not cut out of the board")
	}
}

func TestBoxesWrong(t *testing.T) {
	for _, c := range []struct{ across, up, w, code string }{
		{"59 from A", "44 above floor", "2", "outside-wall"}, {"10 from Z", "44 above floor", "2", "place-unknown"}, {"10 from A", "44 above floor", "0", "place-unknown"},
	} {
		r := alcove(t)
		r.Boxes = []document.Box{{Name: "switch", In: document.Name{Text: "back"}, Across: r.across(c.across), Up: r.up(c.up), Width: val(r.in(c.w)), Height: val(r.in("3"))}}
		r.solve().wantSaid(c.code, "switch")
	}
}

// An opening that reaches over a leaning side, though not over the wall's widest point, is outside.
func TestOpeningOverALeaningSide(t *testing.T) {
	r := alcove(t)
	r.Walls[1].Lean = r.at("B 4, C 4")
	o := r.opening("window", "back", document.Window, "1 from B", "80 above floor", "10", "12")
	o.Across.From, o.Across.Lo = "A", r.in("48-1/2")
	r.solve().wantSaid("outside-wall", "window reaches outside back, over a side that is not square")
}

// The joint that is written counts.
func TestWrittenJointToFrame(t *testing.T) {
	r := alcove(t)
	r.lay("white", "back")
	r.opening("window", "back", document.Window, "10 from A", "48 above floor", "20", "30").Joint = val(r.in("1/4"))
	wantLength(t, "gap", edgeNamed(t, r.solve().face("back"), "window, left").Gap, "1/4")
}

// An opening over the whole width of an alcove whose sides lean 1/8 in is no slip of the pen; it cuts the wall in two.
func TestOpeningFromCornerToCorner(t *testing.T) {
	r := alcove(t)
	r.Walls[1].Lean, r.Walls[2].Lean = r.at("B 1/8, C 1/8"), r.at("D 1/8, A 1/8")
	r.opening("opening", "back", document.Plain, "0 to 60 from A", "60 to 84 above floor", "", "")
	got := r.solve()
	got.wantNot("outside-wall")
	if n := len(got.face("back").Board.Parts()); n != 2 {
		t.Errorf("%d parts: %v", n, got.face("back").Board)
	}
}

func TestStubWithoutDiameter(t *testing.T) {
	r := alcove(t)
	r.stub("supply", "back", "30 from A", "20 above floor", "1").Diameter = document.Value[unit.Length]{Unknown: true}
	r.solve().wantSaid("stub-diameter", "not checked: the hole of supply")
}

// Faces come in the document's order.
func TestFacesInDocumentOrder(t *testing.T) {
	r := rectangle60(t, exact60)
	r.Walls[0], r.Walls[2] = r.Walls[2], r.Walls[0]
	var names []string
	for _, f := range r.solve().Faces {
		names = append(names, f.Name)
	}
	if got := strings.Join(names, ","); got != "front,right,back,left,floor" {
		t.Error(got)
	}
}
