package joinery

import (
	"slices"
	"strconv"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// carcass builds everything but fronts and drawers. What stands between the sides is joined into them as it is made.
func (b *builder) carcass(o outline) {
	lefts, rights := b.makeSides(o)
	bottom := b.bottom(o, lefts, rights)
	tops := b.tops(o, lefts, rights)
	b.backPanel(o, lefts, rights)
	b.toeBoard(o)
	b.columns(o, bottom, tops)
	b.hangingRail(o)
	b.shelves(o, lefts, rights)
}

// level makes a piece that lies between two rows of uprights and reaches into both by its joint.
func (b *builder) level(o outline, name string, s good, box Box, joint document.Joint, role Role, lefts, rights []*Piece) *Piece {
	box.Lo[xAxis] -= joint.Depth
	box.Hi[xAxis] += joint.Depth
	p := b.add(name, s, box, Flat, role)
	for _, m := range lefts {
		m.seat(p, right, joint)
	}
	for _, m := range rights {
		m.seat(p, left, joint)
	}
	return p
}

// seat cuts a dado for a piece that stands in this one, or a rabbet where it stands at an end.
func (p *Piece) seat(o *Piece, facing way, joint document.Joint) {
	if joint.Depth == 0 || p.Box.And(o.Box).Empty() {
		return
	}
	n := len(p.Part.Channels)
	p.channel(part.Dado, o.Box, facing, o.Part.Name)
	c := &p.Part.Channels[n]
	if length, _, _ := p.Part.Size.Extent(c.On); c.On.Flat() && (c.Area.Min.X == 0 || c.Area.Max.X == length) {
		c.Kind = part.Rabbet
	}
}

// fit keeps a joint to those that can be made at a place; any other is told, and taken for a butt.
func (b *builder) fit(v document.Value[document.Joint], where string, able ...document.JointKind) document.Joint {
	j := v.V
	if !v.Known || slices.Contains(able, j.Kind) {
		return j
	}
	words := ""
	for i, k := range able {
		if i > 0 {
			words += ", "
		}
		words += k.String()
	}
	b.r.stop("joint-unfit", j.At, "{0} is no joint for the {1} of {2}", "write one of: {3}", diag.T(j.Kind.String()), diag.T(where), diag.T(b.name), diag.T(words))
	return document.Joint{At: j.At}
}

func (b *builder) bottom(o outline, lefts, rights []*Piece) *Piece {
	x0, x1 := o.insideX()
	joint := b.fit(o.doc.Joints.Bottom, "bottom", document.ButtJoint, document.Dado, document.Rabbet)
	p := b.level(o, "bottom", o.panels, span(x0, x1, o.floor-o.panels.thick, o.floor, o.backFace, o.d), joint, BottomRole, lefts, rights)
	b.bandFront(o, p, o.panels)
	return p
}

// tops are the rails or the panel that close the carcass above.
func (b *builder) tops(o outline, lefts, rights []*Piece) []*Piece {
	kind := o.doc.Top.Or(document.TopRails)
	if kind == document.TopOpen {
		return nil
	}
	joint := b.fit(o.doc.Joints.Top, "top", document.ButtJoint, document.Dado, document.Rabbet, document.HalfLap)
	if joint.Kind == document.HalfLap && (o.doc.Made.V == document.FrameCarcass || joint.Depth >= o.panels.thick) {
		b.r.stop("joint-unfit", joint.At, "a half-lap {1} deep can not be made on top of {0}: it is for sides of panels, and less deep than the rail is thick ({2})", "write butt, or rabbet 1/4", diag.T(b.name), diag.X(joint.Depth), diag.X(o.panels.thick))
		joint = document.Joint{}
	}
	x0, x1 := o.insideX()
	var all []*Piece
	for _, s := range o.topStrips() {
		box := span(x0, x1, o.ceiling, o.h, s.z0, s.z1)
		if joint.Kind == document.HalfLap {
			all = append(all, b.lapped(o, s.name, box, joint, lefts[0], rights[0]))
		} else {
			all = append(all, b.level(o, s.name, o.panels, box, joint, TopRole, lefts, rights))
		}
	}
	b.bandFront(o, all[0], o.panels)
	return all
}

type strip struct {
	name   string
	z0, z1 unit.Length
}

func (o outline) topStrips() []strip {
	if o.doc.Top.V == document.TopPanel {
		return []strip{{"top panel", o.backFace, o.d}}
	}
	return []strip{{"front rail", o.d - o.rail, o.d}, {"rear rail", o.backFace, o.backFace + o.rail}}
}

// lapped makes a rail that runs over both sides: each gives a part of its thickness, the side its end, the rail its underside.
func (b *builder) lapped(o outline, name string, box Box, joint document.Joint, l, r *Piece) *Piece {
	box.Lo[xAxis], box.Hi[xAxis] = 0, o.w
	p := b.add(name, o.panels, box, Flat, TopRole)
	for _, side := range []*Piece{l, r} {
		lap := side.Box.And(box)
		lap.Lo[yAxis] = o.h - joint.Depth
		side.channel(part.HalfLap, lap, up, name)
		rest := side.Box.And(box)
		rest.Hi[yAxis] = o.h - joint.Depth
		p.channel(part.HalfLap, rest, down, side.Part.Name)
	}
	return p
}

// backPanel closes the carcass behind bottom and top, which end before it.
func (b *builder) backPanel(o outline, lefts, rights []*Piece) {
	if o.back.name == "" {
		return
	}
	joint := b.fit(o.doc.Joints.Back, "back", document.ButtJoint, document.Rabbet, document.Groove)
	set := o.doc.BackSet.Or(0)
	x0, x1 := o.insideX()
	switch joint.Kind {
	case document.ButtJoint:
		x0, x1 = 0, o.w
	case document.Groove:
		if set == 0 {
			b.r.stop("groove-open", joint.At, "a groove for the back of {0} would lie at the very edge of its sides", "write rabbet, or give the back a back set", diag.T(b.name))
		}
		slack := b.r.round(unit.Inch/32, unit.Millimetre)
		x0, x1 = x0-joint.Depth+slack, x1+joint.Depth-slack
	default:
		x0, x1 = x0-joint.Depth, x1+joint.Depth
	}
	back := b.add("back", o.back, span(x0, x1, o.floor-o.panels.thick, o.h, set, o.backFace), Upright, BackRole)
	b.layBack(o.back, back)
	b.seatBack(o, back, joint, lefts, right)
	b.seatBack(o, back, joint, rights, left)
}

// layBack lets the grain of a back run any way where a sheet does not hold it upright: a back is hidden, and a wide one comes out of a sheet only
// lying down.
func (b *builder) layBack(of good, back *Piece) {
	s, need := of.stock, back.Part.Size
	if !of.known || of.solid || !s.Length.Known || !s.Width.Known || need.Length <= s.Length.V && need.Width <= s.Width.V {
		return
	}
	back.Part.Grain = part.Any
	b.r.assume(b.at, "the grain of the back of {0} may run level, for it is {1} wide and {2} is {3} across its grain", "our own", diag.T(b.name), diag.X(need.Width), diag.T(of.name), diag.X(s.Width.V))
}

// seatBack cuts the rabbet or the groove for the back over the whole height that it stands in.
func (b *builder) seatBack(o outline, back *Piece, joint document.Joint, sides []*Piece, facing way) {
	if joint.Depth == 0 {
		return
	}
	room := back.Box
	kind := part.Groove
	if joint.Kind == document.Rabbet {
		kind, room.Lo[zAxis] = part.Rabbet, 0
	}
	room.Lo[xAxis], room.Hi[xAxis] = o.side-joint.Depth, o.w-o.side+joint.Depth
	for _, m := range sides {
		m.channel(kind, room, facing, "back")
	}
}

func (b *builder) toeBoard(o outline) {
	if o.toeHigh() == 0 {
		return
	}
	s := b.r.good(or(o.doc.Stock.Toe, o.doc.Stock.Panels), "the toe board", o.doc.At)
	x0, x1 := o.insideX()
	z := o.d - o.toe.Deep.V
	if s.known {
		b.add("toe board", s, span(x0, x1, 0, o.toe.High.V, z-s.thick, z), Level, ToeRole).Part.Over.Width = b.r.footLeave(b.name)
	}
}

// columnsOf are the clear stretches between the sides and the dividers, from the left. Told widths must close; silent ones are alike, to
// the mark, and the last takes what is left.
func (o outline) columnsOf(mark unit.Length) ([][2]unit.Length, unit.Length) {
	x0, x1 := o.insideX()
	n := max(o.doc.ColumnCount(), 1)
	t := o.panels.thick
	free := x1 - x0 - unit.Length(n-1)*t
	var all [][2]unit.Length
	at := x0
	for i := range n {
		wide := (free * unit.Length(i+1) / unit.Length(n)).Round(mark) - (free * unit.Length(i) / unit.Length(n)).Round(mark)
		if len(o.doc.Columns) > 0 {
			wide = o.doc.Columns[i].V
		} else if i == n-1 {
			wide = x1 - at
		}
		all = append(all, [2]unit.Length{at, at + wide})
		at += wide + t
	}
	return all, free
}

// columns stands the dividers between bottom and top.
func (b *builder) columns(o outline, bottom *Piece, tops []*Piece) {
	all, _ := o.columnsOf(b.r.mark())
	joint := b.fit(o.doc.Joints.Divider, "dividers", document.ButtJoint, document.Dado)
	for i := 1; i < len(all); i++ {
		box := span(all[i-1][1], all[i][0], o.floor-joint.Depth, o.ceiling, o.backFace, o.d)
		inTop := o.doc.Top.V == document.TopPanel && joint.Depth > 0
		if inTop {
			box.Hi[yAxis] += joint.Depth
		}
		name := "divider"
		if len(all) > 2 {
			name += " " + strconv.Itoa(i)
		}
		p := b.add(name, o.panels, box, RightSide, DividerRole)
		b.bandFront(o, p, o.panels)
		bottom.seat(p, up, joint)
		if inTop {
			tops[0].seat(p, down, joint)
		}
	}
}

// mark is the finest mark of the reader's tape.
func (r *room) mark() unit.Length {
	return r.doc.Mark.Or(unit.DefaultStyle(r.doc.Units).Mark)
}

func rectRing(r geom.Rect) geom.Ring { return geom.RectRing(r, 0, 0, 0, 0) }
