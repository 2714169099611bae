package export_test

import "math"

// moves finds the shift that, after the turn, carries the outline in the tile to the one on the face; false where there is none.
func (s *setPiece) moves(turn float64) bool {
	sin, cos := math.Sincos(turn * math.Pi / 180)
	s.to = motion{cos: cos, sin: sin}
	in, on := s.inTile, s.onFace
	if !alike(in, on) { // what was slid in its tile has one factory side where the face may have several edges
		in, on, s.slid = in.plain(), on.plain(), true
	}
	if !alike(in, on) {
		return false
	}
	var turned shape
	for _, ring := range in {
		turned = append(turned, s.to.ring(ring))
	}
	a, _ := turned.bounds()
	b, _ := on.bounds()
	s.to.x, s.to.y = b.x-a.x, b.y-a.y
	return s.fits(in, on) && s.labels()
}

// alike reports whether two outlines have as many rings and vertices.
func alike(s, t shape) bool {
	same := len(s) == len(t)
	for i := 0; same && i < len(s); i++ {
		same = len(s[i]) == len(t[i])
	}
	return same
}

// fits: every vertex is where the motion puts it, but for rounding.
func (s *setPiece) fits(in, on shape) bool {
	for i, ring := range in {
		for _, p := range ring {
			best := math.Inf(1)
			for _, q := range on[i] {
				best = min(best, dist(s.to.point(p), q))
			}
			if best > 2*grid {
				return false
			}
		}
	}
	return true
}

// labels: a side has one label in the tile and on the face, but where the face ends along a factory side, or where the piece was slid to
// have one.
func (s *setPiece) labels() bool {
	if !alike(s.inTile, s.onFace) {
		return true
	}
	for i, ring := range s.InTile {
		for j, v := range ring {
			switch on := s.OnFace[i][j].Edge; {
			case v.Edge < 0 && on > 0:
				s.slid = true
			case v.Edge != on:
				return false
			}
		}
	}
	return true
}
