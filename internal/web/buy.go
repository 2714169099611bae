package web

import (
	"net/http"

	"dryfit/internal/plan"
	"dryfit/internal/report"
)

var buyPage = pageOf{name: "buy", tab: "Buy", fill: buy, whole: true}

// shopping is what to buy, what it costs, and how it is used.
type shopping struct {
	Enter                              shelves
	Order, Cost, Trips, Compared, Back report.Table
	Bedding, Weights, Reckoned         report.Table
	Mixing                             report.Table
	Cards                              []mixCard
	Stack                              string
	Files                              []file
	priced
}

// mixCard is how one powder is mixed.
type mixCard struct {
	Table report.Table
	Words string
}

var buyEnter = shelves{Title: "All that labels and shops say", Page: "buy", Back: "To the order", Help: "What is left open is taken from common practice and marked as typical."}

var buyShelves = []shelf{
	{"goods", "Goods and their labels", "good", "white mortar"},
	{"buying > suppliers", "Who sells", "supplier", "tile yard"},
}

func buy(v *view, r *http.Request) (*frame, error) {
	if err := v.make(plan.Options{}); err != nil {
		return nil, err
	}
	p := v.Plan
	answer := capital(report.CostWords(p)) + "."
	enter := v.shelvesOf(buyShelves, buyEnter, r.FormValue("enter"))
	if enter.Shelf != nil {
		return &frame{Title: "Buy", Question: "What do I order, and what does it cost?", Answer: answer, Body: shopping{Enter: enter}}, nil
	}
	s := shopping{Enter: enter, Order: report.Order(p), Cost: report.Cost(p), Trips: report.Trips(p), Compared: report.Alternatives(p), Back: report.Back(p),
		Mixing: report.MixingDays(p), Bedding: report.Bedding(p), Weights: report.Weights(p), Reckoned: report.Reckoned(p), Stack: capital(report.StackWords(p)) + ".",
		Files: []file{{"order.csv", "the order, a row for each pack"}, {"order.xlsx", "the order and what it was reckoned from, as a spreadsheet"}}}
	var err error
	if s.priced, err = v.priced(); err != nil {
		return nil, err
	}
	for _, x := range p.Takeoff.Recipes {
		s.Cards = append(s.Cards, mixCard{report.Mixing(p, x), report.RecipeWords(x)})
	}
	return &frame{Title: "Buy", Question: "What do I order, and what does it cost?", Answer: answer, Body: s}, nil
}
