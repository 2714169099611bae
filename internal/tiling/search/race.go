package search

import "math"

// race keeps the best layout by one order of importance, over all offsets or over a part of those along the courses.
// Of equal layouts the first stands: the lowest, then the leftmost.
type race struct {
	order    []int // covered measures, most important first
	from, to int   // steps along the courses
	row, col int
	best     costs
	run      bool // something has been found
}

// offer lets a row of layouts take part. least is the least that any of them can cost, measure by measure.
func (r *race) offer(row int, along *columns, least *costs, across *costs) {
	if r.from >= r.to || !r.chance(least, across) {
		return
	}
	if !r.run {
		r.take(row, r.from, along, across)
	}
	first := r.order[0]
	most := r.most(first, across)
	for i, c := range along[first][r.from:r.to] {
		if col := r.from + i; c <= most && r.beats(along, across, col) {
			r.take(row, col, along, across)
			most = r.most(first, across)
		}
	}
}

// chance reports whether a layout of the row can beat the best at all: not where even the least of each measure does not.
func (r *race) chance(least, across *costs) bool {
	if !r.run {
		return true
	}
	for _, m := range r.order {
		if c := fold(m, least[m], across[m]); c != r.best[m] {
			return c < r.best[m]
		}
	}
	return false
}

// most is what a layout of the row may cost along the courses by a measure and not be worse than the best there.
func (r *race) most(measure int, across *costs) int64 {
	switch {
	case sums[measure]:
		return r.best[measure] - across[measure]
	case across[measure] > r.best[measure]:
		return math.MinInt64
	}
	return r.best[measure]
}

// beats compares in order of importance; the first difference decides.
func (r *race) beats(along *columns, across *costs, col int) bool {
	for _, m := range r.order {
		c := fold(m, along[m][col], across[m])
		if c != r.best[m] {
			return c < r.best[m]
		}
	}
	return false
}

func (r *race) take(row, col int, along *columns, across *costs) {
	r.row, r.col, r.run = row, col, true
	for m := range r.best {
		r.best[m] = fold(m, along[m][col], across[m])
	}
}

// meet lets the winner of later rows challenge.
func (r *race) meet(o *race) {
	if o.run && (!r.run || compareCosts(r.order, &o.best, &r.best) < 0) {
		*r = *o
	}
}

// row returns the costs of one offset.
func (c *columns) row(i int) *costs {
	var out costs
	for m := range c {
		out[m] = c[m][i]
	}
	return &out
}

// leading returns the order with one measure put first.
func leading(order []int, first int) []int {
	out := []int{first}
	for _, m := range order {
		if m != first {
			out = append(out, m)
		}
	}
	return out
}

// regions is into how many parts, along and across, the offsets are divided so that each offers its best.
const regions = 4

// races lists those over all offsets: by the person's order, and with each measure alone put first.
func races(order []int, steps int) []*race {
	out := []*race{{order: order, to: steps}}
	for _, m := range order {
		out = append(out, &race{order: leading(order, m), to: steps})
	}
	return out
}

// parts are the races by the person's order over each part of the offsets along the courses.
func parts(order []int, steps int) []*race {
	var out []*race
	for i := range regions {
		out = append(out, &race{order: order, from: i * steps / regions, to: (i + 1) * steps / regions})
	}
	return out
}
