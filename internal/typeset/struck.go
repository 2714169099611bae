package typeset

import (
	"fmt"

	"dryfit/internal/draw"
)

// Strike is a line that runs through a text.
type Strike struct {
	Text Placed
	Line draw.Path
}

func (s Strike) String() string {
	return fmt.Sprintf("a line of class %q runs through %q at %d,%d", s.Line.Class, s.Text.Text.Body, s.Text.Text.At.X, s.Text.Text.At.Y)
}

// strikeSlack lets a line touch the edge of a text's box, as the level line under a note does.
const strikeSlack draw.Um = 200

// Struck lists the lines that run through texts, for the tests of sheets. A line that a filled shape hides before the
// text is drawn does not count, nor do hatch lines and circles.
func Struck(page draw.Page) []Strike {
	flat := flattened(nil, page.Items, nil)
	var out []Strike
	for i, s := range flat {
		if s.text == nil {
			continue
		}
		for k, l := range flat {
			if l.path != nil && l.strikes(s.text.Box) && !hidden(flat, k, i, s.text.Box) {
				out = append(out, Strike{*s.text, *l.path})
			}
		}
	}
	return out
}

// stroke is one thing of the page in drawing order: a text, or a path with the window that clips it.
type stroke struct {
	text   *Placed
	path   *draw.Path
	window *draw.Box
}

func flattened(out []stroke, items []draw.Item, window *draw.Box) []stroke {
	for _, it := range items {
		switch it := it.(type) {
		case draw.Group:
			out = flattened(out, it.Items, narrowed(window, it.Clip))
		case draw.Path:
			out = append(out, stroke{path: &it, window: window})
		case draw.Text:
			for _, p := range placed(nil, []draw.Item{it}, window) {
				out = append(out, stroke{text: &p})
			}
		}
	}
	return out
}

// hidden says whether a filled path drawn after the line and before the text covers all of the text's box.
func hidden(flat []stroke, line, text int, box draw.Box) bool {
	for k := line + 1; k < text; k++ {
		if p := flat[k].path; p != nil && p.Fill.On && len(p.Rings) == 1 && isBox(p.Rings[0]) && p.Reach().Holds(box) {
			return true
		}
	}
	return false
}

func isBox(ring []draw.XY) bool {
	if len(ring) != 4 {
		return false
	}
	b := draw.Path{Rings: [][]draw.XY{ring}}.Reach()
	for _, p := range ring {
		if p.X != b.Lo.X && p.X != b.Hi.X || p.Y != b.Lo.Y && p.Y != b.Hi.Y {
			return false
		}
	}
	return true
}

func (s stroke) strikes(box draw.Box) bool {
	b := box.Inset(strikeSlack)
	if s.window != nil {
		b = b.And(*s.window)
	}
	if s.path.Pen.Width <= 0 || b.W() <= 0 || b.H() <= 0 {
		return false
	}
	for _, ring := range s.path.Rings {
		for i := range ring {
			if i+1 < len(ring) || s.path.Closed {
				if crosses(ring[i], ring[(i+1)%len(ring)], b) {
					return true
				}
			}
		}
	}
	return false
}

// crosses says whether the line from p to q has a point within b. It is apart from b exactly when the line's own box
// is, or when all corners of b lie on one side of the line (separating axes).
func crosses(p, q draw.XY, b draw.Box) bool {
	if max(p.X, q.X) <= b.Lo.X || min(p.X, q.X) >= b.Hi.X || max(p.Y, q.Y) <= b.Lo.Y || min(p.Y, q.Y) >= b.Hi.Y {
		return false
	}
	var left, right bool
	for _, c := range b.Ring() {
		side := (q.X-p.X)*(c.Y-p.Y) - (q.Y-p.Y)*(c.X-p.X)
		left, right = left || side >= 0, right || side <= 0
	}
	return left && right
}
