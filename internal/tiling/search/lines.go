package search

import (
	"dryfit/internal/tiling/judge"
	"slices"

	"dryfit/internal/unit"
)

// The measures of lines and points: balance about a center line, sight lines, holes against joints. Each is the
// distance of a point to the nearest joint or tile center along one axis.

// offCenter is how far a line is from the nearest axis about which the tiles mirror each other: in a stack a tile's
// center or a joint's, half a pitch apart. mirror is twice the axis less a tile, modulo the pitch. The distance comes
// back twice, so that it stays whole.
func (a axis) offCenter(line, offset, mirror unit.Length) (twice unit.Length) {
	u := a.mod(2*(line-offset) - a.size - mirror)
	return min(u, a.pitch-u)
}

// toJoint is how far a point is from the nearest joint along the axis; 0 within one.
func (a axis) toJoint(point, offset unit.Length) unit.Length {
	u := a.mod(point - offset)
	if u >= a.size {
		return 0
	}
	return min(u, a.size-u)
}

// mirrors lists the axes about which the courses of a cycle mirror each other, so that the cuts at the left and the
// right are alike, taken over all courses. For a running bond of 1/2 these are the tiles' centers, the joints, and the
// quarter points, about which each course mirrors the next. A tile at shift s mirrors to mirror - s.
func mirrors(a axis, shifts []unit.Length) (out []unit.Length) {
	for _, s := range shifts {
		m := a.mod(shifts[0] + s)
		if reflects(a, shifts, m) && !slices.Contains(out, m) {
			out = append(out, m)
		}
	}
	if len(out) == 0 { // no such axis: the first course alone
		out = append(out, a.mod(2*shifts[0]))
	}
	return out
}

// reflects reports whether every shift mirrors to another, but for the rounding of each.
func reflects(a axis, shifts []unit.Length, mirror unit.Length) bool {
	sorted := slices.Sorted(slices.Values(shifts))
	for _, s := range shifts {
		want := a.mod(mirror - s)
		i, _ := slices.BinarySearch(sorted, want)
		next, last := sorted[i%len(sorted)], sorted[(i+len(sorted)-1)%len(sorted)]
		if a.mod(next-want) > rounded && a.mod(want-last) > rounded {
			return false
		}
	}
	return true
}

// offBalance is offCenter of the nearest axis.
func (p *problem) offBalance(k int, offset unit.Length) (twice unit.Length) {
	a, _ := p.axisOf(k)
	twice = wide
	for _, m := range p.mirror[k] {
		twice = min(twice, a.offCenter(p.center[k].At, offset, m))
	}
	return twice
}

// offSight is toJoint in the worst course: all must end at the line.
func (p *problem) offSight(a axis, line, offset unit.Length, shifts []unit.Length) unit.Length {
	most := unit.Length(0)
	for _, sh := range shifts {
		most = max(most, a.toJoint(line, offset+sh))
	}
	return most
}

// lineCosts fills balance and sight lines along one axis (0: s, 1: t).
func (p *problem) lineCosts(k int, cols *columns) {
	a, shifts := p.axisOf(k)
	for i := range a.steps {
		o := a.at(i)
		if p.center[k].Given {
			cols[evenness][i] = int64(p.offBalance(k, o) / (2 * a.mark))
			cols[balance][i] = cols[evenness][i] / judge.EvenWithin
		}
		if k == p.sightAxis() {
			for _, s := range p.sights {
				cols[sightLines][i] += a.marks(p.offSight(a, s.Y, o, shifts))
			}
		}
	}
}

// axisOf returns an axis and the shifts that its tiles come in.
func (p *problem) axisOf(k int) (axis, []unit.Length) {
	if k == 0 {
		return p.s, p.classes()
	}
	return p.t, []unit.Length{0}
}

// classes lists the shifts of a cycle's courses.
func (p *problem) classes() []unit.Length {
	out := make([]unit.Length, len(p.shifts))
	for c := range out {
		out[c] = p.shift(c)
	}
	return out
}

// clear is how far a hole's rim is from the nearest joint along an axis; negative where it crosses one.
func (a axis) clear(at, radius, offset unit.Length) unit.Length {
	return a.toJoint(at, offset) - radius
}

// holeCost turns a clearance into a cost; more than enough is no better.
func (p *problem) holeCost(a axis, clear unit.Length) int64 {
	if p.enough > 0 {
		clear = min(clear, p.enough)
	}
	return -a.marks(clear)
}

// holeCourse is the course whose tile or upper joint holds the hole's center at an offset across the courses.
func (p *problem) holeCourse(h disk, offset unit.Length) int {
	return floorDiv(int(h.t-offset), int(p.t.pitch))
}
