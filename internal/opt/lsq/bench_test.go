package lsq

import "testing"

func benchmark(b *testing.B, p Problem) {
	for b.Loop() {
		if _, v := Adjust(p); v.Outcome != Adjusted {
			b.Fatal(v)
		}
	}
}

// Four sides, two diagonals.
func BenchmarkRoomOfSixReadings(b *testing.B) {
	at := points(b, "0,0 71.375,0 71.9,96.2 0.4,95.9")
	benchmark(b, Problem{Observations: measured(at, "AB BC CD DA AC BD", 0.05), Outline: fourCorners})
}

// Twenty corners, 42 readings, no start, one reading wrong.
func BenchmarkTwentyCorners(b *testing.B) {
	at, turns := staircase(20, func() float64 { return 0 })
	var obs []Observation
	for i := range at {
		for _, j := range []int{(i + 1) % 20, 0, 19} {
			if j != i && length(at[i], at[j]) > 0 {
				obs = append(obs, Observation{Distance, i, j, length(at[i], at[j]), 0.05})
			}
		}
	}
	obs[17].Value++
	benchmark(b, Problem{Observations: obs, Outline: Outline{20, CounterClockwise, turns}})
}

// Two triangles that cannot be placed one point after another.
func BenchmarkNotOneByOne(b *testing.B) {
	at := points(b, "0,0 90,4 41,70 -38,-44 150,-35 44,140")
	benchmark(b, Problem{Observations: measured(at, "AB BC CA DE EF FD AD BE CF AE", 0.1)})
}

// Twenty sides and nothing else: what is missing.
func BenchmarkTooFew(b *testing.B) {
	at, turns := staircase(20, func() float64 { return 0 })
	var obs []Observation
	for i := range at {
		obs = append(obs, Observation{Distance, i, (i + 1) % 20, length(at[i], at[(i+1)%20]), 0.05})
	}
	p := Problem{Observations: obs, Outline: Outline{20, CounterClockwise, turns}}
	for b.Loop() {
		if _, v := Adjust(p); v.Missing != 17 {
			b.Fatal(v)
		}
	}
}
