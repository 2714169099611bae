package geom

import "dryfit/internal/unit"

// band returns the band of the index that holds the ordinate y, the first or the last for one beyond the region.
func (ix *Index) band(y unit.Length) int {
	height := ix.bounds.H() + 1
	k := int((y - ix.bounds.Min.Y) * unit.Length(len(ix.bands)) / height)
	return max(0, min(k, len(ix.bands)-1))
}

// contains is Region.contains with the edges of one band: a ray to the right meets no others.
func (ix *Index) contains(p Point, scale unit.Length) int {
	if p.Y < scale*ix.bounds.Min.Y || p.Y > scale*ix.bounds.Max.Y {
		return -1
	}
	var c crossings
	for _, e := range ix.bands[ix.band(p.Y/scale)] {
		c.add(e.a, e.b, p, scale)
	}
	return c.verdict()
}
