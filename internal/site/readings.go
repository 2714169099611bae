package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// readings lists all tape readings of the outline: those of the survey, and a wall's own width at the bottom where the survey
// has no reading of that side.
func (s *solver) readings() []taped {
	var list []taped
	for _, r := range s.doc.Survey.Tape {
		list = append(list, s.taped(r))
	}
	for _, w := range s.walls {
		if r, ok := s.widthReading(w); ok && !measured(list, r) {
			list = append(list, r)
		}
	}
	return list
}

func (s *solver) taped(r document.Reading) taped {
	t := taped{Reading: r, from: s.pointIndex(r.From), to: s.pointIndex(r.To), later: -1}
	t.touches = r.Touches.Or(s.doc.Survey.Touches.Or(document.Stud))
	t.where = r.Where.Or(s.doc.Survey.Where.Or(document.Plate))
	if t.from < 0 || t.to < 0 || t.from == t.to || r.Length <= 0 {
		t.use, t.by = Unused, "it names no two points, or no length"
		t.from, t.to = 0, 0
	}
	return t
}

// widthReading is a wall's width at the bottom as a reading of its side.
func (s *solver) widthReading(w wall) (taped, bool) {
	if !w.doc.WidthBottom.Known {
		return taped{}, false
	}
	t := s.taped(document.Reading{From: s.cornerName(w.left), To: s.cornerName(w.right), Length: w.doc.WidthBottom.V,
		Touches: w.doc.WidthTo, At: w.doc.WidthBottom.At})
	t.where = document.Plate
	return t, true
}

func measured(list []taped, r taped) bool {
	for _, t := range list {
		if t.use == Used && t.sameLine(r) {
			return true
		}
	}
	return false
}

// pointIndex numbers corners and then floor points; -1 for neither.
func (s *solver) pointIndex(name string) int {
	if c := s.cornerIndex(name); c >= 0 {
		return c
	}
	for i, p := range s.doc.Survey.Points {
		if p.Text == name {
			return len(s.doc.Survey.Corners) + i
		}
	}
	return -1
}

// sameLine reports whether two readings are of the same line at the same height.
func (t taped) sameLine(o taped) bool {
	return t.where == o.where && (t.from == o.from && t.to == o.to || t.from == o.to && t.to == o.from)
}

// supersede keeps the newest reading of each line. A later date is newer; where one of the two has no date the later in the document is.
// The older is kept aside and reported, never averaged in.
func supersede(list []taped) {
	for i := range list {
		if list[i].use != Used {
			continue
		}
		newest := i
		for j := i + 1; j < len(list); j++ {
			if list[j].use == Used && list[j].sameLine(list[i]) && !older(list[j], list[newest]) {
				newest = j
			}
		}
		for j := i; j < len(list); j++ {
			if j != newest && list[j].use == Used && list[j].sameLine(list[newest]) {
				list[j].use, list[j].later = Superseded, newest
				list[j].by = "a newer reading of " + list[newest].From + "-" + list[newest].To
			}
		}
	}
}

// setAside takes a reading above the plate out of the outline where the same line was read at the plate and nobody knows how the walls at
// its ends lean: the two differ by the leans, and averaging them would be wrong at both heights. At the ceiling of a wall it counts as that
// wall's width at the top.
func (s *solver) setAside(list []taped) {
	for i := range list {
		t := &list[i]
		if t.use != Used || t.where == document.Plate || s.leansKnown(*t) || !atPlate(list, *t) {
			continue
		}
		t.use, t.by = Unused, "the reading at the plate is the outline's; this one tells how the walls lean"
		for k := range s.walls {
			s.walls[k].takeTop(*t)
		}
	}
}

func atPlate(list []taped, t taped) bool {
	t.where = document.Plate
	return measured(list, t)
}

// leansKnown reports whether every wall at the reading's ends has a lean reading there.
func (s *solver) leansKnown(t taped) bool {
	for _, w := range s.walls {
		for _, c := range []int{w.left, w.right} {
			if c != t.from && c != t.to || w.along(t) {
				continue // a wall's own lean does not change a length along it
			}
			if _, ok := findCorner(w.doc.Lean, s.cornerName(c)); !ok {
				return false
			}
		}
	}
	return true
}

// along reports whether a reading runs along the wall.
func (w wall) along(t taped) bool {
	return w.left == t.from && w.right == t.to || w.left == t.to && w.right == t.from
}

// takeTop takes a reading at the ceiling as the wall's width at the top, if it runs along the wall and none is written.
func (w *wall) takeTop(t taped) {
	if w.along(t) && t.where == document.Ceiling && !w.doc.WidthTop.Known && !w.doc.WidthBottom.Known {
		w.doc.WidthTop = document.Value[unit.Length]{V: t.Length, Known: true, At: t.At}
		w.doc.WidthTo = document.Value[document.Surface]{V: t.touches, Known: true, At: t.At}
	}
}

// older: ISO dates compare as texts do.
func older(t, than taped) bool { return t.On.Known && than.On.Known && t.On.V < than.On.V }

// noteSurfaces states what the tape is taken to have touched where nothing is written.
func (s *solver) noteSurfaces(list []taped) {
	for _, t := range list {
		if !t.Touches.Known && !s.doc.Survey.Touches.Known {
			s.assume(s.doc.Survey.At, rule.Practice.String(), "tape readings, and places along walls, are to the studs")
		}
	}
	for _, w := range s.walls {
		s.notePlumb(w)
	}
}

// notePlumb states that a written wall is taken as plumb where nothing says that it leans.
func (s *solver) notePlumb(w wall) {
	_, left := findCorner(w.doc.Lean, s.cornerName(w.left))
	_, right := findCorner(w.doc.Lean, s.cornerName(w.right))
	switch {
	case !w.written || left && right:
	case !left && !right:
		s.assume(w.doc.At, rule.Practice.String(), "{0} is plumb", diag.T(w.name))
	case left:
		s.assume(w.doc.At, rule.Practice.String(), "{0} is plumb at {1}", diag.T(w.name), diag.T(s.cornerName(w.right)))
	default:
		s.assume(w.doc.At, rule.Practice.String(), "{0} is plumb at {1}", diag.T(w.name), diag.T(s.cornerName(w.left)))
	}
}
