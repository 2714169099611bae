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
			if l.path != nil && l.strikes(*s.text) && !hidden(flat, k, i, s.text.Box) {
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

func (s stroke) strikes(text Placed) bool {
	shown := text.Box.Inset(strikeSlack)
	if s.window != nil {
		shown = shown.And(*s.window)
	}
	if s.path.Pen.Width <= 0 || shown.W() <= 0 || shown.H() <= 0 || !s.path.Reach().Inset(-1).Meets(shown) {
		return false
	}
	quad, window := Corners(text.Text, strikeSlack), shown.Ring()
	for _, side := range sides(*s.path) {
		if meet(side[:], window) && meet(side[:], quad[:]) {
			return true
		}
	}
	return false
}

// sides of a path, the closing ones where it is closed.
func sides(p draw.Path) [][2]draw.XY {
	var out [][2]draw.XY
	for _, ring := range p.Rings {
		for i := range ring {
			if i+1 < len(ring) || p.Closed {
				out = append(out, [2]draw.XY{ring[i], ring[(i+1)%len(ring)]})
			}
		}
	}
	return out
}
