package document

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// OutlinePoint is one corner of a polygon: its distance from the left, and off the side that looks to the wall.
type OutlinePoint struct{ Right, Off unit.Length }

// polygon reads "0 0, 20 0, 18 12": the corners one after the other. Across and Deep are those of its bounds.
func (r *reader) polygon(n *text.Node, typed string) (Outline, bool) {
	o := Outline{Kind: PolygonOutline, At: n.At}
	for _, corner := range splitAt(typed, ',') {
		a, b, two := cutSpace(corner)
		if !two {
			r.stop("outline-corner", n.At, "{0} is no corner", "write each corner as its distance from the left and off the wall: 20 12", diag.T(short(corner)))
			return o, false
		}
		right, ok1 := r.length(n, a, within)
		off, ok2 := r.length(n, b, within)
		if !ok1 || !ok2 {
			return o, false
		}
		o.Points = append(o.Points, OutlinePoint{right, off})
		o.Across, o.Deep = max(o.Across, right), max(o.Deep, off)
	}
	if twiceArea(o.Points) == 0 {
		r.stop("outline-few", n.At, "these corners bound nothing", "write at least three corners that do not lie in one line", diag.T(strings.TrimSpace(typed)))
		return o, false
	}
	return o, true
}

func twiceArea(points []OutlinePoint) int64 {
	var sum int64
	for i, p := range points {
		q := points[(i+1)%len(points)]
		sum += int64(p.Right)*int64(q.Off) - int64(q.Right)*int64(p.Off)
	}
	return sum
}
