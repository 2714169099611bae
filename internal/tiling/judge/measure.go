// Package judge measures a layout as a tile setter does. A measure is a number to be made large or small; a
// list of measures in order of importance compares two layouts, first difference decides.
//
// Lengths are floored to the mark that is set out by before they are compared, so that no layout wins by a hair that
// nobody can see. What is cut by less than a mark is no cut: the joint takes it up.
package judge

import "dryfit/internal/unit"

// Name is a measure's name in the document and on sheets.
//
// The first seven are exact where all joints run along the face's axes: for a given place of the courses each is a
// function of the offset along them, and one of the offset across, joined by the worse of the two or by their sum, so
// that every markable offset can be judged. The last two need every piece and are compared among finalists only.
type Name string

const (
	// NarrowestCut is a length, larger is better: the least that shows of a tile beside any edge that cuts it, measured
	// along the course beside upright edges and across it beside level ones, from the edge to the tile's factory side,
	// or to the edge opposite if that comes first. What the next face's tile covers is taken off. An edge that leans is
	// measured at its worst place; where it runs over a joint, something runs out to nothing and shows 0. An edge that
	// leans by more than half a tile, or is shorter than the joint, is not judged.
	NarrowestCut Name = "narrowest cut"
	// SliverPlaces is a count, smaller is better: cuts that show less than the sliver limit, each times the weight of
	// its edge: one for each course beside an upright edge, and as many as there are tiles along a level one.
	SliverPlaces Name = "slivers in sight"
	// Balance is a length, smaller is better: how far the center line is from the nearest axis about which the courses
	// mirror each other, so that the cuts left and right are alike taken over all courses. In a stack these are the
	// tiles' centers and the joints; in a running bond of 1/2 the quarter points too.
	// It is compared in steps of EvenWithin marks.
	Balance Name = "balance"
	// SightLines is a length, smaller is better: how far each line that the eye follows is from the nearest joint
	// between courses, added up.
	SightLines Name = "sight lines"
	// OpeningJoints is a length, smaller is better: what is cut off the tiles beside openings, the most along each side,
	// added up over the sides. A side on a joint adds nothing, one that leaves a wide piece little, a sliver nearly a tile.
	OpeningJoints Name = "joints at openings"
	// HolesClear is a length, larger is better: the least distance from any hole's rim to a joint; negative where a
	// joint runs through the hole.
	HolesClear Name = "holes clear of joints"
	// CutCount is a count, smaller is better: tiles that are cut by an edge, each once. Round holes are no cuts.
	CutCount Name = "number of cuts"
	// Necks is a length, larger is better: the least width left in any L or U piece.
	Necks Name = "narrowest neck"
	// TilesToBuy is a count, smaller is better: whole tiles that the pieces are cut from.
	TilesToBuy Name = "tiles to buy"
)

// Measure is one judged number.
type Measure struct {
	Name    Name        `json:"name"`
	Length  unit.Length `json:"length,omitempty"` // for lengths
	Count   int         `json:"count,omitempty"`  // for counts
	IsCount bool        `json:"isCount,omitempty"`
	// None: there is nothing to measure; no cut, no hole, no line.
	None bool `json:"none,omitempty"`
	// Cost is the comparable form: smaller is better, already floored to the mark.
	Cost  int64  `json:"-"`
	Exact bool   `json:"exact"`           // the search proves the best value of this measure over the markable offsets
	Where string `json:"where,omitempty"` // the piece or edge that decides it, in words
}

// EvenWithin is how many marks off center still count as even. Four marks are 1/8 in or 2 mm; left and right then differ
// by less than 1/4 in or 4 mm, which nobody sees across a room (our own judgment), while a wide cut for a sliver is seen.
const EvenWithin = 4
