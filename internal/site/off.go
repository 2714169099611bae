package site

import (
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Off resolves a place on the floor by its distances square off two walls, from the surface that the tape touched. It is
// false where the walls are not two that meet somewhere, or a distance is unknown.
func (r Room) Off(list []document.AtWall) (geom.Point, bool) {
	if len(list) != 2 || !list[0].Value.Known || !list[1].Value.Known {
		return geom.Point{}, false
	}
	a, b, ok1 := r.beside(list[0])
	c, d, ok2 := r.beside(list[1])
	if !ok1 || !ok2 {
		return geom.Point{}, false
	}
	return geom.Intersect(a, b, c, d)
}

// beside is the line along a wall at a distance from it, into the room: to the right of one who walks from its left
// corner to its right one.
func (r Room) beside(at document.AtWall) (left, right geom.Point, ok bool) {
	f, ok := r.Face(at.Wall)
	if !ok || f.Kind != WallFace {
		return left, right, false
	}
	left, right = r.touched(f.LeftCorner), r.touched(f.RightCorner)
	run, long := right.Sub(left), geom.Dist(left, right)
	if long == 0 {
		return left, right, false
	}
	by := geom.Point{X: square(run.Y, at.Value.V, long), Y: square(-run.X, at.Value.V, long)}
	return left.Add(by), right.Add(by), true
}

// square is the share of a distance along one axis, rounded half up.
func square(component, distance, long unit.Length) unit.Length {
	return distance.MulDiv(int64(component), int64(long))
}

// touched is a corner on the surface that the tape touched.
func (r Room) touched(name string) geom.Point {
	c := r.Survey.Corner(name)
	switch r.tapedTo {
	case document.Board:
		return c.Board
	case document.TileFace:
		return c.Finished
	}
	return c.Raw
}
