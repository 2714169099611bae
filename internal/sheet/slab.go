package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/joinery"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// slabHigh is the most of a page that a top takes.
const slabHigh = 95 * draw.MM

// slabView draws a top from above, the wall on top: x from its left end, y from its front edge.
type slabView struct {
	view
	p plan.Plan
	t joinery.Top
}

// slab draws a top with its holes at their true outline, its staves, and how it is held.
func (f *flow) slab(t joinery.Top) {
	d := &slabView{p: f.p, t: t}
	d.n = largest(t.Width, t.Depth, draw.Span(0, 0, f.room.W()-60*draw.MM, slabHigh))
	runs := d.runs()
	f.need(d.um(t.Depth) + runs[0].Depth() + 30*draw.MM)
	d.at = draw.At(f.room.Lo.X+30*draw.MM, f.room.Hi.Y-d.um(t.Depth)-6*draw.MM)
	f.now.add(draw.Group{Class: "top", Title: t.Name, Items: d.items(f.room)})
	runs = d.runs()
	for _, r := range runs {
		f.now.add(draw.Group{Class: "run", Items: r.Items()})
	}
	f.room.Hi.Y = d.at.Y - 8*draw.MM - runs[0].Depth() - 4*draw.MM
	f.paragraph("Drawn at "+d.words()+", seen from above: this face up, front edge below. Thin dashed: joints between staves; hatched: holes; dotted: recesses; chain: rows of screws; the wide chain line is where it is held fast.", parts.Small, false)
}

func (d *slabView) items(room draw.Box) []draw.Item {
	t := d.t
	body := geom.Rect{Max: geom.Point{X: t.Width, Y: t.Depth - t.Back}}
	wall := geom.Rect{Min: geom.Point{X: 0, Y: t.Depth}, Max: geom.Point{X: t.Width, Y: t.Depth}}
	out := []draw.Item{draw.Rect(d.box(body), draw.Line(draw.Wide), draw.Fill{On: true, Color: draw.White})}
	w := d.box(wall)
	out = append(out, draw.Stroke(draw.Line(draw.Wide), w.Lo.Plus(draw.At(-4*draw.MM, 0)), draw.At(w.Hi.X+4*draw.MM, w.Lo.Y)),
		draw.Text{Class: "edge", At: draw.At(w.Lo.X, w.Lo.Y+800), Size: parts.Tiny, Body: "finished face of " + t.Wall})
	at := unit.Length(0)
	for _, s := range t.Glue.Staves {
		if at += s.Jointed; at < body.Max.Y {
			out = append(out, draw.Stroke(draw.Line(draw.Fine).As(draw.Dashed), d.point(geom.Point{Y: at}), d.point(geom.Point{X: t.Width, Y: at})))
		}
	}
	for _, h := range t.Holes {
		fill := draw.Fill{On: true, Color: draw.White, Hatch: draw.Cross}
		if h.Recess > 0 {
			fill.Hatch = draw.Dots
		}
		out = append(out, draw.Path{Class: "hole", Title: h.Name, Rings: d.rings(geom.Region{ringFromFront(t, h.Ring())}), Closed: true, Pen: draw.Line(draw.Normal), Fill: fill})
	}
	for _, s := range t.Moves.Slots {
		out = append(out, d.level(s.Z, draw.Line(draw.Narrow).As(draw.Chain)))
	}
	if len(t.Moves.Slots) > 0 {
		out = append(out, d.level(t.Moves.FixedAt, draw.Line(draw.Wide).As(draw.Chain)))
	}
	return append(out, d.names(room)...)
}

// names what is drawn, each where there is room.
func (d *slabView) names(room draw.Box) []draw.Item {
	c := crowd{within: draw.Span(room.Lo.X, d.at.Y-4*draw.MM, room.Hi.X, room.Hi.Y)}
	var out []draw.Item
	for _, h := range d.t.Holes {
		mid := d.point(geom.Point{X: h.X, Y: d.t.Depth - h.Z})
		l := parts.Label{At: mid, Body: h.Name, Class: "hole name"}
		if items, ok := l.In(d.box(rectFromFront(d.t, h.Bounds()))); ok && c.free(items.Box()) {
			c.take(items.Box())
			out = append(out, items.Items()...)
			continue
		}
		items, _ := c.leader(mid, []string{h.Name}, func(draw.Box) draw.Um { return 0 })
		out = append(out, draw.Group{Class: "hole name", Items: items})
	}
	l := parts.Label{Body: "front edge, this face up", Size: parts.Tiny, Class: "edge"}
	b := d.box(geom.Rect{Max: geom.Point{X: d.t.Width, Y: d.t.Depth - d.t.Back}})
	for _, k := range []draw.Um{50, 25, 75, 12, 88} {
		if items, ok := c.label(l, draw.At(b.Lo.X+b.W()*k/100, b.Lo.Y+2500)); ok {
			return append(out, items...)
		}
	}
	return out
}

func rectFromFront(t joinery.Top, r geom.Rect) geom.Rect {
	return geom.Rect{Min: geom.Point{X: r.Min.X, Y: t.Depth - r.Max.Y}, Max: geom.Point{X: r.Max.X, Y: t.Depth - r.Min.Y}}
}

// level is a line along the top at a distance off the wall.
func (d *slabView) level(z unit.Length, pen draw.Pen) draw.Item {
	return draw.Stroke(pen, d.point(geom.Point{X: 0, Y: d.t.Depth - z}).Plus(draw.At(-2*draw.MM, 0)), d.point(geom.Point{X: d.t.Width, Y: d.t.Depth - z}).Plus(draw.At(2*draw.MM, 0)))
}

// runs are the dimensions: from the left end, and on the right from the finished wall.
func (d *slabView) runs() []parts.Running {
	t, style := d.t, d.p.Style.Fine()
	b := d.box(geom.Rect{Max: geom.Point{X: t.Width, Y: t.Depth}})
	x := &run{parts.Running{Feature: b.Lo.Y, Line: b.Lo.Y - 5*draw.MM, Origin: parts.Mark{At: b.Lo.X, Text: "0", Bold: true}}}
	z := &run{parts.Running{Vertical: true, Feature: b.Hi.X, Line: b.Hi.X + 8*draw.MM, Origin: parts.Mark{At: b.Hi.Y, Text: "0 wall", Bold: true}}}
	for _, h := range t.Holes {
		x.mark(d.x(h.X), style.Bare(h.X), false)
		z.mark(d.y(t.Depth-h.Z), style.Bare(h.Z)+" "+h.Name, false)
	}
	for _, s := range t.Moves.Slots {
		z.mark(d.y(t.Depth-s.Z), style.Bare(s.Z)+" screws", false)
	}
	if t.Back > 0 {
		z.mark(d.y(t.Depth-t.Back), style.Bare(t.Back)+" rear edge", false)
	}
	x.mark(d.x(t.Width), style.Bare(t.Width), true)
	z.mark(d.y(0), style.Bare(t.Depth)+" front", true)
	return []parts.Running{x.Running, z.Running}
}

// TopOnScreen draws a top from above, for a page on a screen.
func TopOnScreen(p plan.Plan, t joinery.Top) draw.Page {
	d := &slabView{p: p, t: t}
	d.n = max(1, int64(max(t.Width, t.Depth))/perUm/int64(screenSize)+1)
	runs := d.runs()
	foot := 5*draw.MM + runs[0].Depth() + gap
	side := 8*draw.MM + runs[1].Depth() + gap
	d.at = draw.At(diagramMargin, foot)
	page := draw.Page{Title: t.Name + ", from above", W: diagramMargin + d.um(t.Width) + side, H: foot + d.um(t.Depth) + diagramMargin}
	page.Items = d.items(draw.Span(0, 0, page.W, page.H))
	for _, r := range d.runs() {
		page.Items = append(page.Items, draw.Group{Class: "run", Items: r.Items()})
	}
	return page
}
