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
	edges   []side
	stretch []stretch
	sliver  unit.Length
	middle  geom.Point // on the center line
	across  [2]float64 // unit vector square to it
}

func newCensus(in *Input) *census {
	c := &census{in: in, index: geom.NewIndex(in.Region)}
	p := in.Bond.Protos[0]
	c.sliver = sliverLimit(in, geom.Point{X: p.W, Y: p.H})
	c.edges = outline(in, p.W, 0)
	for i := range c.edges {
		c.split(i, min(p.W, p.H))
	}
	c.aim()
	return c
}

// stretch is the box round a short piece of an edge.
type stretch struct {
	edge int
	box  geom.Rect
}

// split adds stretches of an edge, each no longer than a tile is wide in x and in y.
func (c *census) split(edge int, longest unit.Length) {
	a := c.edges[edge].a
	d := c.edges[edge].b.Sub(a)
	n := int64(max(d.X.Abs(), d.Y.Abs())/longest) + 1
	at := func(i int64) geom.Point { return a.Add(geom.Point{X: d.X.MulDiv(i, n), Y: d.Y.MulDiv(i, n)}) }
	for i := range n {
		r := geom.Bound(at(i), at(i+1))
		r.Min, r.Max = r.Min.Sub(geom.Point{X: 1, Y: 1}), r.Max.Add(geom.Point{X: 1, Y: 1})
		c.stretch = append(c.stretch, stretch{edge, r})
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

// touched is a tile and the edges of the region that come near it.
type touched struct {
	bond.Cell
	edges []int
}

// edgeTiles lists every tile that may meet an edge of the region, in an order that depends on the input only.
func (c *census) edgeTiles(o geom.Point) (out []touched) {
	at := make(map[address]int, len(c.stretch))
	for _, s := range c.stretch {
		c.in.Bond.Each(s.box, o, func(t bond.Cell) {
			k := address{t.Course, t.Column, t.Proto}
			i, ok := at[k]
			if !ok {
				i, at[k] = len(out), len(out)
				out = append(out, touched{Cell: t})
			}
			if e := out[i].edges; len(e) == 0 || e[len(e)-1] != s.edge {
				out[i].edges = append(e, s.edge)
			}
		})
	}
	return out
}

// assess measures one layout.
func (c *census) assess(o geom.Point) notes {
	n := notes{costs: blank()}
	for _, t := range c.edgeTiles(o) {
		c.cut(t, &n)
	}
	for _, h := range c.in.Holes {
		c.rim(o, h, &n)
	}
	off := c.offCenter(o)
	n.worse(balance, int64(off/(judge.EvenWithin*c.in.Mark)), off, "")
	return n
}

func (c *census) costs(o geom.Point) costs {
	n := c.assess(o)
	return n.costs
}

// part is one piece of a cut tile, as far as the census looks: the box round it, what area is left of the tile, and
// the edge of the region that cuts it and that the eye follows most.
type part struct {
	box   geom.Rect
	area2 int64
	by    Edge
}

// cut notes one cut tile: each part of it that is a whole mark wide, unless less than a mark is missing.
func (c *census) cut(t touched, n *notes) {
	any, mark := false, c.in.Mark
	ring := c.in.Bond.Ring(t.Cell)
	full := ring.Area2()
	for _, p := range c.parts(ring, t) {
		w := min(p.box.W(), p.box.H())
		if w < mark || full-p.area2 < 2*int64(mark)*int64(max(t.Rect.W(), t.Rect.H())) {
			continue
		}
		any = true
		n.worse(narrowest, -int64(w/mark), w, p.by.Name)
		if w < c.sliver {
			n.sliver(int64(p.by.Weight), p.by.Name)
		}
	}
	if any {
		n.costs[cuts]++
	}
}

// parts cuts a tile by the region. Most are cut by one edge that runs right across: that is quick.
func (c *census) parts(ring geom.Ring, t touched) (out []part) {
	edge, crossed := -1, 0
	for _, e := range t.edges {
		switch crosses(ring, c.edges[e].a, c.edges[e].b) {
		case through:
			edge, crossed = e, crossed+1
		case unclear:
			crossed = 2
		}
	}
	switch crossed {
	case 0:
		return nil
	case 1:
		return []part{halved(ring, c.edges[edge])}
	}
	for _, g := range c.index.ClipConvex(ring).Parts() {
		out = append(out, part{g.Bounds(), g.Area2(), c.cutBy(g)})
	}
	return out
}

// cutBy finds the edge of the region that cuts a part and the eye follows most.
func (c *census) cutBy(g geom.Region) (by Edge) {
	by.Weight = -1
	for _, r := range g {
		for _, v := range r {
			if e := edgeOf(c.in.Edges, v.Edge); v.Edge > 0 && e.Weight > by.Weight {
				by = e
			}
		}
	}
	by.Weight = max(0, by.Weight)
	return by
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
	return unit.FromFloat(math.Abs(c.signedOff(o)))
}

// signedOff is how far that tile center lies beyond the line, along across.
func (c *census) signedOff(o geom.Point) float64 {
	b, least := &c.in.Bond, math.Inf(1)
	reach := geom.Point{X: max(b.U.X.Abs(), b.V.X.Abs()), Y: max(b.U.Y.Abs(), b.V.Y.Abs())}
	try := func(p geom.Point) {
		if d := c.fromLine(p); math.Abs(d) < math.Abs(least) {
			least = d
		}
	}
	for _, t := range b.Cover(geom.Rect{Min: c.middle.Sub(reach), Max: c.middle.Add(reach)}, o) {
		mid := geom.Point{X: t.Rect.Min.X + t.Rect.W()/2, Y: t.Rect.Min.Y + t.Rect.H()/2}
		try(mid)
		if b.Axis {
			try(mid.Add(geom.Point{X: b.Pitch.X / 2, Y: b.Pitch.Y / 2}))
		}
	}
	return least
}

// fromLine keeps its products apart, so that no machine joins them with the sum and rounds otherwise.
func (c *census) fromLine(p geom.Point) float64 {
	d := p.Sub(c.middle)
	x, y := float64(float64(d.X)*c.across[0]), float64(float64(d.Y)*c.across[1])
	return x + y
}

// centered is the nearest markable origin to o at which the center line falls on a tile center.
func (c *census) centered(o geom.Point) geom.Point {
	d := c.signedOff(o)
	to := func(x unit.Length, share float64) unit.Length {
		return (x - unit.FromFloat(d*share)).Round(c.in.Mark)
	}
	o = o.Sub(c.in.Zero)
	return c.in.Zero.Add(geom.Point{X: to(o.X, c.across[0]), Y: to(o.Y, c.across[1])})
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
