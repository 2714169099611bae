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

// leastOf looks at every pass, where the flank straddles the end of a tile; not cut: wide.
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
func widths(a axis, flanks []*flank, off *trims, narrow, opening []int64) {
	for _, f := range flanks {
		f.sweep(a, narrow, off.row(f.jamb))
	}
	off.total(opening)
}

// trims is room for what is cut off beside each side of an opening, at every offset. It is used again and again.
type trims struct {
	rows [][]int64
	used []bool
}

func newTrims(jambs, steps int) *trims {
	t := &trims{make([][]int64, jambs), make([]bool, jambs)}
	for i := range t.rows {
		t.rows[i] = make([]int64, steps)
	}
	return t
}

// row returns one side's; none for what is no side of an opening.
func (t *trims) row(jamb int) []int64 {
	if jamb < 0 {
		return nil
	}
	if !t.used[jamb] {
		t.used[jamb] = true
		clear(t.rows[jamb])
	}
	return t.rows[jamb]
}

// total adds all sides up and makes ready for the next time.
func (t *trims) total(out []int64) {
	for k, used := range t.used {
		if used {
			for i, l := range t.rows[k] {
				out[i] += l
			}
		}
	}
	clear(t.used)
}

// sweep raises the costs to those of one flank. Most offsets are either within a tile, where what is left shrinks or
// grows by one mark a step, or in a joint, where nothing is cut.
func (f *flank) sweep(a axis, narrow, off []int64) {
	r := f.ramp(a)
	for i := 0; i < len(narrow); {
		n := min(len(narrow)-i, f.inside(a, r))
		if n > 0 {
			f.shrink(a, r, narrow[i:i+n])
			if off != nil {
				f.trim(a, r, off[i:i+n])
			}
		} else if n = min(len(narrow)-i, f.clear(a, r)); n == 0 {
			n = 1
			f.straddle(a, r.phase, i, narrow, off)
		}
		r.skip(n)
		i += n
	}
}

// inside is for how many steps from here the whole flank stays within the core of one tile.
func (f *flank) inside(a axis, r ramp) int {
	run := f.hi - f.lo
	if r.phase <= a.ease || r.phase+run >= a.size-a.ease {
		return 0
	}
	if r.step < 0 {
		return int((r.phase-a.ease-1)/a.mark) + 1
	}
	return int((a.size-a.ease-run-r.phase-1)/a.mark) + 1
}

// clear is for how many steps from here the whole flank stays within a joint and its ease.
func (f *flank) clear(a axis, r ramp) int {
	run, phase := f.hi-f.lo, r.phase
	if phase+run <= a.ease {
		phase += a.pitch
	}
	if phase < a.size-a.ease || phase+run > a.pitch+a.ease {
		return 0
	}
	if r.step < 0 {
		return int((phase-a.size+a.ease)/a.mark) + 1
	}
	return int((a.pitch+a.ease-run-phase)/a.mark) + 1
}

// shrink costs the narrowest cut while the flank is inside one tile.
func (f *flank) shrink(a axis, r ramp, narrow []int64) {
	cost, step := -a.marks(r.phase-f.hidden), int64(-r.step/a.mark)
	floor := a.narrowCost(f.seen)
	for i, c := range narrow {
		narrow[i] = max(c, min(0, max(cost, floor)))
		cost += step
	}
}

// trim costs what is cut off beside an opening while the flank is inside one tile.
func (f *flank) trim(a axis, r ramp, off []int64) {
	cost, step := a.marks(a.size-r.phase), int64(-r.step/a.mark)
	least := a.marks(a.size - f.gap)
	for i, c := range off {
		off[i] = max(c, cost, least)
		cost += step
	}
}

// straddle costs one offset at which the flank runs over the end of a tile.
func (f *flank) straddle(a axis, phase unit.Length, i int, narrow, off []int64) {
	leg, seen := f.leastOf(a, phase)
	narrow[i] = max(narrow[i], a.narrowCost(seen))
	if off != nil && leg != wide {
		off[i] = max(off[i], a.marks(a.size-leg))
	}
}

// narrowCost is the cost of the narrowest cut that is seen; one that is wholly covered shows nothing.
func (a axis) narrowCost(seen unit.Length) int64 {
	if seen >= wide/2 {
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
