package search

import "dryfit/internal/unit"

// tally counts, over every offset of an axis, things that come and go at a few offsets only: it notes the changes and
// adds them up once.
type tally struct {
	axis   axis
	start  int64
	change []int64 // by step; one more than there are steps
}

func newTally(a axis) *tally { return &tally{axis: a, change: make([]int64, a.steps+1)} }

// emptied is room that is used again.
func (t *tally) emptied() *tally {
	t.start = 0
	clear(t.change)
	return t
}

// total adds the changes up into out.
func (t *tally) total(out []int64) {
	n := t.start
	for i := range out {
		n += t.change[i]
		out[i] += n
	}
}

// floors adds weight times floor((x - offset) / pitch), which falls by one whenever the offset passes x.
func (t *tally) floors(x unit.Length, weight int64) {
	a := t.axis
	rest := a.mod(x - a.zero)
	t.start += weight * int64((x-a.zero-rest)/a.pitch)
	for at := rest; ; at += a.pitch {
		step := int(at/a.mark) + 1 // the first step whose offset is past x
		if step >= a.steps {
			return
		}
		t.change[step] -= weight
	}
}

// stretch adds weight at the steps where the phase of a falling (or rising) point lies in lo <= phase < hi, modulo
// the pitch; hi - lo must be less than the pitch. from is the point at step 0.
func (t *tally) stretch(from unit.Length, falls bool, lo, hi unit.Length, weight int64) {
	if hi <= lo {
		return
	}
	if hi-lo >= t.axis.pitch {
		t.start += weight
		return
	}
	if falls { // lo <= x - offset < hi modulo the pitch
		t.floors(from-lo, weight)
		t.floors(from-hi, -weight)
		return
	}
	// offset + c in [lo, hi): offset - (lo - c) >= 0 and offset - (hi - c) < 0; floors counts offsets > x.
	t.floors(lo-1-from, -weight)
	t.floors(hi-1-from, weight)
}

// slivered counts the cuts that show less than the limit: one for each course that the flank passes.
func slivered(t *tally, f *flank, limit unit.Length, weight int64) {
	for _, p := range f.passes {
		a := t.axis
		lo, hi := a.ease+1-(p.hi-p.lo), min(limit+f.hidden, a.size-a.ease)
		if p.seen < limit {
			hi = a.size - a.ease
		}
		if f.upper {
			t.stretch(p.lo-f.shift, true, lo, max(hi, a.ease+1), weight)
		} else {
			t.stretch(a.size-p.hi+f.shift, false, lo, max(hi, a.ease+1), weight)
		}
	}
}

// counted counts the tiles of one course that are cut: those that the band meets less those that it fills.
func counted(t *tally, b *band, shift unit.Length) {
	a := t.axis
	core := a.size - 2*a.ease
	for i, s := range b.any {
		t.last(s.hi-shift, 1)
		t.first(s.lo-shift, -1)
		t.start++
		if i > 0 && s.lo-b.any[i-1].hi < core { // one tile may meet both
			t.last(b.any[i-1].hi-shift, -1)
			t.first(s.lo-shift, 1)
			t.start--
		}
	}
	for _, s := range b.full {
		if s.hi-s.lo >= core { // last that ends in it less first that starts in it, plus one
			t.floors(s.hi-shift-a.size+a.ease, -1)
			t.floors(s.lo-shift-a.ease-1, 1)
		}
	}
}

// last adds weight times the greatest column whose core begins before x: floor((x - ease - 1 - offset) / pitch).
func (t *tally) last(x unit.Length, weight int64) { t.floors(x-t.axis.ease-1, weight) }

// first adds weight times the least column whose core ends after x: floor((x - size + ease - offset) / pitch) + 1.
func (t *tally) first(x unit.Length, weight int64) {
	t.floors(x-t.axis.size+t.axis.ease, weight)
	t.start += weight
}
