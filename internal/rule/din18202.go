package rule

import "dryfit/internal/unit"

// DIN 18202 table 3, flatness in mm at spacings of measuring points; rows as printed in a trade handbook's table and
// quoted by others. Intermediate spacings are interpolated in a straight line and rounded to whole millimetres.
var din18202 = [7][5]int64{
	{10, 15, 20, 25, 30}, // unfinished slab tops
	{5, 8, 12, 15, 20},   // the same, raised requirement: to take floating screed or tile
	{2, 4, 10, 12, 15},   // finished floors, screed to take coverings
	{1, 3, 9, 12, 15},    // as 3, raised
	{5, 10, 15, 25, 30},  // unfinished walls and soffits
	{3, 5, 10, 20, 25},   // finished walls: plaster, linings
	{2, 3, 8, 15, 20},    // as 6, raised
}

var din18202Spacing = [5]unit.Length{unit.Metre / 10, unit.Metre, 4 * unit.Metre, 10 * unit.Metre, 15 * unit.Metre}

// DIN18202 returns the flatness tolerance of a row (1 to 7) at a spacing of measuring points: that of 0.1 m below it, that
// of 15 m beyond. ok is false for a row that the table does not have.
func DIN18202(row int, spacing unit.Length) (limit unit.Length, ok bool) {
	if row < 1 || row > len(din18202) {
		return 0, false
	}
	mm := din18202[row-1]
	if spacing <= din18202Spacing[0] {
		return unit.Length(mm[0]) * unit.Millimetre, true
	}
	for i := 1; i < len(mm); i++ {
		if lo, hi := din18202Spacing[i-1], din18202Spacing[i]; spacing <= hi {
			rise := unit.Length(mm[i]-mm[i-1]) * unit.Millimetre
			exact := unit.Length(mm[i-1])*unit.Millimetre + rise.MulDiv(int64(spacing-lo), int64(hi-lo))
			return exact.Round(unit.Millimetre), true
		}
	}
	return unit.Length(mm[len(mm)-1]) * unit.Millimetre, true
}
