package svg

import (
	"io"
	"testing"

	"dryfit/internal/draw"
)

// A wall of 300 tiles, half of them cut and hatched, each with its number.
func BenchmarkWall(b *testing.B) {
	p := draw.Page{W: draw.Letter.W, H: draw.Letter.H}
	for i := range 300 {
		at := draw.At(draw.Um(10_000+i%20*9_500), draw.Um(10_000+i/20*12_000))
		f := draw.Fill{}
		if i%2 == 0 {
			f.Hatch = draw.Diagonal
		}
		p.Items = append(p.Items, draw.Rect(draw.Span(at.X, at.Y, at.X+9_000, at.Y+11_500), draw.Line(draw.Narrow), f),
			draw.Text{At: at, Size: draw.MM, Body: "A-12-7"})
	}
	for b.Loop() {
		if err := Write(io.Discard, p, Options{}); err != nil {
			b.Fatal(err)
		}
	}
}
