package plan_test

import (
	"context"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/diag"
	"dryfit/internal/plan"
)

// Nothing in a built-in room stops work, and every face that is to be laid has its pieces.
func TestDemosPlan(t *testing.T) {
	for _, r := range demo.Rooms() {
		p, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{})
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range p.Findings {
			if f.Class == diag.Stop {
				t.Errorf("%s:%d: %s: %s", r.File, f.At.Line, f.Code, f.Say(p.Style))
			}
			t.Logf("%v %d %s: %s", f.Class, f.At.Line, f.Code, f.Say(p.Style))
		}
		if len(p.Tiling.Faces) != len(p.Document.Lay) {
			t.Errorf("%s: %d faces laid of %d", r.File, len(p.Tiling.Faces), len(p.Document.Lay))
		}
		for _, f := range p.Tiling.Faces {
			for _, z := range f.Fields {
				c := z.Chosen()
				t.Logf("%s %s: %d whole %d cut, %d..%d tiles; %s | %s", f.Name, z.Name, c.Whole, c.CutCount, c.TilesLeast, c.Tiles, c.Why.Say(p.Style), c.WhyNot.Say(p.Style))
			}
		}
		for _, g := range p.Tiling.Goods {
			g.From = nil
			t.Logf("%+v", g)
		}
		for _, a := range p.Assumed {
			t.Logf("assumed %s (%s)", a.Say(p.Style), a.Source)
		}
	}
}
