package plan_test

import (
	"context"
	"slices"
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
		}
		if len(p.Tiling.Faces) != len(p.Document.Lay) {
			t.Errorf("%s: %d faces laid of %d", r.File, len(p.Tiling.Faces), len(p.Document.Lay))
		}
		for _, f := range p.Tiling.Faces {
			for _, z := range f.Fields {
				if len(z.Chosen().Pieces) == 0 || z.Chosen().Why.Text == "" {
					t.Errorf("%s: %s on %s has no pieces or no reason", r.File, z.Name, f.Name)
				}
			}
		}
	}
}

// Of every stock of the built-in rooms no less can be bought: that is proven, in money or, where a price is missing, in size.
func TestDemosCutForTheLeast(t *testing.T) {
	for _, r := range demo.Rooms() {
		p, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{})
		if err != nil {
			t.Fatal(err)
		}
		if len(p.Cut.Lots) == 0 {
			t.Errorf("%s cuts nothing", r.File)
		}
		for _, l := range p.Cut.Lots {
			v := l.Verdict
			if !v.Cheapest || v.Priced && v.Money != v.Lower || !v.Priced && v.Bought != v.Least {
				t.Errorf("%s: %s: not proven: %+v", r.File, l.Stock, v)
			}
		}
	}
}

// Each stage runs once, in order; a run for one face lays that face alone.
func TestStagesRunOnce(t *testing.T) {
	r := demo.Rooms()[0]
	for _, c := range []struct {
		o     plan.Options
		want  []string
		faces int
	}{
		{plan.Options{}, []string{"read", "measure", "lay out", "fit", "build", "cut", "days", "clash", "take off", "order"}, 5},
		{plan.Options{UpTo: plan.UpToSite}, []string{"read", "measure"}, 0},
		{plan.Options{UpTo: plan.UpToFit}, []string{"read", "measure", "fit"}, 0},
		{plan.Options{Face: "long wall", Quick: true}, []string{"read", "measure", "lay out", "fit", "build", "cut", "days", "clash", "take off", "order"}, 1},
	} {
		var ran []string
		c.o.Step = func(stage string) { ran = append(ran, stage) }
		p, err := plan.Make(context.Background(), r.File, r.Text, c.o)
		if err != nil || !slices.Equal(ran, c.want) || len(p.Tiling.Faces) != c.faces {
			t.Errorf("%+v: ran %v, %d faces, %v", c.want, ran, len(p.Tiling.Faces), err)
		}
	}
}

// A canceled run says so and gives what it has.
func TestCanceled(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	r := demo.Rooms()[0]
	if p, err := plan.Make(ctx, r.File, r.Text, plan.Options{}); err == nil || p.Name == "" {
		t.Errorf("%q, %v", p.Name, err)
	}
}
