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
func (g Region) Contains(p Point) int {
	return g.contains2(Point{2 * p.X, 2 * p.Y})
}

// contains2 is Contains for the point p2/2, so that the middle of two grid points can be asked for. A ray runs to
// the right and its crossings are counted; 2^30 · 2^31 · 2 fits in an int64.
func (g Region) contains2(p2 Point) int {
	odd := false
	for _, r := range g {
		for i, v := range r {
			c := rayCrosses(v.P, r.end(i), p2)
			if c == 0 {
				return 0
			}
			odd = odd != (c > 0)
		}
	}
	if odd {
		return 1
	}
	return -1
}

// rayCrosses returns +1 if the ray from p2/2 to the right crosses the edge a b (its lower end counted, its upper
// end not), 0 if p2/2 lies on the edge, -1 if neither.
func rayCrosses(a, b, p2 Point) int {
	if a.Y > b.Y {
		a, b = b, a
	}
	if p2.Y < 2*a.Y || p2.Y > 2*b.Y || p2.X > 2*max(a.X, b.X) {
		return -1
	}
	c := int64(b.X-a.X)*int64(p2.Y-2*a.Y) - int64(b.Y-a.Y)*int64(p2.X-2*a.X)
	if c == 0 && p2.X >= 2*min(a.X, b.X) {
		return 0
	}
	if c > 0 && p2.Y < 2*b.Y {
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
		if s := (Region{r}).contains2(v.P.Add(o.end(i))); s != 0 {
			return s > 0
		}
	}
	return false
}
