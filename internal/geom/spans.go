package geom

import (
	"slices"

	"dryfit/internal/unit"
)

// Axis is the direction of a line along a frame's axes.
type Axis uint8

const (
	Horizontal Axis = iota // along x
	Vertical               // along y
)

// Span is a stretch of a line.
type Span struct{ Lo, Hi unit.Length }

// Spans returns where the line at the given ordinate (Horizontal) or abscissa (Vertical) runs in the region, its
// boundary included, in ascending order; ends are rounded half up. Stretches that touch are joined, points are left
// out.
func (g Region) Spans(a Axis, at unit.Length) []Span {
	spans := append(g.spansBeside(a, at, 0), g.spansBeside(a, at, -1)...)
	slices.SortFunc(spans, func(p, q Span) int { return sign(int64(p.Lo-q.Lo))*2 + sign(int64(p.Hi-q.Hi)) })
	var out []Span
	for _, s := range spans {
		switch n := len(out); {
		case s.Lo == s.Hi:
		case n > 0 && s.Lo <= out[n-1].Hi:
			out[n-1].Hi = max(out[n-1].Hi, s.Hi)
		default:
			out = append(out, s)
		}
	}
	return out
}

// spansBeside returns the spans of a line just above the given one (shift 0) or just below it (shift -1).
func (g Region) spansBeside(a Axis, at, shift unit.Length) []Span {
	var ends []unit.Length
	for _, r := range g {
		for i, v := range r {
			p, q := a.swap(v.P), a.swap(r.end(i))
			if p.Y > q.Y {
				p, q = q, p
			}
			if p.Y <= at+shift && at+shift < q.Y {
				ends = append(ends, along(p.X, q.X, int64(at-p.Y), int64(q.Y-p.Y)))
			}
		}
	}
	slices.Sort(ends)
	spans := make([]Span, 0, len(ends)/2)
	for i := 1; i < len(ends); i += 2 {
		spans = append(spans, Span{ends[i-1], ends[i]})
	}
	return spans
}

// swap exchanges x and y for a vertical line.
func (a Axis) swap(p Point) Point {
	if a == Vertical {
		return Point{p.Y, p.X}
	}
	return p
}
