package pair

import (
	"cmp"
	"slices"
)

// brancher tries the patterns on the pieces that are left, heaviest first, and
// gives up a branch that the weights show to be no better than the best known.
type brancher struct {
	*solver
	list  []pattern
	units []int64
	full  int64
	rem   []int
	used  []*bag
	seen  map[string]int
	limit int
	out   bool // the limit stopped it
}

// branch searches for fewer blanks than the best known, and tells whether it
// tried everything that the patterns offer.
func (s *solver) branch(list []pattern, units []int64, full int64, limit int) bool {
	b := &brancher{solver: s, list: list, units: units, full: full, rem: slices.Clone(s.need),
		seen: map[string]int{}, limit: limit}
	b.visit()
	return !b.out
}

func (b *brancher) visit() {
	k, left := b.heaviest()
	if k < 0 {
		b.offer(b.used)
		return
	}
	if len(b.used)+ceilDiv(left, b.full) >= b.blanks || b.known() {
		return
	}
	if b.c.steps++; b.c.steps > b.limit {
		b.out = true
		return
	}
	moves, three := b.moves(k)
	if !three {
		b.offer(append(slices.Clip(b.used), b.pairUp(b.rem)...))
		return
	}
	for _, m := range moves {
		b.take(m, -1)
		b.visit()
		b.take(m, 1)
		if b.out || b.blanks <= b.lower {
			return
		}
	}
}

// heaviest is the kind left of most weight, or -1, and the weight of all left.
func (b *brancher) heaviest() (kind int, left int64) {
	kind = -1
	for k, n := range b.rem {
		if n == 0 {
			continue
		}
		left += int64(n) * b.units[k]
		if kind < 0 || b.units[k] > b.units[kind] {
			kind = k
		}
	}
	return kind, left
}

// known tells whether the same pieces were left before, with no more used.
func (b *brancher) known() bool {
	key := make([]byte, 0, 2*len(b.rem))
	for _, n := range b.rem {
		key = append(key, byte(n), byte(n>>8))
	}
	if u, ok := b.seen[string(key)]; ok && u <= len(b.used) {
		return true
	}
	b.seen[string(key)] = len(b.used)
	return false
}

// moves lists what the patterns with kind k can take of what is left, heaviest
// first, and tells whether any pattern can take three or more.
func (b *brancher) moves(k int) (out []pattern, three bool) {
	b.c.spend(len(b.list))
	done := map[*bag]bool{}
	for _, p := range b.list {
		holds, n := b.reach(p, k)
		three = three || n > 2
		if !holds {
			continue
		}
		if m := b.within(p); !done[m.bag] {
			done[m.bag] = true
			out = append(out, m)
		}
	}
	slices.SortStableFunc(out, func(p, q pattern) int {
		return cmp.Compare(q.weight(b.units), p.weight(b.units))
	})
	return out, three
}

// reach tells whether p holds kind k, and how many pieces left it can take.
func (b *brancher) reach(p pattern, k int) (holds bool, n int) {
	for i, j := range p.kinds {
		holds = holds || j == k
		n += min(p.count[i], b.rem[j])
	}
	return holds, n
}

// within is the part of p that is left to take.
func (b *brancher) within(p pattern) pattern {
	var key bagKey
	n := 0
	for i, k := range p.kinds {
		for range min(p.count[i], b.rem[k]) {
			key[n] = uint16(k + 1)
			n++
		}
	}
	if n == p.bag.n {
		return p
	}
	return newPattern(b.c.bag(key, n))
}

// take uses the pattern (sign -1) or gives it back (sign 1).
func (b *brancher) take(p pattern, sign int) {
	for i, k := range p.kinds {
		b.rem[k] += sign * p.count[i]
	}
	if sign < 0 {
		b.used = append(b.used, p.bag)
		return
	}
	b.used = b.used[:len(b.used)-1]
}
