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
	Stock    []Stock
	Kits     []Kit
	Cabinets []Cabinet
	Tops     []Slab
	Scribes  []Scribe
	Trim     []Trim
	Finish   []Finish
	Climate  Climate
	Days     Days
	Goods    []Good // for setting and finishing, with what their labels say
	Buying   Buying

	Rules      Chosen // what it is held against
	Accessible Value[bool]
	Basins     []Basin
	Taps       []Tap
	Wastes     []Waste
	Stops      []StopValve
	WCs        []WC
	Fittings   []Fitting
	People     []Person
	Moves      []Move // `may move`
}
