package sheet

import (
	"fmt"
	"math"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/part"
	"dryfit/internal/report"
	"dryfit/internal/unit"
)

// partHigh is the most of a page that the drawing of one part takes.
const partHigh = 70 * draw.MM

// partDrawing draws a part face up with all that is cut in it, its numbers from the left end and the front edge, and says it in words.
func (f *flow) partDrawing(number int, q part.Part) {
	work := report.PartWork(f.p, q)
	if len(work) == 0 {
		return
	}
	d := &partView{flow: f, q: q}
	room := draw.Span(0, 0, f.room.W()-2*partSide, partHigh)
	d.n = largest(q.Size.Length, q.Size.Width, room)
	runs := d.runs() // where the page begins does not change how deep they are
	high := d.um(q.Size.Width) + runs[0].Depth() + 24*draw.MM
	f.need(high + 10*draw.MM)
	f.paragraph(fmt.Sprintf("%d  %s", number, capital(q.Name)), parts.Large, true)
	f.paragraph(fmt.Sprintf("%s of %s, %s, grain %s. Drawn at %s.", report.Count(q.Count, "piece", "pieces"), q.Stock, sizeOfPart(f, q), q.Grain, d.words()), parts.Small, false)
	d.at = draw.At(f.room.Lo.X+partSide, f.room.Hi.Y-d.um(q.Size.Width)-2*draw.MM)
	f.now.add(draw.Group{Class: "part drawing", Title: q.Name, Items: d.items()})
	runs = d.runs()
	low := d.at.Y - 6*draw.MM
	for _, r := range runs {
		f.now.add(draw.Group{Class: "run", Items: r.Items()})
	}
	f.room.Hi.Y = low - runs[0].Depth() - 6*draw.MM
	for _, line := range work {
		f.paragraph("– "+line+".", parts.Small, false)
	}
	f.room.Hi.Y -= gap
}

const partSide = 26 * draw.MM // for the numbers on the left, and as much on the right

func sizeOfPart(f *flow, q part.Part) string {
	s := f.p.Style.Fine()
	return s.Bare(q.Size.Length) + " x " + s.Bare(q.Size.Width) + " x " + s.Format(q.Size.Thick)
}

// partView draws one part.
type partView struct {
	*flow
	view
	q part.Part
}

func (d *partView) rect(r geom.Rect, pen draw.Pen, fill draw.Fill) draw.Path {
	return draw.Rect(d.box(r), pen, fill)
}

func (d *partView) items() []draw.Item {
	s := d.q.Size
	out := []draw.Item{draw.Path{Class: "part", Rings: d.rings(geom.Region{d.outline()}), Closed: true, Pen: draw.Line(draw.Wide), Fill: draw.Fill{On: true, Color: draw.White}}}
	for _, c := range d.q.Channels {
		out = append(out, d.channel(c))
	}
	for _, h := range d.q.Holes {
		out = append(out, d.hole(h)...)
	}
	for _, k := range d.q.Cutouts {
		out = append(out, draw.Path{Class: "cut-out", Title: k.For, Rings: d.rings(geom.Region{k.Outline}), Closed: true, Pen: draw.Line(draw.Wide), Fill: draw.Fill{On: true, Color: draw.White, Hatch: draw.Cross}})
	}
	for _, t := range d.q.Tapers {
		out = append(out, d.taper(t))
	}
	front := "front edge"
	for _, l := range d.q.Labels {
		if l.On == part.Front {
			front = l.Text
		}
	}
	out = append(out, draw.Text{Class: "edge", At: draw.At(d.x(s.Length/2), d.at.Y-parts.Tiny-800), Size: parts.Tiny, Anchor: draw.Middle, Body: front})
	if words, ok := d.faceUp(); ok {
		out = append(out, words...)
	} else {
		out = append(out, draw.Text{Class: "edge", At: draw.At(d.x(s.Length)+draw.MM, d.y(s.Width/2)-parts.Tiny/2), Size: parts.Tiny, Body: "this face up"})
	}
	return out
}

// faceUp writes which side is up where it covers no hole and no cut-out. False where there is no such place.
func (d *partView) faceUp() ([]draw.Item, bool) {
	s := d.q.Size
	c := crowd{within: d.box(geom.Rect{Max: geom.Point{X: s.Length, Y: s.Width}}).Inset(600)}
	for _, h := range d.q.Holes {
		if h.On.Flat() {
			r := d.um(h.Diameter+h.Slot)/2 + draw.MM
			at := d.point(h.At)
			c.take(draw.Span(at.X-r, at.Y-r, at.X+r, at.Y+r))
		}
	}
	for _, k := range d.q.Cutouts {
		c.take(d.box(k.Outline.Bounds()))
	}
	for _, turn := range []int{0, 90} {
		var at []draw.XY
		for _, x := range []unit.Length{50, 35, 65, 20, 80} {
			for _, y := range []unit.Length{50, 25, 75} {
				at = append(at, d.point(geom.Point{X: s.Length * x / 100, Y: s.Width * y / 100}))
			}
		}
		if items, ok := c.label(parts.Label{Body: "this face up", Size: parts.Tiny, Class: "edge", Turn: turn}, at...); ok {
			return items, true
		}
	}
	return nil, false
}

// outline is the part's face with its mitered ends.
func (d *partView) outline() geom.Ring {
	s := d.q.Size
	p := [4]geom.Point{{}, {X: s.Length}, {X: s.Length, Y: s.Width}, {Y: s.Width}}
	for _, e := range d.q.Ends {
		set := unit.FromFloat(float64(s.Width) * math.Tan(math.Abs(e.Miter.Radians())))
		front, rear := 0, 3
		if e.On == part.Right {
			front, rear, set = 1, 2, -set
		}
		if e.Miter > 0 {
			p[rear].X += set
		} else {
			p[front].X += set
		}
	}
	var r geom.Ring
	for _, v := range p {
		r = append(r, geom.Vertex{P: v})
	}
	return r
}

// channel shows what is cut into the face hatched, and all else dashed, where it lies seen through the face.
func (d *partView) channel(c part.Channel) draw.Item {
	s, r := d.q.Size, c.Area
	switch c.On {
	case part.Face:
		return d.rect(r, draw.Line(draw.Narrow), draw.Fill{Hatch: draw.Diagonal})
	case part.Front:
		r = geom.Rect{Min: geom.Point{X: c.Area.Min.X}, Max: geom.Point{X: c.Area.Max.X, Y: c.Depth}}
	case part.Rear:
		r = geom.Rect{Min: geom.Point{X: c.Area.Min.X, Y: s.Width - c.Depth}, Max: geom.Point{X: c.Area.Max.X, Y: s.Width}}
	case part.Left:
		r = geom.Rect{Min: geom.Point{Y: c.Area.Min.X}, Max: geom.Point{X: c.Depth, Y: c.Area.Max.X}}
	case part.Right:
		r = geom.Rect{Min: geom.Point{X: s.Length - c.Depth, Y: c.Area.Min.X}, Max: geom.Point{X: s.Length, Y: c.Area.Max.X}}
	}
	return d.rect(r, draw.Line(draw.Narrow).As(draw.Dashed), draw.Fill{})
}

// hole draws a bore in the face or the back, dashed where it is not seen, with its center.
func (d *partView) hole(h part.Hole) []draw.Item {
	if !h.On.Flat() {
		return nil
	}
	pen := draw.Line(draw.Narrow)
	if h.On == part.Back && !h.Through {
		pen = pen.As(draw.Dashed)
	}
	if h.Slot > 0 {
		return d.slot(h, pen)
	}
	c, arm := d.point(h.At), d.um(h.Diameter)/2+draw.MM
	axis := draw.Line(draw.Fine).As(draw.Chain)
	return []draw.Item{draw.Circle{Class: "hole", Title: h.For, C: c, R: d.um(h.Diameter) / 2, Pen: pen},
		draw.Stroke(axis, c.Plus(draw.At(-arm, 0)), c.Plus(draw.At(arm, 0))), draw.Stroke(axis, c.Plus(draw.At(0, -arm)), c.Plus(draw.At(0, arm)))}
}

// slot draws a slot with its round ends.
func (d *partView) slot(h part.Hole, pen draw.Pen) []draw.Item {
	const steps = 12 // to a half turn
	c, r, half := d.point(h.At), d.um(h.Diameter)/2, d.um(h.Slot)/2
	var ring []draw.XY
	for i := range 2 * (steps + 1) {
		end := draw.Um(1)
		if i > steps {
			end = -1
		}
		sin, cos := math.Sincos(math.Pi * (float64(i%(steps+1))/steps - 0.5))
		x, y := end*(half+draw.Um(math.Floor(float64(r)*cos+0.5))), end*draw.Um(math.Floor(float64(r)*sin+0.5))
		if h.Along == part.UpAxis {
			x, y = -y, x
		}
		ring = append(ring, c.Plus(draw.At(x, y)))
	}
	arm := draw.Line(draw.Fine).As(draw.Chain)
	return []draw.Item{draw.Path{Class: "hole", Title: h.For, Rings: [][]draw.XY{ring}, Closed: true, Pen: pen},
		draw.Stroke(arm, c.Plus(draw.At(-r-draw.MM, 0)), c.Plus(draw.At(r+draw.MM, 0))), draw.Stroke(arm, c.Plus(draw.At(0, -r-draw.MM)), c.Plus(draw.At(0, r+draw.MM)))}
}

func (d *partView) taper(t part.Taper) draw.Item {
	s := d.q.Size
	a, b := geom.Point{X: t.From}, geom.Point{X: t.To, Y: t.Less}
	switch t.On {
	case part.Rear:
		a.Y, b.Y = s.Width, s.Width-t.Less
	case part.Face, part.Back:
		a, b = geom.Point{X: t.From}, geom.Point{X: t.From, Y: s.Width}
		return draw.Stroke(draw.Line(draw.Narrow).As(draw.Dashed), d.point(a), d.point(b))
	}
	return draw.Stroke(draw.Line(draw.Wide), d.point(a), d.point(b))
}

// runs are the running dimensions: below from the left end, on the left from the front edge.
func (d *partView) runs() []parts.Running {
	s := d.q.Size
	b := d.box(geom.Rect{Max: geom.Point{X: s.Length, Y: s.Width}})
	style := d.p.Style.Fine()
	x := &run{parts.Running{Feature: b.Lo.Y - 3*draw.MM, Line: b.Lo.Y - 6*draw.MM, Origin: parts.Mark{At: b.Lo.X, Text: "0", Bold: true}}}
	y := &run{parts.Running{Vertical: true, Feature: b.Lo.X, Line: b.Lo.X - 4*draw.MM, Origin: parts.Mark{At: b.Lo.Y, Text: "0", Bold: true}}}
	alongX := func(l unit.Length) { x.mark(d.x(l), style.Bare(l), false) }
	alongY := func(l unit.Length) { y.mark(d.y(l), style.Bare(l), false) }
	for _, c := range d.q.Channels {
		if c.On.Flat() || !c.On.IsEnd() {
			alongX(c.Area.Min.X)
			alongX(c.Area.Max.X)
		}
		if c.On.Flat() {
			alongY(c.Area.Min.Y)
			alongY(c.Area.Max.Y)
		}
	}
	for _, h := range d.q.Holes {
		if h.On.Flat() {
			alongX(h.At.X)
			alongY(h.At.Y)
		}
	}
	for _, k := range d.q.Cutouts {
		r := k.Outline.Bounds()
		for _, p := range []geom.Point{r.Min, r.Max} {
			alongX(p.X)
			alongY(p.Y)
		}
	}
	for _, t := range d.q.Tapers {
		alongX(t.From)
	}
	alongX(s.Length)
	alongY(s.Width)
	return []parts.Running{x.Running, y.Running}
}
