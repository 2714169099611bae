package geom

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

// Worked out by hand. Amounts are per label: label 1 moves by the first amount and so on.
func TestOffsetEdges(t *testing.T) {
	for _, c := range []struct {
		name, region string
		by           []unit.Length
		want         string
	}{
		{"a box by four amounts", "0 0:1, 100 0:2, 100 80:3, 0 80:4", []unit.Length{1, 2, 3, 4}, "4 1:1, 98 1:2, 98 77:3, 4 77:4"},
		{"outward", "0 0:1, 100 0:1, 100 80:1, 0 80:1", []unit.Length{-5}, "-5 -5:1, 105 -5:1, 105 85:1, -5 85:1"},
		{"not at all", square, []unit.Length{0, 0, 0, 0}, square},
		{"an L, its inward corner too", "0 0:1, 100 0:1, 100 50:1, 50 50:1, 50 100:1, 0 100:1", []unit.Length{10},
			"10 10:1, 90 10:1, 90 40:1, 40 40:1, 40 90:1, 10 90:1"},
		{"a hole grows", "0 0:1, 100 0:1, 100 100:1, 0 100:1 / 40 40:2, 40 60:2, 60 60:2, 60 40:2", []unit.Length{0, 10},
			"0 0:1, 100 0:1, 100 100:1, 0 100:1 / 30 30:2, 30 70:2, 70 70:2, 70 30:2"},
		{"3-4-5: every side of a right triangle with incircle 100 in by 50", "0 0:1, 400 0:1, 0 300:1", []unit.Length{50},
			"50 50:1, 250 50:1, 50 200:1"},
		{"one wall in two lengths, two amounts: a jog with the thicker one's label", "0 0:1, 50 0:2, 100 0:3, 100 80:3, 0 80:3",
			[]unit.Length{10, 4, 0}, "0 10:1, 50 10:1, 50 4:2, 100 4:3, 100 80:3, 0 80:3"},
		{"the other way round", "0 0:2, 50 0:1, 100 0:3, 100 80:3, 0 80:3",
			[]unit.Length{10, 4, 0}, "0 4:2, 50 4:1, 50 10:1, 100 10:3, 100 80:3, 0 80:3"},
		{"one wall in two lengths, one amount", "0 0:1, 50 0:2, 100 0:3, 100 80:3, 0 80:3",
			[]unit.Length{10, 10, 0}, "0 10:1, 50 10:2, 100 10:3, 100 80:3, 0 80:3"},
		{"a bend of 1 in 10 (5.7°), two amounts: a jog", "0 0:1, 1000 0:2, 2000 100:3, 2000 900:3, 0 900:3", []unit.Length{10, 4, 0},
			"0 10:1, 1000 10:1, 1000 4:2, 2000 104:3, 2000 900:3, 0 900:3"},
		{"a bend of 1 in 5 (11.3°), two amounts: they meet", "0 0:1, 1000 0:2, 2000 200:3, 2000 900:3, 0 900:3", []unit.Length{10, 4, 0},
			"0 10:1, 1030 10:2, 2000 204:3, 2000 900:3, 0 900:3"},
		{"a bend of 1 in 10, one amount: no jog", "0 0:1, 1000 0:1, 2000 100:2, 2000 900:2, 0 900:2",
			[]unit.Length{100, 0}, "0 100:1, 995 100:1, 2000 200:2, 2000 900:2, 0 900:2"},
	} {
		got, err := OffsetEdges(parse(t, c.region), func(l Label) unit.Length { return c.by[l-1] })
		if err != nil || show(got) != show(parse(t, c.want)) {
			t.Errorf("%s: %s, %v, want %s", c.name, show(got), err, c.want)
		}
	}
}

func TestOffsetFolds(t *testing.T) {
	for _, c := range []struct {
		name, region string
		by           unit.Length
		edge, with   int
	}{
		{"a box by half its height", "0 0, 100 0, 100 80, 0 80", 40, 1, 1},
		{"a box by more", "0 0, 100 0, 100 80, 0 80", 70, 0, 0},
		{"a hole that meets the outline", "0 0, 100 0, 100 80, 0 80 / 40 40, 40 60, 60 60, 60 40", 10, 2, 4},
		{"an edge of no length", "0 0, 100 0, 100 0, 100 80", 1, 1, 1},
		{"a slot that closes", "0 0, 100 0, 100 80, 52 80, 52 40, 48 40, 48 80, 0 80", -2, 4, 4},
		{"a waist that closes", "0 0, 100 0, 100 40, 54 40, 54 60, 100 60, 100 100, 0 100, 0 60, 46 60, 46 40, 0 40", 5, 2, 9},
	} {
		_, err := OffsetEdges(parse(t, c.region), func(Label) unit.Length { return c.by })
		var fold *FoldError
		if !errors.As(err, &fold) {
			t.Errorf("%s: %v", c.name, err)
		} else if fold.Edge != c.edge || fold.With != c.with {
			t.Errorf("%s: %v, want edges %d and %d", c.name, err, c.edge, c.with)
		}
	}
}

func TestOffsetWords(t *testing.T) {
	for _, c := range []struct {
		err  error
		want string
	}{
		{&FoldError{3, 3}, "edge 3 has no length left"},
		{&FoldError{3, 5}, "edge 3 runs into edge 5"},
		{&InvalidError{2, 0, 1, 4, 5}, "operand 2: edge 4 of ring 0 meets edge 5 of ring 1"},
	} {
		if c.err.Error() != c.want {
			t.Errorf("%q, want %q", c.err, c.want)
		}
	}
}

func TestOffsetBeyondReach(t *testing.T) {
	for _, region := range []string{
		"-536870900 0, 536870900 0, 536870900 500, -536870900 500",
		"0 0, 500000000 0, 0 3", // a sharp corner goes 10^10 out
	} {
		if _, err := OffsetEdges(parse(t, region), func(Label) unit.Length { return -100 }); !errors.Is(err, ErrReach) {
			t.Errorf("%s: %v", region, err)
		}
	}
}

// A convex ring moved in by d loses area perimeter·d - d²·Σcot(interior angle/2) (Steiner's formula for the inner
// parallel body of a polygon whose edges all stay).
func TestOffsetAreaOfConvexRings(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 9).Draw(t, "corners")
		radius := float64(rapid.IntRange(1000, 2000).Draw(t, "radius") * int(unit.Millimetre))
		start := rapid.Float64Range(0, 6).Draw(t, "start")
		var r Ring
		for k := range n {
			a := start + (float64(k)+0.6*rapid.Float64Range(0, 1).Draw(t, "angle"))*2*math.Pi/float64(n)
			r = append(r, Vertex{P: pt(unit.FromFloat(radius*math.Cos(a)), unit.FromFloat(radius*math.Sin(a)))})
		}
		d := unit.Length(rapid.Int64Range(-400_000, 400_000).Draw(t, "inset"))
		by := make([]unit.Length, n)
		for i := range by {
			by[i] = d
		}
		moved, err := OffsetRing(r, by)
		if err != nil {
			t.Skip("folds")
		}
		want, perimeter := steiner(r, float64(d))
		if got := float64(moved.Area2()) / 2; math.Abs(got-want) > perimeter {
			t.Fatalf("area %.0f, want %.0f", got, want)
		}
	})
}

func steiner(r Ring, d float64) (area, perimeter float64) {
	cots := 0.0
	for i, v := range r {
		u, w := v.P.Sub(r[(i+len(r)-1)%len(r)].P), r.end(i).Sub(v.P)
		perimeter += math.Hypot(float64(w.X), float64(w.Y))
		turn := math.Atan2(float64(Cross(Point{}, u, w)), float64(dot(Point{}, u, Point{}, w)))
		cots += math.Tan(turn / 2) // cot of half the interior angle π - turn
	}
	return float64(r.Area2())/2 - perimeter*d + d*d*cots, perimeter
}

// Every moved edge lies at its own distance from where it was, by the other formula, the distance of a point to a line.
func TestOffsetDistances(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := Region{mm(t, "0 0, 3000 40, 3110 1200, 2050 1290, 2000 2400, -30 2350")[0]}
		by := make([]unit.Length, len(g[0]))
		for i := range by {
			by[i] = unit.Length(rapid.Int64Range(-300_000, 600_000).Draw(t, "inset"))
		}
		moved, err := OffsetRing(g[0], by)
		if err != nil {
			t.Fatal(err)
		}
		for i, v := range moved {
			a, b := g[0][i].P, g[0].end(i)
			for _, p := range []Point{v.P, moved.end(i)} {
				if d := DistToLine(p, a, b) - by[i].Abs(); d.Abs() > 1 || Side(a, b, p)*sign(int64(by[i])) < 0 {
					t.Fatalf("edge %d moved by %d, asked for %d", i, DistToLine(p, a, b), by[i])
				}
			}
		}
	})
}
