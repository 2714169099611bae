package joinery

import (
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// ground tells how high the finished floor is before a wall, from the level line. It was read at the corners; between them it is taken
// straight, along the walls and out into the room.
type ground struct {
	left, right       unit.Length // finished floor at the ends of the wall
	leftFar, rightFar unit.Length // and at the far ends of its neighbors
	long              unit.Length
	leftLong          unit.Length
	rightLong         unit.Length
}

// groundBefore finds the floor before a wall. It is false where a level there was not read.
func (r *room) groundBefore(f site.Face) (ground, bool) {
	floor, ok := r.shape.Face("floor")
	if !ok {
		return ground{}, false
	}
	all := r.shape.Survey.Corners
	n := len(all)
	i := cornerIndex(all, f.LeftCorner)
	if i < 0 || all[(i+1)%n].Name != f.RightCorner {
		return ground{}, false
	}
	c := [4]site.Corner{all[(i+n-1)%n], all[i], all[(i+1)%n], all[(i+2)%n]}
	for _, k := range c {
		if !k.FloorKnown {
			return ground{}, false
		}
	}
	finished := func(k site.Corner) unit.Length { return k.BareFloor + floor.BoardThick + floor.TileOff }
	g := ground{left: finished(c[1]), right: finished(c[2]), leftFar: finished(c[0]), rightFar: finished(c[3]),
		long: geom.Dist(c[1].Board, c[2].Board), leftLong: geom.Dist(c[0].Board, c[1].Board), rightLong: geom.Dist(c[2].Board, c[3].Board)}
	if c[1].Outside { // the neighbor runs away from the room here, and tells nothing of it
		g.leftFar = g.left
	}
	if c[2].Outside {
		g.rightFar = g.right
	}
	return g, g.long > 0 && g.leftLong > 0 && g.rightLong > 0
}

func cornerIndex(all []site.Corner, name string) int {
	for i, c := range all {
		if c.Name == name {
			return i
		}
	}
	return -1
}

// at is the finished floor's height at x along the wall and z off it, rounded once.
func (g ground) at(x, z unit.Length) unit.Length {
	share := float64(x) / float64(g.long)
	along := float64(g.left) + float64(g.right-g.left)*share
	leftSlope := float64(g.leftFar-g.left) / float64(g.leftLong)
	rightSlope := float64(g.rightFar-g.right) / float64(g.rightLong)
	return unit.FromFloat(along + float64(z)*(leftSlope*(1-share)+rightSlope*share))
}
