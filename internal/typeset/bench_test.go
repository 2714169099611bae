package typeset

import "testing"

func BenchmarkLoad(b *testing.B) {
	for b.Loop() {
		load(Data(false))
	}
}

func BenchmarkWidth(b *testing.B) {
	for b.Loop() {
		Width("11-13/16 × 23-5/8 in", 2500, false)
	}
}
