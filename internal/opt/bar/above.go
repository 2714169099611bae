package bar

import "math"

// above tells, in whole numbers, whether the duals of a node prove that no plan
// below it costs the target or less: the rows are worth so much, and each of the
// sticks takes off no more than the most negative reduced cost.
func (b *brancher) above(l *program) bool {
	y, ok := b.wholeRows(l)
	if !ok {
		return false
	}
	worth, least, _ := b.wholeCosts(l, y)
	return worth+least*int64(b.m.total) > b.target*b.m.scale
}

// wholeCosts is what the rows are worth, the least reduced cost, and all of them.
func (b *brancher) wholeCosts(l *program, y []int64) (worth, least int64, costs []int64) {
	for r, v := range y {
		worth += v * int64(math.Floor(l.b[r]+0.5))
	}
	for c, p := range b.a.pats {
		d := b.m.price(p) * b.m.scale
		for i, r := range l.cols.rows[c] {
			d -= y[r] * int64(l.cols.vals[c][i])
		}
		least = min(least, d)
		costs = append(costs, d)
	}
	return worth, least, costs
}

// spare is what patterns may lose before no plan of the target can use them: so
// much for each column, in units of the scale, where each piece weighs so much.
type spare struct {
	room  []int64
	piece []int64
}

// drop takes out of the pool, once it is solved, what its own duals exclude. It
// is nil where they are no use.
func (b *brancher) drop() *spare {
	y, ok := b.wholeRows(b.a.lp)
	if !ok {
		return nil
	}
	worth, least, costs := b.wholeCosts(b.a.lp, y)
	room := b.target*b.m.scale - worth - least*int64(b.m.total)
	in := b.a.lp.inBasis()
	var keep []int
	var pats []pattern
	left := &spare{piece: y[:len(b.m.need)]}
	for c, d := range costs {
		if d <= room || in[c] || b.a.pats[c].stick == lacking {
			keep, pats = append(keep, c), append(pats, b.a.pats[c])
			left.room = append(left.room, room-d)
		}
	}
	b.a.lp.keep(keep)
	b.a.pats = pats
	return left
}

// wholeRows rounds the duals; a row that must be covered has none below 0, one
// that is capped none above.
func (b *brancher) wholeRows(l *program) (y []int64, ok bool) {
	limit := float64(int64(1)<<61) / float64(b.m.total+1) / float64(len(l.b)+1)
	for r, v := range l.y {
		v *= b.a.unit * float64(b.m.scale)
		if l.slack[r] < 0 {
			v = max(v, 0)
		} else {
			v = min(v, 0)
		}
		if math.Abs(v) > limit {
			return nil, false
		}
		y = append(y, int64(math.Floor(v+0.5)))
	}
	return y, true
}
