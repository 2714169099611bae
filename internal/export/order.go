package export

import (
	"dryfit/internal/order"
	"dryfit/internal/plan"
)

// shopping is the order.
type shopping struct {
	Currency string     `json:"currency,omitempty" doc:"code of ISO 4217; absent: not told, and nothing is added up"`
	Lines    []purchase `json:"lines" doc:"what to buy"`
	Trips    []trip     `json:"trips" doc:"by supplier"`
	Compared []compared `json:"compared" doc:"goods held against those of the plan; in no total"`
	Goods    *price     `json:"goods,omitempty" doc:"sum of the lines that have a price"`
	Delivery *price     `json:"delivery,omitempty" doc:"sum of the trips' deliveries"`
	Tax      *price     `json:"tax,omitempty" doc:"on the goods"`
	Total    *price     `json:"total,omitempty" doc:"goods, delivery and tax"`
	Whole    bool       `json:"whole" doc:"every line has a price, so the total is the whole cost"`
	Unpriced []string   `json:"unpriced" doc:"what has no price"`
}

// purchase is one good with its packs.
type purchase struct {
	What      string   `json:"what" doc:"in words"`
	Good      string   `json:"good,omitempty" doc:"the user's name of it; absent: none is chosen"`
	Tile      bool     `json:"tile" doc:"it is a tile, of which goods tells more"`
	At        place    `json:"at" doc:"in the document"`
	Supplier  string   `json:"supplier,omitempty" doc:"the user's name of it; absent: not told"`
	Need      *amount  `json:"need,omitempty" doc:"absent: not reckoned"`
	InAll     *amount  `json:"inAll,omitempty" doc:"of what comes back and serves again: how many are used over all days; need is the most at one time"`
	Packs     []packs  `json:"packs" doc:"to buy"`
	Have      *amount  `json:"have,omitempty" doc:"in all those packs"`
	Left      *amount  `json:"left,omitempty" doc:"over what is needed"`
	Back      []packs  `json:"back" doc:"whole packs that can go back if nothing is wasted"`
	Cost      *price   `json:"cost,omitempty" doc:"absent: not known"`
	Typical   bool     `json:"typical" doc:"the need rests on a figure that is no label's"`
	Proven    bool     `json:"proven" doc:"no other choice of packs costs less"`
	Lead      *minutes `json:"lead,omitempty" doc:"from the order to the delivery; absent: not known"`
	OrderedOn string   `json:"orderedOn,omitempty" doc:"date; absent: not ordered"`
	NeedBy    string   `json:"needBy,omitempty" doc:"date of the latest start of the first job that takes it; absent: the days do not tell"`
	OrderBy   string   `json:"orderBy,omitempty" doc:"date: that less the lead time; absent: not known"`
}

// packs is a number of one pack.
type packs struct {
	Name  string `json:"name" doc:"as the document has it"`
	Size  amount `json:"size" doc:"of one"`
	Count int    `json:"count" doc:"how many"`
	Price *price `json:"price,omitempty" doc:"of one; absent: not known"`
	Sum   *price `json:"sum,omitempty" doc:"of all; absent: not known"`
}

// trip is all that one supplier sends, or that is fetched there.
type trip struct {
	Supplier  string   `json:"supplier,omitempty" doc:"absent: goods of which no supplier is told"`
	Lines     []string `json:"lines" doc:"what"`
	Goods     price    `json:"goods" doc:"sum of those that have a price"`
	Delivery  price    `json:"delivery" doc:"what it costs"`
	Delivered bool     `json:"delivered" doc:"it is sent; else it is fetched"`
	Free      bool     `json:"free" doc:"the sum of goods makes the delivery cost nothing"`
}

// compared is a good held against one of the plan.
type compared struct {
	Line      purchase `json:"line" doc:"as if it were bought"`
	InsteadOf string   `json:"insteadOf" doc:"the good of the plan"`
	More      *price   `json:"more,omitempty" doc:"than that; less than 0: it costs less; absent: not known"`
}

func shoppingOf(p plan.Plan) shopping {
	o := p.Order
	told := o.Currency != ""
	return shopping{Currency: string(o.Currency), Lines: list(o.Lines, purchaseOf), Trips: list(o.Trips, tripOf),
		Compared: list(o.Compared, func(c order.Compared) compared {
			return compared{purchaseOf(c.Line), c.InsteadOf, known(price(c.More), c.Known)}
		}),
		Goods: known(price(o.Goods), told), Delivery: known(price(o.Delivery), told), Tax: known(price(o.Tax), told), Total: known(price(o.Total), told),
		Whole: o.Whole, Unpriced: list(o.Unpriced, func(s string) string { return s })}
}

func purchaseOf(l order.Line) purchase {
	bought := len(l.Packs) > 0
	return purchase{What: l.What, Good: l.Good, Tile: l.Tile, At: placeOf(orPath(l.At, "goods")), Supplier: l.Supplier, Need: knownAmount(l.Need, l.Known), InAll: knownAmount(l.InAll, l.Reused),
		Packs: list(l.Packs, packsOf), Have: knownAmount(l.Have, bought), Left: knownAmount(l.Left, bought), Back: list(l.Back, packsOf), Cost: known(price(l.Cost), l.Priced),
		Typical: l.Typical, Proven: l.Proven, Lead: known(minutes(l.Lead), l.LeadKnown), OrderedOn: l.OrderedOn, NeedBy: l.NeedBy, OrderBy: l.OrderBy}
}

func packsOf(k order.Packs) packs {
	return packs{k.Name, amountOf(k.Size), k.Count, known(price(k.Price), k.Priced), known(price(k.Sum), k.Priced)}
}

func tripOf(t order.Trip) trip {
	return trip{t.Supplier, list(t.Lines, func(s string) string { return s }), price(t.Goods), price(t.Delivery), t.Delivered, t.Free}
}
