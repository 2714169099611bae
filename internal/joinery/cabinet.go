package joinery

import (
	"reflect"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Cabinet is one cabinet, worked out.
type Cabinet struct {
	Name  string
	At    diag.Place
	Wall  string
	X     unit.Length // of the left side of the carcass, in the wall's frame
	Asked Box         // the outside of the carcass: what was asked for
	// Fronts reach this far before the carcass; 0 where they lie in it.
	Proud   unit.Length
	Pieces  []Piece
	Fronts  []Front
	Drawers []Drawer
	Stands  Standing
	Hung    []Screw
	// Passages are what it has to pass on its way in.
	Passages []Passage
}

// Outside is the box that the pieces of the carcass take together.
func (c Cabinet) Outside() Box {
	var all Box
	first := true
	for _, p := range c.Pieces {
		if p.Role == FrontRole || p.Role == DrawerRole {
			continue
		}
		if first {
			all, first = p.Box, false
		}
		all = all.with(p.Box)
	}
	return all
}

// Parts are the parts of the pieces in their order, those that are alike once with their count.
func (c Cabinet) Parts() []part.Part {
	var all []part.Part
	for _, p := range c.Pieces {
		all = counted(all, p.Part)
	}
	return all
}

// counted adds a part to a list, or counts it to the one that is alike in all but the place it stands at.
func counted(all []part.Part, p part.Part) []part.Part {
	for i, have := range all {
		n := have.Count
		have.Count, have.At = p.Count, p.At
		if reflect.DeepEqual(have, p) {
			all[i].Count = n + p.Count
			return all
		}
	}
	return append(all, p)
}

// outline is what a cabinet is asked to be, with every default filled in.
type outline struct {
	doc        document.Cabinet
	w, h, d    unit.Length
	foot       unit.Length // the underside of the carcass over the finished floor
	floor      unit.Length // the top face of the inside bottom
	side       unit.Length // the thickness of a side, posts included
	backFace   unit.Length // how far the inner face of the back stands off the wall
	ceiling    unit.Length // the underside of rails or top panel
	panels     good
	back       good
	frame      good
	legs       good
	band       unit.Length
	rail       unit.Length
	toe        document.ToeSpace
	stile      unit.Length
	frameRail  unit.Length
	panelJoint document.Joint
	frameJoint document.Joint
}

// inside are the stretches between the sides and between the back and the front of the carcass.
func (o outline) insideX() (unit.Length, unit.Length) { return o.side, o.w - o.side }

// cabinet works one cabinet out and puts it on its wall. It is false where a fact is missing or nothing would be left.
func (r *room) cabinet(doc document.Cabinet) (Cabinet, bool) {
	c, o, ok := r.build(doc)
	ok = ok && r.locate(&c, o)
	for _, p := range c.Pieces {
		r.found = append(r.found, p.Part.Check()...)
	}
	return c, ok
}

// build makes the pieces of a cabinet, wherever it stands.
func (r *room) build(doc document.Cabinet) (Cabinet, outline, bool) {
	c := Cabinet{Name: doc.Name, At: doc.At, Wall: doc.In.Text}
	o, ok := r.outline(doc)
	if !ok {
		return c, o, false
	}
	b := &builder{r: r, name: doc.Name, at: doc.At}
	b.carcass(o)
	c.Fronts, c.Drawers = b.fronts(o)
	b.fillers(o)
	for _, p := range b.pieces {
		c.Pieces = append(c.Pieces, *p)
	}
	c.Asked = span(0, o.w, o.foot, o.h, 0, o.d)
	if doc.Stands.Or(document.OnFloor) != document.OnWall {
		c.Asked.Lo[yAxis] = 0
	}
	if doc.Joints.Back.V.Kind == document.ButtJoint && o.back.name != "" {
		c.Asked.Lo[zAxis] = doc.BackSet.Or(0) // a back behind the sides stands off the wall with all of the carcass
	}
	if o.overlay() {
		c.Proud = r.frontThickness(o)
	}
	return c, o, true
}

// outline fills the defaults in and tells of what is missing.
func (r *room) outline(doc document.Cabinet) (outline, bool) {
	if !r.sure(doc, doc.Name, "Hinges", "Slides", "Drawers", "Screws", "Raise", "Long", "Box", "Opens", "Alcove") {
		return outline{}, false
	}
	o := outline{doc: doc, h: doc.Height.V, d: doc.Depth.V, toe: doc.Toe, band: doc.Banding.Or(0)}
	ok := r.known(doc.Height, doc.At, "the height of "+doc.Name)
	ok = r.known(doc.Depth, doc.At, "the depth of "+doc.Name) && ok
	if o.w, ok = r.width(doc, ok); !ok {
		return o, false
	}
	if o.foot, ok = r.foot(doc); !ok {
		return o, false
	}
	o.panels = r.good(doc.Stock.Panels, "the panels of "+doc.Name, doc.At)
	if doc.Stock.Back.Text != "" {
		o.back = r.good(doc.Stock.Back, "the back", doc.At)
	}
	if !o.panels.known || doc.Stock.Back.Text != "" && !o.back.known {
		return o, false
	}
	if !r.sides(&o) {
		return o, false
	}
	o.backFace = doc.BackSet.Or(0) + o.back.thick
	o.floor = o.foot + o.toeHigh() + o.panels.thick
	if doc.Top.Or(document.TopRails) == document.TopRails || doc.Screws.Given || doc.Stands.V == document.OnWall {
		o.rail = r.usual(doc.TopRail, r.round(4*unit.Inch, 100*unit.Millimetre), doc.At, "the width of the rails of "+doc.Name)
	}
	o.ceiling = o.h
	if doc.Top.Or(document.TopRails) != document.TopOpen {
		o.ceiling -= o.panels.thick
	}
	return o, r.roomInside(o)
}

func (o outline) toeHigh() unit.Length {
	if o.toe.Given && o.doc.Stands.Or(document.OnFloor) == document.OnFloor {
		return o.toe.High.V
	}
	return 0
}

// known tells of a figure that is missing.
func (r *room) known(v document.Value[unit.Length], at diag.Place, what string) bool {
	if !v.Known {
		r.lacks(at, what)
	}
	return v.Known
}

func (r *room) width(doc document.Cabinet, ok bool) (unit.Length, bool) {
	if doc.Across.Both {
		return doc.Across.Hi - doc.Across.Lo, ok
	}
	return doc.Width.V, r.known(doc.Width, doc.At, "the width of "+doc.Name) && ok
}

// foot is where the carcass begins over the finished floor.
func (r *room) foot(doc document.Cabinet) (unit.Length, bool) {
	if doc.Stands.Or(document.OnFloor) == document.OnFloor {
		return 0, true
	}
	return doc.Bottom.V, r.known(doc.Bottom, doc.At, "the bottom of "+doc.Name)
}

// roomInside tells of a cabinet whose parts leave nothing between them.
func (r *room) roomInside(o outline) bool {
	x0, x1 := o.insideX()
	for _, c := range []struct {
		what string
		left unit.Length
	}{
		{"width", x1 - x0}, {"height", o.ceiling - o.floor}, {"depth", o.d - o.backFace},
	} {
		if c.left <= 0 {
			r.stop("cabinet-full", o.doc.At, "{0} has {1} of {2} left inside: its parts take all of it", "make it larger, or its stock thinner", diag.T(o.doc.Name), diag.T(c.what), diag.X(c.left))
			return false
		}
	}
	if o.rail*2 > o.d-o.backFace && o.doc.Top.Or(document.TopRails) == document.TopRails {
		r.stop("rails-wide", o.doc.At, "two rails of {1} are deeper than {0}, which has {2} there", "make the rails narrower, or the top a panel", diag.T(o.doc.Name), diag.X(o.rail), diag.X(o.d-o.backFace))
		return false
	}
	return true
}
