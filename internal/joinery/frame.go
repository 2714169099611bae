package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// framedSide is a side of two stiles, or of two posts where the cabinet stands on legs, with rails and a panel in grooves between
// them. Rails and panel lie flush with the inner face, so that the inside is one plane.
func (b *builder) framedSide(o outline, name string, x0, x1 unit.Length) []*Piece {
	onLeft := x0 == 0
	upright, level := RightSide, RightLevel
	inner0, inner1 := x0, x0+o.frame.thick
	if onLeft {
		upright, level = LeftSide, LeftLevel
		inner0, inner1 = x1-o.frame.thick, x1
	}
	rear := b.sideRear(o)
	var posts []*Piece
	if o.doc.Legs.Given {
		s := o.legs.thick
		posts = append(posts,
			b.add("front "+name+" leg", o.legs, span(x0, x1, 0, o.h, o.d-s, o.d), upright, LegRole),
			b.add("rear "+name+" leg", o.legs, span(x0, x1, 0, o.h, rear, rear+s), upright, LegRole))
		b.taper(o, posts[0], onLeft, false, o.foot)
		b.taper(o, posts[1], onLeft, true, o.foot)
	} else {
		posts = append(posts,
			b.add(name+" front stile", o.frame, span(x0, x1, o.foot, o.h, o.d-o.stile, o.d), upright, SideRole),
			b.add(name+" rear stile", o.frame, span(x0, x1, o.foot, o.h, rear, rear+o.stile), upright, SideRole))
		posts[1].Part.Over.Width = o.doc.Leave.Back.Or(0)
	}
	open := span(inner0, inner1, o.foot, o.h, posts[1].Box.Hi[2], posts[0].Box.Lo[2])
	f := framing{b: b, o: o, of: name + " side", posts: posts, turn: level, panelTurn: upright, role: SideRole, face: facing(onLeft)}
	return append(posts, f.fill(open)...)
}

func facing(onLeft bool) way {
	if onLeft {
		return right
	}
	return left
}

// framing fills the opening between two uprights with a rail above, a rail below and a panel in grooves.
type framing struct {
	b               *builder
	o               outline
	of              string
	posts           []*Piece // the uprights, which may be thicker than the rails
	turn, panelTurn Turn
	role            Role
	face            way  // to which the faces look
	panel           good // of the panel; silent: the carcass' front panel or back
	along           int  // the axis from upright to upright
	front           string
}

// fill builds the rails and the panel. open is the opening from upright to upright, of the thickness of the rails.
func (f framing) fill(open Box) []*Piece {
	along := zAxis
	if f.front != "" {
		along = xAxis
	}
	f.along = along
	joint, groove := f.o.frameJoint, f.o.panelJoint
	if joint.Kind != document.ButtJoint && joint.Kind != document.TongueJoin {
		f.b.r.stop("joint-unfit", joint.At, "{0} is no joint for the rails of a frame here", "write butt, or tongue and its depth", diag.T(joint.Kind.String()))
		joint = document.Joint{}
	}
	if joint.Depth > groove.Depth {
		f.b.r.stop("tongue-long", joint.At, "the tongues of {0} are {1} long, and the groove that they stand in is {2} deep", "make the groove for the panel as deep, or the tongues shorter", diag.T(f.of), diag.X(joint.Depth), diag.X(groove.Depth))
	}
	p := f.panelGood()
	if !p.known {
		return nil
	}
	rails := f.rails(open, joint, p)
	panel := f.insert(open, groove, p)
	for _, m := range append(rails, f.posts...) {
		f.groove(m, open, groove, p)
	}
	return append(rails, panel)
}

func (f framing) panelGood() good {
	if f.panel.known {
		return f.panel
	}
	name := or(f.o.doc.Stock.FrontPanels, f.o.doc.Stock.Back)
	return f.b.r.good(name, "the panels of the frames of "+f.o.doc.Name, f.o.doc.At)
}

func (f framing) name(what string) string { return f.of + " " + what }

func (f framing) rails(open Box, joint document.Joint, p good) []*Piece {
	long := open
	long.Lo[f.along] -= joint.Depth
	long.Hi[f.along] += joint.Depth
	top, low := long, long
	top.Lo[yAxis] = open.Hi[yAxis] - f.o.frameRail
	low.Hi[yAxis] = open.Lo[yAxis] + f.o.frameRail
	var rails []*Piece
	for _, r := range []struct {
		name string
		box  Box
	}{{"top rail", top}, {"lower rail", low}} {
		m := f.b.add(f.name(r.name), f.o.frame, r.box, f.turn, f.role)
		m.Of = f.front
		if joint.Depth > 0 {
			m.tongues(f.along, open, f.middle(open, p.thick), f.face)
		}
		rails = append(rails, m)
	}
	return rails
}

// middle is the stretch of the panel in the thickness of the frame: in its middle.
func (f framing) middle(open Box, thick unit.Length) Box {
	a := f.face.axis
	lo := open.Lo[a] + (open.Size(a)-thick)/2
	open.Lo[a], open.Hi[a] = lo, lo+thick
	return open
}

// insert is the panel, less the room that it needs in its grooves.
func (f framing) insert(open Box, groove document.Joint, p good) *Piece {
	gap := f.gap(open, groove, p)
	box := f.middle(open, p.thick)
	reach := groove.Depth - gap
	box.Lo[f.along], box.Hi[f.along] = box.Lo[f.along]-reach, box.Hi[f.along]+reach
	box.Lo[yAxis] += f.o.frameRail - groove.Depth + f.endGap(gap, p)
	box.Hi[yAxis] -= f.o.frameRail - groove.Depth + f.endGap(gap, p)
	m := f.b.add(f.name("panel"), p, box, f.panelTurn, f.role)
	m.Of = f.front
	return m
}

// endGap is the room at the ends of a panel, where wood hardly moves: 1/32 in or 1 mm for assembly (common practice).
func (f framing) endGap(gap unit.Length, p good) unit.Length {
	if p.solid {
		return f.b.r.round(unit.Inch/32, unit.Millimetre)
	}
	return gap
}

// groove plows the inner edge of a member over its whole length, as wide as the panel is thick.
func (f framing) groove(m *Piece, open Box, groove document.Joint, p good) {
	run := f.middle(open, p.thick)
	in := open
	in.Lo[yAxis] += f.o.frameRail
	in.Hi[yAxis] -= f.o.frameRail
	a := f.along
	switch {
	case m.Box.Lo[yAxis] >= in.Hi[yAxis]: // the top rail
		run.Lo[a], run.Hi[a] = m.Box.Lo[a], m.Box.Hi[a]
		run.Lo[yAxis], run.Hi[yAxis] = in.Hi[yAxis], in.Hi[yAxis]+groove.Depth
		m.channel(part.Groove, run, down, "panel")
	case m.Box.Hi[yAxis] <= in.Lo[yAxis]:
		run.Lo[a], run.Hi[a] = m.Box.Lo[a], m.Box.Hi[a]
		run.Lo[yAxis], run.Hi[yAxis] = in.Lo[yAxis]-groove.Depth, in.Lo[yAxis]
		m.channel(part.Groove, run, up, "panel")
	case m.Box.Lo[a] >= open.Hi[a]:
		run.Lo[yAxis], run.Hi[yAxis] = open.Lo[yAxis], open.Hi[yAxis]
		run.Lo[a], run.Hi[a] = open.Hi[a], open.Hi[a]+groove.Depth
		m.channel(part.Groove, run, way{a, true}, "panel and rails")
	default:
		run.Lo[yAxis], run.Hi[yAxis] = open.Lo[yAxis], open.Hi[yAxis]
		run.Lo[a], run.Hi[a] = open.Lo[a]-groove.Depth, open.Lo[a]
		m.channel(part.Groove, run, way{a, false}, "panel and rails")
	}
}

// tongues cuts both cheeks off both ends of a rail, so that what is left is as thick as the panel.
func (p *Piece) tongues(along int, open, middle Box, face way) {
	for _, end := range []Box{
		cutAt(p.Box, along, p.Box.Lo[along], open.Lo[along]),
		cutAt(p.Box, along, open.Hi[along], p.Box.Hi[along]),
	} {
		a := face.axis
		hi, lo := cutAt(end, a, middle.Hi[a], p.Box.Hi[a]), cutAt(end, a, p.Box.Lo[a], middle.Lo[a])
		p.channel(part.Tenon, hi, way{a, false}, "tongue")
		p.channel(part.Tenon, lo, way{a, true}, "tongue")
	}
}

// cutAt is the slice of a box between two places along an axis.
func cutAt(b Box, axis int, lo, hi unit.Length) Box {
	b.Lo[axis], b.Hi[axis] = lo, hi
	return b
}
