package sheet

import (
	"math"

	"dryfit/internal/document"
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/plan"
)

// OffOnScreen draws where in the floor a thing is by its distances square off the walls: to scale where the room is, else
// as a sketch. With one distance it is shown somewhere along that wall, and says that a second is wanted.
func OffOnScreen(p plan.Plan, name string, off []document.AtWall) draw.Page {
	d := &survey{p: p, at: map[string]draw.XY{}}
	d.place()
	d.within = d.area
	page := draw.Page{Title: "Where " + name + " is in the floor", W: d.area.Hi.X, H: d.area.Hi.Y}
	outline := draw.Path{Class: "room", Rings: [][]draw.XY{d.ring}, Closed: true, Pen: draw.Line(draw.Wide)}
	page.Items = append([]draw.Item{outline}, d.names()...)
	page.Items = append(page.Items, d.offs(off)...)
	return page
}

// offLine is one distance on paper: the line of its wall, and how far off it.
type offLine struct {
	a, u  direction // a point of the wall, and along it
	n     direction // square off it, into the room
	far   float64
	words string
}

type direction struct{ x, y float64 }

func (d direction) plus(e direction, far float64) direction {
	return direction{d.x + e.x*far, d.y + e.y*far}
}
func (d direction) dot(e direction) float64 { return d.x*e.x + d.y*e.y }
func (d direction) at() draw.XY {
	return draw.At(draw.Um(math.Floor(d.x+0.5)), draw.Um(math.Floor(d.y+0.5)))
}

func (d *survey) offs(off []document.AtWall) []draw.Item {
	var lines []offLine
	for _, o := range off {
		if l, ok := d.offLine(o); ok {
			lines = append(lines, l)
		}
	}
	if len(lines) == 0 {
		words, _ := d.label(parts.Label{Body: "how far off two walls?", Clear: true, Class: "rule"}, draw.At(d.area.Hi.X/2, d.area.Hi.Y/2))
		return words
	}
	center := crossing(lines)
	out := centerMark(center.at(), 0)
	out = append(out, draw.Circle{Class: "hole", C: center.at(), R: 1500, Pen: draw.Line(draw.Wide)})
	for _, l := range lines {
		foot := center.plus(l.n, -(center.dot(l.n) - l.a.dot(l.n)))
		m := draw.Stroke(draw.Pen{Width: draw.Normal, Color: draw.Blue}, foot.at(), center.at())
		m.Class = "measure"
		out = append(out, m)
		mid := draw.At((foot.at().X+center.at().X)/2, (foot.at().Y+center.at().Y)/2)
		words, _ := d.label(parts.Label{Body: l.words, Bold: true, Class: "reading"}, mid, mid.Plus(draw.At(0, 3000)), mid.Plus(draw.At(0, -3000)), mid.Plus(draw.At(6000, 0)))
		out = append(out, words...)
	}
	return out
}

// offLine puts one distance on paper. False where its wall is not known or nothing is read.
func (d *survey) offLine(o document.AtWall) (offLine, bool) {
	const sketched = 18_000 // of a room without a scale
	for _, w := range d.p.Document.Walls {
		a, okA := d.at[w.Left]
		b, okB := d.at[w.Right]
		if w.Name != o.Wall || !okA || !okB || !o.Value.Known {
			continue
		}
		dx, dy := float64(b.X-a.X), float64(b.Y-a.Y)
		long := math.Hypot(dx, dy)
		if long == 0 {
			return offLine{}, false
		}
		u := direction{dx / long, dy / long}
		l := offLine{a: direction{float64(a.X), float64(a.Y)}, u: u, n: direction{u.y, -u.x}, far: sketched, words: d.p.Style.Bare(o.Value.V)}
		if d.n > 0 {
			l.far = float64(view{n: d.n}.um(o.Value.V))
		} else {
			l.a = direction{float64(a.X+b.X) / 2, float64(a.Y+b.Y) / 2}
		}
		return l, true
	}
	return offLine{}, false
}

// crossing is the point at its distance off the first two walls, or beside the middle of the first where there is no other.
func crossing(lines []offLine) direction {
	first := lines[0]
	at := first.a.plus(first.n, first.far)
	for _, l := range lines[1:] {
		if slope := first.u.dot(l.n); math.Abs(slope) > 0.1 { // else the two walls hardly cross
			return at.plus(first.u, (l.far-(at.dot(l.n)-l.a.dot(l.n)))/slope)
		}
	}
	return at.plus(first.u, 15_000)
}
