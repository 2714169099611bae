package pair

// maxBag is the most pieces that are laid out exactly in one blank: a bag of n
// is split in up to 2^n ways.
const maxBag = 6

// bagKey is a bag's kinds in rising order, each plus one; 0 ends it.
type bagKey [maxBag]uint16

// bag is a set of pieces, by kind, that may share a blank.
type bag struct {
	key    bagKey
	n      int
	splits [][2]*bag
	opts   [16][]option // by the sides of the panel that are the blank's
	done   [16]bool
	fit    verdict
	slant  []int // where slanted cuts divide it: the spot of each piece
}

// verdict is what is known of a bag in one blank.
type verdict uint8

const (
	unasked verdict = iota
	no
	yes
	open // no layout found, none excluded
)

// kinds lists the bag's kinds in rising order.
func (b *bag) kinds() []int {
	ks := make([]int, b.n)
	for i := range ks {
		ks[i] = int(b.key[i]) - 1
	}
	return ks
}

// with is the key of the bag with one more piece of kind k.
func (b *bag) with(k int) bagKey {
	key := b.key
	i := b.n
	for ; i > 0 && int(key[i-1]) > k+1; i-- {
		key[i] = key[i-1]
	}
	key[i] = uint16(k + 1)
	return key
}

// cutter decides what shares a blank, and remembers it.
type cutter struct {
	blank
	kinds []kind
	bags  map[bagKey]*bag
	ones  []*bag // the bag of each kind alone
	steps int
	work  int // toward the next step
}

// stepWork is how many ways to cut a panel, or spots looked at, make a step.
const stepWork = 32

// spend counts work in whole steps.
func (c *cutter) spend(work int) {
	c.work += work
	c.steps += c.work / stepWork
	c.work %= stepWork
}

func newCutter(p Problem, kinds []kind) *cutter {
	c := &cutter{blank: blank{p.W, p.H, p.Kerf, p.LeastStrip}, kinds: kinds, bags: map[bagKey]*bag{}}
	for k := range kinds {
		c.ones = append(c.ones, c.bag(bagKey{uint16(k + 1)}, 1))
	}
	return c
}

// bag is the one bag with that key.
func (c *cutter) bag(key bagKey, n int) *bag {
	b := c.bags[key]
	if b == nil {
		b = &bag{key: key, n: n}
		c.bags[key] = b
	}
	return b
}

// grow is the bag with one more piece of kind k; nil where it gets too big.
func (c *cutter) grow(b *bag, k int) *bag {
	if b.n == maxBag {
		return nil
	}
	return c.bag(b.with(k), b.n+1)
}

// union is the bag of both; nil where it gets too big.
func (c *cutter) union(a, b *bag) *bag {
	if a.n+b.n > maxBag {
		return nil
	}
	u := *a
	for _, k := range b.kinds() {
		u.key = u.with(k)
		u.n++
	}
	return c.bag(u.key, u.n)
}

// split lists the ways to divide a bag in two, low side and high side.
func (c *cutter) split(b *bag) [][2]*bag {
	if b.splits != nil {
		return b.splits
	}
	for mask := 1; mask < 1<<b.n-1; mask++ {
		if b.repeats(mask) {
			continue
		}
		var part [2]bagKey
		var n [2]int
		for i := range b.n {
			side := mask >> i & 1
			part[side][n[side]] = b.key[i]
			n[side]++
		}
		b.splits = append(b.splits, [2]*bag{c.bag(part[0], n[0]), c.bag(part[1], n[1])})
	}
	return b.splits
}

// repeats tells whether the mask takes a later of equal pieces without the
// earlier: another mask then stands for it.
func (b *bag) repeats(mask int) bool {
	for i := 1; i < b.n; i++ {
		if b.key[i] == b.key[i-1] && mask>>(i-1)&3 == 2 {
			return true
		}
	}
	return false
}
