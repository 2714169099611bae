package geom

import "slices"

// clipper collects the chains of all rings of a region. It can be used for one line after another.
type clipper struct {
	line
	chains    []chain
	dists     []int64
	outs, ins []place
	next      []int
}

func (c *clipper) clip(g Region, l line) Region {
	c.line, c.chains = l, c.chains[:0]
	out := make(Region, 0, len(g))
	for _, r := range g {
		if c.take(r) {
			out = append(out, r)
		}
	}
	return c.join(out)
}

// chain is a run of vertices strictly left of the line. in and out are the edges that cross the line before and after
// it.
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
		in:  c.place(r, before, from, id, r[before].Edge),
		out: c.place(r, after, last, id, r[last].Edge)})
}

func (c *clipper) place(r Ring, lo, hi, id int, edge Label) place {
	p, q := r[lo].P, r[hi].P
	at := p
	if c.dists[lo] != 0 {
		at = c.meet(p, q, c.dists[lo], c.dists[hi], edge)
	}
	return place{p, q, at, id}
}

// join links every leaving place to the next entering one along the line and walks the rings that come of it.
func (c *clipper) join(out Region) Region {
	c.outs, c.ins = c.outs[:0], c.ins[:0]
	for _, ch := range c.chains {
		c.outs, c.ins = append(c.outs, ch.out), append(c.ins, ch.in)
	}
	slices.SortStableFunc(c.outs, c.order)
	slices.SortStableFunc(c.ins, c.order)
	c.next = slices.Grow(c.next[:0], len(c.outs))[:len(c.outs)]
	for k := range c.outs {
		c.next[c.outs[k].chain] = c.ins[k].chain
	}
	for i := range c.chains {
		if !c.chains[i].used {
			out = c.walk(out, i)
		}
	}
	return out
}

// walk follows one ring from chain i and appends it to the result.
func (c *clipper) walk(out Region, i int) Region {
	r := make(Ring, 0, c.chains[i].n+2)
	for !c.chains[i].used {
		ch := &c.chains[i]
		ch.used = true
		n := len(ch.ring)
		r = r.push(Vertex{ch.in.at, ch.ring[(ch.from+n-1)%n].Edge}, false)
		for k := range ch.n {
			r = r.push(ch.ring[(ch.from+k)%n], false)
		}
		r = r.push(Vertex{ch.out.at, c.label}, false)
		i = c.next[i]
	}
	if r = r.close(false); r.Area2() <= 0 { // less than the grid can show; all of it lies left of an edge of its own
		return out
	}
	return append(out, r)
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
