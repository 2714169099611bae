package bar

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
	d, rows := l.cost[col], l.cols.rows[col]
	vals := l.cols.vals[col][:len(rows)]
	for i, r := range rows {
		d -= l.y[r] * vals[i]
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
