package joinery

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/unit"
)

// studded is the room of foot_test with studs of 1-1/2 in, their middles where a row says, and trim along its back wall of 96 in.
func studded(t testing.TB, trim, stick string, middles ...string) (Plan, *room) {
	t.Helper()
	src := strings.NewReplacer("%back", "", "%left", "", "size: 120 x", "size: "+stick+" x").Replace(sloping) + "trim:\n  base: {kind: " + trim + ", along: [back], stock: base}\n"
	if len(middles) > 0 {
		src += "in the wall:\n"
	}
	for i, m := range middles {
		x := lengthOf(t, m)
		src += fmt.Sprintf("  stud %d: {in: back, kind: stud, across: %s to %s from A}\n", i+1, exact(x-3*unit.Inch/4), exact(x+3*unit.Inch/4))
	}
	return shop(t, src)
}

// A run of 96 of a stick of 60, 1/2 thick, is two pieces with a lap of 1/2: 96-1/2 in all, evenly 48-1/4 each, the lap's middle at 48. The first
// may be from 36-1/2 to 60 long, so the middle may lie from 36-1/4 to 59-3/4: over a stud at 40 the pieces are 40-1/4 and 56-1/4.
func TestScarfOnAStud(t *testing.T) {
	for _, c := range []struct {
		studs             []string
		pieces, on, codes string
	}{
		{nil, "48-1/4 48-1/4", "48", "scarf-stud"},
		{[]string{"40"}, "40-1/4 56-1/4", "40 stud 1", ""},
		{[]string{"40", "50"}, "50-1/4 46-1/4", "50 stud 2", ""},
		{[]string{"36-1/4"}, "36-1/2 60", "36-1/4 stud 1", ""},
		{[]string{"36-3/16", "60"}, "48-1/4 48-1/4", "48", "scarf-stud"},
	} {
		p, r := studded(t, "baseboard", "60", c.studs...)
		run := p.Trim[0].Runs[0]
		var got []string
		for _, l := range run.Pieces {
			got = append(got, exact(l.Long))
		}
		on := strings.TrimSpace(exact(run.Scarfs[0].X) + " " + run.Scarfs[0].On)
		if strings.Join(got, " ") != c.pieces || on != c.on || codes(r) != c.codes {
			t.Errorf("%v: %v on %q, %q", c.studs, got, on, codes(r))
		}
	}
}

// However studs stand: no piece is longer than its stick, and all together are the run and a lap for each joint.
func TestScarfsKeepTheStick(t *testing.T) {
	for _, stick := range []string{"20", "26-1/2", "33", "48-1/2", "60"} {
		for first := range 16 {
			var studs []string
			for x := 1 + first; x < 95; x += 16 {
				studs = append(studs, fmt.Sprint(x))
			}
			p, _ := studded(t, "baseboard", stick, studs...)
			run := p.Trim[0].Runs[0]
			sum := unit.Length(0)
			for _, l := range run.Pieces {
				sum += l.Long
				if l.Long+l.Part.Over.Length > lengthOf(t, stick) {
					t.Errorf("stick %s, studs from %d: a piece of %s", stick, first, exact(l.Long))
				}
			}
			if want := run.Length + unit.Length(len(run.Pieces)-1)*unit.Inch/2; sum != want {
				t.Errorf("stick %s, studs from %d: %s in all, want %s", stick, first, exact(sum), exact(want))
			}
		}
	}
}

// A ledger carries the first course: it wants two studs that are recorded.
func TestLedgerOnStuds(t *testing.T) {
	p, r := studded(t, "ledger", "120", "16", "32", "48")
	if got := p.Trim[0].Runs[0].Into; len(got) != 3 || got[1].X != 32*unit.Inch || codes(r) != "" {
		t.Error(got, codes(r))
	}
	if _, r := studded(t, "ledger", "120", "16"); codes(r) != "ledger-stud" {
		t.Error(codes(r))
	}
}

// Screws of what hangs: into what is recorded; where nothing is, that is said and nothing is passed.
func TestScrewsIntoWhatIsRecorded(t *testing.T) {
	for _, c := range []struct{ wall, want string }{
		{"", "screws-unrecorded"},
		{"in the wall: {stud: {in: back, kind: stud, across: 25-1/4 to 26-3/4 from A}}\n", ""},
		{"in the wall: {stud: {in: back, kind: stud, across: 40 to 41-1/2 from A}}\n", "screw-nowhere"},
		{"in the wall: {pipe: {in: back, kind: pipe, across: 40 to 41-1/2 from A}}\n", "screws-unrecorded"},
	} {
		src := strings.NewReplacer("%back", "", "%left", "").Replace(sloping) + "cabinets:\n  box: {in: back, across: 24 to 54 from A, stands: wall, bottom: 10, height: 34, depth: 12, stock: {panels: ply}, screws: {length: 3, diameter: 3/16, down: 2, from left: [2]}}\n" + c.wall
		if p, r := shop(t, src); codes(r) != c.want || c.want == "" && len(p.Cabinets[0].Hung) != 1 {
			t.Errorf("%q: %q, want %q", c.wall, codes(r), c.want)
		}
	}
}
