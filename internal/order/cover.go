package order

import (
	"cmp"
	"slices"
)

// Choice is how many of each pack to buy.
type Choice struct {
	Counts []int
	Proven bool // nothing better exists
}

// steps bounds the search for packs; a shop's handful of sizes never comes near it.
const steps = 200_000

// Cover finds the packs that hold a need at the least cost; of equal cost those that leave the least over, then the fewest.
// Where a price is missing, cost does not count.
func Cover(need int64, packs []Packs) Choice {
	c := &cover{need: need, packs: packs, priced: !slices.ContainsFunc(packs, func(p Packs) bool { return !p.Priced })}
	c.order = make([]int, len(packs))
	for i := range packs {
		c.order[i] = i
	}
	slices.SortStableFunc(c.order, func(a, b int) int { return cmp.Compare(packs[b].Size.N, packs[a].Size.N) })
	c.counts = make([]int, len(packs))
	c.try(0, need, 0)
	return Choice{c.best, c.used < steps}
}

// cover is one search.
type cover struct {
	need   int64
	packs  []Packs
	order  []int // larger packs first
	priced bool
	counts []int
	best   []int
	worth  [3]int64
	used   int
}

// try decides how many of the k-th largest pack are bought, most first, for what is still to be held.
func (c *cover) try(k int, rest, cost int64) {
	c.used++
	if rest <= 0 {
		c.take(rest, cost)
		return
	}
	if k == len(c.order) || c.used >= steps && c.best != nil || c.hopeless(k, rest, cost) {
		return
	}
	i := c.order[k]
	p := c.packs[i]
	most := (rest + p.Size.N - 1) / p.Size.N
	for n := most; n >= 0; n-- {
		if k == len(c.order)-1 && n < most {
			break // the smallest pack must hold all that is left
		}
		c.counts[i] = int(n)
		c.try(k+1, rest-n*p.Size.N, cost+n*c.price(p))
	}
	c.counts[i] = 0
}

func (c *cover) price(p Packs) int64 {
	if !c.priced {
		return 0
	}
	return int64(p.Price)
}

// hopeless: even at the best price for its amount the rest would cost more than what is found already.
func (c *cover) hopeless(k int, rest, cost int64) bool {
	if c.best == nil || !c.priced {
		return false
	}
	least := int64(-1)
	for _, i := range c.order[k:] {
		p := c.packs[i]
		// the cost of the rest in this pack alone, rounded down
		v := int64(float64(rest) / float64(p.Size.N) * float64(p.Price) * (1 - 1e-9))
		if least < 0 || v < least {
			least = v
		}
	}
	return cost+least > c.worth[0]
}

// take keeps a choice that is better than the best so far.
func (c *cover) take(rest, cost int64) {
	n := int64(0)
	for _, x := range c.counts {
		n += int64(x)
	}
	worth := [3]int64{cost, -rest, n}
	if c.best == nil || slices.Compare(worth[:], c.worth[:]) < 0 {
		c.best, c.worth = slices.Clone(c.counts), worth
	}
}
