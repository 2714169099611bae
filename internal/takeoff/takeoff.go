// Package takeoff says how much of everything the plan takes: mortar, grout, sealer, sealant, spacers, clips, board,
// membrane, bits; and what all of it weighs, on the walls, in a stack and in the hand.
//
// It takes the document, the solved room and the tile plan, and gives lines, each with what it was reckoned from and the
// source of every figure that is no label's. Quantities come from the pieces and joints that the plan has, never from a
// formula over an area. A figure that is missing leaves its line "not reckoned"; a typical figure is told as typical.
// Amounts are whole counts, rounded up where something is bought; floats stay inside and are rounded once, half up.
package takeoff

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// Plan is all that is needed.
type Plan struct {
	Lines   []Line   `json:"lines"`
	Faces   []Face   `json:"faces"`
	Pieces  []Piece  `json:"pieces"`
	Recipes []Recipe `json:"recipes"`
	Stack   Stack    `json:"stack"`
}

// Line is one good, or one kind where the document names no good, with how much of it is needed.
type Line struct {
	Kind      document.GoodKind `json:"kind"`
	What      string            `json:"what"`           // "mortar", "core bit 1-3/8 in"
	Good      string            `json:"good,omitempty"` // in the document; "" where none is named
	InsteadOf string            `json:"insteadOf,omitempty"`
	At        diag.Place        `json:"at"`
	Parts     []Part            `json:"parts"`
	// Need is what has to be had, waste included, in what it is sold by; valid if Known.
	Need  unit.Quantity `json:"need"`
	Known bool          `json:"known"`
	// Missing says in words which figures a line that is not known lacks.
	Missing string     `json:"missing,omitempty"`
	Waste   unit.Ratio `json:"waste"`
	// Typical: a figure that no label gave is in it; Source tells which.
	Typical bool   `json:"typical"`
	Source  string `json:"source"`
	// Back: it comes back after use: caps, wedges, spacers.
	Back bool `json:"back"`
}

// Part is one share of a line: what it is for, the amount measured on the plan and the amount of the good that takes.
type Part struct {
	Face   string        `json:"face,omitempty"`
	For    string        `json:"for"` // "bed", "joints", "corner A with window wall"
	Amount unit.Quantity `json:"amount"`
	Takes  unit.Quantity `json:"takes"`
	Known  bool          `json:"known"`
}

// Face is what setting one face takes.
type Face struct {
	Name     string          `json:"name"`
	Mortar   string          `json:"mortar,omitempty"` // the good; "" where none is named
	Grout    string          `json:"grout,omitempty"`
	Trowel   document.Trowel `json:"trowel"`
	Proposed bool            `json:"proposed"` // the trowel is proposed; else it is the person's own
	Butter   bool            `json:"butter"`   // back-butter
	Comb     unit.Length     `json:"comb"`     // mean thickness that the trowel leaves
	Skim     unit.Length     `json:"skim"`
	Area     unit.Area       `json:"area"` // of tile, joints not counted
	Hollow   unit.Volume     `json:"hollow"`
	Bed      unit.Volume     `json:"bed"` // all mortar: comb, skim and hollows
	// Contact is what share of a tile's back the mortar reaches, at most 1; ContactLeast what is asked for.
	Contact      unit.Ratio  `json:"contact"`
	ContactKnown bool        `json:"contactKnown"`
	ContactLeast unit.Ratio  `json:"contactLeast"`
	Joints       unit.Volume `json:"joints"`     // of grout
	JointsArea   unit.Area   `json:"jointsArea"` // seen from in front
	Crosses      int         `json:"crosses"`
	Tees         int         `json:"tees"`
	Straights    int         `json:"straights"`
	Clips        int         `json:"clips"`
	Weight       Weight      `json:"weight"`
}

// Piece is what setting one piece takes, so that a day's batches can be formed.
type Piece struct {
	Face    string      `json:"face"`
	Address string      `json:"address"`
	Area    unit.Area   `json:"area"`
	Mortar  unit.Volume `json:"mortar"` // its share of the bed, waste not counted
	Clips   int         `json:"clips"`  // on its edges to pieces that are set before it
}

// Recipe is how a powder is mixed.
type Recipe struct {
	Good       string            `json:"good"` // "" where none is named
	Kind       document.GoodKind `json:"kind"`
	Dry        unit.Rate         `json:"dry"` // weight of powder for a volume in place
	Typical    bool              `json:"typical"`
	Source     string            `json:"source"`
	Water      unit.Rate         `json:"water"` // a volume for a weight; valid if WaterKnown
	WaterKnown bool              `json:"waterKnown"`
	PotLife    unit.Minutes      `json:"potLife"`  // 0: not known
	OpenTime   unit.Minutes      `json:"openTime"` // 0: not known
	Slake      unit.Minutes      `json:"slake"`    // 0: not known
}

// Batch is what to weigh in for a volume of bed or joint, waste not counted.
type Batch struct {
	Powder     unit.Mass   `json:"powder"`
	Water      unit.Volume `json:"water"`
	WaterMass  unit.Mass   `json:"waterMass"` // a liter of it weighs a kilogram
	WaterKnown bool        `json:"waterKnown"`
}

// Batch mixes enough for a volume.
func (r Recipe) Batch(v unit.Volume) Batch {
	powder, _ := r.Dry.For(unit.Fills(v))
	b := Batch{Powder: unit.Mass(powder.N)}
	if water, ok := r.Water.For(powder); ok && r.WaterKnown {
		b.Water, b.WaterKnown = unit.Volume(water.N), true
		b.WaterMass = unit.Mass(water.N) * (unit.Kilogram / unit.Mass(unit.Liter))
	}
	return b
}

// Recipe returns how the powder for a face is mixed.
func (p Plan) Recipe(kind document.GoodKind, good string) (Recipe, bool) {
	for _, r := range p.Recipes {
		if r.Kind == kind && r.Good == good {
			return r, true
		}
	}
	return Recipe{}, false
}

// Face returns the face of that name.
func (p Plan) Face(name string) (Face, bool) {
	for _, f := range p.Faces {
		if f.Name == name {
			return f, true
		}
	}
	return Face{}, false
}
