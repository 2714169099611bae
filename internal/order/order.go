// Package order turns what is needed into what is bought: packs that shops sell, at the least cost that covers the need, by
// supplier, with tax and delivery.
//
// It takes the document, the tile plan and the takeoff, and gives lines whose sums add up to the totals to the coin: a line
// is rounded once, totals only add. What has no price is listed and in no total; what is compared with another good is
// priced and in no total either.
package order

import (
	"slices"

	"dryfit/internal/cut"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/money"
	"dryfit/internal/schedule"
	"dryfit/internal/takeoff"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// Plan is the order.
type Plan struct {
	Currency money.Currency `json:"currency,omitempty"`
	Lines    []Line         `json:"lines"`
	Trips    []Trip         `json:"trips"`
	Compared []Compared     `json:"compared"`
	// Totals of what has a price. They are the whole cost if Whole.
	Goods    money.Amount `json:"goods"`
	Delivery money.Amount `json:"delivery"`
	Tax      money.Amount `json:"tax"`
	Total    money.Amount `json:"total"`
	Whole    bool         `json:"whole"`
	Unpriced []string     `json:"unpriced"` // what of the lines has no price
}

// Line is one good with the packs to buy.
type Line struct {
	What     string        `json:"what"`
	Good     string        `json:"good,omitempty"` // "" where the document names none
	Tile     bool          `json:"tile"`
	At       diag.Place    `json:"at"`
	Supplier string        `json:"supplier,omitempty"`
	Need     unit.Quantity `json:"need"`
	Known    bool          `json:"known"` // how much is needed
	// InAll is how many are used over all days of what comes back and serves again; Need is then the most at one time. Valid if Reused.
	InAll   unit.Quantity `json:"inAll"`
	Reused  bool          `json:"reused"`
	Packs   []Packs       `json:"packs"`
	Have    unit.Quantity `json:"have"` // in all those packs
	Left    unit.Quantity `json:"left"` // over what is needed
	Back    []Packs       `json:"back"` // whole packs that can go back if nothing is wasted
	Cost    money.Amount  `json:"cost"`
	Priced  bool          `json:"priced"`
	Typical bool          `json:"typical"` // the need rests on a figure that no label gave
	Proven  bool          `json:"proven"`  // no other choice of packs costs less
	// Lead is the time from the order to the delivery; valid if LeadKnown. OrderedOn is a date, "" if it is not ordered yet.
	Lead      unit.Minutes `json:"lead"`
	LeadKnown bool         `json:"leadKnown"`
	OrderedOn string       `json:"orderedOn,omitempty"`
	// NeedBy is the date of the latest start of the first job that takes it, OrderBy that less the lead time; "" where the days do not tell.
	NeedBy  string `json:"needBy,omitempty"`
	OrderBy string `json:"orderBy,omitempty"`
}

// Packs is a number of one pack.
type Packs struct {
	Name   string        `json:"name"`
	Size   unit.Quantity `json:"size"`
	Count  int           `json:"count"`
	Price  money.Amount  `json:"price"` // of one
	Priced bool          `json:"priced"`
	Sum    money.Amount  `json:"sum"`
}

// Trip is all that one supplier sends, or that is fetched there.
type Trip struct {
	Supplier  string       `json:"supplier"` // "" for goods of which no supplier is told
	Lines     []string     `json:"lines"`
	Goods     money.Amount `json:"goods"`
	Delivery  money.Amount `json:"delivery"`
	Delivered bool         `json:"delivered"` // it is sent, and not fetched
	Free      bool         `json:"free"`      // the sum of goods makes it cost nothing
}

// Compared is a good held against the one that it could stand for.
type Compared struct {
	Line      Line         `json:"line"`
	InsteadOf string       `json:"insteadOf"`
	More      money.Amount `json:"more"` // than the good in the plan; negative: it costs less
	Known     bool         `json:"known"`
}

// Make chooses the packs and adds up.
func Make(doc document.Room, tiles tiling.Plan, sawn cut.Plan, needed takeoff.Plan, days schedule.Plan) (Plan, diag.List, []diag.Assumption) {
	m := &maker{doc: doc, days: days, clips: map[string]int{}}
	for _, p := range needed.Pieces {
		m.clips[p.Face+"\n"+p.Address] = p.Clips
	}
	m.out.Currency = doc.Buying.Currency.V
	for _, g := range tiles.Goods {
		m.out.Lines = append(m.out.Lines, m.tile(g, tiles))
	}
	for _, lot := range sawn.Lots {
		if len(lot.Buy) > 0 {
			m.out.Lines = append(m.out.Lines, m.stock(lot))
		}
	}
	for _, l := range needed.Lines {
		if l.InsteadOf == "" {
			m.out.Lines = append(m.out.Lines, m.line(l))
		}
	}
	for _, l := range needed.Lines {
		if l.InsteadOf != "" {
			m.compare(l)
		}
	}
	m.trips()
	m.total()
	return m.out, m.findings, m.assumed
}

type maker struct {
	doc      document.Room
	days     schedule.Plan
	clips    map[string]int // of each piece, by face and address
	out      Plan
	findings diag.List
	assumed  []diag.Assumption
}

// currency reports whether prices mean anything.
func (m *maker) currency() bool { return m.doc.Buying.Currency.Known }

func (m *maker) good(name string) document.Good {
	for _, g := range m.doc.Goods {
		if g.Name == name {
			return g
		}
	}
	return document.Good{}
}

func (m *maker) supplier(name string) (document.Supplier, bool) {
	for _, s := range m.doc.Buying.Suppliers {
		if s.Name == name && name != "" {
			return s, true
		}
	}
	return document.Supplier{}, false
}

// line chooses packs for what one good is needed of.
func (m *maker) line(need takeoff.Line) Line {
	g := m.good(need.Good)
	l := Line{What: need.What, Good: need.Good, At: need.At, Need: need.Need, Known: need.Known, Typical: need.Typical}
	if n, ok := m.atOnce(need); ok && int64(n) < need.Need.N {
		l.InAll, l.Reused, l.Need = need.Need, true, unit.Count(n)
	}
	m.supply(&l, g.Supply)
	if need.InsteadOf == "" {
		m.date(&l, usedFor[need.Kind], facesOf(need))
	}
	if !need.Known || need.Good == "" {
		return l
	}
	m.packs(&l, g)
	m.back(&l, need)
	return l
}

// supply copies who sells it and by when.
func (m *maker) supply(l *Line, s document.Supply) {
	l.Supplier = s.From.V
	l.OrderedOn = s.OrderedOn.V
	l.Lead, l.LeadKnown = s.LeadTime.V, s.LeadTime.Known
	if from, ok := m.supplier(l.Supplier); ok && !l.LeadKnown && !s.LeadTime.Unknown {
		l.Lead, l.LeadKnown = from.LeadTime.V, from.LeadTime.Known
	}
}

// packs covers the need of a line with the packs of its good.
func (m *maker) packs(l *Line, g document.Good) {
	fit := m.offered(l.Need.Of, g)
	if len(fit) == 0 {
		m.findings.Add(diag.Unchecked, "pack-missing", g.At, "not priced: {0} is needed by {1}, and no pack of that is told", "write packs with their sizes and prices", diag.T(g.Name), diag.T(l.Need.Of.String()))
		return
	}
	known := slices.DeleteFunc(slices.Clone(fit), func(p Packs) bool { return !p.Priced })
	all := len(known) == len(fit)
	if len(known) > 0 {
		fit = known // what has no price is compared with nothing
	}
	c := Cover(l.Need.N, fit)
	l.Proven, l.Priced = c.Proven && all, true
	for i, n := range c.Counts {
		if n > 0 {
			l.take(fit[i], n)
		}
	}
	l.Left = unit.Quantity{Of: l.Need.Of, N: l.Have.N - l.Need.N}
	if !l.Priced {
		l.Cost = 0
	}
	if !all && m.currency() {
		m.findings.Add(diag.Unchecked, "price-missing", g.At, "not priced: {0}; the price of a pack is missing, so it is compared with none", "write it behind the pack", diag.T(g.Name))
	}
}

// offered are the packs of a good that hold what is needed by.
func (m *maker) offered(by unit.Dimension, g document.Good) []Packs {
	var fit []Packs
	for _, p := range g.Packs {
		if p.Size.Of == by {
			fit = append(fit, Packs{Name: p.Name, Size: p.Size, Price: p.Price.V, Priced: p.Price.Known && m.currency()})
		}
	}
	return fit
}

// take puts so many of a pack on the line.
func (l *Line) take(p Packs, n int) {
	p.Count, p.Sum = n, p.Price.Times(n)
	l.Packs = append(l.Packs, p)
	l.Have = unit.Quantity{Of: p.Size.Of, N: l.Have.N + p.Size.N*int64(n)}
	l.Cost += p.Sum
	l.Priced = l.Priced && p.Priced
}

// back lists the packs that stay whole if nothing is wasted, where the supplier takes them.
func (m *maker) back(l *Line, need takeoff.Line) {
	s, ok := m.supplier(l.Supplier)
	if !ok || !s.TakesBack.Or(false) {
		return
	}
	var net int64
	for _, p := range need.Parts {
		net += p.Takes.N
	}
	if l.Reused {
		net = l.Need.N
	}
	left := l.Have.N - net
	for i := len(l.Packs) - 1; i >= 0; i-- {
		p := l.Packs[i]
		if n := min(int64(p.Count), left/max(1, p.Size.N)); n > 0 {
			left -= n * p.Size.N
			p.Count, p.Sum = int(n), p.Price.Times(int(n))
			l.Back = append(l.Back, p)
		}
	}
}

// compare prices a good that could stand for one of the plan.
func (m *maker) compare(need takeoff.Line) {
	c := Compared{Line: m.line(need), InsteadOf: need.InsteadOf}
	for _, l := range m.out.Lines {
		if l.Good == need.InsteadOf && l.What == need.What && l.Priced && c.Line.Priced {
			c.Known, c.More = true, c.Line.Cost-l.Cost
		}
	}
	m.out.Compared = append(m.out.Compared, c)
}
