package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// sides finds out how thick a side is: a panel, a frame, or the posts that a frame stands between.
func (r *room) sides(o *outline) bool {
	doc := o.doc
	o.side = o.panels.thick
	if doc.Legs.Given {
		o.legs = r.good(doc.Stock.Legs, "the legs of "+doc.Name, doc.At)
		if !r.known(doc.Legs.Section, doc.Legs.At, "the section of the legs of "+doc.Name) {
			return false
		}
		o.legs.thick = doc.Legs.Section.V
	}
	r.frames(o)
	if doc.Made.Or(document.PanelCarcass) == document.PanelCarcass {
		return true
	}
	o.frame = r.good(doc.Stock.Frame, "the frames of "+doc.Name, doc.At)
	if !o.frame.known {
		return false
	}
	o.side = o.frame.thick
	if doc.Legs.Given {
		o.side = doc.Legs.Section.V
		if o.side < o.frame.thick {
			r.stop("legs-thin", doc.Legs.At, "the legs of {0} are {1} square, thinner than the frame of {2} between them", "use thicker legs or a thinner frame", diag.T(doc.Name), diag.X(o.side), diag.X(o.frame.thick))
			return false
		}
	}
	return true
}

// frames fills in how frames are made, of sides and of fronts.
func (r *room) frames(o *outline) {
	doc := o.doc
	if !framed(doc) {
		return
	}
	o.stile = r.usual(doc.Frame.Stile, r.round(9*unit.Inch/4, 57*unit.Millimetre), doc.At, "the width of the stiles of "+doc.Name)
	o.frameRail = doc.Frame.Rail.Or(o.stile)
	o.frameJoint = doc.Joints.Frame.V
	o.panelJoint = doc.Joints.Panel.V
	if !doc.Joints.Panel.Known {
		o.panelJoint = document.Joint{Kind: document.Groove, Depth: r.usual(document.Value[unit.Length]{}, r.round(3*unit.Inch/8, 10*unit.Millimetre), doc.At, "the depth of the grooves for the panels of "+doc.Name)}
	}
}

// framed reports whether a cabinet has frames: sides or fronts.
func framed(doc document.Cabinet) bool {
	for _, f := range doc.Fronts {
		if f.Made.V == document.FramedFront {
			return true
		}
	}
	return doc.Made.V == document.FrameCarcass
}

// makeSides builds both sides and returns the pieces that joints are cut into, left ones first.
func (b *builder) makeSides(o outline) (lefts, rights []*Piece) {
	if o.doc.Made.Or(document.PanelCarcass) == document.FrameCarcass {
		lefts, rights = b.framedSide(o, "left", 0, o.side), b.framedSide(o, "right", o.w-o.side, o.w)
		return lefts, rights
	}
	z0 := b.sideRear(o)
	l := b.add("left side", o.panels, span(0, o.side, o.foot, o.h, z0, o.d), LeftSide, SideRole)
	r := b.add("right side", o.panels, span(o.w-o.side, o.w, o.foot, o.h, z0, o.d), RightSide, SideRole)
	for _, p := range []*Piece{l, r} {
		b.bandFront(o, p, o.panels)
		b.notchToe(o, p)
		p.Part.Over.Width = o.doc.Leave.Back.Or(0)
		if o.foot == 0 {
			p.Part.Over.Length = b.r.footLeave(b.name)
		}
	}
	if o.doc.Legs.Given {
		b.stubLegs(o)
	}
	return []*Piece{l}, []*Piece{r}
}

// sideRear is where the sides end toward the wall: before a back that lies behind them.
func (b *builder) sideRear(o outline) unit.Length {
	if o.back.name != "" && o.doc.Joints.Back.Or(document.Joint{}).Kind == document.ButtJoint {
		return o.backFace
	}
	return 0
}

// bandFront puts edging on a front edge of sheet stock that shows.
func (b *builder) bandFront(o outline, p *Piece, of good) {
	if o.doc.Banding.Known && !of.solid {
		p.band(out, o.band)
	}
}

// notchToe takes the toe space out of a side.
func (b *builder) notchToe(o outline, p *Piece) {
	if o.toeHigh() == 0 {
		return
	}
	notch := span(0, o.w, o.foot, o.foot+o.toe.High.V, o.d-o.toe.Deep.V, o.d)
	p.Part.Cutouts = append(p.Part.Cutouts, part.Cutout{Outline: rectRing(p.Turn.area(p.Box, p.Box.And(notch), 0, 1)), For: "toe space"})
}

// stubLegs stand under a carcass of panels.
func (b *builder) stubLegs(o outline) {
	s := o.legs.thick
	rear := b.sideRear(o)
	for _, at := range []struct {
		name string
		x, z unit.Length
		turn Turn
	}{
		{"front left leg", 0, o.d - s, LeftSide}, {"front right leg", o.w - s, o.d - s, RightSide},
		{"rear left leg", 0, rear, LeftSide}, {"rear right leg", o.w - s, rear, RightSide},
	} {
		p := b.add(at.name, o.legs, span(at.x, at.x+s, 0, o.foot, at.z, at.z+s), at.turn, LegRole)
		b.taper(o, p, 2*at.x < o.w, 2*at.z < o.d, o.foot)
	}
}

// taper shapes a leg below a height. The faces are named by where they look on the finished cabinet.
func (b *builder) taper(o outline, p *Piece, onLeft, atRear bool, from unit.Length) {
	legs := o.doc.Legs
	if len(legs.Tapers) == 0 {
		return
	}
	if !b.r.known(legs.To, legs.At, "the section at the foot of the legs of "+o.doc.Name) {
		return
	}
	inX, inZ := right, out
	if !onLeft {
		inX = left
	}
	if !atRear {
		inZ = in
	}
	faces := map[way]bool{}
	for _, t := range legs.Tapers {
		switch t {
		case document.TaperInner:
			faces[inX], faces[inZ] = true, true
		case document.TaperOuter:
			faces[inX.opposite()], faces[inZ.opposite()] = true, true
		case document.TaperFront:
			faces[out] = true
		case document.TaperBack:
			faces[in] = true
		case document.TaperSides:
			faces[left], faces[right] = true, true
		}
	}
	less := legs.Section.V - legs.To.V
	if less <= 0 {
		b.r.stop("taper-none", legs.At, "the legs of {0} are {1} square and {2} at the foot: nothing tapers", "write a smaller section for the foot", diag.T(o.doc.Name), diag.X(legs.Section.V), diag.X(legs.To.V))
		return
	}
	start := from - legs.From.Or(0)
	if start <= 0 {
		b.r.stop("taper-none", legs.At, "the taper of the legs of {0} would begin {1} below the carcass, which is at the floor or under it", "let it begin higher", diag.T(o.doc.Name), diag.X(legs.From.Or(0)))
		return
	}
	for _, w := range []way{left, right, in, out} {
		if faces[w] {
			share := less
			if faces[w.opposite()] {
				share = less / 2
			}
			b.taperFace(p, w, start, share)
		}
	}
}

// taperFace takes one face back from a height down to the floor.
func (b *builder) taperFace(p *Piece, w way, start, less unit.Length) {
	side, _, _ := p.Turn.sideOf(w)
	at := func(y unit.Length) unit.Length { return p.Turn.local(p.Box, Point{p.Box.Lo[0], y, p.Box.Lo[2]})[0] }
	p.Part.Tapers = append(p.Part.Tapers, part.Taper{On: side, From: at(start), To: at(0), Less: less})
}
