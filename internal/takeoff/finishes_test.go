package takeoff

import (
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/joinery"
	"dryfit/internal/unit"
)

// A finish of 3 coats on 2 m²: by its own coverage 0.6 L; by a good's label of 8 m²/L 2 x 3 / 8 = 0.75 L; of neither, it is not reckoned. 10 % more stays in the can.
func TestFinishes(t *testing.T) {
	wood := func(covered bool) joinery.Plan {
		return joinery.Plan{Finishes: []joinery.Finish{{Name: "clear oil", Area: 2 * unit.Metre.Times(unit.Metre), Coats: 3, Volume: 600_000, Covered: covered}}}
	}
	label := document.Good{Name: "clear oil", Kind: document.WoodFinish, Covers: document.Value[unit.Rate]{Known: true,
		V: unit.Rate{Amount: unit.Spreads(8 * unit.Metre.Times(unit.Metre)), Per: unit.Fills(unit.Liter)}}}
	for _, c := range []struct {
		what    string
		goods   []document.Good
		covered bool
		want    unit.Quantity
		known   bool
	}{
		{"its own coverage", nil, true, unit.Fills(660_000), true},
		{"the label's", []document.Good{label}, true, unit.Fills(825_000), true},
		{"the label's alone", []document.Good{label}, false, unit.Fills(825_000), true},
		{"a label that says nothing", []document.Good{{Name: "wax", Kind: document.WoodFinish, Packs: []document.Pack{{Size: unit.Fills(unit.Liter)}}}}, false, unit.Quantity{}, false},
	} {
		p, _, _ := Make(From{Document: document.Room{Goods: c.goods}, Wood: wood(c.covered)})
		if len(p.Lines) != 1 || p.Lines[0].Known != c.known || p.Lines[0].Need != c.want {
			t.Errorf("%s: %+v", c.what, p.Lines)
		}
	}
}
