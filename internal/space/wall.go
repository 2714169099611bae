package space

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Wall carries what is placed on a wall's finished face into the plan: Left is the point of the finished face at x = 0 and Right the one at
// x = Length, both seen from the room and at the plate. A wall that leans is taken upright here; what that moves is below 1/8 in over a
// cabinet's height for each 1/4 in that the wall is out of plumb.
type Wall struct {
	Name        string
	Left, Right geom.Point
	From        unit.Length // x of Left in the face's frame
}

// At is the point of the plan at x along the wall and z off its finished face, rounded half up once.
func (w Wall) At(x, z unit.Length) geom.Point {
	run := w.Right.Sub(w.Left)
	long := int64(geom.Dist(w.Left, w.Right))
	if long == 0 {
		return w.Left
	}
	x -= w.From
	return w.Left.Add(geom.Point{
		X: x.MulDiv(int64(run.X), long) + z.MulDiv(int64(run.Y), long),
		Y: x.MulDiv(int64(run.Y), long) + z.MulDiv(-int64(run.X), long),
	})
}

// Of is the inverse of At: where a point of the plan is along the wall and off its finished face.
func (w Wall) Of(p geom.Point) (x, z unit.Length) {
	run, d := w.Right.Sub(w.Left), p.Sub(w.Left)
	long := int64(geom.Dist(w.Left, w.Right))
	if long == 0 {
		return w.From, 0
	}
	x = d.X.MulDiv(int64(run.X), long) + d.Y.MulDiv(int64(run.Y), long)
	z = d.X.MulDiv(int64(run.Y), long) - d.Y.MulDiv(int64(run.X), long)
	return x + w.From, z
}

// Box is an envelope of a box before the wall, in both frames.
func (w Wall) Box(e Envelope, x, y, z Span) Envelope {
	e.Wall, e.X, e.Y, e.Z, e.High = w.Name, x, y, z, y
	e.Plan = geom.Ring{{P: w.At(x.Lo, z.Hi)}, {P: w.At(x.Hi, z.Hi)}, {P: w.At(x.Hi, z.Lo)}, {P: w.At(x.Lo, z.Lo)}}
	if e.Plan.Area2() < 0 {
		e.Plan = e.Plan.Reverse()
	}
	return e
}

// Outline is an envelope of an outline before the wall, whose points are x along the wall and z off its face, in both frames.
func (w Wall) Outline(e Envelope, points []geom.Point, y Span) Envelope {
	e.Wall, e.Y, e.High = w.Name, y, y
	var ring geom.Ring
	for i, p := range points {
		if i == 0 {
			e.X, e.Z = Span{p.X, p.X}, Span{p.Y, p.Y}
		}
		e.X = Span{min(e.X.Lo, p.X), max(e.X.Hi, p.X)}
		e.Z = Span{min(e.Z.Lo, p.Y), max(e.Z.Hi, p.Y)}
		ring = append(ring, geom.Vertex{P: w.At(p.X, p.Y)})
	}
	if ring.Area2() < 0 {
		ring = ring.Reverse()
	}
	e.Plan = ring
	return e
}
