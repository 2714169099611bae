package cut

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// lot cuts all that is asked of one stock.
func (m *maker) lot(s document.Stock, kinds []kind) {
	m.judgeSaw(s)
	if s.Sale.Plain.V && !plain(s) {
		m.found.Add(diag.Look, "grain-of-wood", s.Sale.Plain.At, "{0} is solid wood: its parts follow its grain all the same", "take grain: none out", diag.T(s.Name))
	}
	b := m.saw(s)
	thick, _, _ := s.Thickness()
	l := &Lot{Stock: s.Name, At: s.At, Kind: s.Kind, Thick: thick, Plain: plain(s), Saw: b.name, Kerf: b.kerf, First: b.first}
	if s.Kind == document.StickStock {
		l.Width = s.Width.V
	}
	sup := m.supplies(s)
	p := priceList(sup, s.Kind)
	m.judgePrices(s, p)
	c := &cutter{maker: m, stock: s, lot: l, sup: sup, prices: p, kinds: kinds, next: make([]int, len(kinds)), index: len(m.plan.Lots)}
	if s.Kind == document.StickStock {
		c.sticks()
	} else {
		c.sheets()
	}
	l.Verdict.Priced = p.known
	c.purchases()
	c.offcuts()
	c.judge()
	m.plan.Lots = append(m.plan.Lots, *l)
}

// plain reports whether a stock has no grain. Solid wood always has one.
func plain(s document.Stock) bool { return s.Sale.Plain.V && s.Kind == document.SheetStock }

// cutter fills one lot.
type cutter struct {
	*maker
	stock  document.Stock
	lot    *Lot
	sup    []supply
	prices prices
	kinds  []kind
	next   []int // of each kind, the first piece that is not placed
	index  int   // of the lot
}

// use opens a further piece of stock.
func (c *cutter) use(i int) *Used {
	s := c.sup[i]
	c.lot.Used = append(c.lot.Used, Used{Number: len(c.lot.Used) + 1, Name: s.name, OnHand: s.onHand, Trim: s.trim, Bad: s.bad})
	u := &c.lot.Used[len(c.lot.Used)-1]
	u.Size.Length, u.Size.Width, u.Size.Thick = s.length, s.width, c.lot.Thick
	return u
}

// place takes the next piece of a kind.
func (c *cutter) place(kind int) placed {
	p := c.kinds[kind].pieces[c.next[kind]]
	c.next[kind]++
	c.settle(p)
	return p
}

// settle notes where a piece is cut.
func (c *cutter) settle(p placed) {
	c.plan.Pieces[p.piece].Lot = c.index
	c.plan.Pieces[p.piece].Used = len(c.lot.Used) - 1
}

// purchases counts what is bought, by size.
func (c *cutter) purchases() {
	counts := make([]int, len(c.sup))
	for _, u := range c.lot.Used {
		if !u.OnHand {
			counts[c.sold(u)]++
		}
	}
	for i, n := range counts {
		if n > 0 {
			s := c.sup[i]
			c.lot.Buy = append(c.lot.Buy, Purchase{Length: s.length, Width: s.width, Count: n, Price: s.price.V, Priced: s.price.Known, At: s.at})
		}
	}
}

// sold finds the size that a bought piece is of.
func (c *cutter) sold(u Used) int {
	for i, s := range c.sup {
		if !s.onHand && s.length == u.Size.Length && s.width == u.Size.Width {
			return i
		}
	}
	panic("cut: bought in no size")
}

// judge tells of pieces that no stock is left for.
func (c *cutter) judge() {
	for _, i := range c.lot.Lacking {
		p := c.plan.Pieces[i]
		c.found.Add(diag.Stop, "stock-lacking", p.Part.At, "nothing is left of {1} for {0}, {2} x {3}", "let more be bought (sold: yes), or list what else is on hand", diag.T(p.Name), diag.T(c.stock.Name), diag.X(p.Sawn.Length), diag.X(p.Sawn.Width))
	}
}

// leastKept is the least side of an offcut that is kept: our own judgment; about the least that a saw with a fence cuts safely.
func (m *maker) leastKept() unit.Length {
	if m.doc.Units == unit.Millimetres {
		return 100 * unit.Millimetre
	}
	return 4 * unit.Inch
}
