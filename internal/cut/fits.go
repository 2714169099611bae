package cut

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// fits holds a part against its stock before anything is cut: is the stock thick and wide enough? Whether it is long enough is
// seen against every size that there is, in tooLarge.
func (m *maker) fits(p part.Part, s document.Stock) bool {
	sawn := p.Cut()
	thick, measured, known := s.Thickness()
	switch {
	case !known || s.Length.Unknown:
		m.found.Add(diag.Unchecked, "stock-unsized", s.At, "{0}: nothing is cut from it: its size is not known", "measure it: size: length x width x thickness", diag.T(s.Name))
		return false
	case sawn.Thick > thick:
		m.found.Add(diag.Stop, "part-thick", p.At, "{0} is {1} thick, and {2} is {3}", "take a stock of {1} or more, or make the part {3} thick", diag.T(full(p)), diag.X(sawn.Thick), diag.T(s.Name), diag.X(thick))
		return false
	case s.Kind == document.StickStock && sawn.Width > s.Width.V:
		m.found.Add(diag.Stop, "part-wide", p.At, "{0} is {1} wide, and {2} is {3}", "take a stick that is wide enough, or glue up the width", diag.T(full(p)), diag.X(sawn.Width), diag.T(s.Name), diag.X(s.Width.V))
		return false
	}
	m.thinner(p, s, sawn, thick, measured)
	return true
}

// thinner tells of work that a part needs besides its cuts, because the stock is thicker or wider.
func (m *maker) thinner(p part.Part, s document.Stock, sawn part.Size, thick unit.Length, measured bool) {
	if s.Kind == document.SheetStock && sawn.Thick < thick {
		from := ""
		if measured {
			from = " as measured"
		}
		m.found.Add(diag.Look, "part-thin", p.At, "{0} is {1} thick, and {2} is {3}{4}: a sheet is not planed", "make the part {3} thick, or take a thinner sheet", diag.T(full(p)), diag.X(sawn.Thick), diag.T(s.Name), diag.X(thick), diag.T(from))
	}
	if s.Kind == document.BoardStock && sawn.Thick < thick {
		m.found.Add(diag.Note, "part-planed", p.At, "{0} is {1} thick, and {2} is {3}: it is planed down", "plane it before it is cut to size", diag.T(full(p)), diag.X(sawn.Thick), diag.T(s.Name), diag.X(thick))
	}
	if s.Kind == document.StickStock && sawn.Width < s.Width.V {
		m.found.Add(diag.Look, "part-ripped", p.At, "{0} is {1} wide, and {2} is {3}: it is ripped after it is cut to length", "take a narrower stick if there is one", diag.T(full(p)), diag.X(sawn.Width), diag.T(s.Name), diag.X(s.Width.V))
	}
}

// tooLarge tells of pieces that no size of the stock holds: whether the grain alone is in the way, how large the largest clear
// stock is, and what would do.
func (m *maker) tooLarge(s document.Stock, sup []supply, k kind) {
	first := m.plan.Pieces[k.pieces[0].piece]
	long, wide, turned := m.largest(sup, k)
	at, name := first.Part.At, diag.T(full(first.Part))
	switch {
	case len(k.pieces) > 1 && k.joined:
		m.found.Add(diag.Stop, "match-too-large", at, "{0} and what it is matched with are {1} x {2} together; the largest clear piece of {3} is {4} x {5}", "match fewer of them, or take a larger stock",
			name, diag.X(k.length), diag.X(k.width), diag.T(s.Name), diag.X(long), diag.X(wide))
	case s.Kind == document.StickStock:
		m.found.Add(diag.Stop, "part-too-large", at, "{0} is {1} long; the longest clear length of {2} is {3}", "scarf it from two, or take a stick of {1} or more", name, diag.X(k.length), diag.T(s.Name), diag.X(long))
	case turned:
		m.found.Add(diag.Stop, "part-grain", at, "{0} is {1} along the grain and {2} across; {3} is {4} x {5}, which holds it only turned, against its grain", "let its grain run across or any way, take a longer stock, or join it from two",
			name, diag.X(k.length), diag.X(k.width), diag.T(s.Name), diag.X(long), diag.X(wide))
	default:
		m.found.Add(diag.Stop, "part-too-large", at, "{0} is {1} x {2}; the largest clear piece of {3} is {4} x {5}", "join it from two, or take a stock of {1} x {2} or more", name, diag.X(k.length), diag.X(k.width), diag.T(s.Name), diag.X(long), diag.X(wide))
	}
}

// largest returns the clear stock of the greatest area, and whether some clear stock would hold the pieces turned.
func (m *maker) largest(sup []supply, k kind) (long, wide unit.Length, turned bool) {
	for _, s := range sup {
		for _, r := range s.clear() {
			if r.W().Times(r.H()) > long.Times(wide) {
				long, wide = r.W(), r.H()
			}
			turned = turned || k.width <= r.W() && k.length <= r.H()
		}
	}
	return long, wide, turned
}
