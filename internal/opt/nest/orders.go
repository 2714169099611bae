package nest

import (
	"cmp"
	"slices"
)

// newCorners opens sheets for all parts.
func (m *model) newCorners(open []int) *corners {
	c := &corners{m: m, open: open, kinds: m.kinds, roots: make([]int, len(open))}
	for k, n := range m.need {
		for range n {
			c.order = append(c.order, k)
		}
	}
	return c
}

// sorts are the ways to sort the parts, the first to be laid first.
const sorts = 4

func (c *corners) sort(n int) {
	by := func(k int) int64 {
		q := c.kinds[k]
		return [sorts]int64{q.w * q.h, max(q.w, q.h), q.w, q.h}[n]
	}
	slices.SortFunc(c.order, func(a, b int) int { return cmp.Or(cmp.Compare(by(b), by(a)), cmp.Compare(a, b)) })
}

// roundTries is how many orders follow from one way to sort with one habit.
const roundTries = 60

// holdAll looks for a plan of the open sheets that holds all parts, round after
// round. What finds no place is laid sooner the next time (Joslin and Clements,
// J. of AI Research 10, 1999).
func (c *corners) holdAll(st *steps) ([]pattern, bool) {
	for n := 0; !st.over(); n++ {
		c.sort(n % sorts)
		if c.round(habitOf(n%habits), st) {
			if plan, ok := c.plan(); ok {
				return plan, true
			}
		}
	}
	return nil, false
}

// round changes one order as long as that is not for the worse.
func (c *corners) round(b habit, st *steps) bool {
	least := c.run(b, st)
	kept, left := slices.Clone(c.order), slices.Clone(c.left)
	for try := 1; try < roundTries && least > 0 && !st.over(); try++ {
		c.hasten(left)
		missed := c.run(b, st)
		if missed > least {
			copy(c.order, kept)
			continue
		}
		least, left = missed, append(left[:0], c.left...)
		copy(kept, c.order)
	}
	return least == 0
}

// run lays all, counted.
func (c *corners) run(b habit, st *steps) int64 {
	c.ops = len(c.order)
	missed := c.lay(b)
	st.spend(gapWork * c.ops)
	return missed
}

// gapWork is what it takes to look at a gap.
const gapWork = 2

// hasten moves one of what found no place toward the front, and lets two parts
// change places.
func (c *corners) hasten(left []int) {
	n := len(c.order)
	i, j := c.draw(n), c.draw(n)
	c.order[i], c.order[j] = c.order[j], c.order[i]
	if len(left) == 0 {
		return
	}
	from := slices.Index(c.order, left[c.draw(len(left))])
	if from < 0 {
		return
	}
	k, to := c.order[from], c.draw(from+1)
	c.order = slices.Insert(slices.Delete(c.order, from, from+1), to, k)
}

// draw is a number below n; the numbers are the same in every run (Knuth, The
// Art of Computer Programming 2, 3.3.4).
func (c *corners) draw(n int) int {
	c.seed = c.seed*6364136223846793005 + 1442695040888963407
	return int(c.seed >> 33 % uint64(n))
}

// plan is what was laid; false where a sheet breaks the rules of the cuts.
func (c *corners) plan() (plan []pattern, ok bool) {
	for i, r := range c.roots {
		p := c.m.patternOf(c.open[i], c.m.stretched(c.slab(r), c.m.sheets[c.open[i]]))
		if len(p.takes) == 0 {
			continue
		}
		if _, ok := c.m.carve(p); !ok {
			return nil, false
		}
		plan = append(plan, p)
	}
	return plan, true
}

// slab is a corner with all that lies beside and over it.
func (c *corners) slab(n int) *slab {
	if n == none {
		return nil
	}
	l := c.laid[n]
	beside, over := c.slab(l.beside), c.slab(l.over)
	if l.cut == Crosscut {
		return join(Crosscut, join(Rip, c.leaf(l), over), beside)
	}
	return join(Rip, join(Crosscut, c.leaf(l), beside), over)
}

// leaf is a part, or the room of the extra one.
func (c *corners) leaf(l corner) *slab {
	if l.kind < len(c.m.kinds) {
		return c.m.leaf(l.kind, l.turned)
	}
	return &slab{w: l.w, h: l.h, kind: NoPart}
}
