package piece

import (
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/unit"
)

// A piece between two walls has lost both factory sides across it, so it may be cut from any place of the tile. Slid to
// where a factory side stands for one of the two cuts, it takes one cut instead of two.

// slide moves the piece in its tile wherever that saves a cut. The piece on the face stays where it is.
func (w *work) slide() {
	if w.hex {
		return
	}
	for _, f := range []facing{toLeft, toBottom} {
		if w.onPiece(f) || w.onPiece(f.opposite()) {
			continue
		}
		if l, ok := w.squareEnd(f.opposite()); ok {
			w.stand(f, l)
		} else if l, ok := w.squareEnd(f); ok {
			w.stand(f.opposite(), l)
		}
	}
}

// squareEnd finds the cut that faces so, is square to the tile and is the piece's utmost end.
func (w *work) squareEnd(f facing) (line, bool) {
	b := w.Laid.Shape.Bounds()
	end := [...]unit.Length{b.Max.X, b.Max.Y, b.Min.X, b.Min.Y}[f]
	for _, l := range w.lines {
		if l.facing == f && !l.partial() && place(f, l.a) == end && place(f, l.b) == end {
			return l, true
		}
	}
	return line{}, false
}

// stand moves the piece so that the tile's side f stands for the cut l.
func (w *work) stand(f facing, l line) {
	by := -w.from(f, l.a)
	if f == toRight || f == toTop {
		by = -by
	}
	d := geom.Point{X: by}
	if !f.upright() {
		d = geom.Point{Y: by}
	}
	w.under = append(w.under, stood{f, w.least(l), w.hidden(l)})
	w.Laid.Shape = relabelled(w.Laid.Shape, f, place(f, l.a)).Move(d)
	for i := range w.Laid.Holes {
		w.Laid.Holes[i].Center = w.Laid.Holes[i].Center.Add(d)
	}
	w.read()
}

// stood is a factory side that stands for a cut, and what that cut would have met.
type stood struct {
	side   facing
	least  Edge
	hidden unit.Length
}

// relabelled names the edges that lie on a line after the factory side.
func relabelled(g geom.Region, f facing, at unit.Length) geom.Region {
	var out geom.Region
	for _, r := range g {
		ring := slices.Clone(r)
		for i, v := range r {
			if place(f, v.P) == at && place(f, r[(i+1)%len(r)].P) == at {
				ring[i].Edge = f.label()
			}
		}
		out = append(out, ring.Clean())
	}
	return out
}

// hiddenAt is what is hidden at a factory side: nothing, but where it stands for a cut.
func (w *work) hiddenAt(f facing) unit.Length {
	for _, u := range w.under {
		if u.side == f {
			return u.hidden
		}
	}
	return 0
}

// free reports whether no neighbor meets a factory side of the tile's own frame.
func (w *work) free(own geom.Label) bool {
	lies := lay.TurnSide(own, w.proto.Turn)
	stands := slices.ContainsFunc(w.under, func(u stood) bool { return u.side.label() == lies })
	return stands || w.Laid.Free[-own]
}
