package piece

import (
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/unit"
)

// A hollow is a trifle of a piece with inward corners: a notch, a step or a strip that is nowhere deeper than a trifle. The outline that is
// really cut runs straight over it: along what lies before and after it, or along the tile's own side.

// filled returns the shape without its hollows.
func (w *work) filled(shape geom.Region) geom.Region {
	tile := lay.Lying(lay.Factory(w.proto), w.proto)
	out := make(geom.Region, 0, len(shape))
	for _, r := range shape {
		for next, ok := w.fill(r, tile); ok; next, ok = w.fill(r, tile) {
			r = next
		}
		out = append(out, r)
	}
	return out
}

// fill fills the longest hollow of a ring, if there is one.
func (w *work) fill(r geom.Ring, tile geom.Region) (geom.Ring, bool) {
	for n := len(r) - 2; n >= 1; n-- {
		for i := range r {
			h := hollow{slices.Concat(r[i:], r[:i]), n}
			most, cut := w.forgiven(h)
			if !cut {
				continue
			}
			for _, over := range h.ways(tile[0]) {
				if h.trifle(over, tile, most) {
					return over, true
				}
			}
		}
	}
	return nil, false
}

// hollow is a ring that begins with a run of so many cut edges.
type hollow struct {
	ring geom.Ring
	n    int
}

// forgiven is how deep a hollow may be; false where a factory side is part of the run.
func (w *work) forgiven(h hollow) (unit.Length, bool) {
	most := lay.LeastWidth - 1
	for _, v := range h.ring[:h.n] {
		if v.Edge < 0 {
			return 0, false
		}
		most = min(most, w.edge(v.Edge).Forgive)
	}
	return most, most >= 0
}

// ways are the rings that run over the hollow: on to where the edges before and after it meet, or are one line; and along a side of the tile.
func (h hollow) ways(tile geom.Ring) []geom.Ring {
	r, m := h.ring, len(h.ring)
	before, after, last := r[m-1], r[h.n], r[(h.n+1)%m].P
	start, end := r[0].P, after.P
	var out []geom.Ring
	add := func(over ...geom.Vertex) {
		if ring := geom.Ring(slices.Concat(over, r[h.n+1:])).Clean(); len(ring) >= 3 {
			out = append(out, ring)
		}
	}
	if geom.Cross(before.P, start, end) == 0 && geom.Cross(before.P, start, last) == 0 {
		add(geom.Vertex{P: start, Edge: before.Edge}, after)
	}
	if x, ok := geom.Intersect(before.P, start, end, last); ok {
		add(geom.Vertex{P: x, Edge: after.Edge})
	}
	for i, v := range tile {
		side := tile[(i+1)%len(tile)].P
		p, okP := geom.Intersect(before.P, start, v.P, side)
		q, okQ := geom.Intersect(v.P, side, end, last)
		if okP && okQ {
			add(geom.Vertex{P: p, Edge: v.Edge}, geom.Vertex{P: q, Edge: after.Edge})
		}
	}
	return out
}

// trifle reports whether a ring adds next to nothing, within the tile. Beside the corners' distances both ways it looks at the area: what is nowhere deeper
// than most covers no more than that along both sides of the box around it.
func (h hollow) trifle(over geom.Ring, tile geom.Region, most unit.Length) bool {
	box := geom.Bound(h.ring[0].P, h.ring[1].P)
	for _, v := range h.ring[:h.n+1] {
		box = box.With(v.P)
	}
	more := over.Area2() - h.ring.Area2()
	if more <= 0 || more > 2*int64(most)*int64(box.W()+box.H()+2*most) {
		return false
	}
	for _, v := range over {
		if tile.Contains(v.P) < 0 || lay.Rim(geom.Region{h.ring}, v.P) > most {
			return false
		}
	}
	for _, v := range h.ring {
		if lay.Rim(geom.Region{over}, v.P) > most {
			return false
		}
	}
	ok, _, _ := over.Simple()
	return ok
}
