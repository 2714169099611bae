package report

import (
	"dryfit/internal/geom"
	"dryfit/internal/site"
)

// TileOpening is an opening as tile leaves it: each side lies where the face's tile ends, which is off the board's edge by a joint, or beyond
// it where tile covers the edge of the board. A side without tile is the board's.
func TileOpening(f site.Face, o site.Opening) geom.Rect {
	out := o.Rect
	for _, r := range f.Cut {
		for i, v := range r {
			switch f.Edges[v.Edge-1].Name {
			case o.Name + ", left":
				out.Min.X = v.P.X
			case o.Name + ", bottom":
				out.Min.Y = v.P.Y
			case o.Name + ", right":
				out.Max.X = r[(i+1)%len(r)].P.X
			case o.Name + ", top":
				out.Max.Y = r[(i+1)%len(r)].P.Y
			}
		}
	}
	return out
}
