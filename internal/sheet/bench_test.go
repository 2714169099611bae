package sheet_test

import (
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/sheet"
)

func BenchmarkBook(b *testing.B) {
	for _, r := range demo.Rooms() {
		p := planned(b, r)
		b.Run(stem(r), func(b *testing.B) {
			for b.Loop() {
				sheet.Book(p, sheet.Paper{})
			}
		})
	}
}
