package bar

import (
	"cmp"
	"math"
	"slices"
)

// dive fixes patterns that the linear program uses most, solves it again for
// what is left, and so on; at most so many choices on the way are not the first
// (limited discrepancy: Harvey and Ginsberg, IJCAI 1995).
func (s *search) dive(target int64) {
	share := max((s.steps.limit-s.steps.used)/diveShare, 1)
	d := &diver{search: s, target: target, stop: s.steps.used + share}
	root := &spot{lp: s.a.lp.clone(), need: s.m.need, left: s.m.left()}
	for turns := 0; turns <= maxTurns && !d.found && !d.ended(); turns++ {
		d.down(root, turns)
	}
}

const (
	diveShare = 4    // a fourth of what is left goes into a dive
	maxTurns  = 6    // choices that are not the first
	diveNodes = 200  // for greedy at each spot
	near      = 1e-6 // to a whole number
)

type diver struct {
	*search
	target int64
	stop   int
	found  bool
}

func (d *diver) ended() bool { return d.steps.used >= d.stop }

// spot is a place on the way down: what is fixed and what is left to do.
type spot struct {
	lp         *program
	need, left []int
	fixed      []pattern
	cost       int64
}

// down looks below a spot.
func (d *diver) down(at *spot, turns int) {
	if !d.solve(at) || d.ended() {
		return
	}
	if d.finish(at); d.found {
		return
	}
	if next := d.floors(at); next != nil {
		d.down(next, turns)
		return
	}
	for i, c := range d.choices(at, turns+1) {
		d.down(d.fix(at, []int{c}), turns-i)
		if d.found || d.ended() {
			return
		}
	}
}

// solve makes the linear program of a spot optimal, or good enough; false where
// the target is out of reach.
func (d *diver) solve(at *spot) bool {
	if d.a.dual(at.lp, math.Inf(1)) != optimal {
		return false
	}
	at.lp.setCost(d.fitting(at.need))
	goal := float64(d.target-at.cost)/d.a.unit + near
	if !d.a.primal(at.lp) {
		return false
	}
	for at.lp.value() > goal && !d.ended() {
		added, _ := d.a.offer(at.lp, at.lp.y, at.need, at.left)
		if added == 0 || !d.a.primal(at.lp) {
			return at.lp.value() <= goal
		}
	}
	return true
}

// fitting are the costs of the columns where those that hold more than is needed
// cost as much as lacking what they hold.
func (d *diver) fitting(need []int) []float64 {
	cost := copied(d.a.lp.cols.cost)
	for c, p := range d.a.pats {
		if n := p.over(need); n > 0 && p.stick != lacking {
			cost[c] = float64(d.m.lack) / d.a.unit * float64(n)
		}
	}
	d.steps.spend(4 * len(cost))
	return cost
}

// finish fills what is left greedily.
func (d *diver) finish(at *spot) {
	rest := d.m.greedy(slices.Clone(at.need), slices.Clone(at.left), diveNodes)
	d.steps.spend(len(rest) * diveNodes)
	if at.cost+d.m.cost(rest) <= d.target {
		d.found = true
		d.take(append(slices.Clone(at.fixed), rest...))
	}
}

// floors fixes every pattern as often as the program uses it at least; nil where
// that is nothing.
func (d *diver) floors(at *spot) *spot {
	var cols []int
	for i, c := range at.lp.basis {
		if c < 0 || d.a.pats[c].stick == lacking {
			continue
		}
		for range int(math.Floor(at.lp.x[i] + near)) {
			cols = append(cols, c)
		}
	}
	if len(cols) == 0 {
		return nil
	}
	slices.Sort(cols)
	return d.fix(at, cols)
}

// choices are the columns used most, the first so many.
func (d *diver) choices(at *spot, most int) []int {
	value := map[int]float64{}
	var cols []int
	for i, c := range at.lp.basis {
		if c >= 0 && at.lp.x[i] > near && d.a.pats[c].stick != lacking {
			value[c] = at.lp.x[i]
			cols = append(cols, c)
		}
	}
	slices.SortFunc(cols, func(a, b int) int {
		return cmp.Or(cmp.Compare(value[b], value[a]), cmp.Compare(a, b))
	})
	return cols[:min(most, len(cols))]
}

// fix is the spot below, with patterns fixed as far as they are of use.
func (d *diver) fix(at *spot, cols []int) *spot {
	next := &spot{lp: at.lp.clone(), need: slices.Clone(at.need), left: slices.Clone(at.left),
		fixed: slices.Clone(at.fixed), cost: at.cost}
	for _, c := range cols {
		p := d.a.pats[c]
		if next.left[p.stick] == 0 {
			continue
		}
		if p = p.within(next.need); len(p.takes) == 0 {
			continue
		}
		next.left[p.stick]--
		next.fixed = append(next.fixed, p)
		next.cost += d.m.price(p)
	}
	b := make([]float64, len(at.lp.b))
	for k, n := range next.need {
		b[k] = float64(n)
	}
	for s, r := range d.a.rowOf {
		if r >= 0 {
			b[r] = float64(next.left[s])
		}
	}
	next.lp.setB(b)
	return next
}
