package bar

import (
	"cmp"
	"encoding/binary"
	"slices"
)

// pattern is one stick with what is cut from it. Its stick is lacking for the
// pattern that stands for one piece no stick is left for.
type pattern struct {
	stick int
	takes []take // by kind, then run
}

type take struct{ kind, run, n int }

const lacking = -1

// newPattern orders the takes.
func newPattern(stick int, takes []take) pattern {
	slices.SortFunc(takes, func(a, b take) int {
		return cmp.Or(cmp.Compare(a.kind, b.kind), cmp.Compare(a.run, b.run))
	})
	return pattern{stick, takes}
}

// key is the same for patterns that take the same from the same stick, in
// whatever runs.
func (p pattern) key() string {
	b := binary.AppendVarint(nil, int64(p.stick))
	for i := 0; i < len(p.takes); {
		k, n := p.takes[i].kind, 0
		for ; i < len(p.takes) && p.takes[i].kind == k; i++ {
			n += p.takes[i].n
		}
		b = binary.AppendUvarint(binary.AppendUvarint(b, uint64(k)), uint64(n))
	}
	return string(b)
}

// price of a stick filled by the pattern.
func (m *model) price(p pattern) int64 {
	if p.stick == lacking {
		return m.lack
	}
	return m.sticks[p.stick].price
}

// cost of a plan, lacking pieces included.
func (m *model) cost(plan []pattern) int64 {
	var sum int64
	for _, p := range plan {
		sum += m.price(p)
	}
	return sum
}

// within is p with no more of any kind than need; that is taken off need.
func (p pattern) within(need []int) pattern {
	q := pattern{stick: p.stick}
	for _, t := range p.takes {
		t.n = min(t.n, need[t.kind])
		if t.n > 0 {
			need[t.kind] -= t.n
			q.takes = append(q.takes, t)
		}
	}
	return q
}

// over tells whether p holds more of a kind than is needed.
func (p pattern) over(need []int) bool {
	for i, t := range p.takes {
		n := t.n
		for j := i - 1; j >= 0 && p.takes[j].kind == t.kind; j-- {
			n += p.takes[j].n
		}
		if n > need[t.kind] {
			return true
		}
	}
	return false
}

func (p pattern) pieces() (n int) {
	for _, t := range p.takes {
		n += t.n
	}
	return n
}

// trimmed is a covering as a plan: nothing is cut twice, and sticks that are
// left with nothing are dropped.
func (m *model) trimmed(cover []pattern) []pattern {
	need := slices.Clone(m.need)
	var plan []pattern
	for _, p := range cover {
		if q := p.within(need); len(q.takes) > 0 {
			plan = append(plan, q)
		}
	}
	return plan
}
