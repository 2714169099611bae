// Package draw is a display list in paper space: what a sheet shows, before it is SVG, PDF or PNG.
//
// Positions are whole micrometres of paper from the lower left corner of the page, x to the right and y up, so
// that a printed length is exact and every encoder prints the same drawing. Line weights and lettering heights
// follow ISO 128 and ISO 3098; an encoder only encodes and never decides.
package draw

// Um is a distance on paper in micrometres.
type Um int64

// MM is a millimetre of paper.
const MM Um = 1000

// XY is a place on the page.
type XY struct{ X, Y Um }

// Page is one page: its size and what is on it, drawn in order.
type Page struct {
	Title string // for outlines, file names and screen readers
	W, H  Um
	Items []Item
}

// Item is one of Path, Circle, Text or Group.
type Item interface{ item() }

// Color is an sRGB color; color is only ever an addition to line type, hatch and words.
type Color struct{ R, G, B uint8 }

// Dash is a line type of ISO 128-2.
type Dash uint8

const (
	Solid    Dash = iota
	Dashed        // hidden edges
	Chain         // center lines and datums: long dash, dot
	Dotted        // projections
	ChainTwo      // long dash, two dots: adjacent parts, alternative positions
)

// Pen draws a line. A zero Width draws none.
type Pen struct {
	Width Um // ISO 128: 130, 180, 250, 350, 500, 700
	Color Color
	Dash  Dash
}

// Fill fills a shape. Hatch lines are drawn over the color.
type Fill struct {
	Color Color
	On    bool
	Hatch Hatch
}

// Hatch is a pattern of thin lines for cut material and for kinds of areas.
type Hatch uint8

const (
	NoHatch  Hatch = iota
	Diagonal       // 45 degrees: a cut tile
	Counter        // 135 degrees
	Cross          // both: left open, an opening
	Dots           // mortar, filler
)

// Path is a polygon or polyline with optional holes (closed rings, even-odd).
type Path struct {
	ID     string // stable, for the page's script and for tests; may be empty
	Class  string // what it is: "piece", "joint", "opening"
	Title  string // what a screen reader says
	Rings  [][]XY
	Closed bool
	Pen    Pen
	Fill   Fill
}

// Circle stays a circle in every encoder.
type Circle struct {
	ID, Class, Title string
	C                XY
	R                Um
	Pen              Pen
	Fill             Fill
}

// Anchor says which point of a text stands at its position.
type Anchor uint8

const (
	Start Anchor = iota
	Middle
	End
)

// Text is one line of lettering, At on its base line.
type Text struct {
	Class  string
	At     XY
	Size   Um // height of capitals (ISO 3098: 1800, 2500, 3500, 5000, 7000)
	Anchor Anchor
	Turn   int // whole degrees counter-clockwise; 0 or 90 but beside a slanting line
	Bold   bool
	Color  Color
	Body   string
}

// Group holds items under one name, clipped to a rectangle when Clip is not empty.
type Group struct {
	ID, Class, Title string
	Clip             *[2]XY // lower left, upper right
	Items            []Item
}

func (Path) item()   {}
func (Circle) item() {}
func (Text) item()   {}
func (Group) item()  {}
