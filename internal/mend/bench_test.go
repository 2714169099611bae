package mend

import (
	"context"
	"os"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/text"
)

// The checks and all remedies of the built-in rooms, from their texts; these are parsed once, as a page does.
func BenchmarkDemo(b *testing.B) {
	ctx := context.Background()
	for _, r := range demo.Rooms() {
		b.Run(r.File, func(b *testing.B) {
			for b.Loop() {
				src := text.Parsed(r.Text)
				doc, found := document.ReadFrom(r.File, src)
				made, _ := plan.Of(ctx, r.Text, doc, found, plan.Options{UpTo: plan.UpToFit})
				m, _ := Of(ctx, document.DraftOf(r.File, src), made, Options{})
				b.ReportMetric(float64(m.Runs), "runs")
			}
		})
	}
}

// All remedies of a small room, without and with the plan that they begin from.
func BenchmarkMend(b *testing.B) {
	src, err := os.ReadFile("testdata/millrace.yaml")
	if err != nil {
		b.Fatal(err)
	}
	ctx := context.Background()
	made, _ := plan.Make(ctx, "millrace.yaml", src, plan.Options{UpTo: plan.UpToFit})
	b.Run("checks", func(b *testing.B) {
		for b.Loop() {
			plan.Make(ctx, "millrace.yaml", src, plan.Options{UpTo: plan.UpToFit})
		}
	})
	b.Run("remedies", func(b *testing.B) {
		for b.Loop() {
			m, _ := Make(ctx, "millrace.yaml", src, made, Options{})
			b.ReportMetric(float64(m.Runs), "runs")
		}
	})
	b.Run("one run", func(b *testing.B) {
		trial := plan.NewTrial(document.NewDraft("millrace.yaml", src), made)
		ops := []document.Op{{Path: []string{"cabinets", "vanity", "height"}, Value: "30"}}
		for b.Loop() {
			trial.With(ctx, ops)
		}
	})
}
