package mip

// missBound returns a number that no x of the frame with so few changes misses by less. For whole-number weights w of the rows, none above
// unit, and v of the changes it is the least over the box of
//
//	sum of w·(B - A·x) + v·(changes of x - changes allowed)
//
// over unit. It is reckoned in whole numbers throughout: where the weights come from does not matter.
func (s *solver) missBound(f *frame, g goal) int64 {
	unit := s.wholeWeights(f, g, 0)
	if unit == 0 {
		return 0
	}
	for i, w := range s.whole {
		s.whole[i] = min(w, unit)
	}
	return max(0, ceilDiv(s.least(f, g, 0), unit))
}

// costBound returns a number that no x of the frame costs less that misses and changes no more than the goal allows: as missBound, of unit·cost
// besides, less the largest w for each unit that may be missed.
func (s *solver) costBound(f *frame, g goal) int64 {
	unit := s.wholeWeights(f, g, float64(s.worth*float64(g.miss))+maxTotal)
	if unit == 0 {
		return 0
	}
	most := int64(0)
	for _, w := range s.whole {
		most = max(most, w)
	}
	return f.base + ceilDiv(s.least(f, g, unit)-most*g.miss, unit)
}

// least is the least over the box of the weighted sum, with so much for each unit of cost above the corner's.
func (s *solver) least(f *frame, g goal, cost int64) (sum int64) {
	clear(s.pull)
	for i, w := range s.whole {
		if w == 0 {
			continue
		}
		sum += w * f.rest[i]
		for _, j := range s.uses[i] {
			s.pull[j] += w * s.rows[i].A[j]
		}
	}
	for _, p := range f.parts {
		whole := (cost*p.cost - s.pull[p.of]*p.way) * p.wide
		if p.starts {
			whole += s.wholeCount
		}
		sum += min(0, whole)
	}
	return sum - s.wholeCount*int64(g.changed-f.moved)
}

// wholeWeights rounds the weights to whole numbers, unit of them to 1, as fine as their products leave room
// for beside other sums of the given size; 0: there is no room.
func (s *solver) wholeWeights(f *frame, g goal, other float64) (unit int64) {
	size := 1 + other + float64(s.countWeight*float64(len(f.parts)+g.changed+1))
	for i, w := range s.weight {
		if w > 0 {
			size += float64(w * (max(float64(f.rest[i]), -float64(f.rest[i])) + s.reach[i]))
		}
	}
	if size < 1<<59 {
		unit = int64(min(float64(1<<60)/size, 1<<24))
	}
	for i, w := range s.weight {
		s.whole[i] = int64(float64(unit) * max(0, w))
	}
	s.wholeCount = int64(float64(unit) * max(0, s.countWeight))
	return unit
}
