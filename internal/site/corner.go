package site

import (
	"math"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// corners fills in the solved corners.
func (s *solver) corners() {
	for c, name := range s.doc.Survey.Corners {
		l := s.levels[c]
		k := Corner{Name: name.Text, Raw: s.raw[c], Board: s.point(c, document.Board, document.Plate),
			Finished: s.point(c, document.TileFace, document.Plate), Outside: s.outside(c), Angle: s.angle(c)}
		if l.hasDown {
			k.BareFloor, k.FloorKnown = -l.down, true
		}
		if l.hasUp {
			k.CeilingY, k.CeilingKnown = l.up, true
		}
		s.out.Survey.Corners = append(s.out.Survey.Corners, k)
	}
}

// angle is the inside angle between the finished faces at a corner.
func (s *solver) angle(c int) unit.Angle {
	d := s.surface(document.TileFace, document.Plate)
	a, b := s.line((c+len(s.walls)-1)%len(s.walls), d)
	p, q := s.line(c, d)
	u, v := a.Sub(b), q.Sub(p) // from the corner along both walls
	cross := geom.Cross(geom.Point{}, u, v)
	dot := int64(u.X)*int64(v.X) + int64(u.Y)*int64(v.Y)
	angle := unit.AngleOf(math.Atan2(float64(cross), float64(dot)))
	if angle <= 0 {
		angle += 360 * unit.Degree
	}
	return angle
}

// meeting is how wall i meets its neighbor j at corner c. Its lengths are along wall i, positive into the wall, counted from the corner of
// its board; they come from where the moved lines meet, for only at 90 degrees do they follow by subtraction.
type meeting struct {
	s       *solver
	i, j, c int
	board   axis // wall i's board, away from the corner
}

func (s *solver) meeting(i, c int) meeting {
	m := meeting{s: s, i: i, c: c}
	board := s.surface(document.Board, document.Plate)
	before, after := s.at(c, board)
	if c == s.walls[i].left {
		m.j = (i + len(s.walls) - 1) % len(s.walls)
		_, far := s.line(i, board)
		m.board = newAxis(after, far)
	} else {
		m.j = (i + 1) % len(s.walls)
		far, _ := s.line(i, board)
		m.board = newAxis(before, far)
	}
	return m
}

// along is where a plane of wall i, p off its board, meets a plane of wall j, q off its board.
func (m meeting) along(p, q unit.Length) unit.Length {
	before, after := m.s.at(m.c, func(w, _ int) unit.Length {
		if w == m.i {
			return m.s.walls[w].build.board + p
		}
		return m.s.walls[w].build.board + q
	})
	if m.i == m.c {
		return m.board.x(after)
	}
	return m.board.x(before)
}

// clear is how far in wall i's tile must end to stay q off the neighbor's board: the tighter of its back and its face.
func (m meeting) clear(q unit.Length) unit.Length {
	b := m.s.walls[m.i].build
	return max(m.along(b.bed, q), m.along(b.finish(), q))
}

// edgeAtCorner is the edge of wall i's face at its corner c.
func (s *solver) edgeAtCorner(i, c int) Edge {
	m := s.meeting(i, c)
	rules := s.cornerRules(c)
	e := Edge{Name: "corner " + s.cornerName(c), At: rules.At, Other: s.walls[m.j].name}
	switch {
	case s.inLine(c):
		e.Kind = FreeEdge
	case s.outside(c):
		s.outsideEdge(&e, m, rules)
	default:
		s.insideEdge(&e, m, rules)
	}
	return e
}

// inLine reports whether the walls at a corner go on in one line, or so nearly that there is no change of plane.
func (s *solver) inLine(c int) bool {
	a, b := s.line((c+len(s.walls)-1)%len(s.walls), bare)
	p, q := s.line(c, bare)
	return gentle(a, b, p, q)
}

// bare is the depth of the studs.
func bare(int, int) unit.Length { return 0 }

func (s *solver) cornerRules(c int) document.Corner {
	for _, k := range s.doc.Corners {
		if k.Name == s.cornerName(c) {
			return k
		}
	}
	return document.Corner{Name: s.cornerName(c), At: diag.Place{Path: "corners > " + s.cornerName(c)}}
}

// insideEdge: the face that is set first runs to a soft joint short of the neighbor's board, and the neighbor's tile hides the end
// of it; the one set later ends a soft joint short of the neighbor's tile.
func (s *solver) insideEdge(e *Edge, m meeting, rules document.Corner) {
	own, other := s.walls[m.i], s.walls[m.j]
	e.Kind, e.Soft, e.Weight = InsideCorner, true, weightInside
	e.Joint = rules.Joint.V
	if !rules.Joint.Known {
		e.Joint = s.softJoint()
	}
	e.Runs = own.build.set && other.build.set && s.rank[own.name] < s.rank[other.name]
	if !e.Runs {
		e.Gap = m.clear(other.build.finish() + e.Joint)
		return
	}
	e.Gap = m.clear(e.Joint)
	e.Hidden = max(0, m.along(own.build.finish(), other.build.finish())-e.Gap)
}

// Weights of edges for the eye: how much a sliver at the edge is noticed.
const (
	weightFloor   = 1
	weightInside  = 2
	weightCeiling = 2
	weightRim     = 3
	weightOutside = 3
)

// softJoint is the flexible joint at a change of plane.
func (s *solver) softJoint() unit.Length {
	if j := s.doc.Setting.SoftJoint; j.Known {
		return j.V
	}
	r := rule.SoftJointLeast
	if len(s.names) > 0 {
		s.assume(s.doc.Setting.At, r.Cite(), "soft joints of {0} at changes of plane", diag.F(r.Limit))
	}
	return r.Limit
}

// jointOr is a written joint, or the soft joint.
func (s *solver) jointOr(v document.Value[unit.Length]) unit.Length {
	if v.Known {
		return v.V
	}
	return s.softJoint()
}

// outsideEdge: the finished corner stands off the board's corner by the neighbor's bed and tile.
func (s *solver) outsideEdge(e *Edge, m meeting, rules document.Corner) {
	own, other := s.walls[m.i], s.walls[m.j]
	e.Kind, e.Weight = OutsideCorner, weightOutside
	end := m.along(own.build.finish(), other.build.finish())
	first := !other.build.set || own.build.set && s.rank[own.name] < s.rank[other.name]
	s.rim(e, rimOf{rules.Edge, rules.Trim, rules.Joint, e.At}, end, first, own.build, other.build)
}

// rimOf is what is written about an outside corner or the rim of an opening.
type rimOf struct {
	edge        document.Value[document.EdgeRule]
	trim, joint document.Value[unit.Length]
	at          diag.Place
}

// rim ends a face at an outside corner; end is where the finished corner is, counted from the board's. A profile takes the corner,
// as wide as it shows; a miter reaches the finished corner; with a lap the face that is set first ends with its board and the other
// reaches over its edge to the finished corner, where its own edge shows.
func (s *solver) rim(e *Edge, r rimOf, end unit.Length, first bool, own, other build) {
	if !r.edge.Known && own.set {
		s.assume(r.at, rule.Practice.String(), "{0} ends in a trim profile", diag.T(e.Name))
	}
	switch r.edge.Or(document.TrimProfile) {
	case document.Miter:
		e.Gap, e.Miter, e.Joint = end+r.joint.V, true, r.joint.V
	case document.Lap:
		e.Runs = first
		if first {
			e.Joint = other.bed
			return
		}
		e.Gap, e.Shows = end, true
	default:
		e.Gap = end + s.trim(r, own, other)
	}
}

// trim is the width that a profile shows, on both its faces: written, or as much as the thicker tile.
func (s *solver) trim(r rimOf, own, other build) unit.Length {
	if r.trim.Known {
		return r.trim.V
	}
	usual := max(own.tile, other.tile)
	if own.set {
		s.assume(r.at, rule.Practice.String(), "the trim profile shows as wide as the thicker tile at it, {0}", diag.F(usual))
	}
	return usual
}

// solved reports whether wall i and both its neighbors have known thicknesses, without which its edges are not known.
func (s *solver) solved(i int) bool {
	n := len(s.walls)
	return s.walls[i].build.known && s.walls[(i+1)%n].build.known && s.walls[(i+n-1)%n].build.known
}
