package geom

import "dryfit/internal/unit"

// Neck returns the narrowest inner width.
func (g Region) Neck() unit.Length {
	b := g.Bounds()
	return min(b.W(), b.H())
}
