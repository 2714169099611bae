package site

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// The alcove is square and taped to its board, 1/2 in before the studs, whose corner A is at 0, 0; the room lies below
// it. So the board of the back is at y = -1/2, that of the left wall at x = 1/2 and that of the right one, 60 in on, at
// 60-1/2.
func TestOffFrom(t *testing.T) {
	got := alcove(t).solve()
	in := newRoom(t, "A", "").in
	for _, c := range []struct{ place, walls, want string }{
		{"12 -20", "left back", "left 11-1/2, back 19-1/2"},
		{"12 -20", "back left", "back 19-1/2, left 11-1/2"},
		{"12 -20", "right back", "right 48-1/2, back 19-1/2"},
		{"-2 -20", "right back", "right 62-1/2, back 19-1/2"},
		{"-2 -20", "left back", ""}, // behind the left wall
		{"12 1", "left back", ""},
		{"12 -20", "left right", ""}, // they never meet
		{"12 -20", "left left", ""},
		{"12 -20", "left door", ""},
		{"12 -20", "", "left 11-1/2, back 19-1/2"}, // as it was told before
		{"-2 -20", "", "back 19-1/2, right 62-1/2"},
		{"12 1", "", ""}, // the fourth wall is not in the document
	} {
		xy, walls := strings.Fields(c.place), strings.Fields(c.walls)
		p := geom.Point{X: in(xy[0]), Y: in(xy[1])}
		list, ok := got.OffTwo(p, "left") // the left wall first
		if len(walls) == 2 {
			list, ok = got.OffFrom(p, walls[0], walls[1])
		}
		if said := sayOff(list); said != c.want || ok != (c.want != "") {
			t.Errorf("%s off %q: %q, %v; want %q", c.place, c.walls, said, ok, c.want)
		}
	}
}

func sayOff(list []document.AtWall) string {
	var all []string
	for _, a := range list {
		all = append(all, fmt.Sprintf("%s %s", a.Wall, unit.Style{System: unit.Inches, Mark: unit.Inch / 16}.Bare(a.Value.V)))
	}
	return strings.Join(all, ", ")
}

// Out and back: the place told off two walls of rooms that are not square, whatever the tape touched, is the same place
// again. A distance is rounded to a count and a line is moved by a rounded vector: three roundings of half a count each,
// and the lines meet at 60 degrees or more, so 3 counts are more than ever is lost.
func TestOffFromRoundTrip(t *testing.T) {
	for _, to := range []document.Surface{document.Stud, document.Board, document.TileFace} {
		for _, tape := range []string{
			"A-B 72, B-C 96, C-D 72, D-A 96, A-C 120, B-D 120",
			"A-B 71-7/16, B-C 96-5/16, C-D 72-1/4, D-A 96-1/16, A-C 120-3/16, B-D 119-7/8",
			"A-B 90, B-C 80, C-D 60, D-A 90, A-C 120, B-D 110",
		} {
			r := newRoom(t, "A B C D", tape)
			r.Survey.Touches = val(to)
			for _, w := range []string{"A-B", "B-C", "C-D", "D-A"} {
				r.wall(w, w, "board 1/2, bed 3/16, tile")
			}
			r.tile("white", "12 x 6 x 3/8", document.Ceramic)
			r.level("A 40, B 40, C 40, D 40", "A 56, B 56, C 56, D 56")
			got := r.solve()
			in := r.in
			rapid.Check(t, func(t *rapid.T) {
				p := geom.Point{X: unit.Length(rapid.Int64Range(int64(in("-12")), int64(in("100"))).Draw(t, "x")),
					Y: -unit.Length(rapid.Int64Range(int64(in("-12")), int64(in("110"))).Draw(t, "y"))}
				list, ok := got.OffTwo(p)
				if !ok {
					t.Skip("behind all walls that would do")
				}
				back, ok := got.Off(list)
				if d := back.Sub(p); !ok || d.X.Abs() > 3 || d.Y.Abs() > 3 {
					t.Fatalf("%v off %s is %v", p, sayOff(list), back)
				}
			})
		}
	}
}
