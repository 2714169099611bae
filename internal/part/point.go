package part

import (
	"math"

	"dryfit/internal/unit"
)

// Points returns the length along the front and along the rear edge, which the miters of the ends make differ; each is to the
// face or the back, whichever is longer there. Rounded once, half up.
func (p Part) Points() (front, rear unit.Length) {
	front, rear = p.Size.Length, p.Size.Length
	for _, e := range p.Ends {
		set := setBack(p.Size.Width, e.Miter)
		if e.Miter > 0 {
			rear -= set
		} else {
			front -= set
		}
	}
	return front, rear
}

// Faces returns the length along the face and along the back, which the bevels of the ends make differ.
func (p Part) Faces() (face, back unit.Length) {
	face, back = p.Size.Length, p.Size.Length
	for _, e := range p.Ends {
		set := setBack(p.Size.Thick, e.Bevel)
		if e.Bevel > 0 {
			back -= set
		} else {
			face -= set
		}
	}
	return face, back
}

// setBack is how much shorter the far edge gets over a width, at a saw swung by an angle either way.
func setBack(width unit.Length, a unit.Angle) unit.Length {
	return unit.FromFloat(float64(width) * math.Abs(math.Tan(a.Radians())))
}
