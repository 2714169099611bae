package sheet

import (
	"testing"

	"dryfit/internal/draw"
	"dryfit/internal/geom"
	"dryfit/internal/unit"

	"pgregory.net/rapid"
)

// within against the slow way: every whole point of the box's rim and middle is inside the outline or on it.
func TestWithinAgainstPoints(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rings := [][]draw.XY{triangleOrL(t)}
		x, y := draw.Um(rapid.Int64Range(0, 30).Draw(t, "x")), draw.Um(rapid.Int64Range(0, 30).Draw(t, "y"))
		b := draw.Span(x, y, x+draw.Um(rapid.Int64Range(1, 12).Draw(t, "w")), y+draw.Um(rapid.Int64Range(1, 12).Draw(t, "h")))
		got, want := within(rings, b), true
		for px := b.Lo.X; px <= b.Hi.X; px++ {
			for py := b.Lo.Y; py <= b.Hi.Y; py++ {
				want = want && (contains(rings, draw.At(px, py)) || onRim(rings[0], draw.At(px, py)))
			}
		}
		if got && !want {
			t.Fatalf("%v is not within %v", b, rings)
		}
		if !got && want && !touches(rings[0], b) {
			t.Fatalf("%v is within %v", b, rings)
		}
	})
}

func triangleOrL(t *rapid.T) []draw.XY {
	k := draw.Um(rapid.Int64Range(5, 40).Draw(t, "k"))
	if rapid.Bool().Draw(t, "triangle") {
		return []draw.XY{{X: 0, Y: 0}, {X: 2 * k, Y: 0}, {X: 0, Y: 2 * k}}
	}
	return []draw.XY{{X: 0, Y: 0}, {X: 2 * k, Y: 0}, {X: 2 * k, Y: k}, {X: k, Y: k}, {X: k, Y: 2 * k}, {X: 0, Y: 2 * k}}
}

func onRim(ring []draw.XY, p draw.XY) bool {
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if (b.X-a.X)*(p.Y-a.Y) == (b.Y-a.Y)*(p.X-a.X) && min(a.X, b.X) <= p.X && p.X <= max(a.X, b.X) && min(a.Y, b.Y) <= p.Y && p.Y <= max(a.Y, b.Y) {
			return true
		}
	}
	return false
}

// touches: a side of the outline has a point of the box's rim or inside: then within may say no, to be safe.
func touches(ring []draw.XY, b draw.Box) bool {
	for x := b.Lo.X; x <= b.Hi.X; x++ {
		for y := b.Lo.Y; y <= b.Hi.Y; y++ {
			if onRim(ring, draw.At(x, y)) {
				return true
			}
		}
	}
	return false
}

// Windows cover the drawing, none is larger than the room, and what is no longer than the shared strip stands wholly in
// one of them.
func TestWindowsCover(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		um := func(name string, lo, hi int64) draw.Um { return draw.Um(rapid.Int64Range(lo, hi).Draw(t, name)) }
		shared := um("shared", 3_000, 20_000)
		room := draw.Span(0, 0, um("room w", 100_000, 400_000), um("room h", 100_000, 400_000))
		want := draw.Span(-5_000, 7_000, um("w", 10_000, 2_000_000), um("h", 10_000, 2_000_000))
		all := windows(want, room, shared)
		for _, w := range all {
			if w.shown.W() > room.W() || w.shown.H() > room.H() {
				t.Fatalf("window %v is larger than %v", w.shown, room)
			}
		}
		x := um("x", int64(want.Lo.X), int64(max(want.Lo.X, want.Hi.X-shared)))
		y := um("y", int64(want.Lo.Y), int64(max(want.Lo.Y, want.Hi.Y-3_000)))
		word := draw.Span(x, y, min(x+shared, want.Hi.X), y+min(shared, 3_000))
		for _, w := range all {
			if w.shown.Holds(word) {
				return
			}
		}
		t.Fatalf("%v is in none of %v", word, all)
	})
}

func TestLargestScale(t *testing.T) {
	room := draw.Span(0, 0, 180*draw.MM, 200*draw.MM)
	for _, c := range []struct {
		w, h unit.Length
		want int64
	}{
		{300 * unit.Millimetre, 400 * unit.Millimetre, 2},
		{900 * unit.Millimetre, 1000 * unit.Millimetre, 5},
		{901 * unit.Millimetre, 1000 * unit.Millimetre, 10},
		{1800 * unit.Millimetre, 2440 * unit.Millimetre, 20},
		{1 * unit.Metre, 30 * unit.Metre, 200},
	} {
		if got := largest(c.w, c.h, room); got != c.want {
			t.Errorf("%v by %v: 1:%d, want 1:%d", c.w.MM(), c.h.MM(), got, c.want)
		}
	}
}

// A length at a scale is right to half a micrometre of paper, the same wherever the face stands.
func TestViewRounds(t *testing.T) {
	v := view{n: 20, at: draw.At(30_000, 40_000), of: geom.Point{X: unit.Inch, Y: -unit.Inch}}
	p := v.point(geom.Point{X: unit.Inch + 71*unit.Inch, Y: -unit.Inch + 3*unit.Millimetre})
	if p != draw.At(30_000+90_170, 40_000+150) { // 71 in = 1803.4 mm; over 20: 90.17 mm
		t.Errorf("71 in, 3 mm at 1:20 stands at %v", p)
	}
}

// Words never share room, and stay within.
func TestCrowd(t *testing.T) {
	c := crowd{within: draw.Span(0, 0, 60*draw.MM, 40*draw.MM)}
	placed := 0
	for range 50 {
		before := len(c.taken)
		if _, ok := c.leader(draw.At(30*draw.MM, 20*draw.MM), []string{"word"}, func(draw.Box) draw.Um { return 0 }); !ok {
			break
		}
		placed++
		last := c.taken[before]
		if !c.within.Holds(last) {
			t.Errorf("%v is outside", last)
		}
		for _, b := range c.taken[:before] {
			if b.Meets(last) {
				t.Errorf("%v and %v share room", b, last)
			}
		}
	}
	if placed < 10 {
		t.Errorf("only %d words found room", placed)
	}
}
