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
    across: 14 to 44 from A
` + words
	doc, found := document.Read("shop", []byte(src))
	for _, f := range found {
		t.Fatalf("line %d: %s\n%s", f.At.Line, f.Say(unit.DefaultStyle(unit.Inches)), src)
	}
	return &room{doc: doc}, doc.Cabinets[0]
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
	c, _, ok := r.build(doc)
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
		got, _, ok := r.build(doc)
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
