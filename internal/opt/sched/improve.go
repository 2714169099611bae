package sched

import "slices"

// dice is the splitmix64 sequence (Steele, Lea, Flood, OOPSLA 2014): the same throws on every machine.
type dice uint64

func (d *dice) throw(n int) int {
	*d += 0x9e3779b97f4a7c15
	z := uint64(*d)
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return int((z ^ z>>31) % uint64(n))
}

// A climb searches around the best schedule it knows: it disturbs the order of a schedule's jobs, builds and justifies
// anew, and goes on from what is no worse.
type climb struct {
	*board
	ahead [][]int
	best  []int // nil: none yet
	end   int   // of best
	at    []int // where it goes on from
	atEnd int
	dice  dice
}

func newClimb(b *board) *climb {
	return &climb{board: b, ahead: b.m.ahead(), end: b.m.horizon + 1, dice: 1}
}

// offer goes on from a schedule when it is better and keeps the limits.
func (c *climb) offer(starts []int) {
	if f := c.m.finish(starts); f < c.end && c.m.within(starts) {
		c.best, c.end, c.at, c.atEnd = starts, f, starts, f
	}
}

// construct tries all rules, serial and parallel.
func (c *climb) construct() {
	for _, list := range c.lists(c.ahead) {
		for _, build := range []func([]int, [][]int) bool{c.serial, c.parallel} {
			if build(list, c.ahead) {
				c.polish()
				c.offer(slices.Clone(c.start))
			}
		}
	}
}

// improve ends at the bound or when the steps are spent.
func (c *climb) improve(bound, steps int) {
	if c.best == nil {
		return
	}
	for limit := c.steps + steps; c.end > bound && c.steps < limit; {
		c.load(c.at)
		list := c.byTime(false)
		c.dice.disturb(list)
		c.steps += len(list)
		if !c.serial(list, c.ahead) {
			continue
		}
		f := c.polish()
		if (f <= c.atEnd || c.dice.throw(500) == 0) && c.m.within(c.start) {
			c.at, c.atEnd = slices.Clone(c.start), f
		}
		c.offer(slices.Clone(c.start))
	}
}

// justified is a schedule after double justification, if it still keeps the limits.
func (c *climb) justified(starts []int) []int {
	c.load(starts)
	copy(c.low, c.root)
	c.polish()
	if !c.m.within(c.start) {
		return starts
	}
	return slices.Clone(c.start)
}

// disturb moves one to three jobs of the list to a place not far away. With more of them, what is good in a schedule is lost: measured
// on published sets.
func (d *dice) disturb(list []int) {
	n := len(list)
	if n < 2 {
		return
	}
	for range 1 + d.throw(3) {
		from := d.throw(n)
		to := min(max(from+d.throw(n/2+3)-(n/4+1), 0), n-1)
		j := list[from]
		list = slices.Delete(list, from, from+1)
		list = slices.Insert(list, to, j)
	}
}
