package lsq

import "math"

const (
	// guesses is how many starting shapes are tried where points cannot be placed one after another.
	guesses = 12
	// guessBudget bounds the steps of each.
	guessBudget = 60
)

// completed builds a start for a network in which some points cannot be placed one after another: they are put on a
// ring, in the order of the outline, and everything is settled from there; the best of several rings is taken.
func (b *builder) completed(p *Problem) []Point {
	var best settled
	bestFaults := 0
	for v := 0; v < guesses; v++ {
		at, held, _ := p.datum(p.oriented(b.guess(p, v)))
		s := newNetwork(p.Observations, len(at), held).settle(at, guessBudget)
		f := p.Outline.faults(s.at)
		if v == 0 || s.cost < float64(best.cost/2)-1 || s.cost <= float64(2*best.cost)+1 && f < bestFaults {
			best, bestFaults = s, f
		}
		if best.cost < 1 && bestFaults == 0 {
			break // within one standard deviation of everything: no ring can do better
		}
	}
	return best.at
}

// guess is the points placed so far and the rest on ring number v.
func (b *builder) guess(p *Problem, v int) []Point {
	n := len(b.far)
	at := make([]Point, n)
	known := make([]bool, n)
	for _, q := range b.order {
		at[q], known[q] = b.best[q], true
	}
	center := middle(at, b.order)
	ring := reachOf(p.Observations) * float64(n+v) / 6 // a polygon of n equal sides s has a radius of about n s / 2 pi
	for q := range at {
		if !known[q] {
			c := b.onRing(q, v)
			at[q] = Point{center.X + float64(ring*c.X), center.Y + float64(ring*c.Y)}
		}
	}
	return at
}

// onRing is the place of a point on a ring of radius 1: corners round about in their sense, those that turn back drawn
// in, all others near the middle. Each ring is turned and dented a little differently.
func (b *builder) onRing(q, v int) Point {
	n := len(b.far)
	c := onCircle(guesses*q+v, guesses*n)
	r := 1.0
	if o := b.outline; q >= o.Corners && o.Corners > 0 {
		r = 0.4
	} else if len(o.Turns) > 0 && o.Turns[q].sign()*o.Sense.sign() < 0 {
		r = 0.5
	}
	r *= 1 - float64((q*(v+1)%5)*v)/60
	return Point{float64(r * c.X), float64(r * c.Y * float64(b.outline.Sense.sign()))}
}

// onCircle is a point of the unit circle at about i/n of a turn, from the rational parameter of a quarter circle, which
// unlike a sine is the same on every machine.
func onCircle(i, n int) Point {
	quarter := 4 * (i % n) / n
	f := float64(4*(i%n)-quarter*n) / float64(n)
	c, s := (1-float64(f*f))/(1+float64(f*f)), 2*f/(1+float64(f*f))
	return [...]Point{{c, s}, {-s, c}, {-c, -s}, {s, -c}}[quarter]
}

// middle is the mean of some of the points.
func middle(at []Point, of []int) (m Point) {
	for _, q := range of {
		m.X += at[q].X / float64(len(of))
		m.Y += at[q].Y / float64(len(of))
	}
	return m
}

// reachOf is the mean size of the observations, 1 where there are none.
func reachOf(obs []Observation) float64 {
	s := 0.0
	for _, o := range obs {
		s += math.Abs(o.Value)
	}
	if s == 0 {
		return 1
	}
	return s / float64(len(obs))
}
