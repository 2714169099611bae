package wood

import "dryfit/internal/unit"

// Plywood source: APA pages that quote PS 1-19.
const PlywoodSource = "PS 1-19"

// Plywood returns the least and the greatest thickness that a sheet of a thickness category may have: 1/64 in either way up to
// 3/4 in and 3 % above where it is sanded, 1/32 in up to 13/16 in and 5 % above where it is not.
func Plywood(category unit.Length, sanded bool) (least, most unit.Length) {
	limit, small, share := 13*unit.Inch/16, unit.Inch/32, 5*Percent
	if sanded {
		limit, small, share = 3*unit.Inch/4, unit.Inch/64, 3*Percent
	}
	if category > limit {
		small = share.Of(category)
	}
	return category - small, category + small
}

// What a panel of plywood may lack in length and width, and its corners in squareness for each nominal foot of its length (PS 1-19).
const (
	PanelShort  = unit.Inch / 16
	PanelSquare = unit.Inch / 64
)
