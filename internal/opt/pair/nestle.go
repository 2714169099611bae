package pair

// nest is a blank shared along slanted cuts, being filled.
type nest struct {
	laid  []laid
	rings [][]Pt
}

// nestle puts each piece, the largest first, at a spot in the first blank where
// straight cuts of any direction divide it from those that lie there already.
func (s *solver) nestle() {
	if !s.mayNestle() {
		return
	}
	var nests []*nest
	for k, n := range s.need {
		for range n {
			nests = s.c.nestIn(nests, k)
		}
	}
	var blanks [][]laid
	for _, n := range nests {
		blanks = append(blanks, n.laid)
	}
	s.offerLaid(blanks)
}

// mayNestle tells whether rule 5 allows slanted cuts whatever is put together,
// and there is a piece to use them.
func (s *solver) mayNestle() bool {
	some, all := false, true
	for _, k := range s.c.kinds {
		some, all = some || k.shaped, all && k.shaped
	}
	return all || some && s.c.least == 0
}

func (c *cutter) nestIn(nests []*nest, k int) []*nest {
	for _, n := range nests {
		if c.settle(n, k) {
			return nests
		}
	}
	n := &nest{}
	c.settle(n, k)
	return append(nests, n)
}

// settle adds a piece of kind k to the blank if a spot is free.
func (c *cutter) settle(n *nest, k int) bool {
	for _, s := range c.kinds[k].spots {
		if !c.clearOf(s.ring, n.rings) {
			continue
		}
		rings := append(n.rings[:len(n.rings):len(n.rings)], s.ring)
		if len(rings) > 2 && !c.separable(rings) {
			continue
		}
		n.rings = rings
		n.laid = append(n.laid, laid{k, s.pose, s.x, s.y})
		return true
	}
	return false
}
