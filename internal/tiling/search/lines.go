package search

import "dryfit/internal/unit"

// The measures of lines and points: balance about a center line, sight lines, holes against joints. Each is the
// distance of a point to the nearest joint or tile center along one axis.

// offCenter is how far a line is from the nearest tile center or joint center, which lie half a pitch apart; counted
// twice, so that it stays whole.
func (a axis) offCenter(line, offset unit.Length) (twice unit.Length) {
	u := a.mod(2*(line-offset) - a.size)
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

// offBalance is offCenter of the course that comes nearest: where one course is centered, those above and below lie
// evenly about it.
func (p *problem) offBalance(a axis, line, offset unit.Length, shifts []unit.Length) unit.Length {
	least := wide
	for _, sh := range shifts {
		least = min(least, a.offCenter(line, offset+sh))
	}
	return least
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
		if c := p.center[k]; c.Given {
			cols[balance][i] = int64(p.offBalance(a, c.At, o, shifts) / (2 * a.mark))
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
