package nest

import "math/bits"

// counters hold how many of each kind a panel uses in a few words, so that two
// panels can be tried together by adding words. Each kind has a field of bits
// and a guard bit above it.
type counters struct {
	words int
	word  []int    // of each kind
	one   []uint64 // of each kind
	slack []uint64 // by word: what lifts a field that is over its limit into its guard
	guard []uint64
}

// newCounters takes the most of each kind that may be used.
func newCounters(most []int) *counters {
	c := &counters{word: make([]int, len(most)), one: make([]uint64, len(most))}
	at := 64
	for k, n := range most {
		if n == 0 {
			continue
		}
		width := bits.Len(uint(n)) + 1
		if at+width > 64 {
			at = 0
			c.words++
			c.slack, c.guard = append(c.slack, 0), append(c.guard, 0)
		}
		w := c.words - 1
		c.word[k], c.one[k] = w, 1<<at
		guard := uint64(1) << (at + width - 1)
		c.slack[w] += guard - uint64(n+1)<<at
		c.guard[w] |= guard
		at += width
	}
	return c
}

// fits tells whether two sets together keep every limit.
func (c *counters) fits(a, b []uint64) bool {
	for i, g := range c.guard {
		if (a[i]+b[i]+c.slack[i])&g != 0 {
			return false
		}
	}
	return true
}
