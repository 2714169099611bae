package search

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// side is one edge of the region in the frame of the courses: s runs along them, t across. The region lies to its
// left.
type side struct {
	a, b   geom.Point // X is s, Y is t
	label  geom.Label
	about  Edge
	judged bool // its cut widths along s are judged
}

// outline lists the region's edges; judged ones run across s.
func outline(in *Input, size, joint unit.Length) []side {
	var out []side
	for _, ring := range in.Region {
		for i, v := range ring {
			s := side{a: v.P, b: ring[(i+1)%len(ring)].P, label: v.Edge, about: edgeOf(in.Edges, v.Edge)}
			s.judged = s.worth(size, max(joint, in.Mark))
			out = append(out, s)
		}
	}
	return out
}

// edgeOf looks a label up; a label without an entry is a plain edge.
func edgeOf(edges []Edge, l geom.Label) Edge {
	if l < 1 || int(l) > len(edges) {
		return Edge{Weight: 1}
	}
	return edges[l-1]
}

// worth reports whether the widths beside the edge say anything of a layout. An edge shorter than the joint is lost
// in it. One that leans by more than half a tile leaves a piece that runs out to nothing in nearly every layout.
func (s side) worth(size, least unit.Length) bool {
	lean, run := (s.b.X - s.a.X).Abs(), (s.b.Y - s.a.Y).Abs()
	return lean < run && lean <= size/2 && run >= least
}

// upper reports whether the region lies on the lower-s side: the edge is an upper bound of it.
func (s side) upper() bool { return s.b.Y > s.a.Y }

// bottom and top are the ends of the edge along t.
func (s side) bottom() unit.Length { return min(s.a.Y, s.b.Y) }
func (s side) top() unit.Length    { return max(s.a.Y, s.b.Y) }

// at is the edge's s at t, rounded half up to the grid.
func (s side) at(t unit.Length) unit.Length {
	if s.a.X == s.b.X {
		return s.a.X
	}
	a, b := s.a, s.b
	if a.Y > b.Y {
		a, b = b, a
	}
	return a.X + (t-a.Y).MulDiv(int64(b.X-a.X), int64(b.Y-a.Y))
}

// flipped returns the edges with s and t exchanged, the region still to the left, judged for a tile of that size.
func flipped(sides []side, size, least unit.Length) []side {
	out := make([]side, len(sides))
	for i, s := range sides {
		s.a, s.b = swap(s.b), swap(s.a)
		s.judged = s.worth(size, least)
		out[i] = s
	}
	return out
}

func swap(p geom.Point) geom.Point { return geom.Point{X: p.Y, Y: p.X} }
