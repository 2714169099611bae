package document

import (
	"os"
	"testing"

	"dryfit/internal/money"
	"dryfit/internal/unit"
)

func readFile(t testing.TB, name string) []byte {
	t.Helper()
	src, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return src
}

// The full document uses every key once; what is checked here was worked out from its text by hand.
func TestFullDocument(t *testing.T) {
	room, found := Read("full.yaml", readFile(t, "testdata/full.yaml"))
	for _, f := range found {
		t.Errorf("line %d: %s", f.At.Line, f.Say(unit.DefaultStyle(unit.Inches)))
	}
	in := func(n, d int64) unit.Length { return unit.Inch.MulDiv(n, d) }
	for _, c := range []struct {
		what      string
		got, want any
	}{
		{"name", room.Name, "Boathouse washroom"},
		{"corners", len(room.Survey.Corners), 4},
		{"an unknown reading is none; two of B-C", len(room.Survey.Tape), 7},
		{"A-C 9' 11-3/4\"", room.Survey.Tape[5].Length, in(479, 4)},
		{"stud reading", room.Survey.Tape[2].Touches.Known, true},
		{"D is unknown", room.Survey.Down[3].Value.Unknown, true},
		{"finished floor", room.Survey.Finished.Below, in(40, 1)},
		{"left", room.Walls[0].Left + room.Walls[0].Right, "AB"},
		{"board", room.Walls[0].BuildUp[0].Thick.V, in(1, 2)},
		{"board's name", room.Walls[0].BuildUp[0].Label, "cement board"},
		{"silent tile", room.Walls[0].BuildUp[3].Thick.Known, false},
		{"lean away", room.Walls[0].Lean[1].Value.V, in(-1, 8)},
		{"bare width is the bottom's", room.Walls[1].WidthBottom.V, in(96, 1)},
		{"stud", room.Walls[0].Studs[2].Value, in(-1, 4)},
		{"nominal", room.Floor.Frame.Nominal, "2x10"},
		{"dressed depth", room.Floor.Frame.JoistD.V, in(37, 4)},
		{"span", room.Floor.Frame.Span.V, in(144, 1)},
		{"E = 1.6e6 x 6894.757293 Pa", room.Floor.Frame.Modulus.V, int64(11_031_611_669)},
		{"50 psf = 50 x 47.88025898 Pa", room.Floor.Frame.Load.V, int64(2394)},
		{"trim", room.Corners[0].Trim.V, in(3, 8)},
		{"touched", room.Lines[0].Across.Touches.V, Board},
		{"two edges", room.Openings[0].Across.Hi - room.Openings[0].Across.Lo, in(24, 1)},
		{"fall", room.Openings[0].SillFall.V, unit.Ratio(20_000)},
		{"top", room.Openings[1].Up.Part, Top},
		{"tiled niche", room.Openings[1].Tiled, true},
		{"window not tiled", room.Openings[0].Tiled, false},
		{"left of a line", room.Stubs[0].Across.Side, LeftOf},
		{"off walls", room.Stubs[1].FloorAt[1].Value.V, in(20, 1)},
		{"on a line", room.Boxes[0].Across.Side, On},
		{"below level", room.Boxes[0].Up.Datum, BelowLevelLine},
		{"sheet of 300 mm", room.Tiles[1].Length.V, 300 * unit.Millimetre},
		{"8 mm thick", room.Tiles[1].Thick.V, 8 * unit.Millimetre},
		{"warpage", room.Tiles[0].Warpage.Unknown, true},
		{"set", room.Tiles[3].Set[1].Width, in(8, 1)},
		{"bond", room.Lay[0].Fields[0].Bond.V, "running 33/100"},
		{"sight opening", room.Lay[0].Sight[0].Opening, "window"},
		{"sight height", room.Lay[0].Sight[1].Up.Lo, in(84, 1)},
		{"face", room.Lay[1].Face, "niche > back"},
		{"measures", room.Lay[1].LookFor[1].Text, "narrowest cut"},
		{"sheet's own thickness", room.Stock[0].Measured.V, in(45, 64)},
		{"no grain", room.Stock[1].Sale.Plain.V, true},
		{"edge trim", room.Stock[1].Sale.Trim.V, in(1, 4)},
		{"half a sheet", room.Stock[1].Sale.Others[0].Price.V, 18 * money.One},
		{"no price", room.Stock[1].Sale.Others[1].Price.Unknown, true},
		{"on hand by its size alone", room.Stock[1].Sale.OnHand[0].Width.V, in(48, 1)},
		{"on hand", room.Stock[1].Sale.OnHand[1].Count.V, 2},
		{"knot", room.Stock[1].Sale.OnHand[1].Bad[0], Stretch{in(40, 1), in(44, 1)}},
		{"covers", room.Stock[1].Sale.Covers[0].Text, "end wall"},
		{"track saw", room.Tools.Saws[0].First.V, RipFirst},
		{"bit", room.Tools.Bits[0].Reach.V, in(5, 4)},
		{"tread", room.Kits[0].Parts[0].Thick.V, in(45, 64)},
		{"tread's edges", len(room.Kits[0].Parts[0].Band), 2},
		{"lip by its length alone", room.Kits[0].Parts[1].Width.Known, false},
		{"along the grain", room.Stock[3].Length.V, in(144, 1)},
		{"dado", room.Cabinets[0].Joints.Bottom.V.Depth, in(1, 4)},
		{"tongue", room.Cabinets[0].Joints.Frame.V.Kind, TongueJoin},
		{"raise", room.Cabinets[0].Raise.V.Most, in(3, 4)},
		{"second screw", room.Cabinets[0].Screws.From[1].V, in(18, 1)},
		{"on the wall", room.Cabinets[1].Stands.V, OnWall},
		{"corner radius", room.Tops[0].Recess.Outline.V.Radius, in(2, 1)},
		{"deep", room.Tops[0].Recess.Outline.V.Deep, in(15, 1)},
		{"edge", room.Tops[0].Edges.Front.V.Size, in(1, 8)},
		{"12 %", room.Tops[0].Wood.Glued.V.Most, unit.Ratio(120_000)},
		{"6 to 11 %", room.Tops[0].Wood.InHouse.V.Most - room.Tops[0].Wood.InHouse.V.Least, unit.Ratio(50_000)},
		{"width off the wall", room.Tops[0].Alcove[0].Off.V, in(21, 1)},
		{"scribe", room.Scribes[0].Offsets[1].Value, in(1, 4)},
		{"10 m2/L", room.Finish[0].Cover.V, int64(10_000)},
		{"68 F = 36 x 5/9 C", room.Climate.Air[0].Warmth.V, int64(20_000)},
		{"115 F = 115 x 5/9 K", room.Climate.Range.V, int64(63_889)},
	} {
		if c.got != c.want {
			t.Errorf("%s: got %v, want %v", c.what, c.got, c.want)
		}
	}
}

// Unknown is never zero: a build-up that is unknown is a layer of unknown thickness, a gap of unknown size no reading.
func TestUnknownIsNotZero(t *testing.T) {
	room, found := Read("x", []byte(`{dryfit: 1, name: x, units: in, survey: {corners: A B C, tape: {A-B: unknown}},
  walls: {w: {along: A-B, build-up: unknown, studs: {0: unknown, 16: 1/8}, straightedge: [{length: 8 ft, gap: unknown}]}},
  tiles: {t: {size: unknown, kind: stone, dry lay: {tiles: 10, joints: 9, joint: unknown, length: 120}}},
  lay: {w: {fields: {f: {tile: t, pin: {across: unknown, up: 3 above floor}}}}}}`))
	w := room.Walls[0]
	switch {
	case found.Stops():
		t.Error(found)
	case len(room.Survey.Tape) != 0, len(w.BuildUp) != 1, !w.BuildUp[0].Thick.Unknown, len(w.Studs) != 1, len(w.Straightedge) != 0:
		t.Errorf("%+v", room)
	case !room.Tiles[0].Length.Unknown, room.Tiles[0].DryLay.Given, room.Lay[0].Fields[0].Pin.Given:
		t.Errorf("%+v %+v", room.Tiles, room.Lay)
	}
	if len(found) != 4 {
		t.Errorf("%d findings; the stud, the gap, the joint of the row and the pin are not checked: %v", len(found), found)
	}
}

func BenchmarkRead(b *testing.B) {
	src := readFile(b, "testdata/full.yaml")
	for b.Loop() {
		Read("full.yaml", src)
	}
}
