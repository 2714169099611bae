package pair

import "math"

// weights solves the linear program that bounds a covering problem: give each
// kind a weight of at least 0 such that no pattern weighs more than 1 and the
// needed pieces weigh the most. rows[p][k] is how many of kind k pattern p
// holds. It also gives the number of pivots; ok is false where limit stopped it
// (the weights are then feasible, but not the best).
//
// The weights are floats; fixed turns them into a bound that is exact.
func weights(rows [][]float64, need []int, limit int) (y []float64, pivots int, ok bool) {
	t := newTableau(rows, need)
	for ; pivots < limit; pivots++ {
		col := t.entering(pivots > 4*(len(need)+10))
		if col < 0 {
			return t.values(), pivots, true
		}
		row := t.leaving(col)
		if row < 0 {
			panic("pair: a kind that no pattern holds")
		}
		t.pivot(row, col)
	}
	return t.values(), pivots, false
}

// pivotFloor is the least number taken for more than nothing: entries of the
// tableau are small whole numbers and their quotients, far above it, and what
// it wrongly ignores costs some tightness but not truth.
const pivotFloor = 1e-9

// tableau is a linear program in condensed form: basic variables down the rows,
// the others along the columns; the last row is the objective, the last column
// the right-hand side. Variable k < n is the weight of kind k, n+p is what
// pattern p falls short of 1.
type tableau struct {
	a          [][]float64
	n, m       int
	down, side []int
}

func newTableau(rows [][]float64, need []int) *tableau {
	t := &tableau{n: len(need), m: len(rows)}
	for p, r := range rows {
		line := make([]float64, t.n+1)
		copy(line, r)
		line[t.n] = 1
		t.a = append(t.a, line)
		t.down = append(t.down, t.n+p)
	}
	line := make([]float64, t.n+1)
	for k, d := range need {
		line[k] = -float64(d)
		t.side = append(t.side, k)
	}
	t.a = append(t.a, line)
	return t
}

// entering is the column that gains most; with care, the first that gains by
// the order of variables, which cannot cycle (Bland 1977).
func (t *tableau) entering(care bool) int {
	best, col := -pivotFloor, -1
	for j, v := range t.a[t.m][:t.n] {
		switch {
		case v >= -pivotFloor:
		case care && (col < 0 || t.side[j] < t.side[col]):
			col = j
		case !care && v < best:
			best, col = v, j
		}
	}
	return col
}

// leaving is the row that limits the entering column first.
func (t *tableau) leaving(col int) int {
	row, least := -1, math.Inf(1)
	for i := range t.m {
		v := t.a[i][col]
		if v <= pivotFloor {
			continue
		}
		q := t.a[i][t.n] / v
		if q < least || q == least && t.down[i] < t.down[row] {
			row, least = i, q
		}
	}
	return row
}

// pivot swaps the basic variable of the row with that of the column.
func (t *tableau) pivot(row, col int) {
	pr := t.a[row]
	inv := 1 / pr[col]
	for j := range pr {
		pr[j] *= inv
	}
	pr[col] = inv
	for i, r := range t.a {
		f := r[col]
		if i == row || f == 0 {
			continue
		}
		for j, v := range pr {
			r[j] -= f * v
		}
		r[col] = -f * inv
	}
	t.down[row], t.side[col] = t.side[col], t.down[row]
}

// values reads the weights off the tableau.
func (t *tableau) values() []float64 {
	y := make([]float64, t.n)
	for i, v := range t.down {
		if v < t.n {
			y[v] = max(t.a[i][t.n], 0)
		}
	}
	return y
}

// whole is the number that stands for 1 where weights are whole numbers.
const whole = 1 << 30

// fixed turns weights into whole numbers of which full is the most that any
// pattern holds: then need * y / full, rounded up, is a true bound whatever the
// floats were worth.
func fixed(rows []pattern, y []float64) (units []int64, full int64) {
	units = make([]int64, len(y))
	for k, v := range y {
		units[k] = int64(math.Floor(v * whole))
	}
	for _, p := range rows {
		full = max(full, p.weight(units))
	}
	return units, full
}

// ceilDiv is a / b rounded up, for a >= 0 and b > 0.
func ceilDiv(a, b int64) int { return int((a + b - 1) / b) }
