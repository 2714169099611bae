package pair

import (
	"math/bits"
	"slices"
)

// cross is twice the signed area of the triangle a, b, c: positive where c is
// left of the line from a to b. Exact up to maxSize.
func cross(a, b, c Pt) int64 {
	return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X)
}

// box is the outline of a rectangle, counterclockwise.
func box(w, h int64) []Pt {
	return []Pt{{0, 0}, {w, 0}, {w, h}, {0, h}}
}

// convex is the convex hull, counterclockwise from the lowest of the leftmost
// points, without points in the middle of an edge (monotone chain: Andrew,
// Information Processing Letters 9, 1979).
func convex(pts []Pt) []Pt {
	pts = slices.Clone(pts)
	slices.SortFunc(pts, Pt.compare)
	pts = slices.Compact(pts)
	if len(pts) < 3 {
		return nil
	}
	lower := chain(pts)
	slices.Reverse(pts)
	upper := chain(pts)
	hull := append(lower[:len(lower)-1], upper[:len(upper)-1]...)
	if len(hull) < 3 {
		return nil
	}
	return hull
}

// chain keeps the left turns of a sorted run of points.
func chain(pts []Pt) []Pt {
	var out []Pt
	for _, p := range pts {
		for len(out) > 1 && cross(out[len(out)-2], out[len(out)-1], p) <= 0 {
			out = out[:len(out)-1]
		}
		out = append(out, p)
	}
	return out
}

// twiceArea of a counterclockwise ring.
func twiceArea(ring []Pt) int64 {
	var sum int64
	for i := 1; i+1 < len(ring); i++ {
		sum += cross(ring[0], ring[i], ring[i+1])
	}
	return sum
}

// apart tells whether convex rings a and b leave room for a straight cut of
// width k between them: their distance is at least k, and they do not overlap.
func apart(a, b []Pt, k int64) bool {
	sa, sb := divides(a, b, k), divides(b, a, k)
	if sa == cleared || sb == cleared {
		return true
	}
	if sa == overlapping && sb == overlapping || k == 0 {
		return false
	}
	return distant(a, b, k) && distant(b, a, k)
}

// How the edges of one ring stand to another ring.
const (
	overlapping = iota // no edge has the other ring on its far side
	disjoint           // one has, nearer than the cut is wide
	cleared            // one has, with room for the cut
)

// divides looks for an edge of a beyond which all of b lies.
func divides(a, b []Pt, k int64) int {
	found := overlapping
	for i, p := range a {
		q := a[(i+1)%len(a)]
		gap := nearestBeyond(p, q, b)
		switch {
		case gap < 0:
		case atLeast(gap, p, q, k):
			return cleared
		default:
			found = disjoint
		}
	}
	return found
}

// nearestBeyond is the least distance of ring b beyond (right of) the line p q,
// in units of the length of p q; negative where b reaches across.
func nearestBeyond(p, q Pt, b []Pt) int64 {
	least := -cross(p, q, b[0])
	for _, r := range b[1:] {
		if least < 0 {
			break
		}
		least = min(least, -cross(p, q, r))
	}
	return least
}

// atLeast tells whether gap / |pq| >= k, exactly.
func atLeast(gap int64, p, q Pt, k int64) bool {
	if k == 0 {
		return gap >= 0
	}
	dx, dy := q.X-p.X, q.Y-p.Y
	gh, gl := bits.Mul64(uint64(gap), uint64(gap))
	kh, kl := bits.Mul64(uint64(k*k), uint64(dx*dx+dy*dy))
	return gh > kh || gh == kh && gl >= kl
}

// distant tells whether every corner of b is at least k from every edge of a,
// for rings that do not overlap.
func distant(a, b []Pt, k int64) bool {
	for i, p := range a {
		q := a[(i+1)%len(a)]
		for _, r := range b {
			if !farFrom(p, q, r, k) {
				return false
			}
		}
	}
	return true
}

// farFrom tells whether r is at least k from the segment p q.
func farFrom(p, q, r Pt, k int64) bool {
	dx, dy := q.X-p.X, q.Y-p.Y
	along := dx*(r.X-p.X) + dy*(r.Y-p.Y)
	if along > 0 && along < dx*dx+dy*dy {
		gap := cross(p, q, r)
		return atLeast(max(gap, -gap), p, q, k)
	}
	return min(square(p, r), square(q, r)) >= k*k
}

// square is the square of the distance of two points.
func square(a, b Pt) int64 {
	return (a.X-b.X)*(a.X-b.X) + (a.Y-b.Y)*(a.Y-b.Y)
}
