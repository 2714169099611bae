package parts

import (
	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Table is rows under heads. Words are broken over lines to fit; a table goes on over as many pages as it needs,
// with its heads on each.
type Table struct {
	Caption string // above the heads; pages after the first say "continued"
	Columns []Column
	Rows    []Row
	Size    draw.Um // height of lettering; 0 is Small
	Plain   bool    // no heads and no rules: a list
}

// Row is one row. Cells beyond the columns are not shown; missing ones are empty.
type Row struct {
	Cells []string
	Bold  bool   // a total
	ID    string // for the page's script; may be empty
}

// Flowed is what stands on one page and where it ends.
type Flowed struct {
	Items  []draw.Item
	Bottom draw.Um
}

const cellAbove = 1_200 // clear above and below a row's text

// Flow lays the table out in boxes: box 0, then as many more as it takes. All boxes should be as wide as box 0. A row
// is kept whole unless it is higher than a whole box. Every page takes at least one line, even of a box too low for it.
func (t Table) Flow(box func(page int) draw.Box) []Flowed {
	first := box(0)
	f := &flow{Table: t, cols: t.widths(first.W()), box: box}
	f.turn()
	for _, r := range t.Rows {
		f.row(f.broken(r))
	}
	f.close()
	return f.pages
}

type flow struct {
	Table
	cols  []draw.Um
	box   func(int) draw.Box
	pages []Flowed
	now   draw.Box // room left on the page
	items []draw.Item
	fresh bool // nothing below the heads yet
	open  bool
}

// broken is a row with its cells broken into lines.
type broken struct {
	cells [][]string
	bold  bool
	id    string
	lines int
	head  bool
}

func (f *flow) broken(r Row) broken {
	b := broken{cells: make([][]string, len(f.cols)), bold: r.Bold, id: r.ID, lines: 1}
	for i := range f.cols {
		if i < len(r.Cells) {
			b.cells[i] = typeset.Wrap(r.Cells[i], sized(f.Size), r.Bold, f.cols[i]-2*cellSide)
			b.lines = max(b.lines, len(b.cells[i]))
		}
	}
	return b
}

// row puts a row on the page, the next page, or, where it is higher than a page, over several.
func (f *flow) row(b broken) {
	for {
		if f.height(b.lines) <= f.now.H() {
			f.put(b)
			return
		}
		if !f.fresh {
			f.turn()
			continue
		}
		fit := f.linesThatFit()
		if fit >= b.lines {
			f.put(b)
			return
		}
		f.put(b.part(0, fit))
		b = b.part(fit, b.lines)
		f.turn()
	}
}

func (f *flow) height(lines int) draw.Um {
	size := sized(f.Size)
	return 2*f.above() + size + draw.Um(lines-1)*typeset.Leading(size)
}

func (f *flow) above() draw.Um {
	if f.Plain {
		return cellAbove * 6 / 10
	}
	return cellAbove
}

func (f *flow) linesThatFit() int {
	n := 1
	for f.height(n+1) <= f.now.H() {
		n++
	}
	return n
}

func (b broken) part(from, to int) broken {
	out := b
	out.lines = to - from
	out.cells = make([][]string, len(b.cells))
	for i, c := range b.cells {
		out.cells[i] = c[min(from, len(c)):min(to, len(c))]
	}
	if from > 0 {
		out.id = "" // an id stands once
	}
	return out
}

// turn begins a page with caption and heads.
func (f *flow) turn() {
	f.close()
	f.now, f.open = f.box(len(f.pages)), true
	if f.Caption != "" {
		f.caption()
	}
	if !f.Plain {
		heads := Row{Bold: true}
		for _, c := range f.Columns {
			heads.Cells = append(heads.Cells, c.Head)
		}
		b := f.broken(heads)
		b.head = true
		f.put(b)
	}
	f.fresh = true
}

func (f *flow) caption() {
	text := f.Caption
	if len(f.pages) > 0 {
		text += " (continued)"
	}
	for _, line := range typeset.Wrap(text, Large, true, f.now.W()) {
		f.now.Hi.Y -= Large
		f.items = append(f.items, draw.Text{Class: "caption", At: draw.At(f.now.Lo.X, f.now.Hi.Y), Size: Large, Bold: true, Body: line})
		f.now.Hi.Y -= typeset.Leading(Large) - Large
	}
}

func (f *flow) close() {
	if f.open {
		f.pages = append(f.pages, Flowed{f.items, f.now.Hi.Y})
		f.items, f.open = nil, false
	}
}

// put draws a row at the top of the room left, and takes its height off.
func (f *flow) put(b broken) {
	var items []draw.Item
	x := f.now.Lo.X
	for i, lines := range b.cells {
		items = append(items, f.cellTexts(b, lines, i, x)...)
		x += f.cols[i]
	}
	f.now.Hi.Y -= f.height(b.lines)
	f.fresh = false
	if !f.Plain {
		items = append(items, f.rule(b, x))
	}
	if b.id != "" {
		items = []draw.Item{draw.Group{ID: b.id, Class: "row", Items: items}}
	}
	f.items = append(f.items, items...)
}

// rule is the line under a row: wide under the heads, fine and gray under the others.
func (f *flow) rule(b broken, right draw.Um) draw.Path {
	pen := draw.Pen{Width: draw.Fine, Color: draw.Gray}
	if b.head {
		pen = draw.Line(draw.Wide)
	}
	return draw.Stroke(pen, draw.At(f.now.Lo.X, f.now.Hi.Y), draw.At(right, f.now.Hi.Y))
}

func (f *flow) cellTexts(b broken, lines []string, col int, x draw.Um) []draw.Item {
	size := sized(f.Size)
	align := f.Columns[col].Align
	switch align {
	case draw.Start:
		x += cellSide
	case draw.Middle:
		x += f.cols[col] / 2
	case draw.End:
		x += f.cols[col] - cellSide
	}
	var out []draw.Item
	for i, line := range lines {
		if line != "" {
			y := f.now.Hi.Y - f.above() - size - draw.Um(i)*typeset.Leading(size)
			out = append(out, draw.Text{Class: "cell", At: draw.At(x, y), Size: size, Anchor: align, Bold: b.bold, Body: line})
		}
	}
	return out
}
