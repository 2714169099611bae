package part

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Channel is a box cut into a side, to a depth: everything that a dado blade, a straight bit or a chisel takes out.
type Channel struct {
	Kind  ChannelKind
	On    Side
	Area  geom.Rect   // in the side's coordinates
	Depth unit.Length // from the side
	For   string      // what goes in: "drawer bottom"
}

// ChannelKind is the trade's word for a channel, by where it runs.
type ChannelKind uint8

const (
	Dado    ChannelKind = iota // across the grain, within the side
	Groove                     // along the grain, within the side
	Rabbet                     // along an edge or end, open to it
	HalfLap                    // half the thickness off an end or a crossing
	Tenon                      // a cheek taken off beside a tongue
	Recess                     // closed on all sides: a pocket, a mortise
)

func (k ChannelKind) String() string {
	return [...]string{"dado", "groove", "rabbet", "half-lap", "tenon cheek", "recess"}[k]
}

// Hole is round. A hole that goes through has the Depth of the part and says so.
type Hole struct {
	On       Side
	At       geom.Point // center, in the side's coordinates
	Diameter unit.Length
	Depth    unit.Length
	Through  bool
	Slot     unit.Length // how much longer than wide, along Along; 0 for a round hole
	Along    Axis        // of a slot
	For      string      // "cup hinge", "screw to the top"
}

// Axis is a direction in a side's coordinates.
type Axis uint8

const (
	AcrossAxis Axis = iota // along the first coordinate
	UpAxis                 // along the second
)

// Cutout goes through the part, face to back, along an outline on the face. Where it reaches the edge of the part it is a notch.
type Cutout struct {
	Outline geom.Ring
	For     string // "basin", "trap"
}

// IsNotch reports whether the cut-out is open to an edge or an end of a part of this size.
func (c Cutout) IsNotch(s Size) bool {
	b := c.Outline.Bounds()
	return b.Min.X <= 0 || b.Min.Y <= 0 || b.Max.X >= s.Length || b.Max.Y >= s.Width
}

// End is how an end is cut where it is not square. Size.Length is to the long point.
type End struct {
	On    Side // Left or Right
	Miter unit.Angle
	Bevel unit.Angle
	Cope  string // the name of the profile that the end is coped to; "" for none
}

// The angles of an End are how far the saw is swung from a square cut. Miter is seen on the face: positive where the front edge
// keeps the long point, negative where the rear edge does. Bevel is seen on the front edge: positive where the face keeps the long
// point, negative where the back does.

// Taper takes a side back in a straight line, from nothing at From to Less at To, both along the length.
type Taper struct {
	On       Side // Face, Back, Front or Rear
	From, To unit.Length
	Less     unit.Length
}

// Profile shapes the arris between two sides that meet.
type Profile struct {
	Kind  ProfileKind
	A, B  Side
	Reach unit.Length // the radius, or the width that a chamfer takes off each side
}

// ProfileKind is a shape of an arris.
type ProfileKind uint8

const (
	Chamfer ProfileKind = iota
	RoundOver
)

func (k ProfileKind) String() string { return [...]string{"chamfer", "round-over"}[k] }
