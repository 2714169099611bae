package site

import (
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// side returns the ends of a wall's side on its board, bottom and top.
func side(f Face, l geom.Label) (bottom, top geom.Point) {
	for i, v := range f.Board[0] {
		if v.Edge != l {
			continue
		}
		a, b := v.P, f.Board[0][(i+1)%len(f.Board[0])].P
		if a.Y > b.Y {
			a, b = b, a
		}
		return a, b
	}
	return
}

// The right wall leans 1/4 in into the room all along, over 96 in: it takes 1/4 in from the top of the back wall, nothing at the floor, and by
// similar triangles 40/96 of it at the level line.
func TestNeighborLeansOver(t *testing.T) {
	r := rectangle60(t, exact60)
	r.Walls[1].Lean = r.at("B 1/4, C 1/4")
	f := r.solve().face("back")
	bottom, top := side(f, labelRight)
	wantNear(t, "side at the floor", bottom.X, "59")
	wantNear(t, "side at the ceiling", top.X, "58-3/4")
	wantNear(t, "at the level line", f.shape.width+r.in("1/4")*40/96, "59")
	if b, u := side(f, labelLeft); b.X != 0 || u.X != 0 {
		t.Errorf("the left side is plumb: %v %v", b, u)
	}
}

// The left wall leans: x counts from the side at the level line, so that the bottom is left of it and the top right.
func TestLeftNeighborLeansOver(t *testing.T) {
	r := rectangle60(t, exact60)
	r.Walls[3].Lean = r.at("A 3/8, D 3/8") // 3/8 in over 96 in: 5/32 in below the level line, 7/32 above
	bottom, top := side(r.solve().face("back"), labelLeft)
	wantNear(t, "side at the floor", bottom.X, "-5/32")
	wantNear(t, "side at the ceiling", top.X, "7/32")
}

// A wall's own lean changes nothing on it where its neighbors are plumb and square to it.
func TestOwnLean(t *testing.T) {
	r := rectangle60(t, exact60)
	plumb := r.solve().face("back")
	r.Walls[0].Lean = r.at("A 1/4, B 1/2")
	leaning := r.solve().face("back")
	for i, v := range plumb.Board[0] {
		if d := leaning.Board[0][i].P.Sub(v.P); d.X.Abs() > near || d.Y.Abs() > near {
			t.Errorf("corner %d moved by %v", i, d)
		}
	}
}

// A width taped at the level line between walls that lean 3/8 in over 96 in, 40 in up, is 5/32 in less than at the floor.
func TestTapedAtTheLevelLine(t *testing.T) {
	r := rectangle60(t, "A-B 59-27/32 level, C-D 60, B-C 80, D-A 80, A-C 100, B-D 100")
	r.Walls[1].Lean = r.at("B 3/8")
	got := r.solve()
	wantNear(t, "reduced to the plate", got.Survey.Readings[0].ToStud, "60")
	if got.Survey.Verdict != Agree {
		t.Errorf("verdict %v", got.Survey.Verdict)
	}
}

// The floor falls 1/4 in to the right, a 12 in course, a joint of 1/8 in under it: the ledger stands 12-1/8 in over the floor at its low end
// and the bottom cuts taper from 12 to 11-3/4 in.
func TestFloorFallsAlongTheWall(t *testing.T) {
	r := rectangle60(t, exact60)
	r.level("A 40, B 40-1/4, C 40-1/4, D 40", "A 56, B 56, C 56, D 56")
	r.tile("white", "24 x 12 x 3/8", document.Ceramic)
	r.lay("white", "back")
	r.Setting.FloorJoint = val(r.in("1/8"))
	got := r.solve()
	f := got.face("back")
	wantLength(t, "low end of the floor", f.LowFloor, "-40-1/4")
	wantLength(t, "high end", f.HighFloor, "-40")
	joint := f.Edges[labelFloor-1].Gap
	ledger := f.LowFloor + joint + r.in("12")
	wantLength(t, "ledger over the low end", ledger-f.LowFloor, "12-1/8")
	wantLength(t, "bottom cut at the low end", ledger-f.LowFloor-joint, "12")
	wantLength(t, "bottom cut at the high end", ledger-f.HighFloor-joint, "11-3/4")
	bottom := f.Cut[0]
	for i, v := range bottom { // the region's own bottom edge falls as much
		if v.Edge == labelFloor {
			a, b := v.P, bottom[(i+1)%len(bottom)].P
			if fall := (a.Y - b.Y) - r.in("1/4").MulDiv(int64(b.X-a.X), int64(r.in("59"))); fall.Abs() > near {
				t.Errorf("bottom edge falls %d counts too much", fall)
			}
		}
	}
	if got.FinishedRule != "the highest point of the finished floor, at corner A" || got.FinishedFloor != r.in("-40") {
		t.Errorf("above finished floor counts from %v, %s", got.FinishedFloor, got.FinishedRule)
	}
}

// Above finished floor by each rule: bare floor plus 1/4 in of membrane, 3/16 of bed and 3/8 of tile.
func TestFinishedFloorRules(t *testing.T) {
	for _, c := range []struct {
		rule document.Finished
		want string
	}{
		{document.Finished{}, "-39-3/16"}, // the highest: 40 in at A, less 13/16
		{document.Finished{Rule: document.AtNamedCorner, Corner: "B"}, "-39-7/16"},
		{document.Finished{Rule: document.BelowLevel, Below: 38 * unit.Inch}, "-38"},
	} {
		r := rectangle60(t, exact60)
		r.level("A 40, B 40-1/4, C 40-1/4, D 40", "A 56, B 56, C 56, D 56")
		r.tile("slate", "24 x 12 x 3/8", document.Stone)
		r.lay("slate", "floor")
		r.Floor.Given, r.Floor.BuildUp = true, r.layers("membrane 1/4, bed 3/16, tile")
		r.Survey.Finished = c.rule
		wantLength(t, "finished floor", r.solve().FinishedFloor, c.want)
	}
}

// The highest point counts where it was read along a wall as well.
func TestHighestFloorAlongAWall(t *testing.T) {
	r := rectangle60(t, exact60)
	r.Walls[0].FloorLine = r.stations("30 39-3/4")
	got := r.solve()
	wantLength(t, "finished floor", got.FinishedFloor, "-39-3/4")
	f := got.face("back")
	wantLength(t, "the hump, from the board's corner", f.Bare[1].X, "29-1/2")
	wantLength(t, "high", f.HighFloor, "-39-3/4")
	wantLength(t, "low", f.LowFloor, "-40")
}

// A ceiling that slopes and breaks: 56 in over the level line to 30 in along, then down to 40 at B. By trapezoids the board is
// 59 x 40 + 29.5 x 56 + 29.5 x (56 + 40)/2 in² (the station counts from the stud, 1/2 in left of the board).
func TestBrokenCeiling(t *testing.T) {
	r := rectangle60(t, exact60)
	r.level("A 40, B 40, C 40, D 40", "A 56, B 40, C 40, D 56")
	r.Walls[0].CeilingLine = r.stations("30 56")
	f := r.solve().face("back")
	if len(f.Board[0]) != 5 {
		t.Errorf("corners %v", f.Board[0])
	}
	want := r.in("59").Times(r.in("40")) + r.in("29-1/2").Times(r.in("56")) + r.in("29-1/2").Times(r.in("48"))
	if d := f.Board.Area() - want; d > 1e9 || d < -1e9 { // counts²: 4 mm²
		t.Errorf("area %.4f sq ft, want %.4f", f.Board.Area().SqFt(), want.SqFt())
	}
}

func TestLevelsMissing(t *testing.T) {
	r := rectangle60(t, exact60)
	r.level("A 40", "")
	got := r.solve()
	got.wantSaid("ceiling-unknown", "back", "corner A", "level line > up")
	got.wantSaid("floor-unknown", "right", "corner B", "level line > down")

	r.level("A 40, C 40", "A 56, C 56")
	got = r.solve()
	got.wantSaid("level-unread", "corner B", "back")
	got.face("back")
}

// A wall's height gives what the level line does not.
func TestHeightGivesTheCeiling(t *testing.T) {
	r := rectangle60(t, exact60)
	r.level("A 40, B 40, C 40, D 40", "C 56, D 56")
	r.Walls[0].Heights = r.at("A 96, B 96-1/2")
	f := r.solve().face("back")
	_, left := side(f, labelLeft)
	_, right := side(f, labelRight)
	wantNear(t, "ceiling at A", left.Y, "56")
	wantNear(t, "ceiling at B", right.Y, "56-1/2")
}

// A station at the very corner that is not what was read there is said; the corner's reading counts.
func TestLevelsDisagree(t *testing.T) {
	r := rectangle60(t, exact60)
	r.Walls[0].FloorLine = r.stations("0 40-1/2, 30 40")
	r.Walls[0].FloorLine[0].At = diag.Place{Path: "walls > back > floor > 0", Line: 31}
	got := r.solve()
	got.wantSaid("levels-disagree", "40-1/2 in along back is 1/2 in off")
	wantLength(t, "left end", got.face("back").Bare[0].Y, "-40")
}

// A window taped 12 in from a corner that has come 1/4 in x 48/96 farther in at the window's middle, 48 in over the floor, than at the floor. The level line is at
// 40 in, where x = 0 is: the window stands 1/4 x 8/96 in farther along than 12 in.
func TestPlaceFromALeaningCorner(t *testing.T) {
	r := rectangle60(t, exact60)
	r.Survey.Touches = val(document.Stud)
	r.Walls[3].Lean = r.at("A 3/4, D 3/4") // 3/4 x 8/96 = 1/16 in
	o := r.opening("window", "back", document.Window, "12-1/2 from A", "center 48 above floor", "10", "20")
	o.Across.Touches = val(document.Stud)
	r.stub("supply", "back", "12-1/2 from A", "16 above floor", "1") // 24 in below the level line: 3/16 in the other way
	f := r.solve().face("back")
	wantNear(t, "window", f.Openings[0].Rect.Min.X, "12-1/16")
	wantNear(t, "supply", f.Holes[0].Center.X, "11-13/16")
}

// Nothing is read at B: the wall is taken level to there, and the neighbor's lean is over the height at A.
func TestLeanWhereNoLevelIsRead(t *testing.T) {
	r := rectangle60(t, exact60)
	r.Walls[1].Lean = r.at("B 1/4, C 1/4")
	r.level("A 40, C 40, D 40", "A 56, C 56, D 56")
	bottom, top := side(r.solve().face("back"), labelRight)
	wantNear(t, "side at the floor", bottom.X, "59")
	wantNear(t, "side at the ceiling", top.X, "58-3/4")
}

// The ceiling is read along the wall only, 58 in over the level line: leans are over 40 + 58 in. The side has come 1/2 in over; at the level line 40/98 of it.
func TestLeanUnderACeilingReadAlong(t *testing.T) {
	r := rectangle60(t, exact60)
	r.Walls[1].Lean = r.at("B 1/2, C 1/2")
	r.level("A 40, B 40, C 40, D 40", "C 56, D 56")
	r.Walls[0].CeilingLine = r.stations("10 58, 50 58")
	f := r.solve().face("back")
	bottom, top := side(f, labelRight)
	wantNear(t, "side at the floor", bottom.X, "59")
	wantNear(t, "side at the ceiling", top.X, "58-1/2")
	wantLength(t, "ceiling", top.Y, "58")
}
