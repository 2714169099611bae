// Package space holds envelopes: the room that a thing takes, or that must be left for it, as plain values. Trades that
// never see each other hand their envelopes over, and a stage after them holds these against each other.
//
// An envelope bears the document path of its owner, what it is, and how near others may come. It lies in one of two frames:
//   - On a wall, in that face's frame: x along the wall from its board's left corner, y up from the level line, and z off the
//     finished face into the room; what is in the wall has z below 0.
//   - On the floor, as an outline in the plan frame between two heights over the level line.
//
// What stands before a wall is given in both, so that things of two walls can be held against each other.
package space

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Kind says what an envelope is the room of.
type Kind uint8

const (
	Fixture   Kind = iota // a basin, a WC, a tank
	Tap                   // with its handle's swing
	Trap                  // trap, tailpiece and arm
	Stop                  // a stop valve and its hose
	Top                   // a slab
	Panel                 // of a cabinet: side, bottom, back, rail
	Shelf                 // of a cabinet
	Drawer                // a drawer's box, closed
	Pull                  // the way of an opening drawer with its front
	Swing                 // the way of an opening cabinet door
	Leaf                  // the way of a room's door
	Fitting               // a mirror, a bar, a holder
	Trim                  // baseboard, casing
	Joint                 // a joint line of tile: x, y only
	Stud                  // in the wall
	Blocking              // in the wall
	Pipe                  // in the wall
	Cable                 // in the wall
	NailPlate             // in the wall
	Screw                 // a screw: a point on the face, z from its tip
	Hole                  // a hole in the finished face
	Cover                 // a plate over a hole
	Clear                 // floor that must stay clear
	Carcass               // a whole cabinet, told by its outside alone
	Tile                  // one piece of tile on its face
)

var kindNames = [...]string{"fixture", "tap", "trap", "stop valve", "top", "panel", "shelf", "drawer", "drawer's way", "door's way", "door leaf", "fitting", "trim",
	"joint", "stud", "blocking", "pipe", "cable", "nail plate", "screw", "hole", "cover plate", "clear floor", "cabinet", "tile"}

func (k Kind) String() string { return kindNames[k] }

// Span is a stretch from Lo to Hi.
type Span struct{ Lo, Hi unit.Length }

// Length is how long the stretch is.
func (s Span) Length() unit.Length { return s.Hi - s.Lo }

// Meets reports whether two stretches share more than an end.
func (s Span) Meets(o Span) bool { return s.Lo < o.Hi && o.Lo < s.Hi }

// Gap is what lies between two stretches; less than nothing by how much they overlap.
func (s Span) Gap(o Span) unit.Length { return max(s.Lo-o.Hi, o.Lo-s.Hi) }

// Grown is the stretch with more at both ends.
func (s Span) Grown(by unit.Length) Span { return Span{s.Lo - by, s.Hi + by} }

// Envelope is the room of one thing.
type Envelope struct {
	Name  string // as a person calls it: "vanity, top drawer"
	Owner string // the document path of what it belongs to: "cabinets > vanity"
	At    diag.Place
	Kind  Kind
	Wall  string // the face in whose frame X, Y and Z are; "" for what lies in the plan alone
	X, Y  Span
	Z     Span
	Plan  geom.Ring // outline in the plan frame, counter-clockwise; empty for what is in a face alone
	High  Span      // heights over the level line; for what is on a wall the same as Y
	Keep  unit.Length
	Face  geom.Ring // outline on its face, for what is no rectangle there: a piece of tile
	// Travel is, of a drawer, how far it comes out.
	Travel unit.Length
	// Holds: what hangs on this screw pulls hard, a grab bar or a cabinet: it wants wood behind it.
	Holds bool
	// Round: the outline on the face is a circle about the middle of X and Y.
	Round bool
	// Uses are the document paths of the figures that it was placed by.
	Uses []string
}

// Middle is the middle of the envelope on its face.
func (e Envelope) Middle() geom.Point {
	return geom.Point{X: e.X.Lo + e.X.Length()/2, Y: e.Y.Lo + e.Y.Length()/2}
}

// Rect is the envelope on its face.
func (e Envelope) Rect() geom.Rect {
	return geom.Rect{Min: geom.Point{X: e.X.Lo, Y: e.Y.Lo}, Max: geom.Point{X: e.X.Hi, Y: e.Y.Hi}}
}
