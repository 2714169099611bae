package unit

import "math"

// Area counts (1/16000 mm)². Within Reach every area fits in an int64 and is exact.
type Area int64

const (
	SquareMillimetre Area = Area(Millimetre) * Area(Millimetre)
	SquareInch       Area = Area(Inch) * Area(Inch)
	SquareFoot       Area = 144 * SquareInch
)

// Times returns the area of a rectangle, exactly.
func (l Length) Times(m Length) Area { return Area(int64(l) * int64(m)) }

// M2 returns the area in square metres; for rates and for drawing only.
func (a Area) M2() float64 { return float64(a) / (float64(Metre) * float64(Metre)) }

// SqFt returns the area in square feet.
func (a Area) SqFt() float64 { return float64(a) / float64(SquareFoot) }

// Volume counts cubic millimetres: a hundred-thousandth of a liter is finer than any bucket.
type Volume int64

// Liter is a cubic decimetre.
const Liter Volume = 1_000_000

// VolumeOf rounds a computed number of cubic millimetres, half up.
func VolumeOf(mm3 float64) Volume { return Volume(math.Floor(mm3 + 0.5)) }

// Angle counts millionths of a degree, counter-clockwise positive.
type Angle int64

// Degree is one degree.
const Degree Angle = 1_000_000

// AngleOf rounds a computed angle in radians, half up.
func AngleOf(radians float64) Angle {
	return Angle(math.Floor(radians*180/math.Pi*float64(Degree) + 0.5))
}

// Radians returns the angle for a solver.
func (a Angle) Radians() float64 { return float64(a) / float64(Degree) * math.Pi / 180 }

// Ratio counts millionths: a slope, a share, an offset of a bond.
type Ratio int64

// One is the ratio 1.
const One Ratio = 1_000_000

// Of returns the ratio's share of a length, rounded half up.
func (r Ratio) Of(l Length) Length { return l.MulDiv(int64(r), int64(One)) }
