package bar

import "math"

// program is a linear program: minimize the cost of columns that reach at least
// lo in each row of kind "cover" and at most hi in each row of kind "cap". It is
// held with the inverse of its basis. What it gives is never trusted: duals
// become whole weights, and plans are counted.
type program struct {
	cols   *columns
	cost   []float64 // of the columns; those of cols for what came later
	b      []float64
	slack  []float64 // sign of each row's slack: -1 cover, +1 cap
	basis  []int     // by row: a column, or ^row for the slack of a row
	inv    []float64 // rows of the inverse, one after the other
	x, y   []float64 // of the basis; of the rows
	pivots int
	stall  int
	step   []float64
	nz     []int32
}

// columns are shared by programs that differ in their basis and right-hand side.
type columns struct {
	cost []float64
	rows [][]int32
	vals [][]float64
}

func (c *columns) add(cost float64, rows []int32, vals []float64) int {
	c.cost = append(c.cost, cost)
	c.rows = append(c.rows, rows)
	c.vals = append(c.vals, vals)
	return len(c.cost) - 1
}

// tiny is what counts as nothing: entries are small whole numbers, costs are
// scaled to at most 1.
const tiny = 1e-9

// clone shares the columns only.
func (l *program) clone() *program {
	c := *l
	c.b, c.slack, c.inv = copied(l.b), copied(l.slack), copied(l.inv)
	c.x, c.y = copied(l.x), copied(l.y)
	c.basis, c.cost = append([]int(nil), l.basis...), copied(l.cost)
	c.step, c.nz = nil, nil
	return &c
}

func copied(v []float64) []float64 { return append([]float64(nil), v...) }

// keep drops all columns but some, which hold the basis.
func (l *program) keep(cols []int) {
	place := make(map[int]int, len(cols))
	kept := &columns{}
	for _, c := range cols {
		place[c] = kept.add(l.cols.cost[c], l.cols.rows[c], l.cols.vals[c])
	}
	for i, c := range l.basis {
		if c >= 0 {
			l.basis[i] = place[c]
		}
	}
	l.cols, l.cost = kept, copied(kept.cost)
}

// begin adds a row to a program that is not solved yet, with what is in the
// basis for it: a column with 1 in that row only, or its slack.
func (l *program) begin(b, slack float64, basic int) {
	cost := 0.0
	if basic >= 0 {
		cost = l.cols.cost[basic]
	}
	l.b, l.slack, l.basis = append(l.b, b), append(l.slack, slack), append(l.basis, basic)
	l.x, l.y = append(l.x, b), append(l.y, cost)
}

// identity is the inverse that the rows begin with.
func (l *program) identity() {
	m := len(l.b)
	l.inv = make([]float64, m*m)
	for i := range m {
		l.inv[i*m+i] = 1
	}
}

// addRow adds a row with its slack in the basis. at gives what the columns of
// the basis have in it.
func (l *program) addRow(b, slack float64, at func(col int) float64) {
	m := len(l.b)
	inv := make([]float64, (m+1)*(m+1))
	last := inv[m*(m+1):]
	value := b
	for i, col := range l.basis {
		row := l.inv[i*m : (i+1)*m]
		copy(inv[i*(m+1):], row)
		a := 0.0
		if col >= 0 {
			a = at(col)
		}
		if a == 0 {
			continue
		}
		value -= a * l.x[i]
		for j, v := range row {
			last[j] -= a * v * slack
		}
	}
	last[m] = slack
	l.inv, l.b, l.slack = inv, append(l.b, b), append(l.slack, slack)
	l.basis, l.x, l.y = append(l.basis, ^m), append(l.x, value*slack), append(l.y, 0)
	l.step = nil
}

// reduced is the reduced cost of a column or slack.
func (l *program) reduced(col int) float64 {
	if col < 0 {
		return -l.slack[^col] * l.y[^col]
	}
	d := l.cost[col]
	for i, r := range l.cols.rows[col] {
		d -= l.y[r] * l.cols.vals[col][i]
	}
	return d
}

// inBasis marks what is in the basis: columns, then slacks.
func (l *program) inBasis() []bool {
	n := len(l.cols.cost)
	l.cost = append(l.cost, l.cols.cost[len(l.cost):]...)
	in := make([]bool, n+len(l.b))
	for _, c := range l.basis {
		in[l.index(c, n)] = true
	}
	return in
}

func (l *program) index(col, n int) int {
	if col < 0 {
		return n + ^col
	}
	return col
}

func (l *program) column(i, n int) int {
	if i >= n {
		return ^(i - n)
	}
	return i
}

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
		r := l.inv[i*m : (i+1)*m]
		for _, j := range nz {
			r[j] -= v * pr[j]
		}
	}
	for j, p := range pr {
		l.y[j] += d * p
	}
	l.x[row], l.basis[row] = t, col
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
	v := 0.0
	for j, r := range l.cols.rows[col] {
		v += rho[r] * l.cols.vals[col][j]
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

// value is the cost of the basis.
func (l *program) value() float64 {
	sum := 0.0
	for i, c := range l.basis {
		if c >= 0 {
			sum += l.cost[c] * l.x[i]
		}
	}
	return sum
}

// setCost changes the costs; the basis is then to be improved.
func (l *program) setCost(cost []float64) {
	l.cost = cost
	m := len(l.b)
	clear(l.y)
	for i, c := range l.basis {
		if c < 0 || cost[c] == 0 {
			continue
		}
		for j, v := range l.inv[i*m : (i+1)*m] {
			l.y[j] += cost[c] * v
		}
	}
}

// setB changes the right-hand side.
func (l *program) setB(b []float64) {
	m := len(b)
	copy(l.b, b)
	for i := range l.x {
		l.x[i] = 0
		for j, v := range l.inv[i*m : (i+1)*m] {
			l.x[i] += v * b[j]
		}
	}
}
