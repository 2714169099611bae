package order

import (
	"dryfit/internal/cut"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/schedule"
	"dryfit/internal/unit"
)

// stock is the line of one stock of wood: the sheets, boards or sticks that the cutting plan buys. What it costs was looked for there.
func (m *maker) stock(lot cut.Lot) Line {
	l := Line{What: stockWords(lot.Kind), Good: lot.Stock, At: lot.At, Known: true, Priced: m.currency(), Proven: lot.Verdict.Cheapest}
	m.date(&l, []schedule.Kind{schedule.Cabinet, schedule.GlueUp, schedule.Trim, schedule.Scribe}, nil)
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

func stockWords(k document.StockKind) string {
	switch k {
	case document.SheetStock:
		return "sheets"
	case document.BoardStock:
		return "boards"
	}
	return "sticks"
}
