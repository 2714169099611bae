package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

func widest(all []document.WidthAt) unit.Length {
	w := unit.Length(0)
	for _, a := range all {
		w = max(w, a.Width)
	}
	return w
}

// alcove holds a top against the widths that it has to pass on its way in. It is slid in level, from the front: what fits the width at
// one distance off the wall has passed every width farther out, at whatever height that was taken.
func (s *slab) alcove() {
	gaps := s.doc.Gap.Left.Or(0) + s.doc.Gap.Right.Or(0)
	for _, inner := range s.doc.Alcove {
		wide := inner.Width - gaps
		if s.doc.Across.Both || s.doc.Width.Known {
			wide = s.t.Width
		}
		for _, outer := range s.doc.Alcove {
			if !inner.Off.Known || !outer.Off.Known || outer.Off.V < inner.Off.V || wide <= outer.Width {
				continue
			}
			s.r.stop("top-slides", outer.At, "{0} cut to {1} can not be slid in: {2} off the wall the walls are {3} apart, {4} too little", "cut it to {3} and cover the gap with a scribed strip, make it in two pieces, or let it in before the wall in front is built up", diag.T(s.t.Name), diag.X(wide), diag.X(outer.Off.V), diag.X(outer.Width), diag.X(wide-outer.Width))
			return
		}
	}
	s.alcoveUnread()
}

// alcoveUnread tells of widths that can not be compared.
func (s *slab) alcoveUnread() {
	for _, a := range s.doc.Alcove {
		if !a.Off.Known {
			s.r.lacks(a.At, "how far off the wall a width for "+s.t.Name+" was taken")
		}
	}
}
