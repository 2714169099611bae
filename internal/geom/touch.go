package geom

import "slices"

// unknotted makes proper rings out of rings that touch themselves or each other, so that what hangs together only in
// points comes apart, and a hole that touches the outline is a ring of its own. Points of touching become nodes; from
// each edge that ends in a node the walk goes on along the edge that bounds the same wedge of the inside. It must wait
// until the last line has clipped: only while a hole hangs on the outline does a second line, that touches it
// elsewhere, part what lies on its two sides.
func (g Region) unknotted() Region {
	nodes := g.touches()
	if len(nodes) == 0 {
		return g
	}
	return g.darts(nodes).walk()
}

// touches returns the points in which a vertex lies on an edge that is not its own, each once.
func (g Region) touches() []Point {
	var nodes []Point
	for i, r := range g {
		for j, o := range g {
			if i != j && !r.Bounds().touches(o.Bounds()) {
				continue
			}
			for k, v := range r {
				if i == j && !r.returns(k) || i != j && !o.passes(v.P, 0, len(o)) {
					continue
				}
				if !slices.Contains(nodes, v.P) {
					nodes = append(nodes, v.P)
				}
			}
		}
	}
	return nodes
}

// returns reports whether the ring comes back to its vertex k.
func (r Ring) returns(k int) bool {
	return r.passes(r[k].P, k+1, k+len(r)-1)
}

// passes reports whether p lies on one of the edges from one number up to another, counted round the ring.
func (r Ring) passes(p Point, from, to int) bool {
	a := r[from%len(r)].P
	for i := from + 1; i <= to; i++ {
		b := r[i%len(r)].P
		if Bound(a, b).touches(Rect{p, p}) && Cross(a, b, p) == 0 {
			return true
		}
		a = b
	}
	return false
}

// dart is an edge between two vertices or nodes; next is the one after it in its ring.
type dart struct {
	a, b  Point
	label Label
	next  int
	used  bool
}

type web struct {
	darts []dart
	nodes []Point
}

// darts cuts the edges of g at the nodes.
func (g Region) darts(nodes []Point) *web {
	w := &web{nodes: nodes}
	for _, r := range g {
		first := len(w.darts)
		for i, v := range r {
			w.cut(v.P, r.end(i), v.Edge)
		}
		w.darts[len(w.darts)-1].next = first
	}
	return w
}

func (w *web) cut(a, b Point, l Label) {
	var on []Point
	for _, n := range w.nodes {
		if n != a && n != b && onSegment(a, b, n) {
			on = append(on, n)
		}
	}
	slices.SortFunc(on, func(p, q Point) int { return sign(dot(q, p, a, b)) })
	for _, n := range append(on, b) {
		w.darts = append(w.darts, dart{a: a, b: n, label: l, next: len(w.darts) + 1})
		a = n
	}
}

// walk follows every dart once and returns the loops.
func (w *web) walk() Region {
	var out Region
	for k := range w.darts {
		var r Ring
		for !w.darts[k].used {
			d := &w.darts[k]
			d.used = true
			r = append(r, Vertex{d.a, d.label})
			k = w.after(d)
		}
		out = loops(out, r.close(true))
	}
	return out
}

// after returns the dart that bounds the same wedge of the inside as d at its end.
func (w *web) after(d *dart) int {
	if !slices.Contains(w.nodes, d.b) {
		return d.next
	}
	best, back := d.next, d.a.Sub(d.b)
	for k := range w.darts {
		if c := &w.darts[k]; c.a == d.b && sooner(back, c.b.Sub(c.a), w.darts[best].b.Sub(w.darts[best].a)) {
			best = k
		}
	}
	return best
}

// sooner reports whether v comes before w when a ray turns clockwise from u.
func sooner(u, v, w Point) bool {
	p, q := clockwise(u, v), clockwise(u, w)
	return p < q || p == q && Cross(Point{}, v, w) < 0
}

// clockwise sorts v by its clockwise angle from u: below 180°, just that, above, none.
func clockwise(u, v Point) int {
	switch s := Cross(Point{}, u, v); {
	case s < 0:
		return 0
	case s > 0:
		return 2
	case dot(Point{}, u, Point{}, v) < 0:
		return 1
	}
	return 3
}
