package sheet

import (
	"math"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// roomDrawing is the plan of the room: outline, names, gaps, what pierces the floor.
type roomDrawing struct {
	*flow
	view
	crowd
}

func boardPoint(c site.Corner) geom.Point    { return c.Board }
func finishedPoint(c site.Corner) geom.Point { return c.Finished }

func outline(corners []site.Corner, of func(site.Corner) geom.Point) geom.Ring {
	var r geom.Ring
	for _, c := range corners {
		r = append(r, geom.Vertex{P: of(c)})
	}
	return r
}

func (d *roomDrawing) items() []draw.Item {
	corners := d.p.Room.Survey.Corners
	board, finished := outline(corners, boardPoint), outline(corners, finishedPoint)
	out := []draw.Item{
		draw.Path{ID: "room", Class: "room", Rings: d.rings(geom.Region{finished}), Closed: true, Pen: draw.Line(draw.Fine)},
		draw.Path{ID: "board", Class: "board", Rings: d.rings(geom.Region{board}), Closed: true, Pen: draw.Line(draw.Heavy)},
	}
	for _, f := range d.p.Room.Faces {
		switch f.Kind {
		case site.WallFace:
			out = append(out, d.gaps(f)...)
		case site.FloorFace:
			out = append(out, d.floorHoles(f)...)
		}
	}
	out = append(out, d.letters(corners)...)
	for i, c := range corners {
		out = append(out, d.wallName(c, corners[(i+1)%len(corners)])...)
	}
	return append(out, d.points()...)
}

// gaps leaves doors and windows open in the outline.
func (d *roomDrawing) gaps(f site.Face) []draw.Item {
	var out []draw.Item
	l, ok1 := d.corner(f.LeftCorner)
	r, ok2 := d.corner(f.RightCorner)
	for _, o := range f.Openings {
		if !ok1 || !ok2 || o.Kind == "box" || o.Kind == "niche" {
			continue
		}
		a, b := d.along(l.Board, r.Board, o.Rect.Min.X), d.along(l.Board, r.Board, o.Rect.Max.X)
		out = append(out, draw.Stroke(draw.Pen{Width: 2 * draw.Border, Color: draw.White}, a, b), draw.Stroke(draw.Line(draw.Fine), a, b))
		out = append(out, d.jamb(a, b)...)
		mid := d.inward(l.Board, r.Board, draw.At((a.X+b.X)/2, (a.Y+b.Y)/2), 4*draw.MM)
		label, _ := d.label(parts.Label{Body: o.Name, Clear: true, Class: "opening", Turn: turnOf(a, b)}, tries(mid, a, b)...)
		out = append(out, label...)
	}
	return out
}

// jamb marks both ends of a gap square to the wall.
func (d *roomDrawing) jamb(a, b draw.XY) []draw.Item {
	n := normal(a, b, 1500)
	tick := func(p draw.XY) draw.Path {
		return draw.Stroke(draw.Line(draw.Wide), p.Plus(n), p.Plus(draw.At(-n.X, -n.Y)))
	}
	return []draw.Item{tick(a), tick(b)}
}

// along is the place on the page of a point of a wall so far from its left corner.
func (d *roomDrawing) along(l, r geom.Point, x unit.Length) draw.XY {
	length := unit.FromFloat(math.Hypot(float64(r.X-l.X), float64(r.Y-l.Y)))
	if length == 0 {
		return d.point(l)
	}
	a, b := d.point(l), d.point(r)
	return draw.At(a.X+draw.Um(unit.Length(b.X-a.X).MulDiv(int64(x), int64(length))), a.Y+draw.Um(unit.Length(b.Y-a.Y).MulDiv(int64(x), int64(length))))
}

// normal is a vector of a length square to a line, to its left: out of the room, for a wall from its left corner.
func normal(a, b draw.XY, long float64) draw.XY {
	dx, dy := float64(b.X-a.X), float64(b.Y-a.Y)
	n := math.Hypot(dx, dy)
	if n == 0 {
		return draw.XY{}
	}
	return draw.At(draw.Um(math.Floor(-dy/n*long+0.5)), draw.Um(math.Floor(dx/n*long+0.5)))
}

func (d *roomDrawing) inward(l, r geom.Point, p draw.XY, by draw.Um) draw.XY {
	n := normal(d.point(l), d.point(r), float64(by))
	return draw.At(p.X-n.X, p.Y-n.Y)
}

// turnOf turns words along a wall that stands upright on the page.
func turnOf(a, b draw.XY) int {
	if abs(b.X-a.X) >= abs(b.Y-a.Y) {
		return 0
	}
	return 90
}

// tries are places at, and stepping along a line and off it on either side.
func tries(at, a, b draw.XY) []draw.XY {
	out := []draw.XY{at}
	for off := range 4 {
		n := normal(a, b, float64(off)*3500)
		for _, s := range []draw.Um{0, 1, -1, 2, -2, 3, -3, 4, -4} {
			along := draw.At((b.X-a.X)*s/10, (b.Y-a.Y)*s/10)
			out = append(out, at.Plus(along).Plus(n), at.Plus(along).Plus(draw.At(-n.X, -n.Y)))
		}
	}
	return out
}

func (d *roomDrawing) floorHoles(f site.Face) []draw.Item {
	var out []draw.Item
	for _, h := range f.Holes {
		c := d.point(h.Center)
		out = append(out, draw.Circle{Class: "hole", C: c, R: max(d.um(max(h.Diameter, h.Drill))/2, 600), Pen: draw.Line(draw.Normal)})
		out = append(out, centerMark(c, max(d.um(max(h.Diameter, h.Drill))/2, 600))...)
		note, _ := d.leader(c, []string{h.Name}, func(draw.Box) draw.Um { return 0 })
		out = append(out, note...)
	}
	return out
}

// centerMark is a cross of chain lines over a hole.
func centerMark(c draw.XY, r draw.Um) []draw.Item {
	reach := r + 1200
	pen := draw.Line(draw.Fine)
	return []draw.Item{draw.Stroke(pen, draw.At(c.X-reach, c.Y), draw.At(c.X+reach, c.Y)), draw.Stroke(pen, draw.At(c.X, c.Y-reach), draw.At(c.X, c.Y+reach))}
}

// letters stand outside their corners, on the line that halves the angle.
func (d *roomDrawing) letters(corners []site.Corner) []draw.Item {
	var out []draw.Item
	n := len(corners)
	for i, c := range corners {
		before, at, after := d.point(corners[(i+n-1)%n].Board), d.point(c.Board), d.point(corners[(i+1)%n].Board)
		u, w := normal(before, at, 4500), normal(at, after, 4500)
		l := parts.Label{Body: c.Name, Size: parts.Large, Bold: true, Clear: true, Class: "corner"}
		label, _ := d.label(l, at.Plus(u).Plus(w), at.Plus(u), at.Plus(w), at.Plus(u).Plus(u).Plus(w).Plus(w))
		out = append(out, label...)
	}
	return out
}

// wallName writes a wall's name and length outside of it.
func (d *roomDrawing) wallName(l, r site.Corner) []draw.Item {
	a, b := d.point(l.Board), d.point(r.Board)
	length := unit.FromFloat(math.Hypot(float64(r.Board.X-l.Board.X), float64(r.Board.Y-l.Board.Y)))
	name := ""
	for _, f := range d.p.Room.Faces {
		if f.Kind == site.WallFace && f.LeftCorner == l.Name && f.RightCorner == r.Name {
			name = f.Name + "  "
		}
	}
	mid := draw.At((a.X+b.X)/2, (a.Y+b.Y)/2).Plus(normal(a, b, 4000))
	label, _ := d.label(parts.Label{Body: name + d.p.Style.Bare(length), Clear: true, Turn: turnOf(a, b), Class: "side"}, tries(mid, a, b)...)
	return label
}

// points are the further points that were taped to.
func (d *roomDrawing) points() []draw.Item {
	var out []draw.Item
	for _, s := range d.p.Room.Survey.Points {
		c := d.point(s.P)
		out = append(out, centerMark(c, 0)...)
		label, _ := d.label(parts.Label{Body: s.Name, Clear: true, Class: "point"}, c.Plus(draw.At(3000, 3000)), c.Plus(draw.At(-3000, 3000)), c.Plus(draw.At(3000, -3000)))
		out = append(out, label...)
	}
	return out
}
