package report

import (
	"strings"
	"testing"

	"dryfit/internal/cut"
	"dryfit/internal/document"
	"dryfit/internal/money"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// A lot says what is proven of it, and never more.
func TestLotWords(t *testing.T) {
	p := plan.Plan{Style: unit.DefaultStyle(unit.Inches)}
	used := []cut.Used{{Number: 1}, {Number: 2}}
	buy := []cut.Purchase{{Count: 2}}
	for _, c := range []struct {
		lot  cut.Lot
		want string
	}{
		{cut.Lot{}, "Nothing is cut from it."},
		{cut.Lot{Used: used}, "2 sheets cut, all on hand."},
		{cut.Lot{Used: used, Buy: buy, Verdict: cut.Verdict{Priced: true, Money: 85 * money.One, Lower: 85 * money.One, Cheapest: true}}, "2 sheets cut, for 85.00; no way costs less."},
		{cut.Lot{Used: used, Buy: buy, Verdict: cut.Verdict{Priced: true, Money: 85 * money.One, Lower: 42*money.One + 500}}, "2 sheets cut, for 85.00; no way costs less than 42.50, so at most 42.50 could be saved."},
		{cut.Lot{Used: used, Buy: buy, Verdict: cut.Verdict{Cheapest: true}}, "2 sheets cut; a price is missing, so the least stock was looked for: no way takes less."},
		{cut.Lot{Used: used, Buy: buy, Kind: document.StickStock, Verdict: cut.Verdict{Least: int64(90 * unit.Inch), Bought: int64(96 * unit.Inch)}},
			"2 sticks cut; a price is missing, so the least stock was looked for; whether less would do is not proven (90 in at least, of 96 in)."},
		{cut.Lot{Used: used, Buy: buy, Verdict: cut.Verdict{Least: int64(30 * unit.SquareFoot), Bought: int64(32 * unit.SquareFoot)}},
			"2 sheets cut; a price is missing, so the least stock was looked for; whether less would do is not proven (30.0 sq ft at least, of 32.0 sq ft)."},
	} {
		if got := LotWords(p, c.lot); got != c.want {
			t.Errorf("got %q, want %q", got, c.want)
		}
	}
}

// Sizes finer than the tape are not rounded away, and the words for a cut name what it frees.
func TestCutSteps(t *testing.T) {
	p := plan.Plan{Style: unit.DefaultStyle(unit.Inches)}
	p.Cut.Pieces = []cut.Piece{{Name: "vanity > side 1"}, {Name: "vanity > side 2"}}
	l := cut.Lot{Stock: "birch", Kerf: 3 * unit.Inch / 32}
	step := cut.Step{Number: 1, Way: cut.Rip, Size: 637 * unit.Inch / 64, Frees: 0, Leaves: 1}
	step.Panel.Max.X, step.Panel.Max.Y = 48*unit.Inch, 20*unit.Inch
	u := cut.Used{Number: 1, Trim: unit.Inch / 4, Steps: []cut.Step{step}}
	rows := CutSteps(p, l, u).Rows
	if got := strings.Join(rows[0], "|"); got != "|trim|1/4|all four edges|" {
		t.Errorf("got %q", got)
	}
	if got := strings.Join(rows[1], "|"); got != "1|rip|9-61/64|48 x 20 in|vanity > side 1; vanity > side 2" {
		t.Errorf("got %q", got)
	}
	if got := KerfOf(p, l); got != "The saw takes 3/32 in with each cut; sizes are to the good side of the kerf." {
		t.Errorf("got %q", got)
	}
}
