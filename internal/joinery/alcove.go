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
// one distance off the wall has passed every width farther out, at whatever height that was taken. The pair with least to spare is told.
func (s *slab) alcove() {
	if len(s.doc.Alcove) == 0 {
		s.alcoveSolved()
		return
	}
	tight, at, found := Passage{Way: BetweenWalls, Source: "widths as taped", Passes: true}, s.doc.Alcove[0], false
	for _, inner := range s.doc.Alcove {
		wide := s.wideAt(inner)
		for _, outer := range s.doc.Alcove {
			if !inner.Off.Known || !outer.Off.Known || outer.Off.V < inner.Off.V {
				continue
			}
			if !found || outer.Width-wide < tight.Has[0]-tight.Needs[0] {
				tight.Needs[0], tight.Has[0], at, found = wide, outer.Width, outer, true
			}
		}
	}
	if tight.Passes = tight.Needs[0] <= tight.Has[0]; found {
		s.t.Passages = append(s.t.Passages, tight)
	}
	if !tight.Passes {
		wide := tight.Needs[0]
		s.r.stop("top-slides", at.At, "{0} cut to {1} can not be slid in: {2} off the wall the walls are {3} apart, {4} too little", "cut it to {3} and cover the gap with a scribed strip, make it in two pieces, or let it in before the wall in front is built up", diag.T(s.t.Name), diag.X(wide), diag.X(at.Off.V), diag.X(at.Width), diag.X(wide-at.Width))
	}
	s.alcoveUnread()
}

// wideAt is how wide a top is where a width was taped: as written, or scribed to that width less its gaps.
func (s *slab) wideAt(a document.WidthAt) unit.Length {
	if s.doc.Across.Both || s.doc.Width.Known {
		return s.t.Width
	}
	return a.Width - s.doc.Gap.Left.Or(0) - s.doc.Gap.Right.Or(0)
}

// alcoveSolved holds a top against the solved walls where no width was taped.
func (s *slab) alcoveSolved() {
	least, ok := s.r.between(s.t.Wall).narrowest(s.t.box())
	if !ok {
		return
	}
	p := Passage{Way: BetweenWalls, Needs: [2]unit.Length{s.t.Width}, Has: [2]unit.Length{least}, Source: "the solved walls", Passes: s.t.Width <= least}
	s.t.Passages = append(s.t.Passages, p)
	if !p.Passes {
		s.r.stop("top-slides", s.t.At, "{0} cut to {1} can not be slid in: between its back and its front edge the walls are {2} apart at the narrowest (the solved walls), {3} too little", "cut it to {2} and cover the gap with a scribed strip, or tape the alcove and write its widths",
			diag.T(s.t.Name), diag.X(s.t.Width), diag.L(least), diag.L(s.t.Width-least))
	}
}

// alcoveUnread tells of widths that can not be compared.
func (s *slab) alcoveUnread() {
	for _, a := range s.doc.Alcove {
		if !a.Off.Known {
			s.r.lacks(a.At, "how far off the wall a width for "+s.t.Name+" was taken")
		}
	}
}
