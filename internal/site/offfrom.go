package site

import (
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// OffFrom says where a place on the floor is by its distances square off two walls, from the surface that the tape
// touched: what Off reads. It is false where the place lies behind one of the walls, or the walls are not two that meet.
func (r Room) OffFrom(p geom.Point, wallA, wallB string) ([]document.AtWall, bool) {
	var list []document.AtWall
	for _, name := range []string{wallA, wallB} {
		off, ok := r.offWall(p, name)
		if !ok || off < 0 {
			return nil, false
		}
		list = append(list, document.AtWall{Wall: name, Value: document.Value[unit.Length]{V: off, Known: true}})
	}
	if _, ok := r.Off(list); !ok {
		return nil, false
	}
	return list, true
}

// offWall is how far a place lies before a wall; less than nothing behind it.
func (r Room) offWall(p geom.Point, wall string) (unit.Length, bool) {
	left, right, ok := r.beside(document.AtWall{Wall: wall})
	if !ok {
		return 0, false
	}
	return geom.DistToLine(p, left, right) * unit.Length(-geom.Side(left, right, p)), true
}

// OffTwo chooses two walls that stand about square to each other and says how far off them a place is: the first two in
// the document's order, or else the two that are nearest to square. A wall of first is tried before all others, so that
// what was told off two walls is told off the same two when it has moved a little.
func (r Room) OffTwo(p geom.Point, first ...string) ([]document.AtWall, bool) {
	walls := first
	for _, f := range r.Faces {
		if f.Kind == WallFace {
			walls = append(walls[:len(walls):len(walls)], f.Name)
		}
	}
	var best []document.AtWall
	slant := slantMost
	for i, a := range walls {
		for _, b := range walls[i+1:] {
			list, ok := r.OffFrom(p, a, b)
			if !ok {
				continue
			}
			if of := r.slant(a, b); of < slant {
				best, slant = list, of
			}
		}
	}
	return best, best != nil
}

// Of two walls at 60 degrees or more a tape's mark moves the place by little more than a mark. What is within 6 degrees
// of square is square enough: there is no choosing among such.
const (
	slantMost   = unit.Ratio(unit.One / 2)
	slantSquare = unit.Ratio(unit.One / 10)
)

// slant is the cosine of the angle between two walls, whichever way they run; what is about square has none.
func (r Room) slant(wallA, wallB string) unit.Ratio {
	a, b, _ := r.beside(document.AtWall{Wall: wallA})
	c, d, _ := r.beside(document.AtWall{Wall: wallB})
	u, v := b.Sub(a), d.Sub(c)
	along := u.X.MulDiv(int64(v.X), int64(geom.Dist(c, d))) + u.Y.MulDiv(int64(v.Y), int64(geom.Dist(c, d)))
	of := unit.Ratio(along.Abs().MulDiv(int64(unit.One), int64(geom.Dist(a, b))))
	if of < slantSquare {
		return 0
	}
	return of
}
