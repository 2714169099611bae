// Package tiling is the tile setter's trade: for each face and field, the goods, the bond, the best few layouts
// with their measures and reasons, every piece with its cut, the fewest whole tiles and the published rules.
//
// It takes the document and the solved room and gives a Plan with findings. Sub-packages, in the order the
// data goes: bond (patterns as data), lay (tiles on a region), judge (measures), search (the best offset),
// piece (what to cut, in a setter's words).
package tiling

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// Plan is all tile work.
type Plan struct {
	Faces []Face `json:"faces"`
	Goods []Good `json:"goods"` // how many whole tiles of each good
}

// Face is the tile work on one face of the room.
type Face struct {
	Name     string     `json:"name"`
	At       diag.Place `json:"at"`
	Fields   []Field    `json:"fields"`
	Movement []Movement `json:"movement"` // movement joints on the face
	Setting  []string   `json:"setting"`  // piece addresses in the order of setting
	Ledger   *Ledger    `json:"ledger,omitempty"`
}

// Ledger is the straight edge that the first full course stands on or reaches to.
type Ledger struct {
	// Top of the first course, from the level line and above the finished floor at its lowest point.
	Y          unit.Length `json:"y"`
	AboveFloor unit.Length `json:"aboveFloor"`
	// Bottom cuts run from CutHigh (at the floor's low end) to CutLow.
	CutHigh unit.Length `json:"cutHigh"`
	CutLow  unit.Length `json:"cutLow"`
}

// Movement is a movement joint line.
type Movement struct {
	Where string     `json:"where"`
	From  geom.Point `json:"from"`
	To    geom.Point `json:"to"`
	Rule  string     `json:"rule"`
}

// Field is one zone of a face.
type Field struct {
	Name     string      `json:"name"`
	At       diag.Place  `json:"at"`
	Tile     string      `json:"tile"`
	Bond     string      `json:"bond"`
	Joint    unit.Length `json:"joint"`
	Sizes    []Size      `json:"sizes"`    // real sizes, after a dry lay
	Region   geom.Region `json:"region"`   // where its tile may be, in the face's frame
	Angle    unit.Angle  `json:"angle"`    // of the pattern frame against the face
	Layouts  []Layout    `json:"layouts"`  // best first; the first is the plan unless one is pinned
	Searched string      `json:"searched"` // how: "every 1/32 in of both offsets" or "bounded, every 1/4 in, refined to 1/32 in"
	Held     bool        `json:"held"`     // pinned by the person
}

// Size is one real size of a good.
type Size struct {
	Name   string      `json:"name,omitempty"`
	Length unit.Length `json:"length"`
	Width  unit.Length `json:"width"`
}

// Layout is one way to lay a field.
type Layout struct {
	Origin     geom.Point      `json:"origin"` // in the face's frame: a corner of the pattern's tile 0,0
	Measures   []judge.Measure `json:"measures"`
	Why        string          `json:"why"`
	WhyNot     string          `json:"whyNot,omitempty"`
	Whole      int             `json:"whole"` // whole tiles in the wall
	CutCount   int             `json:"cutCount"`
	Pieces     []Piece         `json:"pieces,omitempty"` // of the chosen layout; others are drawn from Origin
	Tiles      int             `json:"tiles"`            // whole tiles that the pieces are cut from
	TilesLeast int             `json:"tilesLeast"`       // no way needs fewer
	From       []Source        `json:"from,omitempty"`   // which piece comes out of which tile
}

// Source says which tile a cut piece comes from.
type Source struct {
	Piece string     `json:"piece"`
	Tile  int        `json:"tile"` // numbered from 1 within the field's cut tiles
	Turn  int        `json:"turn"` // quarter turns
	At    geom.Point `json:"at"`
}

// Piece is one tile or part of one.
type Piece struct {
	Address string      `json:"address"` // "3-5" course-column, with a letter for parts: "3-5b"; prefixed by the field's mark where a face has several
	Course  int         `json:"course"`
	Column  int         `json:"column"`
	Size    int         `json:"size"`
	Turn    geom.Turn   `json:"turn"` // how the tile lies in the pattern
	Whole   bool        `json:"whole"`
	OnFace  geom.Region `json:"onFace"` // outline in the face's frame, rounded once: for drawing
	InTile  geom.Region `json:"inTile"` // outline in the tile's own frame: exact
	Edges   []PieceEdge `json:"edges,omitempty"`
	Cut     Cut         `json:"cut"`
	Holes   []PieceHole `json:"holes,omitempty"`
	Area    unit.Area   `json:"area"`
}

// PieceEdge says what one label on InTile is.
type PieceEdge struct {
	Label geom.Label `json:"label"`
	Name  string     `json:"name"` // "factory left", "cut: corner A", …
	Keep  bool       `json:"keep"` // a factory edge that must stay
}

// CutKind names the shape of a cut.
type CutKind uint8

const (
	NoCut    CutKind = iota
	Straight         // one straight cut across
	Taper            // one straight cut, not square: both ends are given
	Corner           // cut on two sides
	LShape
	UShape
	Notch
	Triangle
	Odd
)

// Cut is what to do at the saw, in the order of settings, already rounded to fit.
type Cut struct {
	Kind CutKind `json:"kind"`
	// Steps, each one setting of the saw.
	Steps []Step `json:"steps,omitempty"`
	// Neck is the narrowest width left in an L, U or notched piece; 0 elsewhere.
	Neck unit.Length `json:"neck,omitempty"`
	// Tolerance is how far the wall may differ from the number here.
	Tolerance unit.Length `json:"tolerance"`
	// MeasureFirst: the tolerance is more than the joint forgives; take the size at the wall.
	MeasureFirst bool        `json:"measureFirst"`
	Visible      unit.Length `json:"visible"` // narrowest visible width
}

// Step is one cut: keep what measures From at one end and To at the other, square to the named factory edge.
type Step struct {
	Keep    string         `json:"keep"`    // the factory edge that is measured from: "left"
	From    unit.Length    `json:"from"`    // exact
	To      unit.Length    `json:"to"`      // exact; equal to From for a parallel cut
	SawFrom unit.Length    `json:"sawFrom"` // rounded to fit
	SawTo   unit.Length    `json:"sawTo"`
	Along   [2]unit.Length `json:"along"` // for a notch: from where to where along the kept edge
	Edge    string         `json:"edge"`  // what the cut meets: "corner A"
	Text    string         `json:"-"`
}

// PieceHole is a hole in a piece.
type PieceHole struct {
	Name   string      `json:"name"`
	Drill  unit.Length `json:"drill"`
	Bit    unit.Length `json:"bit"`   // core bit to use; 0 = none of the user's fits
	Bite   bool        `json:"bite"`  // crosses the piece's edge: cut as a notch
	FromX  unit.Length `json:"fromX"` // center from the kept vertical edge
	EdgeX  string      `json:"edgeX"`
	FromY  unit.Length `json:"fromY"`
	EdgeY  string      `json:"edgeY"`
	ToEdge unit.Length `json:"toEdge"` // rim to the nearest edge of the piece
}

// Good is how much of one tile good is needed.
type Good struct {
	Tile     string `json:"tile"`
	Size     int    `json:"size"`
	Whole    int    `json:"whole"`   // set uncut
	CutFrom  int    `json:"cutFrom"` // cut up
	Least    int    `json:"least"`   // proven: no cutting plan needs fewer for the cuts
	Breakage int    `json:"breakage"`
	Spares   int    `json:"spares"`
	Buy      int    `json:"buy"`
	PerBox   int    `json:"perBox,omitempty"`
	Boxes    int    `json:"boxes,omitempty"`
	Leftover int    `json:"leftover"`
}
