package geom

import "dryfit/internal/unit"

// Turn counts quarter turns counter-clockwise, 0 to 3.
type Turn uint8

// Point turns p about the origin, exactly.
func (t Turn) Point(p Point) Point {
	switch t & 3 {
	case 1:
		return Point{-p.Y, p.X}
	case 2:
		return Point{-p.X, -p.Y}
	case 3:
		return Point{p.Y, -p.X}
	}
	return p
}

// Rect turns r about the origin, exactly.
func (t Turn) Rect(r Rect) Rect { return Bound(t.Point(r.Min), t.Point(r.Max)) }

// Ring turns r about the origin, exactly; labels stay with their edges.
func (t Turn) Ring(r Ring) Ring { return r.moved(t.Point) }

// Region turns g about the origin, exactly.
func (t Turn) Region(g Region) Region { return g.moved(t.Point) }

func (r Ring) moved(to func(Point) Point) Ring {
	out := make(Ring, len(r))
	for i, v := range r {
		out[i] = Vertex{to(v.P), v.Edge}
	}
	return out
}

func (g Region) moved(to func(Point) Point) Region {
	out := make(Region, len(g))
	for i, r := range g {
		out[i] = r.moved(to)
	}
	return out
}

// Move returns the region shifted by d.
func (g Region) Move(d Point) Region { return g.moved(d.Add) }

// Frame is a pattern's frame in a face: face = Origin + turn(Angle)·frame.
type Frame struct {
	Origin Point
	Angle  unit.Angle
}

// In carries a point of the face into the frame, rounded half up once; exact for quarter turns.
func (f Frame) In(p Point) Point { return rotationBy(-f.Angle).point(p.Sub(f.Origin)) }

// Out carries a point of the frame into the face, rounded half up once; exact for quarter turns.
func (f Frame) Out(p Point) Point { return f.Origin.Add(rotationBy(f.Angle).point(p)) }

// In carries a region of the face into the frame; every vertex is rounded once.
func (g Region) In(f Frame) Region {
	turn := rotationBy(-f.Angle)
	return g.moved(func(p Point) Point { return turn.point(p.Sub(f.Origin)) })
}

// Out carries a region of the frame into the face; every vertex is rounded once.
func (g Region) Out(f Frame) Region {
	turn := rotationBy(f.Angle)
	return g.moved(func(p Point) Point { return f.Origin.Add(turn.point(p)) })
}
