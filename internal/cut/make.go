package cut

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
)

// Make cuts parts and the document's kits from its stock.
func Make(doc document.Room, parts []part.Part) (Plan, diag.List, []diag.Assumption) {
	return (*Known)(nil).Make(doc, parts)
}

// Make cuts likewise, and takes what it can from runs before.
func (k *Known) Make(doc document.Room, parts []part.Part) (Plan, diag.List, []diag.Assumption) {
	m := &maker{doc: doc, known: k}
	for _, p := range append(append([]part.Part(nil), parts...), m.kits()...) {
		m.ask(p)
	}
	for _, s := range doc.Stock {
		if kinds := m.kinds(s); len(kinds) > 0 {
			m.lot(s, kinds)
		}
	}
	return m.plan, m.found.Sorted(), m.assumed
}

type maker struct {
	doc     document.Room
	known   *Known
	plan    Plan
	found   diag.List
	assumed []diag.Assumption
}

// mostPieces is more than anybody cuts by hand for one room; a slip of a digit in a count stops here.
const mostPieces = 2000

// ask takes a part if it can be made at all and its stock is there.
func (m *maker) ask(p part.Part) {
	found := p.Check()
	m.found = append(m.found, found...)
	s, ok := m.doc.StockNamed(p.Stock)
	switch {
	case found.Stops():
	case !ok:
		m.found.Add(diag.Unchecked, "part-without-stock", p.At, "{0}: not cut: it is not said what from", "add stock: and the name of a stock", diag.T(full(p)))
	case !m.fits(p, s):
	case len(m.plan.Pieces)+p.Count > mostPieces:
		m.found.Add(diag.Stop, "parts-too-many", p.At, "with {0} there are more than {1} pieces to cut", "check the counts", diag.T(full(p)), diag.N(mostPieces))
	default:
		m.add(p)
	}
}

func (m *maker) add(p part.Part) {
	for c := 1; c <= p.Count; c++ {
		m.plan.Pieces = append(m.plan.Pieces, Piece{Name: copyName(p, c), Part: p, Copy: c, Sawn: p.Cut(), Lot: -1, Used: -1})
	}
}

// full is a part's name with what it belongs to.
func full(p part.Part) string {
	if p.For == "" {
		return p.Name
	}
	return p.For + " > " + p.Name
}

func copyName(p part.Part, c int) string {
	if p.Count < 2 {
		return full(p)
	}
	return full(p) + " " + decimal(c)
}
