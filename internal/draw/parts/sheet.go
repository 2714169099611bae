package parts

import "dryfit/internal/draw"

// inner is kept between the frame, the title block, the ruler and what a sheet shows.
const inner = 4 * draw.MM

// Sheet is what every sheet carries, frame, title block and the ruler to check the print, and the room left for
// what it shows. The ruler stands beside the title block where the paper is wide enough, else above it.
func Sheet(p draw.Paper, t TitleBlock, inches bool) ([]draw.Item, draw.Box) {
	if t.Paper == "" {
		t.Paper = p.Name
	}
	items, in := Frame(p)
	corner := draw.At(in.Hi.X, in.Lo.Y)
	block := t.Box(corner, in.W())
	items = append(items, t.Items(corner, in.W())...)
	ruler := Ruler(draw.At(in.Lo.X+inner, in.Lo.Y+inner+textOff+Tiny), inches)
	bottom := block.Hi.Y
	if ruler.Box().Hi.X+2*inner > block.Lo.X {
		ruler.At.Y += TitleHeight
		bottom = ruler.Box().Hi.Y
	}
	items = append(items, draw.Group{Class: "ruler", Items: ruler.Items()})
	return items, draw.Span(in.Lo.X+inner, bottom+inner, in.Hi.X-inner, in.Hi.Y-inner)
}
