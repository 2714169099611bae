package draw

// Paper is a size of sheet, upright.
type Paper struct {
	Name string
	W, H Um
}

// Sheets: ISO 216 for A4 and A3; ANSI/ASME Y14.1 sizes A and B for Letter (8-1/2 x 11 in) and Tabloid (11 x 17 in).
var (
	A4      = Paper{"A4", 210_000, 297_000}
	A3      = Paper{"A3", 297_000, 420_000}
	Letter  = Paper{"Letter", 215_900, 279_400}
	Tabloid = Paper{"Tabloid", 279_400, 431_800}
)

// Papers lists the sheets that can be chosen.
func Papers() []Paper { return []Paper{Letter, Tabloid, A4, A3} }

// Landscape turns the sheet on its side.
func (p Paper) Landscape() Paper { p.W, p.H = p.H, p.W; return p }

// Box is the whole sheet.
func (p Paper) Box() Box { return Box{Hi: XY{p.W, p.H}} }

// At is the place x, y.
func At(x, y Um) XY { return XY{x, y} }

// Span is the box between two x and two y.
func Span(x0, y0, x1, y1 Um) Box { return Box{XY{x0, y0}, XY{x1, y1}} }

// Box is an upright rectangle of the page, lower left to upper right.
type Box struct{ Lo, Hi XY }

// W is the width of the box.
func (b Box) W() Um { return b.Hi.X - b.Lo.X }

// H is the height of the box.
func (b Box) H() Um { return b.Hi.Y - b.Lo.Y }

// Inset moves every side inward by d.
func (b Box) Inset(d Um) Box {
	return Box{XY{b.Lo.X + d, b.Lo.Y + d}, XY{b.Hi.X - d, b.Hi.Y - d}}
}

// Holds says whether c lies in b; sides may touch.
func (b Box) Holds(c Box) bool {
	return b.Lo.X <= c.Lo.X && b.Lo.Y <= c.Lo.Y && c.Hi.X <= b.Hi.X && c.Hi.Y <= b.Hi.Y
}

// Meets says whether the two boxes share area; touching sides share none.
func (b Box) Meets(c Box) bool {
	return b.Lo.X < c.Hi.X && c.Lo.X < b.Hi.X && b.Lo.Y < c.Hi.Y && c.Lo.Y < b.Hi.Y
}

// Ring is the outline of the box, counter-clockwise from its lower left corner.
func (b Box) Ring() []XY {
	return []XY{b.Lo, {b.Hi.X, b.Lo.Y}, b.Hi, {b.Lo.X, b.Hi.Y}}
}

// Rect draws the box.
func Rect(b Box, pen Pen, fill Fill) Path {
	return Path{Rings: [][]XY{b.Ring()}, Closed: true, Pen: pen, Fill: fill}
}

// Stroke draws a polyline through the points.
func Stroke(pen Pen, at ...XY) Path { return Path{Rings: [][]XY{at}, Pen: pen} }
