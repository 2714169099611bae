package report

import (
	"fmt"
	"strings"

	"dryfit/internal/money"
	"dryfit/internal/order"
	"dryfit/internal/plan"
	"dryfit/internal/takeoff"
	"dryfit/internal/unit"
)

// notKnown stands for a number that is missing, wherever one is bought or paid by.
const notKnown = "not known"

// Order lists every good with its packs and what they cost, a row for each pack.
func Order(p plan.Plan) Table {
	in := currencyIn(p)
	t := Table{Title: "To buy", Empty: "Nothing is laid out yet, so nothing is needed.",
		Columns: numbers(text("Good", "What", "How many", "Pack", "Each"+in, "Sum"+in, "Needed", "Left over", "From", "Order by"), 2, 4, 5, 6, 7)}
	for _, l := range p.Order.Lines {
		t.Rows = append(t.Rows, orderRows(p, l)...)
	}
	return t
}

// orderRows are the packs of one line. What is needed and what is left stands in the first.
func orderRows(p plan.Plan, l order.Line) [][]string {
	good, from := orNone(l.Good, "none chosen yet"), orNone(l.Supplier, "not told")
	if len(l.Packs) == 0 {
		return [][]string{{good, lineName(l), "", "none told", notKnown, notKnown, needWords(p, l), "", from, byWords(l)}}
	}
	rows := [][]string{}
	for i, k := range l.Packs {
		row := []string{good, lineName(l), fmt.Sprint(k.Count), k.Name, notKnown, notKnown, "", "", from, byWords(l)}
		if i == 0 {
			row[6], row[7] = needWords(p, l), p.Style.Say(l.Left)
		}
		if k.Priced {
			row[4], row[5] = p.Order.Currency.Say(k.Price), p.Order.Currency.Say(k.Sum)
		}
		rows = append(rows, row)
	}
	return rows
}

// byWords says by when a line has to be ordered, or that it is.
func byWords(l order.Line) string {
	switch {
	case l.OrderedOn != "":
		return "ordered " + l.OrderedOn
	case l.OrderBy != "":
		return l.OrderBy
	case l.NeedBy != "":
		return "there by " + l.NeedBy
	}
	return ""
}

// lineName is what a line is for; a tile good is a tile.
func lineName(l order.Line) string {
	if l.Tile {
		return "tile"
	}
	return l.What
}

func orNone(s, none string) string {
	if s == "" {
		return none
	}
	return s
}

func needWords(p plan.Plan, l order.Line) string {
	switch {
	case !l.Known:
		return "not reckoned"
	case l.Typical:
		return p.Style.Say(l.Need) + " (typical)"
	case l.Reused:
		return p.Style.Say(l.Need) + " at one time, of " + p.Style.Say(l.InAll)
	}
	return p.Style.Say(l.Need)
}

// packWords lists packs: "7 of 50 lb bag and 1 of 25 lb bag".
func packWords(packs []order.Packs) string {
	var out []string
	for _, k := range packs {
		out = append(out, fmt.Sprintf("%d of %s", k.Count, k.Name))
	}
	return orNone(list(out), "none told")
}

func sumWords(p plan.Plan, l order.Line) string {
	if !l.Priced {
		return notKnown
	}
	return p.Order.Currency.Say(l.Cost)
}

func currencyIn(p plan.Plan) string {
	if p.Order.Currency == "" {
		return ""
	}
	return " (" + string(p.Order.Currency) + ")"
}

// Cost adds the order up.
func Cost(p plan.Plan) Table {
	o := p.Order
	t := Table{Title: "What it costs", Empty: "Prices are in no currency, so nothing is added up.", Columns: numbers(text("What", "Sum"+currencyIn(p)), 1)}
	if o.Currency == "" {
		return t
	}
	add := func(what string, a money.Amount) { t.Rows = append(t.Rows, []string{what, o.Currency.Say(a)}) }
	add("goods", o.Goods)
	for _, x := range o.Trips {
		if x.Delivered {
			add("delivery by "+x.Supplier, x.Delivery)
		}
	}
	if o.Tax > 0 {
		add("tax", o.Tax)
	}
	add(totalName(o), o.Total)
	return t
}

func totalName(o order.Plan) string {
	if o.Whole {
		return "total"
	}
	return "total of what has a price"
}

// CostWords says in one sentence what the order costs.
func CostWords(p plan.Plan) string {
	o := p.Order
	switch {
	case len(o.Lines) == 0:
		return "nothing is laid out yet, so nothing is needed"
	case o.Currency == "":
		return "what it costs is not known: prices are in no currency"
	case o.Whole:
		return o.Currency.With(o.Total) + " with " + taxWords(o)
	}
	return fmt.Sprintf("%s for what has a price; %s: %s", o.Currency.With(o.Total), Count(len(o.Unpriced), "thing has none", "things have none"), few(o.Unpriced))
}

func taxWords(o order.Plan) string {
	if o.Tax > 0 {
		return "tax and delivery"
	}
	return "delivery, the tax as in the prices"
}

// few joins words, not more than a reader takes in.
func few(words []string) string {
	const most = 4
	if len(words) > most {
		return strings.Join(words[:most], ", ") + ", …"
	}
	return strings.Join(words, ", ")
}

// Trips lists who sells what, and by when it comes.
func Trips(p plan.Plan) Table {
	in := currencyIn(p)
	t := Table{Title: "Trips and deliveries", Empty: "No good has packs yet.", Columns: numbers(text("From", "Goods", "Sum"+in, "Delivery"+in, "From order to delivery"), 2, 3)}
	for _, x := range p.Order.Trips {
		t.Rows = append(t.Rows, []string{orNone(x.Supplier, "not told"), strings.Join(x.Lines, ", "), p.Order.Currency.Say(x.Goods), deliveryWords(p, x), leadWords(p, x)})
	}
	return t
}

func deliveryWords(p plan.Plan, x order.Trip) string {
	switch {
	case !x.Delivered:
		return "fetched"
	case x.Free:
		return "free"
	}
	return p.Order.Currency.Say(x.Delivery)
}

// leadWords lists the lead times of a trip's goods, the longest first named.
func leadWords(p plan.Plan, x order.Trip) string {
	var longest unit.Minutes
	slowest, known := "", false
	for _, l := range p.Order.Lines {
		if l.Supplier == x.Supplier && l.LeadKnown && l.OrderedOn == "" && len(l.Packs) > 0 && l.Lead > longest {
			longest, slowest, known = l.Lead, orNone(l.Good, lineName(l)), true
		}
	}
	if !known {
		return notKnown
	}
	return "up to " + longest.String() + " (" + slowest + ")"
}

// Alternatives holds goods against those that they could stand for.
func Alternatives(p plan.Plan) Table {
	in := currencyIn(p)
	t := Table{Title: "Compared", Empty: "No good is compared with another: write instead of.", Columns: numbers(text("Good", "Instead of", "Needed", "Packs", "Sum"+in, "More or less"+in), 2, 4, 5)}
	for _, c := range p.Order.Compared {
		more := notKnown
		if c.Known {
			more = p.Order.Currency.Say(c.More)
			if c.More > 0 {
				more = "+" + more
			}
		}
		t.Rows = append(t.Rows, []string{c.Line.Good, c.InsteadOf, needWords(p, c.Line), packWords(c.Line.Packs), sumWords(p, c.Line), more})
	}
	return t
}

// Back lists what may go back after the work.
func Back(p plan.Plan) Table {
	t := Table{Title: "What can go back", Empty: "Nothing: no supplier is said to take packs back, or none stays whole.", Columns: text("Good", "Packs", "To")}
	for _, l := range p.Order.Lines {
		if len(l.Back) > 0 {
			t.Rows = append(t.Rows, []string{l.Good, packWords(l.Back) + ", unopened, if no more than reckoned is wasted", l.Supplier})
		}
	}
	for _, l := range p.Takeoff.Lines {
		if l.Back && l.Known && l.InsteadOf == "" {
			t.Rows = append(t.Rows, []string{orNone(l.Good, l.What), "all of them come out again, for the next day's work", "your own shelf"})
		}
	}
	return t
}

// Reckoned lists what every line comes from: face by face, the amount on the plan and what of the good it takes.
func Reckoned(p plan.Plan) Table {
	t := Table{Title: "What it was reckoned from", Empty: "Nothing is laid out yet.", Columns: numbers(text("What", "Good", "Where", "For", "On the plan", "Takes", "Waste", "Figures that are no label's"), 4, 5, 6)}
	for _, l := range p.Takeoff.Lines {
		if l.InsteadOf != "" {
			continue
		}
		for i, x := range l.Parts {
			row := []string{"", "", orNone(x.Face, "the room"), x.For, p.Style.Say(x.Amount), takesWords(p, x), "", ""}
			if i == 0 {
				row[0], row[1], row[6], row[7] = l.What, orNone(l.Good, "none chosen yet"), wasteWords(l), sourceWords(l)
			}
			t.Rows = append(t.Rows, row)
		}
	}
	return t
}

func takesWords(p plan.Plan, x takeoff.Part) string {
	if !x.Known {
		return "not reckoned"
	}
	return p.Style.Say(x.Takes)
}

func wasteWords(l takeoff.Line) string {
	if !l.Known || l.Waste == 0 {
		return ""
	}
	return fmt.Sprintf("%d %%", int64(l.Waste)*100/int64(unit.One))
}

func sourceWords(l takeoff.Line) string {
	switch {
	case !l.Known:
		return "missing: " + orNone(l.Missing, "a label")
	case l.Typical:
		return "typical: " + l.Source
	}
	return l.Source
}
