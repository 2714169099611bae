package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// elevation draws a face with its dimensions, and below it what belongs to it in words. Where its pieces are too small
// for their numbers, part sheets at a larger scale follow.
func (w *wall) elevation() *flow {
	d, paper := w.fitted()
	f := w.writer(leaf{title: w.name, detail: w.seenAs(), paper: paper, scale: d.words(), caution: w.caution()})
	box := f.now.body()
	d.move(box)
	f.now.add(d.items()...)
	f.room.Hi.Y = d.reach().Lo.Y - gap
	f.leaf.detail = "Notes, holes, edges, layouts"
	f.leaf.scale = ""
	w.faceNotes(f, d)
	if len(d.small) > 0 {
		w.partSheets(d)
	}
	return f
}

// caution: where a face's cut list stands on the same sheet, the saw's stands there too.
func (w *wall) caution() string {
	if w.site.Kind == site.RevealFace {
		return silicaCaution
	}
	return ""
}

// fitted finds the largest scale at which the face with its dimensions has room on the paper, upright if both ways do.
func (w *wall) fitted() (*facade, draw.Paper) {
	const least = 22 * draw.MM // left below for the key
	for _, n := range scales {
		for _, paper := range w.orientations() {
			d := w.facade(n)
			room := (&leaf{paper: paper}).body()
			room.Lo.Y += least
			if r := d.reach(); r.W() <= room.W() && r.H() <= room.H() {
				return d, paper
			}
		}
	}
	return w.facade(scales[len(scales)-1]), w.paper.Paper
}

// facade is the drawing of one face at one scale.
type facade struct {
	*wall
	view
	crowd
	runs  []parts.Running
	small []string // addresses of pieces that found no room for their number
	area  geom.Rect
}

func (w *wall) facade(n int64) *facade {
	area := w.site.Board.Bounds()
	for _, z := range w.face.Fields {
		b := z.Region.Bounds()
		area = area.With(b.Min).With(b.Max)
	}
	d := &facade{wall: w, view: view{n: n, of: area.Min}, area: area}
	d.runs = d.dimensions()
	return d
}

// move puts the drawing at the top of a box, in the middle.
func (d *facade) move(box draw.Box) {
	r := d.reach()
	d.at = d.at.Plus(draw.At(box.Lo.X+(box.W()-r.W())/2-r.Lo.X, box.Hi.Y-r.Hi.Y))
	d.runs = d.dimensions()
	d.within = box
}

// reach is what the drawing covers with its dimensions.
func (d *facade) reach() draw.Box {
	b := d.box(d.area).Inset(-d.margin())
	for _, r := range d.runs {
		far := r.Line
		if r.Line < r.Feature {
			far -= r.Depth()
		} else {
			far += r.Depth()
		}
		if r.Vertical {
			b.Lo.X, b.Hi.X = min(b.Lo.X, far), max(b.Hi.X, far)
		} else {
			b.Lo.Y, b.Hi.Y = min(b.Lo.Y, far), max(b.Hi.Y, far)
		}
	}
	return b
}

// margin is kept round the outline for words about its edges.
func (d *facade) margin() draw.Um { return lineOff }

// lineOff is from the outline to a dimension line: room for words about edges and for numbers of narrow pieces.
const lineOff = 9 * draw.MM

// items draws everything, what lies behind first.
func (d *facade) items() []draw.Item {
	out := []draw.Item{d.boardOutline()}
	out = append(out, d.pieces()...)
	out = append(out, d.openings()...)
	out = append(out, d.buried()...)
	out = append(out, d.softJoints()...)
	out = append(out, d.lines()...)
	out = append(out, d.holes()...)
	for _, r := range d.runs {
		items := r.Items()
		d.takeTexts(items)
		out = append(out, items...)
	}
	out = append(out, d.edgeWords()...)
	out = append(out, d.openingNames()...)
	out = append(out, d.numbers(fewLeaders)...)
	return append(out, d.marks()...)
}

// boardOutline draws the board without its openings: they are drawn where the tile ends.
func (d *facade) boardOutline() draw.Item {
	return draw.Path{ID: "board " + d.face.Name, Class: "board", Title: d.face.Name, Rings: d.rings(outer(d.site.Board)), Closed: true, Pen: draw.Line(draw.Heavy)}
}

// outer are the rings round a region, without those round what is cut out of it.
func outer(g geom.Region) geom.Region {
	var out geom.Region
	for _, r := range g {
		if r.Area2() > 0 {
			out = append(out, r)
		}
	}
	return out
}

// overTile is what speaks against a note: that it lies on tile.
func (d *facade) overTile(b draw.Box) draw.Um {
	const price = 25 * draw.MM
	x, y := (b.Lo.X+b.Hi.X)/2, (b.Lo.Y+b.Hi.Y)/2
	if contains(d.rings(d.site.Board), draw.At(x, y)) {
		return price
	}
	return 0
}

// buried outlines what is recorded in the wall, dotted.
func (d *facade) buried() []draw.Item {
	var out []draw.Item
	for _, u := range d.site.Buried {
		p := draw.Rect(d.box(u.Rect), buriedPen, draw.Fill{})
		p.Class, p.Title = "buried", u.Kind+": "+u.Name
		out = append(out, p)
	}
	return out
}

// softJoints draws movement joints heavy and dashed.
func (d *facade) softJoints() []draw.Item {
	var out []draw.Item
	for _, m := range d.face.Movement {
		s := draw.Stroke(softPen, d.point(m.From), d.point(m.To))
		s.Class, s.Title = "soft joint", m.Where
		out = append(out, s)
	}
	return out
}

// Pens of lines that mean something.
var (
	softPen   = draw.Pen{Width: draw.Heavy, Color: draw.Blue, Dash: draw.Dashed}
	levelPen  = draw.Line(draw.Normal).As(draw.Chain)
	centerPen = draw.Line(draw.Narrow).As(draw.Chain)
	floorPen  = draw.Line(draw.Normal).As(draw.Dashed)
	buriedPen = draw.Pen{Width: draw.Wide, Color: draw.Vermilion, Dash: draw.Dotted}
	hiddenPen = draw.Line(draw.Narrow).As(draw.Dashed)
	ledgerPen = draw.Line(draw.Normal).As(draw.ChainTwo)
)

// lines draws level line, finished floor, ledger and center lines, each a little beyond the outline.
func (d *facade) lines() []draw.Item {
	const over = 5 * draw.MM
	b := d.box(d.area)
	level := func(class string, y unit.Length, pen draw.Pen) draw.Item {
		s := draw.Stroke(pen, draw.At(b.Lo.X-over, d.y(y)), draw.At(b.Hi.X+over, d.y(y)))
		s.Class = class
		return s
	}
	var out []draw.Item
	if d.site.Kind == site.WallFace {
		out = append(out, level("level line", 0, levelPen))
		if d.p.Room.FinishedKnown {
			out = append(out, level("finished floor", d.p.Room.FinishedFloor, floorPen))
		}
	}
	if l := d.face.Ledger; l != nil {
		out = append(out, level("ledger", l.Y, ledgerPen))
	}
	for _, c := range d.site.Lines {
		s := draw.Stroke(centerPen, draw.At(d.x(c.X), b.Lo.Y-over/2), draw.At(d.x(c.X), b.Hi.Y+over/2))
		s.Class, s.Title = "center line", c.Name
		out = append(out, s)
	}
	return append(out, d.origins()...)
}

// origins marks, for patterns without straight courses, the joint crossing that they are set from.
func (d *facade) origins() []draw.Item {
	var out []draw.Item
	for _, z := range d.face.Fields {
		if d.patterned(z) {
			c := d.point(z.Chosen().Origin)
			out = append(out, draw.Circle{Class: "origin", C: c, R: 1200, Pen: draw.Line(draw.Wide)})
			out = append(out, centerMark(c, 1200)...)
		}
	}
	return out
}
