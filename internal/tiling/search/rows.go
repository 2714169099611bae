package search

import (
	"slices"

	"dryfit/internal/unit"
)

// columns holds the costs of one axis at every offset of it, by measure.
type columns [ranks][]int64

func newColumns(steps int) *columns {
	var c columns
	first := blank()
	for m := range c {
		c[m] = make([]int64, steps)
		for i := range c[m] {
			c[m][i] = first[m]
		}
	}
	return &c
}

// least returns the least of each measure.
func (c *columns) least() costs {
	var out costs
	for m := range c {
		out[m] = slices.Min(c[m])
	}
	return out
}

// course is one course of tiles that meets the region.
type course struct {
	shift unit.Length
	band  *band
}

// rows judges the offsets across the courses one after the other. For each it finds which courses meet which edges;
// while that stays as it was, so do the costs along the courses.
type rows struct {
	p     *problem
	bands *bands
	base  *columns // what does not depend on the courses

	courses []course
	holes   []unit.Length // the shift of each hole's course
	along   *columns      // for these courses and holes
	least   costs
	rims    map[rimKey][]int64
	off     *trims
	room    *tally // for one count after the other
}

// rimKey is a hole in a course of one shift.
type rimKey struct {
	hole  int
	shift unit.Length
}

func newRows(p *problem) *rows {
	base := newColumns(p.s.steps)
	p.lineCosts(0, base)
	return &rows{p: p, bands: newBands(p.sides), base: base, along: newColumns(p.s.steps),
		rims: map[rimKey][]int64{}, off: newTrims(p.jambs, p.s.steps), room: newTally(p.s)}
}

// at returns the costs along the courses at one offset across them.
func (r *rows) at(offset unit.Length) (*columns, *costs) {
	courses, holes := r.p.coursesAt(r.bands, offset), r.p.holeShifts(offset)
	if r.courses == nil || !slices.Equal(courses, r.courses) || !slices.Equal(holes, r.holes) {
		r.courses, r.holes = courses, holes
		r.judge(r.along)
		r.least = r.along.least()
	}
	return r.along, &r.least
}

// coursesAt lists the courses whose core meets the region, from below.
func (p *problem) coursesAt(b *bands, offset unit.Length) []course {
	var out []course
	a := p.t
	first := floorDiv(int(p.low-offset), int(a.pitch))
	for c := first; ; c++ {
		from := offset + unit.Length(c)*a.pitch
		if from+a.ease >= p.up {
			return out
		}
		if band := b.between(from+a.ease, from+a.size-a.ease); len(band.any) > 0 {
			out = append(out, course{p.shift(c), band})
		}
	}
}

func (p *problem) holeShifts(offset unit.Length) []unit.Length {
	out := make([]unit.Length, len(p.holes))
	for i, h := range p.holes {
		out[i] = p.shift(p.holeCourse(h, offset))
	}
	return out
}

// judge fills the costs along the courses.
func (r *rows) judge(out *columns) {
	p, a := r.p, r.p.s
	for m := range out {
		copy(out[m], r.base[m])
	}
	flanks := p.flanks(r.courses)
	widths(a, flanks, r.off, out[narrowest], out[openings])
	sl := r.room.emptied()
	for _, f := range flanks {
		slivered(sl, f, p.sliver, int64(f.weight))
	}
	sl.total(out[slivers])
	cut := r.room.emptied()
	for _, c := range r.courses {
		counted(cut, c.band, c.shift)
	}
	cut.total(out[cuts])
	for k, shift := range r.holes {
		for i, c := range r.rim(rimKey{k, shift}) {
			out[holes][i] = max(out[holes][i], c)
		}
	}
}

// rim returns what one hole costs along a course of one shift.
func (r *rows) rim(k rimKey) []int64 {
	if r.rims[k] == nil {
		r.rims[k] = r.p.rim(r.p.s, r.p.holes[k.hole].s-k.shift, r.p.holes[k.hole].radius)
	}
	return r.rims[k]
}

// rim is what a hole costs at every offset of an axis.
func (p *problem) rim(a axis, at, radius unit.Length) []int64 {
	out := make([]int64, a.steps)
	for i := range out {
		out[i] = p.holeCost(a, a.clear(at, radius, a.at(i)))
	}
	return out
}

// flanks gathers the passes of each edge in the courses of each shift.
func (p *problem) flanks(courses []course) []*flank {
	type key struct {
		side  int
		shift unit.Length
	}
	at, out := map[key]*flank{}, []*flank(nil)
	for _, c := range courses {
		for _, q := range c.band.passes {
			k := key{q.side, c.shift}
			f := at[k]
			if f == nil {
				f = p.flank(p.sides[q.side], q, c.shift)
				at[k], out = f, append(out, f)
			}
			f.add(q)
		}
	}
	return out
}

// flank starts a flank at its first pass.
func (p *problem) flank(s side, q pass, shift unit.Length) *flank {
	f := &flank{shift: shift, upper: s.upper(), lo: q.lo, hi: q.hi, gap: wide, seen: wide,
		hidden: s.about.Hidden, weight: s.about.Weight, jamb: -1}
	if s.about.Opening {
		f.jamb = p.jambOf[s.label]
	}
	return f
}

// across fills the costs across the courses at every offset.
func (p *problem) across() *columns {
	a := p.t
	out := newColumns(a.steps)
	p.lineCosts(1, out)
	var flanks []*flank
	sl := newTally(a)
	for _, q := range p.crosses {
		s := p.turned[q.side]
		f := p.flank(s, q, 0)
		f.add(q)
		flanks = append(flanks, f)
		slivered(sl, f, p.sliver, int64(f.weight)*p.tilesAlong(s))
	}
	sl.total(out[slivers])
	widths(a, flanks, newTrims(p.jambs, a.steps), out[narrowest], out[openings])
	for _, h := range p.holes {
		for i, c := range p.rim(a, h.t, h.radius) {
			out[holes][i] = max(out[holes][i], c)
		}
	}
	return out
}

// tilesAlong is how many tiles an edge along the courses meets, begun ones counted, wherever they start.
func (p *problem) tilesAlong(turned side) int64 {
	return int64((turned.top() - turned.bottom()).Ceil(p.s.pitch) / p.s.pitch)
}
