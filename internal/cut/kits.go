package cut

import (
	"strconv"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

func decimal(n int) string { return strconv.Itoa(n) }

// kits makes parts of the document's plain lists. A size that is silent is the stock's.
func (m *maker) kits() []part.Part {
	var out []part.Part
	for _, k := range m.doc.Kits {
		for _, p := range k.Parts {
			if q, ok := m.kitPart(k, p); ok {
				out = append(out, q)
			}
		}
	}
	return out
}

func (m *maker) kitPart(k document.Kit, p document.KitPart) (part.Part, bool) {
	q := part.Part{Name: p.Name, At: p.At, For: k.Name, Count: p.Count.Or(1), Stock: p.Stock.Text, Match: p.Match.V, Grain: part.Grain(p.Grain.Or(document.GrainAlong))}
	s, _ := m.doc.StockNamed(q.Stock)
	thick, _, known := s.Thickness()
	q.Size = part.Size{Length: p.Length.V, Width: p.Width.Or(s.Width.V), Thick: p.Thick.Or(thick)}
	sheet := s.Kind != document.StickStock && !p.Width.Known
	switch {
	case p.Length.Unknown || p.Width.Unknown || p.Thick.Unknown || p.Count.Unknown || p.Banding.Unknown || p.Oversize.Unknown:
		m.unsized(p.At, full(q), "a size of it is unknown")
	case sheet:
		m.unsized(p.At, full(q), "its width is missing")
	case !p.Thick.Known && !known || !p.Width.Known && !s.Width.Known:
		m.unsized(p.At, full(q), "the size of its stock is not known")
	default:
		q.Over = part.Over{Length: p.Oversize.V, Width: widthOver(s, p.Oversize.V)}
		for _, e := range p.Band {
			q.Bands = append(q.Bands, part.Band{On: edgeSide[e], Thick: p.Banding.V})
		}
		return q, true
	}
	return q, false
}

// widthOver is what a part is cut wider: nothing, where its stock is as wide as it is.
func widthOver(s document.Stock, over unit.Length) unit.Length {
	if s.Kind == document.StickStock {
		return 0
	}
	return over
}

var edgeSide = [...]part.Side{document.FrontEdge: part.Front, document.RearEdge: part.Rear, document.LeftEnd: part.Left, document.RightEnd: part.Right}

func (m *maker) unsized(at diag.Place, name, why string) {
	m.found.Add(diag.Unchecked, "part-unsized", at, "{0}: not cut: {1}", "write its length x width x thickness", diag.T(name), diag.T(why))
}
