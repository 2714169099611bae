package export_test

import (
	"testing"

	"dryfit/internal/export"
)

func BenchmarkJSON(b *testing.B) {
	for _, r := range demos() {
		b.Run(r.file, func(b *testing.B) {
			for b.Loop() {
				export.JSON(r.plan)
			}
		})
	}
}

func BenchmarkPiecesCSV(b *testing.B) {
	for _, r := range demos() {
		b.Run(r.file, func(b *testing.B) {
			for b.Loop() {
				export.PiecesCSV(r.plan)
			}
		})
	}
}
