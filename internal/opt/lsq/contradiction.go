package lsq

import "math"

// contradiction looks for a distance that is longer than a way round through other points: no shape in the plane has
// both (triangle inequality, carried over any number of sides). Where a pair was measured more than once it takes the
// readings that agree best, and it allows for chance by the critical value. It reports the greatest excess.
func contradiction(obs []Observation, n int) (Verdict, bool) {
	long, short := extremes(obs, n)
	worst := Verdict{Outcome: Contradictory}
	for i := 0; i < n; i++ {
		for j := i + 1; j < n; j++ {
			if short[i][j] < 0 {
				continue
			}
			path := shortest(obs, long, i, j)
			excess := obs[short[i][j]].Value - total(obs, path)
			if path == nil || excess <= allowance(obs, append(path, short[i][j])) || excess <= worst.Excess {
				continue
			}
			worst.Readings, worst.Excess = append([]int{short[i][j]}, path...), excess
		}
	}
	return worst, worst.Readings != nil
}

// extremes gives for each pair the number of its longest and of its shortest distance reading, -1 where there is none.
func extremes(obs []Observation, n int) (long, short [][]int) {
	long, short = none(n), none(n)
	for i, o := range obs {
		if o.Kind != Distance {
			continue
		}
		a, b := o.From, o.To
		if long[a][b] < 0 || o.Value > obs[long[a][b]].Value {
			long[a][b], long[b][a] = i, i
		}
		if short[a][b] < 0 || o.Value < obs[short[a][b]].Value {
			short[a][b], short[b][a] = i, i
		}
	}
	return long, short
}

func none(n int) [][]int {
	t := make([][]int, n)
	for i := range t {
		t[i] = make([]int, n)
		for j := range t[i] {
			t[i][j] = -1
		}
	}
	return t
}

// shortest is the way from one point to another by readings, not using their own, as numbers of observations
// (Dijkstra's method on a full table). nil: there is no way.
func shortest(obs []Observation, reading [][]int, from, to int) (path []int) {
	n := len(reading)
	far := make([]float64, n)
	via := make([]int, n)
	done := make([]bool, n)
	for i := range far {
		far[i], via[i] = math.Inf(1), -1
	}
	far[from] = 0
	for at := from; at >= 0; at = nearest(far, done) {
		done[at] = true
		for k := 0; k < n; k++ {
			r := reading[at][k]
			if r < 0 || at == from && k == to || far[at]+obs[r].Value >= far[k] {
				continue
			}
			far[k], via[k] = far[at]+obs[r].Value, at
		}
	}
	if via[to] < 0 {
		return nil
	}
	for k := to; k != from; k = via[k] {
		path = append(path, reading[k][via[k]])
	}
	return path
}

func nearest(far []float64, done []bool) int {
	best := -1
	for i, f := range far {
		if !done[i] && !math.IsInf(f, 1) && (best < 0 || f < far[best]) {
			best = i
		}
	}
	return best
}

func total(obs []Observation, list []int) float64 {
	s := 0.0
	for _, i := range list {
		s += obs[i].Value
	}
	return s
}

// allowance is how far the sum of the readings may be off by chance.
func allowance(obs []Observation, list []int) float64 {
	s := 0.0
	for _, i := range list {
		s += float64(obs[i].Sigma * obs[i].Sigma)
	}
	return critical * math.Sqrt(s)
}
