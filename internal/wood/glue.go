package wood

import (
	"math"

	"dryfit/internal/unit"
)

// Pressing is what glue joints want: from memory of the Wood Handbook, chapter 10, 700 kPa for light woods to 1700 kPa for dense.
const (
	PressLight int64 = 700_000 // pascals
	PressDense int64 = 1_700_000
)

// White and yellow wood glue (common practice): minutes that it may stay open, minutes in the clamps at 70 °F, hours to full
// strength, and the coldest that it may be used at. A bottle's own label goes before these.
const (
	GlueOpenLeast, GlueOpenMost   = 5, 10
	GlueClampLeast, GlueClampMost = 30, 60
	GlueFullHours                 = 24
	GlueColdest                   = 50 // °F
)

// Force returns the newtons that press an area, rounded up.
func Force(area unit.Area, pascals int64) int64 {
	return int64(math.Ceil(area.M2() * float64(pascals)))
}

// Clamps is a row of clamps along a joint.
type Clamps struct {
	Count   int
	First   unit.Length // from the end of the joint to the first
	Spacing unit.Length // from one to the next; 0 where there is one
}

// ClampRow spaces clamps along a joint. Pressure spreads at 45° through the stave that the clamp stands against, so one clamp
// serves twice that stave's width (common practice); all serve the same length, the ends half.
func ClampRow(length, stave unit.Length) Clamps {
	reach := 2 * stave
	if length <= 0 || reach <= 0 {
		return Clamps{}
	}
	n := (length + reach - 1) / reach
	c := Clamps{Count: int(n), First: length.MulDiv(1, 2*int64(n))}
	if n > 1 {
		c.Spacing = length.MulDiv(1, int64(n))
	}
	return c
}
