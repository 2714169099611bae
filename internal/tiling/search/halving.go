package search

import "dryfit/internal/geom"

// relation is how an edge of the region lies to a convex tile.
type relation uint8

const (
	beside  relation = iota // it does not cut the tile
	through                 // it runs right across
	unclear                 // it ends in or beside the tile: look closer
)

// crosses is exact: it asks on which side of the edge's line the corners lie, and whether all of them lie beside the
// edge and not beyond its ends.
func crosses(tile geom.Ring, a, b geom.Point) relation {
	left, right, beyond := false, false, false
	d := b.Sub(a)
	long := int64(d.X)*int64(d.X) + int64(d.Y)*int64(d.Y)
	before, after := true, true
	for _, v := range tile {
		switch s := geom.Side(a, b, v.P); {
		case s > 0:
			left = true
		case s < 0:
			right = true
		}
		e := v.P.Sub(a)
		along := int64(d.X)*int64(e.X) + int64(d.Y)*int64(e.Y)
		beyond = beyond || along <= 0 || along >= long
		before, after = before && along < 0, after && along > long
	}
	switch {
	case !left || !right || before || after:
		return beside
	case beyond:
		return unclear
	}
	return through
}

// halved is the part of a convex tile to the left of an edge that runs right across it. Crossings are rounded once.
func halved(tile geom.Ring, s side) part {
	var ring geom.Ring
	for i, v := range tile {
		w := tile[(i+1)%len(tile)]
		p, q := geom.Cross(s.a, s.b, v.P), geom.Cross(s.a, s.b, w.P)
		if p >= 0 {
			ring = append(ring, v)
		}
		if p > 0 && q < 0 || p < 0 && q > 0 {
			x, _ := geom.Intersect(s.a, s.b, v.P, w.P)
			ring = append(ring, geom.Vertex{P: x})
		}
	}
	return part{ring.Bounds(), ring.Area2(), s.about}
}
