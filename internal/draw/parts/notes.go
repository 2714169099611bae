package parts

import (
	"fmt"

	"dryfit/internal/draw"
)

// Notes is a block of remarks under a title: assumptions, cautions, what was not checked.
type Notes struct {
	Title    string
	Lines    []string
	Numbered bool
	Size     draw.Um
}

// Flow lays the notes out in boxes as a table does.
func (n Notes) Flow(box func(page int) draw.Box) []Flowed { return n.list().Flow(box) }

// Height is what the notes need in a place so wide.
func (n Notes) Height(wide draw.Um) draw.Um {
	const endless = 1 << 40
	pages := n.Flow(func(int) draw.Box { return draw.Span(0, -endless, wide, 0) })
	return -pages[0].Bottom
}

// list: the marker's column is as wide as the markers, the rest is for the words.
func (n Notes) list() Table {
	t := Table{Caption: n.Title, Plain: true, Size: n.Size, Columns: []Column{{}, {}}}
	for i, line := range n.Lines {
		marker := "–"
		if n.Numbered {
			marker = fmt.Sprintf("%d.", i+1)
		}
		t.Columns[0].Width = max(t.Columns[0].Width, width(marker, sized(n.Size))+2*cellSide)
		t.Rows = append(t.Rows, Row{Cells: []string{marker, line}})
	}
	return t
}
