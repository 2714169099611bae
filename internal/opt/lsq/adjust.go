package lsq

import (
	"math"
	"slices"
)

// directionTolerance is the least sine between a pair and the axis of an offset reading of it that fixes the direction
// of the network: an offset of a pair that lies along its axis does not change, to the first order, when all turns.
const directionTolerance = 1e-3

// Adjust finds the points that fit the observations best, and what the observations say about each other.
//
// The Result is complete when the Verdict's Outcome is Adjusted, and also with Contradictory where a best fit could be
// found all the same (Residuals is not nil); otherwise only Points may be set, to the nearest shape found.
func Adjust(p Problem) (Result, Verdict) {
	if bad, sound := p.malformed(); !sound {
		return Result{}, Verdict{Outcome: Malformed, Readings: bad}
	}
	start := p.Start
	if start == nil {
		start = findStart(&p)
	}
	start, held, floating := p.datum(start)
	against, contradictory := contradiction(p.Observations, len(start))
	w := newNetwork(p.Observations, len(start), held)
	res, v := w.fit(start, floating)
	if p.Start == nil && v.Outcome == Adjusted {
		res.Mirrors = mirrors(&p, res.Points)
	}
	if !contradictory || res.names(against.Readings) {
		return res, v
	}
	if v.Outcome == TooFew && !w.holdsNearby(res.Points) { // else it is the contradiction that pulls all into one line
		v.Readings, v.Excess = against.Readings, against.Excess
		return res, v
	}
	return res, against
}

// fit settles a network from a start, if the readings hold it there, and judges it.
func (w *network) fit(start []Point, floating bool) (Result, Verdict) {
	if free := w.freeMotions(start); len(free) > 0 && !w.holdsNearby(start) {
		return Result{Points: start}, w.tooFew(start, free, floating)
	}
	s := w.settle(start, stepBudget)
	if free := w.freeMotions(s.at); len(free) > 0 {
		return Result{Points: s.at}, w.tooFew(s.at, free, floating)
	}
	res := Result{Points: s.at, Steps: s.steps}
	if !s.rest || !w.judge(&res) {
		return Result{Points: s.at, Steps: s.steps}, Verdict{Outcome: NotConverging}
	}
	return res, Verdict{Outcome: Adjusted}
}

// names tells whether the adjustment itself accuses just one reading and that it is among those listed. Then to name it
// is the better answer than to say that they contradict each other.
func (r *Result) names(readings []int) bool {
	return len(r.Suspects) == 1 && slices.Contains(readings, r.Suspects[0])
}

// judge fills in the control of the readings, their groups and the suspects, if the numbers allow it.
func (w *network) judge(res *Result) bool {
	r := w.control(res)
	if r == nil {
		return false
	}
	res.Groups, res.Equal = groups(r, res.Controlled)
	if res.Suspects = suspects(res.Standardised); len(res.Suspects) > 0 {
		res.Rest = w.without(res.Suspects[0], res.Points)
	}
	return true
}

// holdsNearby tells whether the readings fix the points a little aside of a start at which they do not. A start may be
// special, three points of it in one line by chance; that the shape itself is special is found where it settles.
func (w *network) holdsNearby(start []Point) bool {
	aside := make([]Point, len(start))
	push := extent(start) / 16
	for i, s := range start {
		c := onCircle(5*i, 7*len(start)) // an order without pattern
		aside[i] = Point{s.X + float64(push*c.X), s.Y + float64(push*c.Y*float64(1+i%3))}
	}
	return len(w.freeMotions(aside)) == 0
}

// datum gives the start moved onto the datum, the coordinates held, and whether the datum is ours alone, so that where
// the network lies says nothing about its shape.
func (p *Problem) datum(start []Point) (at []Point, held []Hold, floating bool) {
	if len(p.Fixed) > 0 {
		return p.onto(start), p.Fixed, false
	}
	held = []Hold{{0, X, 0}, {0, Y, 0}}
	if p.fixesDirection(start) {
		return shifted(start, start[0]), held, false
	}
	return straightened(start), append(held, Hold{1, Y, 0}), !p.hasOffsets()
}

func (p *Problem) hasOffsets() bool {
	for _, o := range p.Observations {
		if o.Kind != Distance {
			return true
		}
	}
	return false
}

// fixesDirection tells whether an offset observation would notice it if the whole network turned.
func (p *Problem) fixesDirection(at []Point) bool {
	for _, o := range p.Observations {
		ux, uy := direction(at[o.From], at[o.To])
		if o.Kind == OffsetX && math.Abs(uy) > directionTolerance || o.Kind == OffsetY && math.Abs(ux) > directionTolerance {
			return true
		}
	}
	return false
}

// onto puts the held coordinates of a start in their places.
func (p *Problem) onto(start []Point) []Point {
	at := append([]Point(nil), start...)
	for _, h := range p.Fixed {
		if h.Axis == X {
			at[h.Point].X = h.Value
		} else {
			at[h.Point].Y = h.Value
		}
	}
	return at
}

// shifted puts the point from at the origin.
func shifted(start []Point, from Point) []Point {
	at := make([]Point, len(start))
	for i, s := range start {
		at[i] = Point{s.X - from.X, s.Y - from.Y}
	}
	return at
}

// straightened puts point 0 at the origin and point 1 on the axis of x.
func straightened(start []Point) []Point {
	c, s := direction(start[0], start[1])
	at := shifted(start, start[0])
	for i, q := range at {
		at[i] = turned(q, c, -s)
	}
	at[0], at[1].Y = Point{}, 0
	return at
}

// turned rotates about the origin by the angle whose cosine and sine are given.
func turned(q Point, c, s float64) Point {
	return Point{float64(q.X*c) - float64(q.Y*s), float64(q.X*s) + float64(q.Y*c)}
}
