package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// reveal is an opening whose inner faces are tiled. Its corners are taken as square: it was framed and boarded by the same hand.
type reveal struct {
	s     *solver
	o     document.Opening
	wall  wall
	face  Face      // of the wall
	rect  geom.Rect // at the board
	depth unit.Length
	fall  unit.Ratio
}

// reveals builds the faces of openings that tile is laid on.
func (s *solver) reveals() {
	for _, o := range s.doc.Openings {
		if !s.tiledInside(o) {
			continue
		}
		if v, ok := s.reveal(o); ok {
			for _, part := range revealParts {
				v.build(part)
			}
		}
	}
}

func (s *solver) tiledInside(o document.Opening) bool {
	for _, part := range revealParts {
		if s.rank[o.Name+" > "+part] > 0 {
			return true
		}
	}
	return false
}

// reveal finds the opening on its solved wall. Where the wall or the opening was left out, that has been said.
func (s *solver) reveal(o document.Opening) (reveal, bool) {
	f, ok := s.out.Face(o.In.Text)
	i := s.wallIndex(o.In.Text)
	if !ok || i < 0 {
		return reveal{}, false
	}
	for _, p := range f.Openings {
		if p.Name == o.Name {
			v := reveal{s: s, o: o, wall: s.walls[i], face: f, rect: p.Rect}
			return v, v.measure()
		}
	}
	return reveal{}, false
}

// measure settles depth and fall. The depth is from the wall's board to what is behind: a frame, or a niche's bare back.
func (v *reveal) measure() bool {
	if d := v.o.Depth; d.At.Line > 0 && !d.Known && !d.Unknown {
		return false // what is written there can not be read: that has been told
	}
	if !v.o.Depth.Known {
		v.s.list.Add(diag.Stop, "depth-unknown", v.o.At, "how deep {0} is is not known", "write depth: from the wall's board to the frame or the back", diag.T(v.o.Name))
		return false
	}
	v.depth = v.o.Depth.V
	if v.o.Kind == document.Niche {
		v.depth -= v.s.revealBuild(v.o, "back").board
	}
	if v.o.Kind == document.Door {
		low, _ := bounds(v.face.Bare)
		v.rect.Min.Y = low + v.s.floor.board
	}
	v.fall = v.sillFall()
	if v.depth <= 0 {
		v.s.list.Add(diag.Stop, "depth-too-small", v.o.At, "nothing is left of the depth of {0} behind its build-up", "look at its depth and layers", diag.T(v.o.Name))
	}
	return v.depth > 0
}

// sillFall is the outward fall of the sill: written, or usual where the sill is tiled.
func (v *reveal) sillFall() unit.Ratio {
	switch {
	case v.o.SillFall.Known:
		return v.o.SillFall.V
	case v.s.rank[v.o.Name+" > sill"] == 0 || v.o.Kind == document.Door:
		return 0
	}
	r := rule.SillFall
	v.s.assume(v.o.At, r.Cite(), "the sill of {0} falls outward by {1}", diag.T(v.o.Name), diag.Percent(r.Ratio))
	return r.Ratio
}

// revealBuild is the build-up of one inner face of an opening; its layers are those of the opening.
func (s *solver) revealBuild(o document.Opening, part string) build {
	name := o.Name + " > " + part
	if b, ok := s.inner[name]; ok {
		return b
	}
	b := s.buildUp(name, o.At, o.BuildUp)
	s.inner[name] = b
	return b
}

// build makes the face of one part, if tile is laid on it.
func (v reveal) build(part string) {
	name := v.o.Name + " > " + part
	b := v.s.revealBuild(v.o, part)
	if !b.set || !b.known {
		return
	}
	if part == "back" && v.o.Kind != document.Niche {
		v.s.list.Add(diag.Stop, "no-back", v.o.At, "{0} has no back to lay tile on", "lay on its sill, head or jambs, or write kind: niche", diag.T(v.o.Name))
		return
	}
	f := Face{Name: name, At: v.o.At, Kind: RevealFace, Set: true, Order: v.s.rank[name],
		BoardThick: b.board, BedThick: b.bed, TileThick: b.tile, BedLeast: b.least, BedMost: b.most, TileOff: b.finish()}
	outer := geom.Region{v.ring(part)}
	if part == "back" {
		f.LeftCorner, f.RightCorner, f.Lines, f.shape = v.face.LeftCorner, v.face.RightCorner, v.face.Lines, v.face.shape
	} else {
		f.Edges = append(f.Edges, v.rimEdge(part, b))
	}
	if part == "sill" {
		f.SlopeFall = v.fall
	}
	for _, other := range around[part] {
		f.Edges = append(f.Edges, v.edge(part, other))
	}
	v.s.cutOut(&f, outer, nil)
	v.s.holes(&f)
	v.s.out.Faces = append(v.s.out.Faces, f)
}

// around lists what a part's edges meet after its rim, counter-clockwise in its frame, as ring draws it.
var around = map[string][]string{
	"back":  {"sill", "right", "head", "left"},
	"sill":  {"right", "back", "left"},
	"head":  {"right", "back", "left"},
	"left":  {"head", "back", "sill"},
	"right": {"head", "back", "sill"},
}

// ring outlines a part's board in its frame. The sill is higher at its back by its fall; that it is longer by the slope, 0.02 % at 2 %, is
// left out.
func (v reveal) ring(part string) geom.Ring {
	r, rise := v.rect, v.fall.Of(v.depth)
	switch part {
	case "back":
		r.Min.Y += rise
		return geom.RectRing(r, 4, 1, 2, 3)
	case "sill", "head":
		return geom.RectRing(geom.Rect{Max: geom.Point{X: r.W(), Y: v.depth}}, 4, 1, 2, 3)
	}
	return geom.Ring{{P: geom.Point{}, Edge: 1}, {P: geom.Point{X: r.H()}, Edge: 2},
		{P: geom.Point{X: r.H(), Y: v.depth}, Edge: 3}, {P: geom.Point{X: rise, Y: v.depth}, Edge: 4}}
}

// rimEdge is the edge toward the room, an outside corner with the wall.
func (v reveal) rimEdge(part string, b build) Edge {
	e := Edge{Kind: OutsideCorner, Name: v.o.Name + ", rim", At: v.o.At, Other: v.wall.name, Weight: weightOutside}
	first := !v.wall.build.set || v.s.rank[v.o.Name+" > "+part] < v.s.rank[v.wall.name]
	v.s.rim(&e, rimOf{v.o.Edge, v.o.Trim, v.o.Joint, v.o.At}, -v.s.finishOver(v.wall, v.face, v.rimAt(part)), first, b, v.wall.build)
	return e
}

// rimAt is where along the wall a part's rim is; a sill or head goes by its middle.
func (v reveal) rimAt(part string) unit.Length {
	switch part {
	case "left":
		return v.rect.Min.X
	case "right":
		return v.rect.Max.X
	}
	return (v.rect.Min.X + v.rect.Max.X) / 2
}

// edge is where a part meets another: an inside corner, a frame, or, where the opening goes through, nothing.
func (v reveal) edge(part, other string) Edge {
	e := Edge{Kind: InsideCorner, Name: v.o.Name + ", " + other, At: v.o.At, Other: v.o.Name + " > " + other, Soft: true, Weight: weightInside}
	switch {
	case other == "back" && v.o.Kind == document.Plain:
		return Edge{Kind: FreeEdge, Name: v.o.Name + ", far side", At: v.o.At, Shows: true, Weight: weightRim}
	case other == "back" && v.o.Kind != document.Niche:
		e.Name, e.Other, e.Joint = v.o.Name+", frame", "", v.s.frameJoint(v.o)
		e.Gap = e.Joint
		return e
	case other == "sill" && v.o.Kind == document.Door:
		e.Kind, e.Name, e.Other, e.Joint = AtFloor, floorName, floorName, v.s.jointOr(v.s.doc.Setting.FloorJoint)
		e.Gap = v.s.floor.finish() + e.Joint
		return e
	}
	v.inside(&e, part, other)
	return e
}

// inside: the part that is set first runs through behind the other.
func (v reveal) inside(e *Edge, part, other string) {
	e.Joint = v.s.softJoint()
	own, theirs := v.s.rank[v.o.Name+" > "+part], v.s.rank[e.Other]
	over := v.s.revealBuild(v.o, other).finish()
	if e.Runs = theirs > 0 && own < theirs; e.Runs {
		e.Gap, e.Hidden = e.Joint, max(0, over-e.Joint)
		return
	}
	e.Gap = over + e.Joint
}
