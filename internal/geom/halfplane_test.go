package geom

import (
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

const (
	square   = "0 0:1, 10 0:2, 10 10:3, 0 10:4"
	holed    = square + " / 4 4:5, 4 6:6, 6 6:7, 6 4:8"
	cup      = "0 0:1, 10 0:2, 10 10:3, 7 10:4, 7 4:5, 3 4:6, 3 10:7, 0 10:8" // a U
	triangle = "0 0:1, 10 0:2, 5 10:3"
)

// Expected outlines are worked out by hand. The line has label 9.
var halfPlanes = []struct{ name, region, line, want string }{
	{"all kept", square, "0 -1, 1 -1", "0 0:1, 10 0:2, 10 10:3, 0 10:4"},
	{"none kept", square, "1 -1, 0 -1", ""},
	{"along an edge, inside kept", square, "3 0, 4 0", "0 0:9, 10 0:2, 10 10:3, 0 10:4"},
	{"along an edge, outside kept", square, "4 0, 3 0", ""},
	{"halved", square, "0 5, 1 5", "0 5:9, 10 5:2, 10 10:3, 0 10:4"},
	{"halved the other way", square, "1 5, 0 5", "0 0:1, 10 0:2, 10 5:9, 0 5:4"},
	{"diagonal through two corners", square, "0 0, 10 10", "0 0:9, 10 10:3, 0 10:4"},
	{"touching one corner", square, "-1 1, 1 -1", "0 0:1, 10 0:2, 10 10:3, 0 10:4"},
	{"touching one corner, outside kept", square, "1 -1, -1 1", ""},
	{"through a corner", triangle, "0 0, 2 2", "0 0:9, 7 7:2, 5 10:3"},
	{"hole opened", holed, "0 5, 1 5", "0 5:9, 4 5:5, 4 6:6, 6 6:7, 6 5:9, 10 5:2, 10 10:3, 0 10:4"},
	{"hole flush above", holed, "0 4, 1 4", "0 4:9, 4 4:5, 4 6:6, 6 6:7, 6 4:9, 10 4:2, 10 10:3, 0 10:4"},
	{"hole flush below", holed, "0 6, 1 6", "0 6:9, 10 6:2, 10 10:3, 0 10:4"},
	{"hole beside", holed, "0 2, 1 2", "0 2:9, 10 2:2, 10 10:3, 0 10:4 / 4 4:5, 4 6:6, 6 6:7, 6 4:8"},
	{"legs of a cup parted", cup, "0 6, 1 6", "0 6:9, 3 6:6, 3 10:7, 0 10:8 / 7 6:9, 10 6:2, 10 10:3, 7 10:4"},
	{"legs parted at the bottom of the cup", cup, "0 4, 1 4", "0 4:9, 3 4:6, 3 10:7, 0 10:8 / 7 4:9, 10 4:2, 10 10:3, 7 10:4"},
	{"foot of a cup", cup, "1 4, 0 4", "0 0:1, 10 0:2, 10 4:9, 0 4:8"},
	{"a cup across both legs", cup, "5 0, 5 1", "0 0:1, 5 0:9, 5 4:5, 3 4:6, 3 10:7, 0 10:8"},
	{"inward corner on the line: parts that touch",
		"0 0, 10 0, 10 8, 5 2, 0 8", "0 2, 1 2", "0 2:9, 5 2, 0 8 / 5 2:9, 10 2, 10 8"},
	{"hole's corner on the line: stays a hole",
		"0 0, 10 0, 10 10, 0 10 / 5 4, 3 6, 5 8, 7 6", "0 4, 1 4", "0 4:9, 10 4, 10 10, 0 10 / 3 6, 5 8, 7 6, 5 4"},
	{"hole's two corners on the line: the piece between them parts",
		"0 0, 12 0, 12 10, 0 10 / 4 2, 2 8, 10 8, 8 2, 6 5", "0 2, 1 2",
		"0 2:9, 4 2, 2 8, 10 8, 8 2:9, 12 2, 12 10, 0 10 / 4 2:9, 8 2, 6 5"},
	{"island in a hole", "0 0, 12 0, 12 12, 0 12 / 2 2, 2 10, 10 10, 10 2 / 4 4, 8 4, 8 8, 4 8", "0 6, 1 6",
		"0 6:9, 2 6, 2 10, 10 10, 10 6:9, 12 6, 12 12, 0 12 / 4 6:9, 8 6, 8 8, 4 8"},
	{"crossings rounded half up", "0 0, 3 0, 0 2", "0 1, 1 1", "0 1:9, 2 1, 0 2"},
	{"a line of no length", square, "3 3, 3 3", "0 0:1, 10 0:2, 10 10:3, 0 10:4"},
	{"nothing to cut", "", "0 0, 1 0", ""},
}

func TestHalfPlane(t *testing.T) {
	for _, c := range halfPlanes {
		line := parse(t, c.line)[0]
		got := parse(t, c.region).HalfPlane(line[0].P, line[1].P, 9)
		if show(got) != show(parse(t, c.want)) {
			t.Errorf("%s:\n got %s\nwant %s", c.name, show(got), show(parse(t, c.want)))
		}
	}
}

// Every case turned by quarter turns, and started from each vertex, gives the same turned.
func TestHalfPlaneTurned(t *testing.T) {
	for _, c := range halfPlanes {
		line, g := parse(t, c.line)[0], parse(t, c.region)
		for turn := Turn(1); turn < 4; turn++ {
			got := turn.Region(shifted1(g)).HalfPlane(turn.Point(line[0].P), turn.Point(line[1].P), 9)
			want := turn.Region(parse(t, c.want))
			if show(got) != show(want) && c.name != "crossings rounded half up" {
				t.Errorf("%s, turned %d:\n got %s\nwant %s", c.name, turn, show(got), show(want))
			}
		}
	}
}

// shifted1 starts every ring from its second vertex.
func shifted1(g Region) Region {
	out := make(Region, len(g))
	for i, r := range g {
		out[i] = append(append(Ring{}, r[1:]...), r[0])
	}
	return out
}

// Both sides of a line add up to the whole exactly where no crossing is rounded: lines along the grid through
// regions with edges along the axes or at 45°.
func TestHalfPlaneBothSides(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := drawRoom(t)
		at := pt(drawCount(t), drawCount(t))
		dir := rapid.SampledFrom([]Point{{1, 0}, {0, 1}, {1, 1}, {-1, 1}}).Draw(t, "direction")
		lower, upper := g.HalfPlane(at, at.Add(dir), 0), g.HalfPlane(at.Add(dir), at, 0)
		if lower.Area2()+upper.Area2() != g.Area2() {
			t.Fatalf("%s\ncut at %v along %v:\n%s\n%s", show(g), at, dir, show(lower), show(upper))
		}
	})
}

// drawCount draws even ordinates, so that lines along the axes and at 45° meet on the grid.
func drawCount(t *rapid.T) (n unit.Length) {
	return 2 * unit.Length(rapid.Int64Range(-20, 20).Draw(t, "count"))
}

// drawRoom cuts boxes and corners off a box, all on even counts.
func drawRoom(t *rapid.T) Region {
	g := Region{RectRing(Rect{pt(-24, -24), pt(24, 24)}, 1, 2, 3, 4)}
	for range rapid.IntRange(0, 6).Draw(t, "cuts") {
		p := pt(drawCount(t), drawCount(t))
		q := p.Add(rapid.SampledFrom([]Point{{1, 0}, {0, 1}, {-1, 0}, {0, -1}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}}).Draw(t, "direction"))
		if h := g.HalfPlane(p, q, 5); len(h) > 0 {
			g = h
		}
		if x := (Rect{p, p.Add(pt(6, 4))}); g.Covers(Rect{x.Min.Sub(pt(1, 1)), x.Max.Add(pt(1, 1))}) {
			g = append(g[:len(g):len(g)], RectRing(x, 6, 7, 8, 9).Reverse())
		}
	}
	return g
}
