package sheet

import (
	"fmt"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/joinery"
	"dryfit/internal/report"
	"dryfit/internal/typeset"
	"dryfit/internal/unit"
)

// scribe lists a line to cut and then draws it at full size over as many pages as its edge is long.
func (b *book) scribe(s joinery.Scribe) {
	f := b.shop("Scribe: "+s.Name, "Line to cut", "", b.paper.Paper)
	for _, line := range report.ScribeWords(b.p, s) {
		f.paragraph(line, parts.Small, false)
	}
	f.table(report.ScribeLine(b.p, s), 0)
	t := template{book: b, s: s, long: s.Line[len(s.Line)-1].At}
	if s.Length > 0 {
		t.long = s.Length
	}
	t.pages()
}

// template is a line to scribe at 1:1, tiled over paper. Neighboring pages share a strip with a mark at each end of it: lay mark on mark.
type template struct {
	*book
	s    joinery.Scribe
	long unit.Length
}

const (
	templateShared = 20 * draw.MM // of two neighboring pages
	templateBand   = 60 * draw.MM // from the line down to what holds the paper together
)

func (t *template) full() view { return view{n: 1} }

// place is where a station of the edge is along the template: the part lies face up with that edge away from the person, which turns some
// edges end for end.
func (t *template) place(x unit.Length) unit.Length {
	if t.s.Turned {
		return t.long - x
	}
	return x
}

func (t *template) pages() {
	v := t.full()
	wide := (&leaf{paper: t.paper.Landscape(), caution: shopCaution}).body().W() - 2*draw.MM
	step := wide - templateShared
	whole := v.um(t.long)
	n := 1 + int(max(0, whole-wide+step-1)/step)
	for i := range n {
		f := t.shop("Template: "+t.s.Name, fmt.Sprintf("Page %d of %d", i+1, n), "1:1", t.paper.Landscape())
		t.page(f, draw.Um(i)*step, wide, i > 0, i < n-1, i)
	}
}

// page draws what lies between from and from + wide along the edge.
func (t *template) page(f *flow, from, wide draw.Um, before, after bool, i int) {
	f.paragraph("Print at full size, without fitting to the page; check the square. Cut along the wide line, lay the templates mark on mark along the edge of "+t.s.For+", face up, and mark the line.", parts.Small, false)
	v := t.full()
	deepest := v.um(t.s.Needs)
	top := f.room.Hi.Y - 8*draw.MM
	left := f.room.Lo.X + draw.MM
	at := func(x unit.Length, cut unit.Length) draw.XY {
		return draw.At(left+v.um(t.place(x))-from, top-v.um(cut))
	}
	clip := draw.Span(left, top-deepest-templateBand, left+wide, top+2*draw.MM)
	var line []draw.XY
	for _, p := range t.s.Line {
		line = append(line, at(p.At, p.Cut))
	}
	if last := t.s.Line[len(t.s.Line)-1]; last.At < t.long {
		line = append(line, at(t.long, last.Cut))
	}
	ends := draw.Span(left-from, top-deepest-templateBand, left-from+v.um(t.long), top)
	items := []draw.Item{draw.Rect(ends, draw.Line(draw.Narrow), draw.Fill{}), draw.Stroke(draw.Line(draw.Narrow).As(draw.Chain), at(0, 0), at(t.long, 0)), draw.Stroke(draw.Line(draw.Wide), line...)}
	f.now.add(draw.Group{Class: "template", Clip: &[2]draw.XY{clip.Lo, clip.Hi}, Items: items})
	t.marks(f, clip, before, after, i)
	t.stations(f, clip, from, top-deepest)
	f.room.Hi.Y = clip.Lo.Y - gap
	t.square(f)
}

// marks are where this page lies on its neighbors.
func (t *template) marks(f *flow, clip draw.Box, before, after bool, i int) {
	mark := func(x draw.Um, n int, anchor draw.Anchor) {
		f.now.add(draw.Stroke(draw.Line(draw.Narrow).As(draw.Dashed), draw.At(x, clip.Lo.Y), draw.At(x, clip.Hi.Y)),
			draw.Text{Class: "overlap", At: draw.At(x, clip.Lo.Y-parts.Small-500), Size: parts.Small, Anchor: anchor, Body: fmt.Sprintf("mark %d", n)})
	}
	if before {
		mark(clip.Lo.X+templateShared/2, i, draw.Start)
	}
	if after {
		mark(clip.Hi.X-templateShared/2, i+1, draw.End)
	}
}

// stations name the places where the line was taken, under the line.
func (t *template) stations(f *flow, clip draw.Box, from, low draw.Um) {
	v, style := t.full(), f.p.Style.Fine()
	c := crowd{within: clip.Inset(500)}
	for _, p := range t.s.Line {
		x := clip.Lo.X + v.um(t.place(p.At)) - from
		if x < clip.Lo.X || x > clip.Hi.X {
			continue
		}
		f.now.add(draw.Stroke(draw.Line(draw.Fine), draw.At(x, low-4*draw.MM), draw.At(x, low-9*draw.MM)))
		l := parts.Label{Body: style.Bare(p.At) + ": cut " + style.Bare(p.Cut), Class: "station", Clear: true}
		half := typeset.Width(l.Body, parts.Small, false)/2 + draw.MM
		if items, ok := c.label(l, draw.At(x, low-12*draw.MM), draw.At(x+half, low-12*draw.MM), draw.At(x-half, low-12*draw.MM), draw.At(x, low-17*draw.MM)); ok {
			f.now.add(items...)
		}
	}
	words := parts.Label{Body: "the part, face up: this side stays; 0 is at its " + t.s.Origin, Class: "station", Clear: true}
	if items, ok := c.label(words, draw.At((clip.Lo.X+clip.Hi.X)/2, low-30*draw.MM), draw.At((clip.Lo.X+clip.Hi.X)/2, low-36*draw.MM)); ok {
		f.now.add(items...)
	}
}

// square is what shows whether the print has its true size: 2 in or 50 mm.
func (t *template) square(f *flow) {
	side, words := 50*unit.Millimetre, "50 mm"
	if f.p.Style.System == unit.Inches {
		side, words = 2*unit.Inch, "2 in"
	}
	s := t.full().um(side)
	f.need(s + 2*gap)
	lo := draw.At(f.room.Lo.X+draw.MM, f.room.Hi.Y-s-gap)
	f.now.add(draw.Rect(draw.Box{Lo: lo, Hi: lo.Plus(draw.At(s, s))}, draw.Line(draw.Normal), draw.Fill{}),
		draw.Text{Class: "check square", At: lo.Plus(draw.At(s/2, s/2)), Size: parts.Small, Anchor: draw.Middle, Body: words})
	f.room.Hi.Y = lo.Y - gap
}
