package document

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/money"
)

// checkGoods holds goods and prices against each other.
func (r *reader) checkGoods(m *Room) {
	for _, g := range m.Goods {
		r.checkInstead(m, g)
		r.checkYield(g)
	}
	r.checkPrices(m)
}

// checkInstead: an alternative stands for a good of its own kind that is itself part of the plan.
func (r *reader) checkInstead(m *Room, g Good) {
	i := slices.IndexFunc(m.Goods, func(o Good) bool { return g.InsteadOf.Known && o.Name == g.InsteadOf.V })
	switch {
	case i < 0:
	case m.Goods[i].Name == g.Name:
		r.stop("instead-of-itself", g.InsteadOf.At, "{0} can not stand for itself", "name the good that it is compared with", diag.T(g.Name))
	case m.Goods[i].InsteadOf.Known:
		r.stop("instead-of-instead", g.InsteadOf.At, "{0} stands for another good itself", "name the good that is part of the plan", diag.T(g.InsteadOf.V))
	case m.Goods[i].Kind != g.Kind:
		r.stop("instead-of-other", g.InsteadOf.At, "{0} is {1} and {2} is {3}", "compare goods of one kind", diag.T(g.Name), diag.T(g.Kind.String()), diag.T(g.InsteadOf.V), diag.T(m.Goods[i].Kind.String()))
	}
}

// checkYield: a label that says both what a powder fills and how much goes into a volume must say the same twice, to a tenth.
func (r *reader) checkYield(g Good) {
	if !g.Yields.Known || !g.Density.Known {
		return
	}
	y, d := g.Yields.V, g.Density.V
	one := float64(y.Per.N) / float64(y.Amount.N)
	two := float64(d.Amount.N) / float64(d.Per.N)
	if one > 1.1*two || two > 1.1*one {
		r.found.Add(diag.Look, "yield-differs", g.Density.At, "{0}: what it yields and its density say different things", "read the label again; the yield counts", diag.T(g.Name))
	}
}

// priced is a price with where it stands.
type priced struct {
	Value[money.Amount]
	of string
}

// prices are all that are written, in the document's order.
func (m *Room) prices() []priced {
	var all []priced
	for _, t := range m.Tiles {
		p := t.Price
		all = append(all, priced{Value[money.Amount]{V: p.V.Amount, Known: p.Known, At: p.At}, t.Name})
	}
	for _, g := range m.Goods {
		for _, p := range g.Packs {
			all = append(all, priced{p.Price, g.Name})
		}
	}
	for _, s := range m.Buying.Suppliers {
		all = append(all, priced{s.Delivery, s.Name}, priced{s.FreeFrom, s.Name})
	}
	return slices.DeleteFunc(all, func(p priced) bool { return !p.Known })
}

// checkPrices: a price needs a currency, and no more decimals than that has.
func (r *reader) checkPrices(m *Room) {
	c := m.Buying.Currency
	for _, p := range m.prices() {
		switch {
		case c.Known && !c.V.Exact(p.V):
			r.found.Add(diag.Look, "price-decimals", p.At, "the price of {0} has more decimals than {1} has", "write it as the shop asks it", diag.T(p.of), diag.T(string(c.V)))
		case !c.Known && !c.Unknown:
			r.found.Add(diag.Unchecked, "currency-missing", p.At, "the price of {0} is in no currency: costs are not reckoned", "add buying: {currency: USD}", diag.T(p.of))
			return // once is enough: one line mends them all
		}
	}
}
