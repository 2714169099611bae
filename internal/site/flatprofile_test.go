package site

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// profileOf reads "0:0 12:-1/8 24:0", in inches.
func profileOf(t *testing.T, s string) []document.Station {
	var out []document.Station
	r := &room{t: t}
	for _, w := range strings.Fields(s) {
		x, y, _ := strings.Cut(w, ":")
		out = append(out, document.Station{X: r.in(x), Value: r.in(y)})
	}
	return out
}

func lineOf(list []document.Station) (out []geom.Point) {
	for _, p := range list {
		out = append(out, geom.Point{X: p.X, Y: p.Value})
	}
	return out
}

// Worked by hand. A V of 1/96 on both sides under 24 in: the straightedge bridges 12 in of each side, 12/96 in. A hump
// gapes at both ends as much as a hollow does in the middle. A wall that leans straight has no gap. Of a step of 1/4 in
// over 12 in a straightedge of 24 in, half of it on each level, touches both ends of the slope and gapes least where
// its own slope is between: 1/8 in at four places, by symmetry. To a micrometre: the line is read to the grid between its
// places.
func TestWorstGap(t *testing.T) {
	for _, c := range []struct{ profile, length, want string }{
		{"0:0 12:-1/8 24:0", "24", "1/8"},
		{"0:0 12:1/8 24:0", "24", "1/8"},
		{"0:0 12:1/16 24:1/8 36:3/16 48:1/4", "24", "0"},
		{"0:0 36:-3/8 72:0", "24", "1/8"},
		{"0:0 36:-3/8 72:0", "72", "3/8"},
		{"0:0 36:-3/8 72:0", "36", "3/16"},
		{"0:0 30:0 42:1/4 72:1/4", "24", "1/8"},
		{"0:0 12:-1/8 24:0", "36", "0"}, // longer than the wall: it can not be laid there
	} {
		r := &room{t: t}
		got := worstGap(lineOf(profileOf(t, c.profile)), r.in(c.length))
		if off := (got - r.in(c.want)).Abs(); off > unit.Micrometre {
			t.Errorf("%s under %s: %d, want %s", c.profile, c.length, got, c.want)
		}
	}
}

// The least of all ways to lay a straightedge is found by trying slopes: no slope gives less than zone, and one of a
// fine row of them comes near it.
func TestZoneAgainstSlopes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 7).Draw(t, "n")
		var points []geom.Point
		steep := 0.0
		for i := range n {
			p := geom.Point{X: unit.Length(i) * 1000, Y: unit.Length(rapid.IntRange(-50, 50).Draw(t, "y"))}
			points = append(points, p)
			for _, q := range points[:i] {
				steep = max(steep, math.Abs(float64(p.Y-q.Y)/float64(p.X-q.X)))
			}
		}
		got, tried := zone(points), math.Inf(1)
		const rows = 2000
		for k := -rows; k <= rows; k++ {
			tried = min(tried, spread(points, steep*float64(k)/rows))
		}
		if fine := steep / rows * float64(n*1000); tried < got-1e-9 || tried > got+fine+1e-9 {
			t.Fatalf("%v: zone %v, by trying %v", points, got, tried)
		}
	})
}

// A wall without a straightedge reading is judged by its profile, and it is said where that comes from. 0 to 12 in apart is
// fine enough for the short straightedge of 24 in; 24 apart is not. The limits: 1/16 in under 24 in, and under 72 in
// 1/16 + 1/16 x 48/96 = 3/32.
func TestFlatByProfile(t *testing.T) {
	for _, c := range []struct{ profile, over, said string }{
		{"12:0 24:1/32 36:1/16 48:1/32", "0", ""},
		{"12:0 24:-1/8 36:0 48:0", "1/16", "by its profile, has a gap of 1/8 in under a straightedge of 24 in; 1/16 in is allowed"},
		{"24:-1/32 48:-1/32", "0", "under a straightedge of 24 in, for its profile was read at places up to 24 in apart"},
	} {
		r := alcove(t)
		r.Tiles = nil
		r.tile("it", "24 x 12 x 3/8", document.Ceramic)
		r.lay("it", "back")
		r.Walls[0].Profile = profileOf(t, c.profile)
		got := r.solve()
		f := got.face("back").Flat
		wantLength(t, c.profile+" over", f.Over, c.over)
		coarse := strings.Contains(c.said, "apart")
		if f.Checked == coarse {
			t.Errorf("%s: checked %v", c.profile, f.Checked)
		}
		switch {
		case coarse:
			got.wantSaid("flatness-coarse", c.said)
		case c.said != "":
			got.wantSaid("not-flat", c.said)
		default:
			got.wantNot("not-flat")
		}
		got.wantNot("flatness-unread")

		r.Walls[0].Straightedge = []document.Gap{{Length: r.in("24"), Gap: 0}} // a reading counts before the profile
		read := r.solve()
		if f := read.face("back").Flat; f.Over != 0 || !f.Checked {
			t.Errorf("%s: a straightedge was held on it and said nothing: %+v", c.profile, f)
		}
	}
}
