package order

import (
	"slices"

	"dryfit/internal/diag"
)

// trips gathers the lines by supplier, in the order in which they come, and says what each delivery costs.
func (m *maker) trips() {
	for _, l := range m.out.Lines {
		if len(l.Packs) == 0 {
			continue
		}
		i := slices.IndexFunc(m.out.Trips, func(t Trip) bool { return t.Supplier == l.Supplier })
		if i < 0 {
			i = len(m.out.Trips)
			m.out.Trips = append(m.out.Trips, Trip{Supplier: l.Supplier})
		}
		t := &m.out.Trips[i]
		t.Lines = append(t.Lines, m.tripName(l))
		t.Goods += l.Cost
	}
	for i := range m.out.Trips {
		m.deliver(&m.out.Trips[i])
	}
}

// tripName is what a line is called among what one supplier sends: wood and board by their names, for "sheets" says little.
func (m *maker) tripName(l Line) string {
	if _, ok := m.doc.StockNamed(l.Good); ok && !l.Tile && l.What != "board" {
		return l.Good
	}
	return l.What
}

func (m *maker) deliver(t *Trip) {
	s, ok := m.supplier(t.Supplier)
	if ok && m.currency() && (s.Delivery.Unknown || s.Delivery.Known && s.FreeFrom.Unknown) {
		m.findings.Add(diag.Unchecked, "delivery-missing", s.At, "not known: what the delivery by {0} costs, or from which sum on it is free", "ask, and write it with the supplier", diag.T(s.Name))
	}
	if !ok || !s.Delivery.Known || !m.currency() {
		return
	}
	t.Delivered = true
	if t.Free = s.FreeFrom.Known && t.Goods >= s.FreeFrom.V; !t.Free {
		t.Delivery = s.Delivery.V
	}
}

// total adds the lines up. Tax is reckoned once, on the goods.
func (m *maker) total() {
	p := &m.out
	for _, l := range p.Lines {
		if !l.Priced {
			p.Unpriced = append(p.Unpriced, l.What)
			continue
		}
		p.Goods += l.Cost
	}
	for _, t := range p.Trips {
		p.Delivery += t.Delivery
	}
	if tax := m.doc.Buying.Tax; tax.Known && tax.V > 0 {
		p.Tax = p.Goods.Tax(tax.V, p.Currency)
		m.assumed = append(m.assumed, diag.Assumption{At: tax.At, Text: "the tax is on the goods and not on their delivery", Source: "ask the supplier"})
	}
	p.Total = p.Goods + p.Delivery + p.Tax
	p.Whole = m.currency() && len(p.Unpriced) == 0 && !m.doc.Buying.Tax.Unknown && !m.deliveryUnknown()
}

// deliveryUnknown: what some supplier's delivery costs, or from which sum on it is free, is written as unknown.
func (m *maker) deliveryUnknown() bool {
	return slices.ContainsFunc(m.out.Trips, func(t Trip) bool {
		s, ok := m.supplier(t.Supplier)
		return ok && (s.Delivery.Unknown || s.FreeFrom.Unknown && t.Delivered)
	})
}
