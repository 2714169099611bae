// Package site turns readings into the true shape of a room: adjusted corners, raw, board and finished faces,
// and for each face where tile may be, what is seen of it, and what pierces it.
//
// It takes a document.Room and gives a Room with findings and assumptions. Readings that agree with each other
// are called that, never "a true room". Rounding happens once, where readings are solved; after that every
// length is exact. Nothing is derived again downstream: a sheet prints these numbers.
//
// Frames. The floor plan frame has the first corner at the origin and the first wall along +x as one stands in
// the room facing it (A left, B right), y pointing away from that wall into the room is NEGATIVE: plan y grows
// toward the wall, as on a drawing with that wall at the top. A wall's face frame has x = 0 at the left corner of
// its board (the surface that is tiled) at the level line, x to the right, and y = 0 at the level line, y up. A
// reveal's frame has x along the opening's edge and y from the room (0 = rim) into the wall; a niche's back has
// the wall's own x and y; a jamb's x runs up from the sill. The floor face's frame is the plan frame.
//
// Order. Walls are placed on the outline; levels, order of setting and build-ups are read; the survey is solved; then faces are built from
// it. A reading is reduced to the studs at the plate by the shape known so far, and the two are settled together. Each wall's line moves once
// by its own build-up and lean, and neighbors end where their lines meet; below a turn of 10 degrees they end side by side in a jog. What
// is set first runs through at a corner. A place along a wall counts from its corner as the tape touched it, at the height of the thing.
package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Room is the solved room.
type Room struct {
	Survey Survey
	// FinishedFloor is the height that "above finished floor" counts from, as y from the level line (negative).
	FinishedFloor unit.Length
	FinishedKnown bool
	FinishedRule  string // in words: "the highest point of the finished floor, at corner B"
	Faces         []Face // walls in document order, then the floor, then faces of openings
	Frame         FloorFrame

	tapedTo document.Surface // what a place along a wall counts from unless it says otherwise
}

// Survey is the adjusted outline of the floor.
type Survey struct {
	Corners  []Corner // in the document's order
	Points   []Spot   // further floor points
	Readings []Reading
	Freedom  int         // readings more than needed
	Closing  unit.Length // the largest closing error, or that of the reading to take again
	Again    []int       // which readings to take again, in that order: indices into Readings
	Verdict  Verdict
	Suspects []int     // indexes into Readings; more than one: the readings cannot tell which
	Fixed    bool      // the readings fix the shape
	Area     unit.Area // of the raw outline
}

// Corner returns the corner of that name; the zero Corner if there is none.
func (s Survey) Corner(name string) Corner {
	for _, c := range s.Corners {
		if c.Name == name {
			return c
		}
	}
	return Corner{}
}

// Verdict is what the readings say of each other.
type Verdict uint8

const (
	Unsolved   Verdict = iota // too few readings, or contradictory ones
	NoCheck                   // just enough readings: nothing checks them
	Agree                     // they agree with each other within the tape's accuracy
	OneSuspect                // one reading is the likeliest to be wrong
	CannotTell                // they disagree and cannot tell which
)

// Corner is one corner of the floor.
type Corner struct {
	Name                     string
	Raw, Board, Finished     geom.Point  // in the plan frame, at the plate
	Angle                    unit.Angle  // inside angle of the finished faces
	Outside                  bool        // an outside corner (angle over 180 degrees)
	BareFloor                unit.Length // y from the level line (negative); valid if FloorKnown
	CeilingY                 unit.Length
	FloorKnown, CeilingKnown bool
}

// Spot is a named point on the floor.
type Spot struct {
	Name string
	P    geom.Point
}

// Reading is one tape reading after the adjustment.
type Reading struct {
	Name     string // "A-B"
	At       diag.Place
	Measured unit.Length // as read
	ToStud   unit.Length // reduced to the studs at the plate
	Residual unit.Length // adjusted minus measured
	Standard int64       // standardised residual in thousandths; 0 where nothing checks the reading
	Closing  unit.Length // measured minus what all the others make it; valid if Checked
	Checked  bool
	Use      Use
	By       string      // what superseded it, or why it is not used
	Differs  unit.Length // superseded: newer minus older, on the same surface
}

// Use says what became of a reading.
type Use uint8

const (
	Used Use = iota
	Superseded
	Unused
)

// FaceKind is what a face is.
type FaceKind uint8

const (
	WallFace FaceKind = iota
	FloorFace
	RevealFace // a jamb, sill or head of an opening, or a niche's back
)

// Face is one plane that can be tiled.
type Face struct {
	Name string // "basin wall", "floor", "niche > sill"
	At   diag.Place
	Kind FaceKind
	// Board is the surface that is tiled, openings cut out, in the face's frame; edges are labelled by Edges.
	Board geom.Region
	// Cut is where tile may be: Board less the joint at each edge, or more at an outside corner. "To the saw".
	Cut geom.Region
	// Edges tells what each label is; Edges[i] has label i+1.
	Edges    []Edge
	Holes    []Hole
	Lines    []CenterLine
	Buried   []Buried
	Openings []Opening
	// Tile, Bed and Board build-up, from the studs outward.
	BoardThick, BedThick, TileThick unit.Length
	BedLeast, BedMost               unit.Length // over the face, after the choice of plane or follow
	TileOff                         unit.Length // plane faces: tile face off the straight line between the board corners
	Flat                            Flatness
	Shims                           []Shim
	Bare                            []geom.Point // the lower edge's low and high points are read from Board; empty for floors
	LowFloor                        unit.Length  // y of the lowest point of the finished floor (or bare floor, wall first) along the face
	HighFloor                       unit.Length
	Set                             bool   // the document lays tile on it
	Order                           int    // order of setting, from 1; 0 = not set
	LeftCorner, RightCorner         string // of a wall
	// SlopeFall is the outward fall of a sill.
	SlopeFall unit.Ratio

	shape elevation // of a wall; other faces have only the ends that places count from
}

// EdgeKind is what bounds a face.
type EdgeKind uint8

const (
	AtFloor EdgeKind = iota
	AtCeiling
	InsideCorner
	OutsideCorner
	OpeningEdge
	FreeEdge
)

// Edge is one edge of a face. Distances are square to it, in the plane of the face.
type Edge struct {
	Kind  EdgeKind
	Name  string // "corner A", "floor", "window, left"
	At    diag.Place
	Other string // the face on the other side, if it has a name
	// Runs: this face's tile runs through behind the other's; else it butts against it.
	Runs bool
	// Gap is from the board's edge to the cut edge of the tile (negative: tile reaches past the board).
	Gap unit.Length
	// Hidden is how much of the tile at this edge is covered by the other face's tile when both are set.
	Hidden unit.Length
	// Joint is the width of the joint at this edge; Soft: it is a flexible joint and not grout.
	Joint unit.Length
	Soft  bool
	// Edge of tile shown: Bare (a finished or profiled edge is needed here).
	Shows bool
	Miter bool
	// Weight is how much the eye follows this edge: jambs and outside corners more than behind fixtures.
	Weight int
}

// Hole is a round penetration.
type Hole struct {
	Name     string
	At       diag.Place
	Center   geom.Point
	Diameter unit.Length // of the pipe; 0 unknown
	Drill    unit.Length // asked for; 0 = diameter plus clearance
}

// CenterLine is a named vertical line on a wall.
type CenterLine struct {
	Name string
	X    unit.Length
}

// Opening is an opening or box in a face.
type Opening struct {
	Name  string
	At    diag.Place
	Kind  string    // "window", "door", "niche", "opening", "box"
	Rect  geom.Rect // at the board
	Depth unit.Length
	Moves unit.Length // how far it may still be moved
}

// Buried is a recorded thing in the wall.
type Buried struct {
	Name string
	At   diag.Place
	Kind string // "stud", "blocking", "pipe", "cable", "nail plate"
	Rect geom.Rect
}

// Flatness is what straightedge readings say against the published tolerance.
type Flatness struct {
	Checked bool
	Rule    string
	Over    unit.Length // by how much the worst reading is over; 0 = within
	Fill    unit.Volume // filler to make it right
}

// Shim is what one stud needs to come into the plane: + a shim, - planing.
type Shim struct {
	X, By unit.Length
}

// FloorFrame is the check of the floor's structure.
type FloorFrame struct {
	Checked  bool
	Ratio    int64 // span over deflection: L/733 is 733
	Need     int64 // 360 ceramic, 720 stone
	Deflects unit.Length
}
