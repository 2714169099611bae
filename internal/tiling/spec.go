package tiling

import (
	"dryfit/internal/document"
	"dryfit/internal/tiling/bond"
)

var kinds = map[document.BondKind]bond.Kind{
	document.StackBond:             bond.Stack,
	document.RunningBond:           bond.Running,
	document.HerringboneBond:       bond.Herringbone,
	document.DoubleHerringboneBond: bond.DoubleHerringbone,
	document.BasketweaveBond:       bond.Basketweave,
	document.HexagonBond:           bond.Hexagon,
	document.PinwheelBond:          bond.Pinwheel,
}

// spec is a field's bond as package bond takes it. A silent bond is a stack; one that can not be read was told of
// when the document was.
func (m *maker) spec(f document.Field) (bond.Spec, bool) {
	written := document.Bond{Kind: document.StackBond}
	if f.Bond.Known {
		b, why, _ := document.ParseBond(f.Bond.V, m.doc.Units)
		if why != "" {
			return bond.Spec{}, false
		}
		written = b
	}
	s := bond.Spec{Kind: kinds[written.Kind], Num: written.Num, Den: written.Den, Shift: written.Shift, Back: written.Back,
		Vertical: written.Vertical, Diagonal: written.Diagonal}
	if written.Kind == document.ModularBond {
		s.Kind = bond.ModularThree
		if written.Sizes == 4 {
			s.Kind = bond.ModularFour
		}
	}
	return s, true
}
