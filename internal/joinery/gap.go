package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
	"dryfit/internal/wood"
)

// gap is the room that a panel needs at each edge in its groove, across its grain. A sheet needs room for assembly alone; solid wood
// needs half of what it can swell from the moisture that it is glued at to the wettest of the house, and must not shrink out of its
// groove.
func (f framing) gap(open Box, groove document.Joint, p good) unit.Length {
	least := f.b.r.round(unit.Inch/32, unit.Millimetre) // for assembly; common practice
	told := f.o.doc.Frame.Gap
	if !p.solid {
		return f.b.r.usual(told, least, f.o.doc.At, "the gap at the panels of "+f.o.doc.Name)
	}
	wide := open.Size(f.along) + 2*groove.Depth
	s, ok := f.b.r.swing(p, wide, f.of)
	if !ok {
		return told.Or(least)
	}
	need := (s.Out + 1) / 2
	gap := told.Or(need + least)
	if told.Known && told.V < need {
		f.b.r.stop("panel-tight", told.At, "the panel of {0}, {1} wide, swells by {2}; {3} at each edge is not enough", "leave {4} at each edge", diag.T(f.of), diag.L(wide), diag.L(s.Out), diag.X(told.V), diag.L((need + least).Ceil(f.b.r.mark())))
	}
	if keeps := groove.Depth - gap - (s.In+1)/2; keeps < least {
		f.b.r.stop("panel-loose", f.o.doc.At, "the panel of {0} shrinks by {1}; in a groove {2} deep {3} would hold it", "make the groove deeper, or the panel a sheet", diag.T(f.of), diag.L(s.In), diag.X(groove.Depth), diag.L(keeps))
	}
	return gap
}

// swing is how far a width of solid wood moves over the year. It is false, and told, where its species or its moisture is not known.
func (r *room) swing(g good, wide unit.Length, of string) (wood.Swing, bool) {
	m, ok := r.moisture(document.WoodMoves{}, g, of)
	if !ok {
		return wood.Swing{}, false
	}
	return m.species.Swing(wide, m.rings, m.glued, m.least, m.most), true
}
