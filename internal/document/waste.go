package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Waste is what leads from a basin to its stub-out in the wall.
type Waste struct {
	Name        string
	At          diag.Place
	From        Name               // the basin
	To          Name               // the stub-out
	Tail        Value[unit.Length] // from the inside bottom of the basin to the lower end of the tailpiece
	Thread      Value[unit.Length] // what its thread can clamp
	Washers     Value[unit.Length] // thickness of all washers together
	ForOverflow Value[bool]
	Trap        Trap
	Vent        Value[unit.Length] // along the pipe, from the face of the studs to the vent
	Fall        Value[unit.Ratio]
}

// Trap is the trap between tailpiece and wall.
type Trap struct {
	At    diag.Place
	Given bool
	Kind  Value[TrapKind]
	Size  Value[unit.Length] // nominal
	Seal  Value[unit.Length]
	Drop  Value[Span]        // from the end of the tailpiece down to the center of its outlet
	Weir  Value[unit.Length] // level, from the center of the tailpiece to the weir
	Reach Value[Span]        // level, from the center of the tailpiece to the wall that its tube can be cut to
	Below Value[unit.Length] // its lowest point under the center of its outlet
	Width Value[unit.Length] // across, about the center of the tailpiece
}

// TrapKind is the form of a trap.
type TrapKind uint8

const (
	PTrap TrapKind = iota
	BottleTrap
)

var waste = record("the waste of a basin, to its stub-out", func(w *Waste, at diag.Place) { w.At = at },
	part("from", "the basin", called("basin"), func(w *Waste) *Name { return &w.From }).must().like("bowl"),
	part("to", "the stub-out in the wall", called("stub-out"), func(w *Waste) *Name { return &w.To }).must().like("drain"),
	fact("tailpiece", "from the inside bottom of the basin to the lower end of the tailpiece", length(over), func(w *Waste) *Value[unit.Length] { return &w.Tail }).like("8-1/2"),
	fact("thread", "the thickness that its thread can clamp", length(over), func(w *Waste) *Value[unit.Length] { return &w.Thread }).like("45 mm"),
	fact("washers", "the thickness of all its washers together", length(within), func(w *Waste) *Value[unit.Length] { return &w.Washers }).like("6 mm"),
	fact("for overflow", "whether it is made for a basin with an overflow", yesNo, func(w *Waste) *Value[bool] { return &w.ForOverflow }).like("no"),
	part("trap", "the trap", trap, func(w *Waste) *Trap { return &w.Trap }).like("{kind: P, size: 1-1/4, seal: 2}"),
	fact("vent", "along the pipe, from the face of the studs to the vent", length(within), func(w *Waste) *Value[unit.Length] { return &w.Vent }).like("10"),
	fact("fall", "the fall of the arm from the trap to the vent", slope, func(w *Waste) *Value[unit.Ratio] { return &w.Fall }).unless("1/4 in a foot").like("1/48"),
)

var trap = record("a trap", func(t *Trap, at diag.Place) { t.At, t.Given = at, true },
	fact("kind", "its form", choice("P or bottle", word[TrapKind]{"P", PTrap}, word[TrapKind]{"bottle", BottleTrap}), func(t *Trap) *Value[TrapKind] { return &t.Kind }).like("P"),
	fact("size", "its nominal size", length(bore), func(t *Trap) *Value[unit.Length] { return &t.Size }).like("1-1/4"),
	fact("seal", "the depth of its water seal", length(over), func(t *Trap) *Value[unit.Length] { return &t.Seal }).like("2"),
	fact("drop", "from the end of the tailpiece down to the center of its outlet, and the range that it can be set in", lengthsForm, func(t *Trap) *Value[Span] { return &t.Drop }).like("1-1/2 to 4"),
	fact("weir", "level, from the center of the tailpiece to its weir", length(within), func(t *Trap) *Value[unit.Length] { return &t.Weir }).like("3"),
	fact("reach", "level, from the center of the tailpiece to the wall, and the range that its tube can be cut to", lengthsForm, func(t *Trap) *Value[Span] { return &t.Reach }).like("5 to 14"),
	fact("below", "how far its lowest point hangs under the center of its outlet", length(within), func(t *Trap) *Value[unit.Length] { return &t.Below }).like("3-1/2"),
	fact("width", "its width across", length(over), func(t *Trap) *Value[unit.Length] { return &t.Width }).like("3"),
)

// StopValve is a stop on a supply stub-out and what leads from it.
type StopValve struct {
	Name   string
	At     diag.Place
	On     Name        // the stub-out
	Serves Name        // a tap or a WC
	Takes  Value[Span] // pipe beyond the finished face that it takes
	Plate  Value[unit.Length]
	Stands Value[unit.Length] // how far it stands out of the finished face
	Outlet Value[unit.Length] // its outlet over the center of the pipe
	Hose   Value[unit.Length] // length of the flexible that it feeds
}

var stopValve = record("a stop valve", func(s *StopValve, at diag.Place) { s.At = at },
	part("on", "the stub-out that it stands on", called("stub-out"), func(s *StopValve) *Name { return &s.On }).must().like("cold"),
	part("serves", "the tap or the WC that it feeds", called("tap", "WC"), func(s *StopValve) *Name { return &s.Serves }).must().like("basin tap"),
	fact("takes", "the length of pipe beyond the finished face that it needs, and the range that it takes", lengthsForm, func(s *StopValve) *Value[Span] { return &s.Takes }).like("1 to 1-3/4"),
	fact("plate", "the diameter of its escutcheon", length(bore), func(s *StopValve) *Value[unit.Length] { return &s.Plate }).like("2-1/4"),
	fact("stands out", "how far it stands out of the finished face", length(over), func(s *StopValve) *Value[unit.Length] { return &s.Stands }).like("3"),
	fact("outlet", "its outlet over the center of the pipe", length(eachWay), func(s *StopValve) *Value[unit.Length] { return &s.Outlet }).like("1"),
	fact("hose", "the length of the flexible from its outlet", length(over), func(s *StopValve) *Value[unit.Length] { return &s.Hose }).unless("the tap has hoses of its own").like("16"),
)
