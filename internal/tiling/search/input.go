// Package search finds where a bond should start on a face: the best few truly different layouts, each with its
// measures and a sentence of why and why not.
//
// It takes a region in the pattern frame with what each of its edges is to the eye, a bond, and an order of
// importance; it gives candidates. The offsets searched are those that a person can mark. For bonds with straight
// joints both ways (bond.Axis) every one of them is judged, so that the best is the best by construction; for the
// others the search is bounded, and says with which resolution.
//
// No clock and no random source: the same input gives the same result.
package search

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// Input is one field to lay. Everything is in the pattern frame.
type Input struct {
	Region geom.Region // where tile may be; edges labelled
	Edges  []Edge      // Edges[i] is what label i+1 is; a label without one is a plain edge of weight 1
	Bond   bond.Bond
	Holes  []Hole
	// Center is the vertical line to balance about; where neither it nor Level is given, the middle of what is seen.
	Center Line
	// Level is a horizontal line to balance about, for floors; silent on walls.
	Level    Line
	Sights   []Sight
	Openings []Opening
	// Mark is the finest mark that a person sets out by: 1/32 in or 0.5 mm; DefaultMark gives it.
	Mark unit.Length
	// Zero is the point that offsets are marked from; every origin searched is Zero plus whole marks.
	Zero geom.Point
	// Sliver: a cut that shows less than this is a sliver; 0 = SliverShare of the tile's shorter side.
	Sliver unit.Length
	// Enough: a hole farther than this from a joint is no better for being farther; 0 = no such limit.
	Enough unit.Length
	Order  []judge.Name // of importance; measures not named follow in the default order
	Keep   int          // how many layouts to offer; 0 = 4
	// Count lays a candidate and counts what needs every piece; nil = not counted. Called on few candidates, never
	// at the same time.
	Count func(origin geom.Point) Count
}

// Edge is what an edge of the region is to the eye.
type Edge struct {
	Name    string      // "corner A", "window, left"
	Opening bool        // it bounds an opening
	Hidden  unit.Length // how much of the tile here the other face's tile covers
	// Weight is how much the eye follows it: 0 nobody sees it, 1 plain, more at jambs and outside corners.
	Weight int
}

// Hole is a round hole to be drilled.
type Hole struct {
	Name   string
	Center geom.Point
	Drill  unit.Length // diameter
}

// Line is a line to balance about; the zero Line is none.
type Line struct {
	Given bool
	At    unit.Length
	// Through is any point on the line: for a pattern at an angle to the face (bond.Angle), where it is not upright.
	Through geom.Point
}

// Sight is a height that the eye follows, where a whole course should end.
type Sight struct {
	Name string
	Y    unit.Length
}

// Opening is an opening that may still be moved; Rect is the hole it leaves in the region.
type Opening struct {
	Name  string
	Rect  geom.Rect
	Moves unit.Length // each way; 0 = it stays
}

// Count is what only a full lay tells.
type Count struct {
	Tiles, Least int         // whole tiles to buy, and the proven least; Tiles 0 = not counted
	Neck         unit.Length // narrowest width left in an L or U piece; 0 = there is no such piece
	NeckAt       string
}

// DefaultMark is what people set out by: 1/32 in or 0.5 mm.
func DefaultMark(s unit.System) unit.Length {
	if s == unit.Millimetres {
		return unit.Millimetre / 2
	}
	return unit.ThirtySecond
}
