package sheet

import (
	"strings"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/figure"
	"dryfit/internal/geom"
	"dryfit/internal/place"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/space"
	"dryfit/internal/typeset"
	"dryfit/internal/unit"
)

// clearances shows the plan with what stands in it, the way of doors, the floor that must stay clear, and center lines from the finished walls.
func (b *book) clearances() {
	if len(b.p.Room.Survey.Corners) < 3 || !b.p.Room.Survey.Fixed || len(b.p.Fit.Solids) == 0 {
		return
	}
	f := b.writer(leaf{title: "Fit", detail: "Plan with clearances", paper: b.paper.Paper, caution: pipeCaution})
	whole := f.room
	whole.Lo.Y = whole.Hi.Y - whole.H()*78/100
	d := clearPlan(f, whole, clearMargin)
	f.now.scale = d.words()
	f.now.add(d.all()...)
	f.room.Hi.Y = d.within.Lo.Y - gap
	f.paragraph("From above. Thin: finished faces, which everything counts from. Chain: center lines, told square off the finished walls at the ends of their wall. "+
		"Dotted quarter: the way of a door's leaf. Dashed: floor that must stay clear, with what is asked and what is there.", parts.Small, false)
	f.table(report.Stands(b.p), 0)
	f.table(report.ClearTable(b.p), 0)
	if len(d.left) > 0 {
		f.notes("Not in the drawing for want of room", d.left...)
	}
}

const (
	clearMargin = 24 * draw.MM // round the room: names, and center lines outside of the walls
	screenClear = 17 * draw.MM // the same on a screen
)

// ClearancesOnScreen draws the plan with what stands in it. False where nothing does, or where the shape of the room is not known.
func ClearancesOnScreen(p plan.Plan, ids func(string) string) (Screen, bool) {
	if len(p.Room.Survey.Corners) < 3 || !p.Room.Survey.Fixed || len(p.Fit.Solids) == 0 {
		return Screen{}, false
	}
	b := &book{p: p}
	d := clearPlan(&flow{book: b}, draw.Span(0, 0, screenSize, screenSize), screenClear)
	d.ids = ids
	at := d.within.Lo
	items := draw.Moved(d.all(), draw.At(-at.X, -at.Y))
	return Screen{draw.Page{Title: "Plan with what stands in the room", W: d.within.W(), H: d.within.H(), Items: items}, d.n}, true
}

// clearDrawing is that plan in the making.
type clearDrawing struct {
	*roomDrawing
	ids  func(string) string
	over func(draw.Box) draw.Um
	left []string // dimensions that found no room
}

// clearPlan scales the room into a box, with a margin round it.
func clearPlan(f *flow, whole draw.Box, margin draw.Um) *clearDrawing {
	bounds := outline(f.p.Room.Survey.Corners, boardPoint).Bounds()
	inner := whole.Inset(margin)
	v := view{n: largest(bounds.W(), bounds.H(), inner), of: bounds.Min}
	if f.now == nil { // on a screen any scale will do
		for v.n = 1; v.um(bounds.W()) > inner.W() || v.um(bounds.H()) > inner.H(); {
			v.n++
		}
		whole.Hi.X = whole.Lo.X + v.um(bounds.W()) + 2*margin
		inner = whole.Inset(margin)
	}
	v.at = draw.At(inner.Lo.X+(inner.W()-v.um(bounds.W()))/2, inner.Hi.Y-v.um(bounds.H()))
	whole.Lo.Y = v.at.Y - margin
	return &clearDrawing{roomDrawing: &roomDrawing{flow: f, view: v, crowd: crowd{within: whole}}}
}

// all draws what lies behind first; dimensions before names, because they can not be moved so far.
func (d *clearDrawing) all() []draw.Item {
	var out []draw.Item
	for _, c := range report.Clear(d.p) {
		out = append(out, d.clear(c))
	}
	for _, e := range d.p.Fit.Solids {
		out = append(out, d.solid(e)...)
	}
	for _, w := range d.p.Fit.Places.Walls {
		out = append(out, d.centers(w)...)
	}
	out = append(out, d.roomDrawing.items()...)
	d.over = overLines(edges(out))
	for _, e := range d.p.Fit.Solids {
		if e.Kind == space.Fixture || e.Kind == space.Top || e.Kind == space.Carcass && !d.hasTop(e) {
			out = append(out, d.nameOf(e)...)
		}
	}
	for _, c := range report.Clear(d.p) {
		out = append(out, d.clearWords(c)...)
	}
	return out
}

func (d *clearDrawing) thing(path, class, title string, items ...draw.Item) draw.Item {
	g := draw.Group{Class: "thing " + class, Title: title, Items: items}
	if d.ids != nil {
		g.ID = d.ids(path)
	}
	return g
}

// hasTop reports whether a top lies on a cabinet and bears the name in its stead.
func (d *clearDrawing) hasTop(e space.Envelope) bool {
	for _, t := range d.p.Fit.Places.Tops {
		if t.Doc.On.V == e.Name {
			return true
		}
	}
	return false
}

func (d *clearDrawing) solid(e space.Envelope) []draw.Item {
	pen, fill := draw.Line(draw.Normal), draw.Fill{}
	switch e.Kind {
	case space.Fixture:
		fill = draw.Fill{On: true, Color: draw.Pale}
	case space.Top, space.Carcass:
		fill = draw.Fill{On: true, Color: draw.White}
	case space.Leaf:
		pen = draw.Line(draw.Narrow).As(draw.Dotted)
	case space.Tap, space.Fitting:
		pen = draw.Line(draw.Narrow)
	default:
		return nil
	}
	if len(e.Plan) < 3 {
		return nil
	}
	path := draw.Path{Rings: d.rings(geom.Region{e.Plan}), Closed: true, Pen: pen, Fill: fill}
	return []draw.Item{d.thing(e.Owner, "solid", e.Name, path)}
}

func (d *clearDrawing) nameOf(e space.Envelope) []draw.Item {
	if len(e.Plan) < 3 {
		return nil
	}
	rings := d.rings(geom.Region{e.Plan})
	r := draw.Path{Rings: rings}.Reach()
	tip := draw.At((r.Lo.X+r.Hi.X)/2, (r.Lo.Y+r.Hi.Y)/2)
	if e.Kind == space.Top { // beside what stands on it
		tip = draw.At(r.Lo.X+r.W()/10, r.Lo.Y+r.H()/10)
	} else if t, ok := inside(&d.crowd, rings, e.Name); ok {
		t.Class = "name"
		return []draw.Item{draw.Rect(typeset.BoxOf(t).Inset(-inkClear), draw.Pen{}, draw.Fill{On: true, Color: draw.White}), t}
	}
	items, ok := d.leader(tip, []string{e.Name}, d.over)
	if !ok {
		d.left = append(d.left, e.Name)
	}
	return []draw.Item{draw.Group{Class: "name", Items: items}}
}

// clear draws a stretch of floor that must stay clear before something.
func (d *clearDrawing) clear(c report.ClearFloor) draw.Item {
	w, _ := d.p.Fit.Places.Wall(c.Wall)
	ring := []draw.XY{d.point(w.Frame.At(c.Left, c.From)), d.point(w.Frame.At(c.Right, c.From)), d.point(w.Frame.At(c.Right, c.From+c.Asked)), d.point(w.Frame.At(c.Left, c.From+c.Asked))}
	pen := draw.Pen{Width: draw.Narrow, Color: draw.Blue, Dash: draw.Dashed}
	if c.Misses {
		pen = draw.Pen{Width: draw.Heavy, Color: draw.Vermilion, Dash: draw.Dashed}
	}
	return d.thing(c.Path+" > clear", "clear", c.Words, draw.Path{Rings: [][]draw.XY{ring}, Closed: true, Pen: pen})
}

// clearWords say what is asked and what is there, within the stretch.
func (d *clearDrawing) clearWords(c report.ClearFloor) []draw.Item {
	w, _ := d.p.Fit.Places.Wall(c.Wall)
	mid := d.point(w.Frame.At((c.Left+c.Right)/2, c.From+c.Asked/2))
	lines := strings.Split(c.Short, ", ")
	a, b := d.point(w.Frame.At(c.Left, c.From)), d.point(w.Frame.At(c.Right, c.From+c.Asked))
	if items, ok := d.stacked(lines, mid, draw.Span(min(a.X, b.X), min(a.Y, b.Y), max(a.X, b.X), max(a.Y, b.Y))); ok {
		return items
	}
	items, ok := d.leader(mid, lines, d.over)
	if !ok {
		d.left = append(d.left, c.Words)
	}
	return items
}

// stacked sets two words one over the other about a place, where both stand in a box and are free.
func (c *crowd) stacked(lines []string, mid draw.XY, in draw.Box) ([]draw.Item, bool) {
	const step = 2 * draw.MM
	var out []draw.Item
	y := mid.Y + step*draw.Um(len(lines)-1)
	for _, line := range lines {
		l := parts.Label{At: draw.At(mid.X, y), Body: line, Class: "clear", Clear: true}
		if box := l.Box().Inset(300); !in.Holds(box) || !c.free(box) {
			return nil, false
		}
		out = append(out, l.Items()...)
		y -= 2 * step
	}
	c.takeTexts(out)
	return out, true
}

// centered is a fixture with its center line.
type centered struct {
	name string
	x    figure.Figure
	out  figure.Figure // how far its center line is drawn into the room
}

func centeredOn(all place.Plan, wall string) []centered {
	var out []centered
	for _, b := range all.Basins {
		if b.Wall == wall {
			out = append(out, centered{b.Name, b.X, b.MidOff.Add(b.Deep.Half())})
		}
	}
	for _, c := range all.WCs {
		if c.Wall == wall {
			out = append(out, centered{c.Name, c.X, c.Front})
		}
	}
	return out
}

// centers draws the center lines of a wall's fixtures and how far each is from the finished walls at both ends, outside of the wall.
func (d *clearDrawing) centers(w place.Wall) []draw.Item {
	left, right := report.FinishedEnds(d.p, w)
	var out []draw.Item
	row := draw.Um(0)
	for _, c := range centeredOn(d.p.Fit.Places, w.Name) {
		if !known(c.x) {
			continue
		}
		out = append(out, d.centerLine(w, c))
		from, to := left, c.x.V
		if right-c.x.V < c.x.V-left { // from the nearer end
			from, to = c.x.V, right
		}
		items, ok := d.square(w, from, to, &row)
		if !ok {
			d.left = append(d.left, c.name+": center "+d.p.Style.Format(to-from)+" from the finished wall at the nearer end")
		}
		out = append(out, items...)
	}
	return out
}

func (d *clearDrawing) centerLine(w place.Wall, c centered) draw.Item {
	reach := c.out.V + 4*unit.Inch
	if !c.out.Known() {
		reach = 12 * unit.Inch
	}
	a, b := d.point(w.Frame.At(c.x.V, 0)), d.point(w.Frame.At(c.x.V, reach))
	s := draw.Stroke(centerPen, a.Plus(normal(d.point(w.Frame.Left), d.point(w.Frame.Right), 7000)), b)
	s.Class, s.Title = "center line", c.name
	d.keepClear(a, d.point(w.Frame.At(c.x.V, 0)))
	return s
}

// keepClear takes the places along a line outside of the room, so that no word comes to stand on it.
func (d *clearDrawing) keepClear(a, b draw.XY) {
	const parts, wide = 8, 400
	for i := range draw.Um(parts + 1) {
		at := draw.At(a.X+(b.X-a.X)*i/parts, a.Y+(b.Y-a.Y)*i/parts)
		d.take(draw.Span(at.X-wide, at.Y-wide, at.X+wide, at.Y+wide))
	}
}

// square is a dimension along a wall, outside of it, in the first row that has room.
func (d *clearDrawing) square(w place.Wall, from, to unit.Length, row *draw.Um) ([]draw.Item, bool) {
	const first, step = 9 * draw.MM, 5 * draw.MM
	for k := *row; k < 4; k++ {
		a := parts.Aligned{From: d.point(w.Frame.At(from, 0)), To: d.point(w.Frame.At(to, 0)), Offset: first + k*step, Text: d.p.Style.Bare(to - from)}
		if items := a.Items(); d.fits(items) {
			return []draw.Item{draw.Group{Class: "run", Items: items}}, true
		}
	}
	return nil, false
}
