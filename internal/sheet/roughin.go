package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/fit"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/report"
)

// roughIn is the card of one wall for work on open studs: every point from the level line and from the studs, in a drawing and in a table.
func (b *book) roughIn(wall string) {
	d, ok := roughInOf(b.p, wall)
	if !ok {
		return
	}
	f := b.fitDrawing(d, leaf{title: capital(wall), detail: "Rough-in card: open wall, facing it", caution: pipeCaution}, min(fitBelow+draw.Um(len(spotsOn(b.p, wall)))*12*draw.MM, 120*draw.MM))
	f.paragraph("Left: from the level line, below it with a minus. Right: above the finished floor. Below: from the studs at the left corner. "+
		"Centers, before any board or tile is there; the table gives edges, the nearest stud and what is still to come on the studs.", parts.Small, false)
	f.table(report.Spots(b.p, wall), 0)
}

func roughInOf(p plan.Plan, wall string) (*fitDrawing, bool) {
	w, ok := p.Fit.Places.Wall(wall)
	if !ok || len(w.Face.Board) == 0 {
		return nil, false
	}
	d := &fitDrawing{p: p, area: w.Face.Board.Bounds()}
	studs := -w.LeftStud().V
	right, _ := w.Frame.Of(p.Room.Survey.Corner(w.Face.RightCorner).Raw)
	d.area.Min.X, d.area.Max.X = studs, max(right, d.area.Max.X)
	if p.Room.FinishedKnown {
		d.area.Min.Y = min(d.area.Min.Y, p.Room.FinishedFloor)
	}
	d.area = d.area.With(geom.Point{X: studs, Y: 0})
	d.of = d.area.Min
	var ups, along []report.Mark
	for _, s := range spotsOn(p, wall) {
		ups = append(ups, report.Mark{At: s.Y, Name: s.Name})
		along = append(along, report.Mark{At: s.X, Name: s.Name})
	}
	sortMarks(ups)
	sortMarks(along)
	d.ups = []upRun{{origin: "0", marks: ups}}
	if p.Room.FinishedKnown {
		d.ups = append(d.ups, upRun{right: true, words: true, from: p.Room.FinishedFloor, origin: "0 finished floor", marks: ups})
	} else {
		d.ups[0].words = true
	}
	d.along = []alongRun{{from: studs, origin: "0 studs at " + w.Face.LeftCorner, marks: along}}
	for _, u := range w.Face.Buried {
		d.names = append(d.names, named{u.Rect, u.Kind + ": " + u.Name})
	}
	d.paint = func(d *fitDrawing) []draw.Item { return d.openWall(wall) }
	return d, true
}

func spotsOn(p plan.Plan, wall string) []fit.Spot {
	var out []fit.Spot
	for _, s := range p.Fit.Card {
		if s.Wall == wall {
			out = append(out, s)
		}
	}
	return out
}

// openWall draws the studs' face with what is in it and every point of the card.
func (d *fitDrawing) openWall(wall string) []draw.Item {
	out := []draw.Item{draw.Rect(d.box(d.area), draw.Line(draw.Wide), draw.Fill{})}
	f, _ := d.p.Room.Face(wall)
	for _, o := range f.Openings {
		if o.Kind != "box" && o.Kind != "niche" {
			out = append(out, crossed(d.box(o.Rect))...)
		}
	}
	for _, u := range f.Buried {
		r := draw.Rect(d.box(u.Rect).And(d.box(d.area)), buriedPen, draw.Fill{})
		r.Class, r.Title = "buried", u.Kind+": "+u.Name
		out = append(out, r)
	}
	out = append(out, d.across("level line", 0, levelPen))
	if d.p.Room.FinishedKnown {
		out = append(out, d.across("finished floor", d.p.Room.FinishedFloor, floorPen))
	}
	for _, s := range spotsOn(d.p, wall) {
		out = append(out, d.spot(s))
	}
	return out
}

// spot draws one point of the card at its size, with its center.
func (d *fitDrawing) spot(s fit.Spot) draw.Item {
	c := d.point(geom.Point{X: s.X, Y: s.Y})
	r := max(d.um(report.SpotWidth(d.p, s))/2, 700)
	items := centerMark(c, r)
	if b, ok := d.p.Fit.Places.Box(s.Name); ok && b.Placed && b.Doc.At == s.At {
		items = append(items, draw.Rect(d.box(b.Rect), draw.Line(draw.Normal), draw.Fill{}))
	} else {
		items = append(items, draw.Circle{C: c, R: r, Pen: draw.Line(draw.Normal)})
	}
	d.take(draw.Span(c.X-r, c.Y-r, c.X+r, c.Y+r))
	return d.thing(s.At.Path, "spot", s.Name, items...)
}
