package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
)

// holes places the round stub-outs of a wall.
func (s *solver) holes(f *Face) {
	for _, b := range s.doc.Stubs {
		if b.In.Text != f.Name {
			continue
		}
		y, top, okY := s.out.up(*f, b.Up, 0)
		y += (top - y) / 2 // both its edges may be told, where its center can not be seen
		x, right, okX := f.across(b.Across, 0, s.out.tapedTo, y)
		x += (right - x) / 2
		if !okX || !okY || !b.Up.Given {
			s.unplaced(b.At, b.Name, f.Name)
			continue
		}
		s.pierce(f, b, geom.Point{X: x, Y: y})
	}
}

// pierce adds a hole, unless it is outside its face.
func (s *solver) pierce(f *Face, b document.Stub, at geom.Point) {
	h := Hole{Name: b.Name, At: b.At, Center: at, Diameter: b.Diameter.V, Drill: b.Hole.V}
	if f.Board.Contains(at) <= 0 {
		s.list.Add(diag.Stop, "stub-outside", b.At, "{0} is outside {1}, or in an opening", "look at its place", diag.T(b.Name), diag.T(f.Name))
		return
	}
	s.apart(f, h)
	f.Holes = append(f.Holes, h)
	if h.Diameter == 0 && h.Drill == 0 {
		s.list.Add(diag.Unchecked, "stub-diameter", b.At, "not checked: the hole of {0}, for its diameter is not known", "measure the pipe and write diameter", diag.T(b.Name))
	}
	s.reachesOver(f, h)
}

// apart says which pipes of a face take each other's room: their centers are nearer than the sum of their radii.
func (s *solver) apart(f *Face, h Hole) {
	for _, o := range f.Holes {
		if need := h.Diameter + o.Diameter; need > 0 && 2*geom.Dist(h.Center, o.Center) < need {
			s.list.Add(diag.Stop, "stubs-overlap", h.At, "{0} and {1} overlap on {2}: their centers are {3} apart, and half of both diameters is {4}", "look at their places and diameters",
				diag.T(h.Name), diag.T(o.Name), diag.T(f.Name), diag.L(geom.Dist(h.Center, o.Center)), diag.X(s.fine(need.MulDiv(1, 2))))
		}
	}
}

// reachesOver says where a pipe or its hole crosses the edge of its face.
func (s *solver) reachesOver(f *Face, h Hole) {
	d := max(h.Diameter, h.Drill)
	for _, r := range f.Board {
		for i, v := range r {
			if d > 0 && geom.DistToSegment(h.Center, v.P, r[(i+1)%len(r)].P) < d/2 {
				s.list.Add(diag.Look, "stub-over-edge", h.At, "the hole of {0}, {1} across, reaches over an edge of {2}", "look at its place and diameter", diag.T(h.Name), diag.X(d), diag.T(f.Name))
				return
			}
		}
	}
}
