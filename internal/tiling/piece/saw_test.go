package piece_test

import (
	"slices"
	"strings"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

func in(text string) unit.Length {
	l, err := unit.Parse(text, unit.Inches)
	if err != nil {
		panic(err)
	}
	return l
}

// strip lays tile of 12 by 12 in without joints on a strip 12 in high whose last tile keeps so much at the bottom and at the top,
// and describes the last one.
func strip(bottom, top string, change ...func(*piece.Field)) piece.Piece {
	b, _ := bond.Make(bond.Spec{Kind: bond.Stack}, bond.Goods{Sizes: []bond.Size{{Length: in("12"), Width: in("12")}}})
	face := geom.Region{{{P: geom.Point{}, Edge: 1}, {P: geom.Point{X: in("12") + in(bottom)}, Edge: 2},
		{P: geom.Point{X: in("12") + in(top), Y: in("12")}, Edge: 3}, {P: geom.Point{Y: in("12")}, Edge: 4}}}
	f := piece.Field{Bond: b, Numbers: piece.Number(b, face.Bounds(), geom.Point{}),
		Edges: map[geom.Label]piece.Edge{2: {Name: "corner B", Joint: in("1/8"), Forgive: in("1/16")}},
		Tools: piece.Tools{Mark: in("1/16"), LeastStrip: in("1/2")}}
	for _, c := range change {
		c(&f)
	}
	pieces := lay.Lay(face, b, geom.Point{}, nil)
	return piece.Describe(piece.Input{Laid: pieces[len(pieces)-1], Field: f})
}

// A cut rounds towards fitting: 5-17/32 at a perimeter becomes 5-1/2, never 5-9/16; the joint takes the 1/32.
func TestCutsRoundToFit(t *testing.T) {
	for _, c := range []struct{ bottom, top, want string }{
		{"5-17/32", "5-17/32", "left 5-1/2, leaves 5/32"},
		{"5-1/2", "5-1/2", "left 5-1/2, leaves 1/8"},
		{"5-35/64", "5-35/64", "left 5-1/2, leaves 11/64"},
		{"5-1/2", "5-17/32", "left 5-1/2, leaves 5/32"},              // a taper below the mark: cut parallel
		{"5-1/2", "5-9/16", "left 5-1/2 to 5-9/16, leaves 1/8"},      // a mark: cut to both ends
		{"5-17/32", "5-37/64", "left 5-1/2 to 5-9/16, leaves 5/32"},  // 3/64 more: parallel would open the joint by 5/64, more than it forgives
		{"5-127/128", "6-1/128", "left 5-15/16 to 6, leaves 23/128"}, // never parallel at 6: it would not go in
	} {
		s := strip(c.bottom, c.top).Cut.Steps[0]
		inches := unit.DefaultStyle(unit.Inches)
		got := s.Keep + " " + inches.Bare(s.SawFrom)
		if s.SawTo != s.SawFrom {
			got += " to " + inches.Bare(s.SawTo)
		}
		got += ", leaves " + strings.TrimSuffix(inches.Exact(s.Leaves), " in")
		if got != c.want || s.Wide || s.From != in(c.bottom) || s.To != in(c.top) {
			t.Errorf("%s to %s: %s (wide %v), want %s", c.bottom, c.top, got, s.Wide, c.want)
		}
	}
}

// With a coarse mark the joint left is more than the edge forgives: 5-15/32 at quarters becomes 5-1/4, 7/32 short.
func TestRoundingThatOpensTheJointIsTold(t *testing.T) {
	p := strip("5-15/32", "5-15/32", func(f *piece.Field) { f.Tools.Mark = in("1/4") })
	if s := p.Cut.Steps[0]; !s.Wide || s.SawFrom != in("5-1/4") || s.Leaves != in("1/8")+in("7/32") {
		t.Errorf("%+v", s)
	}
}

// Where a cut meets two edges in one line, the one that forgives least decides and both are named; one met twice is named once.
func TestACutAlongTwoEdges(t *testing.T) {
	b := bondtest.Make("stack, 300x200, 0")
	x := bondtest.MM("150.5")
	face := geom.Region{{{P: geom.Point{}, Edge: 1}, {P: geom.Point{X: x}, Edge: 2}, {P: geom.Point{X: x, Y: bondtest.MM("50")}, Edge: 3},
		{P: geom.Point{X: x, Y: bondtest.MM("90")}, Edge: 2}, {P: geom.Point{X: x, Y: bondtest.MM("200")}, Edge: 4}, {P: geom.Point{Y: bondtest.MM("200")}, Edge: 5}}}
	f := piece.Field{Bond: b, Tools: piece.Tools{Mark: unit.Millimetre}, Edges: map[geom.Label]piece.Edge{
		2: {Name: "wall", Joint: bondtest.MM("3"), Forgive: bondtest.MM("2"), Hidden: bondtest.MM("10")},
		3: {Name: "post", Joint: bondtest.MM("4"), Forgive: bondtest.MM("0.4"), Hidden: bondtest.MM("2")}}}
	for k := range face[0] { // wherever the outline begins
		laid := lay.Lay(face, b, geom.Point{}, nil)[0]
		laid.Shape = geom.Region{slices.Concat(laid.Shape[0][k:], laid.Shape[0][:k])}
		c := piece.Describe(piece.Input{Laid: laid, Field: f}).Cut
		if s := c.Steps[0]; len(c.Steps) != 1 || s.Edge != "wall, post" || s.Leaves != bondtest.MM("4.5") || !s.Wide || c.Visible != bondtest.MM("140.5") {
			t.Errorf("%d: %+v", k, c)
		}
	}
}

// Measure at the wall where a size may be off by more than the joint forgives (here 1/16).
func TestMeasureFirst(t *testing.T) {
	for tolerance, want := range map[string]bool{"1/32": false, "1/16": false, "5/64": true} {
		c := strip("5", "5", func(f *piece.Field) { f.Tools.Tolerance = in(tolerance) }).Cut
		if c.MeasureFirst != want || c.Tolerance != in(tolerance) {
			t.Errorf("tolerance %s: %+v", tolerance, c)
		}
	}
	unknown := strip("5", "5", func(f *piece.Field) { f.Edges, f.Tools.Tolerance = nil, 1 })
	if !unknown.Cut.MeasureFirst || unknown.Edges[3].Name != "cut: edge" {
		t.Errorf("an edge nothing is known of forgives nothing: %+v", unknown)
	}
}

// 1/4 in of taper shows on a 1 in strip and not on a 9 in one (common practice).
func TestTaperIsJudgedAgainstTheWidth(t *testing.T) {
	for _, c := range []struct {
		bottom, top string
		want        bool
	}{{"1", "1-1/4", true}, {"1-1/4", "1", true}, {"9", "9-1/4", false}, {"2-1/2", "2-3/4", false}, {"2-7/16", "2-11/16", true}, {"9", "9", false}} {
		if got := strip(c.bottom, c.top).Cut; got.TaperShows != c.want {
			t.Errorf("%s to %s: shows %v", c.bottom, c.top, got.TaperShows)
		}
	}
}

// A strip beside a wall that leans shows its taper, a piece of a hexagon does not.
func TestTaperOfHexagonsDoesNotShow(t *testing.T) {
	for bond, want := range map[string]bool{"stack, 200x200, 0": true, "hexagon, 200, 0": false, "hexagon, 200, 0 upright": false} {
		tapers, shown := 0, false
		for _, p := range describe("0,0 1060,0 1030,600 0,600", bond, "0,0") {
			if p.Cut.Kind == piece.Taper {
				tapers++
			}
			shown = shown || p.Cut.TaperShows
		}
		if tapers == 0 || shown != want {
			t.Errorf("%s: %d tapers, one shows: %v", bond, tapers, shown)
		}
	}
}

// A cut that would take less than half a millimetre off (lay.LeastWidth) is no cut where the joint forgives it; what is left of the piece's
// cuts is what it would be without.
func TestTrifles(t *testing.T) {
	for _, c := range []struct{ face, forgive, want string }{
		{"299.6x200", "1", "whole"},
		{"299.6x200", "0.4", "whole"},
		{"299.6x200", "0.3", "straight; e2: left 299"},
		{"299.5x200", "1", "straight; e2: left 299"},
		{"0,0 300,0 300,199.7 0,200", "1", "whole"},
		{"0,0 250,0 250,199.7 100,200 0,200", "1", "straight; e2: left 250"},                          // a wedge at the top beside a true cut
		{"0,0 250,0 250,199.4 100,200 0,200", "1", "odd; e2: left 250; e3: bottom 199 along 100-250"}, // a wedge worth a cut
		{"299.6x199.7", "1", "whole"},
		{"0,0 300,0 300,120 180,120 180,199.8 0,199.8", "1", "L; e4: left 180 along 120-200; e3: bottom 120 along 180-300; neck 120"}, // beside a true notch too
		{"0,0 300,0 300,200 0.495,200 0.495,96 0,96", "1", "whole"},                                                                   // a shallow notch at a corner
		{"0,0 300,0 300,200 0.495,200 0.495,96 0,96", "0.4", "L; e5: bottom 96 along 0-1; e4: right 299 along 96-200; neck 96"},
		{"0,0 300,0 300,200 0.5,200 0.5,96 0,96", "1", "L; e5: bottom 96 along 0-1; e4: right 299 along 96-200; neck 96"},
		{"0,0 300,0 300,200 200,200 200,199.6 100,199.6 100,200 0,200", "1", "whole"},    // one in the middle of a side
		{"0,0 300,0 300,150 100,150 100,149.6 0,149.6", "1", "straight; e3: bottom 150"}, // a step in a wall that juts out by less than is forgiven
		{"0,0 300,0 300,150 100,150 100,149.4 0,149.4", "1", "L; e3: bottom 150; e5: bottom 149 along 0-100; e4: right 200 along 149-150; neck 149.4"},
		{"199.8x400", "1", "whole"}, // of hexagons too: the second course's first piece
		{"199.8x400", "0.1", "straight; e2: left 199"},
		{"499.8x500", "1", "whole"}, // and of the small square beside a large one
		{"499.8x500", "0.1", "straight; e2: left 99"},
	} {
		forgive := func(f *piece.Field) {
			for l, e := range f.Edges {
				e.Forgive = bondtest.MM(c.forgive)
				f.Edges[l] = e
			}
		}
		bond, at := "stack, 300x200, 0", "1-1"
		switch c.face {
		case "199.8x400":
			bond, at = "hexagon, 200, 0", "2-1"
		case "499.8x500":
			bond, at = "pinwheel, 400x400 100x100, 0", "1-2"
		}
		p := find(t, describe(c.face, bond, "0,0", forgive), at)
		if got := say(p.Cut); got != c.want || p.Whole || p.Cut.Visible == 0 {
			t.Errorf("%s: %s, want %s", c.face, got, c.want)
		}
	}
}

// Snapping needs 1/2 in on both sides of the line (common practice), and one line from side to side.
func TestSnapping(t *testing.T) {
	for _, c := range []struct {
		bottom, top string
		want        bool
	}{{"6", "6", true}, {"1/2", "1/2", true}, {"7/16", "7/16", false}, {"11-1/2", "11-1/2", true}, {"11-9/16", "11-9/16", false},
		{"11-1/2", "11-3/4", false}, {"6", "6-1/4", true}, {"1/2", "3/8", false}} {
		if got := strip(c.bottom, c.top).Cut; got.Snaps != c.want {
			t.Errorf("%s to %s: snaps %v", c.bottom, c.top, got.Snaps)
		}
	}
	for _, p := range describe("0,0 300,0 300,120 180,120 180,200 0,200", "stack, 300x200, 0", "0,0") {
		if p.Cut.Snaps {
			t.Errorf("an L does not snap: %+v", p.Cut)
		}
	}
}

// What is seen of a cut is less by what the other face's tile covers: 9-3/4 under 7/16 shows 9-5/16; a taper counts at its narrow end.
func TestVisibleWidth(t *testing.T) {
	hide := func(f *piece.Field) { f.Edges[2] = piece.Edge{Name: "corner B", Hidden: in("7/16")} }
	for _, c := range []struct{ bottom, top, want string }{{"9-3/4", "9-3/4", "9-5/16"}, {"9-3/4", "9", "8-9/16"}, {"3/8", "3/8", "0"}} {
		if got := strip(c.bottom, c.top, hide).Cut.Visible; got != in(c.want) {
			t.Errorf("%s to %s shows %v in, want %s", c.bottom, c.top, got.In(), c.want)
		}
	}
	both := func(f *piece.Field) {
		f.Edges[2], f.Edges[4] = piece.Edge{Hidden: 10 * unit.Millimetre}, piece.Edge{Hidden: 20 * unit.Millimetre}
	}
	if got := describe("200x200", "stack, 300x200, 0", "-50,0", both)[0].Cut.Visible; got != 170*unit.Millimetre {
		t.Errorf("200 mm between two walls that hide 10 and 20 shows %v", got.MM())
	}
	off := func(f *piece.Field) { // the factory side that stands at a wall is as near to it as a cut would be
		f.Edges[4], f.Tools.Tolerance = piece.Edge{Forgive: unit.Millimetre}, 2*unit.Millimetre
		f.Edges[2] = piece.Edge{Forgive: 3 * unit.Millimetre}
	}
	between := describe("200x200", "stack, 300x200, 0", "-50,0", off)[0]
	if len(between.Cut.Steps) != 1 || !between.Cut.MeasureFirst || between.Edges[0].Name != "factory left" || between.Edges[0].Keep {
		t.Errorf("%+v", between)
	}
	if got := strip("12", "12").Cut; got.Kind != piece.NoCut || len(got.Steps) > 0 || got.Visible != 0 {
		t.Errorf("a whole tile has no cut: %+v", got)
	}
}

// Sheets of 48 mm chips and 2 mm joints: a cut at 249.5 goes to the chip joint at 248 if the edge forgives 1.5 mm; 260 does not.
func TestSheetsAreCutAtChipJoints(t *testing.T) {
	for _, c := range []struct {
		keep, forgive, want string
		chips               int
	}{{"249.5", "2", "248", 5}, {"249.5", "1", "249", 0}, {"260", "2", "260", 0}, {"48", "0", "48", 1}, {"30", "2", "30", 0}, {"30", "40", "30", 0}} {
		face := "0,0 " + c.keep + ",0 " + c.keep + ",298 0,298"
		p := describe(face, "stack, 298x298, 2", "0,0", func(f *piece.Field) {
			f.Bond.Chips = &bond.Chips{Size: bondtest.MM("48"), Joint: bondtest.MM("2")}
			f.Edges[2] = piece.Edge{Name: "e2", Forgive: bondtest.MM(c.forgive)}
		})[0]
		if s := p.Cut.Steps[0]; s.SawFrom != bondtest.MM(c.want) || s.SawTo != s.SawFrom || s.Chips != c.chips {
			t.Errorf("%s: %+v", c.keep, s)
		}
	}
}
