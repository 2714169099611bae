package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// A wall whose two ends lean differently is twisted: with u along it and v up it, both from 0 to 1, its surface stands d u v out of a
// plane, where d is the difference of the leans. The best plane through it leaves d (u - 1/2) (v - 1/2): a quarter of d at the corners, two
// high and two low. A plane over the high spots touches the two high corners and stands half of d off the two low ones.

// twist is the difference of the leans at a wall's ends. It is 0 where one of them is not read: what is not read is not out of plane.
func (s *solver) twist(w wall) unit.Length {
	_, left := findCorner(w.doc.Lean, s.cornerName(w.left))
	_, right := findCorner(w.doc.Lean, s.cornerName(w.right))
	if !left || !right {
		return 0
	}
	return (w.leanRight - w.leanLeft).Abs()
}

// swing is how far a wall twisted by d stands off its best plane at x along its width, at its top or its bottom. A width that is not known
// gives the most that it can be.
func swing(d, x, width unit.Length) unit.Length {
	if width <= 0 {
		return d.MulDiv(1, 4)
	}
	fromMiddle := (2*min(max(0, x), width) - width).Abs()
	return d.MulDiv(int64(fromMiddle), 4*int64(width))
}

// tapedWidth is a wall's width as it was taped, for the twist at a station: the survey is not solved yet when beds are settled, and a wall
// that is wrong by an inch in five feet changes the swing by a hundredth of the twist. 0 where the wall was not taped.
func (s *solver) tapedWidth(w wall) unit.Length {
	if w.doc.WidthBottom.Known {
		return w.doc.WidthBottom.V
	}
	left, right := s.cornerName(w.left), s.cornerName(w.right)
	for _, t := range s.doc.Survey.Tape {
		if t.From == left && t.To == right || t.From == right && t.To == left {
			return t.Length
		}
	}
	return 0
}

// span returns the highest and the lowest that a wall's surface stands off its best plane: at the stations of its profile, and at its
// corners, which lie on the straight line between them. Between two of these both are straight, so no place is higher or lower.
func (s *solver) span(w wall) (high, low unit.Length) {
	d, width := s.twist(w), s.tapedWidth(w)
	corner := d.MulDiv(1, 4)
	high, low = corner, -corner
	for _, p := range w.doc.Profile {
		off := swing(d, p.X, width)
		high, low = max(high, p.Value+off), min(low, p.Value-off)
	}
	return high, low
}

// twisted tells of a tiled wall that is out of a plane, and of one of which nobody can tell.
func (s *solver) twisted(f *Face, w wall) {
	d, at := w.twist, w.doc.At
	switch {
	case d == 0:
		s.oneLean(w)
	case w.plane():
		s.list.Add(diag.Note, "twisted", at, "{0} is twisted: its ends lean {1} differently, so a plane over its high corners stands {2} farther off the two low ones; the joints of its neighbors open by as much there", "",
			diag.T(w.name), diag.X(d), diag.X(s.fine(d.MulDiv(1, 2))))
		s.thickBed(f, at)
		s.twistFlat(f, w, d, at)
	default:
		if !w.doc.Face.Known {
			s.assume(w.doc.At, rule.Practice.String(), "the tile face of {0} follows its twist", diag.T(w.name))
		}
		s.list.Add(diag.Note, "twisted", at, "{0} is twisted: its ends lean {1} differently, and its tile follows; two corners of the tile face are {2} out of the plane of the others", "",
			diag.T(w.name), diag.X(d), diag.X(s.fine(d.MulDiv(1, 2))))
		s.twistFlat(f, w, d, at)
	}
}

// oneLean: where one end of a wall is read out of plumb, the other is not likely to be plumb.
func (s *solver) oneLean(w wall) {
	left, right := s.cornerName(w.left), s.cornerName(w.right)
	_, l := findCorner(w.doc.Lean, left)
	_, r := findCorner(w.doc.Lean, right)
	if l == r {
		return
	}
	silent := left
	if l {
		silent = right
	}
	s.list.Add(diag.Unchecked, "twist-unread", w.doc.At, "not checked: whether {0} is twisted, for its lean is not read at {1}", "hold a level or a plumb line at {1} too", diag.T(w.name), diag.T(silent))
}

// thickBed says where the twist takes more mortar than a thin bed is.
func (s *solver) thickBed(f *Face, at diag.Place) {
	r := rule.BedThinMost
	if f.BedMost > r.Limit {
		s.list.Add(diag.Look, "bed-thick", at, "the bed of {0} is up to {1} thick with its twist; a thin bed is {2} at most", "fill the low corners first, or set in a mortar whose label allows so thick a bed",
			diag.T(f.Name), diag.X(s.fine(f.BedMost)), diag.X(r.Limit)).Rule = r.ID
	}
}

// twistFlat holds the twist against the published flatness. Along the diagonal between its low corners a twisted wall is a parabola, a quarter
// of the twist deep over the whole diagonal; a shorter straightedge on it finds the square of its share.
func (s *solver) twistFlat(f *Face, w wall, d unit.Length, at diag.Place) {
	if w.build.longest == 0 {
		return // said with the straightedge readings
	}
	b := f.Board.Bounds()
	diagonal := geom.Dist(b.Min, b.Max)
	edge := min(10*unit.Foot, diagonal)
	hollow := d.MulDiv(int64(edge), 4*int64(diagonal)).MulDiv(int64(edge), int64(diagonal))
	limit, r := rule.FlatLimit(w.build.longest, edge)
	if hollow <= limit {
		return
	}
	mend := "fill its low corners to a plane before tile is set"
	if w.doc.Face.Or(document.Plane) == document.Follow {
		mend = "fill its low corners to a plane before tile is set, or lay smaller tile"
	}
	s.list.Add(diag.Look, "twist-not-flat", at, "the twist of {0} leaves a gap of {1} under a straightedge of {2} on its diagonal; {3} is allowed for this tile", mend,
		diag.T(f.Name), diag.X(s.fine(hollow)), diag.L(edge), diag.X(s.fine(limit))).Rule = r.ID
}
