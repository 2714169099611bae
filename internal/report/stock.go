package report

import (
	"fmt"

	"dryfit/internal/cut"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/money"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// StockBuy lists the sheets, boards and sticks to buy, and what is used of what is on hand.
func StockBuy(p plan.Plan) Table {
	t := Table{Title: "Sheets, boards and sticks", Empty: "Nothing is cut from stock.", Columns: numbers(text("Stock", "Size", "Buy", "Each", "Cost", "On hand"), 2, 3, 4)}
	for _, l := range p.Cut.Lots {
		for _, b := range l.Buy {
			row := []string{l.Stock, stockSize(p.Style, l, b.Length, b.Width), fmt.Sprint(b.Count), "not given", "", ""}
			if b.Priced {
				row[3], row[4] = Money(p, b.Price), Money(p, b.Price.Times(b.Count))
			}
			t.Rows = append(t.Rows, row)
		}
		for _, u := range l.Used {
			if u.OnHand {
				t.Rows = append(t.Rows, []string{l.Stock, stockSize(p.Style, l, u.Size.Length, u.Size.Width), "", "", "", onHandWords(p, u)})
			}
		}
	}
	return t
}

// onHandWords names a piece that is there already, and where in it one begins that has bad stretches.
func onHandWords(p plan.Plan, u cut.Used) string {
	if u.From > 0 {
		return u.Name + ", from " + p.Style.Format(u.From) + " on"
	}
	return u.Name
}

// Money writes an amount in the document's currency; as a bare number where it names none.
func Money(p plan.Plan, a money.Amount) string {
	if c := p.Document.Buying.Currency; c.Known {
		return c.V.With(a)
	}
	return money.Currency("").Say(a)
}

func stockSize(s unit.Style, l cut.Lot, long, wide unit.Length) string {
	if l.Kind == document.StickStock {
		return s.Fine().Format(long)
	}
	return Flat(s, long, wide)
}

// Flat words a length and a width, finer than the tape where the size is.
func Flat(s unit.Style, long, wide unit.Length) string {
	f := s.Fine()
	return f.Bare(long) + " x " + f.Format(wide)
}

// LotWords says what a lot costs and how far that is the least.
func LotWords(p plan.Plan, l cut.Lot) string {
	v := l.Verdict
	bought := 0
	for _, b := range l.Buy {
		bought += b.Count
	}
	words := Count(len(l.Used), UsedKind(l), UsedKind(l)+"s") + " cut"
	switch {
	case len(l.Used) == 0:
		return "Nothing is cut from it."
	case bought == 0:
		return words + ", all on hand."
	case !v.Priced && v.Cheapest:
		return words + "; a price is missing, so the least stock was looked for: no way takes less."
	case !v.Priced:
		return words + "; a price is missing, so the least stock was looked for; whether less would do is not proven (" + leastWords(p, l) + ")."
	case v.Cheapest:
		return words + ", for " + Money(p, v.Money) + "; no way costs less."
	}
	return words + ", for " + Money(p, v.Money) + "; no way costs less than " + Money(p, v.Lower) + ", so at most " + Money(p, v.Money-v.Lower) + " could be saved."
}

// leastWords says the least stock that is proven to be needed.
func leastWords(p plan.Plan, l cut.Lot) string {
	if l.Kind == document.StickStock {
		return p.Style.Format(unit.Length(l.Verdict.Least)) + " at least, of " + p.Style.Format(unit.Length(l.Verdict.Bought))
	}
	return diag.Area(unit.Area(l.Verdict.Least)).Say(p.Style) + " at least, of " + diag.Area(unit.Area(l.Verdict.Bought)).Say(p.Style)
}
