package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// fillers are strips beside the carcass, flush with its front, that are scribed to a wall: as wide as is written, before they are cut.
func (b *builder) fillers(o outline) {
	for _, side := range []struct {
		name   string
		wide   unit.Length
		x0, x1 unit.Length
		facing way
	}{
		{"left filler", o.doc.Leave.Left.Or(0), -o.doc.Leave.Left.Or(0), 0, left},
		{"right filler", o.doc.Leave.Right.Or(0), o.w, o.w + o.doc.Leave.Right.Or(0), right},
	} {
		if side.wide == 0 {
			continue
		}
		s := b.r.frontGood(o)
		if !s.known {
			return
		}
		p := b.add(side.name, s, span(side.x0, side.x1, o.floor-o.panels.thick, o.h, o.d-s.thick, o.d), Upright, FrontRole)
		p.Of = side.name
		p.label(side.facing, "scribe this edge")
		b.r.found.Add(diag.Note, "filler", o.doc.At, "the {1} of {0} is {2} wide before it is scribed: cut it to the gap that is there", "", diag.T(b.name), diag.T(side.name), diag.X(side.wide))
	}
}
