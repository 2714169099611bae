package site

import (
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// Across resolves a place along a face for a thing of the given width (0 for a round thing, whose center is meant), taped at the level
// line. It is false where the place names no corner or center line of the face.
func (r Room) Across(face string, a document.Across, width unit.Length) (lo, hi unit.Length, ok bool) {
	f, found := r.Face(face)
	if !found {
		return 0, 0, false
	}
	return f.across(a, width, r.tapedTo, 0)
}

// Up resolves a height on a face for a thing of the given height. "Below the ceiling" counts from the ceiling's lowest point there.
func (r Room) Up(face string, u document.Up, height unit.Length) (lo, hi unit.Length, ok bool) {
	f, found := r.Face(face)
	if !found || !u.Given {
		return 0, 0, false
	}
	return r.up(f, u, height)
}

// across resolves a place that was taped at the height y: from a corner that leans, it is where the corner is at that height. Two figures are two edges; a center is a center; one figure is the edge that is nearest to what it counts from.
func (f Face) across(a document.Across, width unit.Length, touches document.Surface, y unit.Length) (lo, hi unit.Length, ok bool) {
	if !a.Given {
		return 0, 0, false
	}
	from, sign, ok := f.origin(a, a.Touches.Or(touches), y)
	if !ok {
		return 0, 0, false
	}
	p := from + sign*a.Lo
	switch {
	case a.Both:
		q := from + sign*a.Hi
		return min(p, q), max(p, q), true
	case a.Center || a.Side == document.On:
		return p - width/2, p - width/2 + width, true
	case sign < 0:
		return p - width, p, true
	}
	return p, p + width, true
}

// origin is where a place counts from, and in which direction.
func (f Face) origin(a document.Across, touches document.Surface, y unit.Length) (x, sign unit.Length, ok bool) {
	if a.Side == document.FromCorner {
		return f.fromCorner(a.From, touches, y)
	}
	for _, l := range f.Lines {
		if l.Name == a.From {
			if a.Side == document.LeftOf {
				return l.X, -1, true
			}
			return l.X, 1, true
		}
	}
	return 0, 0, false
}

// fromCorner: a wall's corner is where the surface that was taped to stands; other faces have only their two ends.
func (f Face) fromCorner(name string, touches document.Surface, y unit.Length) (x, sign unit.Length, ok bool) {
	b := f.Board.Bounds()
	switch {
	case f.Kind == RevealFace && name == "left":
		return b.Min.X, 1, true
	case f.Kind == RevealFace && name == "right":
		return b.Max.X, -1, true
	case name == "left" || f.LeftCorner != "" && name == f.LeftCorner:
		return f.shape.cornerLeft[touches] + f.shape.left(y), 1, true
	case name == "right" || f.RightCorner != "" && name == f.RightCorner:
		return f.shape.cornerEnd[touches] + f.shape.right(y) - f.shape.width, -1, true
	}
	return 0, 0, false
}

// up: a height above something names the thing's bottom, one below something its top, unless it says center or top.
func (r Room) up(f Face, u document.Up, height unit.Length) (lo, hi unit.Length, ok bool) {
	from, sign, ok := r.datum(f, u.Datum)
	if !ok {
		return 0, 0, false
	}
	p := from + sign*u.Lo
	switch {
	case u.Both:
		q := from + sign*u.Hi
		return min(p, q), max(p, q), true
	case u.Part == document.Middle:
		return p - height/2, p - height/2 + height, true
	case u.Part == document.Top || sign < 0:
		return p - height, p, true
	}
	return p, p + height, true
}

func (r Room) datum(f Face, d document.Datum) (y, sign unit.Length, ok bool) {
	if len(f.shape.ceiling) == 0 {
		return 0, 0, false // the face lies flat, or runs into the wall: it has no heights
	}
	switch d {
	case document.AboveFloor:
		return r.FinishedFloor, 1, r.FinishedKnown
	case document.AboveLevel:
		return 0, 1, true
	case document.BelowLevelLine:
		return 0, -1, true
	}
	low, _ := bounds(f.shape.ceiling)
	return low, -1, true
}

// centerLines places the lines that are written for a face. A line may count from one that is placed already.
func (s *solver) centerLines(f *Face) {
	for _, l := range s.doc.Lines {
		if l.In.Text != f.Name {
			continue
		}
		x, _, ok := f.across(l.Across, 0, s.out.tapedTo, 0)
		if !ok {
			s.unplaced(l.At, l.Name, f.Name)
			continue
		}
		f.Lines = append(f.Lines, CenterLine{l.Name, x})
	}
}
