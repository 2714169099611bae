package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// unplaced says that a thing has no place that can be worked out.
func (s *solver) unplaced(at diag.Place, name, face string) {
	s.list.Add(diag.Stop, "place-unknown", at, "where {0} is on {1} can not be worked out", "write across: from a corner of that wall or a center line on it, and up: above floor, or from the level line", diag.T(name), diag.T(face))
}

// openings places the openings and boxes of a wall and returns what they cut out of it.
func (s *solver) openings(f *Face, outer geom.Region) []hole {
	var holes []hole
	for _, o := range s.doc.Openings {
		if o.In.Text != f.Name {
			continue
		}
		r, ok := s.openingRect(*f, o)
		if !ok {
			s.unplaced(o.At, o.Name, f.Name)
			continue
		}
		if s.within(*f, outer, o.Name, o.At, r, o.Kind == document.Door) {
			holes = s.opening(f, holes, o, r)
		}
	}
	for _, b := range s.doc.Boxes {
		if b.In.Text == f.Name {
			holes = s.box(f, outer, holes, b)
		}
	}
	s.overlaps(f)
	return holes
}

// openingRect is the opening at the board: as measured, less the board of its reveals where that is written. A door that starts
// at the floor reaches below the lowest floor along the wall, so that nothing is left under it.
func (s *solver) openingRect(f Face, o document.Opening) (geom.Rect, bool) {
	bottom, top, ok := s.bottomTop(f, o)
	if !ok {
		return geom.Rect{}, false
	}
	lo, hi, ok := f.across(o.Across, o.Width.V, s.out.tapedTo, (bottom+top)/2)
	if !ok || !o.Across.Both && !o.Width.Known {
		return geom.Rect{}, false
	}
	b := s.revealBuild(o, "").board
	r := geom.Rect{Min: geom.Point{X: lo + b, Y: bottom + b}, Max: geom.Point{X: hi - b, Y: top - b}}
	if lowest, highest := bounds(f.Bare); o.Kind == document.Door && bottom <= highest+s.floor.board+s.floor.finish() {
		r.Min.Y = lowest - doorBelow
	}
	return r, r.W() > 0 && r.H() > 0
}

// doorBelow is how far below the bare floor a door's opening is carried; any length will do.
const doorBelow = unit.Inch

// bottomTop is an opening's bottom and top. A door without a height of its own stands on the finished floor.
func (s *solver) bottomTop(f Face, o document.Opening) (lo, hi unit.Length, ok bool) {
	u := o.Up
	if !u.Given && o.Kind == document.Door {
		u = document.Up{Given: true, Datum: document.AboveFloor}
	}
	if !u.Given || !u.Both && !o.Height.Known {
		return 0, 0, false
	}
	return s.out.up(f, u, o.Height.V)
}

// within reports whether a thing lies in its wall, and says so if it does not. Of a door the part above the floor counts.
func (s *solver) within(f Face, outer geom.Region, name string, at diag.Place, r geom.Rect, door bool) bool {
	if door {
		_, r.Min.Y = bounds(f.Bare)
		r.Min.Y = min(r.Min.Y+s.floor.board, r.Max.Y)
	}
	if outer.Covers(shrunk(r, edgeSlack)) {
		return true // what hangs over is cut off with the wall
	}
	b := outer.Bounds()
	over := max(b.Min.X-r.Min.X, b.Min.Y-r.Min.Y, r.Max.X-b.Max.X, r.Max.Y-b.Max.Y)
	if over > 0 {
		s.list.Add(diag.Stop, "outside-wall", at, "{0} reaches {1} outside {2}", "look at its place and size", diag.T(name), diag.X(s.fine(over)), diag.T(f.Name))
	} else {
		s.list.Add(diag.Stop, "outside-wall", at, "{0} reaches outside {1}, over a side that is not square", "look at its place and size", diag.T(name), diag.T(f.Name))
	}
	return false
}

// edgeSlack is how far an opening may reach over the edge of its wall: one from corner to corner does where the wall is out of plumb (our own).
const edgeSlack = unit.Inch / 4

// shrunk moves the sides of a rectangle in, or to its middle.
func shrunk(r geom.Rect, by unit.Length) geom.Rect {
	x, y := min(by, r.W()/2), min(by, r.H()/2)
	return geom.Rect{Min: geom.Point{X: r.Min.X + x, Y: r.Min.Y + y}, Max: geom.Point{X: r.Max.X - x, Y: r.Max.Y - y}}
}

// opening cuts an opening out of its wall.
func (s *solver) opening(f *Face, holes []hole, o document.Opening, r geom.Rect) []hole {
	first := geom.Label(len(f.Edges) + 1)
	for _, side := range [...]string{"left", "sill", "right", "head"} {
		f.Edges = append(f.Edges, s.edgeAtOpening(*f, o, side))
	}
	f.Openings = append(f.Openings, Opening{Name: o.Name, At: o.At, Kind: kindName(o.Kind), Rect: r, Depth: o.Depth.V, Moves: o.Moves.V})
	return append(holes, hole{r, first})
}

func kindName(k document.OpeningKind) string {
	return [...]string{"window", "door", "niche", "opening"}[k]
}

// sideName names an opening's edge as seen on the wall.
var sideName = map[string]string{"left": "left", "right": "right", "sill": "bottom", "head": "top"}

// edgeAtOpening: where the reveal is tiled the rim is an outside corner; else tile ends a joint from the frame.
func (s *solver) edgeAtOpening(f Face, o document.Opening, side string) Edge {
	reveal := o.Name + " > " + side
	e := Edge{Kind: OpeningEdge, Name: o.Name + ", " + sideName[side], At: o.At, Weight: weightRim}
	if s.rank[reveal] == 0 {
		e.Joint, e.Soft = s.frameJoint(o), true
		e.Gap = e.Joint
		return e
	}
	e.Other = reveal
	own, other := s.walls[s.wallIndex(f.Name)].build, s.revealBuild(o, side)
	first := s.rank[f.Name] < s.rank[reveal]
	s.rim(&e, rimOf{o.Edge, o.Trim, o.Joint, o.At}, -other.finish(), first, own, other)
	return e
}

func (s *solver) frameJoint(o document.Opening) unit.Length {
	if o.Joint.Known {
		return o.Joint.V
	}
	r := rule.FrameJoint
	if s.rank[o.In.Text] > 0 || s.tiledInside(o) {
		s.assume(o.At, r.Cite(), "a joint of {0} where tile ends at {1}", diag.F(r.Limit), diag.T(o.Name))
	}
	return r.Limit
}

// box cuts a rectangular penetration out of a face. A plate covers its edge, so that tile may end at it.
func (s *solver) box(f *Face, outer geom.Region, holes []hole, b document.Box) []hole {
	bottom, top, okY := s.out.up(*f, b.Up, b.Height.V)
	lo, hi, okX := f.across(b.Across, b.Width.V, s.out.tapedTo, (bottom+top)/2)
	r := geom.Rect{Min: geom.Point{X: lo, Y: bottom}, Max: geom.Point{X: hi, Y: top}}
	if !okX || !okY || !b.Up.Given || r.W() <= 0 || r.H() <= 0 {
		s.unplaced(b.At, b.Name, f.Name)
		return holes
	}
	if !s.within(*f, outer, b.Name, b.At, r, false) {
		return holes
	}
	return s.cutBox(f, holes, b, r)
}

func (s *solver) cutBox(f *Face, holes []hole, b document.Box, r geom.Rect) []hole {
	first := geom.Label(len(f.Edges) + 1)
	for _, side := range [...]string{"left", "bottom", "right", "top"} {
		f.Edges = append(f.Edges, Edge{Kind: OpeningEdge, Name: b.Name + ", " + side, At: b.At})
	}
	f.Openings = append(f.Openings, Opening{Name: b.Name, At: b.At, Kind: "box", Rect: r})
	return append(holes, hole{r, first})
}

// overlaps says which openings lie over each other.
func (s *solver) overlaps(f *Face) {
	for i, a := range f.Openings {
		for _, b := range f.Openings[:i] {
			if a.Rect.Overlaps(b.Rect) {
				s.list.Add(diag.Stop, "openings-overlap", a.At, "{0} overlaps {1} on {2}", "look at their places and sizes", diag.T(a.Name), diag.T(b.Name), diag.T(f.Name))
			}
		}
	}
}
