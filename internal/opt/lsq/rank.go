package lsq

import "math"

// rankTolerance is the least pivot of A'A, made from rows of unit length and so without a unit, that still fixes an
// unknown. A pivot is about the squared sine of the angle at which readings meet: at 1e-7 they meet at 1 in 3000, and a
// reading's error is three thousand times as large in the point. No tape gives a shape that way.
const rankTolerance = 1e-7

// freeMotions is a basis, orthonormal, of the motions of the unknowns that no observation notices at the points. It is
// empty when the readings fix them all. It comes from a Cholesky factorisation with complete pivoting, which stops at
// the first pivot below the tolerance (Higham, Accuracy and Stability of Numerical Algorithms, ch. 10, from memory).
func (w *network) freeMotions(at []Point) [][]float64 {
	a := normal(w.rows(at, false), w.unknowns)
	order, rank := pivoted(a)
	var basis [][]float64
	for k := rank; k < w.unknowns; k++ {
		basis = append(basis, nullVector(a, order, rank, k))
	}
	return orthonormal(basis)
}

// pivoted factors a in place, P'aP = L L', the greatest remaining pivot first, and gives the order and the rank. Row i of
// L stands in a[order[i]][order[j]], j <= i < rank, and for the rest of the rows j < rank.
func pivoted(a [][]float64) (order []int, rank int) {
	n := len(a)
	order = make([]int, n)
	for i := range order {
		order[i] = i
	}
	for k := 0; k < n; k++ {
		best := k
		for i := k + 1; i < n; i++ {
			if a[order[i]][order[i]] > a[order[best]][order[best]] {
				best = i
			}
		}
		order[k], order[best] = order[best], order[k]
		if a[order[k]][order[k]] < rankTolerance {
			return order, k
		}
		eliminate(a, order, k)
	}
	return order, n
}

// eliminate writes column k of L and takes its part off what remains.
func eliminate(a [][]float64, order []int, k int) {
	p := order[k]
	d := math.Sqrt(a[p][p])
	a[p][p] = d
	for _, i := range order[k+1:] {
		a[i][p] /= d
	}
	for _, i := range order[k+1:] {
		for _, j := range order[k+1:] {
			a[i][j] -= float64(a[i][p] * a[j][p])
		}
	}
}

// nullVector moves the unknown order[k] by one and the first rank unknowns so that nothing is noticed: L11' x = -l_k.
func nullVector(a [][]float64, order []int, rank, k int) []float64 {
	x := make([]float64, len(a))
	x[order[k]] = 1
	for i := rank - 1; i >= 0; i-- {
		s := -a[order[k]][order[i]]
		for j := i + 1; j < rank; j++ {
			s -= float64(a[order[j]][order[i]] * x[order[j]])
		}
		x[order[i]] = s / a[order[i]][order[i]]
	}
	return x
}

// orthonormal is Gram-Schmidt, the vectors being independent because each has a one where the others have nothing.
func orthonormal(basis [][]float64) [][]float64 {
	for i, v := range basis {
		for _, u := range basis[:i] {
			subtract(v, u, dotPrefix(u, v, len(v)))
		}
		normalise(v)
	}
	return basis
}

func subtract(v, u []float64, f float64) {
	for i := range v {
		v[i] -= float64(f * u[i])
	}
}

func normalise(v []float64) {
	f := 1 / math.Sqrt(dotPrefix(v, v, len(v)))
	for i := range v {
		v[i] *= f
	}
}
