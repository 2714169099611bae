package typeset

import (
	"math"

	"dryfit/internal/draw"
)

// Width is how far a line of lettering reaches, rounded up.
func Width(text string, size draw.Um, bold bool) draw.Um {
	f := FaceOf(bold)
	return ceilDiv(f.units(Clean(text))*int64(size), int64(f.Cap))
}

func (f *Face) units(clean string) int64 {
	var n int64
	for _, r := range clean {
		n += int64(f.glyph(r).advance)
	}
	return n
}

func ceilDiv(a, b int64) draw.Um {
	q := a / b
	if a%b > 0 {
		q++
	}
	return draw.Um(q)
}

// Ascent is how high the text's ink stands above the base line: for capitals and figures about its size.
func Ascent(text string, size draw.Um, bold bool) draw.Um {
	top, _ := FaceOf(bold).ink(Clean(text))
	return FaceOf(bold).scale(top, size)
}

// Descent is how deep the text's ink hangs below the base line, zero or more.
func Descent(text string, size draw.Um, bold bool) draw.Um {
	_, bottom := FaceOf(bold).ink(Clean(text))
	return FaceOf(bold).scale(-bottom, size)
}

func (f *Face) ink(clean string) (top, bottom int) {
	for _, r := range clean {
		g := f.glyph(r)
		top, bottom = max(top, g.top), min(bottom, g.bottom)
	}
	return top, bottom
}

// Leading is the distance of base lines in running text: ISO 3098-1 gives 1.4 capital heights as the least for
// lettering without accents; 1.6 leaves room for them.
func Leading(size draw.Um) draw.Um { return size * 16 / 10 }

// BoxOf is the upright rectangle of the page that holds a text: its advance along the line, its ink across. Of text
// that is turned by other than a quarter it holds more than the text covers; see Corners.
func BoxOf(t draw.Text) draw.Box {
	c := Corners(t, 0)
	return draw.Path{Rings: [][]draw.XY{c[:]}}.Reach()
}

// Corners of the rectangle that a text covers, turned with it, each side moved inward by so much.
func Corners(t draw.Text, inset draw.Um) [4]draw.XY {
	w := Width(t.Body, t.Size, t.Bold)
	x0 := -anchorShift(t.Anchor, w)
	up, down := Ascent(t.Body, t.Size, t.Bold), Descent(t.Body, t.Size, t.Bold)
	var out [4]draw.XY
	for i, c := range draw.Span(x0, -down, x0+w, up).Inset(inset).Ring() {
		out[i] = t.At.Plus(turned(c, t.Turn))
	}
	return out
}

// Start is where the line of a text begins: encoders that know no anchor begin there.
func Start(t draw.Text) draw.XY {
	d := anchorShift(t.Anchor, Width(t.Body, t.Size, t.Bold))
	return t.At.Plus(turned(draw.At(-d, 0), t.Turn))
}

// turned turns a place about the origin; exact for quarters, else rounded half up to whole micrometres.
func turned(p draw.XY, degrees int) draw.XY {
	switch degrees {
	case 0:
		return p
	case 90:
		return draw.At(-p.Y, p.X)
	}
	sin, cos := math.Sincos(float64(degrees) * math.Pi / 180)
	x, y := float64(p.X), float64(p.Y)
	return draw.At(draw.Um(math.Floor(x*cos-y*sin+0.5)), draw.Um(math.Floor(x*sin+y*cos+0.5)))
}

func anchorShift(a draw.Anchor, w draw.Um) draw.Um {
	switch a {
	case draw.Middle:
		return w / 2
	case draw.End:
		return w
	}
	return 0
}

// Advance is how far a character moves the pen, in font units.
func (f *Face) Advance(r rune) int { return f.glyph(r).advance }
