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
		x, _, okX := f.across(b.Across, 0, s.out.tapedTo)
		y, _, okY := s.out.up(*f, b.Up, 0)
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
	f.Holes = append(f.Holes, h)
}
