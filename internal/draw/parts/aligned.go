package parts

import (
	"math"

	"dryfit/internal/draw"
)

// Aligned is a dimension parallel to what it measures, for a wall out of square or a diagonal (ISO 129-1). The line
// lies Offset to the left of the way from From to To, or to the right where it is negative; 0 sets it on the points
// themselves, without extension lines, as for a diagonal. The words stand above the line, turned with it by whole degrees.
type Aligned struct {
	From, To draw.XY
	Offset   draw.Um
	Text     string
	Size     draw.Um
}

// Items draws the dimension; nothing where From and To are one place.
func (a Aligned) Items() []draw.Item {
	d := math.Hypot(float64(a.To.X-a.From.X), float64(a.To.Y-a.From.Y))
	if d == 0 {
		return nil
	}
	dir := vector{float64(a.To.X-a.From.X) / d, float64(a.To.Y-a.From.Y) / d}
	left := vector{-dir.y, dir.x}
	p, q := left.from(a.From, a.Offset), left.from(a.To, a.Offset)
	out := []draw.Item{draw.Stroke(draw.Line(dimPen), p, q)}
	for _, end := range []draw.XY{a.From, a.To} {
		out = append(out, a.end(end, dir, left)...)
	}
	return append(out, a.text(p, q))
}

// end draws the extension line and the oblique stroke at one end.
func (a Aligned) end(at draw.XY, dir, left vector) []draw.Item {
	sign := draw.Um(1)
	if a.Offset < 0 {
		sign = -1
	}
	on := left.from(at, a.Offset)
	slash := vector{(dir.x - dir.y) / math.Sqrt2, (dir.y + dir.x) / math.Sqrt2}
	const reach = 1_556 // tickHalf on either axis, along the slash
	tick := draw.Stroke(draw.Line(draw.Wide), slash.from(on, -reach), slash.from(on, reach))
	if a.Offset*sign <= offFeat {
		return []draw.Item{tick}
	}
	ext := draw.Stroke(draw.Line(dimPen), left.from(at, sign*offFeat), left.from(on, sign*beyond))
	return []draw.Item{ext, tick}
}

// text stands above the middle of the line, read from below or from the right.
func (a Aligned) text(p, q draw.XY) draw.Text {
	if q.X < p.X || q.X == p.X && q.Y < p.Y {
		p, q = q, p
	}
	angle := math.Atan2(float64(q.Y-p.Y), float64(q.X-p.X))
	turn := int(math.Floor(angle*180/math.Pi + 0.5))
	if turn == -90 { // nearly straight down: the other way is up
		turn = 90
	}
	sin, cos := math.Sincos(float64(turn) * math.Pi / 180)
	mid := draw.At((p.X+q.X)/2, (p.Y+q.Y)/2)
	at := vector{-sin, cos}.from(mid, textOff)
	return draw.Text{Class: "dimension", At: at, Size: sized(a.Size), Anchor: draw.Middle, Turn: turn, Body: a.Text}
}

// vector is a direction of length one.
type vector struct{ x, y float64 }

// from goes so far from a place, rounded half up to whole micrometres.
func (v vector) from(p draw.XY, far draw.Um) draw.XY {
	return draw.At(p.X+draw.Um(math.Floor(v.x*float64(far)+0.5)), p.Y+draw.Um(math.Floor(v.y*float64(far)+0.5)))
}
