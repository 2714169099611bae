package lay

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// unbridged takes the hair-thin strips out of a part: what lies between a cut edge and the tile's side that it faces, where
// that is less than LeastWidth. Such a strip would hold the piece's ends together on the drawing and break at the saw;
// the cut goes through to the joint instead. It returns what is left, in parts, and the strips.
func unbridged(part geom.Region, tile geom.Rect) (left, strips []geom.Region) {
	var found []geom.Region
	for _, r := range part {
		for i, v := range r {
			if strip, ok := stripBeside(v, r[(i+1)%len(r)].P, tile); ok {
				found = append(found, geom.Region{geom.RectRing(strip, v.Edge, v.Edge, v.Edge, v.Edge)})
			}
		}
	}
	if len(found) == 0 {
		return []geom.Region{part}, nil
	}
	rest, err := part.Minus(found)
	if err != nil {
		return []geom.Region{part}, nil // the strip stays; it is no thinner than before
	}
	for _, f := range found {
		if s := part.ClipRect(f.Bounds(), [4]geom.Label{}); len(s) > 0 {
			strips = append(strips, s)
		}
	}
	return rest.Parts(), strips
}

// stripBeside is the rectangle between a cut edge a->b, whose region lies to its left, and the tile's side on that hand, if
// it is nowhere as wide as LeastWidth. The edge may lean a little: no room is square.
func stripBeside(a geom.Vertex, b geom.Point, tile geom.Rect) (geom.Rect, bool) {
	if a.Edge <= 0 {
		return geom.Rect{}, false
	}
	box := geom.Bound(a.P, b)
	along, up := b.X-a.P.X, b.Y-a.P.Y
	var width unit.Length
	switch level := along.Abs() > up.Abs(); {
	case level && along > 0:
		width, box.Max.Y = tile.Max.Y-box.Min.Y, tile.Max.Y
	case level:
		width, box.Min.Y = box.Max.Y-tile.Min.Y, tile.Min.Y
	case up > 0:
		width, box.Min.X = box.Max.X-tile.Min.X, tile.Min.X
	default:
		width, box.Max.X = tile.Max.X-box.Min.X, tile.Max.X
	}
	return box, width > 0 && width < LeastWidth
}
