package geom

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

// A region in one line: vertices "x y" in counts, joined by ", "; the label of the edge that leaves a vertex after a
// colon; rings joined by " / ". As in "0 0:1, 4 0:2, 4 3:3, 0 3:4 / 1 1, 1 2, 2 2, 2 1".

func parse(t rapid.TB, text string) Region {
	t.Helper()
	var g Region
	for _, ring := range strings.Split(text, "/") {
		if strings.TrimSpace(ring) == "" {
			continue
		}
		var r Ring
		for _, v := range strings.Split(ring, ",") {
			r = append(r, parseVertex(t, v))
		}
		g = append(g, r)
	}
	return g
}

func parseVertex(t rapid.TB, text string) Vertex {
	t.Helper()
	at, label, _ := strings.Cut(strings.TrimSpace(text), ":")
	xy := strings.Fields(at)
	if len(xy) != 2 {
		t.Fatalf("vertex %q", text)
	}
	return Vertex{Point{number(t, xy[0]), number(t, xy[1])}, Label(number(t, "0"+label))}
}

func number(t rapid.TB, text string) unit.Length {
	t.Helper()
	n, err := strconv.ParseInt(text, 10, 64)
	if err != nil {
		t.Fatal(err)
	}
	return unit.Length(n)
}

// mm reads the notation in whole millimetres.
func mm(t rapid.TB, text string) Region {
	t.Helper()
	return parse(t, text).moved(func(p Point) Point { return Point{p.X * unit.Millimetre, p.Y * unit.Millimetre} })
}

// show writes a region in the notation: every ring from its least vertex, the rings in order of their texts.
func show(g Region) string {
	var rings []string
	for _, r := range g {
		least := 0
		for i, v := range r {
			if w := r[least]; v.P.X < w.P.X || v.P.X == w.P.X && v.P.Y < w.P.Y {
				least = i
			}
		}
		var vs []string
		for _, v := range slices.Concat(r[least:], r[:least]) {
			vs = append(vs, showVertex(v))
		}
		rings = append(rings, strings.Join(vs, ", "))
	}
	slices.Sort(rings)
	return strings.Join(rings, " / ")
}

func showVertex(v Vertex) string {
	if v.Edge == 0 {
		return fmt.Sprintf("%d %d", v.P.X, v.P.Y)
	}
	return fmt.Sprintf("%d %d:%d", v.P.X, v.P.Y, v.Edge)
}

func pt(x, y unit.Length) Point { return Point{x, y} }

// rectOf reads "x0 y0 x1 y1".
func rectOf(t rapid.TB, text string) Rect {
	t.Helper()
	f := strings.Fields(text)
	return Rect{pt(number(t, f[0]), number(t, f[1])), pt(number(t, f[2]), number(t, f[3]))}
}
