package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/report"
	"dryfit/internal/site"
)

// edgeWords says along the sides which tile runs through and which butts, and on a floor the names of its corners.
func (d *facade) edgeWords() []draw.Item {
	out := d.cornerLetters()
	for _, e := range d.site.Edges {
		words := report.EdgeWords(e)
		s, ok := d.side(e.Name)
		if !ok || words == "" {
			continue
		}
		for _, body := range []string{words, e.Name} { // the table of edges has the rest
			if items, ok := d.label(parts.Label{Body: body, Turn: s.turn, Class: "edge"}, d.beside(s)...); ok {
				out = append(out, items...)
				break
			}
		}
	}
	return out
}

// side is a straight edge of the board on the page.
type side struct {
	a, b draw.XY
	turn int // of words along it
}

// side finds an edge of the board by its name; the longest of them.
func (d *facade) side(name string) (best side, ok bool) {
	for _, r := range d.site.Board {
		for i, v := range r {
			if d.edgeName(v.Edge) != name {
				continue
			}
			p, q := d.point(v.P), d.point(r[(i+1)%len(r)].P)
			if !ok || dist(p, q) > dist(best.a, best.b) {
				best, ok = side{p, q, turnOf(p, q)}, true
			}
		}
	}
	return best, ok
}

func (d *facade) edgeName(l geom.Label) string {
	if l < 1 || int(l) > len(d.site.Edges) {
		return ""
	}
	return d.site.Edges[l-1].Name
}

// beside are places for words along an edge, between it and the dimension line, from its upper or right end on.
func (d *facade) beside(s side) []draw.XY {
	const steps = 12
	off := draw.At(0, lineOff/2)
	if s.turn == 90 {
		off = draw.At(lineOff/2, 0)
	}
	mid := draw.At((s.a.X+s.b.X)/2, (s.a.Y+s.b.Y)/2)
	if outside := d.box(d.area); s.turn == 90 && mid.X < (outside.Lo.X+outside.Hi.X)/2 || s.turn == 0 && mid.Y < (outside.Lo.Y+outside.Hi.Y)/2 {
		off = draw.At(-off.X, -off.Y)
	}
	high, low := s.a, s.b
	if low.Y+low.X > high.Y+high.X {
		high, low = low, high
	}
	var out []draw.XY
	for k := draw.Um(2); k <= steps-2; k++ {
		out = append(out, draw.At(high.X+(low.X-high.X)*k/steps, high.Y+(low.Y-high.Y)*k/steps).Plus(off))
	}
	return out
}

// cornerLetters names the corners of a floor.
func (d *facade) cornerLetters() []draw.Item {
	if d.site.Kind != site.FloorFace {
		return nil
	}
	var out []draw.Item
	corners := d.p.Room.Survey.Corners
	n := len(corners)
	for i, c := range corners {
		before, at, after := d.point(corners[(i+n-1)%n].Board), d.point(c.Board), d.point(corners[(i+1)%n].Board)
		u, w := normal(before, at, 3500), normal(at, after, 3500)
		items, _ := d.label(parts.Label{Body: c.Name, Bold: true, Size: parts.Large, Class: "corner"}, at.Plus(u).Plus(w), at.Plus(u), at.Plus(w))
		out = append(out, items...)
	}
	return out
}
