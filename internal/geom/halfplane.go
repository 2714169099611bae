package geom

import "slices"

// line is a directed line; what lies left of it is kept. For lines along the axes dist is a plain difference of
// coordinates, and the crossing is exact in one coordinate.
type line struct {
	a, b  Point
	label Label
	axis  axis
}

type axis uint8

const (
	oblique axis = iota
	right        // along +x: keeps what is above
	left         // along -x: keeps what is below
	up           // along +y: keeps what is to the left
	down         // along -y: keeps what is to the right
)

func lineThrough(a, b Point, l Label) line {
	at := oblique
	switch {
	case a.Y == b.Y && a.X < b.X:
		at = right
	case a.Y == b.Y:
		at = left
	case a.X == b.X && a.Y < b.Y:
		at = up
	case a.X == b.X:
		at = down
	}
	return line{a, b, l, at}
}

// dist returns a positive multiple of p's signed distance: positive left of the line, zero on it.
func (l line) dist(p Point) int64 {
	switch l.axis {
	case right:
		return int64(p.Y - l.a.Y)
	case left:
		return int64(l.a.Y - p.Y)
	case up:
		return int64(l.a.X - p.X)
	case down:
		return int64(p.X - l.a.X)
	}
	return Cross(l.a, l.b, p)
}

// HalfPlane returns the part of g that lies left of the directed line a->b. Edges along the line, new or old, have the
// label l; a ring that the line does not touch is shared with g, not copied. A part that only touches the line from the right vanishes, and a
// hole that only touches it stays a hole. A line of no length keeps all.
//
// The line is thought of as moved to the left by less than any distance in g, so that it meets no vertex: what lies on
// it counts as cut off. Then every ring falls into chains on the left, each with a place where it enters and one where it leaves;
// sorted along the line, leaving and entering places alternate, and the stretch from each leaving place to the next entering one
// is an edge of the result. Places are put back on the line at the end. The order along the line is decided by exact
// predicates on whole edges, never by rounded places.
func (g Region) HalfPlane(a, b Point, l Label) Region {
	if a == b {
		return g
	}
	return g.clip(lineThrough(a, b, l))
}

func (g Region) clip(l line) Region {
	c := clipper{line: l}
	out := make(Region, 0, len(g))
	for _, r := range g {
		if c.take(r) {
			out = append(out, r)
		}
	}
	return c.join(out)
}

// clipper collects the chains of all rings of a region.
type clipper struct {
	line
	chains []chain
	dists  []int64
}

// chain is a run of vertices strictly left of the line. in and out are the edges that cross the line before and after it.
type chain struct {
	ring    Ring
	from, n int // first vertex, number of vertices
	in, out place
	used    bool
}

// place is where an edge crosses the line.
type place struct {
	lo, hi Point // the edge's ends: not left of the line, left of it
	at     Point // rounded
	chain  int
}

// take sorts a ring: true if it is kept whole; otherwise its chains, if any, are collected.
func (c *clipper) take(r Ring) bool {
	c.dists = c.dists[:0]
	start, kept := -1, 0
	for i, v := range r {
		d := c.dist(v.P)
		c.dists = append(c.dists, d)
		if d > 0 {
			kept++
			if i > 0 && c.dists[i-1] <= 0 {
				start = i
			}
		}
	}
	if kept == 0 || kept == len(r) {
		return kept > 0
	}
	if start < 0 { // the only run begins at vertex 0
		start = 0
	}
	c.split(r, start)
	return false
}

// split collects the chains of a ring that crosses the line; start is the first vertex of one.
func (c *clipper) split(r Ring, start int) {
	n := len(r)
	for k := 0; k < n; {
		i := (start + k) % n
		if c.dists[i] <= 0 {
			k++
			continue
		}
		run := 1
		for c.dists[(i+run)%n] > 0 {
			run++
		}
		c.add(r, i, run)
		k += run
	}
}

func (c *clipper) add(r Ring, from, run int) {
	n, id := len(r), len(c.chains)
	before, last, after := (from+n-1)%n, (from+run-1)%n, (from+run)%n
	c.chains = append(c.chains, chain{ring: r, from: from, n: run,
		in:  c.place(r, before, from, id),
		out: c.place(r, after, last, id)})
}

func (c *clipper) place(r Ring, lo, hi, id int) place {
	p, q := r[lo].P, r[hi].P
	at := p
	if c.dists[lo] != 0 {
		at = crossing(p, q, c.dists[lo], c.dists[hi])
	}
	return place{p, q, at, id}
}

// join links every leaving place to the next entering one along the line and walks the rings that come of it.
func (c *clipper) join(out Region) Region {
	outs, ins := make([]place, len(c.chains)), make([]place, len(c.chains))
	for i, ch := range c.chains {
		outs[i], ins[i] = ch.out, ch.in
	}
	slices.SortStableFunc(outs, c.order)
	slices.SortStableFunc(ins, c.order)
	next := make([]int, len(c.chains))
	for k := range outs {
		next[outs[k].chain] = ins[k].chain
	}
	for i := range c.chains {
		if !c.chains[i].used {
			out = c.walk(out, i, next)
		}
	}
	return out
}

// walk follows one ring from chain i and appends it to the result, in as many loops as it has.
func (c *clipper) walk(out Region, i int, next []int) Region {
	var r Ring
	for !c.chains[i].used {
		ch := &c.chains[i]
		ch.used = true
		r = r.push(Vertex{ch.in.at, ch.ring[(ch.from+len(ch.ring)-1)%len(ch.ring)].Edge}, false)
		for k := range ch.n {
			r = r.push(ch.ring[(ch.from+k)%len(ch.ring)], false)
		}
		r = r.push(Vertex{ch.out.at, c.label}, false)
		i = next[i]
	}
	return loops(out, r.close(false))
}

// order sorts places along the line. Edges of a valid region do not cross, so of two of them one lies wholly on one
// side of the other; where edges cross all the same (by a rounding before), their rounded places decide.
func (c *clipper) order(p, q place) int {
	if s := beside(p, q); s != 0 {
		return s
	}
	if s := beside(q, p); s != 0 {
		return -s
	}
	return sign(dot(q.at, p.at, c.a, c.b))
}

// beside returns -1 if q's edge lies right of p's edge (seen from its low end), +1 if left, 0 if neither.
func beside(p, q place) int {
	s, t := Side(p.lo, p.hi, q.lo), Side(p.lo, p.hi, q.hi)
	if s*t < 0 {
		return 0
	}
	return sign(int64(s + t))
}

// loops appends r, cut into loops wherever it comes back to the same point, so that a hole that touches the outline
// is a ring of its own and so are parts that touch in a point.
func loops(out Region, r Ring) Region {
	for i := 0; i < len(r); i++ {
		for j := i + 1; j < len(r); j++ {
			if r[i].P == r[j].P {
				inner := slices.Clone(r[i:j])
				out = loops(out, inner.close(false))
				r = slices.Concat(r[:i], r[j:]).close(false)
				j = i
				if i >= len(r) {
					break
				}
			}
		}
	}
	if len(r) > 2 {
		out = append(out, r)
	}
	return out
}

// ClipRect returns the part of g in r. Edges along r's sides have labels[0..3] for left, bottom, right, top.
func (g Region) ClipRect(r Rect, labels [4]Label) Region {
	return g.ClipConvex(RectRing(r, labels[0], labels[1], labels[2], labels[3]))
}

// ClipConvex returns the part of g in the convex counter-clockwise ring c. Edges along c's edges have c's labels.
func (g Region) ClipConvex(c Ring) Region {
	g = g.near(c.Bounds())
	for i, v := range c {
		if len(g) == 0 {
			return nil
		}
		g = g.HalfPlane(v.P, c.end(i), v.Edge)
	}
	return g
}

// near returns the rings whose bounds share area with r; the others have no part in what lies in r.
func (g Region) near(r Rect) Region {
	out := make(Region, 0, len(g))
	for _, ring := range g {
		if ring.Bounds().Overlaps(r) {
			out = append(out, ring)
		}
	}
	return out
}
