package sheet

import (
	"fmt"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/typeset"
)

// Part sheets show the small pieces of a face at a scale at which their numbers can be read, over as many pages as it
// takes; neighbors share a strip.
const keyHigh = 32 * draw.MM // for the sketch of where a part lies

// overlap is the width of the strip that neighbors share: the longest number stands wholly in one or the other.
func (w *wall) overlap() draw.Um {
	var most draw.Um
	for _, z := range w.face.Fields {
		for _, c := range z.Chosen().Pieces {
			most = max(most, typeset.Width(c.Address, parts.Small, false))
		}
	}
	return most + 2*draw.MM
}

// partSheets shows the pieces that found no room for their number on the whole drawing.
func (w *wall) partSheets(whole *facade) {
	small := map[string]bool{}
	for _, a := range whole.small {
		small[a] = true
	}
	area := w.areaOf(small)
	d := w.facade(w.partScale(whole.n, small))
	d.within = d.box(d.area).Inset(-partEdge)
	items := append([]draw.Item{d.boardOutline()}, d.pieces()...)
	items = append(items, d.openings()...)
	items = append(items, d.softJoints()...)
	items = append(items, d.holes()...)
	want := d.box(area).Inset(-partEdge)
	paper, room := w.roomiest(want)
	all := windows(want, room, w.overlap())
	w.cutUp(d, all, paper, items, d.partNumbers(all))
}

// partEdge is shown round the pieces of part sheets, for what leads to narrow ones.
const partEdge = 6 * draw.MM

// partNumbers writes the numbers so that each stands wholly in one of the windows: those within pieces do, being
// shorter than the shared strip; those beside them are held to the window that has most room about the piece.
func (d *facade) partNumbers(all []window) []draw.Item {
	var out []draw.Item
	var narrow []piece.Piece
	for _, c := range d.all() {
		if items, ok := d.number(c); ok {
			out = append(out, items...)
		} else {
			narrow = append(narrow, c)
		}
	}
	for _, c := range narrow {
		tip := d.middle(c)
		d.within = roomAbout(tip, all)
		items, _ := d.leader(tip, []string{c.Address}, d.overTile)
		out = append(out, draw.Group{Class: "number", Items: items})
	}
	return out
}

// roomAbout is the window whose nearest side is farthest from a point.
func roomAbout(at draw.XY, all []window) draw.Box {
	best, most := all[0].shown, draw.Um(-1<<40)
	for _, w := range all {
		b := w.shown
		if r := min(at.X-b.Lo.X, b.Hi.X-at.X, at.Y-b.Lo.Y, b.Hi.Y-at.Y); r > most {
			best, most = b, r
		}
	}
	return best
}

// areaOf is what the named pieces cover.
func (w *wall) areaOf(small map[string]bool) geom.Rect {
	var area geom.Rect
	first := true
	for _, z := range w.face.Fields {
		for _, c := range z.Chosen().Pieces {
			if !small[c.Address] {
				continue
			}
			b := c.OnFace.Bounds()
			if first {
				area, first = b, false
			}
			area = area.With(b.Min).With(b.Max)
		}
	}
	return area
}

// partScale is the smallest scale above the whole drawing's at which nearly all of the pieces have room for their
// number; the largest that there is where none does.
func (w *wall) partScale(whole int64, small map[string]bool) int64 {
	const nearly = 90 // of a hundred
	for i := len(scales) - 1; i >= 0; i-- {
		if scales[i] >= whole {
			continue
		}
		d := w.facade(scales[i])
		d.within = d.box(d.area).Inset(-partEdge)
		fit := 0
		for _, c := range d.all() {
			if small[c.Address] {
				if _, ok := d.number(c); ok {
					fit++
				}
			}
		}
		if fit*100 >= nearly*len(small) {
			return scales[i]
		}
	}
	return scales[0]
}

// window is one part sheet's share of the drawing.
type window struct {
	name  string
	shown draw.Box // of the drawing
}

// cutUp makes a page of each window.
func (w *wall) cutUp(d *facade, all []window, paper draw.Paper, items, words []draw.Item) {
	for _, x := range all {
		f := w.writer(leaf{title: w.name, detail: fmt.Sprintf("Part %s of %d: numbers", x.name, len(all)), paper: paper, scale: d.words()})
		by := draw.At(f.room.Lo.X-x.shown.Lo.X, f.room.Hi.Y-x.shown.Hi.Y)
		shown := draw.Box{Lo: x.shown.Lo.Plus(by), Hi: x.shown.Hi.Plus(by)}
		visible := append(touching(items, x.shown), wholly(words, x.shown)...)
		f.now.add(draw.Group{Class: "part", Clip: &[2]draw.XY{shown.Lo, shown.Hi}, Items: draw.Moved(visible, by)})
		f.now.add(draw.Rect(shown, draw.Pen{Width: draw.Fine, Color: draw.Gray}, draw.Fill{}))
		f.room.Hi.Y = shown.Lo.Y - gap
		w.keySketch(f, d, x)
	}
}

// roomiest is the paper upright or on its side, whichever needs fewer windows.
func (w *wall) roomiest(want draw.Box) (draw.Paper, draw.Box) {
	var best draw.Paper
	var room draw.Box
	fewest := -1
	for _, p := range w.orientations() {
		b := (&leaf{paper: p}).body()
		b.Lo.Y += keyHigh + gap
		if n := len(windows(want, b, w.overlap())); fewest < 0 || n < fewest {
			best, room, fewest = p, b, n
		}
	}
	return best, room
}

// windows are as many as cover the drawing, row by row from the upper left, with a shared strip.
func windows(want, room draw.Box, shared draw.Um) []window {
	cols, wide := cuts(want.W(), room.W(), shared)
	rows, high := cuts(want.H(), room.H(), shared)
	var out []window
	for r := range rows {
		for c := range cols {
			lo := draw.At(want.Lo.X+draw.Um(c)*(wide-shared), want.Hi.Y-draw.Um(r)*(high-shared)-high)
			out = append(out, window{fmt.Sprintf("%c%d", 'A'+rune(c%26), r+1), draw.Box{Lo: lo, Hi: lo.Plus(draw.At(wide, high))}})
		}
	}
	return out
}

// cuts is how many windows a length takes and how long each is.
func cuts(length, room, shared draw.Um) (int, draw.Um) {
	if length <= room {
		return 1, length
	}
	n := (length - shared + room - shared - 1) / (room - shared)
	return int(n), (length-shared+n-1)/n + shared
}

// touching keeps what has a part in the window.
func touching(items []draw.Item, in draw.Box) []draw.Item {
	var out []draw.Item
	for _, it := range items {
		if reach(it).Inset(-draw.MM).Meets(in) {
			out = append(out, it)
		}
	}
	return out
}

// wholly keeps the words that lie in the window wholly. Words come as a backing and its text, or as a group.
func wholly(items []draw.Item, in draw.Box) []draw.Item {
	var out []draw.Item
	for _, it := range items {
		if in.Holds(reach(it)) {
			out = append(out, it)
		}
	}
	return out
}

// reach is the box of an item.
func reach(it draw.Item) draw.Box {
	switch it := it.(type) {
	case draw.Path:
		return it.Reach()
	case draw.Circle:
		return it.Reach()
	case draw.Text:
		return typeset.BoxOf(it)
	case draw.Group:
		var b draw.Box
		for i, x := range it.Items {
			r := reach(x)
			if i == 0 {
				b = r
			}
			b = draw.Span(min(b.Lo.X, r.Lo.X), min(b.Lo.Y, r.Lo.Y), max(b.Hi.X, r.Hi.X), max(b.Hi.Y, r.Hi.Y))
		}
		return b
	}
	panic(fmt.Sprintf("sheet: no such item: %T", it))
}

// keySketch shows where in the face a part lies.
func (w *wall) keySketch(f *flow, d *facade, x window) {
	box := f.room
	box.Lo.Y = max(box.Lo.Y, box.Hi.Y-keyHigh)
	v := view{n: largest(d.area.W(), d.area.H(), box), of: d.area.Min, at: box.Lo}
	v.at.Y = box.Hi.Y - v.um(d.area.H())
	f.now.add(draw.Path{Class: "key sketch", Rings: v.rings(w.site.Board), Closed: true, Pen: draw.Line(draw.Normal)})
	scaled := func(l draw.Um) draw.Um { return l * draw.Um(d.n) / draw.Um(v.n) }
	at := d.box(d.area).Lo
	part := draw.Span(v.at.X+scaled(x.shown.Lo.X-at.X), v.at.Y+scaled(x.shown.Lo.Y-at.Y), v.at.X+scaled(x.shown.Hi.X-at.X), v.at.Y+scaled(x.shown.Hi.Y-at.Y)).And(box)
	f.now.add(draw.Rect(part, draw.Line(draw.Wide), draw.Fill{Hatch: draw.Diagonal}))
	text := draw.Text{Class: "key sketch", At: draw.At(max(part.Hi.X, v.at.X+v.um(d.area.W()))+gap, box.Hi.Y-parts.Small), Size: parts.Small,
		Body: fmt.Sprintf("Hatched: part %s of the face. Positions are on the sheet of the whole face.", x.name)}
	text.Body = typeset.Fit(text.Body, parts.Small, false, box.Hi.X-text.At.X)
	f.now.add(text)
}
