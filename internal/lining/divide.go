package lining

import "dryfit/internal/unit"

// state is the best way to go on from a joint.
type state struct {
	ok     bool
	faults int
	parts  int
	next   int
}

func (s state) better(o state) bool {
	if !s.ok || !o.ok {
		return s.ok
	}
	if s.faults != o.faults {
		return s.faults < o.faults
	}
	return s.parts < o.parts
}

// divide chooses joints among marks so that no part is longer than most: the fewest faults, then the fewest parts, then the
// longest first. It returns the parts from low to high. Where the marks are too far apart, they are not kept to, and that is a
// fault each.
func (c cover) divide(from, to, most unit.Length, marks []unit.Length, bad func(unit.Length) int) ([][2]unit.Length, int) {
	at := append(append([]unit.Length{from}, marks...), to)
	best := make([]state, len(at))
	last := len(at) - 1
	best[last] = state{ok: true}
	for i := last - 1; i >= 0; i-- {
		for j := last; j > i; j-- {
			part := c.between(at, i, j)
			if !best[j].ok || part[1]-part[0] > most || part[1] <= part[0] {
				continue
			}
			s := state{ok: true, faults: best[j].faults, parts: best[j].parts + 1, next: j}
			if j < last {
				s.faults += bad(at[j])
			}
			if part[1]-part[0] < c.least {
				s.faults++
			}
			if s.better(best[i]) {
				best[i] = s
			}
		}
	}
	if !best[0].ok {
		return c.anywhere(from, to, most)
	}
	var out [][2]unit.Length
	for i := 0; i < last; i = best[i].next {
		out = append(out, c.between(at, i, best[i].next))
	}
	return out, best[0].faults
}

// between is the part from one joint to another, less half a gap at each joint.
func (c cover) between(at []unit.Length, i, j int) [2]unit.Length {
	lo, hi := at[i], at[j]
	if i > 0 {
		lo += c.gap / 2
	}
	if j < len(at)-1 {
		hi -= c.gap / 2
	}
	return [2]unit.Length{lo, hi}
}

// anywhere divides into full sheets from the low end.
func (c cover) anywhere(from, to, most unit.Length) (out [][2]unit.Length, faults int) {
	if most <= 0 {
		return [][2]unit.Length{{from, to}}, 1
	}
	for lo := from; lo < to; lo += most + c.gap {
		out = append(out, [2]unit.Length{lo, min(lo+most, to)})
	}
	return out, len(out) - 1
}
