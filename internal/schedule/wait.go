package schedule

import (
	"dryfit/internal/cure"
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// wait is what lies between two tasks: what a label says, or a typical figure that is told as one.
type wait struct {
	what    string // "the mortar hardens"
	subject string // what it hardens on: a wall, the floor, an opening, a thing
	label   cure.Label
	atKnown bool
	cement  bool
	source  string
	at      diag.Place
	warmth  *warmth // that the label allows
}

// warmth is a range of temperatures in which a good may be used.
type warmth struct {
	from, to unit.Temperature
	at       diag.Place
}

// room20 is the temperature that a cement product's time is taken at where nothing else is said: 20 °C (common practice).
const room20 = 20 * unit.Celsius

// typicals are times for goods whose labels are silent: all common practice, all printed as assumed.
var typicals = map[need]unit.Minutes{
	toGrout: 24 * unit.Hour, toHold: 12 * unit.Hour, toWalk: 24 * unit.Hour, toWalkGrout: 24 * unit.Hour, toClean: 24 * unit.Hour, toSeal: 72 * unit.Hour,
	toTile: 24 * unit.Hour, toFlood: 24 * unit.Hour, toPrimed: 2 * unit.Hour, toSealed: 4 * unit.Hour, toWet: 24 * unit.Hour,
	toUnclamp: 24 * unit.Hour, toRecoat: 24 * unit.Hour, toUse: 24 * unit.Hour, flooded: 24 * unit.Hour,
}

// need is what one waits for.
type need uint8

const (
	toGrout     need = iota // from setting to clips and grout
	toHold                  // from one day's courses to those above or below them
	toWalk                  // from setting a floor to walking on it
	toWalkGrout             // from grouting a floor to walking on it
	toClean                 // from grouting to taking the haze off
	toSeal                  // from grouting to sealing
	toTile                  // from membrane to tile
	toFlood                 // from membrane to water on it
	toPrimed                // from primer to what goes on it
	toSealed                // from sealing stone to grout
	toWet                   // from sealant to water
	toUnclamp               // a glue-up in its clamps
	toRecoat                // from coat to coat
	toUse                   // from the last coat to putting in
	flooded                 // water stands on a membrane
)

// needs are the words for a wait, and whether cement is what hardens.
var needs = map[need]struct {
	what   string
	cement bool
}{
	toGrout: {"the mortar hardens", true}, toHold: {"the courses get hold", true}, toWalk: {"nobody walks on the floor", true}, toWalkGrout: {"nobody walks on the floor", true},
	toClean: {"the grout sets", true}, toSeal: {"the grout cures", true}, toTile: {"the membrane dries", false},
	toFlood: {"the membrane cures", false}, toPrimed: {"the primer dries", false}, toSealed: {"the sealer dries", false},
	toWet: {"the sealant cures", false}, toUnclamp: {"the glue holds", false}, toRecoat: {"the coat dries", false}, toUse: {"the finish hardens", false},
	flooded: {"water stands on the membrane", false},
}

// waitFor is the wait that a subject's goods ask for.
func (m *maker) waitFor(n need, subject string) wait {
	w := wait{what: needs[n].what, subject: subject, cement: needs[n].cement, at: m.days.At}
	if m.labeled(n, subject, &w) {
		return w
	}
	w.label, w.source = cure.Label{Time: typicals[n], At: room20}, practice
	if n == flooded {
		return w
	}
	if w.cement {
		w.atKnown = true
		m.assume(m.days.At, practice, "{0} for {1} at {2}: a typical figure, the label of the good decides", diag.T(w.what), diag.Time(w.label.Time), diag.Temp(room20))
		return w
	}
	m.assume(m.days.At, practice, "{0} for {1}: a typical figure, the label of the good decides", diag.T(w.what), diag.Time(w.label.Time))
	return w
}
