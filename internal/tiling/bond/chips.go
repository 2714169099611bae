package bond

import "dryfit/internal/unit"

// Chips is the grid of square chips on a mosaic sheet: the first chip's corner is the sheet's.
type Chips struct {
	Size, Joint unit.Length
}

// Keep returns how many whole chips fit in a length of sheet, and what they measure: a cut along the chip joint. A
// length shorter than a chip gives zero.
func (c Chips) Keep(length unit.Length) (count int, measure unit.Length) {
	pitch := c.Size + c.Joint
	if pitch <= 0 || length < c.Size {
		return 0, 0
	}
	n := (length + c.Joint) / pitch
	return int(n), n*pitch - c.Joint
}

// Joints returns the middles of the chip joints on a side of the sheet, from its start.
func (c Chips) Joints(side unit.Length) []unit.Length {
	var out []unit.Length
	n, _ := c.Keep(side)
	for k := 1; k < n; k++ {
		out = append(out, unit.Length(k)*(c.Size+c.Joint)-c.Joint.MulDiv(1, 2))
	}
	return out
}
