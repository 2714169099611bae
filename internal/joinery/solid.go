package joinery

import (
	"dryfit/internal/unit"
)

// Solid is what is left of a piece round all that goes through it, as boxes: a pipe that passes through its own hole meets nothing.
// Round holes count as their squares.
func (p Piece) Solid() []Box {
	left := []Box{p.Box}
	thick := p.Part.Size.Thick
	for _, h := range p.Part.Holes {
		if h.Through && h.On.Flat() {
			r := h.Diameter / 2
			left = less(left, p.Turn.place(p.Box, [3]unit.Length{h.At.X - r, h.At.Y - r, 0}, [3]unit.Length{h.At.X + r, h.At.Y + r, thick}))
		}
	}
	for _, k := range p.Part.Cutouts {
		b := k.Outline.Bounds()
		left = less(left, p.Turn.place(p.Box, [3]unit.Length{b.Min.X, b.Min.Y, 0}, [3]unit.Length{b.Max.X, b.Max.Y, thick}))
	}
	return left
}

// place is where a stretch of a part's own frame is in the cabinet: the inverse of local.
func (t Turn) place(b Box, lo, hi [3]unit.Length) Box {
	var out Box
	for i, w := range turns[t] {
		l, h := b.Lo[w.axis]+lo[i], b.Lo[w.axis]+hi[i]
		if w.back {
			l, h = b.Hi[w.axis]-hi[i], b.Hi[w.axis]-lo[i]
		}
		out.Lo[w.axis], out.Hi[w.axis] = l, h
	}
	return out
}

// less takes a box out of others, which fall into boxes below, above and beside it along each axis in turn.
func less(all []Box, gone Box) []Box {
	var out []Box
	for _, b := range all {
		in := b.And(gone)
		if in.Empty() {
			out = append(out, b)
			continue
		}
		for axis := range 3 {
			for _, side := range []Box{cutAt(b, axis, b.Lo[axis], in.Lo[axis]), cutAt(b, axis, in.Hi[axis], b.Hi[axis])} {
				if side.Size(axis) > 0 {
					out = append(out, side)
				}
			}
			b = cutAt(b, axis, in.Lo[axis], in.Hi[axis])
		}
	}
	return out
}
