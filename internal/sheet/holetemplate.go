package sheet

import (
	"fmt"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/joinery"
	"dryfit/internal/typeset"
	"dryfit/internal/unit"
)

// Holes, cut-outs and recesses of a top are printed at 1:1 at their true outline, over as many pages as they are large. What lies near each
// other is on one template, so that it is marked out in one go. Neighboring pages share a strip with a dashed line in its middle that both
// print: lay line on line.
const (
	holeRoom = 15 * unit.Millimetre  // shown round what is cut
	holeNear = 100 * unit.Millimetre // an edge of the top that is no farther is on the template: it is laid along it
	holePair = 50 * unit.Millimetre  // holes that are no farther apart are on one template
)

// holeTemplates prints the templates of a top.
func (b *book) holeTemplates(t joinery.Top) {
	for _, set := range together(t) {
		h := &holeTemplate{book: b, t: t, holes: set}
		h.pages()
	}
}

// together groups the holes of a top that lie near each other, in their order.
func together(t joinery.Top) [][]joinery.Hole {
	var sets [][]joinery.Hole
	for _, h := range t.Holes {
		set := []joinery.Hole{h}
		var rest [][]joinery.Hole
		for _, s := range sets {
			if grown(setBounds(s), holePair/2).Overlaps(grown(h.Bounds(), holePair/2)) {
				set = append(s, set...)
			} else {
				rest = append(rest, s)
			}
		}
		sets = append(rest, set)
	}
	return sets
}

func grown(r geom.Rect, by unit.Length) geom.Rect {
	return geom.Rect{Min: r.Min.Sub(geom.Point{X: by, Y: by}), Max: r.Max.Add(geom.Point{X: by, Y: by})}
}

func setBounds(set []joinery.Hole) geom.Rect {
	area := set[0].Bounds()
	for _, h := range set {
		area = area.With(h.Bounds().Min).With(h.Bounds().Max)
	}
	return area
}

// holeTemplate draws one group: x from the left end of the top, y from its front edge, seen on its face.
type holeTemplate struct {
	*book
	view
	t     joinery.Top
	holes []joinery.Hole
	area  geom.Rect // what is shown
}

func (h *holeTemplate) name() string {
	words := h.holes[0].Name
	for _, k := range h.holes[1:] {
		words += ", " + k.Name
	}
	return words
}

// bare is what a template has to show: all that is cut, and some paper round it.
func (h *holeTemplate) bare() geom.Rect {
	return grown(rectFromFront(h.t, setBounds(h.holes)), holeRoom)
}

// reaching is a template with the edges of the top that are near.
func (h *holeTemplate) reaching() geom.Rect {
	whole := geom.Rect{Max: geom.Point{X: h.t.Width, Y: h.t.Depth - h.t.Back}}
	cut := rectFromFront(h.t, setBounds(h.holes))
	a := h.bare()
	if cut.Min.X <= holeNear {
		a.Min.X = min(a.Min.X, -holeRoom/2)
	}
	if cut.Min.Y <= holeNear {
		a.Min.Y = min(a.Min.Y, -holeRoom/2)
	}
	if whole.Max.X-cut.Max.X <= holeNear {
		a.Max.X = max(a.Max.X, whole.Max.X+holeRoom/2)
	}
	if whole.Max.Y-cut.Max.Y <= holeNear {
		a.Max.Y = max(a.Max.Y, whole.Max.Y+holeRoom/2)
	}
	return a
}

// pages prints a group, with the edges of the top where they cost no page.
func (h *holeTemplate) pages() {
	h.area = h.reaching()
	paper, all := h.windows()
	with := *h
	h.area = h.bare()
	if p, fewer := h.windows(); len(fewer) < len(all) {
		paper, all = p, fewer
	} else {
		h.view, h.area = with.view, with.area
	}
	for i, w := range all {
		f := h.writer(leaf{title: "Template: " + h.t.Name + ", " + h.name(), detail: fmt.Sprintf("Part %s, page %d of %d", w.name, i+1, len(all)), scale: "1:1", paper: paper, caution: templateCaution})
		h.page(f, w, all)
	}
}

// windows are the pages that the area takes.
func (h *holeTemplate) windows() (draw.Paper, []window) {
	h.view = view{n: 1, of: h.area.Min}
	return h.paperFor(h.box(h.area))
}

// templateCaution is short, so that more of a hole goes on a page; the sheet of the top has it whole.
const templateCaution = "Saw and router: eyes, ears, suction and a fitted respirator."

// templateHead is what the words over a template take.
const templateHead = 11 * draw.MM

// paperFor is the paper upright or on its side, whichever takes fewer pages, and its windows.
func (h *holeTemplate) paperFor(want draw.Box) (draw.Paper, []window) {
	var best draw.Paper
	var fewest []window
	for _, p := range []draw.Paper{h.paper.Paper, h.paper.Landscape()} {
		room := (&leaf{paper: p, caution: templateCaution}).body().Inset(draw.MM)
		room.Hi.Y -= templateHead
		if all := windows(want, room, templateShared); fewest == nil || len(all) < len(fewest) {
			best, fewest = p, all
		}
	}
	return best, fewest
}

// page draws what a window shows.
func (h *holeTemplate) page(f *flow, w window, all []window) {
	f.paragraph("Print at full size, without fitting to the page; check the bar below. Lay it on "+h.t.Name+", THIS FACE UP, the front edge toward you, on the lines that are squared over. The wide line is the cut, with all room in it.", parts.Small, false)
	by := draw.At(f.room.Lo.X+draw.MM-w.shown.Lo.X, f.room.Hi.Y-draw.MM-w.shown.Hi.Y)
	shown := draw.Box{Lo: w.shown.Lo.Plus(by), Hi: w.shown.Hi.Plus(by)}
	v := *h
	v.at = v.at.Plus(by)
	f.now.add(draw.Group{Class: "template", Title: h.name(), Clip: &[2]draw.XY{shown.Lo, shown.Hi}, Items: v.items()})
	c := crowd{within: shown.Inset(200)}
	v.keepClear(shown, &c)
	f.now.add(joins(w, all, by, &c)...)
	f.now.add(v.words(shown, &c)...)
}

// keepClear takes the room of the outlines, so that no word covers what is cut by.
func (h *holeTemplate) keepClear(shown draw.Box, c *crowd) {
	const step, half = draw.MM, 400
	for _, k := range h.holes {
		ring := h.rings(geom.Region{ringFromFront(h.t, k.Ring())})[0]
		for i, a := range ring {
			b := ring[(i+1)%len(ring)]
			n := 1 + max(abs(b.X-a.X), abs(b.Y-a.Y))/step
			for s := range n {
				at := draw.At(a.X+(b.X-a.X)*s/n, a.Y+(b.Y-a.Y)*s/n)
				if box := draw.Span(at.X-half, at.Y-half, at.X+half, at.Y+half); box.Meets(shown) {
					c.take(box)
				}
			}
		}
	}
}

// items are the edges of the top, the outlines and their center lines.
func (h *holeTemplate) items() []draw.Item {
	body := geom.Rect{Max: geom.Point{X: h.t.Width, Y: h.t.Depth - h.t.Back}}
	out := []draw.Item{draw.Rect(h.box(body), draw.Line(draw.Normal), draw.Fill{})}
	a := h.area
	axis := draw.Line(draw.Fine).As(draw.Chain)
	for _, k := range h.holes {
		x, y := h.x(k.X), h.y(h.t.Depth-k.Z)
		pen := draw.Line(draw.Wide)
		if k.Recess > 0 {
			pen = pen.As(draw.Dashed)
		}
		out = append(out, draw.Path{Class: "hole", Title: k.Name, Rings: h.rings(geom.Region{ringFromFront(h.t, k.Ring())}), Closed: true, Pen: pen},
			draw.Stroke(axis, draw.At(x, h.y(a.Min.Y)), draw.At(x, h.y(a.Max.Y))), draw.Stroke(axis, draw.At(h.x(a.Min.X), y), draw.At(h.x(a.Max.X), y)))
	}
	return out
}

// words name what is cut and say where its center lines are, on every page that shows them.
func (h *holeTemplate) words(shown draw.Box, c *crowd) []draw.Item {
	style := h.p.Style.Fine()
	var out []draw.Item
	add := func(body string, turn int, at ...draw.XY) {
		if items, ok := c.label(parts.Label{Body: body, Class: "template word", Turn: turn}, at...); ok {
			out = append(out, items...)
		}
	}
	spread := func(lo, hi draw.Um) []draw.Um {
		var all []draw.Um
		for _, k := range []draw.Um{50, 30, 70, 15, 85} {
			all = append(all, lo+(hi-lo)*k/100)
		}
		return all
	}
	wide := typeset.Width("front edge this way, this face up", parts.Small, false)/2 + draw.MM
	var low []draw.XY
	for _, x := range spread(shown.Lo.X+wide, shown.Hi.X-wide) {
		low = append(low, draw.At(x, shown.Lo.Y+3*draw.MM), draw.At(x, shown.Lo.Y+9*draw.MM))
	}
	add("front edge this way, this face up", 0, low...)
	said := map[string]bool{}
	center := func(body string, turn int, inside bool, at func(draw.Um, draw.Um) draw.XY, lo, hi draw.Um) {
		if !inside || said[body] {
			return
		}
		said[body] = true
		var places []draw.XY
		for _, s := range spread(lo, hi) {
			places = append(places, at(s, -centerOff), at(s, centerOff))
		}
		add(body, turn, places...)
	}
	for _, k := range h.holes {
		x, y := h.x(k.X), h.y(h.t.Depth-k.Z)
		center(style.Format(k.X)+" from the left end", 90, x > shown.Lo.X && x < shown.Hi.X, func(s, off draw.Um) draw.XY { return draw.At(x+off, s) }, shown.Lo.Y, shown.Hi.Y)
		center(style.Format(h.t.Depth-k.Z)+" from the front edge", 0, y > shown.Lo.Y && y < shown.Hi.Y, func(s, off draw.Um) draw.XY { return draw.At(s, y+off) }, shown.Lo.X, shown.Hi.X)
		at := draw.At(min(max(x, shown.Lo.X+20*draw.MM), shown.Hi.X-20*draw.MM), min(max(y, shown.Lo.Y+15*draw.MM), shown.Hi.Y-15*draw.MM))
		var near []draw.XY
		for _, dy := range []draw.Um{8, -8, 14, -14, 20, -20, 26, -26} {
			for _, dx := range []draw.Um{0, 22, -22} {
				near = append(near, at.Plus(draw.At(dx*draw.MM, dy*draw.MM)))
			}
		}
		add(holeWord(k, style), 0, near...)
	}
	return out
}

// centerOff is how far the words of a center line stand off it.
const centerOff = 2600

func holeWord(k joinery.Hole, style unit.Style) string {
	if k.Recess > 0 {
		return k.Name + ": " + style.Format(k.Recess) + " deep, dashed line"
	}
	return k.Name + ": through, wide line"
}

// joins are the lines that a window prints with its neighbors, each named after both.
func joins(w window, all []window, by draw.XY, c *crowd) []draw.Item {
	var out []draw.Item
	line := func(a, b draw.XY, name string, turn int) {
		fold := draw.Stroke(draw.Line(draw.Narrow).As(draw.Dashed), a, b)
		fold.Class, fold.Title = "join", name
		out = append(out, fold)
		mid := func(k draw.Um) draw.XY { return draw.At(a.X+(b.X-a.X)*k/100, a.Y+(b.Y-a.Y)*k/100) }
		if items, ok := c.label(parts.Label{Body: name, Class: "overlap", Turn: turn}, mid(20), mid(80), mid(40), mid(60)); ok {
			out = append(out, items...)
		}
	}
	for _, o := range all {
		shared := w.shown.And(o.shown)
		if o.name == w.name || shared.W() <= 0 || shared.H() <= 0 {
			continue
		}
		lo, hi := shared.Lo.Plus(by), shared.Hi.Plus(by)
		names := "join " + min(w.name, o.name) + " on " + max(w.name, o.name)
		switch {
		case shared.H() == w.shown.H():
			x := (lo.X + hi.X) / 2
			line(draw.At(x, lo.Y), draw.At(x, hi.Y), names, 90)
		case shared.W() == w.shown.W():
			y := (lo.Y + hi.Y) / 2
			line(draw.At(lo.X, y), draw.At(hi.X, y), names, 0)
		}
	}
	return out
}

// ringFromFront turns an outline that counts from the wall into one that counts from the front edge.
func ringFromFront(t joinery.Top, r geom.Ring) geom.Ring {
	out := make(geom.Ring, len(r))
	for i, v := range r {
		out[i] = geom.Vertex{P: geom.Point{X: v.P.X, Y: t.Depth - v.P.Y}}
	}
	return out
}
