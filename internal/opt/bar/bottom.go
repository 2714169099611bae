package bar

import "slices"

// A dive is brought to its end exactly where few pieces are left.
const (
	bottomPieces = 40
	bottomSteps  = 4000
)

// bottom searches what is left at a spot in full; it tells whether nothing more
// is to be found below.
func (d *diver) bottom(at *spot) (over bool) {
	rest := 0
	for _, n := range at.need {
		rest += n
	}
	if rest > bottomPieces {
		return false
	}
	st := &steps{limit: min(bottomSteps, d.steps.limit-d.steps.used)}
	x := newSearch(d.m.rest(at.need, at.left), st, d.target-at.cost)
	x.plain = true
	x.best = x.m.lackingOf(at.need)
	x.cost = x.m.cost(x.best)
	for c, p := range d.a.pats {
		if !p.over(at.need) && at.lp.reduced(c) < 1 {
			x.a.add(p)
		}
	}
	x.relax()
	if !x.done() && !x.stuck {
		over = x.branch(x.enough)
	}
	d.steps.used += st.used
	if x.cost <= x.enough {
		d.found = true
		d.take(append(slices.Clone(at.fixed), x.best...))
	}
	return over || x.lower > x.enough
}

// rest is the model of what is left.
func (m *model) rest(need, left []int) *model {
	x := *m
	x.need, x.sticks, x.total = need, slices.Clone(m.sticks), 0
	for _, n := range need {
		x.total += n
	}
	for s := range x.sticks {
		x.sticks[s].count = left[s]
	}
	return &x
}
