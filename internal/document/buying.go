package document

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/money"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Buying is what prices are in, and who sells.
type Buying struct {
	At        diag.Place
	Currency  Value[money.Currency]
	Tax       Value[unit.Ratio] // on top of the prices as they are written
	Suppliers []Supplier
}

// Supplier is one shop, yard or sender; one visit or one delivery is one trip.
type Supplier struct {
	Name      string
	At        diag.Place
	Delivery  Value[money.Amount] // for one delivery; silent: goods are fetched
	FreeFrom  Value[money.Amount] // the sum of goods from which on delivery costs nothing
	LeadTime  Value[unit.Minutes]
	TakesBack Value[bool] // whole packs, unopened
}

// TilePrice is what tile costs, by the box, by the tile or by an area.
type TilePrice struct {
	Amount money.Amount
	By     TileUnit
	Area   unit.Quantity // by area: how much
}

// TileUnit is what a tile's price counts.
type TileUnit uint8

const (
	ByBox TileUnit = iota
	ByTile
	ByTileArea
)

var currency = scalar("a currency by its three letters: USD", `^[A-Z]{3}$`, func(s string) (money.Currency, string) {
	if c := money.Currency(s); c.Valid() {
		return c, ""
	}
	return "", "not three capital letters"
})

var buying = record("prices and who sells", func(b *Buying, at diag.Place) { b.At = at },
	fact("currency", "the currency of every price, by its three letters", currency, func(b *Buying) *Value[money.Currency] { return &b.Currency }).like("USD"),
	fact("tax", "the tax that comes on top of every price", share, func(b *Buying) *Value[unit.Ratio] { return &b.Tax }).unless("none is added").like("8.25 %"),
	part("suppliers", "who sells, by name", named("supplier", supplier, func(s *Supplier, e text.Entry) { s.Name, s.At = e.Key, e.At }), func(b *Buying) *[]Supplier { return &b.Suppliers }).like("{tile yard: {delivery: 60.00, lead time: 10 days}}"),
)

var supplier = record("who sells", func(s *Supplier, at diag.Place) { s.At = at },
	fact("delivery", "what one delivery costs", price, func(s *Supplier) *Value[money.Amount] { return &s.Delivery }).unless("goods are fetched").like("60.00"),
	fact("free from", "the sum of goods from which on delivery costs nothing", price, func(s *Supplier) *Value[money.Amount] { return &s.FreeFrom }).like("500.00"),
	fact("lead time", "from the order to the delivery", duration, func(s *Supplier) *Value[unit.Minutes] { return &s.LeadTime }).like("10 days"),
	fact("takes back", "whether whole, unopened packs can go back", yesNo, func(s *Supplier) *Value[bool] { return &s.TakesBack }).like("yes"),
)

const tilePriceSay = "a price: 84.00 per box, 4.50 per tile or 6.49 per sq ft"

// tilePrice reads "84.00 per box", "4.50 per tile" or "6.49 per sq ft".
var tilePrice = form[TilePrice]{&shape{say: tilePriceSay, pattern: `^[0-9]+(\.[0-9]{1,3})? per .+$`}, func(r *reader, n *text.Node) (TilePrice, bool) {
	if !r.want(n, text.Scalar, tilePriceSay) {
		return TilePrice{}, false
	}
	t, why := parseTilePrice(strings.TrimSpace(n.Text), r.units)
	if why != "" {
		r.misread(n, &shape{say: tilePriceSay}, why)
	}
	return t, why == ""
}}

func parseTilePrice(s string, bare unit.System) (t TilePrice, why string) {
	amount, per, ok := strings.Cut(s, " per ")
	if !ok {
		return t, "per box, per tile or per sq ft?"
	}
	var err error
	if t.Amount, err = money.Parse(strings.TrimSpace(amount)); err != nil {
		return t, err.Error() + "; the currency stands once, under buying"
	}
	switch per = strings.TrimSpace(per); per {
	case "box":
		t.By = ByBox
	case "tile", "piece":
		t.By = ByTile
	default:
		t.By = ByTileArea
		if notDigit([]rune(per + "?")[0]) {
			per = "1 " + per
		}
		q, rest, err := unit.ParseQuantity(per, bare)
		if err != nil || rest != "" || q.Of != unit.ByArea {
			return t, "per box, per tile or per sq ft?"
		}
		t.Area = q
	}
	return t, ""
}
