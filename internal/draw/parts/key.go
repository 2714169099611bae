package parts

import (
	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Key explains fills, hatches and line types: a swatch and what it means, one under the other.
type Key struct {
	Title   string
	Entries []Entry
	Size    draw.Um
}

// Entry is one line of a key: a filled swatch, or a line where Line is set.
type Entry struct {
	Pen  draw.Pen
	Fill draw.Fill
	Line bool
	Text string
}

// Swatch sizes.
const (
	swatchWide = 10 * draw.MM
	swatchHigh = 4 * draw.MM
	swatchGap  = 2 * draw.MM
)

// Items draws the key down from an upper left corner, its texts broken to the width, and returns its bottom.
func (k Key) Items(at draw.XY, wide draw.Um) ([]draw.Item, draw.Um) {
	var out []draw.Item
	y := at.Y
	if k.Title != "" {
		y -= sized(k.Size)
		out = append(out, draw.Text{Class: "caption", At: draw.At(at.X, y), Size: sized(k.Size), Bold: true, Body: k.Title})
		y -= swatchGap
	}
	for _, e := range k.Entries {
		items, bottom := k.entry(e, draw.At(at.X, y), wide)
		out, y = append(out, items...), bottom-swatchGap
	}
	return out, y
}

func (k Key) entry(e Entry, at draw.XY, wide draw.Um) ([]draw.Item, draw.Um) {
	size := sized(k.Size)
	b := draw.Span(at.X, at.Y-swatchHigh, at.X+swatchWide, at.Y)
	out := []draw.Item{draw.Rect(b, e.Pen, e.Fill)}
	if e.Line {
		y := at.Y - swatchHigh/2
		out[0] = draw.Stroke(e.Pen, draw.At(b.Lo.X, y), draw.At(b.Hi.X, y))
	}
	x := b.Hi.X + swatchGap
	y := at.Y - (swatchHigh+size)/2
	for i, line := range typeset.Wrap(e.Text, size, false, at.X+wide-x) {
		if i > 0 {
			y -= typeset.Leading(size)
		}
		out = append(out, draw.Text{Class: "key", At: draw.At(x, y), Size: size, Body: line})
	}
	return out, min(b.Lo.Y, y)
}
