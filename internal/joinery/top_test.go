package joinery

import (
	"strings"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// woodShop is a square room with a saw, a bit and some wood.
const woodShop = `dryfit: 1
name: shop
units: in
survey:
  corners: A B C D
  tape to: board
  tape: {A-B: 96, B-C: 96, C-D: 96, D-A: 96, A-C: 135-3/4}
  level line: {down: {A: 40, B: 40, C: 40, D: 40}, up: {A: 50, B: 50, C: 50, D: 50}}
walls: {back: {along: A-B}, right: {along: B-C}, front: {along: C-D}, left: {along: D-A}}
floor: {build-up: [board 1/4]}
tools: {saws: {big saw: {reach: 2-1/2}}, bits: {long bit: {reach: 2}}}
stock:
  oak: {kind: board, size: 96 x 6 x 1-3/4, species: white oak, rings: flat}
  ply: {kind: sheet, size: 96 x 48 x 3/4, measured: 3/4}
`

// topOf works a top out on a wall that is known, from the document's own words.
func topOf(t testing.TB, words string) (Top, *room) {
	t.Helper()
	src := woodShop + `tops:
  slab:
    in: back
` + words
	if _, own, ok := strings.Cut(words, "# tools "); ok {
		src = strings.Replace(src, "{saws: {big saw: {reach: 2-1/2}}, bits: {long bit: {reach: 2}}}", own, 1)
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
	if len(p.Tops) != 1 {
		t.Fatalf("no top: %v", f)
	}
	return p.Tops[0], &room{found: f, assumed: a}
}

// codes are the findings, shortest.
func codes(r *room) string {
	var all []string
	for _, f := range r.found {
		all = append(all, f.Code)
	}
	return strings.Join(all, " ")
}

// thousandths of an inch, rounded half up.
func mils(l unit.Length) int64 { return int64(l.MulDiv(1000, int64(unit.Inch))) }

const oakSlab = `    across: 10 to 44 from A
    up: 32-1/2
    made of: staves
    stock: oak
    thickness: 1-1/2
    depth: 22
    staves: {count: 8, rough width: 3}
`

// White oak, flat-sawn: 0.00365 for each percent (Wood Handbook, table 13-5). 22 in from 12 to 6 %: 22 x 0.00365 x 6 = 0.482; 20 in from
// the fixed line 0.438; a hole 11 in from it 0.241.
func TestTopMoves(t *testing.T) {
	top, r := topOf(t, oakSlab+`    wood: {glued at: 12 %, in the house: 6 %}
    fixing: {fixed at: back, screws: [2, 20], diameter: 3/16}
    cut-outs: {waste: {across: 27 from A, off: 11, outline: round 1-3/4, passes: 1-1/4}}
`)
	m := top.Moves
	if !m.Known || mils(m.Shrinks) != 482 || m.Swells != 0 {
		t.Fatalf("%+v\n%s", m, codes(r))
	}
	if got := mils(m.Slots[1].In); got != 438 {
		t.Errorf("20 in from the line: %d", got)
	}
	// The slot: the screw and the movement, 0.1875 + 0.438 = 0.6255 (0.6255 rounds to 626); its middle half of 0.438 nearer to the line.
	if s := m.Slots[1]; mils(s.Long) != 626 && mils(s.Long) != 625 || mils(s.Middle) != 20_000-219 {
		t.Errorf("slot %d long, middle %d", mils(s.Long), mils(s.Middle))
	}
	if g := m.Gaps[1]; g.Name != "waste" || mils(g.Needs) != 241 || g.Room != unit.Inch/4 {
		t.Errorf("%+v", g)
	}
	if strings.Contains(codes(r), "play-small") {
		t.Error("0.25 of room is enough for 0.241")
	}
	_, r = topOf(t, oakSlab+`    wood: {glued at: 12 %, in the house: 6 %}
    fixing: {fixed at: back, screws: [2, 20], diameter: 3/16}
    cut-outs: {waste: {across: 27 from A, off: 11, outline: round 1-11/16, passes: 1-1/4}}
`)
	if !strings.Contains(codes(r), "play-small") { // (1-11/16 - 1-1/4) / 2 = 0.219
		t.Error("0.219 of room is not enough for 0.241")
	}
}

// Held in front, the back edge swells toward the wall: from 6 to 12 % over 22 in 0.482.
func TestTopSwellsAtTheWall(t *testing.T) {
	for _, c := range []struct{ gap, want string }{{"1/2", ""}, {"7/16", "play-small"}} {
		words := strings.Replace(oakSlab, "depth: 22", "depth: 22-1/2\n    gap: {back: "+c.gap+"}", 1) + `    wood: {glued at: 6 %, in the house: 12 %}
    fixing: {fixed at: front, screws: [20], diameter: 3/16}
`
		words = strings.Replace(words, "22-1/2\n    gap: {back: 7/16}", "22-7/16\n    gap: {back: 7/16}", 1)
		_, r := topOf(t, words)
		if got := codes(r); got != c.want {
			t.Errorf("gap %s: %q, want %q", c.gap, got, c.want)
		}
	}
}

// An alcove 59-7/8 wide in front and 60-1/8 at the back: a top scribed to 60-1/8 can not be slid in; 1/4 is too much.
func TestAlcove(t *testing.T) {
	slides := func(front, back string) (Top, *room) {
		return topOf(t, "    across: 1 from A\n    up: 32\n    made of: sheet\n    stock: ply\n    thickness: 3/4\n    depth: 21\n    alcove: [{width: "+front+", off: 21}, {width: "+back+", off: 0}]\n")
	}
	top, r := slides("59-7/8", "60-1/8")
	if codes(r) != "top-slides" || exact(top.Width) != "60-1/8" {
		t.Fatal(codes(r), exact(top.Width))
	}
	if words := r.found[0].Say(unit.DefaultStyle(unit.Inches)); !strings.Contains(words, "1/4 in too little") {
		t.Error(words)
	}
	for _, c := range [][2]string{{"60-1/8", "60-1/8"}, {"60-1/8", "59-7/8"}} {
		if _, r := slides(c[0], c[1]); codes(r) != "" {
			t.Errorf("%v: %s", c, codes(r))
		}
	}
}

// Eight staves of 3 in, 1/16 jointed off each edge: 8 x 2-7/8 = 23 wide, 1 to spare. Seven joints, 34 + 2 long and 1-3/4 thick: 441 square
// inches. Board feet at 1-3/4 x 3 x 36: 189 cubic inches each, 8 x 1.3125 = 10.5. A clamp serves twice 2-7/8 = 5-3/4: 7 clamps.
func TestStaves(t *testing.T) {
	top, r := topOf(t, oakSlab+"    wood: {glued at: 8 %, in the house: 6 to 10 %}\n    fixing: {fixed at: back, screws: [2], diameter: 3/16}\n")
	g := top.Glue
	if codes(r) != "" || exact(g.Width) != "23" || exact(g.Spare) != "1" || g.Area != 441*unit.SquareInch {
		t.Errorf("%s %s %s %d", codes(r), exact(g.Width), exact(g.Spare), g.Area/unit.SquareInch)
	}
	if g.BoardFeet < 10_500 || g.BoardFeet > 10_508 || g.Clamps.Count != 7 {
		t.Errorf("%d board feet, %d clamps", g.BoardFeet, g.Clamps.Count)
	}
	if !g.Staves[0].BarkUp || g.Staves[1].BarkUp {
		t.Error("rings are not turned")
	}
	for _, c := range []struct{ staves, want string }{
		{"{count: 7, rough width: 3}", "slab-narrow"},                       // 20-1/8
		{"{rough width: 3}", ""},                                            // as many as are needed: 8
		{"{count: 4}", ""},                                                  // as wide as the board is sold: 4 x 5-7/8
		{"{count: 3}", "slab-narrow"},                                       // 3 x 5-7/8
		{"{count: 8, rough width: 3, rough thickness: 1-1/4}", "slab-thin"}, // for 1-1/2
		{"{boards: [6, 5-1/2, 4, 3-1/4, 4-1/4]}", ""},                       // 23 - 5/8 = 22-3/8
		{"{boards: [6, 5-1/2, 4, 3-1/4, 3-3/4]}", "slab-narrow"},            // 22-1/2 - 5/8 = 21-7/8
		{"{count: 8, rough width: 1/8}", "stave-none"},                      // all taken by jointing
	} {
		words := strings.Replace(oakSlab, "{count: 8, rough width: 3}", c.staves, 1)
		_, r := topOf(t, words+"    wood: {glued at: 8 %, in the house: 6 to 10 %}\n    fixing: {fixed at: back, screws: [2], diameter: 3/16}\n")
		if got := codes(r); got != c.want {
			t.Errorf("%s: %q, want %q", c.staves, got, c.want)
		}
	}
}

// What is left round a hole, by hand: the top from 10 to 44, 22 deep.
func TestWoodAround(t *testing.T) {
	ends := "    wood: {glued at: 8 %, in the house: 6 to 10 %}\n    fixing: {fixed at: back, screws: [2], diameter: 3/16}\n    least wood: 2\n"
	for _, c := range []struct{ cut, want string }{
		{"a: {across: 27 from A, off: 11, outline: round 18}", ""},                         // 2 in front and behind
		{"a: {across: 27 from A, off: 11, outline: round 18-1/16}", "wood-thin wood-thin"}, // 1-31/32
		{"a: {across: 27 from A, off: 11, outline: oval 30 x 15}", ""},                     // ends at 12 and 42: 2
		{"a: {across: 26 from A, off: 11, outline: oval 30 x 15}", "wood-thin"},            // 1 at the left
		{"a: {across: 20 from A, off: 8, outline: round 4}, b: {across: 26 from A, off: 8, outline: round 4}", ""},
		{"a: {across: 20 from A, off: 8, outline: round 4}, b: {across: 25 from A, off: 8, outline: round 4}", "wood-thin"},
		{"a: {across: 20 from A, off: 8, outline: rectangle 4 x 4}, b: {across: 25-15/16 from A, off: 8, outline: rectangle 4 x 4}", "wood-thin"},
	} {
		_, r := topOf(t, oakSlab+ends+"    cut-outs: {"+c.cut+"}\n")
		if got := codes(r); got != c.want {
			t.Errorf("%s: %q, want %q", c.cut, got, c.want)
		}
	}
	// A recess 1/2 deep in 1-1/2 leaves 1; half of the thickness, 3/4, is asked for unless the document says more.
	for _, c := range []struct{ depth, under, want string }{{"1/2", "1", ""}, {"5/8", "1", "wood-thin"}, {"3/4", "", ""}, {"13/16", "", "wood-thin"}} {
		words := oakSlab + ends + "    recess: {depth: " + c.depth + ", outline: round 15, across: 27 from A, off: 11}\n"
		if c.under != "" {
			words += "    least under: " + c.under + "\n"
		}
		_, r := topOf(t, words)
		if got := codes(r); got != c.want {
			t.Errorf("recess %s: %q, want %q", c.depth, got, c.want)
		}
	}
}

// A slab 1-1/2 thick against what a saw and a bit reach.
func TestReach(t *testing.T) {
	for _, c := range []struct{ tools, want string }{
		{"{saws: {a: {reach: 1-1/2}}, bits: {b: {reach: 1-1/2}}}", ""},
		{"{saws: {a: {reach: 1-7/16}}, bits: {b: {reach: 1-1/2}}}", "reach-half"},
		{"{saws: {a: {reach: 3/4}}, bits: {b: {reach: 3/4}}}", "reach-half reach-half"},
		{"{saws: {a: {reach: 11/16}}, bits: {b: {reach: 2}}}", "reach-short"},
		{"{saws: {a: {kerf: 1/8}}, bits: {b: {reach: 2}}}", "reach-missing"},
		{"{saws: {a: {kerf: 1/8}, b: {reach: 2}}}", "reach-missing"},
	} {
		_, r := topOf(t, oakSlab+"    wood: {glued at: 8 %, in the house: 6 to 10 %}\n    fixing: {fixed at: back, screws: [2], diameter: 3/16}\n    cut-outs: {a: {across: 27 from A, off: 11, outline: round 4}}\n# tools "+c.tools)
		if got := codes(r); got != c.want {
			t.Errorf("%s: %q, want %q", c.tools, got, c.want)
		}
	}
}

// Holes that basins and taps ask for, by hand: the top's left end is 10 from A.
func TestHolesOfBasins(t *testing.T) {
	ends := oakSlab + "    wood: {glued at: 8 %, in the house: 6 to 10 %}\n    fixing: {fixed at: back, screws: [2], diameter: 3/16}\n    least wood: 1\n"
	for _, c := range []struct{ words, want string }{
		{"basins: {b: {kind: vessel, on: slab, across: 27 from A, off: 11, waste hole: 1-3/4}}", "b, waste 17 11 1-3/4 x 1-3/4"},
		{"basins: {b: {kind: undermount, on: slab, across: 27 from A, off: 11, forward: 1, right: 1/2, outline: oval 20 x 14, rim: 1/2}}", "b 17-1/2 12 19 x 13"},
		{"basins: {b: {kind: drop-in, on: slab, across: 27 from A, off: 11, foot: rectangle 18 x 12 r 2}}", "b 17 11 18-1/4 x 12-1/4"},
		{"basins: {b: {kind: drop-in, on: slab, across: 27 from A, off: 11}}", ""},
		{"basins: {b: {kind: vessel, on: slab, across: 27 from A, off: 11}}", ""},
		{"basins: {b: {kind: vessel, on: slab, across: 27 from A, off: 11, waste hole: 1-3/4}}\ntaps: {t: {serves: b, mounted: deck, on: slab, across: 20 from A, off: 4, hole: 1-3/8}}", "b, waste 17 11 1-3/4 x 1-3/4; t 10 4 1-3/8 x 1-3/8"},
	} {
		top, r := topOf(t, ends+c.words+"\n")
		var got []string
		for _, h := range top.Holes {
			got = append(got, h.Name+" "+exact(h.X)+" "+exact(h.Z)+" "+exact(h.Outline.Across)+" x "+exact(h.Outline.Deep))
		}
		if strings.Join(got, "; ") != c.want || (c.want == "") != strings.Contains(codes(r), "wood-missing") {
			t.Errorf("%s: %q %q", c.words, got, codes(r))
		}
	}
	// A recess takes the foot of its basin, with room: 8 + 1/8, under the middle of the outline.
	top, _ := topOf(t, ends+"    recess: {depth: 3/8}\nbasins: {b: {kind: vessel, on: slab, across: 27 from A, off: 11, forward: 1, foot: round 8, waste hole: 1-3/4}}\n")
	if h := top.Holes[0]; h.Name != "recess" || exact(h.Outline.Across) != "8-1/8" || exact(h.Z) != "12" {
		t.Errorf("%+v", h)
	}
}
