package order

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/cut"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/money"
	"dryfit/internal/schedule"
	"dryfit/internal/takeoff"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

const shelf = `dryfit: 1
name: Shelf
units: in
survey: {corners: A B C D, tape: {A-B: 71}}
tiles:
  slate: {size: 24 x 12 x 3/8, kind: stone, per box: 5, price: 84.00 per box, from: tile yard}
  hearth: {size: 12 x 12 x 3/8, kind: stone, per box: 8, price: 6.49 per sq ft, from: tile yard}
  strip: {size: 6 x 3 x 3/8, kind: ceramic, per box: 40, price: 0.55 per tile}
goods:
  mortar: {kind: mortar, packs: {50 lb bag: 28.50, 25 lb bag: 16}, from: tile yard, ordered on: 2026-03-02}
  plain mortar: {kind: mortar, instead of: mortar, packs: {50 lb bag: 17.95}}
  caulk: {kind: sealant, packs: {10.1 fl oz cartridge: 9.48}}
  odd: {kind: sealer, packs: {1 gal pail: unknown}}
  stray: {kind: tape, packs: {1 gal pail: 3}}
buying:
  currency: USD
  tax: 8.25 %
  suppliers: {tile yard: {delivery: 60.00, free from: 600.00, lead time: 10 days, takes back: yes}}
`

func made(t *testing.T, src string) (Plan, diag.List) {
	t.Helper()
	doc, found := document.Read("shelf", []byte(src))
	if found.Stops() {
		t.Fatal(found)
	}
	tiles := tiling.Plan{Goods: []tiling.Good{
		{Tile: "slate", Buy: 33, PerBox: 5, Boxes: 7, Leftover: 2},
		{Tile: "hearth", Buy: 10, PerBox: 8, Boxes: 2, Leftover: 6},
		{Tile: "strip", Buy: 43, PerBox: 40, Boxes: 2, Leftover: 37},
	}}
	line := func(good string, q unit.Quantity, net unit.Quantity) takeoff.Line {
		return takeoff.Line{What: good, Good: good, Need: q, Known: true, Parts: []takeoff.Part{{Takes: net}}}
	}
	alt := line("plain mortar", unit.Weighs(120*unit.Pound), unit.Weighs(100*unit.Pound))
	alt.InsteadOf, alt.What = "mortar", "mortar"
	needed := takeoff.Plan{Lines: []takeoff.Line{
		line("mortar", unit.Weighs(120*unit.Pound), unit.Weighs(100*unit.Pound)), alt,
		line("caulk", unit.Fills(700_000), unit.Fills(640_000)),
		line("odd", unit.Fills(4_000_000), unit.Fills(4_000_000)),
		line("stray", unit.Stretches(30*unit.Foot), unit.Stretches(30*unit.Foot)),
		{What: "grout", Need: unit.Weighs(unit.Kilogram), Known: true},
	}}
	sawn := cut.Plan{Lots: []cut.Lot{{Stock: "ash", Buy: nil}}}
	p, list, _ := Make(doc, tiles, sawn, needed, schedule.Plan{})
	return p, list
}

// By hand: 7 boxes of slate 588.00; a box of 8 square feet at 6.49 is 51.92, two 103.84; two boxes of 40 strips at 0.55 are 44.00; mortar 2 x 28.50 + 16 = 73.00;
// three cartridges (700 / 298.7 mL) 28.44. Goods 837.28, tax 8.25 % of that 69.0756 = 69.08. The yard's goods are 764.84, so delivery is free.
func TestOrder(t *testing.T) {
	p, found := made(t, shelf)
	for _, c := range []struct {
		what string
		got  money.Amount
		want money.Amount
	}{
		{"slate", p.Lines[0].Cost, 588_000}, {"hearth", p.Lines[1].Cost, 103_840}, {"strip", p.Lines[2].Cost, 44_000},
		{"mortar", p.Lines[3].Cost, 73_000}, {"caulk", p.Lines[4].Cost, 28_440},
		{"goods", p.Goods, 837_280}, {"tax", p.Tax, 69_080}, {"delivery", p.Delivery, 0}, {"total", p.Total, 906_360},
		{"yard", p.Trips[0].Goods, 764_840},
		{"plain mortar: 3 x 17.95 less 73.00", p.Compared[0].More, 53_850 - 73_000},
	} {
		if c.got != c.want {
			t.Errorf("%s: %s, want %s", c.what, p.Currency.With(c.got), p.Currency.With(c.want))
		}
	}
	if !p.Trips[0].Delivered || !p.Trips[0].Free || p.Whole || len(p.Unpriced) != 3 {
		t.Errorf("%+v", p)
	}
	// 125 lb are bought; if no more than 100 lb are used the bag of 25 lb stays whole.
	if m := p.Lines[3]; len(m.Back) != 1 || m.Back[0].Name != "25 lb bag" || m.Left != unit.Weighs(5*unit.Pound) || m.OrderedOn != "2026-03-02" || m.Lead != 10*unit.Day {
		t.Errorf("%+v", m)
	}
	codes := map[string]int{}
	for _, f := range found {
		codes[f.Code]++
	}
	if codes["price-missing"] != 1 || codes["pack-missing"] != 1 {
		t.Error(codes)
	}
}

// Without a currency nothing is added up; no price of the document stands in any total.
func TestNoCurrency(t *testing.T) {
	p, _ := made(t, shelf)
	q, _ := made(t, replaced(shelf, "  currency: USD\n", ""))
	if p.Total == 0 || q.Total != 0 || q.Whole || q.Tax != 0 || q.Delivery != 0 || len(q.Unpriced) != len(q.Lines) {
		t.Errorf("%+v", q)
	}
}

// Under any prices the totals are the sum of the lines, the lines that of their packs, and the trips that of the goods.
func TestTotalsAddUp(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		price := func(name string) string {
			return money.Currency("USD").Say(money.Amount(rapid.Int64Range(0, 100_000).Draw(r, name)) * 10)
		}
		src := replaced(shelf, "84.00", price("slate"))
		src = replaced(src, "28.50", price("bag"))
		src = replaced(src, "6.49", price("hearth"))
		src = replaced(src, "60.00", price("delivery"))
		src = replaced(src, "8.25", money.Currency("USD").Say(money.Amount(rapid.Int64Range(0, 3000).Draw(r, "tax"))*10))
		p, _ := made(t, src)
		var lines, trips money.Amount
		for _, l := range p.Lines {
			var packs money.Amount
			for _, x := range l.Packs {
				packs += x.Sum
			}
			if l.Priced && packs != l.Cost || !p.Currency.Exact(l.Cost) {
				r.Fatalf("%+v", l)
			}
			lines += l.Cost
		}
		for _, x := range p.Trips {
			trips += x.Goods
		}
		if lines != p.Goods || trips != p.Goods || p.Total != p.Goods+p.Delivery+p.Tax || !p.Currency.Exact(p.Total) {
			r.Fatalf("%+v", p)
		}
	})
}

// The yard takes 10 days, or 3 where the stock says so. The trim may be cut on March 25 at the latest, the chest built on March 20; board for the back wall is
// needed on the 18th. What only plain parts are cut from is for no job, and no day is made up for it.
func TestStockIsOrderedInTime(t *testing.T) {
	const src = "dryfit: 1\nname: n\nunits: in\ncabinets: {chest: {in: back, stock: {panels: ply, drawers: ply}}}\ntrim: {skirt: {kind: baseboard, stock: lath}}\n" +
		"stock:\n  ply: {kind: sheet, size: 96 x 48 x 3/4, from: yard}\n  lath: {kind: stick, size: 96 x 3 x 1/2, from: yard, lead time: 3 days}\n  panel: {kind: sheet, size: 60 x 36 x 1/2, covers: back, from: yard, ordered on: 2026-03-02}\n" +
		"  rest: {kind: stick, size: 96 x 1 x 1, from: yard}\nbuying: {currency: USD, suppliers: {yard: {delivery: 20.00, lead time: 10 days}}}\n"
	doc, _ := document.Read("n", []byte(src))
	days := schedule.Plan{From: on(t, "2026-03-12"), Tasks: []schedule.Task{
		{Kind: schedule.Trim, Subject: "skirt", Latest: on(t, "2026-03-25")}, {Kind: schedule.Cabinet, Subject: "chest", Latest: on(t, "2026-03-20")},
		{Kind: schedule.Board, Subject: "back", Latest: on(t, "2026-03-18")}, {Kind: schedule.Cabinet, Subject: "another", Latest: on(t, "2026-03-13")},
	}}
	var lots []cut.Lot
	for _, s := range doc.Stock {
		lots = append(lots, cut.Lot{Stock: s.Name, At: s.At, Kind: s.Kind, Buy: []cut.Purchase{{Length: 96 * unit.Inch, Count: 1, Price: 10_000, Priced: true}}})
	}
	p, found, _ := Make(doc, tiling.Plan{}, cut.Plan{Lots: lots}, takeoff.Plan{}, days)
	for i, want := range [][3]string{{"2026-03-20", "2026-03-10", ""}, {"2026-03-25", "2026-03-22", ""}, {"2026-03-18", "", "2026-03-02"}, {"", "", ""}} {
		if l := p.Lines[i]; [3]string{l.NeedBy, l.OrderBy, l.OrderedOn} != want || l.Supplier != "yard" {
			t.Errorf("%s: needed %s, order by %s, ordered %s of %s; want %v", l.Good, l.NeedBy, l.OrderBy, l.OrderedOn, l.Supplier, want)
		}
	}
	if codes(found) != "order-late" || len(p.Trips) != 1 || p.Trips[0].Goods != 40_000 || p.Delivery != 20_000 {
		t.Errorf("%s, trips %+v", codes(found), p.Trips)
	}
}

func replaced(s, old, now string) string { return strings.Replace(s, old, now, 1) }

// Two sheets at 62.50 and one at 40.00 that the cutting plan buys are 165.00, and count with the rest.
func TestStockIsBought(t *testing.T) {
	doc, _ := document.Read("shelf", []byte(shelf))
	sheet := cut.Purchase{Length: 96 * unit.Inch, Width: 48 * unit.Inch, Count: 2, Price: 62_500, Priced: true}
	half := cut.Purchase{Length: 48 * unit.Inch, Width: 48 * unit.Inch, Count: 1, Price: 40_000, Priced: true}
	lot := cut.Lot{Stock: "birch ply", Kind: document.SheetStock, Buy: []cut.Purchase{sheet, half}, Verdict: cut.Verdict{Cheapest: true}}
	p, found, _ := Make(doc, tiling.Plan{}, cut.Plan{Lots: []cut.Lot{lot}}, takeoff.Plan{}, schedule.Plan{})
	l := p.Lines[0]
	if len(found) > 0 || l.Cost != 165_000 || p.Goods != 165_000 || !l.Proven || l.Packs[0].Name != "96 x 48 in" || l.Need != unit.Count(3) || !p.Whole {
		t.Errorf("%+v %v", p, found)
	}
	half.Priced = false
	lot.Buy[1] = half
	p, found, _ = Make(doc, tiling.Plan{}, cut.Plan{Lots: []cut.Lot{lot}}, takeoff.Plan{}, schedule.Plan{})
	if p.Lines[0].Priced || p.Goods != 0 || p.Whole || len(found) != 1 {
		t.Errorf("a sheet without a price is in a total: %+v %v", p, found)
	}
}
