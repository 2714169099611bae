package plan_test

import (
	"context"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/plan"
)

// BenchmarkDemo plans each built-in room up to where every tile lands, and as far as the plan goes.
func BenchmarkDemo(b *testing.B) {
	for _, c := range []struct {
		name string
		upTo plan.Stage
	}{{"up to the tiles", plan.UpToTiling}, {"whole", plan.All}} {
		for _, r := range demo.Rooms() {
			b.Run(c.name+"/"+r.File, func(b *testing.B) {
				for b.Loop() {
					if _, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{UpTo: c.upTo}); err != nil {
						b.Fatal(err)
					}
				}
			})
		}
	}
}
