package geom

import "dryfit/internal/unit"

// Neck returns the narrowest inner width of the region, rounded half up; zero if it is empty. It is the least of these
// distances, where the way across runs through the inside:
//
//   - between two edges that face each other (see facing) and are no neighbors: a strip, a leg, a tapered end
//   - from an inward corner, a corner of a hole being one, square to an edge: beside a notch or a hole
//   - between two inward corners that no edge joins
//
// A region with none of these (a triangle) is as narrow as its least height over a side. Parts are measured each for
// itself: a point where two touch is no neck.
func (g Region) Neck() unit.Length {
	var n necker
	for _, part := range g.Parts() {
		n.measure(part)
	}
	return n.least
}

type necker struct {
	part  Region
	sides []side
	least unit.Length
	found bool
}

// side is an edge, the corner that it starts from and its place in its ring.
type side struct {
	a, b     Point
	inward   bool // the corner at a
	ring     int
	at, last int
}

func (n *necker) measure(part Region) {
	n.part, n.sides = part, n.sides[:0]
	for k, r := range part {
		for i, v := range r {
			inward := Cross(r[(i+len(r)-1)%len(r)].P, v.P, r.end(i)) < 0
			n.sides = append(n.sides, side{v.P, r.end(i), inward, k, i, len(r) - 1})
		}
	}
	if n.pairs(n.across) == 0 {
		n.pairs(n.height)
	}
}

// pairs shows every ordered pair of sides to a measure and returns how many it took.
func (n *necker) pairs(measure func(e, f *side) bool) (taken int) {
	for i := range n.sides {
		for j := range n.sides {
			if i != j && measure(&n.sides[i], &n.sides[j]) {
				taken++
			}
		}
	}
	return taken
}

// across measures e against f: edge to edge, corner to edge and corner to corner.
func (n *necker) across(e, f *side) bool {
	taken := false
	if !e.follows(f) && !f.follows(e) && facing(e, f) {
		taken = n.onto(e.a, f)
		taken = n.onto(e.b, f) || taken
	}
	if e.inward && !e.follows(f) && squareOn(e.a, f) {
		taken = n.onto(e.a, f) || taken
	}
	if e.inward && f.inward && !e.follows(f) && !f.follows(e) {
		taken = n.try(e.a, f.a, Dist(e.a, f.a)) || taken
	}
	return taken
}

// height measures the corner at the start of e over the side f.
func (n *necker) height(e, f *side) bool {
	return !e.follows(f) && squareOn(e.a, f) && n.onto(e.a, f)
}

// follows reports whether e starts where f ends in the same ring.
func (e *side) follows(f *side) bool {
	return e.ring == f.ring && (e.at == f.at+1 || e.at == 0 && f.at == f.last)
}

// facing reports whether each of the two lies at least partly before the other's inner side and they taper by
// less than 1 in 2 (26.6°); edges that open wider make a corner, not a strip.
func facing(e, f *side) bool {
	d, c := dot(e.a, e.b, f.a, f.b), Cross(Point{}, e.b.Sub(e.a), f.b.Sub(f.a))
	return d < 0 && 2*abs(c) < abs(d) && before(e, f) && before(f, e)
}

// before reports whether some of e lies left of f.
func before(e, f *side) bool { return Side(f.a, f.b, e.a) > 0 || Side(f.a, f.b, e.b) > 0 }

// squareOn reports whether p lies left of f and the foot of its perpendicular strictly between f's ends.
func squareOn(p Point, f *side) bool {
	return Side(f.a, f.b, p) > 0 && dot(f.a, f.b, f.a, p) > 0 && dot(f.b, f.a, f.b, p) > 0
}

// nearest returns the point of the segment a b nearest to p, rounded half up.
func nearest(p, a, b Point) Point {
	t, all := dot(a, b, a, p), dot(a, b, a, b)
	switch {
	case t <= 0:
		return a
	case t >= all:
		return b
	}
	return Point{along(a.X, b.X, t, all), along(a.Y, b.Y, t, all)}
}

// onto takes the shortest way from p to the side f.
func (n *necker) onto(p Point, f *side) bool {
	return n.try(p, nearest(p, f.a, f.b), DistToSegment(p, f.a, f.b))
}

// try takes the way from p to q, d long, as a width if it runs inside; longer ways than one taken before need no look.
func (n *necker) try(p, q Point, d unit.Length) bool {
	if n.found && d >= n.least {
		return true
	}
	if !n.open(p, q) {
		return false
	}
	n.least, n.found = d, true
	return true
}

// open reports whether the way from p to q runs through the inside or along the boundary.
func (n *necker) open(p, q Point) bool {
	for i := range n.sides {
		e := &n.sides[i]
		if Side(p, q, e.a)*Side(p, q, e.b) < 0 && Side(e.a, e.b, p)*Side(e.a, e.b, q) < 0 && !n.grazes(p, q, e) {
			return false
		}
	}
	return n.part.contains(p.Add(q), 2) >= 0
}

// grazes reports whether e is an edge that an end of the way stands on but for the rounding of its foot.
func (n *necker) grazes(p, q Point, e *side) bool {
	return DistToSegment(p, e.a, e.b) <= 1 || DistToSegment(q, e.a, e.b) <= 1
}
