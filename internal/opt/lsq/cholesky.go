package lsq

import "math"

// normal is N = A'A of the rows.
func normal(rows []row, n int) [][]float64 {
	a := square(n)
	for i := range rows {
		r := &rows[i]
		for j := 0; j < r.n; j++ {
			for k := 0; k < r.n; k++ {
				a[r.col[j]][r.col[k]] += float64(r.val[j] * r.val[k])
			}
		}
	}
	return a
}

func square(n int) [][]float64 {
	cells := make([]float64, n*n)
	a := make([][]float64, n)
	for i := range a {
		a[i] = cells[i*n : (i+1)*n]
	}
	return a
}

// leastPivot is the relative size below which a pivot of the weighted normal matrix is rounding noise: some thousand
// times the rounding of a float64 (1.1e-16).
const leastPivot = 1e-13

// factor gives the lower triangle L of a = L L'. ok is false when a is not safely positive definite.
func factor(a [][]float64) (l [][]float64, ok bool) {
	n := len(a)
	l = square(n)
	for j := 0; j < n; j++ {
		d := a[j][j] - dotPrefix(l[j], l[j], j)
		if !(d > leastPivot*a[j][j]) {
			return nil, false
		}
		l[j][j] = math.Sqrt(d)
		for i := j + 1; i < n; i++ {
			l[i][j] = (a[i][j] - dotPrefix(l[i], l[j], j)) / l[j][j]
		}
	}
	return l, true
}

func dotPrefix(a, b []float64, n int) float64 {
	s := 0.0
	for k := 0; k < n; k++ {
		s += float64(a[k] * b[k])
	}
	return s
}

// solve gives x of L L' x = b.
func solve(l [][]float64, b []float64) []float64 {
	n := len(b)
	x := make([]float64, n)
	for i := 0; i < n; i++ {
		x[i] = (b[i] - dotPrefix(l[i], x, i)) / l[i][i]
	}
	for i := n - 1; i >= 0; i-- {
		s := x[i]
		for k := i + 1; k < n; k++ {
			s -= float64(l[k][i] * x[k])
		}
		x[i] = s / l[i][i]
	}
	return x
}
