package cut

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/money"
	"dryfit/internal/unit"
)

// prices are what the optimizers minimize: money in its greatest common coin where every price is known, else size.
type prices struct {
	known bool
	each  []int64 // by supply; 0 for what is on hand
	coin  int64   // what one of these is worth: thousandths of money, or counts of size
	lacks []supply
}

// priceList weighs the supplies. Where one price is missing, the least size is looked for: no sum could be told.
func priceList(sup []supply, kind document.StockKind) prices {
	p := prices{known: true, each: make([]int64, len(sup))}
	for _, s := range sup {
		if !s.onHand && !s.price.Known {
			p.known = false
			p.lacks = append(p.lacks, s)
		}
	}
	for i, s := range sup {
		if s.onHand {
			continue
		}
		if p.each[i] = int64(s.price.V); !p.known {
			p.each[i] = int64(s.size(kind))
		}
		p.coin = gcd(p.coin, p.each[i])
	}
	p.shrink()
	return p
}

// size is what is compared where prices are missing: the length of a stick, the area of a sheet.
func (s supply) size(kind document.StockKind) unit.Area {
	if kind == document.StickStock {
		return unit.Area(s.length)
	}
	return s.length.Times(s.width)
}

// mostPrice is what the optimizers take.
const mostPrice = 1 << 30

// shrink counts in the greatest common coin, and in a coarser one, rounded up, where that is not small enough.
func (p *prices) shrink() {
	p.coin = max(p.coin, 1)
	most := int64(0)
	for _, e := range p.each {
		most = max(most, e)
	}
	for most/p.coin >= mostPrice {
		p.coin *= 2
	}
	for i, e := range p.each {
		p.each[i] = (e + p.coin - 1) / p.coin
	}
}

func gcd(a, b int64) int64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// judgePrices tells of prices that are missing.
func (m *maker) judgePrices(s document.Stock, p prices) {
	for _, l := range p.lacks {
		m.found.Add(diag.Unchecked, "price-missing", l.at, "{0}, {1} x {2}: its price is missing, so the least stock is bought and what it costs is not known", "add its price", diag.T(s.Name), diag.X(l.length), diag.X(l.width))
	}
}

// verdict reads what the optimizers say. Counted prices may be rounded up by less than a coin each; then nothing is called proven.
func (c *cutter) verdict(spent, lower int64, by string, complete bool) {
	v := &c.lot.Verdict
	exact := c.exactPrices()
	v.By, v.Cheapest, v.Best = by, exact && spent <= lower, exact && complete
	if c.prices.known {
		v.Money = c.spent()
		if exact {
			v.Lower = money.Amount(lower * c.prices.coin)
		}
		return
	}
	v.Bought = c.bought()
	if exact {
		v.Least = lower * c.prices.coin
	}
}

func (c *cutter) exactPrices() bool {
	for i, s := range c.sup {
		whole := int64(s.price.V)
		if !c.prices.known {
			whole = int64(s.size(c.lot.Kind))
		}
		if !s.onHand && c.prices.each[i]*c.prices.coin != whole {
			return false
		}
	}
	return true
}

func (c *cutter) spent() (sum money.Amount) {
	for _, u := range c.lot.Used {
		if !u.OnHand {
			sum += c.sup[c.sold(u)].price.V
		}
	}
	return sum
}

func (c *cutter) bought() (sum int64) {
	for _, u := range c.lot.Used {
		if !u.OnHand {
			sum += int64(c.sup[c.sold(u)].size(c.lot.Kind))
		}
	}
	return sum
}
