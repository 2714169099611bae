package joinery

import (
	"math"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Hole is a hole through a top, or a recess in it. X and Z are its middle, from the left end of the top and off the finished wall.
type Hole struct {
	Name    string
	At      diag.Place
	X, Z    unit.Length
	Outline document.Outline
	Recess  unit.Length // 0: it goes through
	Passes  unit.Length // diameter of what stands still in it; 0 unknown or nothing
	Notch   bool        // open to the front edge
	Pipe    bool        // a pipe goes down through it to the wall, which stands still
	Held    bool        // what goes through is clamped to the top: it moves with it
}

// Bounds are the hole's extents: x from the left end, y off the finished wall.
func (h Hole) Bounds() geom.Rect {
	return geom.Rect{Min: geom.Point{X: h.X - h.Outline.Across/2, Y: h.Z - h.Outline.Deep/2}, Max: geom.Point{X: h.X + h.Outline.Across/2, Y: h.Z + h.Outline.Deep/2}}
}

// arcSteps to a full turn: at a radius of 400 mm the chord lies 0.06 mm inside the arc, less than a pencil line.
const arcSteps = 180

// Ring is the outline, counter-clockwise in x and z; each vertex of an arc is rounded once.
func (h Hole) Ring() geom.Ring {
	o := h.Outline
	rx, rz := o.Across/2, o.Deep/2
	if o.Kind == document.PolygonOutline {
		return polygon(o, geom.Point{X: h.X - rx, Y: h.Z - rz})
	}
	if o.Kind != document.RectangleOutline {
		return arc(nil, geom.Point{X: h.X, Y: h.Z}, rx, rz, 0, arcSteps)
	}
	if o.Radius == 0 {
		return rectRing(h.Bounds())
	}
	var ring geom.Ring
	for q, c := range []geom.Point{{X: rx - o.Radius, Y: rz - o.Radius}, {X: o.Radius - rx, Y: rz - o.Radius}, {X: o.Radius - rx, Y: o.Radius - rz}, {X: rx - o.Radius, Y: o.Radius - rz}} {
		ring = arc(ring, geom.Point{X: h.X + c.X, Y: h.Z + c.Y}, o.Radius, o.Radius, q*arcSteps/4, (q+1)*arcSteps/4+1)
	}
	return ring
}

// polygon is an outline of its own corners, counter-clockwise.
func polygon(o document.Outline, from geom.Point) geom.Ring {
	var ring geom.Ring
	for _, c := range o.Points {
		ring = append(ring, geom.Vertex{P: from.Add(geom.Point{X: c.Right, Y: c.Off})})
	}
	if ring.Area2() < 0 {
		ring = ring.Reverse()
	}
	return ring
}

// arc adds vertices from one step to before another.
func arc(ring geom.Ring, c geom.Point, rx, rz unit.Length, from, to int) geom.Ring {
	for i := from; i < to; i++ {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / arcSteps)
		ring = append(ring, geom.Vertex{P: geom.Point{X: c.X + unit.FromFloat(float64(rx)*cos), Y: c.Y + unit.FromFloat(float64(rz)*sin)}})
	}
	return ring
}

// holes gathers the recess and the cut-outs that the document asks for.
func (s *slab) holes() {
	s.recess()
	s.sunk()
	for _, c := range s.doc.CutOuts {
		x, ok := s.along(c.Across)
		if !ok || !c.Off.Known || !c.Outline.Known {
			s.r.lacks(c.At, "the place or the outline of "+c.Name)
			continue
		}
		s.t.Holes = append(s.t.Holes, Hole{Name: c.Name, At: c.At, X: x, Z: c.Off.V, Outline: c.Outline.V, Passes: c.Pipe.Or(0)})
	}
}

// along is a place on the wall as x from the left end of the top.
func (s *slab) along(a document.Across) (unit.Length, bool) {
	lo, hi, ok := s.r.shape.Across(s.t.Wall, a, 0)
	return (lo+hi)/2 - s.t.X, ok
}

func (s *slab) recess() {
	doc := s.doc.Recess
	if !doc.Given {
		return
	}
	o, x, z, ok := s.seat()
	if !ok || !doc.Depth.Known {
		s.r.lacks(doc.At, "the depth, the place or the outline of the recess in "+s.t.Name)
		return
	}
	o = s.grown(o, s.r.usual(doc.Room, s.r.round(unit.Inch/16, 3*unit.Millimetre/2), doc.At, "the room round what sits in the recess of "+s.t.Name), doc.At)
	s.t.Holes = append(s.t.Holes, Hole{Name: "recess", At: doc.At, X: x, Z: z, Outline: o, Recess: doc.Depth.V})
}

// cut takes a hole out of the part: round ones as bores, others along their outline; a recess as a pocket over its extents, whose true
// outline the drawing and the template show.
func (s *slab) cut(p *Piece, h Hole) {
	in := h.Bounds()
	box := span(in.Min.X, in.Max.X, s.t.Up+s.t.Thick-h.Recess, s.t.Up+s.t.Thick, in.Min.Y, in.Max.Y)
	switch {
	case h.Recess > 0 && h.Outline.Kind == document.RoundOutline:
		p.hole(part.Hole{Diameter: h.Outline.Across, Depth: h.Recess, For: h.Name}, Point{h.X, 0, h.Z}, up)
	case h.Recess > 0:
		p.channel(part.Recess, box, up, h.Name)
	case h.Outline.Kind == document.RoundOutline:
		p.hole(part.Hole{Diameter: h.Outline.Across, Depth: s.t.Thick, Through: true, For: h.Name}, Point{h.X, 0, h.Z}, up)
	default:
		p.Part.Cutouts = append(p.Part.Cutouts, part.Cutout{Outline: s.onFace(h.Ring()), For: h.Name})
	}
}

// onFace carries an outline from the top's frame onto the face of its part: y from the front edge.
func (s *slab) onFace(r geom.Ring) geom.Ring {
	out := make(geom.Ring, len(r))
	for i, v := range r {
		out[len(r)-1-i] = geom.Vertex{P: geom.Point{X: v.P.X, Y: s.t.Depth - v.P.Y}}
	}
	return out
}

// Wood is what is left beside or under a hole.
type Wood struct {
	Of, To     string // "recess", "front edge"
	Left, Need unit.Length
}

// woods holds what is left beside and under every hole against what has to be.
func (s *slab) woods() {
	need := s.leastWood()
	for i, h := range s.t.Holes {
		b := h.Bounds()
		if !h.Notch {
			s.wood(h, need, Wood{h.Name, "front edge", s.t.Depth - b.Max.Y, need})
		}
		s.wood(h, need, Wood{h.Name, "rear edge", b.Min.Y - s.t.Back, need})
		s.wood(h, need, Wood{h.Name, "left end", b.Min.X, need})
		s.wood(h, need, Wood{h.Name, "right end", s.t.Width - b.Max.X, need})
		for _, o := range s.t.Holes[i+1:] {
			if h.Recess == 0 && o.Recess == 0 && !h.Notch && !o.Notch {
				s.wood(h, need, Wood{h.Name, o.Name, between(h, o), need})
			}
		}
		if h.Recess > 0 {
			low := s.r.usual(s.doc.LeastLow, s.t.Thick/2, s.doc.At, "the least wood under a recess in "+s.t.Name)
			s.wood(h, low, Wood{h.Name, "underside", s.t.Thick - h.Recess, low})
		}
	}
}

// leastWood is what has to be left beside a hole.
func (s *slab) leastWood() unit.Length {
	if len(s.t.Holes) == 0 {
		return 0
	}
	return s.r.usual(s.doc.Least, s.r.round(2*unit.Inch, 50*unit.Millimetre), s.doc.At, "the least wood beside holes in "+s.t.Name)
}

func (s *slab) wood(h Hole, need unit.Length, w Wood) {
	s.t.Woods = append(s.t.Woods, w)
	if w.Left < need {
		s.r.stop("wood-thin", h.At, "{1} of {0} leaves {2} to the {3}; {4} are needed", "move or shrink it by {5}, make the top larger, or write a smaller least wood", diag.T(s.t.Name), diag.T(w.Of), diag.L(w.Left), diag.T(w.To), diag.X(need), diag.L(need-w.Left))
	}
}

// between is the wood between two holes; less than nothing where they meet.
func between(a, b Hole) unit.Length {
	if a.Outline.Kind == document.RoundOutline && b.Outline.Kind == document.RoundOutline {
		return geom.Dist(geom.Point{X: a.X, Y: a.Z}, geom.Point{X: b.X, Y: b.Z}) - a.Outline.Across/2 - b.Outline.Across/2
	}
	p, q := a.Ring(), b.Ring()
	if p.Contains(q[0].P) > 0 || q.Contains(p[0].P) > 0 {
		return -1
	}
	best := unit.Reach
	for _, v := range p {
		for j := range q {
			best = min(best, geom.DistToSegment(v.P, q[j].P, q[(j+1)%len(q)].P))
		}
	}
	return best
}
