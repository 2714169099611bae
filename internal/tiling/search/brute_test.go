package search

import (
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// brute judges layouts the slow and obvious way, for rooms whose edges are all upright or level: it lays real
// rectangles, one after the other, and measures beside every edge of the room that runs through them. It shares no
// code with the search but the input, the outline's labels and the order of the costs.
type brute struct {
	in     *Input
	xs, ys []unit.Length // coordinates of all vertices
	inside [][]bool      // by column and row between them
	list   []bruteEdge
	center unit.Length
}

func newBrute(in *Input, center unit.Length) *brute {
	b := &brute{in: in, center: center}
	for _, r := range in.Region {
		for _, v := range r {
			b.xs, b.ys = append(b.xs, v.P.X), append(b.ys, v.P.Y)
		}
	}
	slices.Sort(b.xs)
	slices.Sort(b.ys)
	b.xs, b.ys = slices.Compact(b.xs), slices.Compact(b.ys)
	for i := range len(b.xs) - 1 {
		col := make([]bool, len(b.ys)-1)
		for j := range col {
			mid := geom.Point{X: (b.xs[i] + b.xs[i+1]) / 2, Y: (b.ys[j] + b.ys[j+1]) / 2}
			col[j] = in.Region.Contains(mid) > 0
		}
		b.inside = append(b.inside, col)
	}
	return b
}

// tile is one rectangle of a layout, along and across its course.
func (b *brute) tile(o geom.Point, course, column int) geom.Rect {
	bd := b.in.Bond
	n := len(bd.Shifts)
	at := geom.Point{X: o.X + unit.Length(column)*bd.Pitch.X, Y: o.Y + unit.Length(course)*bd.Pitch.Y}
	if bd.Vertical {
		at.Y += bd.Shifts[((column%n)+n)%n]
	} else {
		at.X += bd.Shifts[((course%n)+n)%n]
	}
	p := bd.Protos[0]
	return geom.Rect{Min: at, Max: geom.Point{X: at.X + p.W, Y: at.Y + p.H}}
}

// each visits every tile that could meet the room.
func (b *brute) each(o geom.Point, visit func(r geom.Rect, course, column int)) {
	bd := b.in.Bond
	box := b.in.Region.Bounds()
	reach := func(lo, hi, from, pitch unit.Length) (int, int) {
		return int((lo-from)/pitch) - 3, int((hi-from)/pitch) + 3
	}
	c0, c1 := reach(box.Min.Y, box.Max.Y, o.Y, bd.Pitch.Y)
	k0, k1 := reach(box.Min.X, box.Max.X, o.X, bd.Pitch.X)
	for c := c0; c <= c1; c++ {
		for k := k0; k <= k1; k++ {
			visit(b.tile(o, c, k), c, k)
		}
	}
}

func (b *brute) ease() unit.Length { return easeOf(b.in.Mark) }

// share returns the area of the room within a rectangle.
func (b *brute) share(r geom.Rect) (sum int64) {
	for i, col := range b.inside {
		for j, in := range col {
			if w, h := overlap(b.xs[i], b.xs[i+1], r.Min.X, r.Max.X), overlap(b.ys[j], b.ys[j+1], r.Min.Y, r.Max.Y); in && w > 0 && h > 0 {
				sum += int64(w) * int64(h)
			}
		}
	}
	return sum
}

func overlap(a, b, c, d unit.Length) unit.Length { return min(b, d) - max(a, c) }

// free is how far the room goes on from an edge at a place beside it (doubled, so that the middle of two neighbors on
// the grid is a place), and what bounds it there.
func (b *brute) free(e bruteEdge, place2 unit.Length) (unit.Length, Edge) {
	best, by := wide, Edge{}
	for _, o := range b.edges() {
		d := (o.at - e.at) * (e.dir.X + e.dir.Y)
		if o.upright == e.upright && 2*o.lo < place2 && place2 < 2*o.hi && d > 0 && d < best {
			best, by = d, o.about
		}
	}
	return best, by
}

// bruteEdge is one edge of the room as brute sees it: where it is, how far it reaches, and which way the room lies.
type bruteEdge struct {
	at, lo, hi unit.Length
	upright    bool
	dir        geom.Point // into the room
	about      Edge
	label      geom.Label
}

func (b *brute) edges() (out []bruteEdge) {
	if b.list != nil {
		return b.list
	}
	for _, ring := range b.in.Region {
		for i, v := range ring {
			p, q := v.P, ring[(i+1)%len(ring)].P
			e := bruteEdge{at: p.Y, lo: min(p.X, q.X), hi: max(p.X, q.X), about: edgeOf(b.in.Edges, v.Edge), label: v.Edge}
			e.dir = geom.Point{Y: sign(q.X - p.X)}
			if p.X == q.X {
				e = bruteEdge{p.X, min(p.Y, q.Y), max(p.Y, q.Y), true, geom.Point{X: -sign(q.Y - p.Y)}, e.about, v.Edge}
			}
			out = append(out, e)
		}
	}
	b.list = out
	return out
}

func sign(l unit.Length) unit.Length {
	if l < 0 {
		return -1
	}
	return 1
}

// legs keeps the narrowest that is left beside each side of an opening.
type legs map[[2]int64]unit.Length

// costs judges one layout.
func (b *brute) costs(o geom.Point) costs {
	out, legs := blank(), legs{}
	for _, e := range b.edges() {
		b.beside(o, e, &out, legs)
	}
	for k, leg := range legs {
		size := b.in.Bond.Protos[0].W
		if k[1] == 0 {
			size = b.in.Bond.Protos[0].H
		}
		out[openings] += int64((size - leg) / b.in.Mark)
	}
	core := b.in.Bond.Protos[0]
	area := int64(core.W-2*b.ease()) * int64(core.H-2*b.ease())
	b.each(o, func(r geom.Rect, _, _ int) {
		e := b.ease()
		r = geom.Rect{Min: geom.Point{X: r.Min.X + e, Y: r.Min.Y + e}, Max: geom.Point{X: r.Max.X - e, Y: r.Max.Y - e}}
		if s := b.share(r); s > 0 && s < area {
			out[cuts]++
		}
	})
	b.lines(o, &out)
	return out
}

// beside measures every tile that an edge runs through. Where joints run through across the edge's own direction the
// tiles along it are all alike, and it counts as many as fit.
func (b *brute) beside(o geom.Point, e bruteEdge, out *costs, legs legs) {
	plain := e.upright == b.in.Bond.Vertical // the edge runs along the courses
	key := [2]int64{int64(e.label), 0}
	if e.upright {
		key[1] = 1
	}
	if _, ok := legs[key]; !ok && e.about.Opening {
		legs[key] = b.size(e.upright)
	}
	done := map[int]bool{}
	b.each(o, func(r geom.Rect, course, column int) {
		lane, lo, hi, near, far := course, r.Min.Y, r.Max.Y, r.Min.X, r.Max.X
		if !e.upright {
			lane, lo, hi, near, far = column, r.Min.X, r.Max.X, r.Min.Y, r.Max.Y
		}
		if plain { // as if there were no joints across it
			lane, lo, hi = 0, e.lo-b.in.Mark, e.hi+b.in.Mark
		}
		lo, hi = max(lo+b.ease(), e.lo), min(hi-b.ease(), e.hi)
		if lo >= hi || e.at <= near+b.ease() || e.at >= far-b.ease() || done[lane] {
			return
		}
		done[lane] = true
		times := int64(1)
		if plain {
			times = int64((e.hi - e.lo + b.pitch(!e.upright) - 1) / b.pitch(!e.upright))
		}
		width := e.at - near
		if e.dir.X+e.dir.Y > 0 {
			width = far - e.at
		}
		seen, leg := b.narrowestBeside(e, lo, hi, width)
		out[narrowest] = max(out[narrowest], -int64(seen/b.in.Mark))
		if seen < b.sliver() {
			out[slivers] += times * int64(e.about.Weight)
		}
		if e.about.Opening {
			legs[key] = min(legs[key], leg)
		}
	})
}

// narrowestBeside looks into the room from between every two vertices along the edge.
func (b *brute) narrowestBeside(e bruteEdge, lo, hi, width unit.Length) (seen, leg unit.Length) {
	seen, leg = width-e.about.Hidden, width
	stops := append([]unit.Length{lo, hi}, b.ys...)
	if !e.upright {
		stops = append([]unit.Length{lo, hi}, b.xs...)
	}
	slices.Sort(stops)
	for i := range len(stops) - 1 {
		if stops[i] < lo || stops[i+1] > hi || stops[i] == stops[i+1] {
			continue
		}
		gap, by := b.free(e, stops[i]+stops[i+1])
		seen, leg = min(seen, gap-e.about.Hidden-by.Hidden), min(leg, gap)
	}
	return max(0, seen), leg
}

func (b *brute) size(x bool) unit.Length {
	if x {
		return b.in.Bond.Protos[0].W
	}
	return b.in.Bond.Protos[0].H
}

func (b *brute) pitch(x bool) unit.Length {
	if x {
		return b.in.Bond.Pitch.X
	}
	return b.in.Bond.Pitch.Y
}

func (b *brute) sliver() unit.Length {
	if b.in.Sliver > 0 {
		return b.in.Sliver
	}
	return min(b.size(true), b.size(false)) / 4
}
