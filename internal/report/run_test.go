package report

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"

	"pgregory.net/rapid"
)

// field makes a field of rectangles: "course-column x0 y0 x1 y1", in millimetres.
func field(t testing.TB, rows ...string) tiling.Field {
	t.Helper()
	var l tiling.Layout
	for _, r := range rows {
		var course, column int
		var x0, y0, x1, y1 unit.Length
		if _, err := fmt.Sscanf(r, "%d-%d %d %d %d %d", &course, &column, &x0, &y0, &x1, &y1); err != nil {
			t.Fatalf("%q: %v", r, err)
		}
		box := geom.Rect{Min: geom.Point{X: x0 * mm, Y: y0 * mm}, Max: geom.Point{X: x1 * mm, Y: y1 * mm}}
		l.Pieces = append(l.Pieces, piece.Piece{Address: strings.Fields(r)[0], Course: course, Column: column, Whole: true,
			OnFace: geom.Region{geom.RectRing(box, -1, -2, -3, -4)}})
	}
	return tiling.Field{Name: "main", Layouts: []tiling.Layout{l}}
}

func say(list []Span) string {
	var out []string
	for _, s := range list {
		out = append(out, fmt.Sprintf("%s:%s-%s", s.Name, metric.Bare(s.Lo), metric.Bare(s.Hi)))
	}
	return strings.Join(out, " ")
}

// Worked by hand: tiles of 300 by 100 and joints of 3.
func TestCoursesAndColumns(t *testing.T) {
	stack := field(t, "1-1 0 0 300 100", "1-2 303 0 603 100", "2-1 0 103 300 203", "2-2 303 103 603 203")
	half := field(t, "1-1 0 0 300 100", "1-2 303 0 603 100", "2-1 0 103 148 203", "2-2 151 103 451 203", "2-3 454 103 603 203")
	upright := field(t, "1-1 0 0 100 300", "1-2 103 150 203 450", "2-1 0 303 100 603", "2-2 103 0 203 147")
	parquet := field(t, "1-1 0 0 300 100", "1-2 303 0 403 300", "2-1 0 103 100 403", "2-2 103 303 403 403")
	gapped := field(t, "1-1 0 0 300 100", "3-1 0 206 300 306") // an opening takes the course between
	for _, c := range []struct {
		name    string
		z       tiling.Field
		courses string
		columns []string
	}{
		{"stack", stack, "1:0-100 2:103-203", []string{"columns of every course 1:0-300 2:303-603"}},
		{"running", half, "1:0-100 2:103-203", []string{"columns of course 1 1:0-300 2:303-603", "columns of course 2 1:0-148 2:151-451 3:454-603"}},
		{"vertical running", upright, "", []string{"columns 1:0-100 2:103-203"}},
		{"parquet", parquet, "", nil},
		{"course left out", gapped, "1:0-100 3:206-306", []string{"columns of every course 1:0-300"}},
	} {
		if got := say(Courses(c.z)); got != c.courses {
			t.Errorf("%s: courses %q, want %q", c.name, got, c.courses)
		}
		var got []string
		for _, r := range Columns(c.z) {
			got = append(got, r.Which+" "+say(r.Spans))
		}
		if !slices.Equal(got, c.columns) {
			t.Errorf("%s: columns %q, want %q", c.name, got, c.columns)
		}
	}
	turned := stack
	turned.Angle = 45 * unit.Degree
	if Courses(turned) != nil || Columns(turned) != nil {
		t.Error("a turned pattern has no courses along the face")
	}
}

// A printed chain adds up: the first position and all differences make the last position, as printed.
func TestRodsAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		style := rapid.SampledFrom([]unit.Style{inches, metric}).Draw(t, "style")
		pitch := unit.Length(rapid.Int64Range(int64(20*mm), int64(700*mm)).Draw(t, "pitch"))
		y := unit.Length(rapid.Int64Range(int64(-2000*mm), 0).Draw(t, "first"))
		var l tiling.Layout
		for i := range rapid.IntRange(1, 30).Draw(t, "courses") {
			box := geom.Rect{Min: geom.Point{X: 0, Y: y}, Max: geom.Point{X: 300 * mm, Y: y + pitch - 3*mm}}
			l.Pieces = append(l.Pieces, piece.Piece{Course: i + 1, Address: fmt.Sprint(i+1, "-1"), OnFace: geom.Region{geom.RectRing(box, -1, -2, -3, -4)}})
			y += pitch
		}
		rod := CourseRod(plan.Plan{Style: style}, site.Face{Kind: site.WallFace}, tiling.Field{Layouts: []tiling.Layout{l}})
		rows := slices.Clone(rod.Rows)
		slices.Reverse(rows)
		at := read(t, rows[0][2], style)
		for _, r := range rows[1:] {
			at += read(t, r[3], style)
			if got := read(t, r[2], style); got != at {
				t.Fatalf("course %s: differences make %s, printed is %s", r[0], style.Bare(at), r[2])
			}
		}
		last := l.Pieces[len(l.Pieces)-1].OnFace.Bounds().Max.Y
		if off := (at - last).Abs(); 2*off > style.Mark {
			t.Fatalf("the last course is %v off", off.MM())
		}
	})
}

func read(t *rapid.T, text string, style unit.Style) unit.Length {
	l, err := unit.Parse(strings.TrimPrefix(text, "-"), style.System)
	if err != nil {
		t.Fatal(err)
	}
	if strings.HasPrefix(text, "-") {
		return -l
	}
	return l
}
