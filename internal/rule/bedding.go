package rule

import "dryfit/internal/unit"

// Bedding holds the requirements on the work of setting: contact with the mortar, what a background carries, what a person lifts.
var Bedding = []Rule{CoverDry, CoverWet, CoverStone, PlasterCarries, GypsumCarries, PlywoodCarries, SolidBed, SolidBedArea, BackButter,
	GroutGrain, ReadyMixedJoint, BeadLeast, BeadMost, FixtureSealed, LiftMost}

// Contact of the tile's back with the mortar, as a share of its area. Quoted in tileletter 2018-02 p. 46 and 2017-01 p. 78.
var (
	CoverDry = Rule{ID: "cover-dry", What: "average contact of mortar and tile in a dry place", Ratio: 800_000,
		Source: "TCNA Handbook, ANSI A108", Known: Quoted, Where: "indoors, dry"}
	CoverWet = Rule{ID: "cover-wet", What: "average contact of mortar and tile in a wet place or outdoors", Ratio: 950_000,
		Source: "TCNA Handbook, ANSI A108", Known: Quoted, Where: "showers, wet areas, outdoors"}
	CoverStone = Rule{ID: "cover-stone", What: "average contact of mortar and natural stone", Ratio: 950_000,
		Source: "TCNA Handbook", Known: FromMemory, Where: "natural stone"}
	BackButter = Rule{ID: "back-butter", What: "a skim of mortar on the back of the tile too", Limit: 15 * unit.Inch,
		Known: Practice, Where: "an edge over this, natural stone, wet places"}
)

// What a background carries, in kilograms for a square metre, and when tile is bedded solid. The trade press of
// 23 July 2018 quotes BS 5385-1:2018 with 20 and 30 kg/m²; the 32 of board without skim is from memory.
var (
	PlasterCarries = Rule{ID: "plaster-carries", What: "weight of tiling on gypsum plaster, kg/m²", Number: 20, Unit: "kg/m²",
		Source: "BS 5385-1:2018", Known: Quoted, Where: "gypsum plaster, skimmed board"}
	GypsumCarries = Rule{ID: "gypsum-carries", What: "weight of tiling on gypsum board without skim, kg/m²", Number: 32, Unit: "kg/m²",
		Source: "BS 5385-1:2018", Known: FromMemory, Where: "gypsum board"}
	PlywoodCarries = Rule{ID: "plywood-carries", What: "weight of tiling on plywood, kg/m²; as a direct background it was withdrawn", Number: 30, Unit: "kg/m²",
		Source: "BS 5385-1:2018", Known: Quoted, Where: "plywood"}
	SolidBed = Rule{ID: "solid-bed", What: "share of what the background carries from where on small tile is bedded solid", Ratio: 700_000,
		Source: "BS 5385-1:2018", Known: Quoted, Where: "tile with a face under 0.1 m²"}
	SolidBedArea = Rule{ID: "solid-bed-area", What: "face of a tile under which the rule of the solid bed holds", Area: unit.Metre.Times(unit.Metre) / 10, Source: "BS 5385-1:2018", Known: Quoted, Where: "tile"}
)

// Grout and sealant.
var (
	GroutGrain = Rule{ID: "grout-grain", What: "sanded grout from this joint on, unsanded up to it; at exactly this both are possible", Limit: unit.Inch / 8,
		Known: Practice, Where: "cement grout"}
	ReadyMixedJoint = Rule{ID: "ready-mixed-joint", What: "widest joint for ready-mixed grout; its narrowest is 1/16 in", Limit: unit.Inch / 2,
		Known: Practice, Where: "ready-mixed grout"}
	BeadLeast = Rule{ID: "bead-least", What: "least depth of a sealant bead", Limit: unit.Inch / 4,
		Source: "ASTM C1193", Known: FromMemory, Where: "joints of sealant"}
	BeadMost = Rule{ID: "bead-most", What: "greatest depth of a sealant bead", Limit: unit.Inch / 2,
		Source: "ASTM C1193", Known: FromMemory, Where: "joints of sealant"}
	FixtureSealed = Rule{ID: "fixture-sealed", What: "a joint where a fixture meets a wall or a floor is made watertight",
		Source: "IPC 405.5", Known: FromMemory, Where: "basins, WCs, tops"}
)

// LiftMost is the load constant of the NIOSH lifting equation, in kilograms: what most people may lift in the best posture.
var LiftMost = Rule{ID: "lift-most", What: "load that one person lifts close to the body, at hip height and without turning, kg", Number: 23, Unit: "kg",
	Source: "NIOSH lifting equation, load constant", Known: Quoted, Where: "boxes, bags and sheets"}

// Grains reports which cement grouts suit a joint. Sand scratches polished faces and glass, whatever the joint.
func Grains(joint unit.Length) (unsanded, sanded bool) {
	return joint <= GroutGrain.Limit, joint >= GroutGrain.Limit
}

// BeadDepth is how deep a bead of sealant is filled: as deep as it is wide, within the limits of C1193, and never deeper than the
// joint itself.
func BeadDepth(width, deep unit.Length) unit.Length {
	return min(max(width, BeadLeast.Limit), BeadMost.Limit, deep)
}
