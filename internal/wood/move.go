package wood

import (
	"math"

	"dryfit/internal/unit"
)

// Rings is how the growth rings meet a board's face: the angle between them and the face. Where it is not known, movement is a
// range from the least to the most that the species can do.
type Rings struct {
	Known bool
	Angle unit.Angle
}

// The two ways in which boards are named.
var (
	FlatSawn    = Rings{Known: true}
	QuarterSawn = Rings{Known: true, Angle: 90 * unit.Degree}
)

// Movement is a change of width: negative where the wood shrinks. Least and Most differ where the rings are not known; Most is the
// one of greater size.
type Movement struct {
	Least, Most unit.Length
	Equation    string // "13-2", or "13-3" where a moisture lies outside 6 to 14 %
}

// The range of moisture in which equation 13-2 holds, and the fiber saturation point, above which wood does not move.
const (
	leastLinear = 6 * Percent
	mostLinear  = 14 * Percent
	saturated   = 30 * Percent
)

// Move returns how much a width across the grain changes from one moisture to another: equations 13-2 and 13-3 of the Wood
// Handbook. Between flat-sawn and quarter-sawn the two coefficients are blended as strains turn: CT cos² + CR sin² of the ring
// angle (our own derivation; shear is left out).
func (s Species) Move(width unit.Length, rings Rings, from, to unit.Ratio) Movement {
	if !rings.Known {
		a, b := s.Move(width, FlatSawn, from, to), s.Move(width, QuarterSawn, from, to)
		if b.Most.Abs() > a.Most.Abs() {
			a, b = b, a
		}
		return Movement{Least: b.Most, Most: a.Most, Equation: a.Equation}
	}
	from, to = min(from, saturated), min(to, saturated)
	w := s.blend(rings.Angle)
	m := Movement{Equation: "13-2"}
	share := w.c * float64(to-from) / float64(Percent)
	if outside(from) || outside(to) {
		m.Equation = "13-3"
		share = float64(to-from) / float64(Percent) / (3000/w.s - 30 + float64(from)/float64(Percent))
	}
	m.Most = unit.FromFloat(float64(width) * share)
	m.Least = m.Most
	return m
}

func outside(m unit.Ratio) bool { return m < leastLinear || m > mostLinear }

func (s Species) blend(a unit.Angle) swelling {
	sin, cos := math.Sincos(a.Radians())
	r, t := s.radial(), s.tangential()
	mix := func(t, r float64) float64 { return t*cos*cos + r*sin*sin }
	return swelling{mix(t.c, r.c), mix(t.s, r.s)}
}

// Swing is how far a point may travel over the moistures of a house, from where it was when the work was made: In toward the line
// that is held fast, Out away from it. Neither is negative.
type Swing struct{ In, Out unit.Length }

// Swing reckons with the most that the species can do where the rings are not known. away is the distance from the fixed line.
func (s Species) Swing(away unit.Length, rings Rings, made, driest, wettest unit.Ratio) Swing {
	dry, wet := s.Move(away, rings, made, driest).Most, s.Move(away, rings, made, wettest).Most
	return Swing{In: max(0, -dry, -wet), Out: max(0, dry, wet)}
}

// Slot returns how long the slot for a screw must be in the part that moves, and how far its middle lies beyond the screw, seen
// from the fixed line (negative: nearer to it). A part that shrinks toward the line carries its slot along and leaves the screw at
// the slot's far end, so the slot reaches farther out by In and farther in by Out.
func (w Swing) Slot(screw unit.Length) (long, middle unit.Length) {
	return screw + w.In + w.Out, (w.In - w.Out) / 2
}

// GreenShrink returns the share by which softwood framing lumber is narrower and thinner at a moisture of 8 to 19 % than it was
// green (Green, FPL-RP-489, 1989).
func GreenShrink(m unit.Ratio) (width, thickness unit.Ratio) {
	line := func(start, slope int64) unit.Ratio { // thousandths of a percent, and of a percent for each percent
		return unit.Ratio(start*int64(Percent)/1000) - unit.Ratio(slope*int64(m)/1000)
	}
	return line(6031, 215), line(5062, 181)
}
