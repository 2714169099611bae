package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/typeset"
)

// fewLeaders is how many narrow pieces of a sheet get their number beside them; where more need it, part sheets at a
// larger scale show them.
const fewLeaders = 8

// pieces draws every piece, cut ones hatched.
func (d *facade) pieces() []draw.Item {
	var out []draw.Item
	for i, z := range d.face.Fields {
		for _, c := range z.Chosen().Pieces {
			p := draw.Path{ID: d.face.Mark + " " + c.Address, Class: "piece", Title: c.Address + ", " + report.PieceKind(c), Rings: d.rings(c.OnFace), Closed: true,
				Pen: draw.Line(draw.Narrow), Fill: draw.Fill{On: true, Color: tint(i)}}
			if !c.Uncut() {
				p.Fill.Hatch = draw.Diagonal
			}
			out = append(out, p)
		}
	}
	return out
}

// tint sets the fields after the first off from it, faintly; their joints and names say the same.
func tint(field int) draw.Color {
	if field == 0 {
		return draw.White
	}
	return [...]draw.Color{draw.SkyBlue, draw.Yellow, draw.BluishGreen}[field%3].Tint(25)
}

// numbers writes each piece's address in it, or beside it with a leader where that is too narrow, up to so many.
func (d *facade) numbers(leaders int) []draw.Item {
	var out []draw.Item
	var narrow []piece.Piece
	for _, c := range d.all() {
		if items, ok := d.number(c); ok {
			out = append(out, items...)
		} else {
			narrow = append(narrow, c)
		}
	}
	d.small = nil
	if len(narrow) > leaders {
		for _, c := range narrow {
			d.small = append(d.small, c.Address)
		}
		return out
	}
	for _, c := range narrow {
		items, ok := d.leader(d.middle(c), []string{c.Address}, d.overTile)
		if !ok {
			d.small = append(d.small, c.Address)
		}
		out = append(out, draw.Group{Class: "number", Items: items})
	}
	return out
}

func (d *facade) all() []piece.Piece {
	var out []piece.Piece
	for _, z := range d.face.Fields {
		out = append(out, z.Chosen().Pieces...)
	}
	return out
}

// number sets the address within the piece, level if it can, near its middle if it can. It comes as one group.
func (d *facade) number(c piece.Piece) ([]draw.Item, bool) {
	t, ok := inside(&d.crowd, d.rings(c.OnFace), c.Address)
	if !ok {
		return nil, false
	}
	g := draw.Group{Class: "number", Items: []draw.Item{t}}
	if !c.Uncut() { // hatching is interrupted behind it (ISO 128-50)
		g.Items = []draw.Item{draw.Rect(typeset.BoxOf(t).Inset(-inkClear), draw.Pen{}, draw.Fill{On: true, Color: draw.White}), t}
	}
	return []draw.Item{g}, true
}

// inkClear is kept between a number and the sides of its piece.
const inkClear draw.Um = 250

// inside finds the place of a word within an outline, clear of its sides and of other words.
func inside(c *crowd, rings [][]draw.XY, word string) (draw.Text, bool) {
	l := parts.Label{Body: word, Class: "number"}
	reach := draw.Path{Rings: rings}.Reach()
	places := spots(reach)
	for _, l.Turn = range []int{0, 90} {
		l.At = draw.XY{}
		ink := typeset.BoxOf(l.Text()).Inset(-inkClear)
		if ink.W() > reach.W() || ink.H() > reach.H() {
			continue
		}
		for _, l.At = range places {
			if box := (draw.Box{Lo: ink.Lo.Plus(l.At), Hi: ink.Hi.Plus(l.At)}); within(rings, box) && c.free(box) {
				c.take(box)
				return l.Text(), true
			}
		}
	}
	return draw.Text{}, false
}

// spots are places in a box: its middle, then a grid about it.
func spots(b draw.Box) []draw.XY {
	const n = 6
	mid := draw.At((b.Lo.X+b.Hi.X)/2, (b.Lo.Y+b.Hi.Y)/2)
	out := make([]draw.XY, 1, (2*n-1)*(2*n-1))
	out[0] = mid
	for ring := draw.Um(1); ring < n; ring++ {
		for dx := -ring; dx <= ring; dx++ {
			for dy := -ring; dy <= ring; dy++ {
				if max(abs(dx), abs(dy)) == ring {
					out = append(out, mid.Plus(draw.At(dx*b.W()/(2*n), dy*b.H()/(2*n))))
				}
			}
		}
	}
	return out
}

// middle is a point of the paper within the piece: the middle of its bounds if that is in it.
func (d *facade) middle(c piece.Piece) draw.XY {
	rings := d.rings(c.OnFace)
	for _, at := range spots(d.box(c.OnFace.Bounds())) {
		if contains(rings, at) {
			return at
		}
	}
	return d.point(c.OnFace[0][0].P)
}

// within says whether a box lies in the rings: no side of theirs enters it, and its middle is inside.
func within(rings [][]draw.XY, b draw.Box) bool {
	for _, r := range rings {
		for i, p := range r {
			if enters(p, r[(i+1)%len(r)], b) {
				return false
			}
		}
	}
	return contains(rings, draw.At((b.Lo.X+b.Hi.X)/2, (b.Lo.Y+b.Hi.Y)/2))
}

// enters says whether a straight line has a point in the box: its bounds meet it and not all corners are on one side.
func enters(p, q draw.XY, b draw.Box) bool {
	reach := draw.Span(min(p.X, q.X), min(p.Y, q.Y), max(p.X, q.X)+1, max(p.Y, q.Y)+1)
	if !reach.Meets(b) {
		return false
	}
	var left, right bool
	for _, c := range b.Ring() {
		turn := (q.X-p.X)*(c.Y-p.Y) - (q.Y-p.Y)*(c.X-p.X)
		left, right = left || turn > 0, right || turn < 0
	}
	return left && right
}

// contains is the even-odd test.
func contains(rings [][]draw.XY, at draw.XY) bool {
	in := false
	for _, r := range rings {
		for i, a := range r {
			b := r[(i+1)%len(r)]
			if (a.Y > at.Y) == (b.Y > at.Y) {
				continue
			}
			turn := (b.X-a.X)*(at.Y-a.Y) - (b.Y-a.Y)*(at.X-a.X)
			if (turn > 0) == (b.Y > a.Y) {
				in = !in
			}
		}
	}
	return in
}

// holes draws what is drilled, at its size, with center marks.
func (d *facade) holes() []draw.Item {
	var out []draw.Item
	for _, h := range d.site.Holes {
		c, r := d.point(h.Center), d.um(d.drill(h.Name, max(h.Drill, h.Diameter)))/2
		out = append(out, draw.Circle{Class: "hole", Title: h.Name, C: c, R: max(r, 500), Pen: draw.Line(draw.Wide), Fill: draw.Fill{On: true, Color: draw.White}})
		out = append(out, centerMark(c, max(r, 500))...)
		d.take(draw.Span(c.X-r, c.Y-r, c.X+r, c.Y+r))
	}
	return out
}

// marks leads to each hole with its mark and size, and to what is in the wall.
func (d *facade) marks() []draw.Item {
	var out []draw.Item
	note := func(tip draw.XY, text string) {
		items, _ := d.leader(tip, []string{text}, func(draw.Box) draw.Um { return 0 })
		out = append(out, items...)
	}
	for i, h := range d.site.Holes {
		text := report.HoleMark(i)
		if size := d.drill(h.Name, max(h.Drill, h.Diameter)); size > 0 {
			text += " Ø" + d.p.Style.Bare(size)
		}
		note(d.point(h.Center), text)
	}
	for i, u := range d.site.Buried {
		note(d.box(u.Rect).Lo.Plus(draw.At(0, d.box(u.Rect).H()/2)), report.BuriedMark(i))
	}
	return out
}
