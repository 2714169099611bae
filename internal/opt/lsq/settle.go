package lsq

import "math"

const (
	// stepBudget bounds the trials of one adjustment, accepted or not. Sound networks need 4 to 10.
	stepBudget = 200

	// restTolerance ends the iteration: no coordinate moved by more than this part of the network's extent. On 10 m it
	// is 1e-7 mm, far below any reading, and a hundred thousand times the rounding of a float64.
	restTolerance = 1e-11

	// Levenberg's damping, in parts of the greatest diagonal element of the normal matrix: where it sets in, where it is
	// let go again, and where a step has become so short that nothing is gained any more. Not in parts of each element,
	// after Marquardt: a start that lies nearly in line would then be thrown far aside.
	dampStart = 1e-4
	dampLeast = 1e-7
	dampMost  = 1e12

	// costNoise is the relative rise of the cost that rounding alone can make.
	costNoise = 1e-13
)

// settled is where an iteration ended.
type settled struct {
	at    []Point
	cost  float64
	steps int
	rest  bool // came to rest within the budget
}

// settle brings the points to the least weighted sum of squares near them: Gauss-Newton, and damped after Levenberg
// where a full step would make it worse or the normal matrix is singular.
func (w *network) settle(at []Point, budget int) settled {
	s := settled{at: at, cost: cost(w.obs, at)}
	size := extent(at)
	damp := 0.0
	for s.steps < budget && damp <= dampMost {
		s.steps++
		step, ok := w.step(s.at, damp)
		if !ok {
			damp = harder(damp)
			continue
		}
		next := w.moved(s.at, step)
		c := cost(w.obs, next)
		if !(c <= s.cost+float64(costNoise*s.cost)) && largest(step) > restTolerance*size {
			damp = harder(damp)
			continue
		}
		s.at, s.cost = next, c
		if largest(step) <= restTolerance*size && damp < 1 {
			s.rest = true
			return s
		}
		damp = softer(damp)
	}
	return s
}

func harder(damp float64) float64 { return max(dampStart, damp*10) }

func softer(damp float64) float64 {
	if damp <= dampLeast {
		return 0
	}
	return damp / 10
}

// step solves (N + damp max(N) I) dx = A'P (measured - computed).
func (w *network) step(at []Point, damp float64) ([]float64, bool) {
	rows := w.rows(at, true)
	n := normal(rows, w.unknowns)
	if damp > 0 {
		much := float64(damp * largestDiagonal(n))
		for i := range n {
			n[i][i] += much
		}
	}
	l, ok := factor(n)
	if !ok {
		return nil, false
	}
	right := make([]float64, w.unknowns)
	for i, o := range w.obs {
		e := (o.Value - computed(o, at)) / o.Sigma
		for k := 0; k < rows[i].n; k++ {
			right[rows[i].col[k]] += float64(rows[i].val[k] * e)
		}
	}
	return solve(l, right), true
}

func largestDiagonal(a [][]float64) float64 {
	m := 0.0
	for i := range a {
		m = max(m, a[i][i])
	}
	return m
}

func largest(v []float64) float64 {
	m := 0.0
	for _, x := range v {
		m = max(m, math.Abs(x))
	}
	return m
}

// extent is the greater side of the box round the points, or 1 for a single place.
func extent(at []Point) float64 {
	lo, hi := at[0], at[0]
	for _, p := range at {
		lo = Point{min(lo.X, p.X), min(lo.Y, p.Y)}
		hi = Point{max(hi.X, p.X), max(hi.Y, p.Y)}
	}
	if e := max(hi.X-lo.X, hi.Y-lo.Y); e > 0 {
		return e
	}
	return 1
}
