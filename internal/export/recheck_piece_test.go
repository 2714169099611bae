package export_test

import (
	"maps"
	"math"
	"slices"
	"sort"
	"strings"
)

// thin is how wide what is left out as too thin for a piece may be: half a millimetre, as is what a joint forgives a trim.
const thin = 0.5

// setPiece is a piece where it lies.
type setPiece struct {
	readPiece
	field  *readField
	inTile shape
	onFace shape
	blank  []pt // the whole tile in its own frame
	lie    motion
	lying  shape // the piece turned as it lies in the pattern, the whole tile's lower left corner at the origin: what words mean
	place  []pt  // the whole tile likewise
	to     motion
	slid   bool // cut from another part of a tile than the pattern has there
	tile   []pt // the whole tile where it lies; the piece's own bounds if it is slid
	grown  []pt // with half a joint round it
}

// piece checks what can be said of one piece alone, and readies it for the rest.
func (r *rechecker) piece(f *readField, p readPiece) (*setPiece, bool) {
	s := &setPiece{readPiece: p, field: f, inTile: shapeOf(p.InTile), onFace: shapeOf(p.OnFace)}
	if p.Size >= len(f.Sizes) || len(p.InTile) == 0 {
		r.complain("%s: no size %d, or no outline", p.ID, p.Size)
		return s, false
	}
	size := f.Sizes[p.Size]
	s.blank = blankOf(f.Bond, size.Length.mm(), size.Width.mm())
	if a := area2(p.InTile); (a+1)>>1 != int64(p.Area) || a <= 0 {
		r.complain("%s: its outline's area is %d/2 squares, said to be %d", p.ID, a, p.Area)
	}
	s.laidDown()
	if !s.moves(float64(f.Angle)/1e6 + 90*float64(p.Turn)) {
		r.complain("%s: on the face it is not what it is in the tile, turned and moved", p.ID)
		return s, false
	}
	s.tile = s.to.ring(s.blank)
	if s.slid {
		s.tile = s.to.ring(s.inTile.box())
	}
	s.grown = grow(s.tile, f.Joint.mm()/2)
	r.sides(s)
	return s, true
}

// laidDown turns the tile and the piece as they lie in the pattern.
func (s *setPiece) laidDown() {
	s.lie = [4]motion{{cos: 1}, {sin: 1}, {cos: -1}, {sin: -1}}[s.Turn&3]
	lo, _ := shape{s.lie.ring(s.blank)}.bounds()
	s.lie.x, s.lie.y = -lo.x, -lo.y
	s.place = s.lie.ring(s.blank)
	for _, ring := range s.inTile {
		s.lying = append(s.lying, s.lie.ring(ring))
	}
}

// back carries a point of the tile as it lies into its own frame.
func (m motion) back(p pt) pt {
	return motion{cos: m.cos, sin: -m.sin}.point(pt{p.x - m.x, p.y - m.y})
}

// blankOf is a whole tile; a hexagon stands on a corner, and its width across the flats is given.
func blankOf(bond string, l, w float64) []pt {
	if strings.HasPrefix(bond, "hexagon") {
		h := 2 * l / math.Sqrt(3)
		return []pt{{l / 2, 0}, {l, h / 4}, {l, 3 * h / 4}, {l / 2, h}, {0, 3 * h / 4}, {0, h / 4}}
	}
	return []pt{{0, 0}, {l, 0}, {l, w}, {0, w}}
}

// grow moves every side of a convex ring outward by d.
func grow(ring []pt, d float64) []pt {
	out := make([]pt, len(ring))
	for i, b := range ring {
		a, c := ring[(i+len(ring)-1)%len(ring)], ring[(i+1)%len(ring)]
		u, v := outward(a, b), outward(b, c)
		k := d / (1 + u.x*v.x + u.y*v.y)
		out[i] = pt{b.x + k*(u.x+v.x), b.y + k*(u.y+v.y)}
	}
	return out
}

// outward is the unit normal to the right of a b.
func outward(a, b pt) pt {
	l := dist(a, b)
	return pt{(b.y - a.y) / l, (a.x - b.x) / l}
}

// sides: every label of the outline is told, and no other; factory sides lie on the tile's rim, each on its own; a whole tile has no
// other, and all of the tile's area.
func (r *rechecker) sides(s *setPiece) {
	names := map[int]string{}
	for _, e := range s.Sides {
		names[e.Label] = e.Name
		if e.Kept && e.Label > 0 || e.Label < 0 != strings.HasPrefix(e.Name, "factory ") {
			r.complain("%s: side %d is %q, kept: %v", s.ID, e.Label, e.Name, e.Kept)
		}
	}
	seen := map[int]bool{}
	for i, ring := range s.InTile {
		for j, v := range ring {
			seen[v.Edge] = true
			p, q := s.inTile[i][j], s.inTile[i][(j+1)%len(ring)]
			if v.Edge < 0 && !onSide(s.blank, v.Edge, p, q) {
				r.complain("%s: factory side %d does not lie on the tile's rim", s.ID, v.Edge)
			}
			if name := s.sideName(i, j); v.Edge < 0 && len(s.blank) == 4 && names[v.Edge] != "factory "+name {
				r.complain("%s: side %d is at the %s, and called %q", s.ID, v.Edge, name, names[v.Edge])
			}
			if s.Whole && v.Edge >= 0 {
				r.complain("%s: said to be whole, and is cut", s.ID)
			}
		}
	}
	if last := slices.Max(slices.Collect(maps.Keys(seen))); last < 0 && !s.Whole {
		r.complain("%s: nothing is cut off it, and it is said not to be whole", s.ID)
	}
	if len(names) != len(seen) || len(s.Sides) != len(seen) {
		r.complain("%s: has %d kinds of sides and tells %d", s.ID, len(seen), len(s.Sides))
	}
	if full := math.Abs(area(s.blank)); s.Whole && math.Abs(s.inTile.area()-full) > grid*full/10 {
		r.complain("%s: whole, but its area is not the tile's", s.ID)
	}
	if s.Whole && s.Cut != nil {
		r.complain("%s: whole, and has a cut", s.ID)
	}
}

// sideName is which side of the tile as it lies a side of the piece lies on.
func (s *setPiece) sideName(ring, i int) string {
	_, hi := shape{s.place}.bounds()
	a, b := s.lying[ring][i], s.lying[ring][(i+1)%len(s.lying[ring])]
	at := func(v, w, side float64) bool { return math.Abs(v-side)+math.Abs(w-side) < grid/2 }
	switch {
	case at(a.x, b.x, 0):
		return "left"
	case at(a.y, b.y, 0):
		return "bottom"
	case at(a.x, b.x, hi.x):
		return "right"
	case at(a.y, b.y, hi.y):
		return "top"
	}
	return "inside"
}

// onSide reports whether p q lies on the side of the tile that a label stands for: -1 left, -2 bottom, -3 right, -4 top of a
// rectangle; -1 to -6 of a hexagon from its lower right side on.
func onSide(blank []pt, label int, p, q pt) bool {
	i := -label - 1
	if len(blank) == 4 {
		i = (-label + 2) % 4
	}
	if i < 0 || i >= len(blank) {
		return false
	}
	a, b := blank[i], blank[(i+1)%len(blank)]
	off := grid / 10
	if len(blank) == 6 {
		off = 2 * grid // its corners are rounded
	}
	return toSegment(p, a, b) <= off && toSegment(q, a, b) <= off
}

// order: the setting order names every piece of the face once.
func (r *rechecker) order(w readWork) {
	var have []string
	for _, f := range w.Fields {
		for _, p := range f.Pieces {
			have = append(have, p.Address)
			if p.ID != w.Mark+" "+p.Address {
				r.complain("%s: its id is not made of the mark and %s", p.ID, p.Address)
			}
		}
	}
	set := append([]string(nil), w.Setting...)
	sort.Strings(have)
	sort.Strings(set)
	if strings.Join(have, "|") != strings.Join(set, "|") {
		r.complain("%s: the order of setting is not the pieces", w.Face)
	}
	for i := 1; i < len(have); i++ {
		if have[i] == have[i-1] {
			r.complain("%s: two pieces are %s", w.Face, have[i])
		}
	}
}
