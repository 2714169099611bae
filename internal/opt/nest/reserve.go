package nest

import "math"

// reserve looks for a larger offcut: the sheets of the best plan hold all parts
// and one more, which is then not cut. It is made wider by halving, then longer.
func (s *search) reserve(st *steps) {
	if s.m.stages != 0 || s.m.scarce || len(s.best) == 0 {
		return
	}
	open := s.opened()
	free := -s.m.needArea()
	for _, o := range open {
		free += float64(s.m.sheets[o].w) * float64(s.m.sheets[o].h)
	}
	tries := s.extras(open, free)
	for i, t := range tries {
		one := steps{st.ops, st.share(len(tries) - i)}
		s.grow(open, t, &one)
		st.ops = one.ops
	}
}

// opened are the sheets of the best plan, and those of no price beside them.
func (s *search) opened() (open []int) {
	for _, p := range s.best {
		open = append(open, p.sheet)
	}
	for i, b := range s.m.sheets {
		if b.price > 0 {
			continue
		}
		for range min(b.count, maxFree) - count(open, i) {
			open = append(open, i)
		}
	}
	return open
}

// maxFree is how many sheets of a kind that has no price are opened at most.
const maxFree = 20

// extra is the one part more: so long, which may grow up to most, and at most so
// wide; upright where its length runs across the grain.
type extra struct {
	upright    bool
	long, most int64
	wide       int64
}

// quarters of a sheet's length that an extra part begins with.
var quarters = [...]int64{4, 3, 2}

// extras are of each kind of sheet, both ways; none is larger than all that is
// free.
func (s *search) extras(open []int, free float64) (out []extra) {
	add := func(upright bool, long, most, wide int64) {
		if long == 0 {
			return
		}
		wide = min(wide, int64(math.Floor(free/float64(long))))
		out = append(out, extra{upright, long, most, wide})
	}
	for i, o := range open {
		if count(open[:i], o) > 0 {
			continue
		}
		b := s.m.sheets[o]
		for _, q := range quarters {
			add(false, b.w*q/4, b.w, b.h)
			add(true, b.h*q/4, b.h, b.w)
		}
	}
	return out
}

// grow widens and lengthens an extra part as far as all find a place.
func (s *search) grow(open []int, e extra, st *steps) {
	half := steps{st.ops, st.share(2)}
	low := max(s.spare/max(1, e.most-s.m.kerf)+1, s.m.least) + s.m.kerf
	wide := s.longest(open, &half, low, e.wide, func(v int64) kind { return e.kind(e.long, v) })
	st.ops = half.ops
	if wide > 0 {
		s.longest(open, st, e.long+1, min(e.most, e.long*e.wide/wide), func(v int64) kind { return e.kind(v, wide) })
	}
}

func (e extra) kind(long, wide int64) kind {
	if e.upright {
		return kind{w: wide, h: long}
	}
	return kind{w: long, h: wide}
}

// longest halves between sizes for the longest that finds a place; 0 where none
// does.
func (s *search) longest(open []int, st *steps, low, high int64, of func(int64) kind) (found int64) {
	for low <= high && !st.over() {
		try := low + (high-low)/2
		one := steps{st.ops, st.share(growParts)}
		plan, ok := s.m.cornersBeside(open, of(try)).holdAll(&one)
		if st.ops = one.ops; ok {
			s.take(plan)
			found, low = try, try+1
		} else {
			high = try - 1
		}
	}
	return found
}

// growParts: each halving takes this part of what is left.
const growParts = 4

// cornersBeside lays an extra part with the others.
func (m *model) cornersBeside(open []int, q kind) *corners {
	c := m.newCorners(open)
	c.kinds = append(c.kinds[:len(c.kinds):len(c.kinds)], q)
	c.order = append(c.order, len(m.kinds))
	return c
}

// stretched gives the room of an extra part all that its panels can spare, so that
// nothing is shaved off beside it; a sheet that needs its first cut keeps it.
func (m *model) stretched(s *slab, b sheet) *slab {
	if s == nil {
		return nil
	}
	w, h := b.w, b.h
	if m.first == Rip && s.cut != Rip {
		h = s.h
	}
	if m.first == Crosscut && s.cut != Crosscut {
		w = s.w
	}
	return s.stretched(w, h)
}

func (s *slab) stretched(w, h int64) *slab {
	switch {
	case s.blank():
		return &slab{w: w, h: h, kind: NoPart}
	case s.cut == Whole:
		return s
	case s.cut == Crosscut && s.a.holdsBlank():
		return join(s.cut, s.a.stretched(w-s.b.w, h), s.b)
	case s.cut == Crosscut:
		return join(s.cut, s.a, s.b.stretched(w-s.a.w, h))
	case s.a.holdsBlank():
		return join(s.cut, s.a.stretched(w, h-s.b.h), s.b)
	}
	return join(s.cut, s.a, s.b.stretched(w, h-s.a.h))
}

func (s *slab) holdsBlank() bool {
	return s.blank() || s.cut != Whole && (s.a.holdsBlank() || s.b.holdsBlank())
}
