package plan_test

import (
	"context"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/plan"
)

func BenchmarkDemo(b *testing.B) {
	for _, r := range demo.Rooms() {
		b.Run(r.File, func(b *testing.B) {
			for b.Loop() {
				if _, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
