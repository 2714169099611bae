package piece_test

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/lay/laytest"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// describe lays a face and describes all pieces. Edges are called e1, e2 … by their labels; all have a joint of 3 mm that forgives
// 1 mm and hide nothing, unless changed.
func describe(face, bond, origin string, change ...func(*piece.Field)) []piece.Piece {
	region, b, at := laytest.Face(face), bondtest.Make(bond), laytest.Point(origin)
	f := piece.Field{Bond: b, Numbers: piece.Number(b, region.Bounds(), at), Edges: map[geom.Label]piece.Edge{}}
	f.Tools = piece.Tools{Mark: unit.Millimetre, LeastStrip: bondtest.MM("12")}
	for l := geom.Label(1); l < 20; l++ {
		f.Edges[l] = piece.Edge{Name: fmt.Sprintf("e%d", l), Joint: bondtest.MM("3"), Forgive: unit.Millimetre}
	}
	for _, c := range change {
		c(&f)
	}
	var out []piece.Piece
	for _, p := range lay.Lay(region, b, at, nil) {
		out = append(out, piece.Describe(piece.Input{Laid: p, Field: f}))
	}
	return out
}

var kinds = [...]string{"whole", "straight", "taper", "corner", "L", "U", "notch", "triangle", "clipped", "cut-out", "odd"}

// say writes a cut in one line: kind; each step as "edge: keep side from(-to) [along a-b]", as sawn.
func say(c piece.Cut) string {
	out := kinds[c.Kind]
	for _, s := range c.Steps {
		out += fmt.Sprintf("; %s: %s %s", s.Edge, s.Keep, s.SawFrom.JSON())
		if s.SawTo != s.SawFrom {
			out += "-" + s.SawTo.JSON()
		}
		if s.Along != [2]unit.Length{} {
			out += fmt.Sprintf(" along %s-%s", s.Along[0].JSON(), s.Along[1].JSON())
		}
	}
	if c.Neck > 0 {
		out += "; neck " + c.Neck.JSON()
	}
	return out
}

func find(t *testing.T, pieces []piece.Piece, address string) piece.Piece {
	t.Helper()
	var all []string
	for _, p := range pieces {
		if p.Address == address {
			return p
		}
		all = append(all, p.Address)
	}
	t.Fatalf("no piece %s among %s", address, strings.Join(all, " "))
	return piece.Piece{}
}

// Every kind of cut, worked by hand on tiles of 300 by 200 without joints. e1 is the face's bottom, e2 its right side, e3 its
// top, e4 its left side, e5 … the opening's from its bottom on.
func TestKindsOfCut(t *testing.T) {
	const stack = "stack, 300x200, 0"
	for _, c := range []struct{ name, face, origin, piece, want string }{
		{"whole", "600x400", "0,0", "1-1", "whole"},
		{"straight at the right", "450.7x200", "0,0", "1-2", "straight; e2: left 150"},
		{"straight at the left", "450x200", "150,0", "1-1", "straight; e4: right 150"},
		{"straight at the top", "300x250.9", "0,0", "2-1", "straight; e3: bottom 50"},
		{"straight at the bottom", "300x250", "0,50", "1-1", "straight; e1: top 50"},
		{"corner", "350x250", "0,0", "2-2", "corner; e2: left 50; e3: bottom 50"},
		{"corner at the lower left", "350x250", "50,50", "1-1", "corner; e4: right 50; e1: top 50"},
		{"between two walls", "200.5x200", "-50,0", "1-1", "straight; e2: left 200"},
		{"between two walls that lean", "10,0 210,0 200,200 20,200", "-50,0", "1-1", "corner; e2: left 260-250; e4: cut: e2 200-180"},
		{"between walls that lean, one of them short", "50,0 250,0 249,50 51,140", "0,0", "1-1", "odd; e2: left 250-246; e3: bottom 140-50 along 51-249; e4: right 250-248"},
		{"a wall and a lost corner: the factory side stays", "50,0 300,0 300,150 250,200 50,200", "0,0", "1-1", "odd; e3: right and top 150-250; e5: right 250"},
		{"and at the other end", "0,0 250,0 250,200 50,200 0,150", "0,0", "1-1", "odd; e2: left 250; e4: top and left 250-150"},
		{"between a wall and a bent one", "50,0 250,0 260,100 250,200 50,200", "0,0", "1-1", "odd; e2: left 200-220; e3: left 220-200"},
		{"all four sides cut", "200x100", "-50,-50", "1-1", "corner; e2: left 200; e3: bottom 100"},
		{"taper to the right", "0,0 450,0 440,200 0,200", "0,0", "1-2", "taper; e2: left 150-140"},
		{"taper to the left", "0,0 450,0 450,200 10,200", "150,0", "1-1", "taper; e4: right 150-140"},
		{"taper at the top", "0,0 300,0 300,255 0,250", "0,0", "2-1", "taper; e3: bottom 50-55"},
		{"taper too small to set", "0,0 450.5,0 450,200 0,200", "0,0", "1-2", "straight; e2: left 150"},
		{"taper over a mark but small", "0,0 450.2,0 449.8,200 0,200", "0,0", "1-2", "taper; e2: left 150-149"},
		{"at 45 degrees from bottom to top", "0,0 250,0 50,200 0,200", "0,0", "1-1", "taper; e2: left 250-50"},
		{"and the other way", "50,0 300,0 300,200 250,200", "0,0", "1-1", "taper; e4: right 250-50"},
		{"taper cut off at the top: marked on the whole tile", "0,0 450,0 440,250 0,250", "0,0", "2-2", "corner; e2: left 142-134; e3: bottom 50"},
		{"triangle", "0,0 100,0 0,100", "0,0", "1-1", "triangle; e2: bottom and left 100"},
		{"triangle at the upper right", "300,200 250.5,200 300,140", "0,0", "1-1", "triangle; e2: top and right 49-60"},
		{"clipped", "0,0 300,0 300,150 250,200 0,200", "0,0", "1-1", "clipped; e3: right and top 150-250"},
		{"clipped at the lower left", "60.5,0 300,0 300,200 0,200 0,80", "0,0", "1-1", "clipped; e5: left and bottom 120-239"},
		{"L", "0,0 300,0 300,120 180,120 180,200 0,200", "0,0", "1-1", "L; e4: left 180 along 120-200; e3: bottom 120 along 180-300; neck 120"},
		{"notch", "0,0 300,0 300,200 220.5,200 220.5,150.5 80.5,150.5 80.5,200 0,200", "0,0", "1-1",
			"notch; e6: left 80 along 150-200; e5: bottom 150 along 80-221; e4: right 79 along 150-200; neck 79.5"},
		{"U", "0,0 300,0 300,200 220,200 220,90 80,90 80,200 0,200", "0,0", "1-1",
			"U; e6: left 80 along 90-200; e5: bottom 90 along 80-220; e4: right 80 along 90-200; neck 80"},
		{"U, just half way", "0,0 300,0 300,200 220,200 220,100 80,100 80,200 0,200", "0,0", "1-1",
			"U; e6: left 80 along 100-200; e5: bottom 100 along 80-220; e4: right 80 along 100-200; neck 80"},
		{"two edges in one line are one cut", "0,0 450,0 450,90 450,200 0,200", "0,0", "1-2", "straight; e2, e3: left 150"},
		{"wherever the outline begins", "450,90 450,200 0,200 0,0 450,0", "0,0", "1-2", "straight; e5, e1: left 150"},
		{"a triangle within the tile: one cut, from its corner", "50,50 200,50 50,150", "0,0", "1-1", "triangle; e2: bottom and left 150-100"},
		{"a triangle that leans", "50,60 200,50 60,150", "0,0", "1-1", "odd; e2: bottom 150-50 along 60-200; e3: right 256-234; e1: top 136-156"},
		{"four-sided with a diagonal", "0,0 250,0 100,150 0,150", "0,0", "1-1", "odd; e2: left 250-100 along 0-150; e3: bottom 150"},
		{"between a wall and a diagonal", "100,0 250,0 250,200 240,200", "0,0", "1-1", "taper; e4: right 150-10"},
		{"between two walls under a slope", "50,0 250,0 250,50 50,140", "0,0", "1-1", "odd; e2: left 200; e3: bottom 140-50 along 0-200"},
		{"a nipped corner stays a slope", "0,0 250,0 250,149.2 249.2,150 0,150", "0,0", "1-1", "odd; e2: left 250; e3: left 250-249 along 149.2-150; e4: bottom 150"},
		{"cut-out", "300x200 - 100x50@100,75", "0,0", "1-1",
			"cut-out; e8: left 100 along 75-125; e5: bottom 75 along 100-200; e6: right 100 along 75-125; e7: top 75 along 100-200; neck 75"},
		{"L with a cut side", "0,0 290,0 290,120 180,120 180,200 0,200", "0,0", "1-1", "L; e2: left 290; e4: left 180 along 120-200; e3: bottom 120 along 180-290; neck 120"},
		{"L cut at the side of its leg", "20,0 300,0 300,120 180,120 180,200 20,200", "0,0", "1-1", "L; e6: right 280; e4: cut: e6 160 along 120-200; e3: bottom 120 along 180-300; neck 120"},
		{"two bays", "0,0 200,0 200,50 300,50 300,200 100,200 100,150 0,150", "0,0", "1-1",
			"odd; e2: left 200 along 0-50; e7: bottom 150 along 0-100; e6: right 200 along 150-200; e3: top 150 along 200-300; neck 141.421375"},
	} {
		p := find(t, describe(c.face, stack, c.origin), c.piece)
		if got := say(p.Cut); got != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.name, got, c.want)
		}
		upright := find(t, describe(c.face, "stack, 200x300, 0 upright", c.origin), c.piece) // the same in place, turned in the tile
		if got := say(upright.Cut); got != c.want || upright.Turn != 1 {
			t.Errorf("%s, upright:\n got %s\nwant %s", c.name, got, c.want)
		}
		lies := lay.Lying(upright.InTile, bondtest.Make("stack, 200x300, 0 upright").Protos[0])
		if lies.Bounds() != p.InTile.Bounds() || upright.Area != p.Area {
			t.Errorf("%s: the upright piece lies in its tile as %v, want %v", c.name, lies, p.InTile)
		}
		if p.Cut.Kind != piece.NoCut && p.Cut.Visible == 0 {
			t.Errorf("%s: nothing of it is seen", c.name)
		}
		if b := (bench{p, p.InTile, 300 * 16000, 200 * 16000}); b.told() {
			b.check(t)
		}
	}
}

// A steep cut from side to side of an upright tile is measured along its sides.
func TestSteepCutOfATallTile(t *testing.T) {
	for face, want := range map[string]string{
		"0,0 200,0 200,290 0,10":     "taper; e3: bottom 10-290",
		"0,290 200,10 200,300 0,300": "taper; e1: top 10-290",
	} {
		if got := say(describe(face, "stack, 200x300, 0", "0,0")[0].Cut); got != want {
			t.Errorf("%s: %s, want %s", face, got, want)
		}
	}
}
