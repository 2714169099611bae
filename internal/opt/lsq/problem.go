package lsq

import "math"

// Point is a place in the plane, x to the right and y up.
type Point struct{ X, Y float64 }

// Kind is what an observation measures.
type Kind int

const (
	Distance Kind = iota // length of the straight line between two points
	OffsetX              // x of To less x of From, signed
	OffsetY              // y of To less y of From, signed
)

// Observation is one reading between two points. Sigma is its standard deviation in the same unit as Value.
type Observation struct {
	Kind     Kind
	From, To int
	Value    float64
	Sigma    float64
}

// Axis names a coordinate.
type Axis int

const (
	X Axis = iota
	Y
)

// Hold is a coordinate that the adjustment may not change.
type Hold struct {
	Point int
	Axis  Axis
	Value float64
}

// Sense is the way an outline turns.
type Sense int

const (
	CounterClockwise Sense = iota
	Clockwise
)

// Turn is what the outline does at a corner, walking it in the order of its points.
type Turn int

const (
	AnyTurn Turn = iota
	Left
	Right
)

// Outline says that the points 0, 1, ... Corners-1 are the corners of a simple polygon in that order. It settles what
// distances cannot: on which side of a line a point lies. Turns has one entry a corner or is empty.
type Outline struct {
	Corners int
	Sense   Sense
	Turns   []Turn
}

// Problem is a network to adjust.
//
// Start has one approximate point for each point. It may be nil: then lsq builds a start from the distances, and Count
// tells how many points there are (0: one more than the greatest number that an observation names).
//
// Fixed is the datum. When it is empty point 0 is held at the origin, and, unless an offset observation fixes the
// direction, the line from 0 to 1 is held along +x.
type Problem struct {
	Start        []Point
	Count        int
	Fixed        []Hold
	Outline      Outline
	Observations []Observation
}

// points is the number of points in the network.
func (p *Problem) points() int {
	n := max(len(p.Start), p.Count, p.Outline.Corners)
	for _, o := range p.Observations {
		n = max(n, o.From+1, o.To+1)
	}
	for _, h := range p.Fixed {
		n = max(n, h.Point+1)
	}
	return n
}

// malformed lists the observations that no network can hold, and tells whether the rest of the problem is sound.
func (p *Problem) malformed() (bad []int, sound bool) {
	for i, o := range p.Observations {
		if !o.wellFormed() {
			bad = append(bad, i)
		}
	}
	return bad, len(bad) == 0 && p.frameSound()
}

func (o Observation) wellFormed() bool {
	switch {
	case !numbered(o.From) || !numbered(o.To) || o.From == o.To:
		return false
	case !finite(o.Value) || !finite(o.Sigma) || o.Sigma < 1/reach:
		return false
	case o.Kind == Distance:
		return o.Value > 0
	}
	return o.Kind == OffsetX || o.Kind == OffsetY
}

func (o Outline) sound() bool {
	for _, t := range o.Turns {
		if t < AnyTurn || t > Right {
			return false
		}
	}
	return o.Corners >= 0 && (len(o.Turns) == 0 || len(o.Turns) == o.Corners)
}

// frameSound checks all that is not an observation: at least two points, a start for each or for none, real numbers.
func (p *Problem) frameSound() bool {
	n := p.points()
	if n < 2 || n > mostPoints || p.Start != nil && len(p.Start) != n {
		return false
	}
	if !p.Outline.sound() {
		return false
	}
	for _, s := range p.Start {
		if !finite(s.X) || !finite(s.Y) {
			return false
		}
	}
	for _, h := range p.Fixed {
		if !numbered(h.Point) || h.Axis != X && h.Axis != Y || !finite(h.Value) {
			return false
		}
	}
	return true
}

const (
	// reach bounds all numbers, and 1/reach standard deviations from below, so that no square of them overflows or is
	// lost: in millimeters a thousand kilometers and a millionth of a nanometer.
	reach = 1e9
	// mostPoints keeps the dense matrices within memory; a building's survey has some hundred.
	mostPoints = 1000
)

func finite(v float64) bool { return !math.IsNaN(v) && math.Abs(v) <= reach }

func numbered(point int) bool { return point >= 0 && point < mostPoints }
