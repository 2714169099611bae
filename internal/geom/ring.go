package geom

import "dryfit/internal/unit"

// RectRing returns the outline of r, counter-clockwise from the lower left, each side with its label.
func RectRing(r Rect, left, bottom, right, top Label) Ring {
	c := r.Corners()
	return Ring{{c[0], bottom}, {c[1], right}, {c[2], top}, {c[3], left}}
}

// Area2 returns twice the signed area, positive for a counter-clockwise ring. It is exact: partial sums may
// wrap, the total of a ring within reach can not.
func (r Ring) Area2() int64 {
	var sum int64
	for i := 2; i < len(r); i++ {
		sum += Cross(r[0].P, r[i-1].P, r[i].P)
	}
	return sum
}

// Area returns the signed area; half a square count is rounded up.
func (r Ring) Area() unit.Area { return half(r.Area2()) }

func half(area2 int64) unit.Area { return unit.Area((area2 + 1) >> 1) }

// Bounds returns the least rectangle that holds the ring; the zero Rect if the ring is empty.
func (r Ring) Bounds() Rect {
	if len(r) == 0 {
		return Rect{}
	}
	b := Rect{r[0].P, r[0].P}
	for _, v := range r[1:] {
		b = b.With(v.P)
	}
	return b
}

// Reverse returns the ring walked the other way; every edge keeps its label.
func (r Ring) Reverse() Ring {
	n := len(r)
	out := make(Ring, n)
	for i := range r {
		out[i] = Vertex{r[n-1-i].P, r[(2*n-2-i)%n].Edge}
	}
	return out
}

// end returns the point where edge i ends.
func (r Ring) end(i int) Point {
	if i+1 == len(r) {
		return r[0].P
	}
	return r[i+1].P
}

// Contains returns +1 if p is inside, 0 on the boundary, -1 outside, whichever way the ring runs.
func (r Ring) Contains(p Point) int { return Region{r}.Contains(p) }

// Clean drops edges of no length, spikes (an edge that runs straight back) and, between two edges of one label,
// vertices in a straight line. A ring without area comes back empty.
func (r Ring) Clean() Ring {
	out := make(Ring, 0, len(r))
	for _, v := range r {
		out = out.push(v, true)
	}
	return out.close(true)
}

// push appends v, first taking back what v makes needless.
func (r Ring) push(v Vertex, straight bool) Ring {
	for n := len(r); n > 0; n = len(r) {
		switch {
		case r[n-1].P == v.P:
			r = r[:n-1]
		case n > 1 && needless(r[n-2], r[n-1], v.P, straight):
			r[n-2].Edge = labelPast(r[n-2], r[n-1], v.P)
			r = r[:n-1]
		default:
			return append(r, v)
		}
	}
	return append(r, v)
}

// needless reports whether the vertex b between a and c adds nothing: it is the tip of a spike, or it lies in a
// straight line between edges of one label.
func needless(a, b Vertex, c Point, straight bool) bool {
	if Cross(a.P, b.P, c) != 0 {
		return false
	}
	return dot(b.P, a.P, b.P, c) > 0 || straight && a.Edge == b.Edge
}

// labelPast returns the label of the edge a c that is left when the tip b is dropped: that of the longer edge of a
// spike.
func labelPast(a, b Vertex, c Point) Label {
	if dot(a.P, b.P, a.P, c) < 0 {
		return b.Edge
	}
	return a.Edge
}

// close takes away what is needless across the seam between the last vertex and the first.
func (r Ring) close(straight bool) Ring {
	for n := len(r); n > 2; n = len(r) {
		switch {
		case r[n-1].P == r[0].P:
			r = r[:n-1]
		case needless(r[n-2], r[n-1], r[0].P, straight):
			r[n-2].Edge = labelPast(r[n-2], r[n-1], r[0].P)
			r = r[:n-1]
		case needless(r[n-1], r[0], r[1].P, straight):
			r[n-1].Edge = labelPast(r[n-1], r[0], r[1].P)
			r = r[1:]
		case r.Area2() == 0:
			return nil
		default:
			return r
		}
	}
	return nil
}
