package geom

import (
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

// Edges, each from right of the line to left of it, in their order along the line from 0 0 to 10 0. Their rounded places
// can not tell the first pairs.
func TestOrderAlongTheLine(t *testing.T) {
	for _, c := range []struct{ name, first, second string }{
		{"one place: the second lies right of the first", "0 -1, 0 1", "1 -3, 0 2"},
		{"one place: the first lies left of the second, which crosses the first's line far up", "0 -1, 0 1", "1 -2, -2 8"},
		{"from one vertex on the line", "5 0, 2 3", "5 0, 6 3"},
		{"from one vertex right of the line", "5 -9, 5 1", "5 -9, 6 20"},
		{"to one vertex left of the line", "4 -9, 5 1", "5 -9, 5 1"},
		{"crossing each other: by place", "1 -1, 9 9", "7 -1, 0 9"},
	} {
		k := clipper{line: lineThrough(pt(0, 0), pt(10, 0), 0)}
		place := func(text string) place {
			v := parse(t, text)[0]
			return place{lo: v[0].P, hi: v[1].P, at: k.meet(v[0].P, v[1].P, k.dist(v[0].P), k.dist(v[1].P), 0)}
		}
		p, q := place(c.first), place(c.second)
		if k.order(p, q) >= 0 || k.order(q, p) <= 0 || k.order(p, p) != 0 {
			t.Errorf("%s: %d and %d", c.name, k.order(p, q), k.order(q, p))
		}
	}
}

// What a line leaves of an outline without holes has no holes, however little rounding leaves of it.
func TestNoHolesOutOfNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ordinate := rapid.Int64Range(0, 14)
		point := func() Point {
			return pt(unit.Length(ordinate.Draw(t, "x")), unit.Length(ordinate.Draw(t, "y")))
		}
		r := Ring{{P: point()}, {P: point()}, {P: point()}}
		if r.Area2() < 0 {
			r = r.Reverse()
		}
		for _, kept := range (Region{r}).HalfPlane(point(), point(), 1) {
			if kept.Area2() <= 0 {
				t.Fatalf("%s left %s", show(Region{r}), show(Region{kept}))
			}
		}
	})
}
