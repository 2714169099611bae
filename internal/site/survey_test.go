package site

import (
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// rectangle60 is 60 x 80 in with diagonals of 100 in (3-4-5), to the studs, with 1/2 in board all round.
func rectangle60(t *testing.T, tape string) *room {
	r := newRoom(t, "A B C D", tape)
	r.level("A 40, B 40, C 40, D 40", "A 56, B 56, C 56, D 56")
	for name, along := range map[string]string{"back": "A-B"} {
		r.wall(name, along, "board 1/2")
	}
	r.wall("right", "B-C", "board 1/2")
	r.wall("front", "C-D", "board 1/2")
	r.wall("left", "D-A", "board 1/2")
	return r
}

const exact60 = "A-B 60, B-C 80, C-D 60, D-A 80, A-C 100, B-D 100"

// Worked by hand: 60 in between the studs less 1/2 in of board on both sides is 59 in. A later reading to the board of 58-7/8 in
// counts; it makes the studs 59-7/8 in apart, so that the older one is superseded by 1/8 in.
func TestStudsLessBoard(t *testing.T) {
	got := rectangle60(t, exact60).solve()
	wantLength(t, "back wall, board to board", got.face("back").shape.width, "59")

	r := newRoom(t, "A B C D", "A-B 60 2026-03-02, A-B 58-7/8 board 2026-03-09, B-C 80, C-D 60, D-A 80, A-C 100")
	got = r.withWalls("board 1/2").solve()
	older, newer := got.Survey.Readings[0], got.Survey.Readings[1]
	if older.Use != Superseded || newer.Use != Used {
		t.Errorf("uses %v and %v", older.Use, newer.Use)
	}
	// The side walls are then not quite square to the back wall, which moves the reduction by 0.001 in: compared at the tape's mark.
	wantLength(t, "newer, reduced to the studs", newer.ToStud.Round(unit.Sixteenth), "59-7/8")
	wantLength(t, "older is superseded by", older.Differs.Round(unit.Sixteenth), "-1/8")
	got.wantSaid("reading-superseded", "superseded by 1/8 in", "58-7/8 in counts")
	wantNear(t, "back wall", got.face("back").shape.width, "58-7/8")
}

// withWalls gives every side a wall of the same layers, and the level line.
func (r *room) withWalls(layers string) *room {
	r.level("A 40, B 40, C 40, D 40", "A 56, B 56, C 56, D 56")
	for i, name := range []string{"back", "right", "front", "left"} {
		c := r.Survey.Corners
		r.wall(name, c[i].Text+"-"+c[(i+1)%4].Text, layers)
	}
	return r
}

// near is what rounding to the grid can add up to over the few constructions of a face: 1/2000 mm.
const near = 8 * unit.Length(1)

func wantNear(t *testing.T, what string, got unit.Length, want string) {
	t.Helper()
	w, err := unit.Parse(want, unit.Inches)
	if err != nil {
		t.Fatal(err)
	}
	if (got - w).Abs() > near {
		t.Errorf("%s: got %s, want %s", what, unit.DefaultStyle(unit.Inches).Exact(got), want)
	}
}

// An older date stands before a newer one whichever is written first; without dates the later in the document is the newer.
func TestNewestCounts(t *testing.T) {
	for _, c := range []struct{ tape, used string }{
		{"A-B 60, B-A 61", "61"},
		{"A-B 60 2026-03-09, A-B 61 2026-03-02", "60"},
		{"A-B 60 2026-03-02, A-B 61 2026-03-09", "61"},
		{"A-B 60 2026-03-02, A-B 61", "61"},
		{"A-B 60, A-B 61, A-B 62", "62"},
		{"A-B 60 2026-03-09, A-B 61 2026-03-02, A-B 62 2026-03-10", "62"},
	} {
		r := newRoom(t, "A B C D", c.tape)
		var list []taped
		s := solver{doc: r.Room}
		list = s.readings()
		supersede(list)
		for _, l := range list {
			if (l.use == Used) != (l.Length == r.in(c.used)) {
				t.Errorf("%s: reading %s is %v", c.tape, unit.DefaultStyle(unit.Inches).Exact(l.Length), l.use)
			}
		}
	}
}

// Readings of one line at the plate and at the ceiling are two lines.
func TestHeightsAreDifferentLines(t *testing.T) {
	s := solver{doc: newRoom(t, "A B", "A-B 60, A-B 60-1/4 ceiling").Room}
	list := s.readings()
	supersede(list)
	if list[0].use != Used || list[1].use != Used {
		t.Error("both count")
	}
}

// Four sides and two diagonals have one reading more than needed. By the theory of one condition every standardised residual is then
// equal, so that nothing can be named. In a rectangle with sides a, b and diagonal d the condition is AC + BD = (a/d)(AB + CD) + (b/d)(BC + DA);
// with a/d = 0.6 and b/d = 0.8 an error e in a diagonal shows as e/4 in the diagonals, 0.15e and 0.2e in the sides: 0.109, 0.066
// and 0.088 in for 7/16 in.
func TestOneRedundancyCannotTell(t *testing.T) {
	r := newRoom(t, "A B C D", "A-B 60, B-C 80, C-D 60, D-A 80, A-C 100-7/16, B-D 100").withWalls("board 1/2")
	got := r.solve()
	if got.Survey.Verdict != CannotTell || got.Survey.Freedom != 1 || len(got.Survey.Suspects) != 6 {
		t.Fatalf("verdict %v, freedom %d, suspects %v", got.Survey.Verdict, got.Survey.Freedom, got.Survey.Suspects)
	}
	got.wantSaid("readings-disagree", "disagree by 7/16 in", "cannot tell which", "take A-C and B-D again")
	for i, want := range []float64{0.066, 0.0875, 0.066, 0.0875, 0.109, 0.109} {
		rd := got.Survey.Readings[i]
		if v := rd.Residual.In(); v < want-0.003 && v > -want+0.003 || v > want+0.003 || v < -want-0.003 {
			t.Errorf("%s: residual %.4f in, want %.4f", rd.Name, v, want)
		}
		if diff := abs(rd.Standard) - abs(got.Survey.Readings[0].Standard); diff < -10 || diff > 10 {
			t.Errorf("%s: standardised residual %d, want that of A-B, %d", rd.Name, rd.Standard, got.Survey.Readings[0].Standard)
		}
	}
	if c := got.Survey.Closing.In(); c < 0.43 || c > 0.445 {
		t.Errorf("closing error %.4f in, want 7/16", c)
	}
}

func abs(v int64) int64 {
	if v < 0 {
		return -v
	}
	return v
}

// A second, correct A-C supersedes the wrong one, and names it.
func TestSecondDiagonalNamesTheWrongOne(t *testing.T) {
	got := newRoom(t, "A B C D", "A-B 60, B-C 80, C-D 60, D-A 80, A-C 100-7/16, B-D 100, A-C 100").withWalls("board 1/2").solve()
	if got.Survey.Verdict != Agree {
		t.Errorf("verdict %v", got.Survey.Verdict)
	}
	got.wantSaid("reading-superseded", "A-C: 100-7/16 in is superseded by 7/16 in")
	got.wantSaid("readings-agree", "agree with each other")
	if strings.Contains(got.said(), "true room") {
		t.Error("readings that agree are called that, and not a true room")
	}
}

// A point in the middle of the floor, 50 in from every corner, names the wrong diagonal.
func TestFloorPointNamesTheWrongOne(t *testing.T) {
	r := newRoom(t, "A B C D", "A-B 60, B-C 80, C-D 60, D-A 80, A-C 100-7/16, B-D 100, P-A 50, P-B 50, P-C 50, P-D 50")
	r.Survey.Points = []document.Name{{Text: "P"}}
	got := r.withWalls("board 1/2").solve()
	if got.Survey.Verdict != OneSuspect || got.Survey.Readings[got.Survey.Suspects[0]].Name != "A-C" {
		t.Fatalf("verdict %v, suspects %v", got.Survey.Verdict, got.Survey.Suspects)
	}
	got.wantSaid("reading-suspect", "disagree by 7/16 in", "A-C is the likeliest to be wrong")
}

// Set C of the trade's numbers: 2400, 1802, 2397, 1799, diagonals 3000, 2999 mm; corrections in mm computed from the condition by hand.
func TestCorrectionsOfSetC(t *testing.T) {
	got := newRoom(t, "A B C D", "A-B 2400mm, B-C 1802mm, C-D 2397mm, D-A 1799mm, A-C 3000mm, B-D 2999mm").withWalls("").solve()
	for i, want := range []float64{0.16, 0.12, 0.16, 0.12, -0.20, -0.20} {
		if v := got.Survey.Readings[i].Residual.MM(); v < want-0.006 || v > want+0.006 {
			t.Errorf("%s: correction %.3f mm, want %.2f", got.Survey.Readings[i].Name, v, want)
		}
	}
}

func TestSurveyWrong(t *testing.T) {
	for _, c := range []struct{ what, corners, tape, code, says string }{
		{"no diagonal", "A B C D", "A-B 60, B-C 80, C-D 60, D-A 80", "readings-too-few", "1 more needed"},
		{"just enough", "A B C D", "A-B 60, B-C 80, C-D 60, D-A 80, A-C 100", "readings-unchecked", "nothing checks them"},
		{"two corners", "A B", "A-B 60", "corners-too-few", "2 are named"},
		{"longer than the way round", "A B C D", "A-B 60, B-C 80, C-D 60, D-A 80, A-C 160, B-D 100", "readings-contradict", "A-C is longer than the way round by"},
		{"the same in a triangle", "A B C", "A-B 60, B-C 80, A-C 160", "readings-contradict", "A-C is longer"},
		{"a triangle without height", "A B C", "A-B 60, B-C 80, A-C 140", "readings-in-line", "in one line"},
		{"corners in a wrong order", "A B C D", "A-B 100, B-C 80, C-D 100, D-A 80, A-C 60, B-D 60", "outline-crosses", "cross"},
	} {
		got := newRoom(t, c.corners, c.tape).withLevels().solve()
		got.wantSaid(c.code, c.says)
		if c.code != "readings-unchecked" && len(got.Faces) != 0 {
			t.Errorf("%s: faces on a shape that is not known", c.what)
		}
	}
	// Either diagonal of four sides fixes the shape.
	got := newRoom(t, "A B C D", "A-B 60, B-C 80, C-D 60, D-A 80").withLevels().solve()
	if said := got.said(); !strings.Contains(said, "| take A-C\n") && !strings.Contains(said, "| take B-D\n") {
		t.Errorf("the reading to take is not named: %s", said)
	}
}

// A diagonal that is written and can not be read is to be put right, not taken again; a second one that is needed besides is asked for.
func TestUnreadReadingIsNotAskedFor(t *testing.T) {
	r := newRoom(t, "A B C D", "A-B 60, B-C 80, C-D 60, D-A 80").withLevels()
	r.Survey.Unread = []document.Name{{Text: "D-B"}}
	got := r.solve()
	got.wantSaid("readings-too-few", "1 more needed, and what is written for D-B can not be read | put right what is written for D-B")
	if words := got.said(); strings.Contains(words, "take A-C") || strings.Contains(words, "take B-D") {
		t.Error(words)
	}
	r = newRoom(t, "A B C D", "A-B 60, B-C 80, C-D 60").withLevels()
	r.Survey.Unread = []document.Name{{Text: "D-B"}}
	r.solve().wantSaid("readings-too-few", "2 more needed", "put right what is written for D-B, and take ")
	r = newRoom(t, "A B C D", exact60).withLevels()
	r.Survey.Unread = []document.Name{{Text: "A-B"}}
	r.solve().wantNot("readings-too-few")
}

// Of a document in which nothing is written nothing is said or assumed here.
func TestNothingWritten(t *testing.T) {
	if _, list, assumed := Solve(document.Room{}); len(list) > 0 || len(assumed) > 0 {
		t.Errorf("said of nothing: %+v %+v", list, assumed)
	}
}

// In a metric room a default of 1/8 in is told to a tenth of a millimetre, not to the last digit.
func TestDefaultsReadWellInMillimetres(t *testing.T) {
	r := alcove(t)
	r.Units = unit.Millimetres
	r.lay("white", "back")
	r.opening("window", "back", document.Window, "10 from A", "48 above floor", "20", "30")
	for _, a := range r.solve().assumed {
		for _, v := range a.Values {
			if words := v.Say(unit.DefaultStyle(unit.Millimetres)); strings.HasSuffix(words, " mm") && len(words[strings.IndexByte(words+".", '.'):]) > len(".1 mm") && strings.Contains(words, ".") {
				t.Errorf("%s: %s", a.Say(unit.DefaultStyle(unit.Millimetres)), words)
			}
		}
	}
}

func (r *room) withLevels() *room {
	r.level("A 40, B 40, C 40, D 40", "A 56, B 56, C 56, D 56")
	return r
}

// Readings that name nothing, or no length, are left out and do not stop the rest.
func TestUselessReadings(t *testing.T) {
	got := newRoom(t, "A B C D", exact60+", A-X 12, A-A 3, B-D 0").withWalls("").solve()
	if got.Survey.Verdict != Agree || got.Survey.Freedom != 1 {
		t.Errorf("verdict %v, freedom %d", got.Survey.Verdict, got.Survey.Freedom)
	}
}

// A line read at the plate and, 1/4 in wider, at the ceiling, with no lean read: the outline is the plate's, and the wall is 1/4 in wider at
// the top, half of it on each side for want of anything better.
func TestPlateAndCeiling(t *testing.T) {
	got := rectangle60(t, exact60+", A-B 60-1/4 ceiling").solve()
	if n := len(got.Survey.Readings); n != 7 || got.Survey.Readings[6].Use != Unused || got.Survey.Verdict != Agree {
		t.Fatalf("readings %+v, verdict %v", got.Survey.Readings, got.Survey.Verdict)
	}
	f := got.face("back")
	bottom, top := side(f, labelRight)
	otherBottom, otherTop := side(f, labelLeft)
	for _, c := range []struct {
		what string
		got  unit.Length
		want float64
	}{{"at the plate", bottom.X - otherBottom.X, 59}, {"at the ceiling", top.X - otherTop.X, 59.25}, {"right side", top.X - bottom.X, 0.125}, {"left side", otherTop.X - otherBottom.X, -0.125}} {
		if d := c.got.In() - c.want; d > 0.002 || d < -0.002 {
			t.Errorf("%s: %.4f in, want %.4f", c.what, c.got.In(), c.want)
		}
	}
}

// Where both leans are read the ceiling's reading is one more of the outline: 1/4 + 1/8 in less than at the plate.
func TestCeilingReadingReduced(t *testing.T) {
	r := rectangle60(t, exact60+", A-B 59-5/8 ceiling")
	r.Walls[1].Lean, r.Walls[3].Lean = r.at("B 1/4, C 1/4"), r.at("D 1/8, A 1/8")
	got := r.solve()
	if got.Survey.Readings[6].Use != Used || got.Survey.Freedom != 2 || got.Survey.Verdict != Agree {
		t.Errorf("readings %+v", got.Survey.Readings[6])
	}
	wantNear(t, "reduced to the plate", got.Survey.Readings[6].ToStud, "60")
}

// A wall's own width at the bottom is a reading of its side where the survey has none.
func TestWidthCountsAsReading(t *testing.T) {
	r := newRoom(t, "A B C D", "B-C 80, C-D 60, D-A 80, A-C 100, B-D 100").withWalls("board 1/2")
	r.Walls[0].WidthBottom = val(r.in("59"))
	r.Walls[0].WidthTo = val(document.Board)
	got := r.solve()
	if n := len(got.Survey.Readings); n != 6 || got.Survey.Verdict != Agree || got.Survey.Freedom != 1 {
		t.Fatalf("%d readings, verdict %v, freedom %d; %s", n, got.Survey.Verdict, got.Survey.Freedom, got.said())
	}
	wantNear(t, "to the studs", got.Survey.Readings[5].ToStud, "60")

	r = newRoom(t, "A B C D", exact60).withWalls("board 1/2") // the survey has it: then it is one more reading of the wall alone
	r.Walls[0].WidthBottom, r.Walls[0].WidthTo = val(r.in("59")), val(document.Board)
	if n := len(r.solve().Survey.Readings); n != 6 {
		t.Errorf("%d readings", n)
	}
}

// The accuracy that is written decides what disagrees: 1/8 in in a diagonal is nothing to a tape of 1/8 in and much to one of 1/64 in.
func TestAccuracyDecides(t *testing.T) {
	for accuracy, want := range map[string]Verdict{"1/8": Agree, "1/64": CannotTell} {
		r := newRoom(t, "A B C D", "A-B 60, B-C 80, C-D 60, D-A 80, A-C 100-1/8, B-D 100").withWalls("board 1/2")
		r.Survey.Accuracy = val(r.in(accuracy))
		if got := r.solve().Survey.Verdict; got != want {
			t.Errorf("accuracy %s: verdict %v, want %v", accuracy, got, want)
		}
	}
}

// A floor point that is taped to two opposite corners only may lie on either side of the diagonal.
func TestMirroredPoint(t *testing.T) {
	r := newRoom(t, "A B C D", exact60+", P-A 40, P-C 70")
	r.Survey.Points = []document.Name{{Text: "P"}}
	r.withLevels().solve().wantSaid("outline-mirrors", "P on the other side")
}

// A floor point with one reading says nothing of itself and stops nobody; the other point stays.
func TestLoosePoint(t *testing.T) {
	r := newRoom(t, "A B C D", exact60+", P-A 40, Q-A 50, Q-B 50, Q-C 50")
	r.Survey.Points = []document.Name{{Text: "P", At: diag.Place{Path: "survey > points > P"}}, {Text: "Q"}}
	got := r.withWalls("board 1/2").solve()
	got.wantSaid("point-loose", "where P is on the floor is not fixed")
	if got.Survey.Verdict != Agree || len(got.Survey.Points) != 1 || got.Survey.Points[0].Name != "Q" {
		t.Errorf("verdict %v, points %v", got.Survey.Verdict, got.Survey.Points)
	}
	if rd := got.Survey.Readings[6]; rd.Use != Unused || rd.By != "too few readings to P" {
		t.Errorf("reading %+v", rd)
	}
	wantNear(t, "back", got.face("back").shape.width, "59")
}
