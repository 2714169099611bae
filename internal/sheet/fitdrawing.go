package sheet

import (
	"strings"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/typeset"
	"dryfit/internal/unit"
)

// fitDrawing is a drawing of what is placed, seen square to one plane: shapes, words that name them, running dimensions round them. It is drawn
// on paper with all its dimensions, on a screen with those that bear names.
type fitDrawing struct {
	view
	crowd
	p     plan.Plan
	area  geom.Rect // what must be seen
	paint func(d *fitDrawing) []draw.Item
	names []named
	ups   []upRun
	along []alongRun
	ids   func(path string) string // names of shapes on a screen page; nil: none
	over  func(draw.Box) draw.Um   // what speaks against a place for a name
	// unnamed are words that found no room in the drawing; they are told below it.
	unnamed []string
}

// named is a word on a thing: within its box where it has room there, else beside it with a line.
type named struct {
	on   geom.Rect
	word string
}

// upRun are heights along one side; alongRun distances below or above. Words says that each bears its name.
type upRun struct {
	right  bool
	words  bool
	from   unit.Length
	origin string
	marks  []report.Mark
}

type alongRun struct {
	above  bool
	from   unit.Length
	origin string
	marks  []report.Mark
}

// sideGap is from the drawing to its dimension lines: room for words that name things near its edge.
const sideGap = 9 * draw.MM

// longestMark is how many letters of names a dimension takes before another line is begun.
const longestMark = 44

// runs are the running dimensions at the present scale and place.
func (d *fitDrawing) runs() []parts.Running {
	b := d.box(d.area)
	var out []parts.Running
	for _, u := range d.ups {
		r := &run{parts.Running{Vertical: true, Feature: b.Lo.X, Line: b.Lo.X - sideGap, Origin: parts.Mark{At: d.y(u.from), Text: u.origin, Bold: true}}}
		if u.right {
			r.Feature, r.Line = b.Hi.X, b.Hi.X+sideGap
		}
		d.markAll(r, u.marks, u.from, u.words, d.y)
		out = append(out, r.Running)
	}
	for _, a := range d.along {
		r := &run{parts.Running{Feature: b.Lo.Y, Line: b.Lo.Y - sideGap, Origin: parts.Mark{At: d.x(a.from), Text: a.origin, Bold: true}}}
		if a.above {
			r.Feature, r.Line = b.Hi.Y, b.Hi.Y+sideGap
		}
		d.markAll(r, a.marks, a.from, true, d.x)
		out = append(out, r.Running)
	}
	return out
}

// markAll adds marks, those that read the same as one with all their names.
func (d *fitDrawing) markAll(r *run, all []report.Mark, from unit.Length, words bool, place func(unit.Length) draw.Um) {
	for i := 0; i < len(all); {
		value := d.p.Style.Bare(all[i].At - from)
		text, k := value, i
		for ; k < len(all) && d.p.Style.Bare(all[k].At-from) == value; k++ {
			name := strings.Join(strings.Fields(all[k].Name), " ")
			switch {
			case !words:
			case k == i:
				text += " " + name
			case len(text)+len(name) > longestMark:
				r.mark(place(all[i].At), text, false)
				text = value + " " + name
			default:
				text += "; " + name
			}
		}
		r.mark(place(all[i].At), text, false)
		i = k
	}
}

// reach is what the drawing covers with its dimensions, and a margin for words beside it.
func (d *fitDrawing) reach() draw.Box {
	out := d.box(d.area).Inset(-sideGap)
	for _, r := range d.runs() {
		for _, w := range typeset.Placements(draw.Page{Items: r.Items()}) {
			out.Lo.X, out.Lo.Y = min(out.Lo.X, w.Box.Lo.X), min(out.Lo.Y, w.Box.Lo.Y)
			out.Hi.X, out.Hi.Y = max(out.Hi.X, w.Box.Hi.X), max(out.Hi.Y, w.Box.Hi.Y)
		}
	}
	return out
}

// items draws all of it within a box.
func (d *fitDrawing) items(within draw.Box) []draw.Item {
	d.within, d.taken, d.unnamed = within, nil, nil
	var dims []draw.Item
	for _, r := range d.runs() {
		items := r.Items()
		d.takeTexts(items)
		dims = append(dims, draw.Group{Class: "run", Items: items})
	}
	out := d.paint(d)
	d.over = overLines(edges(out))
	out = append(out, dims...)
	for _, n := range d.names {
		out = append(out, d.name(n)...)
	}
	return out
}

func (d *fitDrawing) name(n named) []draw.Item {
	b := d.box(n.on)
	l, ok := parts.Label{Body: n.word, Class: "name"}.In(b.Inset(gap / 3))
	if ok && d.free(l.Box()) {
		d.take(l.Box())
		return l.Items()
	}
	items, ok := d.leader(draw.At((b.Lo.X+b.Hi.X)/2, (b.Lo.Y+b.Hi.Y)/2), []string{n.word}, d.over)
	if !ok {
		d.unnamed = append(d.unnamed, n.word)
		return nil
	}
	return []draw.Item{draw.Group{Class: "name", Items: items}}
}

// fits takes a try of words, or any items, whose texts all find room; else nothing.
func (c *crowd) fits(items []draw.Item) bool {
	words := typeset.Placements(draw.Page{Items: items})
	for _, w := range words {
		if !c.free(w.Box) {
			return false
		}
	}
	c.takeTexts(items)
	return true
}

// thing draws a shape that belongs to something in the document.
func (d *fitDrawing) thing(path, class, title string, items ...draw.Item) draw.Item {
	g := draw.Group{Class: "thing " + class, Title: title, Items: items}
	if d.ids != nil {
		g.ID = d.ids(path)
	}
	return g
}

// across draws a line over the drawing at a height, a little beyond both sides.
func (d *fitDrawing) across(class string, y unit.Length, pen draw.Pen) draw.Item {
	const over = 4 * draw.MM
	b := d.box(d.area)
	s := draw.Stroke(pen, draw.At(b.Lo.X-over, d.y(y)), draw.At(b.Hi.X+over, d.y(y)))
	s.Class = class
	return s
}

// fitDrawing puts a drawing at the largest scale at which it has room on the paper, with some left below, at the top of a new leaf.
func (b *book) fitDrawing(d *fitDrawing, like leaf, below draw.Um) *flow {
	d.n, like.paper = b.largestFor(d, below)
	like.scale = d.words()
	f := b.writer(like)
	box := f.now.body()
	r := d.reach()
	d.at = d.at.Plus(draw.At(box.Lo.X+(box.W()-r.W())/2-r.Lo.X, box.Hi.Y-r.Hi.Y))
	f.now.add(d.items(draw.Box{Lo: draw.At(box.Lo.X, d.reach().Lo.Y), Hi: box.Hi})...)
	f.room.Hi.Y = d.reach().Lo.Y - gap
	f.leaf.scale = ""
	if len(d.unnamed) > 0 {
		f.notes("Not named in the drawing for want of room", d.unnamed...)
	}
	return f
}

func (b *book) largestFor(d *fitDrawing, below draw.Um) (int64, draw.Paper) {
	for _, n := range scales {
		for _, paper := range b.orientations() {
			d.n = n
			room := (&leaf{paper: paper}).body()
			room.Lo.Y += below
			if r := d.reach(); r.W() <= room.W() && r.H() <= room.H() {
				return n, paper
			}
		}
	}
	return scales[len(scales)-1], b.paper.Paper
}

// screen draws it for a page on a screen, so wide that its lettering is read on a phone.
func (d *fitDrawing) screen(title string) Screen {
	const wide = 130 * draw.MM
	for d.n = 4; d.n < 200; d.n++ {
		if r := d.reach(); r.W() <= wide && r.H() <= 2*wide {
			break
		}
	}
	r := d.reach().Inset(-draw.MM)
	d.at = d.at.Plus(draw.At(-r.Lo.X, -r.Lo.Y))
	return Screen{draw.Page{Title: title, W: r.W(), H: r.H(), Items: d.items(draw.Span(0, 0, r.W(), r.H()))}, d.n}
}
