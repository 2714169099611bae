package lsq

import "math"

const (
	// noControl is the redundancy number below which an error in a reading cannot be seen: at 1e-6 it would have to be
	// over three thousand standard deviations (critical over the square root) to show.
	noControl = 1e-6

	// alike is how near to 1 the correlation of two residuals counts as full: at 1e-4 their standardised values differ
	// by chance by 0.014 at most (square root of 2 alike), so that neither can ever stand out against the other.
	alike = 1e-4

	// shift is by how many standard deviations a standardised residual must be off its mean to pass the critical value
	// with a power of 80 %: 3.2905 + 0.8416. Baarda's delta0 of 4.13 (1968, from memory).
	shift = 4.13
)

// control fills in what the residuals say about each reading and gives their cofactor matrix in units of sigma:
// R = I - A N^-1 A', the diagonal of which are the redundancy numbers. nil: the standard deviations differ so much that
// the normal matrix is lost in rounding.
func (w *network) control(res *Result) [][]float64 {
	r := w.residualCofactors(res.Points)
	if r == nil {
		return nil
	}
	m := len(w.obs)
	res.Residuals, res.Standardised = make([]float64, m), make([]float64, m)
	res.Redundancy, res.ClosingErrors = make([]float64, m), make([]float64, m)
	res.Detectable = make([]float64, m)
	res.Controlled = make([]bool, m)
	res.Freedom = m - w.unknowns
	sum := 0.0
	for i, o := range w.obs {
		v := computed(o, res.Points) - o.Value
		sum += float64(v / o.Sigma * (v / o.Sigma))
		res.Residuals[i] = v
		res.Redundancy[i] = min(max(r[i][i], 0), 1)
		if r[i][i] > noControl {
			res.Controlled[i] = true
			res.Standardised[i] = v / (o.Sigma * math.Sqrt(r[i][i]))
			res.ClosingErrors[i] = v / r[i][i]
			res.Detectable[i] = shift * o.Sigma / math.Sqrt(r[i][i])
		}
	}
	if res.Freedom > 0 {
		res.S0 = math.Sqrt(sum / float64(res.Freedom))
	}
	return r
}

// residualCofactors is I - A N^-1 A', rows divided by their standard deviations, as I - QQ' with an orthonormal basis Q of
// the columns of A: where points are held weakly the normal matrix has lost the digits that small redundancies need.
func (w *network) residualCofactors(at []Point) [][]float64 {
	q := w.columnBasis(at)
	if q == nil {
		return nil
	}
	r := square(len(w.obs))
	for i := range r {
		r[i][i] = 1
	}
	for _, c := range q {
		for i := range r {
			subtract(r[i], c, c[i])
		}
	}
	return r
}

// columnBasis is Gram-Schmidt on the columns of the weighted design matrix, each orthogonalised twice, which makes them
// orthogonal to the last digits ("twice is enough", Kahan and Parlett, from memory). nil: a column is lost in rounding.
func (w *network) columnBasis(at []Point) [][]float64 {
	q := make([][]float64, w.unknowns)
	for u := range q {
		q[u] = make([]float64, len(w.obs))
	}
	for i, r := range w.rows(at, true) {
		for k := 0; k < r.n; k++ {
			q[r.col[k]][i] = r.val[k]
		}
	}
	for u, c := range q {
		normalise(c)
		for range 2 {
			for _, d := range q[:u] {
				subtract(c, d, dotPrefix(c, d, len(c)))
			}
		}
		if !(dotPrefix(c, c, len(c)) >= leastPivot) {
			return nil
		}
		normalise(c)
	}
	return q
}

// groups collects the controlled readings whose residuals are fully correlated. Full correlation is transitive, so that
// comparing with the first of a group is enough.
func groups(r [][]float64, controlled []bool) (list [][]int, equal bool) {
	taken := make([]bool, len(r))
	kinds := 0
	for i := range r {
		if taken[i] || !controlled[i] {
			continue
		}
		kinds++
		g := []int{i}
		for j := i + 1; j < len(r); j++ {
			if controlled[j] && !taken[j] && correlation(r, i, j) >= 1-alike {
				g = append(g, j)
				taken[j] = true
			}
		}
		if len(g) > 1 {
			list = append(list, g)
		}
	}
	return list, kinds == 1 && len(list) == 1
}

// correlation is |rho| of two residuals.
func correlation(r [][]float64, i, j int) float64 {
	return math.Abs(r[i][j]) / math.Sqrt(float64(r[i][i]*r[j][j]))
}
