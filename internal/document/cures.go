package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Cures is what a label says of waiting. The times count from the end of the work that used the good.
type Cures struct {
	At    diag.Place
	Given bool
	Class Value[CureClass]
	Temp  Value[unit.Temperature] // that the times are stated for
	Walk  Value[unit.Minutes]     // light traffic
	Tile  Value[unit.Minutes]     // of what is under tile: until tile can be set on it
	Flood Value[unit.Minutes]     // of a membrane: until water may stand on it
	Clips Value[unit.Minutes]     // of a mortar: until leveling clips come off
	Grout Value[unit.Minutes]
	Seal  Value[unit.Minutes] // of a grout: until it can be sealed
	Wet   Value[unit.Minutes] // until the face may get wet
	Clamp Value[unit.Minutes] // of a glue
	Sand  Value[unit.Minutes]
	Full  Value[unit.Minutes] // full use
	// Recoat is the window for the next coat. Later than its end the coat must be sanded first.
	Recoat Value[TimeSpan]
}

// CureClass is what a good hardens by. Only cement is slower in the cold by a published rule.
type CureClass uint8

const (
	CureCement CureClass = iota
	CureMembrane
	CureGlue
	CureVarnish
	CureSilicone
)

// TimeSpan is from when to when something can be done.
type TimeSpan struct{ From, To unit.Minutes }

// Warmth is a range of temperatures.
type Warmth struct{ From, To unit.Temperature }

// Class is what a good hardens by: what its label says, else what goes without saying of its kind; false where nothing does.
func (g Good) Class() (CureClass, bool) {
	if g.Cures.Class.Known {
		return g.Cures.Class.V, true
	}
	switch g.Kind {
	case Mortar, Leveler:
		return CureCement, true
	case Grout:
		return CureCement, !g.Grain.Known || g.Grain.V != ReadyMixed
	case Membrane, Primer:
		return CureMembrane, true
	case Adhesive:
		return CureGlue, true
	case WoodFinish, Paint:
		return CureVarnish, true
	case Sealant:
		return CureSilicone, true
	}
	return 0, false
}

var cures = record("how long it takes, as the label says", func(c *Cures, at diag.Place) { c.At, c.Given = at, true },
	fact("class", "what it hardens by; only cement is slower in the cold by a published rule", choice("cement, membrane, glue, varnish or silicone", word[CureClass]{"cement", CureCement}, word[CureClass]{"membrane", CureMembrane}, word[CureClass]{"glue", CureGlue}, word[CureClass]{"varnish", CureVarnish}, word[CureClass]{"silicone", CureSilicone}), func(c *Cures) *Value[CureClass] { return &c.Class }).unless("as its kind does").like("cement"),
	fact("at", "the temperature that the times are stated for", roomDegrees, func(c *Cures) *Value[unit.Temperature] { return &c.Temp }).like("70 F"),
	fact("walk", "until it can be walked on", duration, func(c *Cures) *Value[unit.Minutes] { return &c.Walk }).like("24 h"),
	fact("tile", "of what is under tile: until tile can be set on it", duration, func(c *Cures) *Value[unit.Minutes] { return &c.Tile }).like("4 h"),
	fact("flood", "of a membrane: until water may stand on it for a test", duration, func(c *Cures) *Value[unit.Minutes] { return &c.Flood }).like("24 h"),
	fact("clips", "of a mortar: until leveling clips can be knocked off", duration, func(c *Cures) *Value[unit.Minutes] { return &c.Clips }).like("24 h"),
	fact("grout", "of a mortar: until it can be grouted", duration, func(c *Cures) *Value[unit.Minutes] { return &c.Grout }).like("24 h"),
	fact("seal", "of a grout: until it can be sealed", duration, func(c *Cures) *Value[unit.Minutes] { return &c.Seal }).like("3 days"),
	fact("wet", "until it may get wet", duration, func(c *Cures) *Value[unit.Minutes] { return &c.Wet }).like("7 days"),
	fact("clamp", "of a glue: how long it stays in clamps", duration, func(c *Cures) *Value[unit.Minutes] { return &c.Clamp }).like("1 h"),
	fact("sand", "until it can be sanded", duration, func(c *Cures) *Value[unit.Minutes] { return &c.Sand }).like("6 h"),
	fact("full", "until full use", duration, func(c *Cures) *Value[unit.Minutes] { return &c.Full }).like("28 days"),
	fact("recoat", "the window for the next coat; after its end it must be sanded first", window, func(c *Cures) *Value[TimeSpan] { return &c.Recoat }).like("4 to 24 h"),
)
