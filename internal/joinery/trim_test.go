package joinery

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// trimmed works the wood of a room out whose finished walls are 96 x 72 in, with a door and a window in the first wall.
func trimmed(t testing.TB, words string, layers ...string) (Plan, *room) {
	t.Helper()
	src := `dryfit: 1
name: shop
units: in
survey:
  corners: A B C D
  tape to: board
  tape: {A-B: 96, B-C: 72, C-D: 96, D-A: 72, A-C: 120, B-D: 120}
  level line: {down: {A: 40, B: 40, C: 40, D: 40}, up: {A: 50, B: 50, C: 50, D: 50}}
walls: {back: {along: A-B}, right: {along: B-C}, front: {along: C-D}, left: {along: D-A}}
floor: {build-up: [board 1/4]}
tools: {saws: {big saw: {reach: 2-1/2}}}
openings:
  door: {in: back, kind: door, across: 30 to 60 from A, up: 0 to 80 above floor}
  window: {in: right, kind: window, across: 12 to 36 from B, up: 30 to 60 above floor}
stock:
  base: {kind: stick, size: 96 x 5-1/4 x 1/2}
  case: {kind: stick, size: 96 x 2-1/4 x 5/8}
  wide: {kind: stick, size: 120 x 3 x 3/4}
` + words
	if len(layers) > 0 {
		src = strings.Replace(src, "back: {along: A-B}", "back: {along: A-B, build-up: "+layers[0]+"}", 1)
	}
	doc, found := document.Read("shop", []byte(src))
	if found.Stops() {
		t.Fatalf("%s\n%s", found[0].Say(unit.DefaultStyle(unit.Inches)), src)
	}
	shape, found, _ := site.Solve(doc)
	if found.Stops() {
		t.Fatal(found)
	}
	p, f, a := Make(doc, shape)
	return p, &room{found: f, assumed: a}
}

// sixteenths says lengths as a tape shows them.
func sixteenths(l unit.Length) string { return unit.DefaultStyle(unit.Inches).Bare(l) }

func runs(p Plan, name string) map[string]string {
	all := map[string]string{}
	for _, t := range p.Trim {
		if t.Name != name {
			continue
		}
		for _, r := range t.Runs {
			words := ""
			for _, l := range r.Pieces {
				words += fmt.Sprintf("%s/%s ", sixteenths(l.Long), sixteenths(l.Short))
			}
			all[r.Wall+" "+r.Where] = words + r.Ends[0].Joint + " " + r.Ends[1].Joint
		}
	}
	return all
}

func checkRuns(t *testing.T, got map[string]string, want map[string]string) {
	t.Helper()
	for k, w := range want {
		if got[k] != w {
			t.Errorf("%s: %q, want %q", k, got[k], w)
		}
	}
	if len(got) != len(want) {
		t.Errorf("runs: %v", got)
	}
}

// Baseboard 1/2 thick, coped: the first wall runs square into both of its corners, each later wall copes to what is there already. The
// door's casing reaches 3/16 + 2-1/4 beyond the opening: from A to it 30 - 2-7/16 = 27-9/16.
func TestCopedBaseboard(t *testing.T) {
	p, r := trimmed(t, `trim:
  casing: {kind: casing, round: [door], stock: case}
  base: {kind: baseboard, stock: base}
`)
	checkRuns(t, runs(p, "base"), map[string]string{
		"back from corner A to door, left":  "27-9/16/27-9/16 square square",
		"back from door, right to corner B": "33-9/16/33-9/16 square square",
		"right from corner B to corner C":   "71-1/2/71-1/2 coped square", // 72 less the baseboard that is coped to
		"front from corner C to corner D":   "95-1/2/95-1/2 coped square",
		"left from corner D to corner A":    "71/71 coped coped",
	})
	if len(r.found) > 0 {
		t.Error(r.found)
	}
	// A coped end is sawn as a miter first, so the piece is sawn 1/2 longer.
	if over := p.Trim[1].Runs[2].Pieces[0].Part.Over.Length; over != unit.Inch/2 {
		t.Error(exact(over))
	}
}

// Mitered: the back keeps the length of the wall, the face is shorter by the thickness at each mitered end.
func TestMiteredBaseboard(t *testing.T) {
	p, _ := trimmed(t, "trim: {base: {kind: baseboard, along: [right, front], stock: base, inside corners: mitered}}\n")
	checkRuns(t, runs(p, "base"), map[string]string{
		"right from corner B to corner C": "72/71-1/2 square mitered",
		"front from corner C to corner D": "96/95-1/2 mitered square",
	})
	if e := p.Trim[0].Runs[0].Ends[1]; (e.Saw-45*unit.Degree) > unit.Degree/100 || (45*unit.Degree-e.Saw) > unit.Degree/100 {
		t.Errorf("%d", e.Saw)
	}
}

// A shoe 1/2 before the baseboard is 1/2 shorter at each inside corner; it has no casing here to stop at.
func TestShoe(t *testing.T) {
	p, _ := trimmed(t, "trim: {base: {kind: baseboard, along: [left], stock: base}, shoe: {kind: shoe, along: [left], stock: case}}\n")
	checkRuns(t, runs(p, "shoe"), map[string]string{"left from corner D to corner A": "71/71 square square"})
}

// Casing 2-1/4 wide, 3/16 back from a door 30 x 80: head 30 + 3/8 + 4-1/2 = 34-7/8 over all, 30-3/8 inside; legs 82-7/16 and 80-3/16.
// Round a window 24 x 30: 28-7/8 / 24-3/8 and 34-7/8 / 30-3/8.
func TestCasing(t *testing.T) {
	p, _ := trimmed(t, `trim:
  a: {kind: casing, round: [door], stock: case}
  b: {kind: casing, round: [window], stock: case, all round: yes}
`)
	checkRuns(t, runs(p, "a"), map[string]string{
		"back door, left": "82-7/16/80-3/16 mitered square", "back door, right": "82-7/16/80-3/16 mitered square",
		"back door, head": "34-7/8/30-3/8 mitered mitered",
	})
	checkRuns(t, runs(p, "b"), map[string]string{
		"right window, left": "34-7/8/30-3/8 mitered mitered", "right window, right": "34-7/8/30-3/8 mitered mitered",
		"right window, head": "28-7/8/24-3/8 mitered mitered", "right window, foot": "28-7/8/24-3/8 mitered mitered",
	})
}

// A run of 96 out of sticks of 96 needs no scarf; one of 96 out of 60 has two of 48-1/4, lapped by the thickness of 1/2.
func TestScarf(t *testing.T) {
	words := "trim: {base: {kind: baseboard, along: [front], stock: base}}\n"
	p, _ := trimmed(t, words)
	checkRuns(t, runs(p, "base"), map[string]string{"front from corner C to corner D": "96/96 square square"})
	p, _ = trimmed(t, "  short: {kind: stick, size: 60 x 5-1/4 x 1/2}\n"+strings.Replace(words, "stock: base", "stock: short", 1))
	checkRuns(t, runs(p, "base"), map[string]string{"front from corner C to corner D": "48-1/4/47-3/4 48-1/4/47-3/4 square square"})
}

// What lies on the studs, 1/2 + 3/8 here, against how far the jamb stands out.
func TestJambExtension(t *testing.T) {
	for _, c := range []struct{ jamb, wide, code string }{{"1/2", "3/8", ""}, {"7/8", "", "jamb-flush"}, {"1", "", "jamb-proud"}, {"-3", "", "jamb-deep"}, {"unknown", "", "wood-missing wood-unchecked"}} {
		src := "  thick: {kind: stick, size: 96 x 3 x 3/4}\ntrim: {ext: {kind: jamb extension, round: [door], stock: thick, jamb: " + c.jamb + "}}\n"
		p, r := trimmedOn(t, "[board 7/8]", src)
		if got := codes(r); got != c.code {
			t.Errorf("%s: %q, want %q", c.jamb, got, c.code)
		}
		if c.wide != "" {
			got := p.Trim[0].Runs
			if s := got[0].Pieces[0].Part.Size; exact(s.Width) != c.wide || sixteenths(got[2].Length) != "31-1/2" { // 30 + 2 x 3/4
				t.Errorf("%s wide, head %s", exact(s.Width), sixteenths(got[2].Length))
			}
		}
	}
}

// trimmedOn gives the first wall a build-up.
func trimmedOn(t testing.TB, layers, words string) (Plan, *room) {
	t.Helper()
	return trimmed(t, words, layers)
}
