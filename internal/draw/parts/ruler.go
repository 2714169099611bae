package parts

import "dryfit/internal/draw"

// Bar is a divided bar of known lengths: to check a print with a rule, or to read a drawing's scale.
type Bar struct {
	At     draw.XY // its lower left end
	Step   draw.Um // length of one division on paper
	Count  int
	Labels map[int]string // what stands under which division mark
	Note   string         // above the bar
}

const barHigh = 2 * draw.MM

// Ruler is the bar that every sheet carries to check its print: 100 mm, or 4 in.
func Ruler(at draw.XY, inches bool) Bar {
	if inches {
		return Bar{at, 12_700, 8, map[int]string{0: "0", 2: "1", 4: "2", 6: "3", 8: "4 in"}, "Check the print: this bar is 4 in long"}
	}
	return Bar{at, 10 * draw.MM, 10, map[int]string{0: "0", 5: "50", 10: "100 mm"}, "Check the print: this bar is 100 mm long"}
}

// W is the length of the bar.
func (b Bar) W() draw.Um { return b.Step * draw.Um(b.Count) }

// Box is what the bar covers with its lettering, but for the half of the end labels that stands out sideways.
func (b Bar) Box() draw.Box {
	return draw.Span(b.At.X, b.At.Y-textOff-Tiny, b.At.X+b.W(), b.At.Y+barHigh+textOff+Tiny*13/10)
}

// Items draws the bar, every second division black.
func (b Bar) Items() []draw.Item {
	whole := draw.Span(b.At.X, b.At.Y, b.At.X+b.W(), b.At.Y+barHigh)
	out := []draw.Item{draw.Rect(whole, draw.Line(draw.Fine), draw.Fill{})}
	for i := 0; i < b.Count; i += 2 {
		x := b.At.X + draw.Um(i)*b.Step
		out = append(out, draw.Rect(draw.Span(x, b.At.Y, x+b.Step, b.At.Y+barHigh), draw.Pen{}, draw.Fill{On: true}))
	}
	for i := 0; i <= b.Count; i++ {
		if body, ok := b.Labels[i]; ok {
			at := draw.At(b.At.X+draw.Um(i)*b.Step, b.At.Y-textOff-Tiny)
			out = append(out, draw.Text{Class: "ruler", At: at, Size: Tiny, Anchor: draw.Middle, Body: body})
		}
	}
	return append(out, draw.Text{Class: "ruler", At: draw.At(b.At.X, b.At.Y+barHigh+textOff), Size: Tiny, Body: b.Note})
}
