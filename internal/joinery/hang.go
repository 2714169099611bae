package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// Screw is one screw that holds a cabinet on its wall.
type Screw struct {
	X, Y     unit.Length // in the wall's frame
	Diameter unit.Length // 0 unknown
	Length   unit.Length
	Into     string      // the stud or blocking that it lands in; "" for none that is recorded
	Hold     unit.Length // how far it goes into that wood
}

// hangingRail is the upright rail under the top of a cabinet, through which it is screwed to the wall.
func (b *builder) hangingRail(o outline) {
	if o.doc.Stands.Or(document.OnFloor) != document.OnWall && !o.doc.Screws.Given {
		return
	}
	x0, x1 := o.insideX()
	rail := b.add("hanging rail", o.panels, span(x0, x1, o.ceiling-o.rail, o.ceiling, o.backFace, o.backFace+o.panels.thick), Level, TopRole)
	for _, p := range b.pieces {
		if in := p.Box.And(rail.Box); p.Role == DividerRole && !in.Empty() {
			p.Part.Cutouts = append(p.Part.Cutouts, part.Cutout{Outline: rectRing(p.Turn.area(p.Box, in, 0, 1)), For: "hanging rail"})
		}
	}
}

// screws holds each screw of a cabinet against the studs and blocking that were recorded.
func (r *room) screws(c *Cabinet, o outline) {
	doc := o.doc.Screws
	f, ok := r.shape.Face(c.Wall)
	if !doc.Given || !ok {
		r.unscrewed(o)
		return
	}
	if !doc.Length.Known || !doc.Down.Known || !r.shape.FinishedKnown {
		r.lacks(doc.At, "the length of the screws of "+c.Name+", or how far down they are")
		return
	}
	if high := o.h - doc.Down.V; high > o.ceiling || high < o.ceiling-o.rail {
		r.stop("screw-norail", doc.Down.At, "screws {1} below the top of {0} miss its hanging rail, which is from {2} to {3} below", "move them into the rail", diag.T(c.Name), diag.X(doc.Down.V), diag.X(o.h-o.ceiling), diag.X(o.h-o.ceiling+o.rail))
		return
	}
	through := o.backFace + o.panels.thick + f.BoardThick + f.TileOff
	least := r.usual(doc.Least, r.round(5*unit.Inch/4, 32*unit.Millimetre), doc.At, "the least hold of the screws of "+c.Name)
	for _, x := range doc.From {
		if !x.Known {
			continue
		}
		s := Screw{X: c.X + x.V, Y: r.shape.FinishedFloor + o.h - doc.Down.V, Diameter: doc.Diameter.Or(0), Length: doc.Length.V}
		wood := r.woodBehind(f, s)
		if wood == nil && !recorded(f) {
			r.found.Add(diag.Unchecked, "screws-unrecorded", doc.At, "not checked: what the screws of {0} land in: no stud and no blocking of {1} is recorded", "write them under in the wall while it is open; what hangs is screwed into solid wood only", diag.T(c.Name), diag.T(c.Wall))
			return
		}
		if wood == nil {
			r.stop("screw-nowhere", x.At, "the screw {1} from the left side of {0} lands in no stud and no blocking that is recorded", "move it onto one, or put blocking in while the wall is open", diag.T(c.Name), diag.X(x.V))
			continue
		}
		s.Into, s.Hold = wood.Name, doc.Length.V-through
		if s.Hold < least {
			r.stop("screw-short", x.At, "a screw {1} long goes {2} into {3} behind {4} of cabinet and wall; {5} are needed for {0}", "use screws of at least {6}", diag.T(c.Name), diag.X(doc.Length.V), diag.L(s.Hold), diag.T(wood.Name), diag.L(through), diag.X(least), diag.L((through + least).Ceil(r.round(unit.Inch/4, 5*unit.Millimetre))))
		}
		c.Hung = append(c.Hung, s)
	}
}

// unscrewed tells of a cabinet on the wall that nothing holds.
func (r *room) unscrewed(o outline) {
	if o.doc.Stands.Or(document.OnFloor) == document.OnWall {
		r.found.Add(diag.Unchecked, "screws-missing", o.doc.At, "how {0} is screwed to the wall is not written: nothing is checked", "add screws: {length: 3, down: 1-1/2, from left: [2, 18, 28]}", diag.T(o.doc.Name))
	}
}

// woodBehind is the recorded stud or blocking that a screw's shank lies in whole.
func (r *room) woodBehind(f site.Face, s Screw) *site.Buried {
	half := s.Diameter / 2
	for i, b := range f.Buried {
		if b.Kind != "stud" && b.Kind != "blocking" {
			continue
		}
		if b.Rect.Min.X <= s.X-half && s.X+half <= b.Rect.Max.X && b.Rect.Min.Y <= s.Y-half && s.Y+half <= b.Rect.Max.Y {
			return &f.Buried[i]
		}
	}
	return nil
}
