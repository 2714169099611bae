package lsq

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// drawRoom is a random convex-ish room of n corners and one floor point, taped in every pair that a bit of the draw
// allows, with normal-sized noise.
func drawRoom(t *rapid.T, least int) (at []Point, obs []Observation) {
	n := rapid.IntRange(4, 7).Draw(t, "corners")
	for i := 0; i < n; i++ {
		a := (float64(i) + rapid.Float64Range(-0.25, 0.25).Draw(t, "angle")) / float64(n) * 2 * math.Pi
		r := rapid.Float64Range(60, 120).Draw(t, "radius")
		at = append(at, Point{r * math.Cos(a), r * math.Sin(a)})
	}
	at = append(at, Point{rapid.Float64Range(-20, 20).Draw(t, "x"), rapid.Float64Range(-20, 20).Draw(t, "y")})
	for i := range at {
		for j := range at[:i] {
			if rapid.IntRange(0, 9).Draw(t, "taped") < least {
				noise := rapid.Float64Range(-0.1, 0.1).Draw(t, "noise")
				obs = append(obs, Observation{Distance, j, i, length(at[i], at[j]) + noise, rapid.Float64Range(0.05, 0.2).Draw(t, "sigma")})
			}
		}
	}
	return at, obs
}

func adjustDrawn(t *rapid.T, p Problem) Result {
	res, v := Adjust(p)
	if v.Outcome != Adjusted {
		t.Skip("not adjustable")
	}
	return res
}

// The design matrix against central differences of the computed values.
func TestGradient(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at, obs := drawRoom(t, 9)
		obs = append(obs, Observation{OffsetX, 0, 1, 1, 1}, Observation{OffsetY, 2, 0, 1, 1})
		w := newNetwork(obs, len(at), nil)
		const h = 1e-4
		for _, o := range obs {
			r := w.row(o, at)
			for u := 0; u < w.unknowns; u++ {
				step := make([]float64, w.unknowns)
				step[u] = h
				up := computed(o, w.moved(at, step))
				step[u] = -h
				want := (up - computed(o, w.moved(at, step))) / (2 * h)
				step[u] = 1
				if math.Abs(r.dot(step)-want) > 1e-7 {
					t.Fatalf("%+v by unknown %d: %g, by differences %g", o, u, r.dot(step), want)
				}
			}
		}
	})
}

// At the solution no small move of any point lowers the sum of squares: the definition, tried by brute force.
func TestLeastIsLeast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at, obs := drawRoom(t, 8)
		res := adjustDrawn(t, Problem{Start: at, Observations: obs})
		least := cost(obs, res.Points)
		for p := range at {
			for _, d := range []Point{{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, 1}} {
				for _, step := range []float64{1e-3, 1e-2, 0.1} {
					other := slices.Clone(res.Points)
					other[p] = Point{other[p].X + step*d.X, other[p].Y + step*d.Y}
					if cost(obs, other) < least {
						t.Fatalf("moving point %d by %g lowers the cost", p, step)
					}
				}
			}
		}
	})
}

// Redundancy numbers lie between 0 and 1 and add up to the freedom; residual, standardised residual and closing error
// belong together.
func TestRedundancyAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at, obs := drawRoom(t, 8)
		res := adjustDrawn(t, Problem{Start: at, Observations: obs})
		sum := 0.0
		for i, r := range res.Redundancy {
			sum += r
			if r < 0 || r > 1 {
				t.Fatalf("redundancy %g", r)
			}
			if res.Controlled[i] && math.Abs(res.ClosingErrors[i]*r-res.Residuals[i]) > 1e-9 {
				t.Fatalf("closing error %g of residual %g at %g", res.ClosingErrors[i], res.Residuals[i], r)
			}
		}
		if math.Abs(sum-float64(res.Freedom)) > 1e-6 {
			t.Fatalf("redundancy adds up to %g of %d", sum, res.Freedom)
		}
	})
}

// The closing error is what solving again without the reading computes for it, to the first order: checked with errors
// small against the room.
func TestClosingErrorIsLeaveOneOut(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at, obs := drawRoom(t, 9)
		for i, o := range obs {
			exact := length(at[o.From], at[o.To])
			obs[i].Value = exact + (o.Value-exact)/100
		}
		res := adjustDrawn(t, Problem{Start: at, Observations: obs})
		for i, o := range obs {
			if res.Redundancy[i] < 0.05 {
				continue
			}
			rest := slices.Delete(slices.Clone(obs), i, i+1)
			without, v := Adjust(Problem{Start: at, Observations: rest})
			if v.Outcome != Adjusted {
				continue // leaves no network, or the wrong one of two readings
			}
			got := computed(o, without.Points) - o.Value
			if math.Abs(got-res.ClosingErrors[i]) > 0.01*math.Abs(got)+1e-5 {
				t.Fatalf("closing error of %d: %g to the first order, %g when solved again", i, res.ClosingErrors[i], got)
			}
		}
	})
}

// Where the network lies, how large its unit is and in what order its readings come changes nothing.
func TestInvariance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at, obs := drawRoom(t, 9)
		plain := adjustDrawn(t, Problem{Start: at, Observations: obs})

		a := rapid.Float64Range(0, 6).Draw(t, "turn")
		var start []Point
		for _, p := range at {
			q := turned(p, math.Cos(a), math.Sin(a))
			start = append(start, Point{q.X + 500, q.Y - 70})
		}
		sameResult(t, "turned", adjustDrawn(t, Problem{Start: start, Observations: obs}), plain, 1)

		var scaled []Observation
		big := slices.Clone(at)
		for _, o := range obs {
			o.Value *= 25.4
			o.Sigma *= 25.4
			scaled = append(scaled, o)
		}
		for i := range big {
			big[i] = Point{big[i].X * 25.4, big[i].Y * 25.4}
		}
		sameResult(t, "scaled", adjustDrawn(t, Problem{Start: big, Observations: scaled}), plain, 25.4)

		order := rapid.Permutation(obs).Draw(t, "order")
		shuffled := adjustDrawn(t, Problem{Start: at, Observations: order})
		back := shuffled
		back.Residuals, back.Standardised = make([]float64, len(obs)), make([]float64, len(obs))
		for i, o := range order {
			k := slices.Index(obs, o)
			back.Residuals[k], back.Standardised[k] = shuffled.Residuals[i], shuffled.Standardised[i]
		}
		sameResult(t, "shuffled", back, plain, 1)
	})
}

func sameResult(t *rapid.T, what string, got, want Result, scale float64) {
	for i := range want.Residuals {
		if math.Abs(got.Residuals[i]-scale*want.Residuals[i]) > 1e-6*scale {
			t.Fatalf("%s: residual %d is %g, was %g", what, i, got.Residuals[i], want.Residuals[i])
		}
		if math.Abs(got.Standardised[i]-want.Standardised[i]) > 1e-4 {
			t.Fatalf("%s: standardised %d is %g, was %g", what, i, got.Standardised[i], want.Standardised[i])
		}
	}
	if math.Abs(got.S0-want.S0) > 1e-6 {
		t.Fatalf("%s: s0 %g, was %g", what, got.S0, want.S0)
	}
}

// Two runs give the same bits.
func TestSameBits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, obs := drawRoom(t, 8)
		p := Problem{Observations: obs, Outline: Outline{Corners: 4}}
		a, va := Adjust(p)
		b, vb := Adjust(p)
		if fmt.Sprintf("%x %v", a.Points, va) != fmt.Sprintf("%x %v", b.Points, vb) {
			t.Fatal("not the same")
		}
	})
}

// One planted gross error among exact readings, ten standard deviations and small against the room: it is always among the suspects, and these are
// just the readings without which, all solved again, the rest fits nearly as well as without the wrong one. With one
// redundancy no reading is ever named alone.
func TestPlantedGrossError(t *testing.T) {
	named, told := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		at, obs := drawRoom(t, rapid.IntRange(7, 10).Draw(t, "density"))
		if len(obs) == 0 {
			t.Skip("nothing taped")
		}
		for i := range obs {
			obs[i].Value, obs[i].Sigma = length(at[obs[i].From], at[obs[i].To]), 0.001
		}
		bad := rapid.IntRange(0, len(obs)-1).Draw(t, "bad")
		obs[bad].Value += 0.01
		res := adjustDrawn(t, Problem{Start: at, Observations: obs})
		if res.Redundancy[bad] < 0.15 {
			t.Skip("hardly controlled")
		}
		if !slices.Contains(res.Suspects, bad) {
			t.Fatalf("suspects %v, planted %d: %.2f", res.Suspects, bad, res.Standardised)
		}
		if res.Freedom == 1 && (len(res.Suspects) == 1 || !res.Equal) {
			t.Fatalf("one redundancy, and suspects %v, equal %v", res.Suspects, res.Equal)
		}
		suspectsAsSolvedAgain(t, at, obs, res)
		if res.Freedom > 1 {
			told++
		}
		if len(res.Suspects) == 1 {
			named++
			if res.Suspects[0] != bad || !res.Rest.Agree && res.Rest.Points != nil {
				t.Fatalf("named %v, planted %d, rest %+v", res.Suspects, bad, res.Rest)
			}
		}
	})
	t.Logf("named %d of %d with two or more redundancies", named, told)
	if named == 0 || told == 0 {
		t.Error("nothing was named")
	}
}

// suspectsAsSolvedAgain leaves out each reading in turn: the rest, exact but for the planted error, is left with a cost
// of 0 without the wrong one and of 2 ln(odds) at the edge of suspicion.
func suspectsAsSolvedAgain(t *rapid.T, at []Point, obs []Observation, res Result) {
	const edge, nonlinear = 2 * lnOddsToName, 0.3
	for i := range obs {
		rest := slices.Delete(slices.Clone(obs), i, i+1)
		without, v := Adjust(Problem{Start: at, Observations: rest})
		if v.Outcome != Adjusted || res.Redundancy[i] < 0.01 { // all but loose without it: no longer of first order
			continue
		}
		c := cost(rest, without.Points)
		suspect := slices.Contains(res.Suspects, i)
		if suspect && c > edge+nonlinear || !suspect && c < edge-nonlinear {
			t.Fatalf("reading %d, suspect %v: without it the cost is %g", i, suspect, c)
		}
	}
}
