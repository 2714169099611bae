// Package judge measures a layout as a tile setter does. A measure is a number to be made large or small; a
// list of measures in order of importance compares two layouts, first difference decides.
//
// Lengths are floored to a tape mark before they are compared, so that no layout wins by a hair that nobody can
// see.
package judge

import "dryfit/internal/unit"

// Name is a measure's name in the document and on sheets.
type Name string

const (
	NarrowestCut  Name = "narrowest cut"         // visible width of the narrowest cut piece; larger is better; weighted edges first
	SliverPlaces  Name = "slivers in sight"      // weighted count of cuts under the sliver limit; smaller is better
	Balance       Name = "balance"               // how far the center line is from an axis about which the courses mirror each other: for a stack, a joint or a tile center
	SightLines    Name = "sight lines"           // how far courses end from the lines the eye follows; smaller is better
	OpeningJoints Name = "joints at openings"    // edges of openings that fall on a joint or leave a wide piece
	HolesClear    Name = "holes clear of joints" // least distance from a hole's rim to a joint; larger is better
	Necks         Name = "narrowest neck"        // least width left in an L or U piece; larger is better
	CutCount      Name = "number of cuts"        // smaller is better
	TilesToBuy    Name = "tiles to buy"          // smaller is better; judged on finalists only
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
