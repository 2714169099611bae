package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/geom"
	"dryfit/internal/joinery"
	"dryfit/internal/unit"
)

// carcasses are the cabinets' wood in a section through a basin: what the cut goes through hatched, sides and legs beyond it with their toe
// space in a fine line, all drawers dashed. Nothing of a cabinet whose parts are not worked out, or that stands elsewhere along the wall.
func (s *basinCut) carcasses(d *fitDrawing) []draw.Item {
	if !d.p.Room.FinishedKnown || !s.b.X.Known() {
		return nil
	}
	var out []draw.Item
	for _, c := range d.p.Wood.Cabinets {
		if x := s.b.X.V - c.X; c.Wall == s.w.Name && x > 0 && x < c.Asked.Hi[0] {
			out = append(out, cutCabinet(d, c, x)...)
		}
	}
	return out
}

// cutCabinet draws the pieces of a cabinet that is cut at x from its left side, seen from the left: the right half is beyond.
func cutCabinet(d *fitDrawing, c joinery.Cabinet, x unit.Length) []draw.Item {
	floor := d.p.Room.FinishedFloor
	area := func(b joinery.Box) geom.Rect { return rect(b.Lo[2], floor+b.Lo[1], b.Hi[2], floor+b.Hi[1]) }
	var out []draw.Item
	for _, q := range c.Pieces {
		beyond := q.Role == joinery.SideRole || q.Role == joinery.LegRole
		if beyond && q.Box.Lo[0] > x {
			out = append(out, sideBeyond(d, c, q, area(q.Box)))
		}
	}
	for _, q := range c.Pieces {
		for _, b := range q.Solid() {
			if q.Role != joinery.DrawerRole && b.Lo[0] <= x && x < b.Hi[0] {
				p := draw.Rect(d.box(area(b)), draw.Line(draw.Narrow), draw.Fill{On: true, Color: draw.White, Hatch: draw.Counter})
				p.Class = "cabinet part"
				out = append(out, p)
			}
		}
	}
	for _, w := range c.Drawers {
		p := draw.Rect(d.box(area(w.Box)), hiddenPen, draw.Fill{})
		p.Class, p.Title = "drawer", w.Name
		out = append(out, p)
	}
	return out
}

// sideBeyond is a side or a leg that is seen behind the cut, less the toe space that is notched out of it.
func sideBeyond(d *fitDrawing, c joinery.Cabinet, q joinery.Piece, whole geom.Rect) draw.Item {
	p := draw.Rect(d.box(whole), draw.Line(draw.Fine), draw.Fill{})
	floor := d.p.Room.FinishedFloor
	for _, k := range q.Part.Cutouts {
		if k.For != "toe space" {
			continue
		}
		b := k.Outline.Bounds() // high along the length of a right side, which begins at the foot; deep from its front edge
		high, deep := b.W(), b.H()
		front, back, low, top := q.Box.Hi[2], q.Box.Lo[2], floor+q.Box.Lo[1], floor+q.Box.Hi[1]
		p = draw.Path{Rings: [][]draw.XY{d.ring([]geom.Point{{X: back, Y: low}, {X: front - deep, Y: low}, {X: front - deep, Y: low + high}, {X: front, Y: low + high}, {X: front, Y: top}, {X: back, Y: top}})}, Closed: true, Pen: draw.Line(draw.Fine)}
	}
	p.Class = "cabinet part"
	return p
}
