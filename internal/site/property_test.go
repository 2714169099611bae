package site

import (
	"fmt"
	"math"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"

	"pgregory.net/rapid"
)

// sixteenths draws a length in sixteenths of an inch.
func sixteenths(rt *rapid.T, lo, hi int, name string) unit.Length {
	return unit.Length(rapid.IntRange(lo*16, hi*16).Draw(rt, name)) * unit.Sixteenth
}

// taut tapes all sides and diagonals of the points, to the grid.
func taut(r *room, points []geom.Point) {
	c := r.Survey.Corners
	for i := range points {
		for j := i + 1; j < len(points); j++ {
			r.Survey.Tape = append(r.Survey.Tape, document.Reading{From: c[i].Text, To: c[j].Text, Length: geom.Dist(points[i], points[j]),
				At: diag.Place{Path: "survey > tape > " + c[i].Text + "-" + c[j].Text}})
		}
	}
}

// anyRoom draws a rectangle or an L with exact readings, walls all round with boards of their own, everything tiled.
func anyRoom(t *testing.T, rt *rapid.T) (*room, []geom.Point) {
	w, d := sixteenths(rt, 40, 200, "width"), sixteenths(rt, 40, 200, "depth")
	points := []geom.Point{{}, {X: w}, {X: w, Y: -d}, {Y: -d}}
	names := "A B C D"
	if rapid.Bool().Draw(rt, "L") {
		x, y := sixteenths(rt, 16, int(w.In())-16, "x"), sixteenths(rt, 16, int(d.In())-16, "y")
		points = []geom.Point{{}, {X: w}, {X: w, Y: -y}, {X: x, Y: -y}, {X: x, Y: -d}, {Y: -d}}
		names = "A B C D E F"
	}
	r := newRoom(t, names, "")
	taut(r, points)
	for i, c := range r.Survey.Corners {
		next := r.Survey.Corners[(i+1)%len(points)].Text
		wall := r.wall(c.Text+"-"+next, c.Text+"-"+next, "board 1/2")
		wall.BuildUp[0].Thick = val(sixteenths(rt, 0, 1, "board"))
		r.Survey.Down = append(r.Survey.Down, document.AtCorner{Corner: c.Text, Value: val(sixteenths(rt, 38, 42, "down"))})
		r.Survey.Up = append(r.Survey.Up, document.AtCorner{Corner: c.Text, Value: val(sixteenths(rt, 50, 70, "up"))})
		r.lay("white", wall.Name)
	}
	r.tile("white", "12 x 6 x 3/8", document.Ceramic)
	r.lay("white", "floor")
	return r, points
}

// Exact readings give the room back to 1/2000 mm; the raw area is that of its rectangles.
func TestExactRoomsComeBack(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r, points := anyRoom(t, rt)
		got := r.solve()
		for i, p := range points {
			if d := got.Survey.Corners[i].Raw.Sub(p); d.X.Abs() > near || d.Y.Abs() > near {
				rt.Fatalf("corner %d is off by %v", i, d)
			}
		}
		want := points[1].X.Times(-points[2].Y)
		if len(points) == 6 {
			want += points[3].X.Times(points[2].Y - points[4].Y)
		}
		if d := float64(got.Survey.Area - want); math.Abs(d) > float64(near)*float64(600*unit.Inch) {
			rt.Fatalf("area %v, want %v", got.Survey.Area, want)
		}
	})
}

// The floor's board area is that of the outline less a strip for each wall, with squares added at outside corners and taken once at
// inside ones: a formula apart from the one that moves edges.
func TestFloorAreaByStrips(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r, points := anyRoom(t, rt)
		f := r.solve().face("floor")
		n := len(points)
		thick := func(i int) unit.Length { return r.Walls[(i+n)%n].BuildUp[0].Thick.V }
		var want unit.Area
		for i := range points { // shoelace of corners that are moved by hand: walls run along the axes in turn
			want += cross(movedCorner(points, thick, i), movedCorner(points, thick, i+1))
		}
		want = -want / 2
		if d := float64(f.Board.Area() - want); math.Abs(d) > float64(near)*float64(800*unit.Inch) {
			rt.Fatalf("board area %v, want %v", f.Board.Area(), want)
		}
	})
}

func cross(p, q geom.Point) unit.Area { return p.X.Times(q.Y) - p.Y.Times(q.X) }

// movedCorner moves a corner of a room whose walls are parallel to the axes: each of its two walls moves one coordinate.
func movedCorner(points []geom.Point, thick func(int) unit.Length, i int) geom.Point {
	n := len(points)
	p := points[i%n]
	for _, w := range []int{(i + n - 1) % n, i % n} {
		a, b := points[w], points[(w+1)%n]
		switch {
		case b.X > a.X:
			p.Y -= thick(w)
		case b.X < a.X:
			p.Y += thick(w)
		case b.Y < a.Y:
			p.X -= thick(w)
		default:
			p.X += thick(w)
		}
	}
	return p
}

// Where all gaps are positive the cut region lies in the board; and tile that two faces need at an inside corner never overlaps: what the
// one leaves to the other's board is what the other needs.
func TestCutInsideBoard(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r, _ := anyRoom(t, rt)
		got := r.solve()
		for _, f := range got.Faces {
			inward := true
			for _, e := range f.Edges {
				inward = inward && e.Gap >= 0
			}
			if !inward {
				continue
			}
			both, err := f.Cut.And(f.Board)
			if err != nil || both.Area() != f.Cut.Area() {
				rt.Fatalf("%s: cut %v, in the board %v, %v", f.Name, f.Cut.Area(), both.Area(), err)
			}
		}
		for _, f := range got.Faces {
			for _, e := range f.Edges {
				if e.Hidden < 0 || e.Kind == InsideCorner && e.Gap < e.Joint-near {
					rt.Fatalf("%s at %s: gap %v, joint %v, hidden %v", f.Name, e.Name, e.Gap, e.Joint, e.Hidden)
				}
			}
		}
	})
}

// Moving the level line up or down moves every wall's y by as much and nothing else.
func TestLevelLineIsOnlyADatum(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r, _ := anyRoom(t, rt)
		r.opening("niche", "A-B", document.Niche, "12 from A", "40 above floor", "10", "12")
		before := r.solve()
		by := sixteenths(rt, -20, 20, "by")
		for i := range r.Survey.Down {
			r.Survey.Down[i].Value.V += by
			r.Survey.Up[i].Value.V -= by
		}
		after := r.solve()
		for k, f := range before.Faces {
			g := after.Faces[k]
			shift := geom.Point{Y: -by}
			if f.Kind == FloorFace {
				shift = geom.Point{}
			}
			if fmt.Sprint(f.Board.Move(shift)) != fmt.Sprint(g.Board) || fmt.Sprint(f.Cut.Move(shift)) != fmt.Sprint(g.Cut) || fmt.Sprint(f.Edges) != fmt.Sprint(g.Edges) {
				rt.Fatalf("%s: %v became %v", f.Name, f.Board.Move(shift), g.Board)
			}
		}
	})
}

// The unit that a person writes in changes nothing: the same lengths give the same counts.
func TestUnitsChangeNothing(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r, _ := anyRoom(t, rt)
		inches, _, _ := Solve(r.Room)
		r.Units = unit.Millimetres
		mm, _, _ := Solve(r.Room)
		if fmt.Sprint(inches) != fmt.Sprint(mm) {
			rt.Fatal("metric and inch rooms differ")
		}
	})
}

// The same document gives the same room.
func TestDeterministic(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r, _ := anyRoom(t, rt)
		a, la, aa := Solve(r.Room)
		b, lb, ab := Solve(r.Room)
		if fmt.Sprint(a, la, aa) != fmt.Sprint(b, lb, ab) {
			rt.Fatal("two runs differ")
		}
	})
}

// Whatever stands in the document, solving it says something and does not panic; every finding has a code, words and a place.
func TestAnyMess(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r, _ := anyRoom(t, rt)
		mess(rt, r)
		_, list, assumed := Solve(r.Room)
		for _, f := range list {
			if f.Code == "" || f.Text == "" || f.At.Path == "" && f.At.Line == 0 {
				rt.Fatalf("finding without code, words or place: %+v", f)
			}
		}
		for _, a := range assumed {
			if a.Source == "" || a.At.Path == "" {
				rt.Fatalf("assumption without source or place: %+v", a)
			}
		}
	})
}

// mess spoils a room in a few places.
func mess(rt *rapid.T, r *room) {
	odd := rapid.SampledFrom([]unit.Length{0, 1, -1, unit.Sixteenth, -unit.Inch, unit.Inch, 30 * unit.Inch, 1000 * unit.Inch, -1000 * unit.Inch, 100 * unit.Metre, 1000 * unit.Metre, -1000 * unit.Metre})
	name := rapid.SampledFrom([]string{"", "A", "B", "C", "Z", "left", "right", "A-B", "B-C", "floor", "line", "niche > back", "it"})
	across := func() document.Across {
		return document.Across{Given: rapid.Bool().Draw(rt, "given"), From: name.Draw(rt, "from"), Side: rapid.SampledFrom([]document.Side{document.FromCorner, document.LeftOf, document.RightOf, document.On}).Draw(rt, "side"),
			Lo: odd.Draw(rt, "lo"), Hi: odd.Draw(rt, "hi"), Both: rapid.Bool().Draw(rt, "both"), Center: rapid.Bool().Draw(rt, "center")}
	}
	up := func() document.Up {
		return document.Up{Given: rapid.Bool().Draw(rt, "given"), Datum: document.Datum(rapid.IntRange(0, 3).Draw(rt, "datum")), Part: document.Part(rapid.IntRange(0, 2).Draw(rt, "part")),
			Lo: odd.Draw(rt, "lo"), Hi: odd.Draw(rt, "hi"), Both: rapid.Bool().Draw(rt, "both")}
	}
	at := diag.Place{Path: "somewhere", Line: 1}
	for range rapid.IntRange(1, 6).Draw(rt, "spoils") {
		wall := &r.Walls[rapid.IntRange(0, len(r.Walls)-1).Draw(rt, "wall")]
		switch rapid.IntRange(0, 15).Draw(rt, "spoil") {
		case 0:
			r.Survey.Tape[rapid.IntRange(0, len(r.Survey.Tape)-1).Draw(rt, "reading")].Length = odd.Draw(rt, "length")
		case 1:
			r.Survey.Down[0].Value.V = odd.Draw(rt, "down")
		case 2:
			r.Survey.Up[0].Value = document.Value[unit.Length]{Unknown: true}
		case 3:
			wall.Lean = []document.AtCorner{{Corner: wall.Left, Value: val(odd.Draw(rt, "lean"))}}
		case 4:
			wall.WidthTop, wall.Heights = val(odd.Draw(rt, "top")), []document.AtCorner{{Corner: wall.Right, Value: val(odd.Draw(rt, "height"))}}
		case 5:
			wall.FloorLine = []document.Station{{X: odd.Draw(rt, "x"), Value: odd.Draw(rt, "v"), At: at}, {X: odd.Draw(rt, "x"), Value: odd.Draw(rt, "v"), At: at}}
		case 6:
			wall.Profile, wall.Straightedge = []document.Station{{X: 1, Value: odd.Draw(rt, "v")}}, []document.Gap{{Length: odd.Draw(rt, "l"), Gap: odd.Draw(rt, "g"), At: at}}
		case 7:
			wall.BuildUp = []document.Layer{{What: document.LayerKind(rapid.IntRange(0, 3).Draw(rt, "layer")), Thick: document.Value[unit.Length]{V: odd.Draw(rt, "thick"), Known: rapid.Bool().Draw(rt, "known")}, At: at}}
		case 8:
			r.Openings = append(r.Openings, document.Opening{Name: "niche", At: at, In: document.Name{Text: "A-B"}, Kind: document.OpeningKind(rapid.IntRange(0, 3).Draw(rt, "kind")), Across: across(), Up: up(),
				Width: val(odd.Draw(rt, "w")), Height: val(odd.Draw(rt, "h")), Depth: val(odd.Draw(rt, "d")), BuildUp: wall.BuildUp})
			r.lay("white", "niche > back", "niche > sill", "niche > left")
		case 9:
			r.Stubs = append(r.Stubs, document.Stub{Name: "it", At: at, In: document.Name{Text: name.Draw(rt, "in")}, Across: across(), Up: up(), Diameter: val(odd.Draw(rt, "d")),
				FloorAt: []document.AtWall{{Wall: "A-B", Value: val(odd.Draw(rt, "off"))}, {Wall: name.Draw(rt, "wall"), Value: val(odd.Draw(rt, "off"))}}})
		case 10:
			r.Boxes = append(r.Boxes, document.Box{Name: "it", At: at, In: document.Name{Text: name.Draw(rt, "in")}, Across: across(), Up: up(), Width: val(odd.Draw(rt, "w")), Height: val(odd.Draw(rt, "h")),
				FloorAt: []document.AtWall{{Wall: "A-B", Value: val(odd.Draw(rt, "off"))}, {Wall: "B-C", Value: val(odd.Draw(rt, "off"))}}})
		case 11:
			r.Lines = append(r.Lines, document.Line{Name: "line", In: document.Name{Text: name.Draw(rt, "in")}, Across: across(), At: at})
		case 12:
			r.InWall = append(r.InWall, document.Buried{Name: "it", At: at, In: document.Name{Text: "A-B"}, Kind: document.BuriedKind(rapid.IntRange(0, 4).Draw(rt, "kind")), Across: across(), Up: up()})
		case 13:
			wall.Left, wall.Right = name.Draw(rt, "l"), name.Draw(rt, "r")
		case 14:
			r.Survey.Corners = r.Survey.Corners[:rapid.IntRange(0, len(r.Survey.Corners)).Draw(rt, "corners")]
		case 15:
			r.Floor.Frame = document.Frame{Given: true, At: at, JoistW: val(odd.Draw(rt, "w")), JoistD: val(odd.Draw(rt, "d")), Spacing: val(odd.Draw(rt, "s")), Span: val(odd.Draw(rt, "span")), Modulus: val(int64(odd.Draw(rt, "e"))), Load: val(int64(odd.Draw(rt, "load")))}
		}
	}
}
