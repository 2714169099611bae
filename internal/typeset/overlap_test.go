package typeset

import (
	"math"
	"testing"

	"dryfit/internal/draw"
)

func TestBoxOfTurnsAndAnchors(t *testing.T) {
	w := Width("H12", 2500, false)
	for _, c := range []struct {
		anchor draw.Anchor
		turn   int
		x0, y0 draw.Um // lower left of the box of a text at 50, 50 mm
		wide   bool
	}{
		{draw.Start, 0, 50_000, 50_000, true},
		{draw.Middle, 0, 50_000 - w/2, 50_000, true},
		{draw.End, 0, 50_000 - w, 50_000, true},
		{draw.Start, 90, 50_000 - 2500, 50_000, false},
		{draw.End, 90, 50_000 - 2500, 50_000 - w, false},
	} {
		b := BoxOf(draw.Text{At: draw.At(50_000, 50_000), Size: 2500, Anchor: c.anchor, Turn: c.turn, Body: "H12"})
		wide, high := b.W(), b.H()
		if !c.wide {
			wide, high = high, wide
		}
		const figure = 60 // figures stand and hang a little over capitals
		if near(b.Lo.X, c.x0) > figure || near(b.Lo.Y, c.y0) > figure || wide != w || near(high, 2500) > 2*figure {
			t.Errorf("anchor %d turn %d: %v", c.anchor, c.turn, b)
		}
	}
}

func near(a, b draw.Um) draw.Um { return max(a-b, b-a) }

func TestOverlaps(t *testing.T) {
	at := func(x, y draw.Um, body string) draw.Item {
		return draw.Text{At: draw.At(x, y), Size: 2500, Body: body}
	}
	for name, c := range map[string]struct {
		items []draw.Item
		want  int
	}{
		"apart":           {[]draw.Item{at(10_000, 10_000, "one"), at(10_000, 15_000, "two")}, 0},
		"one on another":  {[]draw.Item{at(10_000, 10_000, "one"), at(11_000, 11_000, "two")}, 1},
		"within a group":  {[]draw.Item{at(10_000, 10_000, "one"), draw.Group{Items: []draw.Item{at(11_000, 11_000, "two")}}}, 1},
		"off the page":    {[]draw.Item{at(99_000, 10_000, "wide")}, 1},
		"below the page":  {[]draw.Item{at(10_000, 100, "g")}, 1},
		"nothing to read": {[]draw.Item{at(10_000, 10_000, "one"), at(10_000, 10_000, "")}, 0},
	} {
		got := Overlaps(draw.Page{W: 100_000, H: 100_000, Items: c.items})
		if len(got) != c.want {
			t.Errorf("%s: %v", name, got)
		}
		for _, o := range got {
			if o.String() == "" {
				t.Errorf("%s: no words for it", name)
			}
		}
	}
}

// A text turned by any angle lies within its box, and by quarters fills it: corners turned by the textbook.
func TestBoxOfAnyTurn(t *testing.T) {
	level := BoxOf(draw.Text{Size: 2_500, Body: "119-3/4"})
	for _, turn := range []int{1, 37, 45, 89, 91, -20, 180, 270} {
		b := BoxOf(draw.Text{Size: 2_500, Body: "119-3/4", Turn: turn})
		sin, cos := math.Sincos(float64(turn) * math.Pi / 180)
		want := math.Abs(cos)*float64(level.W()) + math.Abs(sin)*float64(level.H())
		if math.Abs(float64(b.W())-want) > 2 {
			t.Errorf("turn %d: %d wide, want %.0f", turn, b.W(), want)
		}
	}
}
