package nest

import "math"

// program is a linear program: the cheapest columns that reach at least need in
// the first rows and at most stock in those behind. It begins with a dear
// column for each need, so that it always has an answer. What it gives is never
// trusted: duals become whole weights, and plans are counted.
type program struct {
	cols  []column
	slack []float64 // sign of each row's slack
	basis []int     // by row: a column, or ^row for the slack of a row
	inv   []float64 // rows of the inverse, one after the other
	x, y  []float64 // of the basis; of the rows
	in    []bool    // by column: in the basis
	step  []float64
	ops   int
}

// column holds the rows it stands in.
type column struct {
	cost float64
	rows []int32
	vals []float64
}

// tiny is what counts as nothing: entries are small whole numbers, costs are
// scaled to at most 1 but for parts that are left out.
const tiny = 1e-9

func newProgram(need []int, stock []int, dear float64) *program {
	n := len(need) + len(stock)
	l := &program{inv: make([]float64, n*n), step: make([]float64, n), y: make([]float64, n)}
	for i := range n {
		l.inv[i*n+i] = 1
		if i < len(need) {
			l.add(column{dear, []int32{int32(i)}, []float64{1}})
			l.in[i] = true
			l.basis, l.slack = append(l.basis, i), append(l.slack, -1)
			l.x, l.y[i] = append(l.x, float64(need[i])), dear
			continue
		}
		l.basis, l.slack = append(l.basis, ^i), append(l.slack, 1)
		l.x = append(l.x, float64(stock[i-len(need)]))
	}
	return l
}

func (l *program) add(c column) {
	l.cols, l.in = append(l.cols, c), append(l.in, false)
}

// reduced is the reduced cost of a column.
func (l *program) reduced(c *column) float64 {
	d := c.cost
	for i, r := range c.rows {
		d -= l.y[r] * c.vals[i]
	}
	return d
}

// maxStall is how many pivots without gain are borne before columns are taken by
// their order, which can not cycle (Bland, Mathematics of OR 2, 1977).
const maxStall = 200

// solve improves the basis to the optimum; false where it ran out.
func (l *program) solve(limit int) bool {
	stall := 0
	for range limit {
		col, d := l.entering(stall > maxStall)
		if col == noColumn {
			return true
		}
		l.direction(col)
		row := l.leaving(stall > maxStall)
		if row < 0 {
			return false
		}
		if gain := l.pivot(row, col, d); gain > tiny {
			stall = 0
		} else {
			stall++
		}
	}
	return false
}

const noColumn = math.MinInt

// entering is the column, or slack, that gains most; with care the first.
func (l *program) entering(care bool) (col int, d float64) {
	col, d = noColumn, -tiny
	for r, s := range l.slack {
		if v := -s * l.y[r]; v < d && l.basis[r] != ^r && !l.slackIn(r) {
			col, d = ^r, v
			if care {
				return col, d
			}
		}
	}
	for i := range l.cols {
		if l.in[i] {
			continue
		}
		if v := l.reduced(&l.cols[i]); v < d {
			col, d = i, v
			if care {
				break
			}
		}
	}
	l.ops += 6 * len(l.cols)
	return col, d
}

func (l *program) slackIn(r int) bool {
	for _, b := range l.basis {
		if b == ^r {
			return true
		}
	}
	return false
}

// direction is how the basis changes with a column.
func (l *program) direction(col int) {
	n := len(l.x)
	for i := range n {
		row := l.inv[i*n : i*n+n]
		if col < 0 {
			l.step[i] = row[^col] * l.slack[^col]
			continue
		}
		v := 0.0
		for j, r := range l.cols[col].rows {
			v += row[r] * l.cols[col].vals[j]
		}
		l.step[i] = v
	}
}

// leaving is the row that limits the step first; of equal ones the larger pivot
// is safer, with care the first by order.
func (l *program) leaving(care bool) int {
	row, least := -1, math.Inf(1)
	for i, v := range l.step {
		if v <= tiny {
			continue
		}
		q := max(l.x[i], 0) / v
		tie := row >= 0 && q < least+tiny
		if q < least-tiny || tie && (care && l.basis[i] < l.basis[row] || !care && v > l.step[row]) {
			row, least = i, min(q, least)
		}
	}
	return row
}

// pivot puts a column of reduced cost d into the basis in place of the row's.
func (l *program) pivot(row, col int, d float64) (gain float64) {
	n := len(l.x)
	pr := l.inv[row*n : row*n+n]
	f := 1 / l.step[row]
	for j := range pr {
		pr[j] *= f
	}
	t := l.x[row] * f
	for i, v := range l.step {
		if i == row || math.Abs(v) < 1e-13 {
			continue
		}
		l.x[i] -= v * t
		r := l.inv[i*n : i*n+n]
		for j, p := range pr {
			r[j] -= v * p
		}
		l.ops += n
	}
	for j, p := range pr {
		l.y[j] += d * p
	}
	l.swap(row, col)
	l.x[row] = t
	return math.Abs(t * d)
}

func (l *program) swap(row, col int) {
	if b := l.basis[row]; b >= 0 {
		l.in[b] = false
	}
	if col >= 0 {
		l.in[col] = true
	}
	l.basis[row] = col
}
