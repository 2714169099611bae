package cut

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// room reads a document of a few lines; what it lacks as a room does not matter here.
func room(t testing.TB, units string, lines ...string) document.Room {
	t.Helper()
	src := "dryfit: 1\nname: shop\nunits: " + units + "\nsurvey: {corners: A B C}\n" + strings.Join(lines, "\n") + "\n"
	doc, found := document.Read("shop.yaml", []byte(src))
	for _, f := range found {
		if f.Class == diag.Stop && !strings.HasPrefix(f.At.Path, "survey") && f.At.Path != "" {
			t.Fatalf("%s: %s", f.At.Path, f.Say(unit.DefaultStyle(unit.Inches)))
		}
	}
	return doc
}

// kit writes parts "name size; name size {more}" into a kit of one stock.
func kit(stock, parts string) string {
	out := "kits:\n  k:\n    parts:\n"
	for _, p := range strings.Split(parts, ";") {
		name, rest, _ := strings.Cut(strings.TrimSpace(p), " ")
		size, more, _ := strings.Cut(rest, ",")
		if more != "" {
			more = ", " + more
		}
		out += fmt.Sprintf("      %s: {size: %s, stock: %s%s}\n", name, strings.TrimSpace(size), stock, more)
	}
	return out
}

// told says a lot in a line: what is bought, what it costs and at least costs, what of it is on hand, what lacks, what is kept.
func told(l Lot) string {
	s := unit.DefaultStyle(unit.Inches)
	var out []string
	for _, b := range l.Buy {
		out = append(out, fmt.Sprintf("%d of %s x %s", b.Count, s.Bare(b.Length), s.Bare(b.Width)))
	}
	for _, u := range l.Used {
		if u.OnHand {
			out = append(out, u.Name)
		}
	}
	if l.Verdict.Priced {
		out = append(out, fmt.Sprintf("costs %d", l.Verdict.Money/10))
	}
	if l.Verdict.Cheapest {
		out = append(out, "cheapest")
	}
	if n := len(l.Lacking); n > 0 {
		out = append(out, fmt.Sprintf("lacks %d", n))
	}
	for _, o := range l.Offcuts {
		out = append(out, fmt.Sprintf("keeps %s x %s", s.Bare(o.Size.Length), s.Bare(o.Size.Width)))
	}
	return strings.Join(out, ", ")
}

const table = "tools: {saws: {table: {kerf: 1/8, reach: 3}}}"

// What each line must give was worked out by hand, with a kerf of 1/8 in.
func TestSheets(t *testing.T) {
	for _, c := range []struct{ why, stock, parts, want string }{
		{"two halves with a kerf between: 24 + 1/8 + 23-7/8 = 48", "{kind: sheet, size: 48 x 48 x 3/4, price: 40}",
			"a 48 x 24; b 48 x 23-7/8", "1 of 48 x 48, costs 4000, cheapest"},
		{"two halves of 24 do not fit", "{kind: sheet, size: 48 x 48 x 3/4, price: 40}",
			"a 48 x 24, count: 2", "2 of 48 x 48, costs 8000, cheapest, keeps 48 x 23-7/8, keeps 48 x 23-7/8"},
		{"a trimmed edge takes 1/4 at each side: 47-1/2 is left", "{kind: sheet, size: 48 x 48 x 3/4, price: 40, edge trim: 1/4}",
			"a 47-1/2 x 47-1/2", "1 of 48 x 48, costs 4000, cheapest"},
		{"the half sheet is cheaper for one", "{kind: sheet, size: 96 x 48 x 3/4, price: 70, other sizes: {48 x 48: 40}}",
			"a 48 x 40", "1 of 48 x 48, costs 4000, cheapest, keeps 48 x 7-7/8"},
		{"one whole sheet is cheaper than two halves: 47-7/8 + 1/8 + 48 = 96", "{kind: sheet, size: 96 x 48 x 3/4, price: 70, other sizes: {48 x 48: 40}}",
			"a 47-7/8 x 48, count: 2", "1 of 96 x 48, costs 7000, cheapest"},
		{"what is on hand goes first", "{kind: sheet, size: 96 x 48 x 3/4, price: 70, on hand: {half: 48 x 48}}",
			"a 48 x 40", "half, costs 0, cheapest, keeps 48 x 7-7/8"},
		{"the grain keeps it from turning; turned it would fit the half", "{kind: sheet, size: 96 x 48 x 3/4, price: 70, on hand: {half: 40 x 48}}",
			"a 48 x 40", "1 of 96 x 48, costs 7000, cheapest, keeps 48 x 7-7/8, keeps 47-7/8 x 48"},
		{"any grain may turn", "{kind: sheet, size: 96 x 48 x 3/4, price: 70, on hand: {half: 40 x 48}}",
			"a 48 x 40, grain: any", "half, costs 0, cheapest"},
		{"a sheet without a grain as well", "{kind: sheet, size: 96 x 48 x 3/4, price: 70, grain: none, on hand: {half: 40 x 48}}",
			"a 48 x 40", "half, costs 0, cheapest"},
		{"grain across", "{kind: sheet, size: 96 x 48 x 3/4, price: 70, on hand: {half: 40 x 48}}",
			"a 48 x 40, grain: across", "half, costs 0, cheapest"},
		{"no price: the least area", "{kind: sheet, size: 96 x 48 x 3/4, other sizes: {48 x 48: 40}}",
			"a 48 x 40", "1 of 48 x 48, cheapest, keeps 48 x 7-7/8"},
		{"not sold any more", "{kind: sheet, size: 96 x 48 x 3/4, sold: no, on hand: {half: 48 x 48}}",
			"a 48 x 40, count: 2", "half, costs 0, cheapest, lacks 1, keeps 48 x 7-7/8"},
		{"edging makes the part smaller: 47-7/8 + 1/8 + 48 - 1/16 < 96", "{kind: sheet, size: 96 x 12 x 3/4, price: 70}",
			"a 48 x 12, banded: left, edging: 1/8; b 48 x 12, banded: [left, front], edging: 1/16", "1 of 96 x 12, costs 7000, cheapest"},
		{"left longer by 1/2, two no longer fit", "{kind: sheet, size: 96 x 13 x 3/4, price: 70}",
			"a 47-7/8 x 12, count: 2, oversize: 1/2", "2 of 96 x 13, costs 14000, cheapest, keeps 47-1/2 x 13, keeps 47-1/2 x 13"},
		{"a knot parts the board: 40 and 52 clear", "{kind: board, size: 96 x 6 x 3/4, sold: no, on hand: {plank: {size: 96 x 6, bad: 40 to 44}}}",
			"a 50 x 6; b 38 x 6", "plank, plank, costs 0, cheapest"},
		{"nothing of 53 is clear", "{kind: board, size: 96 x 6 x 3/4, sold: no, on hand: {plank: {size: 96 x 6, bad: 40 to 44}}}",
			"a 53 x 6", "costs 0, cheapest"},
		{"drawer fronts from one board: 3 x 6 + 2/8", "{kind: board, size: 20 x 18-1/4 x 3/4, price: 10, other sizes: {20 x 13: 1}}",
			"a 20 x 6, count: 3, match: fronts", "1 of 20 x 18-1/4, costs 1000, cheapest"},
		{"not matched, they come from the cheaper boards", "{kind: board, size: 20 x 18-1/4 x 3/4, price: 10, other sizes: {20 x 13: 1}}",
			"a 20 x 6, count: 3", "2 of 20 x 13, costs 200, cheapest, keeps 20 x 6-7/8"},
		{"end to end: 30 + 1/8 + 20", "{kind: board, size: 50-1/8 x 6 x 3/4, price: 10}",
			"a 30 x 6, match: run; b 20 x 6, match: run", "1 of 50-1/8 x 6, costs 1000, cheapest"},
	} {
		doc := room(t, "in", table, "stock: {ply: "+c.stock+"}", kit("ply", c.parts))
		p, _, _ := Make(doc, nil)
		if err := recut(doc, p); err != nil {
			t.Errorf("%s: %v", c.why, err)
		}
		if len(p.Lots) != 1 {
			t.Errorf("%s: %d lots", c.why, len(p.Lots))
			continue
		}
		if got := told(p.Lots[0]); got != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.why, got, c.want)
		}
	}
}

func TestSticks(t *testing.T) {
	for _, c := range []struct{ why, stock, parts, want string }{
		{"47-7/8 + 1/8 + 48 = 96", "{kind: stick, size: 96 x 3-1/2 x 3/4, price: 8}",
			"a 48; b 47-7/8", "1 of 96 x 3-1/2, costs 800, cheapest"},
		{"two of 48 do not fit", "{kind: stick, size: 96 x 3-1/2 x 3/4, price: 8}",
			"a 48, count: 2", "2 of 96 x 3-1/2, costs 1600, cheapest, keeps 47-7/8 x 3-1/2, keeps 47-7/8 x 3-1/2"},
		{"one long stick is cheaper", "{kind: stick, size: 96 x 3-1/2 x 3/4, price: 8, other sizes: {12 ft: 11}}",
			"a 70; b 70", "1 of 144 x 3-1/2, costs 1100, cheapest"},
		{"ends are trimmed by 1 each: 94 is left", "{kind: stick, size: 96 x 3-1/2 x 3/4, price: 8, edge trim: 1}",
			"a 94; b 46-7/8; c 47", "2 of 96 x 3-1/2, costs 1600, cheapest"},
		{"a split at 30 to 33 leaves 30 and 38", "{kind: stick, size: 96 x 3-1/2 x 3/4, price: 8, on hand: {rest: {size: 71, bad: 30 to 33}}}",
			"a 38; b 30", "rest, costs 0, cheapest"},
		{"and not 38-1/16", "{kind: stick, size: 96 x 3-1/2 x 3/4, price: 8, on hand: {rest: {size: 71, bad: 30 to 33}}}",
			"a 38-1/16; b 30", "1 of 96 x 3-1/2, rest, costs 800, cheapest, keeps 38 x 3-1/2, keeps 57-13/16 x 3-1/2"},
	} {
		doc := room(t, "in", table, "stock: {base: "+c.stock+"}", kit("base", c.parts))
		p, _, _ := Make(doc, nil)
		if err := recut(doc, p); err != nil {
			t.Errorf("%s: %v", c.why, err)
		}
		if got := told(p.Lots[0]); got != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.why, got, c.want)
		}
	}
}

// What is wrong is told with the part and the numbers.
func TestFindings(t *testing.T) {
	const ply = "{kind: sheet, size: 96 x 48 x 3/4, price: 40}"
	for _, c := range []struct{ why, tools, stock, part, want string }{
		{"all is well", table, ply, "a 20 x 20", ""},
		{"too long", table, ply, "a 97 x 20", `part-too-large: k > a is 97 in x 20 in; the largest clear piece of ply is 96 in x 48 in`},
		{"too long for the trimmed sheet", table, "{kind: sheet, size: 96 x 48 x 3/4, price: 40, edge trim: 1/2}", "a 96 x 20", `part-too-large: k > a is 96 in x 20 in; the largest clear piece of ply is 95 in x 47 in`},
		{"only its grain is in the way", table, ply, "a 20 x 60", `part-grain: k > a is 20 in along the grain and 60 in across; ply is 96 in x 48 in, which holds it only turned, against its grain`},
		{"thicker than its stock", table, ply, "a 20 x 20 x 1", `part-thick: k > a is 1 in thick, and ply is 3/4 in`},
		{"thinner than a sheet", table, ply, "a 20 x 20 x 1/2", `part-thin: k > a is 1/2 in thick, and ply is 3/4 in: a sheet is not planed`},
		{"measured thinner than it is called", table, "{kind: sheet, size: 96 x 48 x 3/4, measured: 45/64, price: 40}", "a 20 x 20 x 3/4", `part-thick: k > a is 3/4 in thick, and ply is 45/64 in`},
		{"a board is planed", table, "{kind: board, size: 96 x 8 x 1, price: 40}", "a 20 x 6 x 3/4", `part-planed: k > a is 3/4 in thick, and ply is 1 in: it is planed down`},
		{"the edging takes all", table, ply, "a 20 x 1, banded: [front, rear], edging: 1/2", `part-size: a has a width of 1 in, and its edging takes all of it`},
		{"no width", table, ply, "a 20", "part-unsized: k > a: not cut: its width is missing"},
		{"unknown size", table, ply, "a unknown", "part-unsized: k > a: not cut: a size of it is unknown"},
		{"no price", table, "{kind: sheet, size: 96 x 48 x 3/4}", "a 20 x 20", `price-missing: ply, 96 in x 48 in: its price is missing, so the least stock is bought and what it costs is not known`},
		{"a stick too narrow", table, "{kind: stick, size: 96 x 3-1/2 x 3/4, price: 8}", "a 20 x 4", `part-wide: k > a is 4 in wide, and ply is 3-1/2 in`},
		{"a stick too short", table, "{kind: stick, size: 96 x 3-1/2 x 3/4, price: 8}", "a 100", `part-too-large: k > a is 100 in long; the longest clear length of ply is 96 in`},
		{"the saw does not reach", "tools: {saws: {small: {kerf: 1/16, reach: 1/2}}}", ply, "a 20 x 20", `saw-reach: small cuts 1/2 in deep, and ply is 3/4 in thick`},
		{"the saw's reach is not told", "tools: {saws: {small: {kerf: 1/16}}}", ply, "a 20 x 20", `saw-reach-unknown: not checked: whether small cuts through ply: its reach is missing`},
		{"nothing left", table, "{kind: sheet, size: 96 x 48 x 3/4, sold: no, on hand: {rest: 30 x 30}}", "a 20 x 20, count: 2", `stock-lacking: nothing is left of ply for k > a 2, 20 in x 20 in`},
		{"on hand of unknown size", table, "{kind: sheet, size: 96 x 48 x 3/4, price: 40, on hand: {rest: unknown}}", "a 20 x 20", `on-hand-unsized: rest, on hand, is not cut from: its size or count is not known`},
		{"a size unknown", table, "{kind: sheet, size: unknown, price: 40}", "a 20 x 20 x 3/4", `stock-unsized: ply: nothing is cut from it: its size is not known`},
		{"uneven match", table, ply, "a 20 x 20, match: m; b 30 x 10, match: m", `match-uneven: the parts matched as m are neither all of one length nor all of one width`},
		{"match too large", table, ply, "a 20 x 20, match: m, count: 3", `match-too-large: k > a and what it is matched with are 20 in x 60-1/4 in together; the largest clear piece of ply is 96 in x 48 in`},
		{"too many", table, ply, "a 1 x 1, count: 1000; b 1 x 1, count: 1000; c 1 x 1", `parts-too-many: with k > c there are more than 2000 pieces to cut`},
	} {
		doc := room(t, "in", c.tools, "stock: {ply: "+c.stock+"}", kit("ply", c.part))
		if c.why == "too many" {
			doc.Stock[0].Sale.Sold = document.Value[bool]{Known: true} // only the finding is looked at
		}
		_, found, _ := Make(doc, nil)
		var got []string
		for _, f := range found {
			if c.why != "too many" || f.Code == "parts-too-many" {
				got = append(got, f.Code+": "+f.Say(unit.DefaultStyle(unit.Inches)))
			}
		}
		if s := strings.Join(got, "\n"); s != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.why, s, c.want)
		}
	}
}

// Without a saw the kerf is assumed, and said so.
func TestAssumedKerf(t *testing.T) {
	for units, want := range map[string]unit.Length{"in": unit.Inch / 8, "mm": 3 * unit.Millimetre} {
		doc := room(t, units, "stock: {ply: {kind: sheet, size: 96 x 48 x 3, price: 40}}", kit("ply", "a 20 x 20"))
		p, _, assumed := Make(doc, nil)
		if len(assumed) != 1 || assumed[0].Source != "common practice" || p.Lots[0].Kerf != want {
			t.Errorf("%s: got %v with %v", units, p.Lots[0].Kerf.MM(), assumed)
		}
	}
}
