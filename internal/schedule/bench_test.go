package schedule

import (
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
)

// BenchmarkDemos plans the days of the demo rooms; the target is 200 ms each.
func BenchmarkDemos(b *testing.B) {
	for _, r := range demo.Rooms() {
		doc, _ := document.Read(r.File, r.Text)
		room, _, _ := site.Solve(doc)
		tiles, _, _ := tiling.Make(doc, room, tiling.Options{Quick: true})
		b.Run(r.File, func(b *testing.B) {
			for b.Loop() {
				Make(doc, room, tiles)
			}
		})
	}
}
