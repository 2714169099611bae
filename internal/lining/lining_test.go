package lining

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/demo"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

var inches = limits{gap: unit.Inch / 8, off: 6 * unit.Inch, stagger: unit.Foot, least: 4 * unit.Inch, step: unit.Inch}

func told(parts [][2]unit.Length) string {
	s := unit.DefaultStyle(unit.Inches)
	var out []string
	for _, p := range parts {
		out = append(out, s.Bare(p[0])+" to "+s.Bare(p[1]))
	}
	return strings.Join(out, ", ")
}

// Each line was worked out by hand: joints are 1/8 wide, a sheet 60 long, a face 100.
func TestDivide(t *testing.T) {
	for _, c := range []struct {
		why     string
		studs   []unit.Length
		corners []unit.Length
		before  []unit.Length
		want    string
		faults  int
	}{
		{"a full sheet first", nil, nil, nil, "0 to 60, 60-1/8 to 100", 0},
		{"6 off a corner at 60", nil, []unit.Length{60}, nil, "0 to 53-15/16, 54-1/16 to 100", 0},
		{"on the last stud within reach", []unit.Length{16, 32, 48, 64, 80}, nil, nil, "0 to 47-15/16, 48-1/16 to 100", 0},
		{"a foot off the joint below, on a stud", []unit.Length{16, 32, 48, 64, 80}, nil, []unit.Length{48}, "0 to 31-15/16, 32-1/16 to 79-15/16, 80-1/16 to 100", 0},
		{"a corner at every stud that serves", []unit.Length{48, 64}, []unit.Length{48, 64}, nil, "0 to 47-15/16, 48-1/16 to 100", 1},
		{"studs too far apart", []unit.Length{4}, nil, nil, "0 to 60, 60-1/8 to 100", 1},
	} {
		x := cover{limits: inches, box: geom.Rect{Max: geom.Point{X: 100 * unit.Inch, Y: 36 * unit.Inch}}}
		for _, s := range c.studs {
			x.studs = append(x.studs, s*unit.Inch)
		}
		for _, k := range c.corners {
			x.corners = append(x.corners, geom.Point{X: k * unit.Inch, Y: 20 * unit.Inch})
		}
		var before []unit.Length
		for _, b := range c.before {
			before = append(before, b*unit.Inch)
		}
		bad := func(u unit.Length) int {
			return x.near(u, func(p geom.Point) unit.Length { return p.X }, x.box, before)
		}
		parts, faults := x.divide(0, 100*unit.Inch, 60*unit.Inch, x.marks(0, 100*unit.Inch, 60*unit.Inch, true), bad)
		if got := told(parts); got != c.want || faults != c.faults {
			t.Errorf("%s: got %s with %d faults, want %s with %d", c.why, got, faults, c.want, c.faults)
		}
	}
}

// The choice of joints against trying every set of marks.
func TestDivideTriesAll(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		c := cover{limits: limits{gap: 2, least: 6}}
		to := unit.Length(rapid.IntRange(10, 60).Draw(r, "to"))
		most := unit.Length(rapid.IntRange(5, 40).Draw(r, "most"))
		var marks []unit.Length
		for at := unit.Length(3); at < to-2; at += unit.Length(rapid.IntRange(2, 12).Draw(r, "gap")) {
			marks = append(marks, at)
		}
		marks = marks[:min(len(marks), 9)]
		cost := map[unit.Length]int{}
		for _, m := range marks {
			cost[m] = rapid.IntRange(0, 2).Draw(r, "cost")
		}
		best := state{}
		for set := range 1 << len(marks) {
			at, s := []unit.Length{0}, state{ok: true}
			for i, m := range marks {
				if set>>i&1 == 1 {
					at = append(at, m)
					s.faults += cost[m]
				}
			}
			at = append(at, to)
			for i := 1; i < len(at); i++ {
				p := c.between(at, i-1, i)
				s.ok = s.ok && p[1]-p[0] <= most && p[1] > p[0]
				s.parts++
				if p[1]-p[0] < c.least {
					s.faults++
				}
			}
			if s.better(best) {
				best = s
			}
		}
		parts, faults := c.divide(0, to, most, marks, func(u unit.Length) int { return cost[u] })
		if best.ok && (faults != best.faults || len(parts) != best.parts) {
			r.Fatalf("%d faults, %d parts; by trying all %d, %d", faults, len(parts), best.faults, best.parts)
		}
	})
}

// On the built-in rooms: every sheet is no larger than what is sold, none overlap, what is left bare is the joints, and every part
// can be made.
func TestDemoFaces(t *testing.T) {
	covered := 0
	for _, r := range demo.Rooms() {
		doc, _ := document.Read(r.File, r.Text)
		room, _, _ := site.Solve(doc)
		p, found, _ := Make(doc, room)
		if found.Stops() {
			t.Error(found)
		}
		for _, f := range p.Faces {
			covered++
			face, _ := room.Face(f.Name)
			if err := lies(doc, face, f); err != nil {
				t.Errorf("%s: %v", f.Name, err)
			}
		}
	}
	if covered < 3 {
		t.Errorf("only %d faces are covered", covered)
	}
}

func lies(doc document.Room, face site.Face, f Face) error {
	s, _ := doc.StockNamed(f.Stock)
	var sum unit.Area
	for i, x := range f.Sheets {
		sum += x.Region.Area()
		if bad := x.Part.Check(); len(bad) > 0 {
			return fmt.Errorf("%s: %v", x.Name, bad)
		}
		if x.Part.Size.Length > s.Length.V || x.Part.Size.Width > s.Width.V {
			return fmt.Errorf("%s is larger than a sheet", x.Name)
		}
		for _, y := range f.Sheets[:i] {
			if x.Rect.Overlaps(y.Rect) && x.Name[:3] != y.Name[:3] {
				return fmt.Errorf("%s and %s overlap", x.Name, y.Name)
			}
		}
	}
	bare := face.Board.Area() - sum
	if bare < 0 || bare > face.Board.Area()/20 {
		return fmt.Errorf("%v sq ft are bare of %v", bare.SqFt(), face.Board.Area().SqFt())
	}
	return nil
}
