package place

import (
	"slices"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/space"
	"dryfit/internal/unit"

	"pgregory.net/rapid"
)

const mm = unit.Millimetre

// room: 1800 x 2400 between studs. The back wall bears board 12, bed 5 and tile 8 up to 1200 over the finished floor, and board alone over that; the left wall
// board 10. Bare floor 1000 under the level line, build-up 20.
const room = `dryfit: 1
name: Places
units: mm
survey:
  corners: A B C D
  tape to: stud
  tape: {A-B: 1800, B-C: 2400, C-D: 1800, D-A: 2400, A-C: 3000, B-D: 3000}
  level line: {down: {A: 1000, B: 1000, C: 1000, D: 1000}, up: {A: 1400, B: 1400, C: 1400, D: 1400}}
walls:
  back: {along: A-B, build-up: [board 12, bed 5, tile]}
  right: {along: B-C, build-up: [board 10]}
  front: {along: C-D, build-up: [board 10]}
  left: {along: D-A, build-up: [board 10]}
floor: {build-up: [board 20]}
openings:
  door: {in: front, kind: door, across: 200 to 900 from C, up: 0 to 2000 above floor, leaf: {hinge: right, opens: in}}
center lines: {line: {in: back, across: 700 from A}}
stub-outs:
  low: {in: back, across: on line, up: 500 above floor, diameter: 20, stands out: 60}
  high: {in: back, across: 100 right of line, up: center 1500 above floor, diameter: 20, stands out: 60}
  edges: {in: back, across: 300 to 340 from B, up: 480 to 520 below level, diameter: 40}
  flange: {in: floor, off: {back: 325, left: 610}, diameter: 100}
tiles: {tile: {size: 300 x 150 x 8, kind: porcelain, joint: 2}}
lay: {back: {fields: {main: {tile: tile, bond: stack, to: 1200 above floor}}}}
WCs: {pan: {kind: floor, against: back, outlet: flange, rough-in: 300, tank gap: 12, length: 650, width: 360}}
`

func made(t *testing.T, edits ...string) Plan {
	t.Helper()
	src := strings.NewReplacer(edits...).Replace(room)
	doc, found := document.Read("room", []byte(src))
	solved, told, _ := site.Solve(doc)
	for _, f := range append(found, told...) {
		if f.Class == diag.Stop {
			t.Fatal(f.Say(unit.DefaultStyle(unit.Millimetres)))
		}
	}
	return Make(doc, solved)
}

func stub(p Plan, name string) Stub { s, _ := p.Stub(name); return s }

// Worked out on paper; the back wall's frame starts at the left wall's board, 10 from the studs.
func TestPlaces(t *testing.T) {
	p := made(t)
	pan, _ := p.WC("pan")
	for _, c := range []struct {
		what string
		got  figure.Figure
		want unit.Length
	}{
		{"on a line 700 from the studs", stub(p, "low").X, 690 * mm},
		{"500 over a floor that is 980 under the level line", stub(p, "low").Y, -480 * mm},
		{"on tile: 60 - 12 - 5 - 8", stub(p, "low").Out, 35 * mm},
		{"right of the line", stub(p, "high").X, 790 * mm},
		{"over the tile, on board: 60 - 12", stub(p, "high").Out, 48 * mm},
		{"the middle of two edges from the right: 1800 - 320 - 10", stub(p, "edges").X, 1470 * mm},
		{"the middle of two edges in height", stub(p, "edges").Y, -500 * mm},
		{"flange off the tile: 325 - 25", pan.Off, 300 * mm},
		{"flange along the wall: 610 - 10", pan.X, 600 * mm},
		{"back of the tank", pan.Back, 12 * mm},
		{"front of the bowl", pan.Front, 662 * mm},
	} {
		if !c.got.Known() || (c.got.V-c.want).Abs() > unit.Micrometre {
			t.Errorf("%s: %s %v, want %s", c.what, c.got.V.JSON(), c.got.Missing, c.want.JSON())
		}
	}
}

// What a place hangs on: the line, not the thing on it; the board of the wall that the tape started at; and nothing of the floor where two heights above it are
// compared.
func TestFacts(t *testing.T) {
	p := made(t)
	low, high := stub(p, "low"), stub(p, "high")
	if low.X.Per("center lines > line > across") != unit.One || low.X.Per("walls > left > build-up > 1") != -unit.One {
		t.Errorf("%+v", low.X)
	}
	if d := high.Y.Sub(low.Y); d.V != 1000*mm || slices.ContainsFunc(d.Facts(), func(f string) bool { return strings.HasPrefix(f, "floor") || strings.HasPrefix(f, "survey") }) {
		t.Errorf("%+v", d)
	}
	if d := stub(p, "edges").Y.Sub(low.Y); !slices.Contains(d.Facts(), downPath) {
		t.Errorf("one from the level line and one from the floor: %v", d.Facts())
	}
}

// The leaf hangs on the right, 900 from C, and sweeps a quarter circle of 700 to the left: every point of the circle lies in its way, and no point of that is more
// than 1 mm outside.
func TestSweep(t *testing.T) {
	p := made(t)
	d := p.Doors[0]
	ring := geom.Ring{}
	for _, q := range d.Sweep {
		ring = append(ring, geom.Vertex{P: q})
	}
	hinge := geom.Point{X: d.Right}
	for _, q := range d.Sweep[1:] {
		if far := geom.Dist(hinge, q); far > 701*mm || far < 700*mm-1 || q.X > d.Right || q.Y < 0 {
			t.Errorf("%+v", q)
		}
	}
	if ring.Contains(geom.Point{X: d.Right - 420*mm, Y: 559 * mm}) <= 0 { // 3-4-5
		t.Error("the circle leaves its way")
	}
}

// What clears an outline's corners clears the outline: an ellipse lies within them, and they are never farther out than a 400th of its size.
func TestShapeHoldsItsCurve(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := document.Outline{Kind: document.OvalOutline, Across: unit.Length(rapid.Int64Range(50, 900).Draw(t, "across")) * mm, Deep: unit.Length(rapid.Int64Range(50, 900).Draw(t, "deep")) * mm}
		points := Shape(o, geom.Point{})
		w := space.Wall{Name: "w", Right: geom.Point{X: 1000 * mm}}
		e := w.Outline(space.Envelope{}, points, space.Span{Hi: mm})
		if e.X.Length() < o.Across-mm || e.X.Length() > o.Across+o.Across/200+mm || e.Z.Length() < o.Deep-mm || e.Z.Length() > o.Deep+o.Deep/200+mm {
			t.Fatalf("%+v %+v for %+v", e.X, e.Z, o)
		}
		a, b := o.Across.MM()/2, o.Deep.MM()/2
		for i, p := range points {
			q := points[(i+1)%len(points)]
			m := geom.Point{X: (p.X + q.X) / 2, Y: (p.Y + q.Y) / 2} // the side's middle lies on the curve or outside it
			if x, y := m.X.MM()/a, m.Y.MM()/b; x*x+y*y < 0.9999 {
				t.Fatalf("the side at %v cuts the curve", m)
			}
		}
	})
}
