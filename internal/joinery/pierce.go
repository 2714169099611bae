package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Room round a pipe through a back, on each side: 1/4 in, 6 mm (common practice); a box is cut round by half of that.
func (r *room) pipeRoom() unit.Length { return r.round(unit.Inch/4, 6*unit.Millimetre) }

// pierce cuts what comes out of the wall into the back and the hanging rail of a cabinet: pipes and boxes, at their places on the wall.
func (r *room) pierce(c *Cabinet) {
	f, ok := r.shape.Face(c.Wall)
	if !ok || !r.shape.FinishedKnown {
		return
	}
	for _, h := range f.Holes {
		if h.Diameter == 0 {
			r.lacks(h.At, "the diameter of "+h.Name+", for its hole in the back of "+c.Name)
			continue
		}
		d := max(h.Diameter, r.plateOn(h.Name)) + 2*r.pipeRoom()
		bored := false
		at := Point{h.Center.X - c.X, h.Center.Y - r.shape.FinishedFloor, 0}
		for i := range c.Pieces {
			p := &c.Pieces[i]
			if thick := p.Box.Size(zAxis); p.behind() && p.crosses(at, d) {
				p.hole(part.Hole{Diameter: d, Depth: thick, Through: true, For: h.Name}, at, out)
				bored = true
			}
		}
		if bored {
			r.assume(c.At, "holes in the back of {0} have {1} of room round a pipe", "common practice", diag.T(c.Name), diag.X(r.pipeRoom()))
		}
	}
	r.boxes(c)
}

// boxes cuts openings for electrical boxes and panels.
func (r *room) boxes(c *Cabinet) {
	f, _ := r.shape.Face(c.Wall)
	for _, o := range f.Openings {
		if o.Kind != "box" {
			continue
		}
		more := r.pipeRoom() / 2
		y := r.shape.FinishedFloor
		box := span(o.Rect.Min.X-c.X-more, o.Rect.Max.X-c.X+more, o.Rect.Min.Y-y-more, o.Rect.Max.Y-y+more, 0, c.Asked.Hi[zAxis])
		for i := range c.Pieces {
			p := &c.Pieces[i]
			if in := p.Box.And(box); p.behind() && !in.Empty() {
				p.Part.Cutouts = append(p.Part.Cutouts, part.Cutout{Outline: rectRing(p.Turn.area(p.Box, in, 0, 1)), For: o.Name})
			}
		}
	}
}

// behind reports whether a piece stands flat before the wall.
func (p *Piece) behind() bool { return p.Role == BackRole || p.Role == TopRole && p.Turn == Level }

// crosses reports whether a round hole lies in the piece, whole or in part: one over its edge is told by the part's own check.
func (p *Piece) crosses(at Point, d unit.Length) bool {
	return !p.Box.And(span(at[0]-d/2, at[0]+d/2, at[1]-d/2, at[1]+d/2, p.Box.Lo[zAxis], p.Box.Hi[zAxis])).Empty()
}

// plateOn is the diameter of the plate of a stop valve on a pipe: the valve stands before the finished wall, so it has to pass too.
func (r *room) plateOn(stub string) unit.Length {
	for _, s := range r.doc.Stops {
		if s.On.Text == stub && s.Plate.Known {
			return s.Plate.V
		}
	}
	return 0
}
