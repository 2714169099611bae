package document

import "slices"

// StockUse is one thing that takes a stock: a cabinet, a top, a trim, or a face that is lined with it.
type StockUse struct{ Kind, Name string }

// UsesOf lists what takes a stock, in the document's order. Plain kits are not among them: no job waits for these.
func (m *Room) UsesOf(stock string) []StockUse {
	var all []StockUse
	for _, c := range m.Cabinets {
		if slices.ContainsFunc(c.Stock.all(), func(n Name) bool { return n.Text == stock }) {
			all = append(all, StockUse{"cabinet", c.Name})
		}
	}
	for _, t := range m.Tops {
		if t.Stock.Text == stock {
			all = append(all, StockUse{"top", t.Name})
		}
	}
	for _, t := range m.Trim {
		if t.Stock.Text == stock {
			all = append(all, StockUse{"trim", t.Name})
		}
	}
	if s, ok := m.StockNamed(stock); ok {
		for _, c := range s.Sale.Covers {
			all = append(all, StockUse{"face", c.Text})
		}
	}
	return all
}

// all lists the goods that the parts of a cabinet are cut from.
func (s CabinetStock) all() []Name {
	return []Name{s.Panels, s.Back, s.Shelves, s.Fronts, s.FrontPanels, s.Frame, s.Legs, s.Drawers, s.DrawerBottoms, s.Toe}
}
