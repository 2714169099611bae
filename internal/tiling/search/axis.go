package search

import (
	"dryfit/internal/tiling/lay"
	"dryfit/internal/unit"
)

// axis is one direction of a bond with straight joints: tiles of one size at one pitch, and the offsets that a
// person can mark along it.
//
// Every tile is judged by its core: the tile less its ease all round. What is cut by less than the ease is taken up
// by the joint; it can be neither cut nor seen. The ease is just less than what is laid as a piece (lay.LeastWidth), and
// less than a mark, so that a width of a whole mark is a cut. Half a mark of 1/32 in or 0.5 mm is within it, so that some
// offset always brings a joint to a given edge.
type axis struct {
	pitch, size unit.Length
	mark, ease  unit.Length
	zero        unit.Length // offset of step 0
	steps       int         // offsets to search
}

// newAxis covers cycle pitches with marks. A tile of only a few marks keeps half of itself as its core.
func newAxis(pitch, size, mark, zero unit.Length, cycle int) axis {
	steps := int((unit.Length(cycle)*pitch + mark - 1) / mark)
	return axis{pitch, size, mark, min(easeOf(mark), size/4), zero, steps}
}

func easeOf(mark unit.Length) unit.Length { return min(mark, lay.LeastWidth) - 1 }

// at is the offset of a step.
func (a axis) at(step int) unit.Length { return a.zero + unit.Length(step)*a.mark }

// mod returns x modulo the pitch, from 0 up.
func (a axis) mod(x unit.Length) unit.Length {
	if x %= a.pitch; x < 0 {
		x += a.pitch
	}
	return x
}

// left tells what is left of a tile beside an edge. phase is how far the edge's nearest point lies inside the tile,
// from the factory side that is kept (modulo the pitch); the edge runs on from there by run. Where it runs over into
// the next tile, that one tapers out to nothing: 0 is left of it.
func (a axis) left(phase, run unit.Length) (width unit.Length, cut bool) {
	reach := phase + run
	switch {
	case phase <= a.ease:
		return 0, reach > a.ease
	case phase < a.size-a.ease:
		if reach > a.pitch+a.ease {
			return 0, true
		}
		return phase, true
	default:
		return 0, reach > a.pitch+a.ease
	}
}

// marks floors a length to whole marks.
func (a axis) marks(l unit.Length) int64 {
	q := int64(l / a.mark)
	if l%a.mark < 0 {
		q--
	}
	return q
}

// ramp walks the phase of an edge as the offset goes up mark by mark.
type ramp struct{ phase, step, pitch unit.Length }

// fall starts the phase of a point that is measured from the lower side of its tile.
func (a axis) fall(from unit.Length) ramp {
	return ramp{a.mod(from - a.zero), -a.mark, a.pitch}
}

// rise starts the phase of a point that is measured from the upper side of its tile.
func (a axis) rise(from unit.Length) ramp {
	return ramp{a.mod(a.zero + a.size - from), a.mark, a.pitch}
}

// skip goes on by n steps.
func (r *ramp) skip(n int) {
	r.phase = (r.phase + unit.Length(n)*r.step) % r.pitch
	if r.phase < 0 {
		r.phase += r.pitch
	}
}
