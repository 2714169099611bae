package lsq

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// The default datum: point 0 at the origin and 0-1 along +x, wherever the start lies.
func TestDefaultDatum(t *testing.T) {
	at := points(t, "10,10 10,80 -80,82 -86,9")
	res := mustAdjust(t, Problem{Start: at, Observations: measured(at, "AB BC CD DA AC BD", 0.1)})
	sameShape(t, res.Points, at, 1e-9)
	if res.Points[0] != (Point{}) || res.Points[1].Y != 0 || math.Abs(res.Points[1].X-70) > 1e-9 {
		t.Errorf("datum: %v", res.Points[:2])
	}
	near(t, "not turned over", shoelace(res.Points), shoelace(at), 1e-6)
}

// Offsets give the direction: a wall known to be off plumb by 3 in 90, as x is across and y up.
func TestOffsetsFixTheDirection(t *testing.T) {
	at := points(t, "0,0 3,90 73,92 70,1")
	for _, start := range [][]Point{at, nil} {
		obs := measured(at, "AB BC CD DA AC", 0.1)
		obs = append(obs, readings(t, "A>B x 3, A>D y 1, A>D x 70", 0.1)...)
		res := mustAdjust(t, Problem{Start: start, Observations: obs, Outline: Outline{Corners: 4, Sense: Clockwise}})
		for i, p := range at {
			near(t, "x of "+name(i), res.Points[i].X, p.X, 1e-6)
			near(t, "y of "+name(i), res.Points[i].Y, p.Y, 1e-6)
		}
		if res.Freedom != 2 {
			t.Errorf("freedom %d, want 8 readings less 6 unknowns", res.Freedom)
		}
	}
}

// A point located by how far it lies along and up from a corner, and one without any reading.
func TestPointByOffsets(t *testing.T) {
	obs := readings(t, "A-B 70, B-C 96, C-A 118.8107, A>B y 0, A>D x 20, A>D y 33, B>D x -50.01", 0.1)
	res := mustAdjust(t, Problem{Observations: obs})
	near(t, "x of D, the mean of two", res.Points[3].X, 19.995, 0.01)
	near(t, "y of D", res.Points[3].Y, 33, 1e-6)
	_, v := Adjust(Problem{Observations: obs, Count: 5})
	if v.Outcome != TooFew || v.Missing != 2 || names(v.Movable) != "E" || len(v.Enough) != 2 {
		t.Errorf("%+v", v)
	}
}

// Held points stay where they are; a point taped from three of them is an adjusted point by distances.
func TestFixedPoints(t *testing.T) {
	held := []Hold{{0, X, 10}, {0, Y, 20}, {1, X, 110}, {1, Y, 20}, {2, X, 60}, {2, Y, 140}}
	at := points(t, "10,20 110,20 60,140 55,62")
	obs := measured(at, "AD BD CD", 0.1)
	for _, start := range [][]Point{at, nil} {
		res := mustAdjust(t, Problem{Start: start, Fixed: held, Observations: append(obs, measured(at, "AB BC", 1)...)})
		for i, p := range at {
			near(t, "x of "+name(i), res.Points[i].X, p.X, 1e-6)
			near(t, "y of "+name(i), res.Points[i].Y, p.Y, 1e-6)
		}
		if res.Freedom != 3 || res.Controlled[0] == false {
			t.Errorf("freedom %d, want 5 readings less 2 unknowns", res.Freedom)
		}
	}
}

// A datum that does not hold the network: no distance can mend it, and none is offered as enough.
func TestDatumWanting(t *testing.T) {
	at := points(t, "0,0 70,0 71,90")
	_, v := Adjust(Problem{Start: at, Fixed: []Hold{{0, X, 0}, {0, Y, 0}}, Observations: measured(at, "AB BC CA", 0.1)})
	if v.Outcome != TooFew || v.Missing != 1 || len(v.Pairs) != 0 || v.Enough != nil {
		t.Errorf("%+v", v)
	}
}

func TestMalformed(t *testing.T) {
	ok := Observation{Distance, 0, 1, 70, 0.1}
	for what, bad := range map[string]Observation{
		"no length":      {Distance, 0, 1, 0, 0.1},
		"less than none": {Distance, 0, 1, -3, 0.1},
		"to itself":      {Distance, 1, 1, 3, 0.1},
		"no such point":  {Distance, 0, -1, 3, 0.1},
		"too many":       {Distance, 0, mostPoints, 3, 0.1},
		"no deviation":   {Distance, 0, 1, 3, 0},
		"not a number":   {Distance, 0, 1, math.NaN(), 0.1},
		"endless":        {OffsetX, 0, 1, math.Inf(1), 0.1},
		"no such kind":   {Kind(7), 0, 1, 3, 0.1},
	} {
		_, v := Adjust(Problem{Observations: []Observation{ok, bad}})
		if v.Outcome != Malformed || len(v.Readings) != 1 || v.Readings[0] != 1 {
			t.Errorf("%s: %+v", what, v)
		}
	}
	for what, p := range map[string]Problem{
		"nothing":         {},
		"one point":       {Count: 1},
		"start too short": {Start: []Point{{0, 0}}, Observations: []Observation{ok}},
		"start endless":   {Start: []Point{{0, 0}, {math.Inf(1), 0}}, Observations: []Observation{ok}},
		"turns of others": {Outline: Outline{Corners: 2, Turns: []Turn{Left}}, Observations: []Observation{ok}},
		"no such turn":    {Outline: Outline{Corners: 2, Turns: []Turn{Left, 9}}, Observations: []Observation{ok}},
		"hold no point":   {Fixed: []Hold{{-1, X, 0}}, Observations: []Observation{ok}},
	} {
		if _, v := Adjust(p); v.Outcome != Malformed || v.Readings != nil {
			t.Errorf("%s: %+v", what, v)
		}
	}
}

// Whatever is put in, something sensible comes out: no panic, no number that is none, and every list of its length.
func TestAnyInput(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 8).Draw(t, "points")
		var p Problem
		size := rapid.SampledFrom([]float64{1e-6, 1, 100, 1e9}).Draw(t, "size")
		for i := rapid.IntRange(0, 20).Draw(t, "readings"); i > 0; i-- {
			p.Observations = append(p.Observations, Observation{
				Kind:  Kind(rapid.SampledFrom([]int{0, 0, 0, 0, 1, 2}).Draw(t, "kind")),
				From:  rapid.IntRange(0, n-1).Draw(t, "from"),
				To:    rapid.IntRange(0, n-1).Draw(t, "to"),
				Value: size * rapid.SampledFrom([]float64{1, 1, 1, 1.5, 0.5, 1e-9, 0.3}).Draw(t, "value"),
				Sigma: rapid.SampledFrom([]float64{1e-9, 0.1, 0.1, 1e9}).Draw(t, "sigma"),
			})
		}
		p.Outline.Corners = rapid.IntRange(0, n).Draw(t, "corners")
		p.Count = n
		if rapid.Bool().Draw(t, "held") {
			p.Fixed = []Hold{{0, X, 5}, {1, X, 7}, {1, Y, 1}}
		}
		res, v := Adjust(p)
		if v.Outcome == Adjusted && len(res.Residuals) != len(p.Observations) {
			t.Fatal("a residual is missing")
		}
		for i := range res.Residuals {
			for _, f := range []float64{res.Residuals[i], res.Standardised[i], res.Redundancy[i], res.ClosingErrors[i]} {
				if math.IsNaN(f) || math.IsInf(f, 0) {
					t.Fatalf("reading %d: %+v", i, res)
				}
			}
		}
	})
}

// From a start that is far off the damped steps still arrive, and where the budget ends first that is said.
func TestFarStart(t *testing.T) {
	at := points(t, "0,0 70,0 72,90 -3,95")
	obs := measured(at, "AB BC CD DA AC BD", 0.1)
	far := points(t, "0,0 1,0 900,2 -5,1")
	res := mustAdjust(t, Problem{Start: far, Observations: obs})
	near(t, "cost", cost(obs, res.Points), 0, 1e-12)
	w := newNetwork(obs, 4, []Hold{{0, X, 0}, {0, Y, 0}, {1, Y, 0}})
	if w.settle(far, 3).rest {
		t.Error("came to rest in 3 steps")
	}
}

// Four sides exact to 1e-9 and a diagonal known to 1e9: the shape hangs on digits that a float64 has not.
func TestDrownedInRounding(t *testing.T) {
	at := points(t, "0,0 70,0 72,90 -3,95")
	obs := append(measured(at, "AB BC CD DA", 1e-9), measured(at, "AC", 1e9)...)
	if res, v := Adjust(Problem{Start: at, Observations: obs}); v.Outcome != NotConverging || res.Residuals != nil {
		t.Errorf("%+v", v)
	}
}

func TestCostNeverRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at, obs := drawRoom(t, 9)
		for i := range at {
			at[i].X += rapid.Float64Range(-80, 80).Draw(t, "dx")
			at[i].Y += rapid.Float64Range(-80, 80).Draw(t, "dy")
		}
		w := newNetwork(obs, len(at), []Hold{{0, X, at[0].X}, {0, Y, at[0].Y}, {1, Y, at[1].Y}})
		last := cost(obs, at)
		for steps := 1; steps < 40; steps++ {
			c := w.settle(at, steps).cost
			if c > last*(1+1e-9)+1e-9 {
				t.Fatalf("step %d: %g after %g", steps, c, last)
			}
			last = c
		}
	})
}
