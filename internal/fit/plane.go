package fit

import (
	"cmp"
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// plane is the height of the ceiling at a place of the plan: of the plane through the three nearest corners that were read and do not stand in
// line. Rounded half up once.
func plane(corners []site.Corner, p geom.Point) (unit.Length, bool) {
	near := slices.DeleteFunc(slices.Clone(corners), func(c site.Corner) bool { return !c.CeilingKnown })
	slices.SortStableFunc(near, func(a, b site.Corner) int {
		return cmp.Compare(geom.Dist(a.Finished, p), geom.Dist(b.Finished, p))
	})
	for k := 2; k < len(near); k++ {
		if y, ok := through(near[0], near[1], near[k], p); ok {
			return y, true
		}
	}
	return 0, false
}

// through interpolates by the areas of the three triangles that p makes with the corners. Three corners nearly in line say nothing of what is
// beside them: less than a hundredth of the square of their distance.
func through(a, b, c site.Corner, p geom.Point) (unit.Length, bool) {
	whole := float64(geom.Cross(a.Finished, b.Finished, c.Finished))
	long := geom.Dist(a.Finished, b.Finished).MM() * float64(unit.Millimetre)
	if long == 0 || whole < 0 && -whole < long*long/100 || whole >= 0 && whole < long*long/100 {
		return 0, false
	}
	wa := float64(geom.Cross(p, b.Finished, c.Finished)) / whole
	wb := float64(geom.Cross(a.Finished, p, c.Finished)) / whole
	wc := float64(geom.Cross(a.Finished, b.Finished, p)) / whole
	return unit.FromFloat(float64(wa*float64(a.CeilingY)) + float64(wb*float64(b.CeilingY)) + float64(wc*float64(c.CeilingY))), true
}
