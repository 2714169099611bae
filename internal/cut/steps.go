package cut

import (
	"dryfit/internal/geom"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// steps lists the cuts of a sheet or stick in the order in which the saw makes them: all of a panel's own cuts from its low edge
// up, then those of the panels that it falls into.
func steps(panels []Panel) []Step {
	var out []Step
	for _, p := range panels {
		out = divide(out, p)
	}
	for i := range out {
		out[i].Number = i + 1
	}
	return out
}

func divide(out []Step, p Panel) []Step {
	for i, k := range p.Into {
		left := p.Rect // what the cuts before have left
		high, end := k.Rect.Max.Y, p.Rect.Max.Y
		left.Min.Y = k.Rect.Min.Y
		if p.Cut == Crosscut {
			high, end = k.Rect.Max.X, p.Rect.Max.X
			left.Min = geom.Point{X: k.Rect.Min.X, Y: p.Rect.Min.Y}
		}
		if high < end {
			out = append(out, Step{Way: p.Cut, Panel: left, At: high, Size: high - lowOf(left, p.Cut), Frees: k.Piece, Leaves: NoPiece})
		} else if i > 0 {
			out[len(out)-1].Leaves = k.Piece
		}
	}
	for _, k := range p.Into {
		out = divide(out, k)
	}
	return out
}

// lowOf is where a panel begins, across the cuts.
func lowOf(r geom.Rect, w Way) unit.Length {
	if w == Crosscut {
		return r.Min.X
	}
	return r.Min.Y
}

// offcuts lists what is kept.
func (c *cutter) offcuts() {
	for i, u := range c.lot.Used {
		for _, p := range u.Panels {
			c.kept(i, p)
		}
	}
}

func (c *cutter) kept(used int, p Panel) {
	if p.Keep {
		size := part.Size{Length: p.Rect.W(), Width: p.Rect.H(), Thick: c.lot.Thick}
		c.lot.Offcuts = append(c.lot.Offcuts, Offcut{used, p.Rect, part.Offcut{Stock: c.lot.Stock, Size: size, From: c.lot.Used[used].Number}})
	}
	for _, k := range p.Into {
		c.kept(used, k)
	}
}
