package bar

import "math"

// dual repairs a basis that is optimal but for negative values; stop ends it
// when the cost passes it. It tells how it ended.
func (l *program) dual(limit int, stop float64) ending {
	n := len(l.cols.cost)
	in := l.inBasis()
	for range limit {
		row := l.negative()
		if row < 0 {
			return optimal
		}
		if l.value() > stop {
			return passed
		}
		enter := l.entering(row, in, n)
		if enter < 0 {
			return l.ray(row, stop)
		}
		col := l.column(enter, n)
		d := l.reduced(col)
		l.direction(col)
		in[l.index(l.basis[row], n)], in[enter] = false, true
		l.pivot(row, col, d)
	}
	return unsettled
}

// repair is dual to the end.
func (l *program) repair(limit int) bool { return l.dual(limit, math.Inf(1)) == optimal }

// ending is how the dual simplex ended.
type ending int

const (
	optimal ending = iota
	passed         // the cost is above the stop
	nothing        // no point satisfies all rows
	unsettled
)

// negative is the row with the most negative value.
func (l *program) negative() int {
	row, least := -1, -tiny
	for i, v := range l.x {
		if v < least {
			row, least = i, v
		}
	}
	return row
}

// entering is what keeps all reduced costs from going below nothing.
func (l *program) entering(row int, in []bool, n int) int {
	m := len(l.b)
	rho := l.inv[row*m : (row+1)*m]
	enter, least, size := -1, math.Inf(1), 0.0
	for i := range in {
		if in[i] {
			continue
		}
		col := l.column(i, n)
		a := l.along(rho, col)
		if a >= -tiny {
			continue
		}
		q := max(l.reduced(col), 0) / -a
		if q < least-tiny || q < least+tiny && -a > size {
			enter, least, size = i, min(q, least), -a
		}
	}
	return enter
}

// along is the entry of a column in a row of the tableau.
func (l *program) along(rho []float64, col int) float64 {
	if col < 0 {
		return rho[^col] * l.slack[^col]
	}
	v, rows := 0.0, l.cols.rows[col]
	vals := l.cols.vals[col][:len(rows)]
	for j, r := range rows {
		v += rho[r] * vals[j]
	}
	return v
}

// ray moves the duals far along the row that can not be repaired: they then
// prove a bound above stop.
func (l *program) ray(row int, stop float64) ending {
	m := len(l.b)
	far := (1 + max(stop-l.value(), 0)) / -l.x[row]
	for j, p := range l.inv[row*m : (row+1)*m] {
		l.y[j] -= far * p
	}
	return nothing
}
