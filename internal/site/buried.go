package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// buried places what is recorded in the walls and holds the holes against it. A tiled wall of which nothing is recorded is not checked.
func (s *solver) buried() {
	for i := range s.out.Faces {
		f := &s.out.Faces[i]
		if f.Kind != WallFace {
			continue
		}
		s.recorded(f)
		if len(f.Buried) == 0 && f.Set {
			s.list.Add(diag.Unchecked, "in-wall-unknown", f.At, "not checked: what is in the wall behind {0}", "while it is open, write its studs, pipes and cables under in the wall; before drilling, find out", diag.T(f.Name))
		}
		s.nearBuried(*f)
	}
}

func (s *solver) recorded(f *Face) {
	for _, b := range s.doc.InWall {
		if b.In.Text != f.Name {
			continue
		}
		if r, ok := s.buriedRect(*f, b); ok {
			f.Buried = append(f.Buried, Buried{b.Name, b.At, buriedName(b.Kind), r})
		} else {
			s.unplaced(b.At, b.Name, f.Name)
		}
	}
}

func buriedName(k document.BuriedKind) string {
	return [...]string{"stud", "blocking", "pipe", "cable", "nail plate"}[k]
}

// buriedRect: a thing without a place along the wall runs along all of it, one without a height from floor to ceiling.
func (s *solver) buriedRect(f Face, b document.Buried) (geom.Rect, bool) {
	r := f.Board.Bounds()
	ok := b.Across.Given || b.Up.Given
	if b.Across.Given {
		var placed bool
		r.Min.X, r.Max.X, placed = f.across(b.Across, 0, s.out.tapedTo, 0)
		ok = ok && placed
	}
	if b.Up.Given {
		var placed bool
		r.Min.Y, r.Max.Y, placed = s.out.up(f, b.Up, 0)
		ok = ok && placed
	}
	return r, ok
}

// Near lists the pipes and cables recorded nearer to a round thing than the clearance for holes and screws. A pipe at its very
// center is the one that comes through it, and is left out; a cable there is drilled into.
func (f Face) Near(center geom.Point, diameter unit.Length) []Buried {
	var out []Buried
	for _, b := range f.Buried {
		if b.Kind != "pipe" && b.Kind != "cable" {
			continue
		}
		if gap := away(b.Rect, center); (gap > 0 || b.Kind == "cable") && gap-diameter/2 < rule.BuriedClear.Limit {
			out = append(out, b)
		}
	}
	return out
}

// away is the distance from a point to a rectangle, 0 on or in it.
func away(r geom.Rect, p geom.Point) unit.Length {
	near := geom.Point{X: min(max(p.X, r.Min.X), r.Max.X), Y: min(max(p.Y, r.Min.Y), r.Max.Y)}
	return geom.Dist(p, near)
}

// nearBuried stops work where a hole comes near a recorded pipe or cable.
func (s *solver) nearBuried(f Face) {
	r := rule.BuriedClear
	for _, h := range f.Holes {
		d := max(h.Diameter, h.Drilled(s.doc.Tools))
		for _, b := range f.Near(h.Center, d) {
			s.list.Add(diag.Stop, "hole-near-buried", h.At, "the hole of {0} comes within {1} of {2} in {3}; {4} is kept clear", "do not drill there; local codes and a licensed trade decide",
				diag.T(h.Name), diag.L(max(0, away(b.Rect, h.Center)-d/2)), diag.T(b.Name), diag.T(f.Name), diag.X(r.Limit)).Rule = r.ID
		}
	}
}
