// Package piece says what to do at the saw and the drill for each laid tile, in a setter's words.
//
// It takes a piece as laid (exact, in the tile's own frame), the names of the face's edges and what their joints
// forgive, and gives a Piece: its outline, the factory edges to keep, the cut as settings of the saw rounded so
// that the piece fits, the holes from the edges that a person measures from. Exact sizes stand beside rounded
// ones; rounding never makes a piece larger than its gap.
package piece

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Piece is one tile or part of one. Words such as "left" and "bottom" mean the tile as it lies in the pattern; outlines in the tile's
// own frame have its length along x, whichever way it lies.
type Piece struct {
	Address string      `json:"address"` // "3-5" course-column, with a letter for parts: "3-5b"; prefixed by the field's mark where a face has several
	Course  int         `json:"course"`
	Column  int         `json:"column"`
	Size    int         `json:"size"`
	Turn    geom.Turn   `json:"turn"` // how the tile lies in the pattern
	Whole   bool        `json:"whole"`
	OnFace  geom.Region `json:"onFace"` // outline in the face's frame, rounded once: for drawing
	InTile  geom.Region `json:"inTile"` // outline as cut from the tile, in its own frame: exact; slid to a factory side where both across were lost
	Edges   []PieceEdge `json:"edges,omitempty"`
	Cut     Cut         `json:"cut"`
	Holes   []PieceHole `json:"holes,omitempty"`
	Area    unit.Area   `json:"area"`
}

// Uncut reports whether the piece goes in as it comes out of the box, but for its holes: it is whole, or lacks so little that the joint forgives it.
func (p Piece) Uncut() bool { return p.Cut.Kind == NoCut }

// PieceEdge says what one label on InTile is.
type PieceEdge struct {
	Label geom.Label `json:"label"`
	Name  string     `json:"name"` // "factory left", "cut: corner A", …
	Keep  bool       `json:"keep"` // a factory edge that must stay
}

// CutKind names the shape of a cut.
type CutKind uint8

const (
	NoCut    CutKind = iota // a whole tile, or one that lacks less than lay.LeastWidth: it goes in uncut, the joint forgives it
	Straight                // one straight cut across
	Taper                   // one straight cut, not square: both ends are given
	Corner                  // cut on two or three sides, still four-sided
	LShape                  // a corner cut out
	UShape                  // cut out from one side, at least half way through
	Notch                   // cut out from one side, less deep
	Triangle                // one cut across, a corner is kept
	Clipped                 // one cut across, a corner is lost
	CutOut                  // an opening within the piece
	Odd                     // none of these
)

// Cut is what to do at the saw, in the order of settings, already rounded to fit.
type Cut struct {
	Kind CutKind `json:"kind"`
	// Steps, each one setting of the saw.
	Steps []Step `json:"steps,omitempty"`
	// Neck is the narrowest width left in a piece with an inward corner (L, U, notch, cut-out); 0 elsewhere.
	Neck unit.Length `json:"neck,omitempty"`
	// Tolerance is how far the wall may differ from the number here.
	Tolerance unit.Length `json:"tolerance,omitempty"`
	// MeasureFirst: the tolerance is more than the joint forgives; take the size at the wall.
	MeasureFirst bool        `json:"measureFirst,omitempty"`
	Visible      unit.Length `json:"visible,omitempty"` // narrowest visible width
	// TaperShows: the two ends differ by so much of the width that an eye sees it.
	TaperShows bool `json:"taperShows,omitempty"`
	// Snaps: one straight cut from side to side with a wide enough strip on both sides; all else needs a saw.
	Snaps bool `json:"snaps,omitempty"`
}

// Step is one cut: keep what measures From at one end and To at the other, square to the named factory edge. From is the lower
// or the left end. Where Keep names two edges ("bottom and left") the cut runs from one to the other, and From and To are what
// is kept along the first and along the second.
type Step struct {
	Keep    string         `json:"keep"`    // the factory edge that is measured from: "left"; or an edge cut before: "cut: corner A"
	From    unit.Length    `json:"from"`    // exact
	To      unit.Length    `json:"to"`      // exact; equal to From for a parallel cut
	SawFrom unit.Length    `json:"sawFrom"` // rounded to fit
	SawTo   unit.Length    `json:"sawTo"`
	Along   [2]unit.Length `json:"along"` // for a cut that does not run right across: from where to where along the kept edge, from its left or lower end
	Edge    string         `json:"edge"`  // what the cut meets: "corner A"
	// Leaves is the joint at the edge once the cut is rounded; Wide: that is more than the edge forgives, cut closer than the mark.
	Leaves unit.Length `json:"leaves"`
	Wide   bool        `json:"wide,omitempty"`
	// Chips is how many whole chips of a mosaic sheet are kept, where the cut runs along a chip joint.
	Chips int `json:"chips,omitempty"`
}

// PieceHole is a hole in a piece.
type PieceHole struct {
	Name  string      `json:"name"`
	Drill unit.Length `json:"drill"`
	Bit   unit.Length `json:"bit"`   // core bit to use; 0 = none of the user's fits
	Bite  bool        `json:"bite"`  // crosses the piece's edge: cut as a notch
	FromX unit.Length `json:"fromX"` // center from the kept vertical edge
	EdgeX string      `json:"edgeX"`
	FromY unit.Length `json:"fromY"`
	EdgeY string      `json:"edgeY"`
	// Where the piece is cut on the way: the center from that cut edge too, and its name.
	CutX     unit.Length `json:"cutX,omitempty"`
	CutEdgeX string      `json:"cutEdgeX,omitempty"`
	CutY     unit.Length `json:"cutY,omitempty"`
	CutEdgeY string      `json:"cutEdgeY,omitempty"`
	ToEdge   unit.Length `json:"toEdge"` // rim to the nearest edge of the piece
}
