package joinery

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// written reads a cabinet in the document's own words, in a room of two walls with a few goods.
func written(t testing.TB, words string) (*room, document.Cabinet) {
	t.Helper()
	src := `dryfit: 1
name: shop
units: in
survey: {corners: A B C D, tape: {A-B: 96, B-C: 96, C-D: 96, D-A: 96, A-C: 135-3/4}}
walls: {back: {along: A-B}, side: {along: B-C}}
stock:
  ply: {kind: sheet, size: 96 x 48 x 3/4, measured: 23/32}
  thin: {kind: sheet, size: 96 x 48 x 1/4, measured: 7/32}
  half: {kind: sheet, size: 96 x 48 x 1/2, measured: 15/32}
  oak: {kind: board, size: 96 x 6 x 3/4, species: white oak, rings: flat}
  square: {kind: stick, size: 96 x 1-3/4 x 1-3/4}
cabinets:
  vanity:
    in: back
` + placed(words)
	doc, found := document.Read("shop", []byte(src))
	for _, f := range found {
		t.Fatalf("line %d: %s\n%s", f.At.Line, f.Say(unit.DefaultStyle(unit.Inches)), src)
	}
	return &room{doc: doc}, doc.Cabinets[0]
}

// placed gives a cabinet its usual place where the words tell none.
func placed(words string) string {
	if strings.Contains(words, "across:") {
		return words
	}
	return "    across: 14 to 44 from A\n" + words
}

// buildChecked builds a cabinet that stands nowhere, and checks its parts.
func buildChecked(r *room, doc document.Cabinet) (Cabinet, outline, bool) {
	c, o, ok := r.build(doc)
	for _, p := range c.Pieces {
		r.found = append(r.found, p.Part.Check()...)
	}
	return c, o, ok
}

// lengthOf reads a length of the tables below.
func lengthOf(t testing.TB, s string) unit.Length {
	t.Helper()
	l, err := unit.Parse(s, unit.Inches)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

const standing = `    height: 32-1/2
    depth: 20
    stock: {panels: ply, back: thin, drawers: half, frame: oak, front panels: thin, legs: square}
    joints: {bottom: dado 1/4, top: rabbet 1/4, back: rabbet 3/8}
    toe space: {high: 4, deep: 3}
`

// The sizes were worked out on paper. Stock 23/32 and 7/32; between the sides 30 - 2 x 23/32 = 28-9/16.
func TestPanelCabinet(t *testing.T) {
	r, doc := written(t, standing)
	c, _, ok := buildChecked(r, doc)
	if !ok || len(r.found) > 0 {
		t.Fatal(ok, r.found)
	}
	for name, want := range map[string]string{
		"left side":  "32-1/2 x 20 x 23/32",
		"right side": "32-1/2 x 20 x 23/32",
		"bottom":     "29-1/16 x 19-25/32 x 23/32", // 28-9/16 + 2 x 1/4; 20 - 7/32
		"front rail": "29-1/16 x 4 x 23/32",
		"rear rail":  "29-1/16 x 4 x 23/32",
		"back":       "28-1/2 x 29-5/16 x 7/32", // 32-1/2 - 4; 28-9/16 + 2 x 3/8
		"toe board":  "28-9/16 x 4 x 23/32",
	} {
		if got := sizeWords(find(t, c, name).Part.Size); got != want {
			t.Errorf("%s is %s, want %s", name, got, want)
		}
	}
	if n := len(c.Pieces); n != 7 {
		t.Errorf("%d pieces", n)
	}
	// The dado for the bottom lies in the inside face, 4 from the lower end, as wide as the sheet was measured. The right side's left
	// end is its foot, the left side's is its top.
	for name, want := range map[string]string{
		"right side": "dado 4..4-23/32 x 0..19-25/32, 1/4 deep",
		"left side":  "dado 27-25/32..28-1/2 x 0..19-25/32, 1/4 deep",
	} {
		if got := channels(find(t, c, name)); got[0] != want {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
	if got, want := strings.Join(channels(find(t, c, "right side")), "; "), "rabbet 31-25/32..32-1/2 x 0..4, 1/4 deep"; !strings.Contains(got, want) {
		t.Errorf("front rail: %s", got)
	}
	if got, want := strings.Join(channels(find(t, c, "right side")), "; "), "rabbet 4..32-1/2 x 19-25/32..20, 3/8 deep"; !strings.Contains(got, want) {
		t.Errorf("back: %s", got)
	}
	if out := c.Outside(); out != c.Asked {
		t.Errorf("put together it is %v, asked for was %v", out, c.Asked)
	}
}

// A back of 72 - 2 x 23/32 + 2 x 3/8 = 71-5/16 is wider than a sheet of 48 is across its grain, so it comes out of it lying down; one of 29-5/16 stands.
func TestGrainOfBack(t *testing.T) {
	for across, want := range map[string]part.Grain{"14 to 44": part.Along, "14 to 86": part.Any} {
		r, doc := written(t, "    across: "+across+" from A\n"+standing)
		c, _, _ := buildChecked(r, doc)
		if got := find(t, c, "back").Part.Grain; got != want {
			t.Errorf("%s: grain %v, want %v", across, got, want)
		}
	}
}

func find(t testing.TB, c Cabinet, name string) Piece {
	t.Helper()
	for _, p := range c.Pieces {
		if p.Part.Name == name {
			return p
		}
	}
	t.Fatalf("no %s", name)
	return Piece{}
}

func exact(l unit.Length) string {
	return strings.TrimSuffix(unit.Style{System: unit.Inches}.Exact(l), " in")
}

func sizeWords(s part.Size) string {
	return exact(s.Length) + " x " + exact(s.Width) + " x " + exact(s.Thick)
}

func channels(p Piece) []string {
	var all []string
	for _, c := range p.Part.Channels {
		all = append(all, fmt.Sprintf("%s %s..%s x %s..%s, %s deep", c.Kind, exact(c.Area.Min.X), exact(c.Area.Max.X), exact(c.Area.Min.Y), exact(c.Area.Max.Y), exact(c.Depth)))
	}
	return all
}

// Fronts, by hand. Between the sides 28-9/16, one divider of 23/32: two columns of 13-59/64 = 13.921875, to the mark 13-15/16 and the
// rest 13-29/32.
func TestFronts(t *testing.T) {
	for _, c := range []struct {
		what, words string
		want        map[string]string
	}{
		{"inset", standing + `    fronts are: inset
    reveal: 1/8
    fronts:
      a: {kind: drawer, height: 5}
      b: {kind: door, hinge: left}
    slides: {side: 1/2, length: 16}
`, map[string]string{
			// inside 28-9/16 wide; from 4-23/32 to 31-25/32: 27-1/16, less 3 x 1/8 and 5 = 21-11/16
			"a": "28-5/16 x 5 x 23/32", "b": "21-11/16 x 28-5/16 x 23/32",
			// opening from the middle of the gap to the rails: 1/8 + 5 + 1/16 = 5-3/16, less 1/2 + 1/4: 4-7/16
			"a box left": "16 x 4-7/16 x 15/32", "a box front": "26-5/8 x 4-7/16 x 15/32", // 28-9/16 - 1 - 15/16
			"a box bottom": "27-1/16 x 15-1/2 x 7/32", // 26-5/8 + 1/2 - 1/16; 16 - 15/16 + 1/2 - 1/16
		}},
		{"overlay, two columns", standing + `    edge reveal: 1/16
    fronts:
      a: {kind: door, column: 1}
      b: {kind: door, column: 2, hinge: right, made as: frame}
    joints: {frame: tongue 3/8}
`, map[string]string{
			// divider from 23/32 + 13-15/16 = 14-21/32 to 15-3/8, its middle 15-1/64; less 1/16 at the edge and 1/16 of the reveal
			"a": "28-3/8 x 14-57/64 x 23/32", // 32-1/2 - 4 - 2 x 1/16
			// the other: 30 - 1/16 - 15-1/64 - 1/16 = 14-55/64
			"b left stile": "28-3/8 x 2-1/4 x 23/32", "b top rail": "11-7/64 x 2-1/4 x 23/32", // 14-55/64 - 4-1/2 + 3/4
			"b panel": "24-9/16 x 11-3/64 x 7/32", // 28-3/8 - 4-1/2 + 3/4 - 1/16; 11-7/64 - 1/16
		}},
	} {
		words := c.words
		if i := strings.Index(words, "    joints: {frame"); i >= 0 {
			words = strings.Replace(words[:i], "back: rabbet 3/8}", "back: rabbet 3/8, frame: tongue 3/8}", 1)
		}
		r, doc := written(t, words)
		got, _, ok := buildChecked(r, doc)
		if !ok || len(r.found) > 0 {
			t.Fatal(c.what, ok, r.found)
		}
		for name, want := range c.want {
			if size := sizeWords(find(t, got, name).Part.Size); size != want {
				t.Errorf("%s: %s is %s, want %s", c.what, name, size, want)
			}
		}
		if got.Outside() != got.Asked {
			t.Errorf("%s: put together it is %v, asked for was %v", c.what, got.Outside(), got.Asked)
		}
	}
}

// Each trouble is told once, with its code.
func TestCabinetTrouble(t *testing.T) {
	for _, c := range []struct{ old, new, want string }{
		{"height: 32-1/2", "height: unknown", "wood-unknown"},
		{"depth: 20", "depth: 7", "rails-wide"},         // two rails of 4
		{"depth: 20", "depth: 1/8", "cabinet-full"},     // the back alone is 7/32
		{"height: 32-1/2", "height: 5", "cabinet-full"}, // 4 of toe, and two panels
		{"bottom: dado 1/4", "bottom: dado 23/32", "part-thin part-thin"},
		{"bottom: dado 1/4", "bottom: tongue 1/4", "joint-unfit"},
		{"back: rabbet 3/8", "back: groove 1/4", "groove-open"},
		{"top: rabbet 1/4", "top: half-lap 3/4", "joint-unfit"},
		{"    toe", "    columns: [10, 10]\n    fronts: {a: {kind: door}}\n    toe", "columns-open"},
		{"    toe", "    fronts: {a: {kind: door, height: 10}}\n    toe", "fronts-open"},
		{"    toe", "    fronts: {a: {kind: door, height: 40}, b: {kind: door}}\n    toe", "fronts-open"},
		{"    toe", "    fronts: {a: {kind: drawer, height: 6}, b: {kind: door}}\n    slides: {side: 1/2, length: 22}\n    toe", "drawer-long"},
		{"    toe", "    fronts: {a: {kind: drawer, height: 6}, b: {kind: door}}\n    slides: {length: 16}\n    toe", "wood-missing"},
		{"    toe", "    fronts: {a: {kind: drawer, height: 6, box height: 9}, b: {kind: door}}\n    slides: {side: 1/2, length: 16}\n    toe", "drawer-high"},
		{"    toe", "    fronts: {a: {kind: door, height: 12, pull: {length: 40, deep: 1}}, b: {kind: panel}}\n    toe", "grip-outside"},
		{"    toe", "    shelves: {s: {up: 30}}\n    toe", "shelf-high"},
		{"    toe", "    shelves: {s: {up: 10, depth: 20}}\n    toe", "shelf-deep"},
		{"    toe", "    legs: {section: 1-3/4, tapered on: [inner], to: 2}\n    stands: legs\n    bottom: 6\n    toe", "taper-none taper-none taper-none taper-none"},
	} {
		r, doc := written(t, strings.Replace(standing, c.old, c.new, 1))
		buildChecked(r, doc)
		if got := codes(r); got != c.want {
			t.Errorf("%q: %q, want %q", c.new, got, c.want)
		}
	}
}

// Grips, cups and plates, by hand, on one inset door: opening 28-9/16 x 27-1/16, reveal 1/8: a door 28-5/16 x 26-13/16.
func TestBores(t *testing.T) {
	r, doc := written(t, standing+`    fronts are: inset
    reveal: 1/8
    hinges: {bore: 35 mm, deep: 12.5 mm, edge: 4.5 mm, from ends: 90 mm, plate: 37 mm}
    fronts: {a: {kind: door, hinge: left, pull: {edge: right, length: 5, deep: 5/8, width: 1/2}}}
`)
	c, _, ok := buildChecked(r, doc)
	if !ok || len(r.found) > 0 {
		t.Fatal(r.found)
	}
	door := find(t, c, "a").Part
	mm := unit.Millimetre
	// The cup's center is 4.5 + 17.5 = 22 mm from the left edge, which is the rear one of a part that lies face up with its foot to the left.
	for i, x := range []unit.Length{90 * mm, door.Size.Length - 90*mm} {
		if h := door.Holes[i]; h.On != part.Back || h.At.X != x || h.At.Y != door.Size.Width-22*mm || h.Depth != 25*mm/2 {
			t.Errorf("cup %d: %+v", i, h)
		}
	}
	if g := door.Channels[0]; g.On != part.Front || g.Depth != lengthOf(t, "5/8") || g.Area.W() != 5*unit.Inch || g.Area.Min.Y != lengthOf(t, "7/32") {
		t.Errorf("grip: %+v", g)
	}
	side := find(t, c, "left side").Part
	if n := len(side.Holes); n != 4 {
		t.Fatalf("%d plate holes", n)
	}
	// 37 mm behind the back of the door: 37 + 23/32 in from the front edge. The left side's left end is its top: 32-1/2 less the height.
	want := 37*mm + lengthOf(t, "23/32")
	low := lengthOf(t, "4-27/32") + 90*mm // bottom 4-23/32, reveal 1/8
	if h := side.Holes[0]; h.At.Y != want || h.At.X != lengthOf(t, "32-1/2")-(low-16*mm) {
		t.Errorf("plate: %+v, want %d", h, want)
	}
}
