package joinery

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// DrawerCut is room that a drawer has to give to what stands in it: from its back forward, and from a height up. It is found when all trades
// are held against each other, after the drawers were made.
type DrawerCut struct {
	Cabinet, Drawer string
	For             string      // what it clears
	From, To        unit.Length // from the left side of the box
	Deep            unit.Length // from its back
	Up              unit.Length // from its underside
}

// CutDrawers is a plan whose drawers are cut out. A box that is not reached at its bottom has a notch in its back, open above; where the
// bottom is reached too it becomes a U: its back in two, its bottom cut out, and strips on it round the cut. What can not be cut is told with
// what would do. The plan that it is given stays as it is.
func (p Plan) CutDrawers(cuts []DrawerCut) (Plan, diag.List) {
	var found diag.List
	if len(cuts) == 0 {
		return p, nil
	}
	p.Cabinets = slices.Clone(p.Cabinets)
	for _, cut := range cuts {
		for i := range p.Cabinets {
			c := &p.Cabinets[i]
			if c.Name != cut.Cabinet {
				continue
			}
			for k, d := range c.Drawers {
				if d.Name == cut.Drawer {
					c.Drawers = slices.Clone(c.Drawers)
					c.Pieces = slices.Clone(c.Pieces)
					u := &drawerCutter{c: c, d: d, cut: cut}
					u.gather()
					c.Drawers[k].Cut = u.make()
					found = append(found, u.found...)
				}
			}
		}
	}
	return p, found
}

// drawerCutter cuts one drawer. l, r, front, back and bottom are where its pieces are in the cabinet's list.
type drawerCutter struct {
	c                            *Cabinet
	d                            Drawer
	cut                          DrawerCut
	gone                         Box // what is cut out of the box
	l, r, front, back, bottomsAt int
	found                        diag.List
}

func (u *drawerCutter) gather() {
	u.l, u.r, u.front, u.back, u.bottomsAt = -1, -1, -1, -1, -1
	for i, p := range u.c.Pieces {
		if p.Of != u.d.Name || p.Role != DrawerRole {
			continue
		}
		switch p.Part.Name {
		case u.d.Name + " box left":
			u.l = i
		case u.d.Name + " box right":
			u.r = i
		case u.d.Name + " box front":
			u.front = i
		case u.d.Name + " box back":
			u.back = i
		case u.d.Name + " box bottom":
			u.bottomsAt = i
		}
	}
	b := u.d.Box
	u.gone = span(b.Lo[xAxis]+u.cut.From, b.Lo[xAxis]+u.cut.To, b.Lo[yAxis]+u.cut.Up, b.Hi[yAxis], b.Lo[zAxis], b.Lo[zAxis]+u.cut.Deep)
}

// make cuts, and reports whether it did.
func (u *drawerCutter) make() bool {
	if min(u.l, u.r, u.front, u.back, u.bottomsAt) < 0 {
		return false
	}
	floor := u.c.Pieces[u.bottomsAt].Box
	through := u.gone.Lo[yAxis] < floor.Hi[yAxis]
	if !u.leavesEnough(through) {
		return false
	}
	if !through {
		u.notch(u.back, u.gone)
		return true
	}
	u.gone.Lo[yAxis] = u.d.Box.Lo[yAxis] // a sliver of wood under a pipe is none
	u.notch(u.bottomsAt, u.gone)
	u.partBack()
	u.strips()
	return true
}

// leavesEnough reports whether both sides keep their slides, with a strip beside the cut where it goes through the bottom, and the front
// stays whole.
func (u *drawerCutter) leavesEnough(through bool) bool {
	l, r, front, back := u.c.Pieces[u.l].Box, u.c.Pieces[u.r].Box, u.c.Pieces[u.front].Box, u.c.Pieces[u.back].Box
	strip := unit.Length(0)
	if through {
		strip = back.Size(zAxis)
	}
	if u.gone.Lo[xAxis]-strip >= l.Hi[xAxis] && u.gone.Hi[xAxis]+strip <= r.Lo[xAxis] && u.gone.Hi[zAxis]+strip <= front.Lo[zAxis] {
		return true
	}
	long, high := u.d.Box.Size(zAxis)-u.cut.Deep, u.cut.Up
	mend := "make its box no longer than {2} (box length), move the pipe, or leave the drawer out"
	if high > u.c.Pieces[u.bottomsAt].Box.Hi[yAxis]-u.d.Box.Lo[yAxis] {
		mend = "make its box no longer than {2} (box length) or no higher than {3} (box height), move the pipe, or leave the drawer out"
	}
	u.found.Add(diag.Stop, "drawer-cut-side", u.d.At, "{0} can not be cut out to clear {1}: the cut would take a side, which carries its slide, or its front", mend, diag.T(u.d.Name), diag.T(u.cut.For), diag.L(long), diag.L(high))
	return false
}

// notch cuts a box out of a flat piece, through it.
func (u *drawerCutter) notch(i int, gone Box) {
	p := u.c.Pieces[i]
	in := p.Box.And(gone)
	if in.Empty() {
		return
	}
	p.Part.Cutouts = append(slices.Clone(p.Part.Cutouts), part.Cutout{Outline: rectRing(p.Turn.area(p.Box, in, 0, 1)), For: u.cut.For})
	u.c.Pieces[i] = p
}

// partBack leaves the two ends of the back.
func (u *drawerCutter) partBack() {
	whole := u.c.Pieces[u.back]
	left, right := whole, whole
	left.cutLevel(whole.Box.Lo[xAxis], u.gone.Lo[xAxis], u.d.Name+" box back, left")
	right.cutLevel(u.gone.Hi[xAxis], whole.Box.Hi[xAxis], u.d.Name+" box back, right")
	u.c.Pieces[u.back] = left
	u.c.Pieces = slices.Insert(u.c.Pieces, u.back+1, right)
}

// cutLevel keeps a stretch of a level piece, whose length runs along x, with what is cut into that stretch.
func (p *Piece) cutLevel(lo, hi unit.Length, name string) {
	off := lo - p.Box.Lo[xAxis]
	p.Box.Lo[xAxis], p.Box.Hi[xAxis] = lo, hi
	p.Part.Name, p.Part.Size.Length = name, hi-lo
	var kept []part.Channel
	for _, c := range p.Part.Channels {
		c.Area = geom.Rect{Min: geom.Point{X: max(c.Area.Min.X-off, 0), Y: c.Area.Min.Y}, Max: geom.Point{X: min(c.Area.Max.X-off, hi-lo), Y: c.Area.Max.Y}}
		if c.Area.W() > 0 {
			kept = append(kept, c)
		}
	}
	p.Part.Channels = kept
}

// strips stand on the bottom round the cut, of the stock of the back: two beside it, one before it.
func (u *drawerCutter) strips() {
	back := u.c.Pieces[u.back]
	thick, floor := back.Box.Size(zAxis), u.c.Pieces[u.bottomsAtNow()].Box
	y0, y1 := floor.Hi[yAxis], u.d.Box.Hi[yAxis]
	b := &builder{name: u.c.Name, at: back.Part.At}
	s := good{name: back.Part.Stock}
	add := func(name string, box Box, turn Turn) {
		q := b.add(u.d.Name+" "+name, s, box, turn, DrawerRole)
		q.Of = u.d.Name
		u.c.Pieces = append(u.c.Pieces, *q)
	}
	g := u.gone
	add("cut-out strip, left", span(g.Lo[xAxis]-thick, g.Lo[xAxis], y0, y1, back.Box.Hi[zAxis], g.Hi[zAxis]), LeftLevel)
	add("cut-out strip, right", span(g.Hi[xAxis], g.Hi[xAxis]+thick, y0, y1, back.Box.Hi[zAxis], g.Hi[zAxis]), RightLevel)
	add("cut-out strip, front", span(g.Lo[xAxis]-thick, g.Hi[xAxis]+thick, y0, y1, g.Hi[zAxis], g.Hi[zAxis]+thick), Level)
}

// bottomsAtNow is where the bottom is once the back is in two.
func (u *drawerCutter) bottomsAtNow() int {
	if u.bottomsAt > u.back {
		return u.bottomsAt + 1
	}
	return u.bottomsAt
}
