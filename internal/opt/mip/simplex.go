package mip

// program is: the most of gain·v where table·v <= right and 0 <= v <= most. The right sides are positive, so v = 0 is a place to begin.
// It is solved by the simplex method with upper bounds (Dantzig's rule, a bound on the pivots), in floats: what it gives is a guess,
// wherever it stops. Products are rounded before they are added, so that every machine guesses alike.
type program struct {
	rows, cols int
	table      [][]float64 // rows × (cols + rows): the last are the slacks
	right      []float64
	gain       []float64 // what one more of each column gains
	most       []float64
	turned     []bool // the column stands for most - v
	basis      []int
}

const (
	tiny    = 1e-9
	without = 1e300 // no upper bound
)

// reset makes room for a program of this size, all zero.
func (p *program) reset(rows, cols int) {
	p.rows, p.cols = rows, cols
	wide := cols + rows
	p.right, p.gain, p.most = floats(p.right, rows), floats(p.gain, wide), floats(p.most, wide)
	if len(p.turned) < wide {
		p.turned = make([]bool, wide)
	}
	clear(p.turned)
	for len(p.table) < rows {
		p.table = append(p.table, nil)
		p.basis = append(p.basis, 0)
	}
	for i := range rows {
		p.table[i] = floats(p.table[i], wide)
		p.table[i][cols+i] = 1
		p.basis[i] = cols + i
	}
	for j := range wide {
		p.most[j] = without
	}
}

// floats returns n zeros, in the room of old where that is enough.
func floats(old []float64, n int) []float64 {
	if cap(old) < n {
		return make([]float64, n)
	}
	old = old[:n]
	clear(old)
	return old
}

// solve pivots until nothing gains, the gain has no end, or the bound on pivots is reached.
func (p *program) solve() {
	for range 8 * (p.rows + p.cols) {
		e := p.entering()
		if e < 0 {
			return
		}
		i, ratio, fromTop := p.leaving(e)
		switch {
		case p.most[e] <= ratio && p.most[e] < without:
			p.turn(e)
		case i < 0:
			return
		default:
			if fromTop {
				p.turnBasic(i)
			}
			p.pivot(i, e)
		}
	}
}

func (p *program) entering() int {
	best, gain := -1, tiny
	for j := range p.cols + p.rows {
		if p.gain[j] > gain {
			best, gain = j, p.gain[j]
		}
	}
	return best
}

// leaving finds the row that stops column e first, and whether it does so at its upper bound.
func (p *program) leaving(e int) (row int, ratio float64, fromTop bool) {
	row, ratio = -1, without
	for i := range p.rows {
		a := p.table[i][e]
		at, top := without, false
		switch most := p.most[p.basis[i]]; {
		case a > tiny:
			at = max(0, p.right[i]) / a
		case a < -tiny && most < without:
			at, top = max(0, most-p.right[i])/-a, true
		}
		if at < ratio {
			row, ratio, fromTop = i, at, top
		}
	}
	return row, ratio, fromTop
}

// turn puts most - v in the place of a column outside the basis.
func (p *program) turn(j int) {
	for i := range p.rows {
		p.right[i] -= float64(p.table[i][j] * p.most[j])
		p.table[i][j] = -p.table[i][j]
	}
	p.gain[j] = -p.gain[j]
	p.turned[j] = !p.turned[j]
}

// turnBasic does so for the one in the basis of a row.
func (p *program) turnBasic(i int) {
	b := p.basis[i]
	t := p.table[i][:p.cols+p.rows]
	for j := range t {
		if j != b {
			t[j] = -t[j]
		}
	}
	p.right[i] = p.most[b] - p.right[i]
	p.turned[b] = !p.turned[b]
}

func (p *program) pivot(row, e int) {
	wide := p.cols + p.rows
	t := p.table[row][:wide]
	by := 1 / t[e]
	for j := range t {
		t[j] *= by
	}
	p.right[row] *= by
	for i := range p.rows {
		if i == row {
			continue
		}
		if f := p.table[i][e]; f != 0 {
			u := p.table[i][:wide]
			for j := range t {
				u[j] -= float64(f * t[j])
			}
			p.right[i] -= float64(f * p.right[row])
		}
	}
	f := p.gain[e]
	for j := range t {
		p.gain[j] -= float64(f * t[j])
	}
	p.basis[row] = e
}

// values writes what each of the columns is.
func (p *program) values(v []float64) {
	for j := range v {
		v[j] = 0
		if p.turned[j] {
			v[j] = p.most[j]
		}
	}
	for i, b := range p.basis[:p.rows] {
		if b < len(v) {
			v[b] = p.right[i]
			if p.turned[b] {
				v[b] = p.most[b] - p.right[i]
			}
		}
	}
}

// price returns what one more of a row's right side would gain.
func (p *program) price(i int) float64 { return -p.gain[p.cols+i] }
