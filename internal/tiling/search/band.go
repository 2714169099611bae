package search

import (
	"cmp"
	"slices"

	"dryfit/internal/unit"
)

// band is what the region is within one course: the stretches of s where there is any of it, those where it fills
// the course, and every judged edge that passes.
type band struct {
	any, full []span
	passes    []pass
}

type span struct{ lo, hi unit.Length }

// pass is one judged edge within one course.
type pass struct {
	side   int
	lo, hi unit.Length // the edge's extremes along s
	gap    unit.Length // least distance to the edge that it faces, if that is judged; wide if not
	seen   unit.Length // the same, less what is hidden at both edges
}

// wide stands for no limit; sums of a few of it still fit.
const wide = unit.Length(1) << 50

// bands makes and remembers the bands of one region. It is not safe for use by several goroutines.
type bands struct {
	sides  []side
	levels []unit.Length // every t of a vertex, ascending, once
	active [][]int       // the edges between level k and the next, by their place along s
	memo   map[[2]int]*band
}

func newBands(sides []side) *bands {
	b := &bands{sides: sides, memo: map[[2]int]*band{}}
	for _, s := range sides {
		b.levels = append(b.levels, s.a.Y)
	}
	slices.Sort(b.levels)
	b.levels = slices.Compact(b.levels)
	for k := range max(0, len(b.levels)-1) {
		b.active = append(b.active, b.through(b.levels[k], b.levels[k+1]))
	}
	return b
}

// through lists the edges that run from one level to the next, by their place along s. Edges do not cross, so the order
// holds in between.
func (b *bands) through(low, top unit.Length) (out []int) {
	for i, s := range b.sides {
		if s.bottom() <= low && s.top() >= top && s.a.Y != s.b.Y {
			out = append(out, i)
		}
	}
	slices.SortFunc(out, func(i, j int) int {
		p, q := b.sides[i], b.sides[j]
		return cmp.Or(cmp.Compare(p.at(low)+p.at(top), q.at(low)+q.at(top)), cmp.Compare(i, j))
	})
	return out
}

// between returns the band of from < t < to. Where no edge leans within it, it depends only on the vertices inside,
// and is made once.
func (b *bands) between(from, to unit.Length) *band {
	i, found := slices.BinarySearch(b.levels, from)
	if found {
		i++
	}
	j, _ := slices.BinarySearch(b.levels, to)
	key := [2]int{i, j}
	if m := b.memo[key]; m != nil {
		return m
	}
	made, leans := b.make(from, to, i, j)
	if !leans {
		b.memo[key] = made
	}
	return made
}

// make cuts the band at levels i to j-1, which lie inside, into slabs of trapezoids and gathers them.
func (b *bands) make(from, to unit.Length, i, j int) (*band, bool) {
	out, blocked, leans := &band{}, []span{}, false
	low := from
	for k := i; k <= j; k++ {
		high := to
		if k < j {
			high = b.levels[k]
		}
		leans = b.slab(k-1, low, high, out, &blocked) || leans
		low = high
	}
	out.any = union(out.any)
	out.full = without(out.any, union(blocked))
	return out, leans
}

// crossing is an edge through a slab, with its s at both levels.
type crossing struct {
	side     int
	low, top unit.Length
}

// slab adds the trapezoids from low to top, which lie between level k and the next.
func (b *bands) slab(k int, low, top unit.Length, out *band, blocked *[]span) (leans bool) {
	last := -wide
	if k >= 0 && k < len(b.active) {
		edges := b.active[k]
		for n := 0; n+1 < len(edges); n += 2 {
			l, r := b.cross(edges[n], low, top), b.cross(edges[n+1], low, top)
			leans = leans || b.leans(l.side) || b.leans(r.side)
			out.any = append(out.any, span{min(l.low, l.top), max(r.low, r.top)})
			*blocked = append(*blocked, span{last, max(l.low, l.top)})
			last = min(r.low, r.top)
			b.face(out, l, r)
		}
	}
	*blocked = append(*blocked, span{last, wide})
	return leans
}

func (b *bands) leans(i int) bool { return b.sides[i].a.X != b.sides[i].b.X }

func (b *bands) cross(i int, low, top unit.Length) crossing {
	return crossing{i, b.sides[i].at(low), b.sides[i].at(top)}
}

// face notes the two edges of one trapezoid, which face each other.
func (b *bands) face(out *band, l, r crossing) {
	gap, seen := wide, wide
	p, q := b.sides[l.side], b.sides[r.side]
	if p.judged && q.judged {
		gap = max(0, min(r.low-l.low, r.top-l.top))
		seen = gap - p.about.Hidden - q.about.Hidden
	}
	out.note(l, p.judged, gap, seen)
	out.note(r, q.judged, gap, seen)
}

// note adds a judged crossing to the passes; one edge is one pass of the band.
func (o *band) note(c crossing, judged bool, gap, seen unit.Length) {
	if !judged {
		return
	}
	lo, hi := min(c.low, c.top), max(c.low, c.top)
	for i := range o.passes {
		if p := &o.passes[i]; p.side == c.side {
			p.lo, p.hi = min(p.lo, lo), max(p.hi, hi)
			p.gap, p.seen = min(p.gap, gap), min(p.seen, seen)
			return
		}
	}
	o.passes = append(o.passes, pass{c.side, lo, hi, gap, seen})
}

// union joins spans that overlap or touch, in order; empty ones are dropped.
func union(spans []span) []span {
	slices.SortFunc(spans, func(p, q span) int { return cmp.Or(cmp.Compare(p.lo, q.lo), cmp.Compare(p.hi, q.hi)) })
	var out []span
	for _, s := range spans {
		if s.hi <= s.lo {
			continue
		}
		if n := len(out); n > 0 && s.lo <= out[n-1].hi {
			out[n-1].hi = max(out[n-1].hi, s.hi)
			continue
		}
		out = append(out, s)
	}
	return out
}

// without returns the parts of spans that no blocked span covers; both are unions.
func without(spans, blocked []span) []span {
	var out []span
	for _, s := range spans {
		lo := s.lo
		for _, x := range blocked {
			if x.hi <= lo || x.lo >= s.hi {
				continue
			}
			if x.lo > lo {
				out = append(out, span{lo, x.lo})
			}
			lo = max(lo, x.hi)
		}
		if lo < s.hi {
			out = append(out, span{lo, s.hi})
		}
	}
	return out
}
