package space

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Apart is how far two envelopes are from each other: 0 where they touch, less than nothing by how far one would have to be moved (in the
// plan, or up) where they share room. Both must lie in the plan.
func Apart(a, b Envelope) unit.Length {
	up := a.High.Gap(b.High)
	level := Distance(a.Plan, b.Plan)
	switch {
	case up >= 0 && level >= 0:
		return geom.Dist(geom.Point{}, geom.Point{X: up, Y: level})
	case up >= 0:
		return up
	}
	return max(level, up)
}

// Distance is how far two outlines of the plan are apart; less than nothing by how deep they lie in each other. Outlines are convex; one with
// inner corners is taken for its hull where another reaches into these.
func Distance(a, b geom.Ring) unit.Length {
	if d := depth(a, b); d > 0 {
		return -d
	}
	best := unit.Reach
	for i := range a {
		for j := range b {
			best = min(best, segments(a[i].P, end(a, i), b[j].P, end(b, j)))
		}
	}
	return best
}

func end(r geom.Ring, i int) geom.Point { return r[(i+1)%len(r)].P }

// segments is the distance of two segments that do not cross.
func segments(a, b, c, d geom.Point) unit.Length {
	return min(geom.DistToSegment(a, c, d), geom.DistToSegment(b, c, d), geom.DistToSegment(c, a, b), geom.DistToSegment(d, a, b))
}

// depth is how far the first outline has to be moved, square off one of its own or the other's edges, until they share nothing: the least over
// all edges. It is over 0 only where they share area, for two convex outlines that do not are parted by one of their edges.
func depth(a, b geom.Ring) unit.Length {
	best := unit.Reach
	for _, r := range []geom.Ring{a, b} {
		for i := range r {
			p, q := r[i].P, end(r, i)
			if p == q {
				continue
			}
			aLo, aHi := across(a, p, q)
			bLo, bHi := across(b, p, q)
			best = min(best, aHi-bLo, bHi-aLo)
		}
	}
	return best
}

// across is the extent of an outline square off the line through p and q.
func across(r geom.Ring, p, q geom.Point) (lo, hi unit.Length) {
	for i, v := range r {
		d := geom.DistToLine(v.P, p, q) * unit.Length(geom.Side(p, q, v.P))
		if i == 0 {
			lo, hi = d, d
		}
		lo, hi = min(lo, d), max(hi, d)
	}
	return lo, hi
}
