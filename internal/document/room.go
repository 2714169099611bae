// Package document is the room document: the one file of facts and choices that a person writes and that every
// stage reads. It reads YAML into a Room whose every value knows the line it stands on, lists everything wrong
// in one go as findings, and edits the text in place without losing a comment.
//
// The document holds readings, goods, what is wanted and what is done. Nothing derived is in it. A value is
// known, silent (the key is absent) or unknown ("unknown" is written): silent and unknown are never zero.
package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Value is one fact with the place where it stands.
type Value[T any] struct {
	V       T
	Known   bool // a value is written
	Unknown bool // the word "unknown" is written
	At      diag.Place
}

// Or returns the value if it is known, else the default.
func (v Value[T]) Or(d T) T {
	if v.Known {
		return v.V
	}
	return d
}

// Room is the whole document.
type Room struct {
	Version  int
	Name     string
	Units    unit.System
	Mark     Value[unit.Length] // finest mark that cuts are read to: `mark: 1/16`
	Survey   Survey
	Walls    []Wall // in document order; names are unique
	Floor    Floor
	Corners  []Corner // treatments of single corners
	Setting  Setting
	Lines    []Line // `center lines`
	Openings []Opening
	Stubs    []Stub
	Boxes    []Box
	InWall   []Buried // `in the wall`
	Tiles    []Tile
	Tools    Tools
	Lay      []Lay
	Climate  Climate
}

// Survey is what the tape and the level line say about the floor's outline.
type Survey struct {
	At       diag.Place
	Corners  []Name             // `corners: A B C D`, clockwise seen from above; facing wall A-B, A is on the left
	Points   []Name             // `points: P Q`: further floor points, taped to corners
	Touches  Value[Surface]     // `tape to`: what a reading touches unless it says otherwise
	Where    Value[Height]      // `tape at`
	Accuracy Value[unit.Length] // `tape accuracy`: one standard deviation of one reading
	Tape     []Reading
	Down     []AtCorner // `level line: {down: {A: 40-1/8}}`: from the level line to the bare floor
	Up       []AtCorner // `level line: {up: …}`: from the level line to the ceiling
	Finished Finished   // `finished floor: highest`
}

// Name is a name with its place.
type Name struct {
	Text string
	At   diag.Place
}

// Surface is what a reading was taken to.
type Surface uint8

const (
	Stud Surface = iota // bare framing or masonry
	Board
	TileFace
)

// Height is where on the wall a reading was taken.
type Height uint8

const (
	Plate Height = iota // at the floor
	LevelLine
	Ceiling
)

// Reading is one tape reading between two named points. Keys: a bare length, or `{length: , to: , at: , on: }`.
// A list under one key holds several readings of the line, oldest first.
type Reading struct {
	From, To string
	Length   unit.Length
	Touches  Value[Surface]
	Where    Value[Height]
	On       Value[string] // ISO date, `on: 2026-03-02`; a later one supersedes; without dates the later in the list does
	At       diag.Place
}

// AtCorner is a reading at a corner.
type AtCorner struct {
	Corner string
	Value  Value[unit.Length]
}

// Finished says where "above the finished floor" counts from: the highest point of the finished floor in the
// room (the default), a named corner, or a length below the level line.
type Finished struct {
	Rule   FinishedRule
	Corner string
	Below  unit.Length
	At     diag.Place
}

// FinishedRule chooses among the three.
type FinishedRule uint8

const (
	Highest FinishedRule = iota
	AtNamedCorner
	BelowLevel
)

// Station is a reading at a distance from the left end of a wall: `{0: 0, 35: 1/4}`.
type Station struct {
	X     unit.Length
	Value unit.Length
	At    diag.Place
}

// Wall is one wall between two neighboring corners of the survey.
type Wall struct {
	Name         string
	At           diag.Place
	Left         string // from `along: A-B`: A is on the left for one who faces the wall
	Right        string
	BuildUp      []Layer            // `build-up`, from the studs outward
	Lean         []AtCorner         // `out of plumb: {A: 1/4}`: the top leans into the room (+) over the wall's height at that end
	WidthTop     Value[unit.Length] // `width: {bottom: , top: }`
	WidthBottom  Value[unit.Length]
	Heights      []AtCorner         // `height: {A: , B: }`, bare floor to ceiling
	Diagonals    []AtCorner         // `diagonals: {A: }`: from the bottom corner named to the opposite top corner
	WidthTo      Value[Surface]     // `measured to` for the five above
	FloorLine    []Station          // `floor`: from the level line down to the bare floor, along the wall
	CeilingLine  []Station          // `ceiling`: from the level line up, along the wall; a sloping or broken ceiling
	Profile      []Station          // `profile`: surface off the straight line from corner to corner, + into the room
	Studs        []Station          // `studs`: face of each stud off that line, + into the room
	Straightedge []Gap              // `straightedge`
	Face         Value[FaceRule]    // `tile face: plane` or `follow`
	LeastBed     Value[unit.Length] // `least bed`
	Carries      Value[string]
}

// FaceRule says whether the tile face is a plane over the high spots or follows the wall.
type FaceRule uint8

const (
	Plane FaceRule = iota
	Follow
)

// Layer is one layer of a build-up: `board 1/2`, `membrane 1 mm`, `bed 3/16`, `tile`. The tile's thickness comes
// from the goods when it is silent.
type Layer struct {
	What  LayerKind
	Label string // as written
	Thick Value[unit.Length]
	At    diag.Place
}

// LayerKind is what a layer is.
type LayerKind uint8

const (
	BoardLayer    LayerKind = iota // board, plywood, screed, plaster: what the tile is set on
	MembraneLayer                  // membrane, decoupling mat
	BedLayer                       // mortar under the tile
	TileLayer
)

// Gap is one straightedge reading: `{length: 8 ft, gap: 3/16, across: 30 from A, up: 20 above floor}`.
type Gap struct {
	Length, Gap unit.Length
	Across      Across
	Up          Up
	At          diag.Place
}

// Floor is the floor's own facts.
type Floor struct {
	At           diag.Place
	Given        bool
	BuildUp      []Layer
	Straightedge []Gap
	Frame        Frame
}

// Frame is the structure under the floor: `frame: {joist: 2x10, spacing: 16, span: 12 ft, …}`.
type Frame struct {
	At       diag.Place
	Given    bool
	JoistW   Value[unit.Length] // from `joist: 2x10` (dry dressed size) or `joist: {width: , depth: }`
	JoistD   Value[unit.Length]
	Nominal  string // "2x10", or "" where the real size is written
	Spacing  Value[unit.Length]
	Span     Value[unit.Length]
	Modulus  Value[int64] // `modulus: 1.6e6 psi` or `11 GPa`, in pascals
	Load     Value[int64] // `load: 50 psf` or `2.4 kPa`, in pascals
	Subfloor []Layer
}

// Corner is the treatment of one corner: `corners: {C: {outside: trim 3/8}}`.
type Corner struct {
	Name  string
	At    diag.Place
	Edge  Value[EdgeRule]    // of an outside corner
	Trim  Value[unit.Length] // visible width of the trim profile
	Joint Value[unit.Length] // soft joint at this corner
}

// EdgeRule is how tile ends at an outside corner or at the rim of a niche or reveal.
type EdgeRule uint8

const (
	TrimProfile EdgeRule = iota // a profile takes the corner; both faces stop at it
	Miter                       // both tiles are mitered and meet in the corner
	Lap                         // the face set first runs to its own board corner, the other laps over its edge
)

// Setting is how tile meets tile: order, soft joints, floor.
type Setting struct {
	At             diag.Place
	BackWall       Value[string]      // seen on entering; runs through by default
	Order          []Name             // `order: [end wall, basin wall, floor]`: first set runs through
	SoftJoint      Value[unit.Length] // at changes of plane
	FloorJoint     Value[unit.Length] // under the first course
	CeilingJoint   Value[unit.Length]
	PerimeterJoint Value[unit.Length] // round the floor
}

// Line is a center line that other things are located from: `basin line: {in: basin wall, across: 36 from A}`.
type Line struct {
	Name   string
	In     Name
	Across Across
	At     diag.Place
}

// Across is a place along a wall: `24 from A`, `center 36 from A`, `24 to 48 from A`, `3 left of basin line`,
// `on basin line`. Instead of a corner it may say left or right, for the ends of any face. A bare "from" names the edge that is nearest to that corner; for round things their center.
type Across struct {
	Given   bool
	From    string      // a corner of the wall or a center line
	Side    Side        // which way from it
	Lo, Hi  unit.Length // Hi is set only when two edges are given
	Both    bool
	Center  bool
	Touches Value[Surface] // what the corner was when it was taped
	At      diag.Place
}

// Side is a direction along a wall.
type Side uint8

const (
	FromCorner Side = iota // away from a corner, into the wall
	LeftOf
	RightOf
	On
)

// Up is a height: `48 above floor`, `48 to 84 above floor`, `center 50 above floor`, `3 below level`,
// `8 above level`, `6 below ceiling`, `top 84 above floor`.
type Up struct {
	Given  bool
	Datum  Datum
	Lo, Hi unit.Length // measured from the datum in the stated direction; Hi only when two are given
	Both   bool
	Part   Part
	At     diag.Place
}

// Datum is what a height counts from.
type Datum uint8

const (
	AboveFloor Datum = iota // the finished floor, by the room's one rule
	AboveLevel
	BelowLevelLine
	BelowCeiling
)

// Part is which part of a thing the height names.
type Part uint8

const (
	Bottom Part = iota
	Middle
	Top
)

// Opening is a window, door, niche or any hole in a face.
type Opening struct {
	Name     string
	At       diag.Place
	In       Name
	Kind     OpeningKind
	Across   Across
	Up       Up
	Width    Value[unit.Length]
	Height   Value[unit.Length]
	Depth    Value[unit.Length]
	BuildUp  []Layer // of its reveals
	Edge     Value[EdgeRule]
	Trim     Value[unit.Length]
	Joint    Value[unit.Length] // between tile and frame where the reveal is not tiled
	SillFall Value[unit.Ratio]
	Moves    Value[unit.Length] // `may move: 2`: how far it may still be moved each way
	Tiled    bool               // its reveals appear in `lay`
}

// OpeningKind is what the opening is.
type OpeningKind uint8

const (
	Window OpeningKind = iota
	Door
	Niche
	Plain
)

// Stub is a round penetration.
type Stub struct {
	Name     string
	At       diag.Place
	In       Name
	Across   Across
	Up       Up
	Diameter Value[unit.Length]
	Hole     Value[unit.Length] // diameter to drill; silent: diameter + clearance, next bit
	FloorAt  []AtWall
}

// AtWall is a distance square off a wall, for things in the floor: `off: {basin wall: 12-1/2, end wall: 20}`.
type AtWall struct {
	Wall  string
	Value Value[unit.Length]
}

// Box is a rectangular penetration: an electrical box, a valve plate, an access panel.
type Box struct {
	Name          string
	At            diag.Place
	In            Name
	Across        Across
	Up            Up
	Width, Height Value[unit.Length]
	FloorAt       []AtWall
}

// Buried is what is recorded inside a wall while it is open.
type Buried struct {
	Name   string
	At     diag.Place
	In     Name
	Kind   BuriedKind
	Across Across
	Up     Up
}

// BuriedKind is what is in the wall.
type BuriedKind uint8

const (
	StudInWall BuriedKind = iota
	Blocking
	Pipe
	Cable
	NailPlate
)

// Tile is one tile good.
type Tile struct {
	Name                 string
	At                   diag.Place
	Length, Width, Thick Value[unit.Length] // `size: 24 x 12 x 3/8`; length is the longer side as the tile is sold
	Kind                 TileKind
	KindAt               diag.Place
	Joint                Value[unit.Length]
	Edges                Value[TileEdge]
	Turns                Value[Turns] // `turns: any`, `half`, `none`
	PerBox               Value[int]
	Warpage              Value[unit.Length]
	Variation            Value[unit.Length]
	Breakage             Value[int]
	Spares               Value[int]
	DryLay               DryLay
	Chip                 Value[unit.Length] // of a mosaic sheet, chips are square
	ChipJoint            Value[unit.Length]
	Shape                TileShape
	Set                  []SetSize // sizes of a modular set; empty for a plain tile
	Polished             Value[bool]
	LeastStrip           Value[unit.Length]
}

// TileShape is the outline of one tile.
type TileShape uint8

const (
	Rectangle TileShape = iota
	Hexagon             // `size` gives the width across flats twice
)

// SetSize is one size of a modular set: `set: {large: 16 x 16, tall: 16 x 8, small: 8 x 8}`.
type SetSize struct {
	Name          string
	Length, Width unit.Length
	At            diag.Place
}

// TileKind is what the tile is made of.
type TileKind uint8

const (
	Ceramic TileKind = iota
	Porcelain
	Stone
	Glass
	Mosaic
)

// TileEdge is how the factory edge is made.
type TileEdge uint8

const (
	Calibrated TileEdge = iota
	Rectified
	Cushioned
	Glazed
)

// Turns is how a tile, or a piece of it, may be turned and still look right.
type Turns uint8

const (
	AnyTurn  Turns = iota // no direction
	HalfTurn              // a vein or a grain: upside down is fine
	NoTurn                // a direction
)

// DryLay is a dry-lay reading: `dry lay: {tiles: 10, joints: 9, joint: 3 mm, length: 3021 mm}`.
type DryLay struct {
	Given  bool
	Tiles  int
	Joints int
	Joint  unit.Length
	Length unit.Length
	Along  Value[string] // "length" (default) or "width"
	At     diag.Place
}

// Tools are what the person has.
type Tools struct {
	At         diag.Place
	Kerf       Value[unit.Length]
	LeastStrip Value[unit.Length]
	CoreBits   []Value[unit.Length]
	Snap       Value[bool] // `cutter: snap` or `wet saw`
}

// Lay is what is to be set on one face. The face is a wall, `floor`, or a face of an opening: `niche > back`,
// `niche > sill`, `window > left jamb`.
type Lay struct {
	Face         string
	At           diag.Place
	CenterOn     Value[string] // a center line; silent: the middle of the face
	LookFor      []Name        // a preset, or measures in order of importance
	Fields       []Field
	Sight        []Sight
	ContinueFrom Value[string] // joints are carried round the corner from this face
}

// Sight is a line that the eye follows: a height at which a whole course should end: an opening's name, or a height.
type Sight struct {
	Opening string
	Up      Up
	At      diag.Place
}

// Field is one zone of a face. A later field takes its area from the earlier ones.
type Field struct {
	Name   string
	At     diag.Place
	Tile   Name
	Bond   Value[string] // "stack", "running 1/3", "vertical running 1/2", "diagonal", "herringbone", …
	Joint  Value[unit.Length]
	Turned Value[bool] // the tile's length stands upright
	Up     Up          // two heights, or silent for the whole face
	Across Across
	To     Up                 // `to: 84 above floor`: a field that stops at a height
	Border Value[unit.Length] // a border: this far in from the outline of the face
	Pin    Pin
}

// Pin holds a layout where the person wants it: `pin: {across: 36 from A, up: 12 above floor}` names a joint crossing.
type Pin struct {
	Given  bool
	Across Across
	Up     Up
	At     diag.Place
}

// Climate is a place for temperatures that movement joints need.
type Climate struct {
	Exterior Value[bool]
	Sun      Value[bool]
	Range    Value[int64] // `yearly range: 115 F`: a difference, in thousandths of a kelvin
}
