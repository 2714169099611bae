package geom

import "dryfit/internal/unit"

// band returns the band of the index that holds the ordinate y, the first or the last for one beyond the region.
func (ix *Index) band(y unit.Length) int {
	height := ix.bounds.H() + 1
	k := int((y - ix.bounds.Min.Y) * unit.Length(len(ix.bands)) / height)
	return max(0, min(k, len(ix.bands)-1))
}

// contains2 is Region.contains2 with the edges of one band: a ray to the right meets no others.
func (ix *Index) contains2(p2 Point) int {
	odd := false
	y := p2.Y >> 1
	if y < ix.bounds.Min.Y || y > ix.bounds.Max.Y {
		return -1
	}
	for _, e := range ix.bands[ix.band(y)] {
		c := rayCrosses(e.a, e.b, p2)
		if c == 0 {
			return 0
		}
		odd = odd != (c > 0)
	}
	if odd {
		return 1
	}
	return -1
}
