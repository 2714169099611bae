package pair

// pairUp puts the counted pieces two by two into the fewest blanks.
func (s *solver) pairUp(count []int) []*bag {
	var singles []*bag
	for k, n := range count {
		for range n {
			singles = append(singles, s.c.ones[k])
		}
	}
	return s.joined(singles, func(a, b *bag) bool {
		return s.shares(int(a.key[0])-1, int(b.key[0])-1)
	})
}

// joined puts bags together two by two, as many as can be.
func (s *solver) joined(bags []*bag, share func(a, b *bag) bool) []*bag {
	edges := make([][]int, len(bags))
	for i, a := range bags {
		for j := range i {
			if share(a, bags[j]) {
				edges[i] = append(edges[i], j)
				edges[j] = append(edges[j], i)
			}
		}
	}
	var out []*bag
	for i, j := range matching(edges) {
		switch {
		case j < 0:
			out = append(out, bags[i])
		case i < j:
			out = append(out, s.c.union(bags[i], bags[j]))
		}
	}
	return out
}

// merge joins pairs to fours and so on while any two bags share a blank.
func (s *solver) merge() {
	for bags := s.pairUp(s.need); ; {
		more := s.joined(bags, s.unite)
		if len(more) == len(bags) {
			return
		}
		bags = more
		s.offer(bags)
	}
}

// mergeShare is the part of the budget that putting bags together may spend.
const mergeShare = 4

// unite tells whether all of two bags shares a blank. What the budget does not
// allow to be looked at does not.
func (s *solver) unite(a, b *bag) bool {
	if s.c.steps > s.budget/mergeShare || a.n+b.n > maxBag {
		return false
	}
	for _, k := range b.kinds() {
		if !s.sharesWith(a, k) {
			return false
		}
	}
	return s.c.fits(s.c.union(a, b)) == yes
}

// firstFit puts each piece, the largest first, with the first others that leave
// room for it.
func (s *solver) firstFit() {
	var bags []*bag
	for k, n := range s.need {
		for range n {
			bags = s.dropIn(bags, k)
		}
	}
	s.offer(bags)
}

func (s *solver) dropIn(bags []*bag, k int) []*bag {
	for i, b := range bags {
		if s.unite(b, s.c.ones[k]) {
			bags[i] = s.c.grow(b, k)
			return bags
		}
	}
	return append(bags, s.c.ones[k])
}
