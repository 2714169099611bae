package lsq

import (
	"math"
	"sort"
)

// stillTolerance is how small a part of a free motion (a vector of length 1) counts as not moving. Free motions are
// right to about the rounding of a float64 over the square root of rankTolerance.
const stillTolerance = 1e-6

// gainStep is how much of a gain makes a pair better than another. The shape is not known yet when gains are compared, so
// that finer differences mean nothing, and the order of the points decides.
const gainStep = 0.05

// graded is a gain in whole steps, 0 only for a distance that is fixed already.
func graded(gain float64) int {
	if gain <= stillTolerance {
		return 0
	}
	return 1 + int(gain/gainStep)
}

// tooFew is the verdict for a network with free motions.
func (w *network) tooFew(at []Point, free [][]float64, floating bool) Verdict {
	v := Verdict{Outcome: TooFew, Missing: len(free)}
	if floating {
		v.Movable = w.outsideBody(at, free)
	} else {
		v.Movable = w.moving(free, len(at))
	}
	gains := w.gains(at, free)
	for _, g := range gains {
		v.Pairs = append(v.Pairs, g.pair)
	}
	v.Enough = w.enough(at, free, v.Pairs)
	return v
}

// moving lists the points that have a part in a free motion, seen from the datum.
func (w *network) moving(free [][]float64, points int) (list []int) {
	for p := 0; p < points; p++ {
		if w.part(free, 2*p) > stillTolerance || w.part(free, 2*p+1) > stillTolerance {
			list = append(list, p)
		}
	}
	return list
}

// part is the greatest part of a coordinate in the free motions.
func (w *network) part(free [][]float64, coordinate int) float64 {
	m := 0.0
	if s := w.slot[coordinate]; s >= 0 {
		for _, v := range free {
			m = max(m, math.Abs(v[s]))
		}
	}
	return m
}

// outsideBody lists the points outside the greatest set that is fixed in itself. A datum of two points says nothing
// about the shape, so that "can move" has to mean: against the largest part that holds together.
func (w *network) outsideBody(at []Point, free [][]float64) (list []int) {
	n := len(at)
	fixed := make([][]bool, n)
	for i := range fixed {
		fixed[i] = make([]bool, n)
		for j := range fixed[i] {
			fixed[i][j] = i == j || w.gain(at, free, i, j) <= stillTolerance
		}
	}
	var body []bool
	size := 0
	for i := 0; i < n; i++ {
		for j := i + 1; j < n; j++ {
			if b, s := bodyOf(fixed, i, j); s > size {
				body, size = b, s
			}
		}
	}
	for p := 0; p < n; p++ {
		if body == nil || !body[p] {
			list = append(list, p)
		}
	}
	return list
}

// bodyOf grows a set of points, all distances between which are fixed, from two of them.
func bodyOf(fixed [][]bool, i, j int) (body []bool, size int) {
	if !fixed[i][j] {
		return nil, 0
	}
	body = make([]bool, len(fixed))
	body[i], body[j] = true, true
	size = 2
	for k := range fixed {
		if !body[k] && fixedToAll(fixed[k], body) {
			body[k] = true
			size++
		}
	}
	return body, size
}

func fixedToAll(fixed, body []bool) bool {
	for m, in := range body {
		if in && !fixed[m] {
			return false
		}
	}
	return true
}

// gain is how fast the distance between two points changes in the free motions: 0 where it is fixed already.
func (w *network) gain(at []Point, free [][]float64, i, j int) float64 {
	ux, uy := direction(at[i], at[j])
	r := w.between(i, j, ux, uy)
	s := 0.0
	for _, v := range free {
		d := r.dot(v)
		s += float64(d * d)
	}
	return math.Sqrt(s)
}

type gained struct {
	pair Pair
	gain int // graded
}

// gains lists the pairs not measured yet whose distance would stop a motion, the greatest gain first.
func (w *network) gains(at []Point, free [][]float64) []gained {
	measured := map[Pair]bool{}
	for _, o := range w.obs {
		if o.Kind == Distance {
			measured[pairOf(o)] = true
		}
	}
	var list []gained
	for i := range at {
		for j := i + 1; j < len(at); j++ {
			g := graded(w.gain(at, free, i, j))
			if g > 0 && !measured[Pair{i, j}] {
				list = append(list, gained{Pair{i, j}, g})
			}
		}
	}
	sort.SliceStable(list, func(a, b int) bool { return list[a].gain > list[b].gain })
	return list
}

func pairOf(o Observation) Pair { return Pair{min(o.From, o.To), max(o.From, o.To)} }

// enough takes the pair of greatest gain, removes the motion that it stops, and goes on until none is left.
func (w *network) enough(at []Point, free [][]float64, pairs []Pair) (list []Pair) {
	for len(free) > 0 {
		best, most := Pair{}, 0
		for _, p := range pairs {
			if g := graded(w.gain(at, free, p.From, p.To)); g > most {
				best, most = p, g
			}
		}
		if most == 0 {
			return nil // no distance holds these: the datum itself is wanting
		}
		list = append(list, best)
		free = w.stopped(at, free, best)
	}
	return list
}

// stopped is the free motions less the one direction that a new distance would stop: those that leave it unchanged.
func (w *network) stopped(at []Point, free [][]float64, p Pair) [][]float64 {
	ux, uy := direction(at[p.From], at[p.To])
	r := w.between(p.From, p.To, ux, uy)
	pick, rate := 0, 0.0
	for i, v := range free {
		if d := math.Abs(r.dot(v)); d > rate {
			pick, rate = i, d
		}
	}
	var rest [][]float64
	for i, v := range free {
		if i != pick {
			u := append([]float64(nil), v...)
			subtract(u, free[pick], r.dot(v)/r.dot(free[pick]))
			rest = append(rest, u)
		}
	}
	return orthonormal(rest)
}
