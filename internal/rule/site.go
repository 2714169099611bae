package rule

import "dryfit/internal/unit"

// Site holds the requirements on the room itself: flatness, the floor's frame, soft joints, sills and what is in the wall.
// Sources are listed where they were read; a record marked "from memory" or "common practice" has none.
var Site = []Rule{
	FlatSmall10, FlatSmall12, FlatLarge10, FlatLarge24, LargeTile,
	DeflectCeramic, DeflectStone, StoneSubfloor,
	SoftJointLeast, SillFall, BuriedClear, CableDepth, FrameJoint, BedUsual, BedLeast, BedThinMost, TapeAccuracy, PlumbUsual,
}

// Flatness of what tile is set on. Quoted in tile-magazine.com/articles/89406 and fcimag.com/articles/91628.
var (
	FlatSmall10 = Rule{ID: "flat-small-10ft", What: "hollow under a 10 ft straightedge", Limit: unit.Inch / 4,
		Source: "ANSI A108.01/.02", Known: Quoted, Where: "all edges of the tile under 15 in"}
	FlatSmall12 = Rule{ID: "flat-small-12in", What: "hollow under a 12 in straightedge", Limit: unit.Inch / 16,
		Source: "ANSI A108.01/.02", Known: Quoted, Where: "all edges of the tile under 15 in"}
	FlatLarge10 = Rule{ID: "flat-large-10ft", What: "hollow under a 10 ft straightedge", Limit: unit.Inch / 8,
		Source: "ANSI A108.01/.02", Known: Quoted, Where: "any edge of the tile 15 in or longer"}
	FlatLarge24 = Rule{ID: "flat-large-24in", What: "hollow under a 24 in straightedge", Limit: unit.Inch / 16,
		Source: "ANSI A108.01/.02", Known: Quoted, Where: "any edge of the tile 15 in or longer"}
	LargeTile = Rule{ID: "large-tile", What: "edge from which a tile is large", Limit: 15 * unit.Inch,
		Source: "ANSI A108.01/.02", Known: Quoted, Where: "flatness"}
)

// The floor's frame: span over deflection.
var (
	DeflectCeramic = Rule{ID: "deflection-ceramic", What: "span over deflection of the floor's joists", Number: 360,
		Source: "TCNA Handbook", Known: FromMemory, Where: "ceramic, porcelain, glass and mosaic on a wood floor"}
	DeflectStone = Rule{ID: "deflection-stone", What: "span over deflection of the floor's joists", Number: 720,
		Source: "TCNA Handbook, Marble Institute of America", Known: FromMemory, Where: "natural stone on a wood floor"}
	StoneSubfloor = Rule{ID: "subfloor-stone", What: "layers of subfloor", Number: 2,
		Source: "TCNA Handbook, Marble Institute of America", Known: FromMemory, Where: "natural stone on a wood floor"}
)

// Joints, sills, beds and what is behind the tile.
var (
	SoftJointLeast = Rule{ID: "soft-joint-least", What: "least width of an interior movement joint", Limit: unit.Inch / 8,
		Source: "EJ171", Known: FromMemory, Where: "changes of plane and perimeters, indoors"}
	SillFall = Rule{ID: "sill-fall", What: "outward fall of a sill", Ratio: unit.One / 50,
		Known: Practice, Where: "sills of niches and windows"}
	BuriedClear = Rule{ID: "buried-clear", What: "clearance of a hole or screw from a recorded pipe or cable", Limit: 3 * unit.Inch / 2,
		Known: Practice, Where: "holes and screws that go into a wall"}
	CableDepth = Rule{ID: "cable-depth", What: "least depth of an unprotected cable behind the framing's face", Limit: 5 * unit.Inch / 4,
		Source: "NEC 300.4(A)(1), (D)", Known: FromMemory, Where: "cables through or along framing; nearer needs a nail plate"}
	FrameJoint = Rule{ID: "frame-joint", What: "joint between tile and a frame of other material", Limit: unit.Inch / 8,
		Source: "EJ171", Known: FromMemory, Where: "where tile abuts a restraining surface, indoors"}
	BedUsual = Rule{ID: "bed-usual", What: "mortar bed under a tile", Limit: 3 * unit.Inch / 16,
		Known: Practice, Where: "where the build-up names no bed"}
	BedLeast = Rule{ID: "bed-least", What: "least mortar over the high spots", Limit: unit.Inch / 8,
		Known: Practice, Where: "tile faces that are planes"}
	BedThinMost = Rule{ID: "bed-thin-most", What: "most mortar of a thin bed", Limit: unit.Inch / 4,
		Source: "a building estimating textbook: thin-set is 1/16 to 1/4 in", Known: Quoted, Where: "tile set in a thin bed"}
	TapeAccuracy = Rule{ID: "tape-accuracy", What: "one standard deviation of one tape reading", Limit: unit.Inch / 32,
		Known: Practice, Where: "tapes read to 1/16 in or 1 mm; the rounding alone is 0.018 in"}
	PlumbUsual = Rule{ID: "plumb-usual", What: "how far out of plumb a wall without a reading may be over its height", Limit: unit.Inch,
		Known: Practice, Where: "walls without an out-of-plumb reading"}
)

// flatness points of a straightedge: its length and the hollow allowed.
type flatPoint struct{ length, gap unit.Length }

// Straightedges are the two published lengths for a tile whose longest edge is known.
func Straightedges(longest unit.Length) (short, long unit.Length) {
	if longest >= LargeTile.Limit {
		return 24 * unit.Inch, 10 * unit.Foot
	}
	return 12 * unit.Inch, 10 * unit.Foot
}

// FlatLimit returns the hollow allowed under a straightedge of the given length for a tile whose longest edge is known, and
// the record behind it. Two lengths are published; between them the limit is drawn straight (our choice), outside them it
// is that of the nearer one.
func FlatLimit(longest, straightedge unit.Length) (unit.Length, Rule) {
	near, far := FlatSmall12, FlatSmall10
	if longest >= LargeTile.Limit {
		near, far = FlatLarge24, FlatLarge10
	}
	a, b := Straightedges(longest)
	short, long := flatPoint{a, near.Limit}, flatPoint{b, far.Limit}
	switch {
	case straightedge <= short.length:
		return short.gap, near
	case straightedge >= long.length:
		return long.gap, far
	}
	return short.gap + (long.gap-short.gap).MulDiv(int64(straightedge-short.length), int64(long.length-short.length)), far
}
