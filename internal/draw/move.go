package draw

import "fmt"

// Moved returns copies of the items shifted on the page; ids and classes stay.
func Moved(items []Item, by XY) []Item {
	out := make([]Item, len(items))
	for i, it := range items {
		out[i] = moved(it, by)
	}
	return out
}

func moved(it Item, by XY) Item {
	switch it := it.(type) {
	case Path:
		rings := make([][]XY, len(it.Rings))
		for i, ring := range it.Rings {
			rings[i] = make([]XY, len(ring))
			for k, p := range ring {
				rings[i][k] = p.Plus(by)
			}
		}
		it.Rings = rings
		return it
	case Circle:
		it.C = it.C.Plus(by)
		return it
	case Text:
		it.At = it.At.Plus(by)
		return it
	case Group:
		if it.Clip != nil {
			it.Clip = &[2]XY{it.Clip[0].Plus(by), it.Clip[1].Plus(by)}
		}
		it.Items = Moved(it.Items, by)
		return it
	}
	panic(fmt.Sprintf("draw: no such item: %T", it))
}

// Plus adds the two.
func (p XY) Plus(q XY) XY { return XY{p.X + q.X, p.Y + q.Y} }

// Reach is the least box that holds the path's corners, without the width of its line.
func (p Path) Reach() Box { return ringShape(p.Rings).reach() }

// Reach is the box about the circle, without the width of its line.
func (c Circle) Reach() Box { return c.reach() }

// And is what both boxes share; a box without area where they share none.
func (b Box) And(c Box) Box {
	lo := XY{max(b.Lo.X, c.Lo.X), max(b.Lo.Y, c.Lo.Y)}
	return Box{lo, XY{max(lo.X, min(b.Hi.X, c.Hi.X)), max(lo.Y, min(b.Hi.Y, c.Hi.Y))}}
}
