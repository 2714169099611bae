package order

import (
	"slices"

	"dryfit/internal/calendar"
	"dryfit/internal/cut"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/schedule"
	"dryfit/internal/unit"
)

// stock is the line of one stock of wood: the sheets, boards or sticks that the cutting plan buys. What it costs was looked for there.
func (m *maker) stock(lot cut.Lot) Line {
	l := Line{What: stockWords(lot.Kind), Good: lot.Stock, At: lot.At, Known: true, Priced: m.currency(), Proven: lot.Verdict.Cheapest}
	if s, ok := m.doc.StockNamed(lot.Stock); ok {
		m.supply(&l, s.Supply)
	}
	m.dateBy(&l, m.stockNeeded)
	style := unit.DefaultStyle(m.doc.Units)
	for _, b := range lot.Buy {
		p := Packs{Name: style.Bare(b.Length) + " " + style.System.String() + " long", Size: unit.Count(1), Count: b.Count, Price: b.Price, Priced: b.Priced && m.currency()}
		if lot.Kind == document.SheetStock {
			p.Name = style.Bare(b.Length) + " x " + style.Bare(b.Width) + " " + style.System.String()
		}
		if p.Priced {
			p.Sum = p.Price.Times(p.Count)
		}
		l.Packs = append(l.Packs, p)
		l.Need = unit.Count(int(l.Need.N) + b.Count)
		l.Cost += p.Sum
		l.Priced = l.Priced && p.Priced
	}
	l.Have, l.Left = l.Need, unit.Count(0)
	if !l.Priced {
		l.Cost = 0
	}
	if !l.Priced && m.currency() {
		m.findings.Add(diag.Unchecked, "price-missing", lot.At, "not priced: {0}; a price is missing", "write what the shop asks for it", diag.T(lot.Stock))
	}
	return l
}

// stockNeeded is the latest start of the first job, not done yet, on anything that takes a stock.
func (m *maker) stockNeeded(l Line) (by calendar.Moment, ok bool) {
	uses := m.doc.UsesOf(l.Good)
	return first(m.days, schedule.StockJobs(), func(t schedule.Task) bool {
		return slices.ContainsFunc(uses, func(u document.StockUse) bool { return schedule.TakesStock(t, u) })
	})
}

func stockWords(k document.StockKind) string {
	switch k {
	case document.SheetStock:
		return "sheets"
	case document.BoardStock:
		return "boards"
	}
	return "sticks"
}
