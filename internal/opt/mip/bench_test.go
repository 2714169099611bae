package mip

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"
)

// room makes rows as the checks of a room give them: chains of one to three variables with steps of a
// tape's mark, most of them holding with a margin, every ill-th not; whether all can be mended together is left to chance.
func room(rng *rand.Rand, vars, rows, ill int) Problem {
	const step = 25400
	var p Problem
	for range vars {
		p.Vars = append(p.Vars, Var{Lo: -rng.Int64N(49), Hi: rng.Int64N(49), Cost: 1 + rng.Int64N(4)})
	}
	for range rows {
		r := Row{A: make([]int64, vars)}
		for range 1 + rng.IntN(3) {
			r.A[rng.IntN(vars)] = step * []int64{-1, 1}[rng.IntN(2)]
		}
		r.B = -rng.Int64N(40 * step)
		if rng.IntN(ill) == 0 {
			r.B = rng.Int64N(16 * step)
		}
		p.Rows = append(p.Rows, r)
	}
	return p
}

// The first three are rooms; in the last every eighth check fails by up to an inch, and mostly nothing in range mends all.
func BenchmarkRoom(b *testing.B) {
	for _, c := range []struct{ vars, rows, ill int }{{4, 20, 20}, {8, 40, 20}, {12, 60, 20}, {12, 60, 8}} {
		b.Run(fmt.Sprintf("%dx%d-%d", c.vars, c.rows, c.ill), func(b *testing.B) {
			rng := rand.New(rand.NewPCG(7, 8))
			var all []Problem
			for range 40 {
				all = append(all, room(rng, c.vars, c.rows, c.ill))
			}
			var steps []int
			for _, p := range all {
				r := Solve(p)
				steps = append(steps, r.Steps)
				if !r.Complete {
					b.Fatal("not proven")
				}
			}
			slices.Sort(steps)
			for i := 0; b.Loop(); i++ {
				Solve(all[i%len(all)])
			}
			b.ReportMetric(float64(steps[len(steps)/2]), "median-steps")
			b.ReportMetric(float64(steps[len(steps)-1]), "most-steps")
		})
	}
}

func BenchmarkSingle(b *testing.B) {
	rng := rand.New(rand.NewPCG(9, 10))
	p := room(rng, 1, 60, 8)
	var ones []One
	for _, r := range p.Rows {
		ones = append(ones, One{r.A[0], r.B})
	}
	for b.Loop() {
		Single(p.Vars[0], ones)
	}
}
