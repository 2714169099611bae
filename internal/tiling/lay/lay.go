// Package lay sets a bond on a region: every tile that meets it, clipped, in the tile's own frame, with the holes
// that pierce it.
//
// The region comes in the pattern frame (rounded once there); tiles are exact, so a whole tile on a 45 degree
// floor has area exactly L*W. Edges of a piece keep a label: a factory side of the tile, or the label of the
// region's edge (wall, opening, neighbor field) that cuts it.
package lay

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Labels of factory sides. Region labels are positive (1 and up); factory sides are negative.
const (
	Left   geom.Label = -1
	Bottom geom.Label = -2
	Right  geom.Label = -3
	Top    geom.Label = -4
	// Hexagon sides count on: -1 … -6 counter-clockwise from the lower right side.
)

// Piece is one tile or part of one. All outlines are in the tile's own frame: the factory tile lies with its
// length along x, lower left corner at the origin, unturned.
type Piece struct {
	Course, Column, Part int        // the address; Part counts pieces of one tile from 0
	Size                 int        // index into the goods' sizes
	Turn                 geom.Turn  // how the tile lies in the pattern
	At                   geom.Point // where the tile's lower left corner (as it lies) is, in the pattern frame, offset included
	Whole                bool
	Shape                geom.Region // in the tile's own frame
	Holes                []Hole
}

// Hole is a round hole through a piece, or a bite out of its edge.
type Hole struct {
	Index  int        // of the face's hole
	Center geom.Point // in the tile's own frame
	Drill  unit.Length
	Bite   bool // the circle crosses the piece's edge
}

// Hit is a hole to lay, in the pattern frame.
type Hit struct {
	Index  int
	Center geom.Point
	Drill  unit.Length
}
