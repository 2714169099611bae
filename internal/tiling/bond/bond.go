// Package bond holds bonds as data: prototiles and two lattice vectors. A new bond is a row of the table.
//
// It takes the real sizes of the goods and the joint, and gives a Bond whose tiles are exact whole-number
// rectangles (or hexagons) in the pattern frame, with addresses; or a finding that says with which joint the
// bond would close. Rotation of the pattern against the face is the frame's affair and not the tiles'.
package bond

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Goods is what a bond is made of, after a dry lay has corrected the label.
type Goods struct {
	Sizes []Size // one, or the sizes of a modular set in the document's order
	Joint unit.Length
	Hex   bool
	// Upright: the tile's length stands upright in the pattern.
	Upright bool
	// Chips, of mosaic sheets; nil for plain tile.
	Chips *Chips
}

// Size is one factory size. For a hexagon Width is across the flats and Length across the corners; a Length that is
// not more than Width is taken as "not told" and follows from a regular hexagon.
type Size struct {
	Name          string
	Length, Width unit.Length
}

// Proto is one tile of the unit cell: a factory size, turned by quarter turns, its lower left corner at At.
type Proto struct {
	Size int // index into Goods.Sizes
	Turn geom.Turn
	At   geom.Point
	W, H unit.Length // as it lies in the pattern
	Ring geom.Ring   // outline as it lies, from the lower left corner of its bounds; nil for a rectangle
	// Course and Column are added to the lattice address, so that numbers run as a setter counts.
	Course, Column int
}

// Bond is a pattern over the whole plane: every proto repeated by all whole multiples of U and V.
type Bond struct {
	Name    string // as a person writes it: "running 1/3"
	U, V    geom.Point
	Protos  []Proto
	Joint   unit.Length
	Angle   unit.Angle // of the pattern frame against the face: 0, or 45 degrees for diagonals
	Axis    bool       // straight courses with all joints parallel to the frame's axes: the exact search applies at Angle 0
	Courses bool       // has straight courses
	// CourseBy and ColumnBy say what one step along U and along V adds to an address. Addresses are unique.
	CourseBy, ColumnBy [2]int
	// For axis bonds: column pitch and course pitch and the shift of each course (a cycle).
	Pitch    geom.Point
	Shifts   []unit.Length
	Vertical bool // shifts run along y by column instead
	// Chips of the sheet, for cuts along chip joints; nil for plain tile.
	Chips *Chips
}
