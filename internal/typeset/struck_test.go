package typeset

import (
	"testing"

	"dryfit/internal/draw"

	"pgregory.net/rapid"
)

func TestStruck(t *testing.T) {
	text := draw.Text{At: draw.At(10_000, 10_000), Size: 2_500, Body: "B-5-1"}
	through := draw.Stroke(draw.Line(draw.Fine), draw.At(0, 11_000), draw.At(90_000, 11_500))
	under := draw.Stroke(draw.Line(draw.Fine), draw.At(0, 9_900), draw.At(90_000, 9_900))
	plate := draw.Rect(BoxOf(text).Inset(-300), draw.Pen{}, draw.Fill{On: true, Color: draw.White})
	kite := draw.Path{Closed: true, Fill: draw.Fill{On: true}, Rings: [][]draw.XY{{draw.At(0, 11_000), draw.At(15_000, 0), draw.At(40_000, 11_000), draw.At(15_000, 40_000)}}}
	for name, c := range map[string]struct {
		items []draw.Item
		want  int
	}{
		"through":                   {[]draw.Item{text, through}, 1},
		"through, drawn first":      {[]draw.Item{through, text}, 1},
		"under":                     {[]draw.Item{text, under}, 0},
		"no pen":                    {[]draw.Item{text, draw.Path{Rings: through.Rings}}, 0},
		"hidden by a plate":         {[]draw.Item{through, plate, text}, 0},
		"plate below the line":      {[]draw.Item{plate, through, text}, 1},
		"a kite is no plate":        {[]draw.Item{through, kite, text}, 1},
		"clipped away":              {[]draw.Item{text, draw.Group{Clip: &[2]draw.XY{draw.At(50_000, 0), draw.At(90_000, 90_000)}, Items: []draw.Item{through}}}, 0},
		"frame about it":            {[]draw.Item{text, draw.Rect(draw.Span(0, 0, 90_000, 90_000), draw.Line(draw.Wide), draw.Fill{})}, 0},
		"only the closing edge":     {[]draw.Item{text, draw.Path{Closed: true, Pen: draw.Line(draw.Fine), Rings: [][]draw.XY{{draw.At(0, 11_000), draw.At(0, 50_000), draw.At(90_000, 50_000), draw.At(90_000, 11_000)}}}}, 1},
		"open, without that edge":   {[]draw.Item{text, draw.Path{Pen: draw.Line(draw.Fine), Rings: [][]draw.XY{{draw.At(0, 11_000), draw.At(0, 50_000), draw.At(90_000, 50_000), draw.At(90_000, 11_000)}}}}, 0},
		"slanting past its corner":  {[]draw.Item{text, draw.Stroke(draw.Line(draw.Fine), draw.At(9_000, 12_000), draw.At(11_000, 14_000))}, 0},
		"starting within the words": {[]draw.Item{text, draw.Stroke(draw.Line(draw.Fine), draw.At(12_000, 11_000), draw.At(12_000, 90_000))}, 1},
	} {
		if got := Struck(draw.Page{Items: c.items}); len(got) != c.want {
			t.Errorf("%s: %v", name, got)
		}
	}
}

// crosses against trying every point of the line.
func TestCrossesByTrying(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := func(name string) draw.Um { return 100 * draw.Um(rapid.Int64Range(0, 20).Draw(t, name)) }
		p, q := draw.At(at("px"), at("py")), draw.At(at("qx"), at("qy"))
		b := draw.Span(550, 650, 1_250, 1_050)
		hit := false
		for k := range draw.Um(2001) {
			x, y := p.X*2_000+(q.X-p.X)*k, p.Y*2_000+(q.Y-p.Y)*k
			hit = hit || x > b.Lo.X*2_000 && x < b.Hi.X*2_000 && y > b.Lo.Y*2_000 && y < b.Hi.Y*2_000
		}
		// A line that only grazes a corner may be missed by trying; so trying may not find what crosses denies.
		if got := crosses(p, q, b); hit && !got || got && !hit && !grazes(p, q, b) {
			t.Fatalf("%v to %v: %v, by trying %v", p, q, got, hit)
		}
	})
}

// grazes: with the box a little smaller nothing is left of the crossing.
func grazes(p, q draw.XY, b draw.Box) bool { return !crosses(p, q, b.Inset(3)) }
