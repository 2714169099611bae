package joinery

import (
	"testing"

	"dryfit/internal/unit"

	"pgregory.net/rapid"
)

// What is left of a box and what is taken out of it are the box again: every cell of a small grid lies in just one of them.
func TestLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		axis := func(name string) (lo, hi unit.Length) {
			a, b := rapid.IntRange(-1, 5).Draw(t, name), rapid.IntRange(-1, 5).Draw(t, name)
			return unit.Length(min(a, b)), unit.Length(max(a, b))
		}
		whole := span(0, 4, 0, 4, 0, 4)
		var gone Box
		for i := range 3 {
			gone.Lo[i], gone.Hi[i] = axis("edge")
		}
		left := less([]Box{whole}, gone)
		for x := range 4 {
			for y := range 4 {
				for z := range 4 {
					c := span(unit.Length(x), unit.Length(x+1), unit.Length(y), unit.Length(y+1), unit.Length(z), unit.Length(z+1))
					n := 0
					for _, b := range append(left, whole.And(gone)) {
						if !b.And(c).Empty() {
							n++
						}
					}
					if n != 1 {
						t.Fatalf("%v of %v less %v lies in %d of %v", c, whole, gone, n, left)
					}
				}
			}
		}
	})
}

// The way into a part's frame and back.
func TestPlaceIsTheInverse(t *testing.T) {
	b := span(1, 5, 20, 27, 300, 311)
	for turn := range turns {
		in := span(2, 4, 21, 25, 303, 304)
		p, q := Turn(turn).local(b, in.Lo), Turn(turn).local(b, in.Hi)
		var lo, hi [3]unit.Length
		for i := range 3 {
			lo[i], hi[i] = min(p[i], q[i]), max(p[i], q[i])
		}
		if got := Turn(turn).place(b, lo, hi); got != in {
			t.Errorf("turn %d: %v, want %v", turn, got, in)
		}
	}
}
