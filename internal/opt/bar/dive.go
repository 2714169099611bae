package bar

import (
	"math"
	"slices"
)

// dive fixes patterns that the linear program uses most, solves it again for
// what is left, and so on. It does so from several of the program's solutions
// that are almost as good, each for a limited time, every other time with one
// choice on the way that is not the first (limited discrepancy: Harvey and
// Ginsberg, IJCAI 1995).
func (s *search) dive(target int64) {
	s.diveIn(&diver{search: s, target: target})
}

func (s *search) diveIn(d *diver) {
	share := max((s.steps.limit-s.steps.used)/diveShare, 1)
	once := max(share/divesAtLeast, stickPivots*len(s.best)*len(s.a.lp.b)*len(s.a.lp.b)/stepWork)
	for end := s.steps.used + share; !d.found && s.steps.used < end; s.dives++ {
		root := &spot{lp: s.a.lp.clone(), need: s.m.need, left: s.m.left()}
		if s.steps.spend(stepWork); !s.shift(root.lp) {
			continue
		}
		d.stop = min(s.steps.used+once, end)
		if d.below(root, s.dives%2) {
			return
		}
	}
}

// shift moves a program to another solution that is almost as good.
func (s *search) shift(l *program) bool {
	if s.dives == 0 {
		return true
	}
	right := copied(l.b)
	l.setB(trifled(right, len(s.m.need)))
	if !s.a.hurried(l, l.repair) {
		return false
	}
	l.setCost(jittered(l.cols.cost, s.dives))
	if !s.a.hurried(l, l.primal) {
		return false
	}
	l.setB(right)
	return s.a.hurried(l, l.repair)
}

// jittered changes costs by up to a thousandth, differently for each n.
func jittered(cost []float64, n int) []float64 {
	const most, section = 1e-3, 0.6180339887498949
	cost = copied(cost)
	for c := range cost {
		_, part := math.Modf(float64(c+1) * float64(n) * section)
		cost[c] *= 1 + most*part
	}
	return cost
}

const (
	diveShare    = 4    // a fourth of what is left goes into dives
	divesAtLeast = 6    // so many share it, but that a way down takes
	stickPivots  = 12   // so many pivots for each stick
	maxTries     = 12   // patterns to try at a spot
	diveNodes    = 200  // for greedy at each spot
	near         = 1e-6 // to a whole number
	bannedCost   = 1000 // in lacking pieces: more than any stick holds
)

type diver struct {
	*search
	target int64
	stop   int
	found  bool
	spare  *spare // where all patterns of use are known
}

func (d *diver) ended() bool { return d.steps.used >= d.stop }

// spot is a place on the way down: what is fixed and what is left to do.
type spot struct {
	lp         *program
	need, left []int
	fixed      []pattern
	banned     []int // columns that led to nothing
	cost       int64
}

// down looks below a spot. It tells whether that is a dead end, whatever turns
// are allowed: no plan found there, none can be.
func (d *diver) down(at *spot, turns int) (dead bool) {
	return !d.solve(at) || d.below(at, turns)
}

// below looks below a spot that is solved.
func (d *diver) below(at *spot, turns int) (dead bool) {
	if d.finish(at); d.found || d.ended() {
		return false
	}
	if d.bottom(at) || d.found {
		return !d.found
	}
	if next := d.floors(at); next != nil {
		d.down(next, turns)
		return false
	}
	return d.choose(at, turns)
}

// choose fixes the pattern used most. Where that fails it is banned and the next
// taken; this counts as a turn unless it was a dead end.
func (d *diver) choose(at *spot, turns int) (dead bool) {
	dead = true
	for range maxTries {
		c := d.choice(at)
		if c < 0 {
			return false
		}
		below := d.down(d.fix(at, []int{c}), turns)
		if d.found || d.ended() {
			return false
		}
		if dead = dead && below; !below {
			turns--
		}
		if turns < 0 {
			return false
		}
		at.banned = append(at.banned, c)
		if !d.solve(at) {
			return dead
		}
	}
	return false
}

// solve makes the linear program of a spot optimal, or good enough; false where
// the target is out of reach.
func (d *diver) solve(at *spot) bool {
	if !d.a.hurried(at.lp, at.lp.repair) {
		return false
	}
	at.lp.setCost(d.fitting(at))
	goal := float64(d.target-at.cost)/d.a.unit + near
	if !d.a.hurried(at.lp, at.lp.primal) {
		return false
	}
	if d.spare != nil {
		return at.lp.value() <= goal
	}
	for at.lp.value() > goal && !d.ended() {
		added, _ := d.a.offer(at.lp, at.lp.y, at.need, at.left)
		if added == 0 || !d.a.hurried(at.lp, at.lp.primal) {
			return at.lp.value() <= goal
		}
	}
	return true
}

// fitting are the costs of the columns where those that hold more than is needed
// cost as much as lacking what they hold, and those that are banned more.
func (d *diver) fitting(at *spot) []float64 {
	cost := copied(d.a.lp.cols.cost)
	for c, p := range d.a.pats {
		if p.stick != lacking && d.overfull(c, at.need) {
			cost[c] = float64(d.m.lack) / d.a.unit * float64(p.pieces())
		}
	}
	for _, c := range at.banned {
		cost[c] = float64(d.m.lack) / d.a.unit * bannedCost
	}
	d.steps.spend(4 * len(cost))
	return cost
}

// overfull tells whether a column holds more than is needed; where there will be
// no others, only if it is then worth too little.
func (d *diver) overfull(c int, need []int) bool {
	if d.spare == nil {
		return d.a.pats[c].over(need)
	}
	lost := int64(0)
	for i, r := range d.a.lp.cols.rows[c] {
		if int(r) < len(need) {
			lost += d.spare.piece[r] * max(0, int64(d.a.lp.cols.vals[c][i])-int64(need[r]))
		}
	}
	return lost > d.spare.room[c]
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

// choice is the column used most; -1 where none is.
func (d *diver) choice(at *spot) int {
	col, most := -1, near
	for i, c := range at.lp.basis {
		if c < 0 || at.lp.x[i] <= near || d.a.pats[c].stick == lacking || slices.Contains(at.banned, c) {
			continue
		}
		if x := at.lp.x[i]; x > most+near || x > most-near && c < col {
			col, most = c, x
		}
	}
	return col
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
