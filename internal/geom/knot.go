package geom

import "slices"

func (r Ring) knotted() bool {
	for i, v := range r {
		for _, w := range r[i+1:] {
			if v.P == w.P {
				return true
			}
		}
	}
	return false
}

// loops appends the loops of r, each without vertices that have become needless.
func loops(out Region, r Ring) Region {
	if !r.knotted() {
		return out.with(r)
	}
	var open Ring
	for _, v := range r {
		if i := slices.IndexFunc(open, func(o Vertex) bool { return o.P == v.P }); i >= 0 {
			out = out.with(slices.Clone(open[i:]).close(true))
			open = open[:i]
		}
		open = open.push(v, true)
	}
	return out.with(open.close(true))
}

// with appends a ring unless it is empty.
func (g Region) with(r Ring) Region {
	if len(r) == 0 {
		return g
	}
	return append(g, r)
}
