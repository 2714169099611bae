package search

import "testing"

// A wall of 300 tiles with four openings and six stub-outs.
const wall300 = "room 3660 2240 | open window 900 1100 1700 1900 | open niche 2100 1000 2460 1450 | open door 2700 0 3450 1900 | open panel 300 200 520 500" +
	" | hole 700 400 40 | hole 760 700 60 | hole 1900 500 30 | hole 2000 500 30 | hole 2300 300 110 | hole 2550 2000 40" +
	" | tile 162 162 3 | mark 0.5 | sight 1900 | sight 2100 | hidden left 12 | hidden right 12"

func BenchmarkBestStack(b *testing.B)   { benchmark(b, wall300+" | stack") }
func BenchmarkBestRunning(b *testing.B) { benchmark(b, wall300+" | running 1/2") }
func BenchmarkBestThird(b *testing.B)   { benchmark(b, wall300+" | running 1/3") }

// The same with large tile, and walls and floor that are out of true.
func BenchmarkBestLarge(b *testing.B) {
	benchmark(b, wall300+" | tile 597 297 3 | running 1/3")
}

// Panels: set out to 1 mm.
func BenchmarkBestPanel(b *testing.B) {
	benchmark(b, wall300+" | tile 1197 597 3 | taper 7 | fall 5 | running 1/3")
}
func BenchmarkBestTapered(b *testing.B) {
	benchmark(b, wall300+" | taper 7 | fall 5 | tile 297 297 3 | running 1/2")
}
func BenchmarkBestVertical(b *testing.B) {
	benchmark(b, wall300+" | taper 7 | tile 297 297 3 | vertical running 1/2")
}

func benchmark(b *testing.B, line string) {
	in := read(b, line)
	for b.Loop() {
		Best(in)
	}
}

// A floor of 2,500 pieces at 45 degrees.
func BenchmarkBoundedHerringbone(b *testing.B) {
	benchmark(b, "room 4700 4700 | open island 1500 1500 2100 2300 | tile 147 57 3 | diagonal herringbone | mark 0.5")
}
func BenchmarkBoundedDiagonal(b *testing.B) {
	benchmark(b, "room 3000 2400 | tile 297 297 3 | diagonal stack | mark 0.5")
}

// One layout, as a person drags it.
func BenchmarkJudgeTapered(b *testing.B) {
	in := read(b, wall300+" | taper 7 | fall 5 | tile 297 297 3 | running 1/2")
	for b.Loop() {
		Judge(in, in.Zero)
	}
}
