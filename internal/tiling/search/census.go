package search

import (
	"math"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// census judges layouts of bonds that are not straight both ways, one at a time. It looks only at the tiles along the
// region's edges: the others are whole.
//
// Here a cut's width is the lesser side of the box round the piece, in the tile's own directions: the leg of a
// triangle at a 45 degree edge, the width of a strip. What another face's tile covers is not taken off. Balance is the
// distance of the center line to the nearest tile center (or, in straight courses, crossing of joints) by its middle.
// Sight lines and joints at openings are not judged: no joint of these bonds runs along them.
type census struct {
	in      *Input
	index   *geom.Index
	stretch []geom.Rect // short stretches of the region's edges
	sliver  unit.Length
	middle  geom.Point // on the center line
	across  [2]float64 // unit vector square to it
}

func newCensus(in *Input) *census {
	c := &census{in: in, index: geom.NewIndex(in.Region)}
	p := in.Bond.Protos[0]
	c.sliver = sliverLimit(in, geom.Point{X: p.W, Y: p.H})
	for _, r := range in.Region {
		for i, v := range r {
			c.split(v.P, r[(i+1)%len(r)].P, min(p.W, p.H))
		}
	}
	c.aim()
	return c
}

// split adds stretches of an edge, each no longer than a tile is wide in x and in y.
func (c *census) split(a, b geom.Point, longest unit.Length) {
	d := b.Sub(a)
	n := int64(max(d.X.Abs(), d.Y.Abs())/longest) + 1
	at := func(i int64) geom.Point { return a.Add(geom.Point{X: d.X.MulDiv(i, n), Y: d.Y.MulDiv(i, n)}) }
	for i := range n {
		r := geom.Bound(at(i), at(i+1))
		r.Min, r.Max = r.Min.Sub(geom.Point{X: 1, Y: 1}), r.Max.Add(geom.Point{X: 1, Y: 1})
		c.stretch = append(c.stretch, r)
	}
}

// aim finds the center line: upright on the face, so turned back by the pattern's angle in the pattern frame.
func (c *census) aim() {
	a := c.in.Bond.Angle.Radians()
	c.across = [2]float64{math.Cos(a), -math.Sin(a)}
	box := c.in.Region.Bounds()
	c.middle = geom.Point{X: (box.Min.X + box.Max.X) / 2, Y: (box.Min.Y + box.Max.Y) / 2}
	switch {
	case c.in.Bond.Angle != 0 && c.in.Center.Given:
		c.middle = c.in.Center.Through
	case c.in.Center.Given:
		c.middle.X = c.in.Center.At
	}
}

// address names a tile of the plane.
type address struct{ course, column, proto int }

// edgeTiles visits every tile that may meet an edge of the region, once, in an order that depends on the input only.
func (c *census) edgeTiles(o geom.Point, visit func(bond.Cell)) {
	done := map[address]bool{}
	for _, s := range c.stretch {
		c.in.Bond.Each(s, o, func(t bond.Cell) {
			if k := (address{t.Course, t.Column, t.Proto}); !done[k] {
				done[k] = true
				visit(t)
			}
		})
	}
}

// assess measures one layout.
func (c *census) assess(o geom.Point) notes {
	n := notes{costs: blank()}
	c.edgeTiles(o, func(t bond.Cell) {
		if c.where(t) == geom.Across {
			c.cut(t, &n)
		}
	})
	for _, h := range c.in.Holes {
		c.rim(o, h, &n)
	}
	off := c.offCenter(o)
	n.worse(balance, int64(off/c.in.Mark), off, "")
	return n
}

func (c *census) costs(o geom.Point) costs {
	n := c.assess(o)
	return n.costs
}

func (c *census) where(t bond.Cell) geom.Where {
	if c.in.Bond.Protos[t.Proto].Ring == nil {
		return c.index.Classify(t.Rect)
	}
	return c.index.ClassifyConvex(c.in.Bond.Ring(t))
}

// cut notes one cut tile: each part of it that is a whole mark wide.
func (c *census) cut(t bond.Cell, n *notes) {
	any, ease := false, c.in.Mark
	for _, part := range c.index.ClipConvex(c.in.Bond.Ring(t)).Parts() {
		box := part.Bounds()
		w := min(box.W(), box.H())
		if w < ease || nearlyWhole(part, t, c.in.Mark) {
			continue
		}
		any = true
		name, weight := c.cutBy(part)
		n.worse(narrowest, -int64(w/c.in.Mark), w, name)
		if w < c.sliver {
			n.sliver(int64(weight), name)
		}
	}
	if any {
		n.costs[cuts]++
	}
}

// nearlyWhole reports whether what is missing is less than a strip of one mark along the tile's longer side.
func nearlyWhole(part geom.Region, t bond.Cell, mark unit.Length) bool {
	if t.Rect.W() != part.Bounds().W() || t.Rect.H() != part.Bounds().H() {
		return false
	}
	return t.Rect.W().Times(t.Rect.H())-part.Area() < mark.Times(max(t.Rect.W(), t.Rect.H()))
}

// cutBy names the edge of the region that cuts a part and the eye follows most.
func (c *census) cutBy(part geom.Region) (name string, weight int) {
	weight = -1
	for _, r := range part {
		for _, v := range r {
			if v.Edge <= 0 {
				continue
			}
			if e := edgeOf(c.in.Edges, v.Edge); e.Weight > weight {
				name, weight = e.Name, e.Weight
			}
		}
	}
	return name, max(0, weight)
}

// rim notes how far a hole is from the edge of the tile that holds its center; in a joint it is crossed.
func (c *census) rim(o geom.Point, h Hole, n *notes) {
	clear := unit.Length(0)
	at := geom.Rect{Min: h.Center.Sub(geom.Point{X: 1, Y: 1}), Max: h.Center.Add(geom.Point{X: 1, Y: 1})}
	c.in.Bond.Each(at, o, func(t bond.Cell) {
		clear = max(clear, depth(c.in.Bond.Ring(t), h.Center))
	})
	clear -= (h.Drill + 1) / 2
	cost := clear
	if c.in.Enough > 0 {
		cost = min(cost, c.in.Enough)
	}
	n.worse(holes, -int64(cost.Floor(c.in.Mark)/c.in.Mark), clear, h.Name)
}

// depth is how far a point lies inside a ring; 0 outside.
func depth(r geom.Ring, p geom.Point) unit.Length {
	if r.Contains(p) <= 0 {
		return 0
	}
	least := wide
	for i, v := range r {
		least = min(least, geom.DistToSegment(p, v.P, r[(i+1)%len(r)].P))
	}
	return least
}

// offCenter is the distance of the center line to the nearest tile center, among the tiles about its middle.
func (c *census) offCenter(o geom.Point) unit.Length {
	b, least := &c.in.Bond, wide
	reach := geom.Point{X: max(b.U.X.Abs(), b.V.X.Abs()), Y: max(b.U.Y.Abs(), b.V.Y.Abs())}
	b.Each(geom.Rect{Min: c.middle.Sub(reach), Max: c.middle.Add(reach)}, o, func(t bond.Cell) {
		mid := geom.Point{X: t.Rect.Min.X + t.Rect.W()/2, Y: t.Rect.Min.Y + t.Rect.H()/2}
		least = min(least, c.fromLine(mid))
		if b.Axis {
			least = min(least, c.fromLine(mid.Add(geom.Point{X: b.Pitch.X / 2, Y: b.Pitch.Y / 2})))
		}
	})
	return least
}

func (c *census) fromLine(p geom.Point) unit.Length {
	d := p.Sub(c.middle)
	return unit.FromFloat(math.Abs(float64(d.X)*c.across[0] + float64(d.Y)*c.across[1]))
}

// measures lists what the census covers; nothing of it is proved best.
func (c *census) measures(o geom.Point) (out []judge.Measure) {
	n := c.assess(o)
	for _, m := range []int{balance, narrowest, slivers, holes, cuts} {
		j := n.measure(m)
		j.Exact = false
		out = append(out, j)
	}
	return out
}
