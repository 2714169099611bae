package cut

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// blade is the saw that a stock is cut with.
type blade struct {
	name  string
	kerf  unit.Length
	first document.FirstCut
}

// saw finds the first listed saw that is used for a kind of stock. A kerf that is not told is assumed.
func (m *maker) saw(s document.Stock) blade {
	i := slices.IndexFunc(m.doc.Tools.Saws, func(w document.Saw) bool { return len(w.Cuts) == 0 || slices.Contains(w.Cuts, s.Kind) })
	if i < 0 {
		return blade{kerf: m.usualKerf()}
	}
	w := m.doc.Tools.Saws[i]
	return blade{w.Name, w.Kerf.Or(m.usualKerf()), w.First.V}
}

// usualKerf is a full kerf of a table saw or circular saw: common practice.
func (m *maker) usualKerf() unit.Length {
	if m.doc.Units == unit.Millimetres {
		return 3 * unit.Millimetre
	}
	return unit.Inch / 8
}

// judgeSaw tells what is assumed of a saw, and whether it reaches through the stock.
func (m *maker) judgeSaw(s document.Stock) {
	b := m.saw(s)
	i := slices.IndexFunc(m.doc.Tools.Saws, func(w document.Saw) bool { return w.Name == b.name })
	if i < 0 || !m.doc.Tools.Saws[i].Kerf.Known {
		m.assumed = append(m.assumed, diag.Assumption{At: m.doc.Tools.At, Text: "{0} is cut with a kerf of {1}", Values: []diag.Value{diag.T(s.Name), diag.X(b.kerf)}, Source: "common practice"})
	}
	if i < 0 {
		return
	}
	w := m.doc.Tools.Saws[i]
	thick, _, known := s.Thickness()
	switch {
	case !known:
	case !w.Reach.Known:
		m.found.Add(diag.Unchecked, "saw-reach-unknown", w.At, "not checked: whether {0} cuts through {1}: its reach is missing", "measure how deep it cuts: reach:", diag.T(w.Name), diag.T(s.Name))
	case w.Reach.V < thick:
		m.found.Add(diag.Stop, "saw-reach", w.At, "{0} cuts {1} deep, and {2} is {3} thick", "cut from both faces, or take a saw that cuts {3} or more", diag.T(w.Name), diag.X(w.Reach.V), diag.T(s.Name), diag.X(thick))
	}
}
