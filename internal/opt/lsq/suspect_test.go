package lsq

import (
	"math"
	"testing"
)

// A room of 71-3/8 by 96-1/4 in (invented, a little out of square), true distances, and A-C read 7/16 in too long with
// a tape that is right to 1/16 in.
func roomWithWrongDiagonal(t testing.TB, list string) []Observation {
	room := points(t, "0,0 71.375,0 71.9,96.2 0.4,95.9 30,40")
	obs := measured(room, list, 1.0/16)
	for i, o := range obs {
		if pairOf(o) == (Pair{0, 2}) {
			obs[i].Value += 7.0 / 16
			break
		}
	}
	return obs
}

func TestOneRedundancyCannotTell(t *testing.T) {
	obs := roomWithWrongDiagonal(t, "AB BC CD DA AC BD")
	for i := range obs {
		obs[i].Sigma = 1.0 / 32
	}
	res := mustAdjust(t, Problem{Observations: obs, Outline: fourCorners})
	for i := range obs {
		near(t, "standardised", math.Abs(res.Standardised[i]), math.Abs(res.Standardised[0]), 1e-6)
		if a := math.Abs(res.Residuals[i]); a < 0.03 || a > 0.12 {
			t.Errorf("residual of %s is %.3f: want about 0.1 in", pairs(obs, []int{i}), a)
		}
	}
	near(t, "residual of A-C", res.Residuals[4], -7.0/16/4, 0.002)
	near(t, "closing error of A-C", res.ClosingErrors[4], -7.0/16, 0.002)
	near(t, "what would show of A-C, 4.13 / 32 / sqrt(1/4)", res.Detectable[4], 4.13/32*2, 0.003)
	if len(res.Suspects) != 6 || !res.Equal || len(res.Groups) != 1 {
		t.Errorf("suspects %s, equal %v: want all six", pairs(obs, res.Suspects), res.Equal)
	}
	if res.Rest == nil || res.Rest.Freedom != 0 || res.Rest.Agree {
		t.Errorf("rest %+v: nothing is left that could agree", res.Rest)
	}
}

func TestMoreReadingsNameTheWrongOne(t *testing.T) {
	for _, list := range []string{"AB BC CD DA AC BD AC", "AB BC CD DA AC BD AE BE CE DE"} {
		obs := roomWithWrongDiagonal(t, list)
		res := mustAdjust(t, Problem{Observations: obs, Outline: fourCorners})
		if len(res.Suspects) != 1 || res.Suspects[0] != 4 {
			t.Errorf("%s: suspects %s, want the first A-C; standardised %.2f", list, pairs(obs, res.Suspects), res.Standardised)
			continue
		}
		if !res.Rest.Agree || res.Rest.Left != 4 {
			t.Errorf("%s: rest %+v, want agreement", list, res.Rest)
		}
		near(t, "A-C without it", length(res.Rest.Points[0], res.Rest.Points[2]), obs[4].Value-7.0/16, 1e-6)
	}
}

// Two wrong readings: the worst is named, and what remains is told not to agree.
func TestTwoWrongReadings(t *testing.T) {
	obs := roomWithWrongDiagonal(t, "AB BC CD DA AC BD AC BD AE BE CE DE")
	obs[8].Value -= 2
	res := mustAdjust(t, Problem{Observations: obs, Outline: fourCorners})
	if len(res.Suspects) != 1 || res.Suspects[0] != 8 || res.Rest.Agree || res.Rest.Worst != 4 {
		t.Errorf("suspects %s, rest %+v: want A-E, then A-C", pairs(obs, res.Suspects), res.Rest)
	}
}

func TestUncontrolledReadings(t *testing.T) {
	at := points(t, "0,0 70,0 70,90 0,90 30,40")
	obs := measured(at, "AB BC CD DA AC BD AE BE", 0.05) // nothing checks the two that locate E
	obs[6].Value += 3
	res := mustAdjust(t, Problem{Observations: obs, Outline: fourCorners})
	for i := range obs {
		if res.Controlled[i] != (i < 6) {
			t.Errorf("%s controlled: %v", pairs(obs, []int{i}), res.Controlled[i])
		}
	}
	if res.Suspects != nil || res.Freedom != 1 || res.Standardised[6] != 0 || res.ClosingErrors[6] != 0 {
		t.Errorf("suspects %v, freedom %d, %v", res.Suspects, res.Freedom, res.Standardised)
	}
	if got := len(res.Groups[0]); got != 6 || !res.Equal {
		t.Errorf("group of %d, equal %v: want the six of the room", got, res.Equal)
	}
}

// No redundancy at all: the shape is exact and nothing is said to agree.
func TestTriangleHasNoControl(t *testing.T) {
	res := mustAdjust(t, Problem{Observations: readings(t, "A-B 3, B-C 4, C-A 5", 0.1)})
	if res.Freedom != 0 || res.S0 != 0 || res.Suspects != nil || res.Groups != nil || res.Equal || res.Controlled[0] {
		t.Errorf("%+v", res)
	}
	near(t, "area", shoelace(res.Points), 6, 1e-9)
}

func TestOddsConstant(t *testing.T) {
	near(t, "ln of the odds", lnOddsToName, math.Log(oddsToName), 1e-15)
	near(t, "power at the shift", math.Erfc((critical-shift)/math.Sqrt2)/2, 0.8, 0.001)
	near(t, "chance beyond the critical value", math.Erfc(critical/math.Sqrt2), 0.001, 0.00001)
}
