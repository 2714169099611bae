package geom

import (
	"fmt"
	"math/big"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

// Pythagorean triples, halves and the reach.
func TestDist(t *testing.T) {
	for _, c := range []struct {
		points string
		want   unit.Length
	}{
		{"0 0, 3 4", 5}, {"1 1, -4 13", 13}, {"0 0, 0 0", 0}, {"0 0, 1 1", 1}, {"0 0, 2 1", 2}, {"0 0, 1 2", 2}, {"0 0, 3 3", 4},
		{"-536870912 -536870912, 536870912 536870912", 1518500250}, // 2^30·√2 = 1518500249.988…
	} {
		v := parse(t, c.points)[0]
		if got := Dist(v[0].P, v[1].P); got != c.want {
			t.Errorf("%s: %d, want %d", c.points, got, c.want)
		}
	}
}

// The rounded distance r is right if (2r-1)² ≤ 4d² < (2r+1)², in long numbers.
func TestDistancesAgainstLongNumbers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b, p := drawPoint(t), drawPoint(t), drawPoint(t)
		if rapid.Bool().Draw(t, "small") {
			a, b, p = pt(a.X%9, a.Y%9), pt(b.X%9, b.Y%9), pt(p.X%9, p.Y%9)
		}
		if d := Dist(a, p); !rounds(d, squareOf(a, p)) {
			t.Fatalf("%v to %v: %d", p, a, d)
		}
		if a == b {
			return
		}
		c := bigCross(a, b, p)
		line := new(big.Rat).Quo(new(big.Rat).SetInt(c.Mul(c, c)), squareOf(a, b))
		if d := DistToLine(p, a, b); !rounds(d, line) {
			t.Fatalf("%v to the line %v %v: %d", p, a, b, d)
		}
		least := slices.MinFunc([]*big.Rat{squareOf(p, a), squareOf(p, b)}, (*big.Rat).Cmp)
		if dot(a, b, a, p) > 0 && dot(b, a, b, p) > 0 {
			least = line
		}
		if d := DistToSegment(p, a, b); !rounds(d, least) {
			t.Fatalf("%v to %v %v: %d", p, a, b, d)
		}
	})
}

func squareOf(p, q Point) *big.Rat {
	x, y := big.NewInt(int64(q.X-p.X)), big.NewInt(int64(q.Y-p.Y))
	return new(big.Rat).SetInt(x.Add(x.Mul(x, x), y.Mul(y, y)))
}

func rounds(r unit.Length, square *big.Rat) bool {
	four := new(big.Rat).Mul(square, big.NewRat(4, 1))
	below, above := big.NewInt(int64(2*r-1)), big.NewInt(int64(2*r+1))
	return (r == 0 || four.Cmp(new(big.Rat).SetInt(below.Mul(below, below))) >= 0) &&
		four.Cmp(new(big.Rat).SetInt(above.Mul(above, above))) < 0
}

func TestSpans(t *testing.T) {
	for _, c := range []struct {
		region string
		at     unit.Length
		want   string
	}{
		{square, 5, "0-10"}, {square, 0, "0-10"}, {square, 10, "0-10"}, {square, 11, ""}, {square, -1, ""},
		{holed, 5, "0-4 6-10"}, {holed, 4, "0-10"}, {holed, 6, "0-10"}, {holed, 3, "0-10"},
		{cup, 5, "0-3 7-10"}, {cup, 4, "0-10"}, {cup, 10, "0-3 7-10"},
		{triangle, 10, ""}, {triangle, 5, "3-8"}, // 2.5 and 7.5 go up
		{"0 0, 10 0, 10 8, 5 2, 0 8", 2, "0-10"}, {"0 0, 10 0, 10 8, 5 2, 0 8", 5, "0-3 8-10"},
		{"0 5, 5 5, 5 10, 0 10 / 5 0, 10 0, 10 5, 5 5", 5, "0-10"},
		{"", 0, ""},
	} {
		g := parse(t, c.region)
		if got := showSpans(g.Spans(Horizontal, c.at)); got != c.want {
			t.Errorf("%s at %d: %q, want %q", c.region, c.at, got, c.want)
		}
		mirrored := g.moved(Vertical.swap)
		if got := showSpans(mirrored.Spans(Vertical, c.at)); got != c.want {
			t.Errorf("%s mirrored at %d: %q, want %q", c.region, c.at, got, c.want)
		}
	}
}

func showSpans(spans []Span) string {
	var out []string
	for _, s := range spans {
		out = append(out, fmt.Sprintf("%d-%d", s.Lo, s.Hi))
	}
	return strings.Join(out, " ")
}

// Every half count of the line is in a span, or not, as its point is in the region, or not.
func TestSpansAgainstPoints(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := drawRoom(t)
		y := unit.Length(rapid.IntRange(-26, 26).Draw(t, "y"))
		spans := g.Spans(Horizontal, y)
		for x2 := unit.Length(-53); x2 < 53; x2 += 2 {
			in := slices.ContainsFunc(spans, func(s Span) bool { return 2*s.Lo <= x2 && x2 <= 2*s.Hi })
			if in != (g.contains(pt(x2, 2*y), 2) >= 0) {
				t.Fatalf("%s at y = %d: %s, but x = %d/2 is otherwise", show(g), y, showSpans(spans), x2)
			}
		}
	})
}

// Worked out by hand.
func TestNeck(t *testing.T) {
	for _, c := range []struct {
		name, region string
		want         unit.Length
	}{
		{"a strip", "0 0, 300 0, 300 50, 0 50", 50},
		{"a strip of two lengths", "0 0, 100 0, 300 0, 300 50, 0 50", 50},
		{"nothing", "", 0},
		{"an L", "0 0, 300 0, 300 40, 60 40, 60 300, 0 300", 40},
		{"an L, the other leg thinner", "0 0, 300 0, 300 40, 30 40, 30 300, 0 300", 30},
		{"a U: what is left beside the notch", "0 0, 300 0, 300 200, 280 200, 280 60, 70 60, 70 200, 0 200", 20},
		{"a U: what is left under the notch", "0 0, 300 0, 300 200, 230 200, 230 15, 70 15, 70 200, 0 200", 15},
		{"the height of a step is no neck, the width beside it is", "0 0, 300 0, 300 200, 150 200, 150 195, 0 195", 150},
		{"a hole near the edge", "0 0, 300 0, 300 200, 0 200 / 100 12, 100 90, 180 90, 180 12", 12},
		{"a hole near a hole", "0 0, 300 0, 300 200, 0 200 / 100 50, 100 90, 140 90, 140 50 / 149 50, 149 90, 190 90, 190 50", 9},
		{"two holes corner to corner", "0 0, 300 0, 300 200, 0 200 / 100 50, 100 90, 140 90, 140 50 / 143 94, 143 130, 190 130, 190 94", 5},
		{"a hole on end, near the edge", "0 0, 300 0, 300 200, 0 200 / 100 20, 60 60, 100 100, 140 60", 20},
		{"a tapered strip: its narrow end", "0 0, 300 0, 300 40, 0 60", 40},
		{"a right triangle 3-4-5: the height over the long side", "0 0, 400 0, 0 300", 240},
		{"a corner cut off is no neck", "0 0, 300 0, 300 290, 290 300, 0 300", 300},
		{"a hexagon across its flats", "0 0, 1000 0, 1500 866, 1000 1732, 0 1732, -500 866", 1732},
		{"two parts", "0 0, 300 0, 300 50, 0 50 / 400 0, 430 0, 430 300, 400 300", 30},
		{"a waist", "0 0, 100 0, 100 40, 54 40, 54 60, 100 60, 100 100, 0 100, 0 60, 46 60, 46 40, 0 40", 8},
		{"a Z: the neck runs from inward corner to inward corner", "0 0, 200 0, 200 100, 103 100, 103 204, 303 204, 303 304, 0 304, 0 208, 100 208, 100 104, 0 104", 3},
		{"a slot that widens: its inward corners see each other through the outside only",
			"30 0, 170 0, 170 200, 110 200, 110 130, 120 130, 120 70, 80 70, 80 130, 90 130, 90 200, 30 200", 50},
		{"a diagonal waist", "0 0, 100 0, 100 96, 200 96, 200 200, 97 200, 97 100, 0 100", 5},
	} {
		for turn := range Turn(4) {
			if got := turn.Region(parse(t, c.region)).Neck(); got != c.want {
				t.Errorf("%s, turned %d: %d, want %d", c.name, turn, got, c.want)
			}
		}
	}
}

// Turned to any angle the width stays, within the rounding of the corners.
func TestNeckTurned(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg := rapid.IntRange(5, 50).Draw(t, "leg")
		g := mm(t, fmt.Sprintf("0 0, 300 0, 300 60, %d 60, %d 300, 0 300", leg, leg))
		f := Frame{Angle: unit.Angle(rapid.Int64Range(0, 359_999_999).Draw(t, "angle"))}
		if d := g.Out(f).Neck() - unit.Length(leg)*unit.Millimetre; d.Abs() > 2 {
			t.Fatalf("off by %d", d)
		}
	})
}
