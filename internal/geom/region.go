package geom

import "dryfit/internal/unit"

// Area2 returns twice the area, exactly: outers less holes.
func (g Region) Area2() int64 {
	var sum int64
	for _, r := range g {
		sum += r.Area2()
	}
	return sum
}

// Area returns the area; half a square count is rounded up.
func (g Region) Area() unit.Area { return half(g.Area2()) }

// Bounds returns the least rectangle that holds the region; the zero Rect if it is empty.
func (g Region) Bounds() Rect {
	if len(g) == 0 {
		return Rect{}
	}
	b := g[0].Bounds()
	for _, r := range g[1:] {
		o := r.Bounds()
		b = b.With(o.Min).With(o.Max)
	}
	return b
}

// Contains returns +1 if p is inside, 0 on the boundary, -1 outside.
func (g Region) Contains(p Point) int { return g.contains(p, 1) }

// contains is Contains for the point p/scale, so that a point between grid points can be asked for; the scale is 4 at
// most. A ray runs to the right and its crossings are counted.
func (g Region) contains(p Point, scale unit.Length) int {
	var c crossings
	for _, r := range g {
		for i, v := range r {
			c.add(v.P, r.end(i), p, scale)
		}
	}
	return c.verdict()
}

// crossings counts the edges that a ray crosses.
type crossings struct{ odd, on bool }

// add counts the edge a b if the ray from p/scale to the right crosses it, its lower end included, its upper end not.
// A product is taken only for a point in the edge's bounds, where it stays below 2^62.
func (c *crossings) add(a, b, p Point, scale unit.Length) {
	if a.Y > b.Y {
		a, b = b, a
	}
	if p.Y < scale*a.Y || p.Y > scale*b.Y || p.X > scale*max(a.X, b.X) {
		return
	}
	side := int64(1)
	if p.X >= scale*min(a.X, b.X) {
		side = int64(b.X-a.X)*int64(p.Y-scale*a.Y) - int64(b.Y-a.Y)*int64(p.X-scale*a.X)
	}
	c.on = c.on || side == 0
	c.odd = c.odd != (side > 0 && p.Y < scale*b.Y)
}

func (c *crossings) verdict() int {
	switch {
	case c.on:
		return 0
	case c.odd:
		return 1
	}
	return -1
}

// Parts returns the connected parts, each an outer ring with the holes that lie in it, in the order of the outers.
func (g Region) Parts() []Region {
	var parts []Region
	for _, r := range g {
		if r.Area2() > 0 {
			parts = append(parts, Region{r})
		}
	}
	for _, r := range g {
		if r.Area2() < 0 {
			if k := holder(parts, r); k >= 0 {
				parts[k] = append(parts[k], r)
			}
		}
	}
	return parts
}

// holder returns the part whose outer is the smallest that holds the hole; -1 if none does.
func holder(parts []Region, hole Ring) int {
	if len(parts) == 1 {
		return 0
	}
	best, least := -1, int64(0)
	for k, p := range parts {
		if a := p[0].Area2(); p[0].holds(hole) && (best < 0 || a < least) {
			best, least = k, a
		}
	}
	return best
}

// holds reports whether the ring o, which does not cross r, lies inside r. Their vertices may touch, so the first
// vertex or edge middle of o that is not on r decides.
func (r Ring) holds(o Ring) bool {
	if !r.Bounds().holds(o.Bounds()) {
		return false
	}
	for i, v := range o {
		if s := r.Contains(v.P); s != 0 {
			return s > 0
		}
		if s := (Region{r}).contains(v.P.Add(o.end(i)), 2); s != 0 {
			return s > 0
		}
	}
	return false
}
