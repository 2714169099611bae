package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// Scribe is the line to which one edge of a part is cut so that it lies against a wall or a floor.
type Scribe struct {
	Name, For  string
	At         diag.Place
	Edge       document.ScribeEdge
	Line       []ScribePoint // along the edge, from its left end; of an end or a side from the back
	Needs      unit.Length   // what has to be left on: the deepest cut
	Leave      unit.Length   // what is left on; valid if LeaveKnown
	LeaveKnown bool
	Length     unit.Length // of the edge; 0 where the part is not known
	Origin     string      // what the line counts from: "left end", "back", "foot"
	Turned     bool        // with the face up and this edge away from the person, the line runs from the right hand
	Source     string      // "offsets taken at stations", "the wall's own readings"
}

// ScribePoint is one station: how far the wall is off the part when it is set parallel, and how much is cut off there.
type ScribePoint struct{ At, Offset, Cut unit.Length }

// scribes are the lines that one entry asks for.
func (r *room) scribes(doc document.Scribe) []Scribe {
	if len(doc.Offsets) == 0 && doc.Edge.Or(document.ScribeBack) == document.ScribeFoot {
		return r.footScribes(doc)
	}
	if s, ok := r.scribe(doc); ok {
		return []Scribe{s}
	}
	return nil
}

// scribe works one edge out. The part is set parallel to the wall; where the gap is widest nothing comes off, where the wall comes
// nearest the difference does.
func (r *room) scribe(doc document.Scribe) (Scribe, bool) {
	s := Scribe{Name: doc.Name, For: doc.For.Text, At: doc.At, Edge: doc.Edge.Or(document.ScribeBack), Source: "offsets taken at stations",
		Leave: doc.Leave.V, LeaveKnown: doc.Leave.Known}
	wall := r.edgeOf(&s)
	s.Origin, s.Turned = "left end", s.Edge == document.ScribeFoot
	if s.Edge == document.ScribeLeft || s.Edge == document.ScribeRight {
		s.Origin, s.Turned = "back", s.Edge == document.ScribeLeft
		if _, upright := r.made(s.For); upright { // a filler stands, its face to the room
			s.Origin, s.Turned = "foot", s.Edge == document.ScribeRight
		}
	}
	stations := doc.Offsets
	if len(stations) == 0 {
		stations = r.ownReadings(&s, wall)
	}
	if len(stations) < 2 {
		r.lacks(doc.At, "offsets for "+doc.Name+" (two stations at least)")
		return s, false
	}
	widest := stations[0].Value
	for _, p := range stations {
		widest = max(widest, p.Value)
	}
	for _, p := range stations {
		s.Line = append(s.Line, ScribePoint{p.X, p.Value, widest - p.Value})
		s.Needs = max(s.Needs, widest-p.Value)
	}
	r.checkScribe(doc, s, wall)
	return s, true
}

// edgeOf finds the length of the edge and the wall that it goes to.
func (r *room) edgeOf(s *Scribe) string {
	for _, t := range r.plan.Tops {
		if t.Name != s.For {
			continue
		}
		s.Length = t.Width
		if s.Edge == document.ScribeLeft || s.Edge == document.ScribeRight {
			s.Length = t.Depth - t.Back
		}
		return r.neighbor(t.Wall, s.Edge)
	}
	if c, ok := r.made(s.For); ok {
		s.Length = c.Asked.Size(xAxis)
		if s.Edge == document.ScribeLeft || s.Edge == document.ScribeRight {
			s.Length = c.Asked.Size(yAxis)
		}
		return r.neighbor(c.Wall, s.Edge)
	}
	return ""
}

// neighbor is the wall that an edge goes to: the part's own, or the one round the corner.
func (r *room) neighbor(wall string, e document.ScribeEdge) string {
	f, ok := r.shape.Face(wall)
	if !ok {
		return ""
	}
	for _, o := range r.shape.Faces {
		if o.Kind == site.WallFace && (e == document.ScribeLeft && o.RightCorner == f.LeftCorner || e == document.ScribeRight && o.LeftCorner == f.RightCorner) {
			return o.Name
		}
	}
	if e == document.ScribeBack {
		return wall
	}
	return ""
}

// ownReadings are offsets from the readings of the wall itself, over the edge: how far it is behind its own highest spot. A wall whose
// tile face is a plane has none left.
func (r *room) ownReadings(s *Scribe, wall string) []document.Station {
	if s.Edge == document.ScribeLeft || s.Edge == document.ScribeRight {
		return r.besideReadings(s)
	}
	for _, w := range r.doc.Walls {
		if w.Name != wall || s.Edge != document.ScribeBack || len(w.Profile) < 2 {
			continue
		}
		if f, _ := r.shape.Face(wall); f.Set && w.Face.Or(document.Plane) == document.Plane {
			r.found.Add(diag.Note, "scribe-plane", s.At, "{0} is tiled as a plane: by its readings there is nothing to scribe at {1}", "take offsets once the tile is set", diag.T(wall), diag.T(s.For))
			return nil
		}
		s.Source = "the wall's own readings"
		x0 := r.startOf(s.For)
		return offsetsOf(w.Profile, x0, x0+s.Length)
	}
	return nil
}

// startOf is where a part's left end is on its wall.
func (r *room) startOf(name string) unit.Length {
	for _, t := range r.plan.Tops {
		if t.Name == name {
			return t.X
		}
	}
	c, _ := r.made(name)
	return c.X
}

// offsetsOf reads a profile between two places: its own stations there and both ends, as how far each is behind the nearest.
func offsetsOf(profile []document.Station, from, to unit.Length) []document.Station {
	all := []document.Station{{X: 0, Value: profileAt(profile, from)}}
	for _, p := range profile {
		if p.X > from && p.X < to {
			all = append(all, document.Station{X: p.X - from, Value: p.Value})
		}
	}
	all = append(all, document.Station{X: to - from, Value: profileAt(profile, to)})
	near := all[0].Value
	for _, p := range all {
		near = max(near, p.Value)
	}
	for i := range all {
		all[i].Value = near - all[i].Value
	}
	return all
}

// profileAt reads a profile between its stations, straight, rounded once; beyond its ends it goes on level.
func profileAt(profile []document.Station, x unit.Length) unit.Length {
	for i := 1; i < len(profile); i++ {
		a, b := profile[i-1], profile[i]
		if x <= b.X {
			if x <= a.X {
				return a.Value
			}
			return a.Value + (b.Value-a.Value).MulDiv(int64(x-a.X), int64(b.X-a.X))
		}
	}
	return profile[len(profile)-1].Value
}

// checkScribe holds what is left on against what comes off, and asks for offsets from the tile itself.
func (r *room) checkScribe(doc document.Scribe, s Scribe, wall string) {
	switch {
	case !s.LeaveKnown:
		r.found.Add(diag.Unchecked, "scribe-leave", doc.At, "how much is left on {0} for scribing is not written; {1} are needed", "add leave: {1} or more", diag.T(s.For), diag.X(s.Needs))
	case s.Leave < s.Needs:
		r.stop("scribe-short", doc.Leave.At, "{0} has {1} to spare for scribing, and {2} come off at the deepest place", "leave {2} or more on before it is cut", diag.T(s.For), diag.X(s.Leave), diag.X(s.Needs))
	}
	if f, ok := r.shape.Face(wall); ok && f.Set && doc.TakenOn.Or(document.TileFace) != document.TileFace {
		r.look("scribe-early", doc.TakenOn.At, "the offsets for {0} were taken before {1} is tiled; the tile face is another line", "take them again on the tile", diag.T(s.For), diag.T(wall))
	}
	if last := s.Line[len(s.Line)-1].At; s.Length > 0 && last > s.Length {
		r.look("scribe-long", doc.At, "a station at {1} lies beyond the edge of {0}, which is {2} long", "check the station", diag.T(s.For), diag.X(last), diag.X(s.Length))
	}
}
