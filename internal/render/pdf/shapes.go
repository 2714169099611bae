package pdf

import (
	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

func (e *encoder) path(p draw.Path) {
	if op := e.paint(p.Pen, p.Fill); op != "" {
		for _, ring := range p.Rings {
			e.ring(ring, p.Closed)
		}
		e.DrawPath(op)
	}
	e.hatch(p.Fill.Hatch, p.HatchLines())
}

func (e *encoder) ring(ring []draw.XY, closed bool) {
	for i, at := range ring {
		if i == 0 {
			e.MoveTo(e.x(at.X), e.y(at.Y))
		} else {
			e.LineTo(e.x(at.X), e.y(at.Y))
		}
	}
	if closed && len(ring) > 0 {
		e.ClosePath()
	}
}

// kappa puts the handles of a Bézier quarter circle: 4/3 (sqrt 2 - 1). Its error is 0.03 % of the radius.
const kappa = 0.5522847498307936

func (e *encoder) circle(c draw.Circle) {
	if op := e.paint(c.Pen, c.Fill); op != "" {
		x, y, r := e.x(c.C.X), e.y(c.C.Y), mm(c.R)
		k := r * kappa
		e.MoveTo(x+r, y)
		e.CurveBezierCubicTo(x+r, y-k, x+k, y-r, x, y-r)
		e.CurveBezierCubicTo(x-k, y-r, x-r, y-k, x-r, y)
		e.CurveBezierCubicTo(x-r, y+k, x-k, y+r, x, y+r)
		e.CurveBezierCubicTo(x+k, y+r, x+r, y+k, x+r, y)
		e.ClosePath()
		e.DrawPath(op)
	}
	e.hatch(c.Fill.Hatch, c.HatchLines())
}

func (e *encoder) hatch(h draw.Hatch, lines []draw.Segment) {
	if len(lines) == 0 {
		return
	}
	op := e.paint(draw.HatchPen(h), draw.Fill{})
	for _, s := range lines {
		e.MoveTo(e.x(s.A.X), e.y(s.A.Y))
		e.LineTo(e.x(s.B.X), e.y(s.B.Y))
	}
	e.DrawPath(op)
}

// paint sets pen and fill and returns the operator that ends the path, empty where nothing is to be seen. It comes
// before the path, since PDF allows no other operator between a path's points and its painting.
func (e *encoder) paint(pen draw.Pen, fill draw.Fill) string {
	op := ""
	if fill.On {
		e.SetFillColor(int(fill.Color.R), int(fill.Color.G), int(fill.Color.B))
		op = "f*"
	}
	if pen.Width <= 0 {
		return op
	}
	e.SetDrawColor(int(pen.Color.R), int(pen.Color.G), int(pen.Color.B))
	e.SetLineWidth(mm(pen.Width))
	e.SetDashPattern(dashes(pen), 0)
	if fill.On {
		return "B*"
	}
	return "D"
}

func dashes(pen draw.Pen) []float64 {
	out := []float64{}
	for _, d := range pen.Pattern() {
		out = append(out, mm(d))
	}
	return out
}

func (e *encoder) text(t draw.Text) {
	body := typeset.Clean(t.Body)
	if body == "" || t.Size <= 0 {
		return
	}
	style := ""
	if t.Bold {
		style = "B"
	}
	e.SetFont(family, style, 1)
	e.SetFontUnitSize(mm(typeset.Em(t.Size, t.Bold))) // written again each time: a clip or turn before may have dropped it
	e.SetTextColor(int(t.Color.R), int(t.Color.G), int(t.Color.B))
	at := typeset.Start(t)
	x, y := e.x(at.X), e.y(at.Y)
	if t.Turn != 0 {
		e.TransformBegin()
		e.TransformRotate(float64(t.Turn), x, y)
		defer e.TransformEnd()
	}
	e.Text(x, y, body)
}

func (e *encoder) group(g draw.Group) {
	if g.Clip != nil {
		lo, hi := g.Clip[0], g.Clip[1]
		e.ClipRect(e.x(lo.X), e.y(hi.Y), mm(hi.X-lo.X), mm(hi.Y-lo.Y), false)
		defer e.ClipEnd()
	}
	e.items(g.Items)
}
