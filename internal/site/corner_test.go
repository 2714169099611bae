package site

import (
	"math"
	"strings"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// polygon is a room whose corners are known, in inches, clockwise seen from above; all its sides and diagonals are taped to the surface,
// to the 1/16000 mm, and every side has a wall of the layers, named by its corners.
func polygon(t *testing.T, to document.Surface, layers string, points ...[2]float64) *room {
	names := "A B C D E F G H"[:2*len(points)-1]
	r := newRoom(t, names, "")
	r.Survey.Touches = val(to)
	c := r.Survey.Corners
	for i := range points {
		for j := i + 1; j < len(points); j++ {
			d := math.Hypot(points[i][0]-points[j][0], points[i][1]-points[j][1])
			r.Survey.Tape = append(r.Survey.Tape, document.Reading{From: c[i].Text, To: c[j].Text, Length: unit.FromFloat(d * float64(unit.Inch))})
		}
		r.Survey.Down = append(r.Survey.Down, document.AtCorner{Corner: c[i].Text, Value: val(40 * unit.Inch)})
		r.Survey.Up = append(r.Survey.Up, document.AtCorner{Corner: c[i].Text, Value: val(56 * unit.Inch)})
	}
	for i := range points {
		along := c[i].Text + "-" + c[(i+1)%len(points)].Text
		r.wall(along, along, layers)
	}
	r.tile("white", "12 x 6 x 3/8", document.Ceramic)
	return r
}

// bay is an L: a back wall A-B of 60 in, a side wall B-C of 32 in that ends in the outside corner C, and a wider part before it. All to the
// board, which is 1/2 in; finish 3/16 + 3/8 = 9/16 in.
func bay(t *testing.T) *room {
	return polygon(t, document.Board, "board 1/2, bed 3/16, tile", [2]float64{0, 0}, [2]float64{60, 0}, [2]float64{60, -32}, [2]float64{100, -32}, [2]float64{100, -80}, [2]float64{0, -80})
}

// The outside corner, by each way to end tile there; lengths worked by hand from the finish of 9/16 in.
func TestOutsideCorner(t *testing.T) {
	for _, c := range []struct {
		what          string
		edge          document.EdgeRule
		trim          string
		first, second string // gap of B-C, set first, and of C-D
	}{
		{"profile that shows 3/8 in", document.TrimProfile, "3/8", "-3/16", "-3/16"},
		{"miter", document.Miter, "", "-9/16", "-9/16"},
		{"lap", document.Lap, "", "0", "-9/16"},
	} {
		r := bay(t)
		k := document.Corner{Name: "C", Edge: val(c.edge)}
		if c.trim != "" {
			k.Trim = val(r.in(c.trim))
		}
		r.Corners = append(r.Corners, k)
		r.lay("white", "A-B", "B-C", "C-D")
		r.order("A-B", "B-C", "C-D")
		got := r.solve()
		first, second := got.face("B-C").Edges[labelRight-1], got.face("C-D").Edges[labelLeft-1]
		if first.Kind != OutsideCorner || second.Kind != OutsideCorner {
			t.Errorf("%s: kinds %v and %v", c.what, first.Kind, second.Kind)
		}
		wantNear(t, c.what+", set first", first.Gap, c.first)
		wantNear(t, c.what+", set second", second.Gap, c.second)
		if lap := c.edge == document.Lap; second.Shows != lap || first.Shows {
			t.Errorf("%s: a bare edge shows at the lapping face only", c.what)
		}
	}
}

// A side wall 32 in deep, from the back wall that runs through to its own board's end: 32 - 9/16 - 1/8 = 31-5/16 in to the saw.
func TestSideWallToItsEnd(t *testing.T) {
	r := bay(t)
	r.Corners = append(r.Corners, document.Corner{Name: "C", Edge: val(document.Lap)})
	r.lay("white", "A-B", "B-C", "C-D")
	r.order("A-B", "B-C", "C-D")
	lo, hi := spanAt(t, r.solve().face("B-C").Cut, 0)
	wantNear(t, "side wall to the saw", hi-lo, "31-5/16")
}

func TestOutsideCornerSolved(t *testing.T) {
	r := bay(t)
	got := r.solve()
	for i, want := range []bool{false, false, true, false, false, false} {
		c := got.Survey.Corners[i]
		if c.Outside != want {
			t.Errorf("corner %s outside: %v", c.Name, c.Outside)
		}
		if angle := map[bool]unit.Angle{false: 90 * unit.Degree, true: 270 * unit.Degree}[want]; (c.Angle-angle).Radians() > 1e-6 || (c.Angle-angle).Radians() < -1e-6 {
			t.Errorf("corner %s: %d millionths of a degree", c.Name, c.Angle)
		}
	}
}

// At a corner of angle a the plane p off the own board meets the plane q off the neighbor's at (q + p cos a)/sin a along the wall: only
// at 90 degrees is that q. The through tile's end keeps the joint at its back or its face, whichever is tighter: at its face where
// the corner is narrower than square, at its back where it is wider. Equilateral triangle and regular hexagon of 100 in sides, to the board.
func TestCornersNotSquare(t *testing.T) {
	h := 50 * math.Sqrt(3)
	triangle := [][2]float64{{0, 0}, {100, 0}, {50, -h}}
	hexagon := [][2]float64{{0, 0}, {100, 0}, {150, -h}, {100, -2 * h}, {0, -2 * h}, {-50, -h}}
	bed, finish, joint := 0.1875, 0.5625, 0.125
	for _, c := range []struct {
		points [][2]float64
		angle  float64
		tight  float64 // the depth that is tighter
	}{{triangle, 60, finish}, {hexagon, 120, bed}} {
		r := polygon(t, document.Board, "board 1/2, bed 3/16, tile", c.points...)
		r.lay("white", "A-B", "B-C")
		r.order("A-B", "B-C")
		got := r.solve()
		a := c.angle * math.Pi / 180
		meet := func(p, q float64) float64 { return (q + p*math.Cos(a)) / math.Sin(a) }
		through, butts := got.face("A-B").Edges[labelRight-1], got.face("B-C").Edges[labelLeft-1]
		wantInches(t, "through", through.Gap, meet(c.tight, joint))
		wantInches(t, "hidden", through.Hidden, meet(finish, finish)-meet(c.tight, joint))
		wantInches(t, "butting", butts.Gap, meet(c.tight, finish+joint))
	}
}

func wantInches(t *testing.T, what string, got unit.Length, want float64) {
	t.Helper()
	if d := got - unit.FromFloat(want*float64(unit.Inch)); d.Abs() > near {
		t.Errorf("%s: got %.5f in, want %.5f", what, got.In(), want)
	}
}

// Two walls in one line with boards of 1/2 and 5/8 in: the edge of the thicker one makes a jog; the outline has a corner more, and the thinner
// wall ends square off the corner.
func TestJog(t *testing.T) {
	r := polygon(t, document.Stud, "board 1/2", [2]float64{0, 0}, [2]float64{40, 0}, [2]float64{100, 0}, [2]float64{100, -80}, [2]float64{0, -80})
	r.Walls[1].BuildUp = r.layers("board 5/8")
	got := r.solve()
	wantNear(t, "thin wall", got.face("A-B").shape.width, "39-1/2")
	wantNear(t, "thick wall", got.face("B-C").shape.width, "59-1/2")
	floor := got.face("floor").Board
	if len(floor[0]) != 6 {
		t.Errorf("floor has %d corners: %v", len(floor[0]), floor[0])
	}
	want := r.in("99").Times(r.in("79")) - r.in("59-1/2").Times(r.in("1/8"))
	if d := (floor.Area() - want).SqFt(); d > 1e-5 || d < -1e-5 {
		t.Errorf("floor %.6f sq ft, want %.6f", floor.Area().SqFt(), want.SqFt())
	}
}

// The same with the thicker board on the left.
func TestJogLeft(t *testing.T) {
	r := polygon(t, document.Stud, "board 1/2", [2]float64{0, 0}, [2]float64{40, 0}, [2]float64{100, 0}, [2]float64{100, -80}, [2]float64{0, -80})
	r.Walls[0].BuildUp = r.layers("board 5/8")
	floor := r.solve().face("floor").Board
	want := r.in("99").Times(r.in("79")) - r.in("39-1/2").Times(r.in("1/8"))
	if d := (floor.Area() - want).SqFt(); d > 1e-5 || d < -1e-5 {
		t.Errorf("floor %.6f sq ft, want %.6f", floor.Area().SqFt(), want.SqFt())
	}
}

// Walls in one line go on without a change of plane: no soft joint, nothing hidden.
func TestWallsInOneLine(t *testing.T) {
	r := polygon(t, document.Stud, "board 1/2", [2]float64{0, 0}, [2]float64{40, 0}, [2]float64{100, 0}, [2]float64{100, -80}, [2]float64{0, -80})
	r.lay("white", "A-B", "B-C")
	got := r.solve()
	for _, e := range []Edge{got.face("A-B").Edges[labelRight-1], got.face("B-C").Edges[labelLeft-1]} {
		if e.Kind != FreeEdge || e.Soft || e.Gap != 0 || e.Hidden != 0 {
			t.Errorf("%+v", e)
		}
	}
}

// The floor under the wall tile, and the walls first. Floor finish 1/4 + 3/8, wall finish 9/16, joints 1/8 in.
func TestFloorUnderWalls(t *testing.T) {
	for _, c := range []struct {
		order                                           []string
		floorGap, floorHidden, wallGap, wallHidden, low string
	}{
		{nil, "1/8", "7/16", "3/4", "0", "-39-3/8"},
		{[]string{"A-B", "floor"}, "11/16", "0", "1/8", "1/2", "-40"},
	} {
		r := bay(t)
		r.Floor.Given, r.Floor.BuildUp = true, r.layers("bed 1/4, tile")
		r.lay("white", "floor", "A-B")
		r.order(c.order...)
		got := r.solve()
		floor, wall := got.face("floor").Edges[0], got.face("A-B").Edges[labelFloor-1]
		wantLength(t, "floor's gap", floor.Gap, c.floorGap)
		wantLength(t, "floor hidden", floor.Hidden, c.floorHidden)
		wantLength(t, "wall's gap", wall.Gap, c.wallGap)
		wantLength(t, "wall hidden", wall.Hidden, c.wallHidden)
		wantLength(t, "what the wall tile stands over", got.face("A-B").LowFloor, c.low)
	}
}

// A profile shows as much on both its faces: as wide as the thicker tile, 1/2 in, where nothing is written. Finishes 3/16 + 3/8 and 3/16 + 1/2 in.
func TestProfileOfTwoTiles(t *testing.T) {
	r := bay(t)
	r.tile("slate", "12 x 12 x 1/2", document.Stone)
	r.lay("white", "B-C")
	r.lay("slate", "C-D")
	got := r.solve()
	wantNear(t, "thin tile", got.face("B-C").Edges[labelRight-1].Gap, "-3/16") // 1/2 - 11/16
	wantNear(t, "thick tile", got.face("C-D").Edges[labelLeft-1].Gap, "-1/16") // 1/2 - 9/16
}

// A room where nothing is tiled needs no joints, beds or profiles, and none are assumed.
func TestNothingTiledNothingAssumed(t *testing.T) {
	r := bay(t)
	r.opening("window", "A-B", document.Window, "12 from A", "48 above floor", "20", "30")
	for _, a := range r.solve().assumed {
		for _, word := range []string{"joint", "bed", "profile", "first"} {
			if strings.Contains(a.Text, word) {
				t.Errorf("assumed: %s", a.Text)
			}
		}
	}
}
