package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Leaf is the leaf of a door, and what the floor's build-up does to its bottom.
type Leaf struct {
	At        diag.Place
	Given     bool
	Hinge     Value[LeafHinge]
	Opens     Value[LeafWay]
	Width     Value[unit.Length] // silent: that of the opening
	Height    Value[unit.Length]
	Thick     Value[unit.Length]
	GapNow    Value[unit.Length] // under it, to the bare floor at the door
	GapWanted Value[unit.Length] // under it, to the finished floor
	Rise      Value[unit.Length] // the highest floor in its sweep over the floor at the door
	HallFloor Value[unit.Length] // the hall's finished floor over the bare floor here
	JambGap   Value[unit.Length] // under the jambs and casings, to the bare floor
	Handle    Value[unit.Length] // how far its handle stands off it
}

// LeafHinge is the side that a leaf hangs on, seen from within the room.
type LeafHinge uint8

const (
	HingeLeft LeafHinge = iota
	HingeRight
)

// LeafWay is the side that a leaf opens to.
type LeafWay uint8

const (
	OpensIn LeafWay = iota
	OpensOut
)

var leaf = record("the leaf of a door", func(l *Leaf, at diag.Place) { l.At, l.Given = at, true },
	fact("hinge", "the side that it hangs on, seen from within the room", choice("left or right", word[LeafHinge]{"left", HingeLeft}, word[LeafHinge]{"right", HingeRight}), func(l *Leaf) *Value[LeafHinge] { return &l.Hinge }).like("left"),
	fact("opens", "whether it opens into the room or out of it", choice("in or out", word[LeafWay]{"in", OpensIn}, word[LeafWay]{"out", OpensOut}), func(l *Leaf) *Value[LeafWay] { return &l.Opens }).like("in"),
	fact("width", "the width of the leaf", length(over), func(l *Leaf) *Value[unit.Length] { return &l.Width }).unless("that of the opening").like("30"),
	fact("height", "the height of the leaf", length(over), func(l *Leaf) *Value[unit.Length] { return &l.Height }).unless("that of the opening").like("80"),
	fact("thickness", "the thickness of the leaf", length(over), func(l *Leaf) *Value[unit.Length] { return &l.Thick }).like("1-3/8"),
	fact("gap now", "what is under it now, to the bare floor at the door", length(within), func(l *Leaf) *Value[unit.Length] { return &l.GapNow }).like("5/8"),
	fact("gap wanted", "what is wanted under it, to the finished floor", length(within), func(l *Leaf) *Value[unit.Length] { return &l.GapWanted }).like("3/8"),
	fact("rise", "how much higher than at the door the bare floor is anywhere in its sweep", length(within), func(l *Leaf) *Value[unit.Length] { return &l.Rise }).unless("as the readings of the floor along the door's wall say").like("1/8"),
	fact("hall floor", "the finished floor of the hall over the bare floor of the room", length(eachWay), func(l *Leaf) *Value[unit.Length] { return &l.HallFloor }).like("3/4"),
	fact("jamb gap", "what is under the jambs and casings now, to the bare floor", length(within), func(l *Leaf) *Value[unit.Length] { return &l.JambGap }).like("1/8"),
	fact("handle", "how far its handle stands off it", length(within), func(l *Leaf) *Value[unit.Length] { return &l.Handle }).like("2-1/4"),
)
