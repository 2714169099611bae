package tiling

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// handy moves an origin by whole steps of the pattern to where a person can mark it: within the field, as near to its
// middle as can be. The layout stays the same. Where no step lies within the field, or the person named the place, the
// origin stays.
func (g *ground) handy(origin geom.Point) geom.Point {
	if g.field.Pin.Given {
		return origin
	}
	box := g.region.Bounds()
	middle := geom.Point{X: box.Min.X + box.W()/2, Y: box.Min.Y + box.H()/2}
	u, v := g.bond.U, g.bond.V
	near := origin.Add(steps(middle.Sub(origin), u, v))
	reach := int((box.W()+box.H())/max(1, min(size(u), size(v)))) + 1
	best, found := origin, unit.Length(-1)
	for k := -reach; k <= reach; k++ {
		for l := -reach; l <= reach; l++ {
			p := near.Add(times(u, k)).Add(times(v, l))
			if p.X < box.Min.X || p.X > box.Max.X || p.Y < box.Min.Y || p.Y > box.Max.Y {
				continue
			}
			if d := geom.Dist(p, middle); (found < 0 || d < found) && g.region.Contains(p) > 0 {
				best, found = p, d
			}
		}
	}
	return best
}

// steps is the whole combination of u and v that comes near to d.
func steps(d, u, v geom.Point) geom.Point {
	det := int64(u.X)*int64(v.Y) - int64(u.Y)*int64(v.X)
	if det == 0 {
		return geom.Point{}
	}
	k := (int64(d.X)*int64(v.Y) - int64(d.Y)*int64(v.X)) / det
	l := (int64(u.X)*int64(d.Y) - int64(u.Y)*int64(d.X)) / det
	return times(u, int(k)).Add(times(v, int(l)))
}

func times(p geom.Point, n int) geom.Point {
	return geom.Point{X: p.X * unit.Length(n), Y: p.Y * unit.Length(n)}
}

func size(p geom.Point) unit.Length { return max(p.X.Abs(), p.Y.Abs()) }
