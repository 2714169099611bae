package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
	"dryfit/internal/typeset"
)

// flow writes tables and notes down a page and on over as many as they take, all of one title.
type flow struct {
	*book
	leaf leaf // what each new leaf is like
	now  *leaf
	room draw.Box // what is left of the page
}

// writer begins a flow on a fresh leaf.
func (b *book) writer(like leaf) *flow {
	f := &flow{book: b, leaf: like}
	f.turn()
	return f
}

// turn begins the next leaf.
func (f *flow) turn() {
	next := f.leaf
	next.items = nil
	f.now = &next
	f.leaves = append(f.leaves, f.now)
	f.room = f.now.body()
}

// need turns the page where less than so much of it is left.
func (f *flow) need(high draw.Um) {
	if f.room.H() < high && f.room.H() < f.now.body().H() {
		f.turn()
	}
}

// put takes what a table or a list flows into boxes, page by page.
func (f *flow) put(flowed func(box func(int) draw.Box) []parts.Flowed) {
	over := []*leaf{f.now}
	pages := flowed(func(n int) draw.Box {
		for n >= len(over) {
			f.turn()
			over = append(over, f.now)
		}
		return f.room
	})
	for i, p := range pages {
		over[i].add(p.Items...)
		f.room.Hi.Y = p.Bottom - gap
	}
}

const leastTable = 24 * draw.MM // a table that has less begins on the next page

func (f *flow) table(t report.Table, size draw.Um) {
	f.need(leastTable)
	if len(t.Rows) == 0 {
		if t.Empty != "" {
			f.notes(t.Title, t.Empty)
		}
		return
	}
	f.put(tableParts(t, size).Flow)
}

func tableParts(t report.Table, size draw.Um) parts.Table {
	out := parts.Table{Caption: t.Title, Size: size}
	for _, c := range t.Columns {
		col := parts.Column{Head: c.Head}
		if c.Align == report.Right {
			col.Align = draw.End
		}
		out.Columns = append(out.Columns, col)
	}
	for _, r := range t.Rows {
		out.Rows = append(out.Rows, parts.Row{Cells: r})
	}
	return out
}

func (f *flow) notes(title string, lines ...string) {
	if len(lines) == 0 {
		return
	}
	f.need(leastTable / 2)
	f.put(parts.Notes{Title: title, Lines: lines}.Flow)
}

// paragraph writes words over the width.
func (f *flow) paragraph(text string, size draw.Um, bold bool) {
	for _, line := range typeset.Wrap(text, size, bold, f.room.W()) {
		f.need(typeset.Leading(size))
		f.room.Hi.Y -= size
		f.now.add(draw.Text{Class: "text", At: draw.At(f.room.Lo.X, f.room.Hi.Y), Size: size, Bold: bold, Body: line})
		f.room.Hi.Y -= typeset.Leading(size) - size
	}
	f.room.Hi.Y -= gap / 2
}

// key explains line types and hatches, in columns side by side.
func (f *flow) key(entries []parts.Entry) {
	const entry, least = 6 * draw.MM, 56 * draw.MM
	cols := max(1, int(f.room.W()/least))
	rows := (len(entries) + cols - 1) / cols
	f.need(draw.Um(rows) * entry)
	wide, bottom := f.room.W()/draw.Um(cols), f.room.Hi.Y
	for i := 0; i*rows < len(entries); i++ {
		k := parts.Key{Entries: entries[i*rows : min(len(entries), (i+1)*rows)]}
		items, low := k.Items(draw.At(f.room.Lo.X+draw.Um(i)*wide, f.room.Hi.Y), wide-gap)
		f.now.add(items...)
		bottom = min(bottom, low)
	}
	f.room.Hi.Y = bottom - gap/2
}
