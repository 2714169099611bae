package takeoff_test

import (
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/takeoff"
	"dryfit/internal/tiling"
)

func BenchmarkDemo(b *testing.B) {
	for _, r := range demo.Rooms() {
		doc, _ := document.Read(r.File, r.Text)
		room, _, _ := site.Solve(doc)
		tiles, _, _ := tiling.Make(doc, room, tiling.Options{})
		b.Run(r.File, func(b *testing.B) {
			for b.Loop() {
				takeoff.Make(takeoff.From{Document: doc, Room: room, Tiles: tiles})
			}
		})
	}
}
