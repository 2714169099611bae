package tiling

import (
	"strings"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

const plainTile = "\ntiles:\n  plain: {size: 12 x 12 x 3/8, kind: ceramic, joint: 1/8, turns: any, variation: 0, warpage: 0}\n" +
	"  accent: {size: 4 x 4 x 3/8, kind: glass, joint: 1/8, turns: any, variation: 0, warpage: 0}\n"

// A band takes its height and a joint above and below from the field that it crosses.
func TestBandTakesFromTheField(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", plainTile+`
lay:
  back:
    fields:
      main: {tile: plain, bond: stack}
      band: {tile: accent, bond: stack, up: 40 to 44 above floor}
`)
	p, _, _ := Make(doc, solved, Options{})
	main, band := p.Faces[0].Fields[0], p.Faces[0].Fields[1]
	if got := band.Region.Bounds().H(); got != in(t, "4") {
		t.Errorf("band is %v high", got.In())
	}
	floor := solved.FinishedFloor
	for _, r := range main.Region {
		b := r.Bounds()
		if b.Min.Y < floor+in(t, "44-1/8") && b.Max.Y > floor+in(t, "39-7/8") {
			t.Errorf("the field reaches into the band or its joints: %v to %v", (b.Min.Y - floor).In(), (b.Max.Y - floor).In())
		}
	}
	whole := p.Faces[0].Fields[0].Region.Area() + band.Region.Area() + solved.Faces[0].Cut.Bounds().W().Times(2*in(t, "1/8"))
	if whole != solved.Faces[0].Cut.Area() {
		t.Errorf("fields and their joints do not make the face: %v of %v", whole.SqFt(), solved.Faces[0].Cut.Area().SqFt())
	}
}

// A border is a strip of one width round the face; the field inside it keeps a joint's distance.
func TestBorder(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", plainTile+`
lay:
  back:
    fields:
      main: {tile: plain, bond: stack}
      edge: {tile: accent, bond: stack, border: 4}
`)
	p, _, _ := Make(doc, solved, Options{})
	cut := solved.Faces[0].Cut.Bounds()
	inner := p.Faces[0].Fields[0].Region.Bounds()
	want := geom.Rect{Min: cut.Min.Add(geom.Point{X: in(t, "4-1/8"), Y: in(t, "4-1/8")}), Max: cut.Max.Sub(geom.Point{X: in(t, "4-1/8"), Y: in(t, "4-1/8")})}
	if inner != want {
		t.Errorf("inner field %v, want %v", inner, want)
	}
}

// Joints carried round an inside corner: the tile that the corner cuts shows on both walls what a whole tile has, less the
// soft joint's place: seen of it left of the corner and seen of it right of the corner add up to the tile.
func TestContinueRoundTheCorner(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", plainTile+`
lay:
  right:
    continue from: back
    fields: {main: {tile: plain, bond: stack}}
  back:
    fields: {main: {tile: plain, bond: stack}}
`)
	p, _, _ := Make(doc, solved, Options{})
	if p.Faces[0].Name != "back" || p.Faces[1].Name != "right" {
		t.Fatalf("faces in the order %s, %s", p.Faces[0].Name, p.Faces[1].Name)
	}
	back, right := p.Faces[0].Fields[0], p.Faces[1].Fields[0]
	if !right.Held {
		t.Error("the continued field is not held")
	}
	pitch := in(t, "12-1/8")
	// What is seen of the back wall ends at the right wall's tile face: 9/16 in from its board.
	seen := solved.Faces[0].Board.Bounds().Max.X - in(t, "9/16")
	phaseBack := (seen - back.Chosen().Origin.X).Floor(1) % pitch
	// What is seen of the right wall begins a soft joint off the back wall's tile face.
	begins := in(t, "9/16") + in(t, "1/8")
	phaseRight := ((begins-right.Chosen().Origin.X)%pitch + pitch) % pitch
	if d := (phaseBack - phaseRight).Abs(); d > unit.Micrometre {
		t.Errorf("the pattern jumps by %v at the corner", d.In())
	}
	if back.Chosen().Origin.Y != right.Chosen().Origin.Y {
		t.Error("courses do not run on")
	}
}

// A pin names a joint crossing: its middle is half a joint off the tile's corner.
func TestPin(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", plainTile+`
lay:
  back:
    fields: {main: {tile: plain, bond: stack, pin: {across: 20 from A, up: 10 above level}}}
`)
	p, _, _ := Make(doc, solved, Options{})
	f := p.Faces[0].Fields[0]
	x, y := f.Chosen().Origin.X, f.Chosen().Origin.Y
	// The tape reaches the studs: half an inch left of the board's corner.
	// The readings are rounded to 1/64 in, so the solved corner is right to a hundredth of a millimetre.
	if (x-in(t, "19-9/16")).Abs() > 10*unit.Micrometre || y != in(t, "10-1/16") || !f.Held {
		t.Errorf("origin %v, %v; held %v", x.In(), y.In(), f.Held)
	}
}

// From the wall to the floor: the floor's columns stand where the wall's stand, measured along the wall from the left
// corner of its board.
func TestContinueOntoTheFloor(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", plainTile+`
lay:
  back:
    fields: {main: {tile: plain, bond: stack}}
  floor:
    continue from: back
    fields: {main: {tile: plain, bond: stack}}
`)
	p, _, _ := Make(doc, solved, Options{})
	back, floor := p.Faces[0].Fields[0].Chosen(), p.Faces[1].Fields[0].Chosen()
	if len(floor.Pieces) == 0 {
		t.Fatal("nothing laid")
	}
	left := solved.Survey.Corner("A").Board
	pitch := in(t, "12-1/8")
	d := ((floor.Origin.X-left.X-back.Origin.X)%pitch + pitch) % pitch
	if d = min(d, pitch-d); d > 10*unit.Micrometre {
		t.Errorf("columns are %v off", d.In())
	}
}

// On the floor a pin is taped off two walls: 20 from the back wall's studs and 10 from the left wall's. A is the plan's
// origin, the back wall runs along x and the room lies below it.
func TestPinOnTheFloor(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", plainTile+`
lay:
  floor:
    fields: {main: {tile: plain, bond: stack, pin: {off: {back: 20, left: 10}}}}
`)
	p, _, _ := Make(doc, solved, Options{})
	f := p.Faces[0].Fields[0]
	o := f.Chosen().Origin
	if (o.X-in(t, "10-1/16")).Abs() > 50*unit.Micrometre || (o.Y+in(t, "19-15/16")).Abs() > 50*unit.Micrometre || !f.Held {
		t.Errorf("origin %v, %v; held %v", o.X.In(), o.Y.In(), f.Held)
	}
}

// A field that can not be placed is told of, never dropped without a word.
func TestFieldNotPlaced(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", plainTile+`
lay:
  floor:
    fields: {main: {tile: plain, bond: stack, up: 10 to 20 above floor}}
`)
	_, found, _ := Make(doc, solved, Options{})
	if !found.Stops() {
		t.Error("nothing stops work")
	}
}

// A border is laid as a setter lays it, each run along its own edge: 4 in tile with 1/8 in joints round a face of 59-3/4 by
// 89-7/16 in. Across each run one whole tile fits, so no piece is narrower than 4 in across it, and every run has whole tiles.
func TestBorderRunsHaveTheirOwnPattern(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", plainTile+`
lay:
  back:
    fields:
      main: {tile: plain, bond: stack}
      edge: {tile: accent, bond: stack, border: 4}
`)
	p, found, _ := Make(doc, solved, Options{})
	if found.Stops() {
		t.Fatal(found)
	}
	runs := p.Faces[0].Fields[1:]
	if len(runs) != 4 {
		t.Fatalf("%d runs", len(runs))
	}
	cut := solved.Faces[0].Cut
	area := runs[0].Region.Area()
	for _, r := range runs {
		l := r.Chosen()
		box := r.Region.Bounds()
		across, along := min(box.W(), box.H()), max(box.W(), box.H())
		if across != in(t, "4") {
			t.Errorf("%s is %v wide", r.Name, across.In())
		}
		// Laid along the run: as many whole tiles as its length holds, less two that are cut at its ends.
		if want := int((along+in(t, "1/8"))/in(t, "4-1/8")) - 1; l.Whole < want {
			t.Errorf("%s: %d whole of %d pieces, want %d", r.Name, l.Whole, len(l.Pieces), want)
		}
	}
	// The four runs, three joints at each upright run's two ends apart, make the whole strip.
	for _, r := range runs[1:] {
		area += r.Region.Area()
	}
	inside := (cut.Bounds().W() - in(t, "8")).Times(cut.Bounds().H() - in(t, "8"))
	joints := 4 * in(t, "4").Times(in(t, "1/8"))
	if area+joints != cut.Area()-inside {
		t.Errorf("the runs and their joints make %v, the strip is %v", (area + joints).SqFt(), (cut.Area() - inside).SqFt())
	}
}

// A floor of tile a quarter of an inch wide is stopped before it is laid.
func TestTooManyPieces(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", "\ntiles:\n  plain: {size: 1/4 x 1/4 x 1/8, kind: glass, joint: 1/16, turns: any, variation: 0, warpage: 0}\nlay:\n  back: {fields: {main: {tile: plain}}}\n")
	p, found, _ := Make(doc, solved, Options{})
	if !found.Stops() || len(p.Faces[0].Fields) != 0 {
		t.Errorf("%d fields laid; found %v", len(p.Faces[0].Fields), found)
	}
}

// A pipe of 5/8 in with 1/8 in round it needs 7/8 in; the bit that makes it is 1 in, and that is the hole.
func TestHoleIsTheBitThatMakesIt(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", "\nstub-outs: {cold: {in: back, across: 30 from A, up: center 21 above floor, diameter: 5/8}}\ntools: {core bits: [3/4, 1, 2]}\n"+plainTile[1:]+"lay:\n  back: {fields: {main: {tile: plain}}}\n")
	p, _, _ := Make(doc, solved, Options{})
	for _, c := range p.Faces[0].Fields[0].Chosen().Pieces {
		if len(c.Holes) > 0 {
			if h := c.Holes[0]; h.Drill != in(t, "1") || h.Bit != in(t, "1") {
				t.Errorf("hole %v, bit %v", h.Drill.In(), h.Bit.In())
			}
			return
		}
	}
	t.Error("no hole")
}

// The joint crossing that a sheet names can be marked: it lies within the field.
func TestOriginLiesWithinTheField(t *testing.T) {
	for _, bond := range []string{"stack", "running 1/3", "herringbone", "herringbone 45"} {
		p, _ := laid(t, "size: 12 x 4 x 3/8, kind: ceramic, turns: any, variation: 0, warpage: 0", "bond: "+bond+", joint: 1/8")
		f := p.Faces[0].Fields[0]
		for i, l := range f.Layouts {
			if f.Region.Contains(l.Origin) <= 0 {
				t.Errorf("%s, layout %d: %v, %v is outside", bond, i+1, l.Origin.X.In(), l.Origin.Y.In())
			}
		}
	}
}

// Stone that ends free at a height shows its cut edges: they are to be re-finished. Whole tiles up to that height show none.
func TestCutEdgesThatShow(t *testing.T) {
	const stone = "size: 12 x 12 x 3/8, kind: stone, turns: any, variation: 0, warpage: 0"
	find := func(field string) (said string) {
		doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", "\ntiles:\n  plain: {"+stone+"}\nlay:\n  back: {fields: {main: {tile: plain, "+field+"}}}\n")
		_, found, _ := Make(doc, solved, Options{})
		for _, f := range found {
			if f.Code == "cut-edge-shows" {
				said = f.Mend
			}
		}
		return said
	}
	// The pin puts a joint 12-1/8 in above the finished floor, so a course would end at 36-3/8: 40 cuts through the next.
	const pin = "bond: stack, joint: 1/8, pin: {across: 30 from A, up: 12-3/16 above floor}"
	if got := find("to: 40 above floor, " + pin); !strings.HasPrefix(got, "re-finish") {
		t.Errorf("mend is %q", got)
	}
	if got := find(pin); got != "" {
		t.Errorf("no edge is free, and %q", got)
	}
}
