package export

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// place is where in the room document a fact stands.
type place struct {
	Path   string `json:"path" doc:"keys joined by ' > '"`
	Line   int    `json:"line,omitempty" doc:"counted from 1; absent: the document has no line for it"`
	Column int    `json:"column,omitempty" doc:"counted from 1"`
}

func placeOf(p diag.Place) place { return place{p.Path, p.Line, p.Column} }

// point is a place in the frame that its object names.
type point struct {
	X unit.Length `json:"x" doc:"to the right"`
	Y unit.Length `json:"y" doc:"up"`
}

func pointOf(p geom.Point) point { return point{p.X, p.Y} }

// vertex is a corner of an outline and what the side is that leaves it.
type vertex struct {
	X    unit.Length `json:"x" doc:"to the right"`
	Y    unit.Length `json:"y" doc:"up"`
	Edge geom.Label  `json:"edge" doc:"label of the side from this vertex to the next"`
}

// ring is closed: its last vertex is joined to its first.
type ring []vertex

// outline is bounded by rings: outer ones counter-clockwise, holes clockwise.
type outline []ring

func outlineOf(g geom.Region) outline {
	out := make(outline, 0, len(g))
	for _, r := range g {
		line := make(ring, 0, len(r))
		for _, v := range r {
			line = append(line, vertex{v.P.X, v.P.Y, v.Edge})
		}
		out = append(out, line)
	}
	return out
}

// rect lies along the axes.
type rect struct {
	Left   unit.Length `json:"left" doc:"least x"`
	Bottom unit.Length `json:"bottom" doc:"least y"`
	Right  unit.Length `json:"right" doc:"greatest x"`
	Top    unit.Length `json:"top" doc:"greatest y"`
}

func rectOf(r geom.Rect) rect { return rect{r.Min.X, r.Min.Y, r.Max.X, r.Max.Y} }

// known gives a value only where it is known.
func known[T any](l T, ok bool) *T {
	if !ok {
		return nil
	}
	return &l
}

// given gives a length only where it is more or less than nothing.
func given(l unit.Length) *unit.Length { return known(l, l != 0) }
