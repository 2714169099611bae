package nest

import "math/bits"

// units are single parts in number few enough for every set of them to be looked
// at; a set is a mask.
type units struct {
	m    *model
	kind []int
	memo map[layer][]*slab
}

// layer names the panels of a set of units: depth stages, the outermost of that
// cut; depth free is any number of stages.
type layer struct {
	set   int
	cut   Cut
	depth int
}

const free = -1

func (m *model) units(need []int) *units {
	u := &units{m: m, memo: map[layer][]*slab{}}
	for k, n := range need {
		for range n {
			u.kind = append(u.kind, k)
		}
	}
	return u
}

// lone is a unit as it may lie.
func (u *units) lone(set int) []*slab {
	k := u.kind[bits.TrailingZeros(uint(set))]
	out := []*slab{u.m.leaf(k, false)}
	if u.m.kinds[k].turns {
		out = append(out, u.m.leaf(k, true))
	}
	return out
}

// shapes are the smallest panels that hold a set: every other panel of the layer
// that holds it is larger than one of them.
func (u *units) shapes(l layer) []*slab {
	if l.depth == free {
		l.cut = Whole
	}
	if out, ok := u.memo[l]; ok {
		return out
	}
	var out []*slab
	switch {
	case l.depth == free:
		out = u.freeShapes(l.set)
	case l.depth == 0:
		if bits.OnesCount(uint(l.set)) == 1 {
			out = u.lone(l.set)
		}
	default:
		out = u.stagedShapes(l)
	}
	u.memo[l] = out
	return out
}

// halves lists the ways to divide a set in two, the first with the lowest unit.
func halves(set int, each func(a, b int)) {
	low := set & -set
	rest := set ^ low
	for a := rest; a > 0; a = (a - 1) & rest {
		each(set^a, a)
	}
}

func (u *units) freeShapes(set int) (out []*slab) {
	if set&(set-1) == 0 {
		return u.lone(set)
	}
	halves(set, func(a, b int) {
		for _, s := range u.shapes(layer{set: a, depth: free}) {
			for _, t := range u.shapes(layer{set: b, depth: free}) {
				out = addShape(out, join(Crosscut, s, t))
				out = addShape(out, join(Rip, s, t))
			}
		}
	})
	return out
}

// addShape keeps a list of shapes none of which is within another.
func addShape(list []*slab, s *slab) []*slab {
	for _, t := range list {
		if t.w <= s.w && t.h <= s.h {
			return list
		}
	}
	kept := list[:0]
	for _, t := range list {
		if s.w > t.w || s.h > t.h {
			kept = append(kept, t)
		}
	}
	return append(kept, s)
}

// stagedShapes are panels whose outermost cuts have one direction. With one
// stage its parts are all exactly as large across.
func (u *units) stagedShapes(l layer) (out []*slab) {
	keep := addShape
	if l.depth == 1 {
		keep = addExact
	}
	piece := layer{l.set, l.cut.other(), l.depth - 1}
	for _, s := range u.shapes(piece) {
		out = keep(out, s)
	}
	across := l.cut.other()
	halves(l.set, func(a, b int) {
		for _, s := range u.shapes(layer{a, across, l.depth - 1}) {
			for _, t := range u.shapes(layer{b, l.cut, l.depth}) {
				if l.depth > 1 || s.along(across) == t.along(across) {
					out = keep(out, join(l.cut, s, t))
				}
			}
		}
	})
	return out
}

// addExact keeps every shape once.
func addExact(list []*slab, s *slab) []*slab {
	for _, t := range list {
		if t.w == s.w && t.h == s.h {
			return list
		}
	}
	return append(list, s)
}

// fit is a way to cut a set from a clear sheet within the rules, or nil.
func (u *units) fit(set int, b sheet) *slab {
	m := u.m
	switch {
	case m.first != Whole:
		return u.fitBegun(set, b)
	case m.stages == 0:
		return inside(u.shapes(layer{set: set, depth: free}), b, false, false)
	}
	for _, cut := range []Cut{Rip, Crosscut} {
		l := layer{set, cut, m.stages}
		if s := inside(u.shapes(l), b, cut == Crosscut && m.stages == 1, cut == Rip && m.stages == 1); s != nil {
			return s
		}
	}
	return nil
}

// inside is the first shape within a sheet, exactly as high or wide where asked.
func inside(list []*slab, b sheet, high, wide bool) *slab {
	for _, s := range list {
		if s.w <= b.w && s.h <= b.h && (!high || s.h == b.h) && (!wide || s.w == b.w) {
			return s
		}
	}
	return nil
}

// fitBegun keeps the first cut: see rule 5.
func (u *units) fitBegun(set int, b sheet) *slab {
	cut, depth := u.m.first, free
	if u.m.stages > 0 {
		depth = u.m.stages - 1
	}
	if s := u.spanning(set, b); s != nil {
		return s
	}
	less := b
	if cut == Crosscut {
		less.w--
	} else {
		less.h--
	}
	exact := depth == 0
	high, wide := exact && cut == Crosscut, exact && cut == Rip
	if s := inside(u.shapes(layer{set, cut.other(), depth}), less, high, wide); s != nil {
		return s
	}
	return u.row(set, depth, b, high, wide)
}

// row divides a set into two or more panels by the first cut.
func (u *units) row(set, depth int, b sheet, high, wide bool) (found *slab) {
	cut := u.m.first
	halves(set, func(a, rest int) {
		for _, s := range u.shapes(layer{a, cut.other(), depth}) {
			if found != nil {
				return
			}
			if inside([]*slab{s}, b, high, wide) == nil {
				continue
			}
			r := b
			if cut == Crosscut {
				r.w -= s.w
			} else {
				r.h -= s.h
			}
			t := inside(u.shapes(layer{rest, cut.other(), depth}), r, high, wide)
			if t == nil && rest&(rest-1) != 0 {
				t = u.row(rest, depth, r, high, wide)
			}
			if t != nil {
				found = join(cut, s, t)
			}
		}
	})
	return found
}

// spanning is a sheet whose parts all reach across it, or that is one part.
func (u *units) spanning(set int, b sheet) *slab {
	cut := u.m.first.other()
	if s := inside(u.shapes(layer{set, cut, 0}), b, true, true); s != nil {
		return s
	}
	if u.m.stages == 1 {
		return nil
	}
	return inside(u.shapes(layer{set, cut, 1}), b, cut == Crosscut, cut == Rip)
}
