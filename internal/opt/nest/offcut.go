package nest

// room is the largest offcut that can be left beside a set of units in a panel,
// with any cuts: all other parts lie in the smallest panels that hold them, one
// after the other, and what is left shrinks to the offcut.
type room struct {
	u    *units
	memo map[hole]spot
}

type hole struct {
	w, h int64
	set  int
}

// spot is an offcut with its size, kerf included, and the slab around it: the
// parts of first are cut off from the panel, then those of the spot below.
type spot struct {
	w, h  int64
	cut   Cut
	first *slab
	below *hole
	ok    bool
}

func (r *room) area(s spot) int64 { return max(0, s.w-r.u.m.kerf) * max(0, s.h-r.u.m.kerf) }

func (r *room) better(s, t spot) bool {
	if !s.ok || !t.ok {
		return s.ok
	}
	if r.area(s) != r.area(t) {
		return r.area(s) > r.area(t)
	}
	return min(s.w, s.h) > min(t.w, t.h)
}

// best searches a panel. ok is false where the set does not fit.
func (r *room) best(p hole) spot {
	if p.set == 0 {
		return r.bare(p)
	}
	if s, ok := r.memo[p]; ok {
		return s
	}
	var out spot
	for a := p.set; a > 0; a = (a - 1) & p.set {
		for _, s := range r.u.shapes(layer{set: a, depth: free}) {
			if s.w > p.w || s.h > p.h {
				continue
			}
			for _, cut := range []Cut{Rip, Crosscut} {
				out = r.try(out, p, s, a, cut)
			}
		}
	}
	r.memo[p] = out
	return out
}

func (r *room) bare(p hole) spot {
	s := spot{w: p.w, h: p.h, ok: true}
	if min(p.w, p.h)-r.u.m.kerf < max(r.u.m.least, 1) {
		s.w, s.h = 0, 0
	}
	return s
}

// try cuts one panel off and looks at the rest.
func (r *room) try(out spot, p hole, s *slab, set int, cut Cut) spot {
	q := hole{p.w, p.h, p.set ^ set}
	if cut == Crosscut {
		q.w -= s.w
	} else {
		q.h -= s.h
	}
	if t := r.best(q); r.better(t, out) {
		return spot{w: t.w, h: t.h, cut: cut, first: s, below: &q, ok: true}
	}
	return out
}

// panel makes the panels of the best way to cut a set.
func (r *room) panel(c carver, p Panel, q hole, cut Cut) Panel {
	s := r.best(q)
	size := s.first.along(s.cut)
	first, rest := divide(p, s.cut, size)
	into := flat(c.across(s.first, first, s.cut.other()), s.cut)
	switch {
	case s.below.set != 0:
		into = append(into, flat(r.panel(c, rest, *s.below, s.cut), s.cut)...)
	default:
		into = append(into, c.waste(rest)...)
	}
	if len(into) == 1 && extent(first, s.cut) == extent(p, s.cut) {
		return into[0]
	}
	out := c.real(p)
	out.Cut, out.Into = s.cut, into
	return out
}

// maxRoom is the most parts of a sheet for which every way is tried.
const maxRoom = 8

// roomy cuts a sheet so that the offcut is the largest, where nothing but the
// saw binds the order of cuts and the parts are few.
func (m *model) roomy(p pattern) (Panel, bool) {
	n := make([]int, len(m.kinds))
	for _, t := range p.takes {
		n[t.kind] = t.n
	}
	if m.first != Whole || m.stages != 0 || sum(n) > maxRoom {
		return Panel{}, false
	}
	u := m.units(n)
	r := &room{u: u, memo: map[hole]spot{}}
	s := m.sheets[p.sheet]
	q := hole{s.w, s.h, 1<<len(u.kind) - 1}
	if !r.best(q).ok {
		return Panel{}, false
	}
	return r.panel(carver{m: m, kerf: m.kerf}, Panel{W: s.w, H: s.h}, q, Whole), true
}

// layOut makes the panels of a pattern, with as large an offcut as it finds.
func (m *model) layOut(p pattern) (Panel, bool) {
	a, ok := m.carve(p)
	b, also := m.roomy(p)
	if also && (!ok || m.spare(b).better(m.spare(a))) {
		return b, true
	}
	return a, ok
}
