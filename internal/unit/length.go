// Package unit holds exact quantities: lengths, areas, angles and how a person writes and reads them.
//
// A Length is a whole number of 1/16000 mm. On that grid 0.001 mm (16), 1 mm (16,000), 0.01 in (4,064),
// 1 in (406,400) and 1/128 in (3,175) are all whole, so metric and inch readings are both exact, add up
// exactly and print as they were typed. Nothing here rounds unless its name says so, and every rounding
// is floor(x + 1/2) (half up), so that the same reading gives the same mark everywhere.
package unit

import "math"

// Length counts 1/16000 mm. Exact conversions: 1 mm = 16000, 1 in = 406400 (1 in = 25.4 mm exactly).
type Length int64

const (
	Micrometre Length = 16
	Millimetre Length = 16_000
	Centimetre Length = 160_000
	Metre      Length = 16_000_000
	Inch       Length = 406_400
	Foot       Length = 12 * Inch
	Yard       Length = 3 * Foot
)

// Reach is the largest coordinate that the exact predicates of package geom accept: 2^29 counts, 33.5 m.
const Reach Length = 1 << 29

// MM returns the length in millimetres; for drawing and for solvers only.
func (l Length) MM() float64 { return float64(l) / float64(Millimetre) }

// In returns the length in inches; for drawing and for solvers only.
func (l Length) In() float64 { return float64(l) / float64(Inch) }

// FromMM rounds a computed number of millimetres to the grid, half up.
func FromMM(mm float64) Length { return Length(math.Floor(mm*float64(Millimetre) + 0.5)) }

// FromFloat rounds a computed number of counts to the grid, half up.
func FromFloat(counts float64) Length { return Length(math.Floor(counts + 0.5)) }

// Abs returns the length without its sign.
func (l Length) Abs() Length {
	if l < 0 {
		return -l
	}
	return l
}

// Round returns the nearest multiple of mark, half up. A mark of zero or less leaves the length as it is.
func (l Length) Round(mark Length) Length {
	if mark <= 0 {
		return l
	}
	return Length(floorDiv(2*int64(l)+int64(mark), 2*int64(mark))) * mark
}

// Floor returns the greatest multiple of mark that is not above the length: the way a cut is rounded to fit.
func (l Length) Floor(mark Length) Length {
	if mark <= 0 {
		return l
	}
	return Length(floorDiv(int64(l), int64(mark))) * mark
}

// Ceil returns the least multiple of mark that is not below the length.
func (l Length) Ceil(mark Length) Length { return -((-l).Floor(mark)) }

// MulDiv returns l*num/den rounded half up. den must be positive, and 2*l*num+den must fit in an int64: it does for
// every l within Reach and num up to 2^32.
func (l Length) MulDiv(num, den int64) Length {
	return Length(floorDiv(2*int64(l)*num+den, 2*den))
}

func floorDiv(a, b int64) int64 {
	q := a / b
	if a%b != 0 && (a < 0) != (b < 0) {
		q--
	}
	return q
}
