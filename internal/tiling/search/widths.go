package search

import "dryfit/internal/unit"

// flank is one judged edge against the courses of one shift: all the places where they meet. As the offset moves,
// they move together.
type flank struct {
	shift  unit.Length
	upper  bool // the region lies below: tiles are kept from their lower side
	lo, hi unit.Length
	gap    unit.Length // least of the passes
	seen   unit.Length
	hidden unit.Length
	weight int
	jamb   int // which side of an opening; -1 if none
	passes []pass
}

// add takes one more pass of the edge.
func (f *flank) add(p pass) {
	f.lo, f.hi = min(f.lo, p.lo), max(f.hi, p.hi)
	f.gap, f.seen = min(f.gap, p.gap), min(f.seen, p.seen)
	f.passes = append(f.passes, p)
}

// ramp walks the phase of the flank's nearest point.
func (f *flank) ramp(a axis) ramp {
	if f.upper {
		return a.fall(f.lo - f.shift)
	}
	return a.rise(f.hi - f.shift)
}

// phase is that of one of its passes, given the flank's own.
func (f *flank) phase(p pass, own unit.Length) unit.Length {
	if f.upper {
		return own + p.lo - f.lo
	}
	return own + f.hi - p.hi
}

// least returns the narrowest that is left beside the flank, as it is cut and as it is seen; not cut: wide.
func (f *flank) least(a axis, phase unit.Length) (leg, seen unit.Length) {
	run := f.hi - f.lo
	if phase > a.ease && phase+run < a.size-a.ease {
		return min(phase, f.gap), min(phase-f.hidden, f.seen)
	}
	if phase+run <= a.ease || phase >= a.size-a.ease && phase+run <= a.pitch+a.ease {
		return wide, wide
	}
	return f.leastOf(a, phase)
}

// leastOf looks at every pass: the flank straddles the end of a tile.
func (f *flank) leastOf(a axis, phase unit.Length) (leg, seen unit.Length) {
	leg, seen = wide, wide
	for _, p := range f.passes {
		own := f.phase(p, phase) % a.pitch
		if w, cut := a.left(own, p.hi-p.lo); cut {
			leg, seen = min(leg, w, p.gap), min(seen, w-f.hidden, p.seen)
		}
	}
	return leg, seen
}

// widths fills what the flanks cost at every offset of an axis: the narrowest cut, and what is cut off beside
// openings.
func widths(a axis, flanks []*flank, jambs int, narrow, opening []int64) {
	least := filled(a.steps, wide)
	legs := make([][]unit.Length, jambs)
	for _, f := range flanks {
		var at []unit.Length
		if f.jamb >= 0 {
			if legs[f.jamb] == nil {
				legs[f.jamb] = filled(a.steps, a.size)
			}
			at = legs[f.jamb]
		}
		f.sweep(a, least, at)
	}
	for i, l := range least {
		narrow[i] = max(narrow[i], a.narrowCost(l))
	}
	for _, leg := range legs {
		for i, l := range leg {
			opening[i] += a.marks(a.size - l)
		}
	}
}

// sweep lowers the least widths by those of one flank.
func (f *flank) sweep(a axis, least, legs []unit.Length) {
	r := f.ramp(a)
	for i := range least {
		leg, seen := f.least(a, r.phase)
		if seen < least[i] {
			least[i] = seen
		}
		if legs != nil && leg < legs[i] {
			legs[i] = leg
		}
		r.next()
	}
}

// narrowCost is the cost of the narrowest cut that is seen; one that is wholly covered shows nothing.
func (a axis) narrowCost(seen unit.Length) int64 {
	if seen == wide {
		return nothing
	}
	return -a.marks(max(0, seen))
}

func filled(n int, l unit.Length) []unit.Length {
	out := make([]unit.Length, n)
	for i := range out {
		out[i] = l
	}
	return out
}
