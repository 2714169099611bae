package document

import (
	"math/big"
	"strings"

	"dryfit/internal/unit"
)

// FlowRange is two flows, the lower first.
type FlowRange struct{ Lo, Hi unit.Flow }

// Counts of a flow's unit; a liter a second is 60 liters a minute.
var flowUnits = []word[unit.Flow]{
	{"gpm", unit.GallonMinute}, {"cfm", unit.CubicFtMinute}, {"L/min", unit.LiterMinute}, {"l/min", unit.LiterMinute}, {"L/s", unit.LiterSecond}, {"l/s", unit.LiterSecond},
}

const (
	flowSay     = "a flow: 1.5 gpm, 5.7 L/min, 80 cfm or 15 L/s"
	flowPattern = `^[0-9]+(\.[0-9]+)?( +to +[0-9]+(\.[0-9]+)?)?\s*(gpm|cfm|[Ll]/min|[Ll]/s)$`
)

// flows reads one flow or two with "to" between: `0.8 to 1.5 gpm`.
var flows = scalar(flowSay+"; or two with to between", flowPattern, func(s string) (FlowRange, string) {
	for _, u := range flowUnits {
		number, ok := strings.CutSuffix(s, u.text)
		if !ok {
			continue
		}
		a, b, two := strings.Cut(number, " to ")
		lo, ok := flowOf(a, u.is)
		hi := lo
		if two {
			var read bool
			hi, read = flowOf(b, u.is)
			ok = ok && read
		}
		if !ok {
			return FlowRange{}, "not a number and a unit"
		}
		return FlowRange{min(lo, hi), max(lo, hi)}, ""
	}
	return FlowRange{}, "no unit of flow"
})

func flowOf(number string, one unit.Flow) (unit.Flow, bool) {
	v, ok := rational(strings.TrimSpace(number))
	if !ok || v.Sign() == 0 {
		return 0, false
	}
	n, fits := whole(v.Mul(v, big.NewRat(int64(one), 1)))
	return unit.Flow(n), fits && unit.Flow(n) <= unit.MostFlow
}

// tilt reads an angle in degrees.
var tilt = scalar("an angle in degrees: 20", `^[0-9]+(\.[0-9]+)?\s*°?$`, func(s string) (unit.Angle, string) {
	v, ok := rational(strings.TrimSpace(strings.TrimSuffix(s, "°")))
	if !ok || v.Cmp(big.NewRat(90, 1)) > 0 {
		return 0, "no angle of 0 to 90 degrees"
	}
	n, _ := whole(v.Mul(v, big.NewRat(int64(unit.Degree), 1)))
	return unit.Angle(n), ""
})

// weight reads a weight in grams. 1 lb = 453.59237 g exactly.
var weight = measured("a weight: 95 lb or 43 kg", `^`+decimalPattern+`\s*(lb|kg)$`, big.NewRat(2_000_000, 1),
	word[*big.Rat]{"lb", big.NewRat(45_359_237, 100_000)}, word[*big.Rat]{"kg", big.NewRat(1000, 1)})
