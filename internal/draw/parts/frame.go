package parts

import "dryfit/internal/draw"

// Frame margins: ISO 5457 gives 20 mm on the left, for filing, and 10 mm elsewhere.
const (
	filing = 20 * draw.MM
	margin = 10 * draw.MM
)

// Frame draws the border of a sheet and returns the room within, clear of the line.
func Frame(p draw.Paper) ([]draw.Item, draw.Box) {
	b := draw.Span(filing, margin, p.W-margin, p.H-margin)
	border := draw.Rect(b, draw.Line(draw.Border), draw.Fill{})
	border.Class = "frame"
	return []draw.Item{border}, b.Inset(draw.Border / 2)
}
