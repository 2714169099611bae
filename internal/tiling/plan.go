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
	"dryfit/internal/site"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// Plan is all tile work.
type Plan struct {
	Faces []Face `json:"faces"`
	Goods []Good `json:"goods"` // how many whole tiles of each good
}

// Face is the tile work on one face of the room.
type Face struct {
	Name     string      `json:"name"`
	Mark     string      `json:"mark"` // short, unique in the room: it goes before an address where faces mix
	At       diag.Place  `json:"at"`
	Fields   []Field     `json:"fields"`
	Edges    []site.Edge `json:"edges"`    // what the labels of its fields' regions and pieces are; edges[i] has label i+1
	Movement []Movement  `json:"movement"` // movement joints on the face
	Setting  []string    `json:"setting"`  // piece addresses in the order of setting
	Ledger   *Ledger     `json:"ledger,omitempty"`
}

// Ledger is the straight edge that the first full course stands on or reaches to.
type Ledger struct {
	// Top of the first course, from the level line and above the finished floor at its lowest point.
	Y          unit.Length `json:"y"`
	AboveFloor unit.Length `json:"aboveFloor"`
	// Bottom cuts run from CutHigh (at the floor's low end) to CutLow.
	CutHigh unit.Length `json:"cutHigh"`
	CutLow  unit.Length `json:"cutLow"`
	// Joint is the joint at the floor; it widens to JointMost where the whole tile does not reach down to it.
	Joint     unit.Length `json:"joint"`
	JointMost unit.Length `json:"jointMost"`
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
	Name     string       `json:"name"`
	At       diag.Place   `json:"at"`
	Tile     string       `json:"tile"`
	Bond     string       `json:"bond"`
	Joint    unit.Length  `json:"joint"`
	Sizes    []Size       `json:"sizes"`           // real sizes, after a dry lay
	Region   geom.Region  `json:"region"`          // where its tile may be, in the face's frame
	Angle    unit.Angle   `json:"angle"`           // of the pattern frame against the face
	Layouts  []Layout     `json:"layouts"`         // best first; the first is the plan unless one is pinned
	Searched judge.Reason `json:"searched"`        // how the offsets were searched, in words
	Held     bool         `json:"held"`            // pinned by the person
	Moves    []Move       `json:"moves,omitempty"` // openings that should move while they can
}

// Size is one real size of a good.
type Size struct {
	Name   string      `json:"name,omitempty"`
	Length unit.Length `json:"length"`
	Width  unit.Length `json:"width"`
}

// Layout is one way to lay a field.
type Layout struct {
	Origin     geom.Point      `json:"origin"` // in the face's frame: a tile's lower left corner where the pattern repeats, within the field where there is one
	Measures   []judge.Measure `json:"measures"`
	Why        judge.Reason    `json:"why"`
	WhyNot     judge.Reason    `json:"whyNot"`
	Whole      int             `json:"whole"` // whole tiles in the wall
	CutCount   int             `json:"cutCount"`
	Pieces     []piece.Piece   `json:"pieces,omitempty"` // of the chosen layout; others are drawn from Origin
	Tiles      int             `json:"tiles"`            // whole tiles that the pieces are cut from
	TilesLeast int             `json:"tilesLeast"`       // no way needs fewer
}

// Source says which tile a cut piece comes from, and where in it the piece's bounds lie.
type Source struct {
	Piece string     `json:"piece"` // face mark and address: "BW 3-5"
	Tile  int        `json:"tile"`  // numbered from 1 within the good's cut tiles
	Turn  int        `json:"turn"`  // quarter turns
	At    geom.Point `json:"at"`    // lower left corner of the turned bounds, in the tile's own frame
}

// Blank is a whole tile with how it may be cut.
type Blank struct {
	Length     unit.Length `json:"length"` // real, after a dry lay
	Width      unit.Length `json:"width"`
	Quarter    bool        `json:"quarter"`    // a piece may lie a quarter turned in it
	Half       bool        `json:"half"`       // a piece may lie upside down in it
	Kerf       unit.Length `json:"kerf"`       // lost between two pieces; 0 where tile is snapped
	LeastStrip unit.Length `json:"leastStrip"` // the narrowest strip that snaps; 0 where tile is sawn
}

// Good is how much of one tile good is needed.
type Good struct {
	Tile     string   `json:"tile"`
	Size     int      `json:"size"`
	Blank    Blank    `json:"blank"`          // the whole tile as the cutting plan took it
	Whole    int      `json:"whole"`          // set uncut
	CutFrom  int      `json:"cutFrom"`        // cut up
	Least    int      `json:"least"`          // proven: no cutting plan needs fewer for the cuts
	Proof    string   `json:"proof"`          // what proves it
	From     []Source `json:"from,omitempty"` // which piece comes out of which tile
	Breakage int      `json:"breakage"`
	Spares   int      `json:"spares"`
	Buy      int      `json:"buy"`
	PerBox   int      `json:"perBox,omitempty"`
	Boxes    int      `json:"boxes,omitempty"`
	Leftover int      `json:"leftover"`
}

// Chosen is the layout that is laid: the first. The zero Layout where the field could not be laid.
func (f Field) Chosen() Layout {
	if len(f.Layouts) == 0 {
		return Layout{}
	}
	return f.Layouts[0]
}
