package svg

import (
	"fmt"
	"strings"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

func (e *encoder) path(p draw.Path) {
	attrs := names(p.ID, p.Class) + paint(p.Pen, p.Fill)
	if p.Fill.On && len(p.Rings) > 1 {
		attrs += ` fill-rule="evenodd"`
	}
	e.shape("path", fmt.Sprintf(` d="%s"`, e.rings(p)), attrs, p.Title)
	e.hatch(p.Fill.Hatch, p.HatchLines())
}

func (e *encoder) circle(c draw.Circle) {
	at := fmt.Sprintf(` cx="%s" cy="%s" r="%s"`, mm(c.C.X), e.y(c.C.Y), mm(c.R))
	e.shape("circle", at, names(c.ID, c.Class)+paint(c.Pen, c.Fill), c.Title)
	e.hatch(c.Fill.Hatch, c.HatchLines())
}

// shape writes one element; a title goes inside it, where screen readers and pointers look.
func (e *encoder) shape(name, at, attrs, title string) {
	if title == "" {
		e.put("<%s%s%s/>\n", name, attrs, at)
		return
	}
	if e.opt.Inline {
		attrs += ` role="img"`
	}
	e.put("<%s%s%s><title>%s</title></%s>\n", name, attrs, at, escape(title), name)
}

func (e *encoder) hatch(h draw.Hatch, lines []draw.Segment) {
	if len(lines) == 0 {
		return
	}
	var d []byte
	for _, s := range lines {
		d = e.appendAt(e.appendAt(d, 'M', s.A), 'L', s.B)
	}
	e.put("<path class=\"hatch\"%s d=\"%s\"/>\n", paint(draw.HatchPen(h), draw.Fill{}), d)
}

func (e *encoder) rings(p draw.Path) []byte {
	var d []byte
	for _, ring := range p.Rings {
		verb := byte('M')
		for _, at := range ring {
			d, verb = e.appendAt(d, verb, at), 'L'
		}
		if p.Closed && len(ring) > 0 {
			d = append(d, 'Z')
		}
	}
	return d
}

func (e *encoder) text(t draw.Text) {
	if typeset.Clean(t.Body) == "" || t.Size <= 0 {
		return
	}
	e.put("<text%s x=\"%s\" y=\"%s\" font-size=\"%s\"", names("", t.Class), mm(t.At.X), e.y(t.At.Y), mm(typeset.Em(t.Size, t.Bold)))
	if t.Anchor != draw.Start {
		e.put(` text-anchor="%s"`, [...]string{"start", "middle", "end"}[t.Anchor])
	}
	if t.Bold {
		e.put(` font-weight="bold"`)
	}
	if t.Turn != 0 {
		e.put(` transform="rotate(%d %s %s)"`, -t.Turn, mm(t.At.X), e.y(t.At.Y))
	}
	e.put(" fill=\"%s\">%s</text>\n", hex(t.Color), escape(t.Body))
}

func (e *encoder) group(g draw.Group) {
	clip := ""
	if g.Clip != nil {
		e.clips++
		id := fmt.Sprintf("%sclip%d", e.opt.Prefix, e.clips)
		lo, hi := g.Clip[0], g.Clip[1]
		e.put("<clipPath id=\"%s\"><rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"/></clipPath>\n",
			escape(id), mm(lo.X), e.y(hi.Y), mm(hi.X-lo.X), mm(hi.Y-lo.Y))
		clip = fmt.Sprintf(` clip-path="url(#%s)"`, escape(id))
	}
	e.put("<g%s%s>\n", names(g.ID, g.Class), clip)
	e.title(g.Title)
	e.items(g.Items)
	e.put("</g>\n")
}

func names(id, class string) string {
	s := ""
	if id != "" {
		s += fmt.Sprintf(` id="%s"`, escape(id))
	}
	if class != "" {
		s += fmt.Sprintf(` class="%s"`, escape(class))
	}
	return s
}

// paint writes line and fill as attributes, so that a style sheet of the page can override them.
func paint(pen draw.Pen, fill draw.Fill) string {
	s := ""
	if fill.On {
		s += fmt.Sprintf(` fill="%s"`, hex(fill.Color))
	}
	if pen.Width <= 0 {
		return s
	}
	s += fmt.Sprintf(` stroke="%s" stroke-width="%s"`, hex(pen.Color), mm(pen.Width))
	if dashes := pen.Pattern(); dashes != nil {
		parts := make([]string, len(dashes))
		for i, d := range dashes {
			parts[i] = mm(d)
		}
		s += fmt.Sprintf(` stroke-dasharray="%s"`, strings.Join(parts, " "))
	}
	return s
}

// y turns the page's height into SVG's depth.
func (e *encoder) y(v draw.Um) string { return mm(e.page.H - v) }
