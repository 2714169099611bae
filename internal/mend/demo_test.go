package mend

import (
	"context"
	"slices"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/figure"
	"dryfit/internal/fit"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// Both built-in rooms: every remedy is tried within the runs allowed, what is offered holds when it is made in the text and the plan is run from its beginning, and
// one of the rooms shows a miss that a single thing mends.
func TestDemoRooms(t *testing.T) {
	mended := 0
	for _, r := range demo.Rooms() {
		p, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{UpTo: plan.UpToFit})
		if err != nil {
			t.Fatal(err)
		}
		m, err := Make(context.Background(), r.File, r.Text, p, Options{})
		if err != nil || !m.All {
			t.Errorf("%s: %v, all tried: %v", r.File, err, m.All)
		}
		if len(m.Things) < 3 || slices.ContainsFunc(m.Things, func(th Thing) bool { return th.Fixed != "" }) {
			t.Errorf("%s: what may move: %+v", r.File, m.Things)
		}
		for _, rem := range m.Remedies {
			for _, tr := range rem.Single {
				mended++
				checkOffer(t, r.Text, m, p, rem, tr)
			}
		}
		if m.Joint != nil && m.Joint.Mends {
			now := stand(t, r.Text, m.Joint.Ops)
			for _, c := range p.Fit.Checks {
				if now[c.ID].State == fit.Misses && !slices.Contains(m.Without, c.ID) {
					t.Errorf("%s: %s misses after the joint change", r.File, c.ID)
				}
			}
		}
	}
	if mended == 0 {
		t.Error("no demo room shows a remedy")
	}
}

// What the built-in rooms let move is in their checks: each thing moves a margin of one at least.
func TestDemoThingsCount(t *testing.T) {
	for _, r := range demo.Rooms() {
		p, _ := plan.Make(context.Background(), r.File, r.Text, plan.Options{UpTo: plan.UpToFit})
		for _, move := range p.Document.Moves {
			path := move.PathText()
			in := slices.ContainsFunc(p.Fit.Checks, func(c fit.Check) bool {
				return slices.ContainsFunc(c.Moves, func(t figure.Term) bool { return t.Path == path && t.Per != unit.Ratio(0) })
			})
			if !in {
				t.Errorf("%s: %s may move and moves no check", r.File, move.Words)
			}
		}
	}
}
