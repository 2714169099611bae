package pair

import (
	"cmp"
	"slices"
)

// raise takes a lower bound if it is the highest so far.
func (s *solver) raise(lower int, proof string) {
	if lower > s.lower || s.proof == "" {
		s.lower, s.proof = lower, proof
	}
}

// counting bounds by area and by the corners of the blanks.
func (s *solver) counting() {
	s.raise(s.byArea(), ProofArea)
	corners := 0
	for k, n := range s.need {
		corners += n * s.c.kinds[k].corners
	}
	s.raise((corners+3)/4, ProofCorners)
}

// byArea divides the size of the pieces by that of the blank.
func (s *solver) byArea() int {
	full, size := s.sizes()
	count, rest := 0, int64(0)
	for k, n := range s.need {
		for range n { // no piece is larger than full, so rest stays below it
			if rest += size(k); rest >= full {
				count, rest = count+1, rest-full
			}
		}
	}
	if rest > 0 {
		count++
	}
	return count
}

// sizes measures the blank and the kinds so that what shares a blank adds up to
// no more than it: by rectangles grown by the kerf, or, where there are slanted
// cuts, by areas.
func (s *solver) sizes() (full int64, size func(k int) int64) {
	if slices.ContainsFunc(s.c.kinds, func(k kind) bool { return k.shaped }) {
		return 2 * s.c.w * s.c.h, func(k int) int64 { return s.c.kinds[k].area }
	}
	full = (s.c.w + s.c.kerf) * (s.c.h + s.c.kerf)
	return full, func(k int) int64 { return s.c.kinds[k].grown }
}

// crowded bounds by sets of pieces of which no three share a blank: there a
// largest matching is exact.
func (s *solver) crowded() {
	parts := [][]int{s.largest(), s.spanning()}
	for k := range s.need {
		if k == 0 || !s.c.within(&s.c.kinds[k-1], &s.c.kinds[k]) {
			parts = append(parts, s.chain(k))
		}
	}
	for _, part := range parts {
		total := 0
		for _, n := range part {
			total += n
		}
		if total > s.lower {
			s.raise(len(s.pairUp(part)), ProofMatching)
		}
	}
}

// largest is the most of the largest pieces of which the three smallest are
// more than a blank.
func (s *solver) largest() []int {
	full, size := s.sizes()
	part := make([]int, len(s.need))
	var taken []int
	for _, k := range s.bySize(size) {
		for range s.need[k] {
			taken = append(taken, k)
			if m := len(taken); m > 2 && size(k)+size(taken[m-2])+size(taken[m-3]) <= full {
				return part
			}
			part[k]++
		}
	}
	return part
}

// bySize lists the kinds, the largest first.
func (s *solver) bySize(size func(k int) int64) []int {
	order := make([]int, len(s.need))
	for k := range order {
		order[k] = k
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(size(b), size(a)) })
	return order
}

// spanning is the pieces that use up two corners each.
func (s *solver) spanning() []int {
	part := slices.Clone(s.need)
	for k := range part {
		if s.c.kinds[k].corners < 2 {
			part[k] = 0
		}
	}
	return part
}
