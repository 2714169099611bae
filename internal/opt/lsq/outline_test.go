package lsq

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"
)

// An L-shape of six corners, counter-clockwise, its reading list a triangulation from the inner corner D.
const lShape = "0,0 200,0 200,80 90,82 91,160 2,158"

func TestOutlineTurnsTheWayAsked(t *testing.T) {
	at := points(t, lShape)
	obs := measured(at, "AB BC CD DE EF FA DA DB DF", 0.1)
	for sense, sign := range map[Sense]float64{CounterClockwise: 1, Clockwise: -1} {
		turns := []Turn{Left, Left, Left, Right, Left, Left}
		if sense == Clockwise {
			turns = []Turn{Right, Right, Right, Left, Right, Right}
		}
		res := mustAdjust(t, Problem{Observations: obs, Outline: Outline{6, sense, turns}})
		sameShape(t, res.Points, at, 1e-6)
		near(t, "area", shoelace(res.Points), sign*shoelace(at), 1e-4)
		if res.Mirrors != nil {
			t.Errorf("mirrors %v: the turns leave none", res.Mirrors)
		}
	}
}

// Without turns a corner with two readings may lie on either side, and it is said that it may.
func TestMirrorsAreTold(t *testing.T) {
	at := points(t, "0,0 100,0 60,30 0,100") // C is drawn in: a dart
	obs := measured(at, "AB BC CD DA BD", 0.1)
	res := mustAdjust(t, Problem{Observations: obs, Outline: fourCorners})
	if len(res.Mirrors) != 1 || names(res.Mirrors[0]) != "C" {
		t.Fatalf("mirrors %v, want C", res.Mirrors)
	}
	near(t, "without turns the corner is taken to be convex", sign64(cross(res.Points[1], res.Points[2], res.Points[3])), 1, 0)
	turns := []Turn{Left, Left, Right, Left}
	res = mustAdjust(t, Problem{Observations: obs, Outline: Outline{4, CounterClockwise, turns}})
	sameShape(t, res.Points, at, 1e-6)
	if res.Mirrors != nil {
		t.Errorf("mirrors %v: the turns leave none", res.Mirrors)
	}
}

func sign64(v float64) float64 { return math.Copysign(1, v) }

// staircase is a rectilinear outline of n corners (even), counter-clockwise, a little out of square: up the right side in
// steps and back along the top and the left wall.
func staircase(n int, wobble func() float64) (at []Point, turns []Turn) {
	steps := (n - 4) / 2
	corner := func(x, y float64, turn Turn) {
		at = append(at, Point{x + wobble(), y + wobble()})
		turns = append(turns, turn)
	}
	corner(0, 0, Left)
	x, y := float64(steps+1)*60, 0.0
	corner(x, y, Left)
	for s := 0; s < steps; s++ {
		y += 50
		corner(x, y, Left)
		x -= 60
		corner(x, y, Right)
	}
	corner(x, y+50, Left)
	corner(0, y+50, Left)
	return at, turns
}

// Outlines of up to 20 corners, all sides taped, each corner tied to two or three others and the whole shape found with
// no start, from readings in which the mirror images are settled by the turns alone. Where two corners lie so nearly in line
// with the first that a triangle can be turned over within the tolerance of a turn, the shape is not decided.
func TestLargeOutlinesFromDistancesAlone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := 2 * rapid.IntRange(3, 10).Draw(t, "half the corners")
		at, turns := staircase(n, func() float64 { return rapid.Float64Range(-3, 3).Draw(t, "wobble") })
		var obs []Observation
		tape := func(a, b int) { obs = append(obs, Observation{Distance, a, b, length(at[a], at[b]), 0.05}) }
		for i := range at {
			tape(i, (i+1)%n)
		}
		for i := 2; i < n-1; i++ {
			tape(0, i)
			if sign(at[0], at[i], at[i+1]) == 0 {
				t.Skip("in line")
			}
		}
		extra := rapid.IntRange(0, 5).Draw(t, "extra")
		for e := 0; e < extra; e++ {
			tape(1, 3+rapid.IntRange(0, n-4).Draw(t, "to"))
		}
		res, v := Adjust(Problem{Observations: obs, Outline: Outline{n, CounterClockwise, turns}})
		if v.Outcome != Adjusted {
			t.Fatalf("%+v", v)
		}
		for i := range at {
			for j := range at {
				if d := length(res.Points[i], res.Points[j]) - length(at[i], at[j]); math.Abs(d) > 1e-4 {
					t.Fatalf("distance %d-%d is off by %g; mirrors %v", i, j, d, res.Mirrors)
				}
			}
		}
	})
}

// A network that is rigid but in which no point has two readings to points placed before: two triangles joined by three
// readings between them.
func TestNotOneByOne(t *testing.T) {
	at := points(t, "0,0 90,4 41,70 -38,-44 150,-35 44,140")
	res := mustAdjust(t, Problem{Observations: measured(at, "AB BC CA DE EF FD AD BE CF", 0.1)})
	if res.Freedom != 0 || cost(measured(at, "AB BC CA DE EF FD AD BE CF", 0.1), res.Points) > 1e-12 {
		t.Errorf("freedom %d", res.Freedom)
	}
	all := measured(at, "AB BC CA DE EF FD AD BE CF AE BF CD", 0.1) // and with three more, only one shape
	sameShape(t, mustAdjust(t, Problem{Observations: all}).Points, at, 1e-6)
}

func TestSquaredSine(t *testing.T) {
	for _, c := range []struct{ a, b, c, want float64 }{
		{3, 4, 5, 1}, {1, 1, 1, 0.75}, {1, 1, 2, 0}, {1, 1, 5, 0},
	} {
		near(t, fmt.Sprint(c), squaredSine(c.a, c.b, c.c), c.want, 1e-12)
	}
}

// The rational parameter goes round at 4/pi times the even pace at most.
func TestOnCircle(t *testing.T) {
	for i := 0; i < 64; i++ {
		c, next := onCircle(i, 64), onCircle(i+1, 64)
		near(t, "radius", c.X*c.X+c.Y*c.Y, 1, 1e-12)
		if turn := math.Asin(cross(Point{}, c, next)); turn <= 0 || turn > 4.0/32+1e-3 {
			t.Errorf("from %d to the next: %g of a turn", i, turn/2/math.Pi)
		}
	}
}
