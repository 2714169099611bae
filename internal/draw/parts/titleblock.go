package parts

import (
	"fmt"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// TitleBlock holds the data fields of ISO 7200 that a sheet of ours has: what it is of (title), its supplement, the
// document's name and revision in place of a number and a date, scale, paper and sheet number.
type TitleBlock struct {
	Document string // name of the room document
	Title    string // "Basin wall, elevation"
	Detail   string // supplementary title: "Tiles and joints"
	Scale    string // ISO 5455: "1:10"
	Revision string
	Paper    string
	Units    string
	Sheet    int // 0 where there is only this one
	Sheets   int // 0 where the count is not known
}

// Heights of the block: ISO 7200 fixes its width only, 180 mm; a narrower sheet gets what it has.
const (
	TitleWidth  = 180 * draw.MM
	TitleHeight = 20 * draw.MM
)

// cell is one field: share of the width in 180ths, caption, value.
type cell struct {
	share          draw.Um
	caption, value string
	size           draw.Um
	bold           bool
}

func (t TitleBlock) upper() []cell {
	return []cell{{115, "Title", t.Title, Large, true}, {65, "Shows", t.Detail, Small, false}}
}

func (t TitleBlock) lower() []cell {
	return []cell{
		{68, "Room", t.Document, Small, false},
		{37, "Revision", t.Revision, Small, false},
		{20, "Scale", t.Scale, Small, true},
		{17, "Units", t.Units, Small, false},
		{20, "Paper", t.Paper, Small, false},
		{18, "Sheet", t.number(), Small, true},
	}
}

func (t TitleBlock) number() string {
	switch {
	case t.Sheet <= 0:
		return ""
	case t.Sheets <= 0:
		return fmt.Sprint(t.Sheet)
	}
	return fmt.Sprintf("%d/%d", t.Sheet, t.Sheets)
}

// Box is where the block stands, given the lower right corner of the frame and the room's width.
func (t TitleBlock) Box(corner draw.XY, room draw.Um) draw.Box {
	return draw.Span(corner.X-min(TitleWidth, room), corner.Y, corner.X, corner.Y+TitleHeight)
}

// Items draws the block. A value that has no room in its field gets smaller, and then an ellipsis.
func (t TitleBlock) Items(corner draw.XY, room draw.Um) []draw.Item {
	b := t.Box(corner, room)
	mid := b.Lo.Y + TitleHeight*9/20
	out := []draw.Item{
		draw.Rect(b, draw.Line(draw.Wide), draw.Fill{On: true, Color: draw.White}),
		draw.Stroke(draw.Line(draw.Narrow), draw.At(b.Lo.X, mid), draw.At(b.Hi.X, mid)),
	}
	out = append(out, fields(t.upper(), draw.Span(b.Lo.X, mid, b.Hi.X, b.Hi.Y))...)
	return append(out, fields(t.lower(), draw.Span(b.Lo.X, b.Lo.Y, b.Hi.X, mid))...)
}

func fields(cells []cell, row draw.Box) []draw.Item {
	var out []draw.Item
	var sum draw.Um
	for i, c := range cells {
		x0 := row.Lo.X + row.W()*sum/(TitleWidth/draw.MM)
		sum += c.share
		x1 := row.Lo.X + row.W()*sum/(TitleWidth/draw.MM)
		if i > 0 {
			out = append(out, draw.Stroke(draw.Line(draw.Narrow), draw.At(x0, row.Lo.Y), draw.At(x0, row.Hi.Y)))
		}
		out = append(out, c.items(draw.Span(x0, row.Lo.Y, x1, row.Hi.Y))...)
	}
	return out
}

func (c cell) items(b draw.Box) []draw.Item {
	const side = 1_200
	room := b.W() - 2*side
	size := c.size
	if typeset.Width(c.value, size, c.bold) > room {
		size = Small
	}
	caption := typeset.Fit(c.caption, Tiny, false, room)
	return []draw.Item{
		draw.Text{Class: "caption", At: draw.At(b.Lo.X+side, b.Hi.Y-900-Tiny), Size: Tiny, Color: draw.Gray, Body: caption},
		draw.Text{Class: "field", At: draw.At(b.Lo.X+side, b.Lo.Y+1_600), Size: size, Bold: c.bold, Body: typeset.Fit(c.value, size, c.bold, room)},
	}
}
