package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// flatness holds the straightedge readings of every tiled face against the published tolerance for its tile.
func (s *solver) flatness() {
	for i := range s.out.Faces {
		f := &s.out.Faces[i]
		switch {
		case !f.Set:
		case f.Kind == FloorFace:
			s.flat(f, s.floor.longest, s.doc.Floor.Straightedge)
		case f.Kind == WallFace:
			w := s.walls[s.wallIndex(f.Name)]
			if len(w.doc.Straightedge) > 0 || !s.flatByProfile(f, w) {
				s.flat(f, w.build.longest, w.doc.Straightedge)
			}
			s.twisted(f, w)
		}
	}
}

func (s *solver) flat(f *Face, longest unit.Length, gaps []document.Gap) {
	if len(gaps) == 0 {
		s.list.Add(diag.Unchecked, "flatness-unread", f.At, "not checked: how flat {0} is", "hold a straightedge on it and write straightedge: with its length and the greatest gap", diag.T(f.Name))
		return
	}
	if longest == 0 {
		s.list.Add(diag.Unchecked, "flatness-size", f.At, "not checked: whether {0} is flat enough, for the size of its tile is not known", "write the tile's size", diag.T(f.Name))
		return
	}
	f.Flat.Checked = true
	for _, g := range gaps {
		if g.Length > 0 && g.Length <= farthest && g.Gap >= 0 && g.Gap <= g.Length {
			s.hollow(f, longest, g)
		}
	}
	if f.Flat.Fill > 0 {
		s.assume(f.At, rule.Own.String(), "a hollow on {0} is as wide as the straightedge is long", diag.T(f.Name))
	}
}

// hollow judges one reading.
func (s *solver) hollow(f *Face, longest unit.Length, g document.Gap) {
	limit, r := rule.FlatLimit(longest, g.Length)
	over := g.Gap - limit
	if f.Flat.Rule == "" || over > f.Flat.Over {
		f.Flat.Rule = r.ID
	}
	if over <= 0 {
		return
	}
	f.Flat.Over = max(f.Flat.Over, over)
	f.Flat.Fill += filler(g.Gap, g.Length)
	s.list.Add(diag.Look, "not-flat", g.At, "{0} has a gap of {1} under a straightedge of {2}; {3} is allowed for this tile", "fill or grind it, or set a face that is a plane on a deeper bed",
		diag.T(f.Name), diag.X(g.Gap), diag.X(g.Length), diag.X(s.fine(limit))).Rule = r.ID
}

// filler is what a hollow of depth h under a straightedge of length L takes: a parabola of 2/3 h L across, L wide.
func filler(h, length unit.Length) unit.Volume {
	return unit.VolumeOf(2.0 / 3 * h.MM() * length.MM() * length.MM())
}
