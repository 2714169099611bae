package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Drawer is a drawer's box, closed.
type Drawer struct {
	Name   string
	At     diag.Place
	Box    Box         // outside
	Inside Box         // what it holds, over its bottom
	Travel unit.Length // how far it comes out: the length of its slides
	Cut    bool        // it is cut out round what stands in it
}

// Room round a drawer's box, common practice where the slides' data sheet is silent.
func (b *builder) drawer(o outline, f Front) (Drawer, bool) {
	d := Drawer{Name: f.Name, At: f.At}
	doc, slides := b.frontDoc(o, f.Of), o.doc.Slides
	stock := b.r.good(or(o.doc.Stock.Drawers, o.doc.Stock.Panels), "the drawers", f.At)
	floor := b.r.good(or(o.doc.Stock.DrawerBottoms, o.doc.Stock.Back), "the bottoms of the drawers", f.At)
	ok := b.r.known(slides.Side, f.At, "the room that a slide needs beside "+f.Name+" (side clearance)")
	long := doc.Long
	if !long.Known {
		long = slides.Length
	}
	ok = b.r.known(long, f.At, "the length of the slides of "+f.Name) && ok
	if !ok || !stock.known || !floor.known {
		return d, false
	}
	d.Travel = long.V
	d.Box = f.Behind
	d.Box.Lo[xAxis] += slides.Side.V
	d.Box.Hi[xAxis] -= slides.Side.V
	d.Box.Lo[yAxis] += b.r.usual(slides.Low, b.r.round(unit.Inch/2, 13*unit.Millimetre), o.doc.At, "the room under the drawers of "+b.name)
	d.Box.Hi[yAxis] -= b.r.usual(slides.Above, b.r.round(unit.Inch/4, 6*unit.Millimetre), o.doc.At, "the room over the drawers of "+b.name)
	d.Box.Lo[zAxis] = d.Box.Hi[zAxis] - long.V
	if !b.drawerHeight(&d, doc) || !b.drawerDepth(o, f, d) {
		return d, false
	}
	b.drawerBox(o, &d, stock, floor)
	return d, true
}

func (b *builder) drawerHeight(d *Drawer, doc document.Front) bool {
	high := d.Box.Size(yAxis)
	if !doc.Box.Known {
		d.Box.Hi[yAxis] = d.Box.Lo[yAxis] + high.Floor(b.r.mark())
		return b.leftOver(d, high)
	}
	if doc.Box.V > high {
		b.r.stop("drawer-high", doc.Box.At, "the box of {0} is {1} high and there is room for {2}", "make it lower", diag.T(d.Name), diag.X(doc.Box.V), diag.X(high))
		return false
	}
	d.Box.Hi[yAxis] = d.Box.Lo[yAxis] + doc.Box.V
	return b.leftOver(d, high)
}

func (b *builder) leftOver(d *Drawer, high unit.Length) bool {
	if !d.Box.Empty() {
		return true
	}
	b.r.stop("drawer-none", d.At, "nothing is left for the box of {0}: {1} wide and {2} high", "make its front higher, or its column wider", diag.T(d.Name), diag.X(d.Box.Size(xAxis)), diag.X(high))
	return false
}

// drawerDepth holds the length of a box and its slides against the room inside.
func (b *builder) drawerDepth(o outline, f Front, d Drawer) bool {
	inside := f.Behind.Size(zAxis)
	need := max(o.doc.Slides.Inside.Or(0), d.Box.Size(zAxis))
	if inside < need {
		b.r.stop("drawer-long", d.At, "{0} needs {1} inside and there are {2}", "use shorter slides, or make the cabinet deeper by {3}", diag.T(d.Name), diag.X(need), diag.X(inside), diag.X(need-inside))
	}
	return inside >= need
}

// drawerBox makes two sides, front, back and a bottom in grooves.
func (b *builder) drawerBox(o outline, d *Drawer, s, floor good) {
	how := o.doc.Drawers
	joint := b.fit(how.Corner, "drawers", document.ButtJoint, document.Rabbet)
	x0, x1 := d.Box.Lo[xAxis]+s.thick, d.Box.Hi[xAxis]-s.thick
	part := func(name string, box Box, turn Turn) *Piece {
		p := b.add(d.Name+" "+name, s, box, turn, DrawerRole)
		p.Of = d.Name
		return p
	}
	sideBox := func(lo, hi unit.Length) Box { return cutAt(d.Box, xAxis, lo, hi) }
	l, r := part("box left", sideBox(d.Box.Lo[xAxis], x0), LeftLevel), part("box right", sideBox(x1, d.Box.Hi[xAxis]), RightLevel)
	across := sideBox(x0-joint.Depth, x1+joint.Depth)
	front := part("box front", cutAt(across, zAxis, across.Hi[zAxis]-s.thick, across.Hi[zAxis]), LevelIn)
	back := part("box back", cutAt(across, zAxis, across.Lo[zAxis], across.Lo[zAxis]+s.thick), Level)
	for _, p := range []*Piece{front, back} {
		l.seat(p, right, joint)
		r.seat(p, left, joint)
	}
	b.drawerFloor(o, d, floor, x0, x1, []*Piece{l, r, front, back})
}

// drawerFloor plows the groove round the box and cuts the bottom less its slack.
func (b *builder) drawerFloor(o outline, d *Drawer, floor good, x0, x1 unit.Length, walls []*Piece) {
	how := o.doc.Drawers
	deep := b.r.usual(how.GrooveIn, b.r.round(unit.Inch/4, 6*unit.Millimetre), o.doc.At, "the depth of the grooves for drawer bottoms of "+b.name)
	slack := b.r.usual(how.Slack, b.r.round(unit.Inch/16, 2*unit.Millimetre), o.doc.At, "the slack of drawer bottoms of "+b.name)
	y := d.Box.Lo[yAxis] + b.r.usual(how.GrooveUp, b.r.round(unit.Inch/2, 12*unit.Millimetre), o.doc.At, "the height of the grooves for drawer bottoms of "+b.name)
	thick := walls[0].Box.Size(xAxis)
	z0, z1 := d.Box.Lo[zAxis]+thick, d.Box.Hi[zAxis]-thick
	bed := span(x0-deep, x1+deep, y, y+floor.thick, z0-deep, z1+deep)
	d.Inside = span(x0, x1, y+floor.thick, d.Box.Hi[yAxis], z0, z1)
	if d.Inside.Empty() {
		b.r.stop("drawer-none", d.At, "nothing is left inside the box of {0}", "make its front higher, or its column wider", diag.T(d.Name))
		return
	}
	for i, facing := range []way{right, left, in, out} {
		groove := bed
		if facing.axis == xAxis {
			groove.Lo[zAxis], groove.Hi[zAxis] = d.Box.Lo[zAxis], d.Box.Hi[zAxis]
		} else {
			groove.Lo[xAxis], groove.Hi[xAxis] = d.Box.Lo[xAxis], d.Box.Hi[xAxis]
		}
		walls[i].channel(part.Groove, groove, facing, "drawer bottom")
	}
	half := slack / 2
	bed.Lo[xAxis], bed.Hi[xAxis] = bed.Lo[xAxis]+half, bed.Hi[xAxis]-(slack-half)
	bed.Lo[zAxis], bed.Hi[zAxis] = bed.Lo[zAxis]+half, bed.Hi[zAxis]-(slack-half)
	p := b.add(d.Name+" box bottom", floor, bed, Flat, DrawerRole)
	p.Of = d.Name
}
