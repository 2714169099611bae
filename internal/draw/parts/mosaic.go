package parts

import (
	"fmt"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Mosaic cuts a drawing that is larger than the paper over several sheets, to be trimmed and joined: a template at
// 1:1, or a long wall. Neighbors share a strip; a dashed line in it shows where to trim, crosses where to lay one
// sheet on the other. Each sheet has its place in the whole and a square to check the print with.
type Mosaic struct {
	Title   string
	Items   []draw.Item
	Area    draw.Box // what of the drawing is to be shown
	Paper   draw.Paper
	Overlap draw.Um // width of the shared strip; 0 is 10 mm
	Inches  bool    // the check square is 1 in, else 25 mm
}

const (
	mosaicFoot = 32 * draw.MM // below the window, for the check square and the words
	mosaicEdge = 10 * draw.MM // no printer reaches all of the paper
)

// Pages cuts the drawing, row by row from the upper left.
func (m Mosaic) Pages() []draw.Page {
	cols, rows := m.Grid()
	var out []draw.Page
	for r := range rows {
		for c := range cols {
			out = append(out, m.page(c, r))
		}
	}
	return out
}

// Grid is how many sheets there are across and down.
func (m Mosaic) Grid() (cols, rows int) {
	w := m.window()
	return count(m.Area.W(), w.W(), m.overlap()), count(m.Area.H(), w.H(), m.overlap())
}

// count: the first sheet shows a window, each further one a window less the shared strip.
func count(length, window, overlap draw.Um) int {
	step := max(window-overlap, draw.MM)
	return 1 + int(max(0, length-window+step-1)/step)
}

func (m Mosaic) overlap() draw.Um {
	if m.Overlap <= 0 {
		return 10 * draw.MM
	}
	return m.Overlap
}

// window is the part of the paper that shows the drawing.
func (m Mosaic) window() draw.Box {
	return draw.Span(mosaicEdge, mosaicEdge+mosaicFoot, m.Paper.W-mosaicEdge, m.Paper.H-mosaicEdge)
}

// offset moves the drawing so that the sheet's part of it stands in the window.
func (m Mosaic) offset(col, row int) draw.XY {
	w, o := m.window(), m.overlap()
	return draw.At(w.Lo.X-m.Area.Lo.X-draw.Um(col)*(w.W()-o), w.Hi.Y-m.Area.Hi.Y+draw.Um(row)*(w.H()-o))
}

func (m Mosaic) page(col, row int) draw.Page {
	w, by := m.window(), m.offset(col, row)
	shown := w.And(draw.Box{Lo: m.Area.Lo.Plus(by), Hi: m.Area.Hi.Plus(by)})
	g := draw.Group{Class: "part", Clip: &[2]draw.XY{shown.Lo, shown.Hi}, Items: visible(draw.Moved(m.Items, by), shown)}
	p := draw.Page{Title: fmt.Sprintf("%s, sheet %s", m.Title, place(col, row)), W: m.Paper.W, H: m.Paper.H, Items: []draw.Item{g}}
	p.Items = append(p.Items, draw.Rect(shown, draw.Pen{Width: draw.Fine, Color: draw.Gray}, draw.Fill{}))
	p.Items = append(p.Items, m.seams(shown, col, row)...)
	return m.foot(p, col, row)
}

// place names a sheet by column and row: A1 is the upper left.
func place(col, row int) string {
	name := ""
	for col++; col > 0; col = (col - 1) / 26 {
		name = string(rune('A'+(col-1)%26)) + name
	}
	return fmt.Sprint(name, row+1)
}

// visible leaves out what the window hides wholly, so that files stay small and no hidden word counts as shown.
func visible(items []draw.Item, window draw.Box) []draw.Item {
	var out []draw.Item
	for _, it := range items {
		if g, ok := it.(draw.Group); ok {
			g.Items = visible(g.Items, window)
			if len(g.Items) > 0 {
				out = append(out, g)
			}
		} else if window.Inset(-draw.MM).Meets(reach(it).Inset(-1)) {
			out = append(out, it)
		}
	}
	return out
}

func reach(it draw.Item) draw.Box {
	switch it := it.(type) {
	case draw.Path:
		return it.Reach()
	case draw.Circle:
		return it.Reach()
	case draw.Text:
		return typeset.BoxOf(it)
	}
	panic(fmt.Sprintf("parts: no such item: %T", it))
}

// seams draws, on each side with a neighbor, the line to trim along in the middle of the shared strip, and crosses
// at two places that come out on both sheets.
func (m Mosaic) seams(shown draw.Box, col, row int) []draw.Item {
	w, half := m.window(), m.overlap()/2
	cols, rows := m.Grid()
	var out []draw.Item
	for _, s := range []struct {
		is       bool
		vertical bool
		at       draw.Um
	}{
		{col > 0, true, w.Lo.X + half}, {col < cols-1, true, w.Hi.X - half},
		{row > 0, false, w.Hi.Y - half}, {row < rows-1, false, w.Lo.Y + half},
	} {
		if s.is {
			out = append(out, seam(shown, s.vertical, s.at)...)
		}
	}
	return out
}

func seam(shown draw.Box, vertical bool, at draw.Um) []draw.Item {
	const cross = 3 * draw.MM
	a := axis{vertical}
	from, to, _, _ := a.reach(shown)
	cut := a.stroke(draw.Fine, from, at, to, at)
	cut.Class, cut.Pen.Dash = "trim", draw.Dashed
	out := []draw.Item{cut}
	for _, along := range []draw.Um{from + (to-from)/4, to - (to-from)/4} {
		out = append(out, a.stroke(draw.Narrow, along, at-cross, along, at+cross), a.stroke(draw.Narrow, along-cross, at, along+cross, at))
	}
	return out
}

// foot writes the sheet's place and draws the check square.
func (m Mosaic) foot(p draw.Page, col, row int) draw.Page {
	side, name := 25*draw.MM, "25 mm"
	if m.Inches {
		side, name = 25_400, "1 in"
	}
	cols, rows := m.Grid()
	square := draw.Span(mosaicEdge, mosaicEdge, mosaicEdge+side, mosaicEdge+side)
	p.Items = append(p.Items, draw.Rect(square, draw.Line(draw.Narrow), draw.Fill{}))
	for i, line := range []string{
		m.Title,
		fmt.Sprintf("Sheet %s of %d across by %d down", place(col, row), cols, rows),
		fmt.Sprintf("Check the print before use: the square is %s on each side.", name),
		"At each seam trim one sheet along the dashed line and lay cross on cross.",
	} {
		at := draw.At(square.Hi.X+4*draw.MM, square.Hi.Y-Large-draw.Um(i)*typeset.Leading(Large))
		body := typeset.Fit(line, Small, i == 0, m.Paper.W-mosaicEdge-at.X)
		p.Items = append(p.Items, draw.Text{Class: "foot", At: at, Size: Small, Bold: i == 0, Body: body})
	}
	return p
}
