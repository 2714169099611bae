package nest

import "slices"

// downsize puts what a sheet holds into a cheaper one that is left, if it fits.
func (f *filler) downsize(plan []pattern) []pattern {
	if len(f.m.sheets) == 1 {
		return plan
	}
	stock := f.m.stock()
	for _, p := range plan {
		if p.sheet != lacking {
			stock[p.sheet]--
		}
	}
	out := slices.Clone(plan)
	for i, p := range out {
		if p.sheet == lacking {
			continue
		}
		if q, ok := f.cheaper(p, stock); ok {
			stock[p.sheet]++
			stock[q.sheet]--
			out[i] = q
		}
	}
	return out
}

// cheaper is the cheapest sheet that holds what a pattern holds.
func (f *filler) cheaper(p pattern, stock []int) (best pattern, found bool) {
	most := f.m.sheets[p.sheet].price
	for s, b := range f.m.sheets {
		if stock[s] <= 0 || b.price >= most || f.m.area(p) > float64(b.w)*float64(b.h) {
			continue
		}
		if q, ok := f.into(s, p.takes); ok {
			best, found, most = q, true, b.price
		}
	}
	return best, found
}

// area of what a pattern holds.
func (m *model) area(p pattern) (a float64) {
	for _, t := range p.takes {
		a += float64(m.kinds[t.kind].w) * float64(m.kinds[t.kind].h) * float64(t.n)
	}
	return a
}

// into fills a sheet with all that is listed, or not.
func (f *filler) into(s int, takes []take) (pattern, bool) {
	left, worth := make([]int, len(f.m.kinds)), make([]int64, len(f.m.kinds))
	var want int64
	for _, t := range takes {
		left[t.kind] = t.n
		worth[t.kind] = 1 + int64(f.m.areaShare(f.m.kinds[t.kind])*unit)
		want += worth[t.kind] * int64(t.n)
	}
	p, v := f.fill(s, worth, left)
	return p, v == want
}

// gather moves parts from the sheet with the largest offcut into what is free in
// the others, as long as the offcut grows.
func (s *search) gather() {
	at, ok := s.emptiest()
	if !ok {
		return
	}
	plan := slices.Clone(s.best)
	for i, p := range plan {
		if i == at || p.sheet == lacking || s.steps.over() || len(plan[at].takes) == 0 {
			continue
		}
		q, moved := s.f.more(p, plan[at].takes)
		if len(moved) == 0 {
			continue
		}
		plan[i] = q
		plan[at] = s.m.without(plan[at], moved)
	}
	plan = slices.DeleteFunc(plan, func(p pattern) bool { return len(p.takes) == 0 })
	s.take(plan)
}

// emptiest is the pattern with the least parts by area for its sheet.
func (s *search) emptiest() (at int, ok bool) {
	at = -1
	var most float64
	for i, p := range s.best {
		if p.sheet == lacking {
			continue
		}
		b := s.m.sheets[p.sheet]
		if free := float64(b.w)*float64(b.h) - s.m.area(p); at < 0 || free > most {
			at, most = i, free
		}
	}
	return at, at >= 0
}

// more fills a sheet with all that it holds and some of what else is listed.
func (f *filler) more(p pattern, extra []take) (pattern, []take) {
	left, worth := make([]int, len(f.m.kinds)), make([]int64, len(f.m.kinds))
	own := make([]int, len(f.m.kinds))
	for _, t := range extra {
		left[t.kind] = t.n
	}
	for _, t := range p.takes {
		left[t.kind] += t.n
		own[t.kind] = t.n
	}
	for k := range worth {
		worth[k] = 1 + int64(f.m.areaShare(f.m.kinds[k])*unit)
	}
	q, _ := f.fill(p.sheet, worth, left)
	return q, f.m.gained(q, own)
}

// gained is what a pattern holds beyond its own; nothing where it lacks some.
func (m *model) gained(q pattern, own []int) (moved []take) {
	have := make([]int, len(m.kinds))
	for _, t := range q.takes {
		have[t.kind] = t.n
	}
	for k, n := range own {
		if have[k] < n {
			return nil
		}
		if have[k] > n {
			moved = append(moved, take{k, have[k] - n})
		}
	}
	return moved
}

// without takes parts out of a pattern.
func (m *model) without(p pattern, out []take) pattern {
	keep := make([]int, len(m.kinds))
	for _, t := range p.takes {
		keep[t.kind] = t.n
	}
	for _, t := range out {
		keep[t.kind] -= t.n
	}
	return m.patternOf(p.sheet, p.slab.prune(keep))
}
