package site

import (
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// depth says how far a wall's surface lies off its studs, into the room, at one of its corners.
type depth func(wall, corner int) unit.Length

// surface is the depth of a surface at a height: its layers, and the wall's lean from the plate up to there.
func (s *solver) surface(to document.Surface, at document.Height) depth {
	return func(i, c int) unit.Length { return s.walls[i].build.to(to) + s.leanAt(i, c, at) }
}

// leanAt is how far wall i has come into the room at corner c, from the plate to the height.
func (s *solver) leanAt(i, c int, at document.Height) unit.Length {
	w, lv := s.walls[i], s.levels[c]
	lean := w.leanLeft
	if c == w.right {
		lean = w.leanRight
	}
	switch {
	case at == document.Ceiling:
		return lean
	case at == document.LevelLine && lv.known():
		return lean.MulDiv(int64(lv.down), int64(lv.down+lv.up))
	}
	return 0
}

// line returns the ends of wall i's line, each moved square off the studs by its depth.
func (s *solver) line(i int, d depth) (left, right geom.Point) {
	w := s.walls[i]
	l, r := s.raw[w.left], s.raw[w.right]
	return inward(l, l, r, d(i, w.left)), inward(r, l, r, d(i, w.right))
}

// inward moves p square off the line from l to r to its right: into the room, for corners go clockwise seen from above.
// Rounded half up once.
func inward(p, l, r geom.Point, by unit.Length) geom.Point {
	d, n := r.Sub(l), geom.Dist(l, r)
	if n == 0 {
		return p
	}
	return p.Add(geom.Point{X: by.MulDiv(int64(d.Y), int64(n)), Y: by.MulDiv(-int64(d.X), int64(n))})
}

// gentleNum / gentleDen is the tangent of 10 degrees. Below such a turn walls of different depth do not meet where their lines
// do, which would be far along the wall, but end side by side in a jog; geom.OffsetRing has the same rule.
const gentleNum, gentleDen = 17633, 100000

// at returns where the walls at corner c end, when their lines lie at the given depths: the end of the wall before the corner
// and the start of the wall after it. They are the same point unless a jog parts them.
func (s *solver) at(c int, d depth) (before, after geom.Point) {
	n := len(s.walls)
	i := (c + n - 1) % n
	a, b := s.line(i, d)
	p, q := s.line(c, d)
	if gentle(a, b, p, q) && d(i, c) != d(c, c) {
		return b, p
	}
	if x, ok := geom.Intersect(a, b, p, q); ok {
		return x, x
	}
	return b, p
}

func gentle(a, b, p, q geom.Point) bool {
	u, v := b.Sub(a), q.Sub(p)
	cross := geom.Cross(geom.Point{}, u, v)
	along := int64(u.X)*int64(v.X) + int64(u.Y)*int64(v.Y)
	if cross < 0 {
		cross = -cross
	}
	return along > 0 && cross/gentleNum < along/gentleDen
}

// point is one corner of the room on a surface at a height.
func (s *solver) point(c int, to document.Surface, at document.Height) geom.Point {
	_, p := s.at(c, s.surface(to, at))
	return p
}

// outside reports whether the room turns the other way at a corner: the wall after it goes to the left.
func (s *solver) outside(c int) bool {
	n := len(s.raw)
	return geom.Side(s.raw[(c+n-1)%n], s.raw[c], s.raw[(c+1)%n]) > 0
}

// ring is the outline on a surface at the plate, counter-clockwise, so reversed; the edge of wall i has label i+1.
func (s *solver) ring(to document.Surface) geom.Ring {
	d := s.surface(to, document.Plate)
	var r geom.Ring
	for c := range s.raw {
		before, after := s.at(c, d)
		if before != after {
			r = append(r, geom.Vertex{P: before, Edge: s.jogLabel(c, d)})
		}
		r = append(r, geom.Vertex{P: after, Edge: geom.Label(c + 1)})
	}
	return r.Reverse()
}

// jogLabel gives a jog to the wall that stands farther into the room, whose edge is seen.
func (s *solver) jogLabel(c int, d depth) geom.Label {
	i := (c + len(s.walls) - 1) % len(s.walls)
	if d(i, c) > d(c, c) {
		return geom.Label(i + 1)
	}
	return geom.Label(c + 1)
}

// axis is a line with a direction on the plan, to measure along.
type axis struct {
	from, to geom.Point
	length   unit.Length
}

func newAxis(from, to geom.Point) axis { return axis{from, to, geom.Dist(from, to)} }

// x is how far p lies along the axis, square foot to square foot, rounded half up.
func (a axis) x(p geom.Point) unit.Length {
	d, q := a.to.Sub(a.from), p.Sub(a.from)
	if a.length == 0 {
		return 0
	}
	dot := int64(d.X)*int64(q.X) + int64(d.Y)*int64(q.Y)
	return unit.Length(dot).MulDiv(1, int64(a.length))
}
