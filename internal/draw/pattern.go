package draw

// Widths of lines in ISO 128-2's series; a drawing uses two that stand 1:2, and Fine for hatching and grids.
const (
	Fine   Um = 130
	Narrow Um = 180
	Normal Um = 250
	Wide   Um = 350
	Heavy  Um = 500
	Border Um = 700
)

// Line is a solid black pen.
func Line(width Um) Pen { return Pen{Width: width} }

// As returns the pen with another line type.
func (p Pen) As(d Dash) Pen { p.Dash = d; return p }

// Pattern gives the lengths of dashes and gaps, in turn, or nil for a solid line. ISO 128-20:1996, table 3,
// gives them in line widths: long dash 24, dash 12, gap 3, dot half a width (read as quoted, from memory).
func (p Pen) Pattern() []Um {
	const long, dash, gap = 24, 12, 3
	w, dot := p.Width, p.Width/2
	switch p.Dash {
	case Dashed:
		return []Um{dash * w, gap * w}
	case Chain:
		return []Um{long * w, gap * w, dot, gap * w}
	case Dotted:
		return []Um{dot, gap * w}
	case ChainTwo:
		return []Um{long * w, gap * w, dot, gap * w, dot, gap * w}
	}
	return nil
}
