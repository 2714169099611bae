package bar

import "math"

// maxStall is how many pivots may gain nothing before columns are taken by
// their order, which can not cycle (Bland, Mathematics of OR 2, 1977).
const maxStall = 400

// primal improves a feasible basis to the optimum; false where it ran out.
func (l *program) primal(limit int) bool {
	n := len(l.cols.cost)
	in := l.inBasis()
	l.stall = 0
	for range limit {
		enter, least := -1, -tiny
		for i := range in {
			if in[i] {
				continue
			}
			if d := l.reduced(l.column(i, n)); d < least {
				enter, least = i, d
				if l.stall > maxStall {
					break
				}
			}
		}
		if enter < 0 {
			return true
		}
		l.direction(l.column(enter, n))
		row := l.leaving()
		if row < 0 {
			return false
		}
		in[l.index(l.basis[row], n)], in[enter] = false, true
		l.pivot(row, l.column(enter, n), least)
	}
	return false
}

// direction is how the basis changes with a column.
func (l *program) direction(col int) {
	m := len(l.b)
	if len(l.step) != m {
		l.step = make([]float64, m)
	}
	for i := range l.step {
		row := l.inv[i*m : (i+1)*m]
		if col < 0 {
			l.step[i] = row[^col] * l.slack[^col]
			continue
		}
		v := 0.0
		for j, r := range l.cols.rows[col] {
			v += row[r] * l.cols.vals[col][j]
		}
		l.step[i] = v
	}
}

func (l *program) leaving() int {
	row, least := -1, math.Inf(1)
	for i, v := range l.step {
		if v <= tiny {
			continue
		}
		q := max(l.x[i], 0) / v
		if q < least-tiny || q < least+tiny && row >= 0 && l.prefer(i, row) {
			row, least = i, min(q, least)
		}
	}
	return row
}

// prefer breaks ties: the larger pivot is safer; while stalled, Bland's order.
func (l *program) prefer(i, row int) bool {
	if l.stall > maxStall {
		return l.basis[i] < l.basis[row]
	}
	return l.step[i] > l.step[row]
}

// pivot puts a column into the basis in place of that of the row; step holds its
// direction, d is its reduced cost.
func (l *program) pivot(row, col int, d float64) {
	m := len(l.b)
	l.pivots++
	pr := l.inv[row*m : (row+1)*m]
	f := 1 / l.step[row]
	for j := range pr {
		pr[j] *= f
	}
	t := l.x[row] * f
	if math.Abs(t*d) > tiny {
		l.stall = 0
	} else {
		l.stall++
	}
	nz := l.nonzero(pr)
	for i, v := range l.step {
		if i == row || math.Abs(v) < 1e-13 {
			continue
		}
		l.x[i] -= v * t
		lessen(l.inv[i*m:(i+1)*m], v, pr, nz)
	}
	for j, p := range pr {
		l.y[j] += d * p
	}
	l.x[row], l.basis[row] = t, col
}

// lessen takes v times a row off another; nz tells where that is not nothing.
func lessen(r []float64, v float64, row []float64, nz []int32) {
	if 2*len(nz) < len(row) {
		for _, j := range nz {
			r[j] -= v * row[j]
		}
		return
	}
	for len(row) >= 4 && len(r) >= 4 {
		r[0] -= v * row[0]
		r[1] -= v * row[1]
		r[2] -= v * row[2]
		r[3] -= v * row[3]
		r, row = r[4:], row[4:]
	}
	for j, p := range row {
		r[j] -= v * p
	}
}

// nonzero lists where a row is not nothing; its least numbers are made nothing.
func (l *program) nonzero(row []float64) []int32 {
	l.nz = l.nz[:0]
	for j, v := range row {
		if math.Abs(v) < 1e-13 {
			row[j] = 0
			continue
		}
		l.nz = append(l.nz, int32(j))
	}
	return l.nz
}
