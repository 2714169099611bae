package plan_test

import (
	"context"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/plan"
)

// BenchmarkUpToFit is what a remedy costs to try: reading, measuring and all checks, without laying any tile.
func BenchmarkUpToFit(b *testing.B) {
	for _, r := range demo.Rooms() {
		b.Run(r.File, func(b *testing.B) {
			for b.Loop() {
				if _, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{UpTo: plan.UpToFit}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
