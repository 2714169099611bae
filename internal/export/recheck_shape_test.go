package export_test

import "math"

// pt is a point in millimetres; shape is an outline of rings, outer ones counter-clockwise, holes clockwise.
type (
	pt    struct{ x, y float64 }
	shape [][]pt
)

// grid is the least step of a length. What was rounded once to it is off by half of it along each axis.
const grid = 1.0 / mm

func shapeOf(s readShape) shape {
	out := make(shape, len(s))
	for i, ring := range s {
		for _, v := range ring {
			out[i] = append(out[i], pt{v.X.mm(), v.Y.mm()})
		}
	}
	return out
}

// area2 is twice the area of an outline in squares of the grid: the shoelace formula, in whole numbers.
func area2(s readShape) int64 {
	var sum int64
	for _, r := range s {
		for i, v := range r {
			w := r[(i+1)%len(r)]
			sum += int64(v.X)*int64(w.Y) - int64(w.X)*int64(v.Y)
		}
	}
	return sum
}

func area(ring []pt) float64 {
	sum := 0.0
	for i := range ring {
		sum += cross(ring[0], ring[i], ring[(i+1)%len(ring)])
	}
	return sum / 2
}

func (s shape) area() float64 {
	sum := 0.0
	for _, r := range s {
		sum += area(r)
	}
	return sum
}

func (s shape) around() float64 {
	sum := 0.0
	for _, r := range s {
		for i := range r {
			sum += dist(r[i], r[(i+1)%len(r)])
		}
	}
	return sum
}

func cross(a, b, c pt) float64 { return (b.x-a.x)*(c.y-a.y) - (b.y-a.y)*(c.x-a.x) }
func dist(a, b pt) float64     { return math.Hypot(a.x-b.x, a.y-b.y) }

// common is the area of two outlines' common part. An outline is the signed sum of the triangles from one point to its sides;
// two triangles are convex, and their common part is cut out by the textbook method (Sutherland and Hodgman, 1974).
func common(s, t shape) float64 {
	if !s.near(t, 0) {
		return 0
	}
	sum := 0.0
	for _, a := range s.triangles() {
		for _, b := range t.triangles() {
			sum += sign(a) * sign(b) * area(clip(wound(a), wound(b)))
		}
	}
	return sum
}

func (s shape) triangles() [][]pt {
	var out [][]pt
	for _, r := range s {
		for i := range r {
			if t := []pt{s[0][0], r[i], r[(i+1)%len(r)]}; cross(t[0], t[1], t[2]) != 0 {
				out = append(out, t)
			}
		}
	}
	return out
}

func sign(t []pt) float64 {
	if area(t) < 0 {
		return -1
	}
	return 1
}

func wound(t []pt) []pt {
	if area(t) < 0 {
		return []pt{t[0], t[2], t[1]}
	}
	return t
}

// clip cuts a convex ring to what lies left of every side of another.
func clip(ring, by []pt) []pt {
	for i := range by {
		ring = left(ring, by[i], by[(i+1)%len(by)])
	}
	return ring
}

// left keeps what lies left of the line a b.
func left(ring []pt, a, b pt) []pt {
	var out []pt
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		u, v := cross(a, b, p), cross(a, b, q)
		if u >= 0 {
			out = append(out, p)
		}
		if u > 0 && v < 0 || u < 0 && v > 0 {
			t := u / (u - v)
			out = append(out, pt{p.x + t*(q.x-p.x), p.y + t*(q.y-p.y)})
		}
	}
	return out
}

func (s shape) bounds() (lo, hi pt) {
	lo, hi = s[0][0], s[0][0]
	for _, r := range s {
		for _, p := range r {
			lo, hi = pt{min(lo.x, p.x), min(lo.y, p.y)}, pt{max(hi.x, p.x), max(hi.y, p.y)}
		}
	}
	return lo, hi
}

// box is the outline of the bounds.
func (s shape) box() []pt {
	lo, hi := s.bounds()
	return []pt{lo, {hi.x, lo.y}, hi, {lo.x, hi.y}}
}

// plain leaves out vertices in a straight line, as far as the grid tells.
func (s shape) plain() shape {
	out := make(shape, len(s))
	for i, ring := range s {
		for j, p := range ring {
			a, b := ring[(j+len(ring)-1)%len(ring)], ring[(j+1)%len(ring)]
			if math.Abs(cross(a, b, p)) > 2*grid*dist(a, b) {
				out[i] = append(out[i], p)
			}
		}
	}
	return out
}

// near reports whether the bounds of two outlines come within d of each other.
func (s shape) near(t shape, d float64) bool {
	if len(s) == 0 || len(t) == 0 {
		return false
	}
	a, b := s.bounds()
	c, e := t.bounds()
	return a.x <= e.x+d && c.x <= b.x+d && a.y <= e.y+d && c.y <= b.y+d
}

// holds reports whether a point lies inside: a ray to the right crosses the outline an odd number of times.
func (s shape) holds(p pt) bool {
	in := false
	for _, r := range s {
		for i, a := range r {
			b := r[(i+1)%len(r)]
			if (a.y > p.y) != (b.y > p.y) && p.x < a.x+(p.y-a.y)/(b.y-a.y)*(b.x-a.x) {
				in = !in
			}
		}
	}
	return in
}

// rim is the distance from a point to the nearest side.
func (s shape) rim(p pt) float64 {
	best := math.Inf(1)
	for _, r := range s {
		for i, a := range r {
			best = min(best, toSegment(p, a, r[(i+1)%len(r)]))
		}
	}
	return best
}

func toSegment(p, a, b pt) float64 {
	l := dist(a, b)
	if l == 0 {
		return dist(p, a)
	}
	t := ((p.x-a.x)*(b.x-a.x) + (p.y-a.y)*(b.y-a.y)) / (l * l)
	t = min(1, max(0, t))
	return dist(p, pt{a.x + t*(b.x-a.x), a.y + t*(b.y-a.y)})
}

// gap is how far apart two convex rings are in the direction of any of their sides: the most of it separates them.
func gap(s, t []pt) float64 {
	return max(beyond(s, t), beyond(t, s))
}

func beyond(s, t []pt) float64 {
	best := math.Inf(-1)
	for i, a := range s {
		b := s[(i+1)%len(s)]
		least := math.Inf(1)
		for _, p := range t {
			least = min(least, -cross(a, b, p)/dist(a, b))
		}
		best = max(best, least)
	}
	return best
}

// motion carries a tile's own frame into the face's: turn, then shift.
type motion struct{ cos, sin, x, y float64 }

func (m motion) point(p pt) pt { return pt{m.cos*p.x - m.sin*p.y + m.x, m.sin*p.x + m.cos*p.y + m.y} }

func (m motion) ring(r []pt) []pt {
	out := make([]pt, len(r))
	for i, p := range r {
		out[i] = m.point(p)
	}
	return out
}
