package geom

import (
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

func TestArea(t *testing.T) {
	for _, c := range []struct {
		region string
		want   unit.Area
	}{
		{square, 100}, {holed, 96}, {cup, 76}, {triangle, 50}, {"", 0},
		{"0 0, 0 10, 10 10, 10 0", -100},
		{"0 0, 1 0, 0 1", 1}, // a half goes up
		{"0 0, 3 0, 0 1", 2},
		{"-536870912 -536870912, 536870912 -536870912, 536870912 536870912, -536870912 536870912", 1 << 60},
		{"3 -1, 3 -1", 0},
	} {
		if got := parse(t, c.region).Area(); got != c.want {
			t.Errorf("%s: %d, want %d", c.region, got, c.want)
		}
	}
}

// Partial sums of a comb over the whole reach are larger than its area and of both signs.
func TestAreaOfAComb(t *testing.T) {
	const reach, teeth = unit.Reach, 64
	var comb Ring
	for k := unit.Length(0); k < teeth; k++ {
		x := -reach + k*(2*reach/teeth)
		comb = append(comb, Vertex{P: pt(x, reach)}, Vertex{P: pt(x+reach/teeth, reach)},
			Vertex{P: pt(x+reach/teeth, -reach+1)}, Vertex{P: pt(x+2*reach/teeth, -reach+1)})
	}
	comb = append(comb, Vertex{P: pt(reach, -reach)}, Vertex{P: pt(-reach, -reach)}).Reverse()
	// a strip one count high under 64 teeth, each reach/64 wide and one count less than 2·reach high
	want := int64(2*reach) + teeth*int64(reach/teeth)*int64(2*reach-1)
	if got := comb.Area2(); got != 2*want {
		t.Errorf("%d, want %d", got, 2*want)
	}
}

func TestReverse(t *testing.T) {
	g := parse(t, square)
	if got, want := show(Region{g[0].Reverse()}), "0 0:4, 0 10:3, 10 10:2, 10 0:1"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
	rapid.Check(t, func(t *rapid.T) {
		g := drawRoom(t)
		for _, r := range g {
			back := r.Reverse().Reverse()
			if show(Region{back}) != show(Region{r}) || r.Reverse().Area2() != -r.Area2() {
				t.Fatalf("%s became %s", show(Region{r}), show(Region{back}))
			}
		}
	})
}

func TestRectRing(t *testing.T) {
	r := RectRing(rectOf(t, "1 2 5 7"), 11, 12, 13, 14)
	if got, want := show(Region{r}), "1 2:12, 5 2:13, 5 7:14, 1 7:11"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

func TestClean(t *testing.T) {
	for _, c := range []struct{ name, ring, want string }{
		{"nothing to do", square, square},
		{"straight, one label", "0 0:1, 5 0:1, 10 0:2, 10 10:3", "0 0:1, 10 0:2, 10 10:3"},
		{"straight, two labels", "0 0:1, 5 0:2, 10 0:2, 10 10:3", "0 0:1, 5 0:2, 10 0:2, 10 10:3"},
		{"straight at the seam", "5 0:1, 10 0:2, 10 10:3, 0 0:1", "0 0:1, 10 0:2, 10 10:3"},
		{"straight before the seam", "10 0:2, 10 10:3, 0 0:1, 5 0:1", "0 0:1, 10 0:2, 10 10:3"},
		{"no length", "0 0:1, 0 0:5, 10 0:2, 10 10:3", "0 0:5, 10 0:2, 10 10:3"},
		{"no length at the seam", "0 0:1, 10 0:2, 10 10:3, 0 0:5", "0 0:1, 10 0:2, 10 10:3"},
		{"spike out", "0 0:1, 10 0:2, 10 20:9, 10 10:3", "0 0:1, 10 0:2, 10 10:3"},
		{"spike whose longer edge stays", "0 0:1, 10 0:2, 10 -5:7, 10 10:3", "0 0:1, 10 0:7, 10 10:3"},
		{"spike and what it leaves", "0 0:1, 10 0:2, 10 10:3, 5 5:8, 2 8:9, 5 5:3", "0 0:1, 10 0:2, 10 10:3"},
		{"spike at the seam", "20 0:9, 10 0:2, 10 10:3, 0 0:1", "0 0:1, 10 0:2, 10 10:3"},
		{"no area", "0 0, 4 4, 9 9", ""},
		{"there and back", "0 0, 4 4", ""},
		{"a point", "0 0", ""},
	} {
		if got, want := show(Region{}.with(parse(t, c.ring)[0].Clean())), show(parse(t, c.want)); got != want {
			t.Errorf("%s: %s, want %s", c.name, got, want)
		}
	}
}

func TestContains(t *testing.T) {
	for _, c := range []struct {
		region, point string
		want          int
	}{
		{square, "5 5", 1}, {square, "0 5", 0}, {square, "10 10", 0}, {square, "11 5", -1}, {square, "-1 0", -1},
		{square, "5 10", 0}, {square, "5 11", -1}, {square, "-1 10", -1},
		{holed, "5 5", -1}, {holed, "4 5", 0}, {holed, "2 4", 1}, {holed, "2 6", 1},
		{cup, "5 5", -1}, {cup, "5 4", 0}, {cup, "5 3", 1}, {cup, "1 10", 0}, {cup, "5 10", -1}, {cup, "-3 10", -1},
		{triangle, "-1 0", -1}, {triangle, "5 10", 0}, {triangle, "4 10", -1}, {triangle, "1 2", 0}, {triangle, "1 3", -1},
		{"", "0 0", -1},
	} {
		p := parse(t, c.point)[0][0].P
		for turn := range Turn(4) {
			if got := turn.Region(parse(t, c.region)).Contains(turn.Point(p)); got != c.want {
				t.Errorf("%s in %s, turned %d: %d, want %d", c.point, c.region, turn, got, c.want)
			}
		}
	}
}

// The slow way: the sum of the angles under which a point sees the edges, by the quadrants it passes.
func TestContainsAgainstWinding(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := drawRoom(t)
		p := pt(unit.Length(rapid.IntRange(-26, 26).Draw(t, "x")), unit.Length(rapid.IntRange(-26, 26).Draw(t, "y")))
		if got, want := g.Contains(p), winding(g, p); got != want {
			t.Fatalf("%v in %s: %d, want %d", p, show(g), got, want)
		}
	})
}

// winding counts quadrants passed; an edge across two of them turns by the sign of its cross product.
func winding(g Region, p Point) int {
	quarters := 0
	for _, r := range g {
		for i, v := range r {
			if between(p, v.P, r.end(i)) {
				return 0
			}
			d := (quadrant(r.end(i).Sub(p)) - quadrant(v.P.Sub(p)) + 4) % 4
			if d == 2 {
				d *= bigCross(v.P, r.end(i), p).Sign()
			} else if d == 3 {
				d = -1
			}
			quarters += d
		}
	}
	if quarters == 4 {
		return 1
	}
	return -1
}

func quadrant(p Point) int {
	switch {
	case p.X > 0 && p.Y >= 0:
		return 0
	case p.X <= 0 && p.Y > 0:
		return 1
	case p.X < 0 && p.Y <= 0:
		return 2
	}
	return 3
}

func TestParts(t *testing.T) {
	const two = "0 0, 10 0, 10 10, 0 10 / 20 0, 30 0, 30 10, 20 10 / 22 2, 22 4, 24 4, 24 2 / 2 2, 2 8, 8 8, 8 2 / 4 4, 6 4, 6 6, 4 6"
	var got []string
	for _, p := range parse(t, two).Parts() {
		got = append(got, show(p))
	}
	want := []string{
		"0 0, 10 0, 10 10, 0 10 / 2 2, 2 8, 8 8, 8 2",
		"20 0, 30 0, 30 10, 20 10 / 22 2, 22 4, 24 4, 24 2",
		"4 4, 6 4, 6 6, 4 6",
	}
	if len(got) != len(want) {
		t.Fatalf("%d parts, want %d: %q", len(got), len(want), got)
	}
	for i := range want {
		if got[i] != show(parse(t, want[i])) {
			t.Errorf("part %d: %s, want %s", i, got[i], want[i])
		}
	}
}

// A hole all of whose corners lie on its outer still finds it, past another part.
func TestPartsTouchingHole(t *testing.T) {
	g := parse(t, "20 0, 30 0, 30 10, 20 10 / 0 0, 10 0, 10 10, 0 10 / 5 0, 0 5, 5 10, 10 5")
	parts := g.Parts()
	if len(parts) != 2 || len(parts[1]) != 2 {
		t.Errorf("%d parts", len(parts))
	}
}
