package web

import (
	"dryfit/internal/document"
	"dryfit/internal/text"
)

// goodsKind is what is asked of a good: what its label says, and what the shop asks for it.
func goodsKind() kind {
	return kind{"goods", "Goods and their prices", "good", "white mortar", []ask{
		{key: "kind", label: "What it is", choices: document.GoodKinds()},
		{key: "from", label: "Who sells it", inches: "tile yard", metric: "tile yard"},
		{key: "color", label: "Color", inches: "white", metric: "white"},
		{key: "yields", label: "It fills, when mixed", inches: "0.45 cu ft per 50 lb", metric: "15 L per 25 kg"},
		{key: "covers", label: "It covers, one coat", inches: "200 sq ft per gal", metric: "5 m2 per L"},
		{key: "water", label: "Water to mix it with", inches: "5.5 qt per 50 lb", metric: "6 L per 25 kg"},
		{key: "pot life", label: "Use a batch within", inches: "2 h", metric: "2 h"},
		{key: "open time", label: "Set tile into it within", inches: "30 min", metric: "30 min"},
	}, false}
}

// priced are the forms for goods and for what all prices have in common.
type priced struct {
	Goods  collection
	Shelf  []pairs // the packs of each good with their prices
	Prices []field
}

func (v *view) priced() (priced, error) {
	c, err := v.collection(goodsKind())
	p := priced{Goods: c, Prices: []field{
		v.field("Currency, three letters", "buying", "currency").like("USD"),
		v.field("Tax on top of the prices", "buying", "tax").like("8.25 %").help("Empty: the prices have it in them."),
	}}
	for _, s := range entriesOf(text.At(v.Tree, []string{"buying", "suppliers"})) {
		p.Prices = append(p.Prices, v.field("Delivery by "+s.Key, "buying", "suppliers", s.Key, "delivery").like("60.00").help("Empty: fetched there."),
			v.field("From order to delivery, "+s.Key, "buying", "suppliers", s.Key, "lead time").like("10 days"))
	}
	for _, g := range entriesOf(v.Tree.Get("goods")) {
		p.Shelf = append(p.Shelf, v.packs(g))
	}
	return p, err
}

// packs asks for the prices of a good's packs, and for one more pack.
func (v *view) packs(g text.Entry) pairs {
	path := []string{"goods", g.Key, "packs"}
	k := pairs{Title: g.Key, Path: pathName(path), Add: "Add the pack"}
	for _, x := range entriesOf(g.Value.Get("packs")) {
		k.Given = append(k.Given, v.field("Price of "+x.Key, append(path, x.Key)...).like("28.50"))
	}
	k.At = field{Name: "new.at", ID: idOf("pack" + k.Path), Label: "A further pack", Example: v.sample("50 lb bag", "25 kg bag")}
	k.Off = field{Name: "new.off", ID: idOf("packprice" + k.Path), Label: "Its price", Example: "28.50"}
	if v.Typed["pair"] == k.Path {
		k.At.Value, k.Off.Value, k.At.Says = v.Typed["new.at"], v.Typed["new.off"], v.refusals()
	}
	return k
}

func entriesOf(n *text.Node) []text.Entry {
	if n == nil {
		return nil
	}
	return n.Entries
}
