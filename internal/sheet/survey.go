package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/site"
)

// Line is a line of the tape by the two points that it runs between.
type Line struct{ From, To string }

// SurveyOnScreen draws the floor's outline with what the tape has read: to scale where the readings fix the shape, else
// as a sketch. Lines asked for are dotted, the first of them in the accent; a suspect reading is heavy and dashed. True
// says that it is to scale.
func SurveyOnScreen(p plan.Plan, asked []Line) (Screen, bool) {
	d := &survey{p: p, asked: asked, at: map[string]draw.XY{}}
	d.place()
	size := d.area
	page := draw.Page{Title: "Plan of the floor with its tape readings", W: size.Hi.X, H: size.Hi.Y}
	d.within = draw.Span(0, 0, page.W, page.H)
	page.Items = d.items()
	return Screen{page, d.n}, d.n > 0
}

// PlanInList draws the outline of a floor alone, small.
func PlanInList(p plan.Plan) draw.Page {
	d := &survey{p: p, at: map[string]draw.XY{}}
	d.place()
	pen := draw.Line(2 * draw.Border)
	if d.n == 0 {
		pen = pen.As(draw.Dashed)
	}
	return ringPage("Plan of "+p.Name, d.ring, pen)
}

// SketchOfCorners draws what a room of so many corners may look like.
func SketchOfCorners(n int) draw.Page {
	return ringPage("A room with its corners", sketched(n, screenSize, screenSize*4/5), draw.Line(4*draw.Border))
}

// ringPage is an outline with a margin round it.
func ringPage(title string, ring []draw.XY, pen draw.Pen) draw.Page {
	const margin = 6 * draw.MM
	p := draw.Path{Rings: [][]draw.XY{ring}, Closed: true, Pen: pen}
	if len(ring) == 0 {
		return draw.Page{Title: title, W: screenSize, H: screenSize}
	}
	box := p.Reach().Inset(-margin)
	return draw.Page{Title: title, W: box.W(), H: box.H(), Items: draw.Moved([]draw.Item{p}, draw.At(-box.Lo.X, -box.Lo.Y))}
}

// survey is that drawing in the making.
type survey struct {
	crowd
	p     plan.Plan
	asked []Line
	ring  []draw.XY
	at    map[string]draw.XY
	area  draw.Box
	n     int64 // 1 to so many; 0 in a sketch
}

const (
	surveyMargin = 10 * draw.MM
	surveySize   = 80 * draw.MM // smaller than a face: fewer things, larger letters
)

// place puts every point that has a place on the page.
func (d *survey) place() {
	corners := d.p.Room.Survey.Corners
	if !d.p.Room.Survey.Fixed || len(corners) < 3 {
		d.sketch()
		return
	}
	raw := func(c site.Corner) geom.Point { return c.Raw }
	bounds := outline(corners, raw).Bounds()
	inner := draw.Span(0, 0, surveySize, surveySize)
	v := view{n: 1, of: bounds.Min, at: draw.At(surveyMargin, surveyMargin)}
	for v.um(bounds.W()) > inner.W() || v.um(bounds.H()) > inner.H() {
		v.n++
	}
	d.n, d.area = v.n, draw.Span(0, 0, v.um(bounds.W())+2*surveyMargin, v.um(bounds.H())+2*surveyMargin)
	for _, c := range corners {
		d.ring, d.at[c.Name] = append(d.ring, v.point(c.Raw)), v.point(c.Raw)
	}
	for _, s := range d.p.Room.Survey.Points {
		d.at[s.Name] = v.point(s.P)
	}
}

// sketch places the corners of a room whose shape is not known: square corners, clockwise, the first wall at the top.
func (d *survey) sketch() {
	d.area = draw.Span(0, 0, surveySize*6/5, surveySize)
	in := d.area.Inset(surveyMargin)
	for i, at := range sketched(len(d.p.Document.Survey.Corners), in.W(), in.H()) {
		at = at.Plus(in.Lo)
		d.ring, d.at[d.p.Document.Survey.Corners[i].Text] = append(d.ring, at), at
	}
}

// sketched are the corners of a box with steps in its far right corner; an odd one cuts the far left corner off.
func sketched(n int, w, h draw.Um) []draw.XY {
	if n < 3 {
		return nil
	}
	out := []draw.XY{{X: 0, Y: h}, {X: w, Y: h}}
	if n == 3 {
		return append(out, draw.XY{})
	}
	steps := (n - 4) / 2
	sx, sy := w/draw.Um(steps+2), h/draw.Um(steps+2)
	for k := steps; k > 0; k-- {
		x, y := w-draw.Um(steps-k)*sx, draw.Um(k)*sy
		out = append(out, draw.At(x, y), draw.At(x-sx, y))
	}
	out = append(out, draw.At(w-draw.Um(steps)*sx, 0))
	if n%2 == 1 {
		return append(out, draw.At(w/4, 0), draw.At(0, h/4))
	}
	return append(out, draw.XY{})
}

func (d *survey) items() []draw.Item {
	pen := draw.Line(draw.Heavy)
	if d.n == 0 {
		pen = draw.Pen{Width: draw.Narrow, Color: draw.Gray, Dash: draw.Dashed}
	}
	out := []draw.Item{draw.Path{ID: "room", Class: "room", Rings: [][]draw.XY{d.ring}, Closed: true, Pen: pen}}
	var words []draw.Item
	for _, r := range d.lines() {
		line, word := d.line(r)
		out, words = append(out, line...), append(words, word...)
	}
	return append(append(out, d.names()...), words...)
}

// taped is one line with what is said of it.
type taped struct {
	Line
	words, class string
	pen          draw.Pen
}

// lines are those read, the newest reading of each, then those asked for.
func (d *survey) lines() []taped {
	newest := map[Line]string{}
	var order []Line
	for _, r := range d.p.Document.Survey.Tape {
		l := Line{r.From, r.To}
		if _, seen := newest[l]; !seen {
			order = append(order, l)
		}
		newest[l] = d.p.Style.Bare(r.Length)
	}
	var out []taped
	for _, l := range order {
		t := taped{Line: l, words: newest[l], class: "reading", pen: draw.Line(draw.Fine)}
		if d.n == 0 {
			t.pen = draw.Line(draw.Wide) // a sketch fills as it is read
		}
		if d.suspect(l) {
			t.words, t.class, t.pen = t.words+d.doubt(), "reading suspect", draw.Pen{Width: draw.Heavy, Color: draw.Vermilion, Dash: draw.Dashed}
		}
		out = append(out, t)
	}
	for i, l := range d.asked {
		t := taped{Line: l, class: "reading asked", pen: draw.Pen{Width: draw.Narrow, Color: draw.Gray, Dash: draw.Dotted}}
		if i == 0 {
			t.words, t.class, t.pen = l.From+"-"+l.To+" ?", "reading next", draw.Pen{Width: 2 * draw.Border, Color: draw.Blue}
		}
		out = append(out, t)
	}
	return out
}

// doubt is what is written behind a suspect reading: where the readings can not tell which is wrong, each has only a
// question mark.
func (d *survey) doubt() string {
	if len(d.p.Room.Survey.Suspects) > 1 {
		return " ?"
	}
	return "  take again"
}

func (d *survey) suspect(l Line) bool {
	for _, i := range d.p.Room.Survey.Suspects {
		if d.p.Room.Survey.Readings[i].Name == l.From+"-"+l.To {
			return true
		}
	}
	return false
}

// line draws one line of the tape and its words, beside a wall or on a diagonal.
func (d *survey) line(t taped) (line, words []draw.Item) {
	a, okA := d.at[t.From]
	b, okB := d.at[t.To]
	if !okA || !okB {
		return nil, nil
	}
	s := draw.Stroke(t.pen, a, b)
	s.Class, s.Title = t.class, t.From+"-"+t.To+" "+t.words
	mid := draw.At((a.X+b.X)/2, (a.Y+b.Y)/2)
	if d.side(t.Line) {
		mid = mid.Plus(normal(a, b, 3500))
	} else {
		mid = draw.At(a.X+(b.X-a.X)*2/5, a.Y+(b.Y-a.Y)*2/5)
	}
	l := parts.Label{Body: t.words, Turn: turnOf(a, b), Class: t.class, Clear: d.side(t.Line), Bold: t.class != "reading"}
	if t.words == "" {
		return []draw.Item{s}, nil
	}
	words, _ = d.label(l, tries(mid, a, b)...)
	return []draw.Item{s}, words
}

// side says that a line runs along a wall.
func (d *survey) side(l Line) bool {
	c := d.p.Document.Survey.Corners
	for i := range c {
		a, b := c[i].Text, c[(i+1)%len(c)].Text
		if a == l.From && b == l.To || a == l.To && b == l.From {
			return true
		}
	}
	return false
}

// names letters the corners outside of them, and the points beside them.
func (d *survey) names() []draw.Item {
	var out []draw.Item
	n := len(d.ring)
	for i, at := range d.ring {
		u, w := normal(d.ring[(i+n-1)%n], at, 4500), normal(at, d.ring[(i+1)%n], 4500)
		l := parts.Label{Body: d.p.Document.Survey.Corners[i].Text, Size: parts.Large, Bold: true, Clear: true, Class: "corner"}
		label, _ := d.label(l, at.Plus(u).Plus(w), at.Plus(u), at.Plus(w))
		out = append(out, label...)
	}
	for _, s := range d.p.Room.Survey.Points {
		at, ok := d.at[s.Name]
		if !ok || d.n == 0 {
			continue
		}
		out = append(out, centerMark(at, 0)...)
		label, _ := d.label(parts.Label{Body: s.Name, Clear: true, Class: "point"}, at.Plus(draw.At(3000, 3000)), at.Plus(draw.At(-3000, 3000)))
		out = append(out, label...)
	}
	return out
}
