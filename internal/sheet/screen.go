package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/plan"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// Screen is a drawing without a sheet round it, for a page on a screen. A millimetre of it is so many of the room.
type Screen struct {
	Page  draw.Page
	Scale int64
}

// screenSize is the longer side of a face on a screen, in drawing units: lettering of 2.5 mm is then read on a phone.
const screenSize = 120 * draw.MM

// FaceOnScreen draws a laid face: its pieces with their numbers, openings, holes and lines, and no dimensions, which
// stand in tables beside it. False where the face is not laid.
func FaceOnScreen(p plan.Plan, name string) (Screen, bool) {
	b := &book{p: p}
	for _, f := range p.Tiling.Faces {
		s, ok := p.Room.Face(f.Name)
		if f.Name != name || !ok || len(s.Board) == 0 || len(f.Fields) == 0 {
			continue
		}
		return (&wall{book: b, face: f, site: s, name: capital(f.Name)}).screen(), true
	}
	return Screen{}, false
}

func (w *wall) screen() Screen {
	const margin = 7 * draw.MM
	d := w.facade(w.screenScale())
	box := d.box(d.area).Inset(-margin)
	d.at = d.at.Plus(draw.At(-box.Lo.X, -box.Lo.Y))
	d.within = draw.Span(0, 0, box.W(), box.H())
	return Screen{draw.Page{Title: w.name + ", " + w.seenAs(), W: box.W(), H: box.H(), Items: d.screenItems()}, d.n}
}

func (w *wall) screenScale() int64 {
	b := w.site.Board.Bounds()
	long := max(b.W(), b.H())
	return max(1, int64((long+unit.Length(int64(screenSize)*perUm)-1)/unit.Length(int64(screenSize)*perUm)))
}

// screenItems: the pieces come as one group, which a hand can move.
func (d *facade) screenItems() []draw.Item {
	out := []draw.Item{draw.Group{Class: "pieces", Items: d.pieces()}}
	out = append(out, d.boardOutline())
	out = append(out, d.openings()...)
	out = append(out, d.buried()...)
	out = append(out, d.softJoints()...)
	out = append(out, d.lines()...)
	out = append(out, d.holes()...)
	out = append(out, d.openingNames()...)
	return append(out, d.numbers(0)...)
}

// LayoutOnScreen draws the pieces of one layout alone, small: where its joints and cuts fall.
func LayoutOnScreen(p plan.Plan, name string) (draw.Page, bool) {
	for _, f := range p.Tiling.Faces {
		s, ok := p.Room.Face(f.Name)
		if f.Name == name && ok && len(s.Board) > 0 && len(f.Fields) > 0 {
			return (&wall{book: &book{p: p}, face: f, site: s, name: capital(f.Name)}).thumbnail(), true
		}
	}
	return draw.Page{}, false
}

func (w *wall) thumbnail() draw.Page {
	const margin = 2 * draw.MM
	d := w.facade(3 * w.screenScale())
	box := d.box(d.area).Inset(-margin)
	d.at = d.at.Plus(draw.At(-box.Lo.X, -box.Lo.Y))
	return draw.Page{Title: w.name, W: box.W(), H: box.H(), Items: append(append(d.pieces(), d.boardOutline()), d.openings()...)}
}

// Laid lists the faces that have tile work, in the plan's order.
func Laid(p plan.Plan) []tiling.Face {
	var out []tiling.Face
	for _, f := range p.Tiling.Faces {
		if _, ok := p.Room.Face(f.Name); ok && len(f.Fields) > 0 {
			out = append(out, f)
		}
	}
	return out
}

// BareOnScreen draws a face as it was measured, whether tile is laid on it or not: its board, what pierces it, what is
// recorded inside it and the lines that it is measured from. False where its shape is not known.
func BareOnScreen(p plan.Plan, name string) (Screen, bool) {
	s, ok := p.Room.Face(name)
	if !ok || len(s.Board) == 0 {
		return Screen{}, false
	}
	const margin = 9 * draw.MM
	w := &wall{book: &book{p: p}, face: tiling.Face{Name: name}, site: s, name: capital(name)}
	d := &facade{wall: w, view: view{n: w.screenScale(), of: s.Board.Bounds().Min}, area: s.Board.Bounds()}
	box := d.box(d.area).Inset(-margin)
	d.at = d.at.Plus(draw.At(-box.Lo.X, -box.Lo.Y))
	d.within = draw.Span(0, 0, box.W(), box.H())
	return Screen{draw.Page{Title: w.name + " as measured, " + w.seenAs(), W: box.W(), H: box.H(), Items: d.bareItems()}, d.n}, true
}

func (d *facade) bareItems() []draw.Item {
	board := draw.Path{Class: "board", Rings: d.rings(d.site.Board), Closed: true, Pen: draw.Line(draw.Heavy)} // no id: it may share a page
	out := append([]draw.Item{board}, d.openings()...)
	out = append(out, d.buried()...)
	out = append(out, d.lines()...)
	out = append(out, d.holes()...)
	out = append(out, d.openingNames()...)
	for _, h := range d.site.Holes {
		out = append(out, d.called(d.point(h.Center), h.Name)...)
	}
	for _, u := range d.site.Buried {
		b := d.box(u.Rect)
		out = append(out, d.called(draw.At((b.Lo.X+b.Hi.X)/2, (b.Lo.Y+b.Hi.Y)/2), u.Name)...)
	}
	return append(out, d.ends()...)
}

// called leads from a thing to its name, where there is room.
func (d *facade) called(at draw.XY, name string) []draw.Item {
	items, _ := d.leader(at, []string{name}, func(draw.Box) draw.Um { return 0 })
	return items
}

// ends letters the corners at both ends of a wall, below it.
func (d *facade) ends() []draw.Item {
	b := d.box(d.area)
	var out []draw.Item
	if d.site.Kind != site.WallFace {
		return nil
	}
	for _, e := range []struct {
		name string
		x    draw.Um
	}{{d.site.LeftCorner, b.Lo.X}, {d.site.RightCorner, b.Hi.X}} {
		if e.name != "" {
			l := parts.Label{At: draw.At(e.x, b.Lo.Y-5*draw.MM), Body: e.name, Size: parts.Large, Bold: true, Clear: true, Class: "corner"}
			out = append(out, l.Items()...)
		}
	}
	return out
}
