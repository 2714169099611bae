package joinery

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Point is a place in the frame of a cabinet: x from the left side of the carcass, y up from the finished floor, z off the finished
// wall into the room.
type Point [3]unit.Length

// Box is a box in the frame of a cabinet, Lo not above Hi.
type Box struct{ Lo, Hi Point }

// span makes a box of three stretches.
func span(x0, x1, y0, y1, z0, z1 unit.Length) Box {
	return Box{Point{x0, y0, z0}, Point{x1, y1, z1}}
}

// Size is how far the box reaches along an axis.
func (b Box) Size(axis int) unit.Length { return b.Hi[axis] - b.Lo[axis] }

// And is what two boxes share; its size along some axis is 0 or less where they share nothing.
func (b Box) And(o Box) Box {
	for i := range 3 {
		b.Lo[i], b.Hi[i] = max(b.Lo[i], o.Lo[i]), min(b.Hi[i], o.Hi[i])
	}
	return b
}

// Empty reports whether there is nothing in the box.
func (b Box) Empty() bool {
	return b.Size(0) <= 0 || b.Size(1) <= 0 || b.Size(2) <= 0
}

// Moved is the box at another place.
func (b Box) Moved(by Point) Box {
	for i := range 3 {
		b.Lo[i], b.Hi[i] = b.Lo[i]+by[i], b.Hi[i]+by[i]
	}
	return b
}

// with is the least box that holds both.
func (b Box) with(o Box) Box {
	for i := range 3 {
		b.Lo[i], b.Hi[i] = min(b.Lo[i], o.Lo[i]), max(b.Hi[i], o.Hi[i])
	}
	return b
}

// The axes of a cabinet.
const (
	xAxis = iota
	yAxis
	zAxis
)

// way is a direction along an axis of the cabinet.
type way struct {
	axis int
	back bool // against the axis
}

var (
	right = way{xAxis, false}
	left  = way{xAxis, true}
	up    = way{yAxis, false}
	down  = way{yAxis, true}
	out   = way{zAxis, false} // into the room
	in    = way{zAxis, true}  // toward the wall
)

func (w way) opposite() way { return way{w.axis, !w.back} }

// Turn says how a part lies in its cabinet: which ways its length, its width and its thickness go.
type Turn uint8

const (
	Flat       Turn = iota // a bottom, a shelf: face up, front edge to the room
	LeftSide               // a left side: face inward, front edge to the room, left end on top
	RightSide              // a right side: face inward, front edge to the room, left end at the foot
	Upright                // a door, a back: face to the room, left end at the foot, front edge on the right
	Level                  // a drawer front, a toe board: face to the room, front edge below, left end on the left
	LevelIn                // the front of a drawer's box: face to the wall, front edge below, left end on the right
	LeftLevel              // a rail of a left side: face inward, front edge below, left end in front
	RightLevel             // a rail of a right side: face inward, front edge below, left end at the wall
)

// turns gives for each Turn the ways of length, width and thickness. A part's own frame is left-handed (its thickness goes down from the
// face), so each row is; a test says so.
var turns = [...][3]way{
	Flat:       {right, in, down},
	LeftSide:   {down, in, left},
	RightSide:  {up, in, right},
	Upright:    {up, left, in},
	Level:      {right, up, in},
	LevelIn:    {left, up, out},
	LeftLevel:  {in, up, left},
	RightLevel: {out, up, right},
}

// size is a box's length, width and thickness as a part that lies so.
func (t Turn) size(b Box) (length, width, thick unit.Length) {
	w := turns[t]
	return b.Size(w[0].axis), b.Size(w[1].axis), b.Size(w[2].axis)
}

// local is where a point of the cabinet is in a part that takes a box and lies so.
func (t Turn) local(b Box, p Point) [3]unit.Length {
	var at [3]unit.Length
	for i, w := range turns[t] {
		if w.back {
			at[i] = b.Hi[w.axis] - p[w.axis]
		} else {
			at[i] = p[w.axis] - b.Lo[w.axis]
		}
	}
	return at
}

// area is a box within the part, seen on the part's side whose coordinates are the part's axes i and j.
func (t Turn) area(b, within Box, i, j int) geom.Rect {
	p, q := t.local(b, within.Lo), t.local(b, within.Hi)
	return geom.Rect{Min: geom.Point{X: min(p[i], q[i]), Y: min(p[j], q[j])}, Max: geom.Point{X: max(p[i], q[i]), Y: max(p[j], q[j])}}
}
