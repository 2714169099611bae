package rule

import "dryfit/internal/unit"

const in = unit.Inch

// Joints and bonds of tile.
var (
	JointVariation = Rule{ID: "joint-variation", What: "grout joint at least three times the tile's variation in size",
		Number: 3, Source: "ANSI A108.02", Clause: "4.3.8", Known: Quoted}
	JointLeast = Rule{ID: "joint-least", What: "grout joint never below",
		Limit: in / 16, Source: "ANSI A108.02", Clause: "4.3.8", Known: Quoted}
	LargeSide = Rule{ID: "large-side", What: "a side over this makes a large tile",
		Limit: 15 * in, Source: "ANSI A108.02", Clause: "4.3.8.1", Known: Quoted}
	OffsetJointRectified = Rule{ID: "offset-joint-rectified", What: "joint of an offset bond with large rectified tile, plus the edge warpage",
		Limit: in / 8, Source: "ANSI A108.02", Clause: "4.3.8.1", Known: Quoted}
	OffsetJointCalibrated = Rule{ID: "offset-joint-calibrated", What: "joint of an offset bond with large calibrated tile, plus the edge warpage",
		Limit: 3 * in / 16, Source: "ANSI A108.02", Clause: "4.3.8.1", Known: Quoted}
	OffsetMost = Rule{ID: "offset-most", What: "offset of a running bond with a large side at most",
		Ratio: 333_334, Source: "ANSI A108.02", Clause: "4.3.8.2", Known: Quoted}
	LippageNarrow = Rule{ID: "lippage-narrow", What: "lippage at joints under 1/4 in, plus the tile's warpage",
		Limit: in / 32, Source: "ANSI A108.02", Clause: "4.3.7", Known: Quoted}
	LippageWide = Rule{ID: "lippage-wide", What: "lippage at joints of 1/4 in and more, plus the tile's warpage",
		Limit: in / 16, Source: "ANSI A108.02", Clause: "4.3.7", Known: Quoted}
	LippageStone = Rule{ID: "lippage-stone", What: "lippage of natural stone",
		Limit: in / 32, Source: "stone trade association, as quoted in the tile trade press", Known: Quoted}
	HalfTile = Rule{ID: "half-tile", What: "no cut smaller than half a tile where it can be avoided",
		Ratio: unit.One / 2, Source: "ANSI A108.02", Clause: "4.3.2", Known: FromMemory}
	LeastStrip = Rule{ID: "least-strip", What: "the narrowest strip that snaps cleanly",
		Limit: in / 2, Known: Practice}
	EdgeOfHole = Rule{ID: "hole-edge", What: "least tile between a hole's rim and the tile's edge",
		Limit: 10 * unit.Millimetre, Known: Practice}
)

// Tile holds the requirements on joints and bonds of tile.
var Tile = []Rule{JointVariation, JointLeast, LargeSide, OffsetJointRectified, OffsetJointCalibrated, OffsetMost, LippageNarrow, LippageWide,
	LippageStone, HalfTile, LeastStrip, EdgeOfHole, MovementInside, MovementSun, MovementOutside8, MovementOutside12, MovementRange, MovementPerimeter}

// WideJoint is where the lippage allowance changes.
const WideJoint = in / 4

// Movement joints in the field.
var (
	MovementInside = Rule{ID: "movement-inside", What: "movement joints inside at most this far apart each way",
		Limit: 25 * unit.Foot, Source: "TCNA Handbook EJ171", Known: Quoted}
	MovementSun = Rule{ID: "movement-sun", What: "movement joints with sun or moisture, or outside, at most this far apart",
		Limit: 12 * unit.Foot, Source: "TCNA Handbook EJ171", Known: Quoted}
	MovementOutside8 = Rule{ID: "movement-width-8", What: "width of outside movement joints 8 ft apart",
		Limit: 3 * in / 8, Source: "TCNA Handbook EJ171", Known: Quoted}
	MovementOutside12 = Rule{ID: "movement-width-12", What: "width of outside movement joints 12 ft apart",
		Limit: in / 2, Source: "TCNA Handbook EJ171", Known: Quoted}
	MovementRange = Rule{ID: "movement-range", What: "added to the width for every 15 °F of yearly range above 100 °F",
		Limit: in / 16, Source: "TCNA Handbook EJ171", Known: Quoted}
)

// JointFor returns the least grout joint for a tile's variation in size: 1/16 in of variation asks for 3/16 in.
func JointFor(variation unit.Length) unit.Length {
	return max(JointLeast.Limit, variation*unit.Length(JointVariation.Number))
}

// OffsetJoint returns the least joint of an offset bond with a side over 15 in.
func OffsetJoint(rectified bool, warpage unit.Length) (unit.Length, Rule) {
	if rectified {
		return OffsetJointRectified.Limit + warpage, OffsetJointRectified
	}
	return OffsetJointCalibrated.Limit + warpage, OffsetJointCalibrated
}

// Lippage returns the allowed step between neighbors.
func Lippage(joint, warpage unit.Length, stone bool) (unit.Length, Rule) {
	switch {
	case stone:
		return LippageStone.Limit, LippageStone
	case joint < WideJoint:
		return LippageNarrow.Limit + warpage, LippageNarrow
	}
	return LippageWide.Limit + warpage, LippageWide
}

// MovementWidth returns the width of an outside movement joint at 8 or 12 ft, for a yearly range of temperature in
// Fahrenheit degrees; each begun 15 degrees above 100 adds 1/16 in.
func MovementWidth(twelveFeet bool, rangeF int) unit.Length {
	w := MovementOutside8.Limit
	if twelveFeet {
		w = MovementOutside12.Limit
	}
	if over := rangeF - 100; over > 0 {
		w += unit.Length((over+14)/15) * MovementRange.Limit
	}
	return w
}

// MovementPerimeter asks for a soft joint at every change of plane and round every tiled face.
var MovementPerimeter = Rule{ID: "movement-perimeter", What: "movement joint at all inside corners and perimeters",
	Source: "TCNA Handbook EJ171", Known: Quoted}
