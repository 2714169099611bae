package lsq

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// A foot misread, a large error against a room of some 100 in, found from the readings alone (no start): every pair of
// the corners and a floor point is taped, right to 1/16 in, but for a few that furniture hides.
func TestFootMisread(t *testing.T) {
	named, wrong, other, rounds := 0, 0, 0, 0
	rapid.Check(t, func(t *rapid.T) {
		at, obs := drawRoom(t, 9)
		if len(obs) < 2*len(at) {
			t.Skip("too few")
		}
		for i := range obs {
			obs[i].Sigma = 1.0 / 16
		}
		bad := rapid.IntRange(0, len(obs)-1).Draw(t, "bad")
		obs[bad].Value += rapid.SampledFrom([]float64{-12, 12}).Draw(t, "misread")
		res, v := Adjust(Problem{Observations: obs, Outline: Outline{Corners: len(at) - 1}})
		rounds++
		switch {
		case v.Outcome == Contradictory:
			other++
			if !slices.Contains(v.Readings, bad) {
				t.Fatalf("contradictory %v, planted %d", v.Readings, bad)
			}
		case v.Outcome != Adjusted:
			other++
		case len(res.Suspects) == 1 && res.Suspects[0] == bad:
			named++
		case !slices.Contains(res.Suspects, bad):
			wrong++
		}
	})
	t.Logf("of %d: named %d, wrongly accused %d, contradictory or loose %d", rounds, named, wrong, other)
	if wrong*20 > rounds || named*2 < rounds {
		t.Error("too many wrongly accused or too few named")
	}
}

// An outline of twenty corners and a floor point, with tape noise and each reading in turn wrong by 1-1/2 in: among the
// suspects wherever the redundancy lets so large an error show, which for many of these is not so.
func TestTwentyCornersOneWrong(t *testing.T) {
	noise := []float64{0.02, -0.03, 0.04, 0, -0.02, 0.03, -0.04, 0.01, 0.03, -0.01, 0}
	at, turns := staircase(20, func() float64 { return 0 })
	at = append(at, Point{70, 130})
	var obs []Observation
	tape := func(a, b int) {
		obs = append(obs, Observation{Distance, a, b, length(at[a], at[b]) + noise[len(obs)%len(noise)], 0.0625})
	}
	for i := 0; i < 20; i++ {
		tape(i, (i+1)%20)
		tape(i, 20)
		if i > 1 && i < 19 {
			tape(0, i)
		}
	}
	seen, named := 0, 0
	for bad := range obs {
		obs[bad].Value += 1.5
		res, v := Adjust(Problem{Observations: obs, Outline: Outline{20, CounterClockwise, turns}})
		obs[bad].Value -= 1.5
		if v.Outcome != Adjusted {
			t.Fatalf("%+v", v)
		}
		if res.Detectable[bad] > 1.5 {
			continue
		}
		seen++
		if !slices.Contains(res.Suspects, bad) {
			t.Errorf("%d-%d wrong: suspects %v", obs[bad].From, obs[bad].To, res.Suspects)
		}
		if len(res.Suspects) == 1 {
			named++
		}
	}
	t.Logf("of %d: %d large enough to be seen, %d named alone", len(obs), seen, named)
	if seen < 30 || named < 20 {
		t.Error("too few seen or named")
	}
}

// A wrong reading that breaks a triangle is named where the others can tell, and else the triangle is.
func TestBrokenTriangle(t *testing.T) {
	room := points(t, "0,0 72,0 72,96 0,96 36,48") // E where the diagonals cross
	obs := measured(room, "AB BC CD DA AC BD AE CE BE DE", 1.0/16)
	obs[4].Value += 2
	res := mustAdjust(t, Problem{Observations: obs, Outline: fourCorners})
	if pairs(obs, res.Suspects) != "A-C" || !res.Rest.Agree {
		t.Errorf("suspects %s", pairs(obs, res.Suspects))
	}
	near(t, "closing error", res.ClosingErrors[4], -2, 0.1)
	few := measured(room, "AB BC CA", 1.0/16)
	few[2].Value += 60
	if _, v := Adjust(Problem{Observations: few}); v.Outcome != Contradictory || math.Abs(v.Excess-12) > 1e-9 {
		t.Errorf("%+v", v) // 180 against 72 + 96
	}
}
