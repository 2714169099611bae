package tiling

import (
	"fmt"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/tiling/search"
	"dryfit/internal/unit"
)

// Move is how far an opening that can still move should, so that its edges fall on joints.
type Move struct {
	Opening string       `json:"opening"`
	At      diag.Place   `json:"at"`
	Across  unit.Length  `json:"across"` // to the right; negative to the left
	Up      unit.Length  `json:"up"`     // negative down
	Why     judge.Reason `json:"why"`
}

// movable lists the openings of a field that may still move, each with the hole that it leaves between the tiles.
func (g *ground) movable() []search.Opening {
	if g.bond.Angle != 0 {
		return nil
	}
	var out []search.Opening
	for _, o := range g.canvas.face.Openings {
		if r, ok := g.holeOf(o.Name); ok && o.Moves > 0 {
			out = append(out, search.Opening{Name: o.Name, Rect: r, Moves: o.Moves})
		}
	}
	return out
}

// holeOf bounds the edges of the field that belong to one opening.
func (g *ground) holeOf(name string) (box geom.Rect, ok bool) {
	for _, r := range g.region {
		for i, v := range r {
			e, known := edgeOf(g.canvas.edges, v.Edge)
			if !known || !strings.HasPrefix(e.Name, name+", ") {
				continue
			}
			if !ok {
				box, ok = geom.Rect{Min: v.P, Max: v.P}, true
			}
			box = box.With(v.P).With(r[(i+1)%len(r)].P)
		}
	}
	return box, ok
}

// moves says how far to move each opening while it can still move, against the layout that is laid.
func (m *maker) moves(g *ground, in search.Input, origin geom.Point) []Move {
	var out []Move
	for _, s := range search.Shift(in, origin) {
		move := Move{Opening: s.Opening, Across: s.Across, Up: s.Up, Why: s.Why}
		for _, o := range g.canvas.face.Openings {
			if o.Name == s.Opening {
				move.At = o.At
			}
		}
		say := judge.Join("", judge.Because("{0}, while it can still move, does better "+move.words(), append([]diag.Value{diag.T(move.Opening)}, move.values()...)...),
			judge.Because(": "), s.Why)
		m.found(diag.Note, "opening-could-move", move.At, say.Text, "change its place in the document and plan again", say.Values...)
		out = append(out, move)
	}
	return out
}

// words says how far and which way; {1} and {2} stand for the values.
func (v Move) words() string {
	var out []string
	for _, d := range v.directions() {
		out = append(out, fmt.Sprintf("{%d} %s", len(out)+1, d.way))
	}
	return strings.Join(out, " and ")
}

func (v Move) values() []diag.Value {
	var out []diag.Value
	for _, d := range v.directions() {
		out = append(out, diag.F(d.by))
	}
	return out
}

type direction struct {
	by  unit.Length
	way string
}

// directions lists the moves along each axis that are not nothing.
func (v Move) directions() []direction {
	var out []direction
	for _, d := range []struct {
		by          unit.Length
		plus, minus string
	}{{v.Across, "to the right", "to the left"}, {v.Up, "up", "down"}} {
		switch {
		case d.by > 0:
			out = append(out, direction{d.by, d.plus})
		case d.by < 0:
			out = append(out, direction{-d.by, d.minus})
		}
	}
	return out
}
