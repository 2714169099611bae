package search

import (
	"cmp"
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// finalists measures the winners, has the foremost of them counted in full, ranks those by the whole order of
// importance, and keeps what is truly different: apart on the wall, and better in something.
func finalists(in *Input, winners []found, names []judge.Name, measure func(geom.Point) []judge.Measure) []Candidate {
	var pool []Candidate
	for _, w := range once(winners) {
		pool = append(pool, Candidate{Origin: w.origin, Measures: measure(w.origin)})
	}
	front := foremost(in, pool)
	for i := range front {
		front[i] = in.complete(front[i], names)
	}
	slices.SortStableFunc(front, Compare)
	kept := different(in, front)
	explain(kept, append(front, pool...))
	return kept
}

// mostCounted is the most layouts that are counted in full: each count lays every piece and pairs the offcuts.
const mostCounted = 10

// foremost drops winners that lie near one before them. Those of the person's order, of each measure and of each part
// of the offsets come in that order, so that what is left speaks for all.
func foremost(in *Input, pool []Candidate) (front []Candidate) {
	for _, c := range pool {
		close := func(o Candidate) bool { return near(&in.Bond, c.Origin.Sub(o.Origin), in.Mark) }
		if len(front) < mostCounted && !slices.ContainsFunc(front, close) {
			front = append(front, c)
		}
	}
	return front
}

// once drops winners of several races, keeping the order.
func once(winners []found) []found {
	var out []found
	for _, w := range winners {
		if !slices.ContainsFunc(out, func(o found) bool { return o.origin == w.origin }) {
			out = append(out, w)
		}
	}
	return out
}

// Compare orders two layouts of one field, the better first; both hold the same measures in order of importance.
func Compare(a, b Candidate) int {
	for i := range min(len(a.Measures), len(b.Measures)) {
		if c := cmp.Compare(a.Measures[i].Cost, b.Measures[i].Cost); c != 0 {
			return c
		}
	}
	return 0
}

// different keeps the first, and then those that are apart from all kept and better than each in something. Where
// nothing is better than the first in anything, the next that is apart is kept, so that there is a choice.
func different(in *Input, pool []Candidate) []Candidate {
	var kept []Candidate
	for _, strict := range []bool{true, false} {
		for _, c := range pool {
			alike := func(k Candidate) bool {
				return Compare(c, k) == 0 || near(&in.Bond, c.Origin.Sub(k.Origin), in.Mark) || strict && !c.gains(k)
			}
			if len(kept) < in.Keep && !slices.ContainsFunc(kept, alike) {
				kept = append(kept, c)
			}
		}
		if len(kept) > 1 {
			break
		}
	}
	return kept
}

// gains reports whether c is better than k in any measure, by as much as is worth telling.
func (c Candidate) gains(k Candidate) bool {
	for i, m := range c.Measures {
		gain := k.Measures[i].Cost - m.Cost
		if gain >= worth || gain > 0 && m.IsCount {
			return true
		}
	}
	return false
}

// worth is how many marks longer or shorter something must be to make another layout worth looking at: 1/4 in or 4 mm
// (ours).
const worth = 8

// Apart: two layouts nearer than this share of the tile, both ways, look the same on the wall (ours).
const Apart = unit.One / 8

// near reports whether two origins that differ by d make nearly the same layout: d is near a step of the pattern.
func near(b *bond.Bond, d geom.Point, mark unit.Length) bool {
	p := b.Protos[0]
	x, y := max(4*mark, Apart.Of(p.W)), max(4*mark, Apart.Of(p.H))
	for _, step := range steps(b) {
		e := wrap(b, d.Sub(step))
		if e.X.Abs() < x && e.Y.Abs() < y {
			return true
		}
	}
	return false
}

// steps lists moves that carry the pattern onto itself, or nearly: the tiles of one cell that are alike.
func steps(b *bond.Bond) []geom.Point {
	var out []geom.Point
	for _, p := range b.Protos {
		if q := b.Protos[0]; b.Axis && p.Size == q.Size && p.Turn == q.Turn {
			out = append(out, p.At.Sub(q.At))
		}
	}
	if len(out) == 0 {
		out = []geom.Point{{}}
	}
	return out
}

// wrap returns d less the whole steps of the lattice that bring it nearest to zero. Products are kept apart, so that no
// machine joins them with the difference and rounds otherwise.
func wrap(b *bond.Bond, d geom.Point) geom.Point {
	cross := func(p, q geom.Point) float64 {
		x, y := float64(float64(p.X)*float64(q.Y)), float64(float64(p.Y)*float64(q.X))
		return x - y
	}
	det := cross(b.U, b.V)
	i, j := unit.FromFloat(cross(d, b.V)/det), unit.FromFloat(cross(b.U, d)/det)
	return geom.Point{X: d.X - i*b.U.X - j*b.V.X, Y: d.Y - i*b.U.Y - j*b.V.Y}
}
