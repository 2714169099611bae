package export_test

import "math"

// holes: each hole's center, measured from the factory sides that are named, lies in the piece, is where the face has it, and its rim
// is as far from the piece's edge as said.
func (r *rechecker) holes(s *setPiece, f readFace) {
	for _, h := range s.Holes {
		if h.Bit != nil && *h.Bit < h.Drill {
			r.complain("%s, %s: the bit is less than the hole", s.ID, h.Name)
		}
		at, ok := s.center(h)
		if !ok {
			continue
		}
		if h.CutX != nil && !s.cutAt(s.lie.point(at), true, h.CutX.mm()) || h.CutY != nil && !s.cutAt(s.lie.point(at), false, h.CutY.mm()) {
			r.complain("%s, %s: no cut is so far from it", s.ID, h.Name)
		}
		if !h.Bite && !s.inTile.holds(at) {
			r.complain("%s, %s: the hole is not in the piece", s.ID, h.Name)
		}
		if h.ToEdge != nil && math.Abs(s.inTile.rim(at)-h.Drill.mm()/2-h.ToEdge.mm()) > 2*grid {
			r.complain("%s, %s: its rim is not %v mm from the edge", s.ID, h.Name, h.ToEdge.mm())
		}
		found := false
		for _, o := range f.Holes {
			found = found || o.Name == h.Name && dist(s.to.point(at), pt{o.Center.X.mm(), o.Center.Y.mm()}) < 4*grid
		}
		if !found {
			r.complain("%s, %s: not where the face has it", s.ID, h.Name)
		}
	}
	for _, o := range f.Holes {
		if s.onFace.holds(pt{o.Center.X.mm(), o.Center.Y.mm()}) && !s.drills(o.Name) {
			r.complain("%s: %s goes through it, and it is not drilled", s.ID, o.Name)
		}
	}
}

// cutAt reports whether some cut crosses the level (or the upright) through a point at a distance from it.
func (s *setPiece) cutAt(p pt, level bool, d float64) bool {
	turn := func(p pt) pt { return p }
	if !level {
		turn = func(p pt) pt { return pt{p.y, p.x} }
	}
	p = turn(p)
	for i, ring := range s.lying {
		for j := range ring {
			a, b := turn(ring[j]), turn(ring[(j+1)%len(ring)])
			if s.InTile[i][j].Edge < 0 || min(a.y, b.y) > p.y || max(a.y, b.y) < p.y || a.y == b.y {
				continue
			}
			if x := a.x + (p.y-a.y)/(b.y-a.y)*(b.x-a.x); math.Abs(math.Abs(x-p.x)-d) < 2*grid {
				return true
			}
		}
	}
	return false
}

func (s *setPiece) drills(name string) bool {
	for _, h := range s.Holes {
		if h.Name == name {
			return true
		}
	}
	return false
}

// center is where a hole's measures put it in the tile; false where they are from a cut edge or a corner.
func (s *setPiece) center(h readHole) (pt, bool) {
	lo, hi := shape{s.place}.bounds()
	x := map[string]float64{"left": lo.x + h.FromX.mm(), "right": hi.x - h.FromX.mm()}
	y := map[string]float64{"bottom": lo.y + h.FromY.mm(), "top": hi.y - h.FromY.mm()}
	px, okx := x[h.EdgeX]
	py, oky := y[h.EdgeY]
	return s.lie.back(pt{px, py}), okx && oky
}
