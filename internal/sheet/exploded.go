package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/joinery"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// A cabinet taken apart is drawn in oblique projection (ISO 5456-3, cabinet axonometry): its front in true shape, depth to the lower left
// at 45° and shortened. What comes nearer goes down and to the left, so fronts, tops and right sides are seen.
const (
	obliqueNum = 35 // of a hundred, along each axis: half of the depth at 45°
	obliqueDen = 100
)

// flatten is where a point of the cabinet is on the drawing.
func flatten(p joinery.Point) geom.Point {
	s := p[2].MulDiv(obliqueNum, obliqueDen)
	return geom.Point{X: p[0] - s, Y: p[1] - s}
}

// apartOf is how far a piece is pulled out of its cabinet.
func apartOf(c joinery.Cabinet, p joinery.Piece) joinery.Point {
	e := max(c.Asked.Size(0), c.Asked.Size(1)) / 5
	middle := (p.Box.Lo[0] + p.Box.Hi[0]) / 2
	side := -e
	if middle > c.Asked.Hi[0]/2 {
		side = e
	}
	switch p.Role {
	case joinery.SideRole, joinery.LegRole:
		return joinery.Point{side, 0, 0}
	case joinery.TopRole:
		if p.Turn == joinery.Level {
			return joinery.Point{0, e / 2, -e}
		}
		return joinery.Point{0, e, 0}
	case joinery.BottomRole:
		return joinery.Point{0, -e, 0}
	case joinery.BackRole:
		return joinery.Point{0, e / 2, -2 * e}
	case joinery.ToeRole:
		return joinery.Point{0, -e, e}
	case joinery.FrontRole:
		return joinery.Point{0, -e, c.Asked.Hi[2] + 3*e}
	case joinery.DrawerRole:
		return joinery.Point{0, -e / 2, c.Asked.Hi[2] + e/2}
	}
	return joinery.Point{}
}

// shown is a piece at its place in the drawing.
type shown struct {
	name string
	box  joinery.Box
}

// solids are the pieces of a cabinet pulled apart, the farthest first.
func solids(c joinery.Cabinet) []shown {
	var left []shown
	for _, p := range c.Pieces {
		left = append(left, shown{p.Part.Name, p.Box.Moved(apartOf(c, p))})
	}
	var out []shown
	for len(left) > 0 {
		i := farthest(left)
		out = append(out, left[i])
		left = append(left[:i], left[i+1:]...)
	}
	return out
}

// farthest is a solid with nothing left behind it; the deepest where each has something behind it.
func farthest(all []shown) int {
	best := 0
	for i, a := range all {
		clear := true
		for j, b := range all {
			clear = clear && (i == j || !behind(b.box, a.box))
		}
		if clear {
			return i
		}
		if depthOf(a.box) < depthOf(all[best].box) {
			best = i
		}
	}
	return best
}

// behind reports whether a lies behind b: wholly beyond one of the sides that are not seen of b, and not in front of another.
func behind(a, b joinery.Box) bool {
	return beyond(a, b) && !beyond(b, a)
}

func beyond(a, b joinery.Box) bool {
	for i := range 3 {
		if a.Hi[i] <= b.Lo[i] {
			return true
		}
	}
	return false
}

func depthOf(b joinery.Box) unit.Length {
	return b.Lo[2] + b.Hi[2] + (b.Lo[0]+b.Hi[0]+b.Lo[1]+b.Hi[1]).MulDiv(obliqueNum, obliqueDen)
}

// facesOf are the three sides that are seen of a box: right, top, front.
func facesOf(b joinery.Box) [3]geom.Ring {
	at := func(x, y, z int) geom.Vertex {
		pick := func(axis, hi int) unit.Length { return [2]unit.Length{b.Lo[axis], b.Hi[axis]}[hi] }
		return geom.Vertex{P: flatten(joinery.Point{pick(0, x), pick(1, y), pick(2, z)})}
	}
	return [3]geom.Ring{
		{at(1, 0, 0), at(1, 1, 0), at(1, 1, 1), at(1, 0, 1)},
		{at(0, 1, 0), at(1, 1, 0), at(1, 1, 1), at(0, 1, 1)},
		{at(0, 0, 1), at(1, 0, 1), at(1, 1, 1), at(0, 1, 1)},
	}
}

// extentOf is what the drawing of a cabinet covers.
func extentOf(all []shown) geom.Rect {
	var area geom.Rect
	for i, s := range all {
		for k, r := range facesOf(s.box) {
			if i == 0 && k == 0 {
				area = r.Bounds()
			}
			area = area.With(r.Bounds().Min).With(r.Bounds().Max)
		}
	}
	return area
}

// explodedHigh is the most of a page that the drawing takes.
const explodedHigh = 130 * draw.MM

// exploded draws a cabinet taken apart, each part with its number.
func (f *flow) exploded(c joinery.Cabinet) {
	all := solids(c)
	area := extentOf(all)
	room := draw.Span(0, 0, f.room.W()-10*draw.MM, explodedHigh)
	v := view{n: largest(area.W(), area.H(), room), of: area.Min}
	f.need(v.um(area.H()) + 4*gap)
	v.at = draw.At(f.room.Lo.X+(f.room.W()-v.um(area.W()))/2, f.room.Hi.Y-v.um(area.H())-gap)
	within := draw.Span(f.room.Lo.X, v.at.Y-gap, f.room.Hi.X, f.room.Hi.Y)
	f.now.add(draw.Group{Class: "exploded", Title: c.Name + ", taken apart", Items: explodedItems(c, v, all, within)})
	f.room.Hi.Y = v.at.Y - gap
	f.paragraph("Taken apart, front at "+v.words()+", depth shortened. Numbers are those of the list.", parts.Small, false)
}

func explodedItems(c joinery.Cabinet, v view, all []shown, within draw.Box) []draw.Item {
	var out []draw.Item
	for _, s := range all {
		for i, r := range facesOf(s.box) {
			fill := [3]draw.Color{draw.Pale, draw.White, draw.White}[i]
			out = append(out, draw.Path{Class: "part", Title: s.name, Rings: v.rings(geom.Region{r}), Closed: true, Pen: draw.Line(draw.Narrow), Fill: draw.Fill{On: true, Color: fill}})
		}
	}
	cr := crowd{within: within}
	for i := len(all) - 1; i >= 0; i-- {
		out = append(out, numberItems(c, v, &cr, all[i])...)
	}
	return out
}

// numberItems writes a part's number on its front, or beside it with a line.
func numberItems(c joinery.Cabinet, v view, cr *crowd, s shown) []draw.Item {
	front := v.box(facesOf(s.box)[2].Bounds())
	number := numberOf(c, s.name)
	l := parts.Label{Body: number, Bold: true, Class: "part number"}
	mid := draw.At((front.Lo.X+front.Hi.X)/2, (front.Lo.Y+front.Hi.Y)/2)
	if l.At = mid; front.Holds(l.Box()) {
		if items, ok := cr.label(l, mid, draw.At(mid.X, front.Lo.Y+4*draw.MM), draw.At(mid.X, front.Hi.Y-4*draw.MM), draw.At(front.Lo.X+4*draw.MM, mid.Y)); ok {
			return items
		}
	}
	items, ok := cr.leader(mid, []string{number}, func(draw.Box) draw.Um { return 0 })
	if !ok {
		return nil
	}
	return []draw.Item{draw.Group{Class: "part number", Items: items}}
}

// CabinetOnScreen draws a cabinet taken apart, for a page on a screen.
func CabinetOnScreen(_ plan.Plan, c joinery.Cabinet) draw.Page {
	all := solids(c)
	area := extentOf(all)
	v := view{n: max(1, int64(max(area.W(), area.H()))/perUm/int64(screenSize)+1), of: area.Min, at: draw.At(diagramMargin, diagramMargin)}
	page := draw.Page{Title: c.Name + ", taken apart", W: v.um(area.W()) + 2*diagramMargin, H: v.um(area.H()) + 2*diagramMargin}
	page.Items = explodedItems(c, v, all, draw.Span(0, 0, page.W, page.H))
	return page
}

const diagramMargin = 10 * draw.MM
