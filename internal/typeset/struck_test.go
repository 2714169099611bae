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

// meet against trying every point of the line.
func TestMeetByTrying(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := func(name string) draw.Um { return 100 * draw.Um(rapid.Int64Range(0, 20).Draw(t, name)) }
		p, q := draw.At(at("px"), at("py")), draw.At(at("qx"), at("qy"))
		b := draw.Span(550, 650, 1_250, 1_050)
		hit := false
		for k := range draw.Um(2001) {
			x, y := p.X*2_000+(q.X-p.X)*k, p.Y*2_000+(q.Y-p.Y)*k
			hit = hit || x > b.Lo.X*2_000 && x < b.Hi.X*2_000 && y > b.Lo.Y*2_000 && y < b.Hi.Y*2_000
		}
		// A line that only grazes a corner may be missed by trying: with the box a little smaller nothing is left.
		line := []draw.XY{p, q}
		got := meet(line, b.Ring())
		if p == q {
			hit = false // a line without length has no ink
		}
		if hit && !got || got && !hit && meet(line, b.Inset(3).Ring()) {
			t.Fatalf("%v to %v: %v, by trying %v", p, q, got, hit)
		}
	})
}

// Slanting texts side by side: their upright boxes overlap, they do not.
func TestSlantingTextsAreJudgedBySlant(t *testing.T) {
	at := func(x, y draw.Um) draw.Item {
		return draw.Text{At: draw.At(x, y), Size: 2_500, Turn: 45, Body: "119-3/4 inches"}
	}
	line := draw.Stroke(draw.Line(draw.Fine), draw.At(20_700, 20_000), draw.At(50_700, 50_000))
	for name, c := range map[string]struct {
		items []draw.Item
		want  int
	}{
		"side by side": {[]draw.Item{at(20_000, 20_000), at(25_000, 20_000)}, 0},
		"too near":     {[]draw.Item{at(20_000, 20_000), at(22_000, 20_000)}, 1},
		"end to end":   {[]draw.Item{at(20_000, 20_000), at(40_000, 40_000)}, 0},
		"its own line": {[]draw.Item{at(20_000, 20_000), line}, 0},
		"under a line": {[]draw.Item{at(21_400, 20_000), line}, 1},
	} {
		p := draw.Page{W: 100_000, H: 100_000, Items: c.items}
		if got := len(Overlaps(p)) + len(Struck(p)); got != c.want {
			t.Errorf("%s: %v %v", name, Overlaps(p), Struck(p))
		}
	}
}
