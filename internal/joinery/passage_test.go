package joinery

import (
	"strings"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// room96 is a room of finished walls 96 x 72 in, 89-3/4 high over its finished floor, with a door of 30 x 80 in over the bare floor. %walls
// and %leaf stand for what a row writes of its left wall and of its door.
const room96 = `dryfit: 1
name: shop
units: in
survey:
  corners: A B C D
  tape to: board
  tape: {A-B: 96, B-C: 72, C-D: 96, D-A: 72, A-C: 120, B-D: 120}
  level line: {down: {A: 40, B: 40, C: 40, D: 40}, up: {A: 50, B: 50, C: 50, D: 50}}
walls: {back: {along: A-B}, right: {along: B-C}, front: {along: C-D}, left: {along: D-A%wall}}
floor: {build-up: [board 1/4]}
openings:
  door: {in: front, kind: door, across: 30 to 60 from C, up: 0 to 79-3/4 above floor%leaf}
tools: {saws: {big saw: {reach: 2-1/2}}}
stock:
  ply: {kind: sheet, size: 96 x 48 x 3/4, measured: 3/4}
`

// shop works the wood of a document out.
func shop(t testing.TB, src string) (Plan, *room) {
	t.Helper()
	doc, found := document.Read("shop", []byte(src))
	if found.Stops() {
		t.Fatalf("%s\n%s", found[0].Say(unit.DefaultStyle(unit.Inches)), src)
	}
	shape, found, _ := site.Solve(doc)
	if found.Stops() {
		t.Fatal(found[0].Say(unit.DefaultStyle(unit.Inches)))
	}
	p, f, a := Make(doc, shape)
	return p, &room{found: f, assumed: a}
}

// passages says what a cabinet passes: the way, what it needs, what there is, and ! where it does not pass.
func passages(all []Passage) string {
	var out []string
	for _, p := range all {
		s := [...]string{"walls", "door", "up"}[p.Way] + " " + sixteenths(p.Needs[0])
		if p.Way == ThroughDoor {
			s += " x " + sixteenths(p.Needs[1])
		}
		s += " in " + sixteenths(p.Has[0])
		if p.Way == ThroughDoor {
			s += " x " + sixteenths(p.Has[1])
		}
		if !p.Passes {
			s += "!"
		}
		out = append(out, s)
	}
	return strings.Join(out, ", ")
}

// Worked by hand. The room is 90 from bare floor to ceiling and its finished floor 1/4 up. A left wall that leans in by 1/4 over 90 stands in
// by 1/16 at 22-1/2 over the bare floor, 22-1/4 over the finished one; at its foot, 9 over the bare floor, by 1/40. A belly of 1/8 lies 12 off
// the corner. A leaf 1-3/8 thick leaves 28-5/8 of a door of 30. 54 and 72 have a diagonal of 90.
func TestPassages(t *testing.T) {
	for _, c := range []struct{ what, wall, leaf, cabinet, want, codes string }{
		{"wall to wall", "", "", "across: 0 to 96 from A, height: 22-1/4, depth: 20", "walls 96 in 96, door 20 x 22-1/4 in 30 x 79-3/4, up 29-15/16 in 89-3/4", ""},
		{"a wall that leans in", ", out of plumb: {D: 1/4, A: 1/4}", "", "across: 0 to 96 from A, height: 22-1/4, depth: 20", "walls 96 in 95-15/16!, door 20 x 22-1/4 in 30 x 79-3/4, up 29-15/16 in 89-3/4", "cabinet-slides"},
		{"a wall that leans out is narrowest at its foot", ", out of plumb: {D: -1/4, A: -1/4}", "", "across: 0 to 96 from A, height: 22-1/4, depth: 20", "walls 96 in 96, door 20 x 22-1/4 in 30 x 79-3/4, up 29-15/16 in 89-3/4", ""},
		{"a belly within the depth", ", profile: {0: 0, 60: 1/8, 72: 0}", "", "across: 0 to 96 from A, height: 22-1/4, depth: 20", "walls 96 in 95-7/8!, door 20 x 22-1/4 in 30 x 79-3/4, up 29-15/16 in 89-3/4", "cabinet-slides"},
		{"a belly before it", ", profile: {0: 0, 48: 1/8, 49: 0, 72: 0}", "", "across: 0 to 96 from A, height: 22-1/4, depth: 20", "walls 96 in 96, door 20 x 22-1/4 in 30 x 79-3/4, up 29-15/16 in 89-3/4", ""},
		{"leaf and all", "", ", leaf: {hinge: left, opens: out, thickness: 1-3/8}", "across: 10 to 50 from A, height: 34, depth: 28-5/8", "walls 40 in 96, door 28-5/8 x 34 in 28-5/8 x 79-3/4, up 44-7/16 in 89-3/4", ""},
		{"1/16 too deep for it", "", ", leaf: {hinge: left, opens: out, thickness: 1-3/8}", "across: 10 to 50 from A, height: 34, depth: 28-11/16", "walls 40 in 96, door 28-11/16 x 34 in 28-5/8 x 79-3/4!, up 44-1/2 in 89-3/4", "door-narrow"},
		{"too high to tip", "", "", "across: 10 to 30 from A, height: 72, depth: 54", "walls 20 in 96, door 20 x 54 in 30 x 79-3/4, up 90 in 89-3/4!", "cabinet-tips"},
		{"on the wall it need not tip", "", "", "across: 10 to 30 from A, height: 80, depth: 54, stands: wall, bottom: 8", "walls 20 in 96, door 20 x 54 in 30 x 79-3/4", "screws-missing"},
	} {
		src := strings.NewReplacer("%wall", c.wall, "%leaf", c.leaf).Replace(room96) + "cabinets:\n  box: {in: back, " + c.cabinet + ", stock: {panels: ply}}\n"
		p, r := shop(t, src)
		if len(p.Cabinets) != 1 {
			t.Fatal(c.what, codes(r))
		}
		if got := passages(p.Cabinets[0].Passages); got != c.want || codes(r) != c.codes {
			t.Errorf("%s: %q, want %q; %q", c.what, got, c.want, codes(r))
		}
	}
}

// Widths that were taped go before the solved walls; one that was taken over the cabinet, or under it, does not count for it.
func TestTapedAlcoveOfACabinet(t *testing.T) {
	for _, c := range []struct{ alcove, want, codes string }{
		{"[{width: 59-7/8, off: 20}, {width: 60-1/8, off: 0}]", "60 in 59-7/8!", "cabinet-slides"},
		{"[{width: 60, off: 20}, {width: 60-1/8, off: 0}]", "60 in 60", ""},
		{"[{width: 59-7/8, off: 20, up: 40 above floor}, {width: 60-1/8, off: 0, up: 30 above floor}]", "60 in 60-1/8", ""},
		{"[{width: 59-7/8, off: 20, up: 40 above floor}]", "", "wood-missing"},
	} {
		src := strings.NewReplacer("%wall", "", "%leaf", "").Replace(room96) + "cabinets:\n  box: {in: back, across: 0 to 60 from A, height: 34, depth: 20, stock: {panels: ply}, alcove: " + c.alcove + "}\n"
		p, r := shop(t, src)
		got := passages(p.Cabinets[0].Passages)
		if want := strings.Join(strings.Fields("walls "+c.want+","), " "); c.want != "" && !strings.HasPrefix(got, want) || c.want == "" && strings.HasPrefix(got, "walls") || codes(r) != c.codes {
			t.Errorf("%s: %q, want %q; %q", c.alcove, got, c.want, codes(r))
		}
	}
	if p, _ := shop(t, strings.NewReplacer("%wall", "", "%leaf", "").Replace(room96)+"cabinets:\n  box: {in: back, across: 0 to 60 from A, height: 34, depth: 20, stock: {panels: ply}, alcove: [{width: 59-7/8, off: 20}]}\n"); p.Cabinets[0].Passages[0].Source != "widths as taped" {
		t.Error(p.Cabinets[0].Passages[0].Source)
	}
}

// An alcove that was not taped but solved: 60-1/8 at the back and 1/4 in less 21 in before it, as its side walls close in by 1 in over 84. A
// top scribed to 60-1/8 can not be slid in, by 1/4 in; the tape's rounding leaves the solved figure within 1/64 in.
func TestAlcoveOfSolvedWalls(t *testing.T) {
	// Half of 60-1/8 less half of 59-1/8 is 1/2, so a side is √(84² + 1/2²) = 84.0015 and a diagonal √(84² + 59.625²) = 103.0097.
	src := `dryfit: 1
name: shop
units: in
survey:
  corners: A B C D
  tape to: board
  tape: {A-B: 60-1/8, B-C: 84, C-D: 59-1/8, D-A: 84, A-C: 103-1/128, B-D: 103-1/128}
  level line: {down: {A: 40, B: 40, C: 40, D: 40}, up: {A: 50, B: 50, C: 50, D: 50}}
walls: {back: {along: A-B}, right: {along: B-C}, front: {along: C-D}, left: {along: D-A}}
floor: {build-up: [board 1/4]}
tools: {saws: {big saw: {reach: 2-1/2}}}
stock:
  ply: {kind: sheet, size: 96 x 48 x 3/4, measured: 3/4}
tops:
  slab: {in: back, across: 0 to 60-1/8 from A, up: 32, made of: sheet, stock: ply, thickness: 3/4, depth: 21}
`
	p, r := shop(t, src)
	if codes(r) != "top-slides" || len(p.Tops[0].Passages) != 1 {
		t.Fatal(codes(r), p.Tops[0].Passages)
	}
	got := p.Tops[0].Passages[0]
	if less := got.Needs[0] - got.Has[0]; (less - unit.Inch/4).Abs() > unit.Inch/64 {
		t.Errorf("too little by %s", exact(less))
	}
	if words := r.found[0].Say(unit.DefaultStyle(unit.Inches)); !strings.Contains(words, "the solved walls") || !strings.Contains(words, "1/4 in too little") {
		t.Error(words)
	}
	// As wide as it is in front, it slides in.
	_, r = shop(t, strings.Replace(src, "0 to 60-1/8 from A, up", "1/8 to 59-15/16 from A, up", 1))
	if codes(r) != "" {
		t.Error(codes(r))
	}
}

// The narrowest width is what a slow walk over all the depth and height finds, and never more.
func TestNarrowestIsTheLeast(t *testing.T) {
	src := strings.NewReplacer("%wall", ", out of plumb: {D: 3/8, A: -1/4}, profile: {0: 0, 55: 3/16, 64: -1/8, 72: 0}", "%leaf", "").Replace(room96)
	doc, _ := document.Read("shop", []byte(src))
	shape, _, _ := site.Solve(doc)
	s := (&room{doc: doc, shape: shape}).between("back")
	for _, box := range []Box{span(0, 1, 0, 30*unit.Inch, 0, 20*unit.Inch), span(0, 1, 20*unit.Inch, 70*unit.Inch, 2*unit.Inch, 9*unit.Inch), span(0, 1, 0, 84*unit.Inch, 10*unit.Inch, 30*unit.Inch)} {
		got, ok := s.narrowest(box)
		slow := unit.Reach
		for i := range unit.Length(201) {
			for k := range unit.Length(21) {
				slow = min(slow, s.at(box.Lo[2]+box.Size(2)*i/200, box.Lo[1]+box.Size(1)*k/20))
			}
		}
		if !ok || got > slow || slow-got > unit.Inch/256 {
			t.Errorf("%v: %s, a walk finds %s", box, exact(got), exact(slow))
		}
	}
}
