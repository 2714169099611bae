package takeoff

import (
	"cmp"
	"math"
	"slices"

	"dryfit/internal/catalog"
	"dryfit/internal/geom"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// census is what the joints of one field look like: where they meet, and where two pieces lie side by side.
type census struct {
	crosses, tees, straights int
	shared                   []shared
}

// shared is a joint between two pieces, as long as both have factory edges on it.
type shared struct {
	a, b   int // indexes of pieces, a < b
	length unit.Length
	ends   [2]spot
}

// spot is a point between grid points; it stays inside.
type spot struct{ x, y float64 }

func (s spot) plus(d spot, times float64) spot { return spot{s.x + d.x*times, s.y + d.y*times} }
func (s spot) dot(t spot) float64              { return s.x*t.x + s.y*t.y }
func (s spot) grid() geom.Point                { return geom.Point{X: unit.FromFloat(s.x), Y: unit.FromFloat(s.y)} }

func spotOf(p geom.Point) spot { return spot{float64(p.X), float64(p.Y)} }

// side is one factory edge of a piece.
type side struct {
	piece    int
	from, to spot
	along    spot // of length 1
	out      spot // away from the piece, of length 1
	length   float64
}

// field is what the census walks: pieces with a grid of squares to find them by.
type field struct {
	pieces []piece.Piece
	joint  float64
	cell   float64
	cells  map[[2]int][]int
	bounds []geom.Rect
	sides  []side
	first  []int // of each piece's sides
}

// survey walks the joints of a field. Only what two factory edges bound is a joint; what the room cuts is the room's edge.
func survey(pieces []piece.Piece, joint unit.Length) census {
	f := &field{pieces: pieces, joint: float64(joint), cells: map[[2]int][]int{}}
	f.index()
	var c census
	nodes := f.nodes()
	for _, n := range nodes {
		switch f.meet(n) {
		case 4:
			c.crosses++
		case 3:
			c.tees++
		}
	}
	c.shared = f.shared()
	for _, s := range c.shared {
		for _, end := range s.ends {
			if f.meet(f.nearest(nodes, end)) < 3 {
				c.straights++
			}
		}
	}
	return c
}

// index puts every piece in the squares that it touches, and lists the factory edges.
func (f *field) index() {
	for _, p := range f.pieces {
		b := p.OnFace.Bounds()
		f.bounds = append(f.bounds, b)
		f.cell = max(f.cell, float64(b.W()), float64(b.H()))
	}
	f.cell += f.joint + float64(unit.Millimetre)
	for i, p := range f.pieces {
		b := f.bounds[i]
		lo, hi := f.square(spotOf(b.Min)), f.square(spotOf(b.Max))
		for x := lo[0]; x <= hi[0]; x++ {
			for y := lo[1]; y <= hi[1]; y++ {
				f.cells[[2]int{x, y}] = append(f.cells[[2]int{x, y}], i)
			}
		}
		f.first = append(f.first, len(f.sides))
		for _, r := range p.OnFace {
			f.sides = append(f.sides, sidesOf(i, r)...)
		}
	}
}

func (f *field) square(s spot) [2]int {
	return [2]int{int(math.Floor(s.x / f.cell)), int(math.Floor(s.y / f.cell))}
}

// sidesOf lists a ring's factory edges; outer rings run counter-clockwise, so that what is outside lies on the right.
func sidesOf(i int, r geom.Ring) []side {
	var out []side
	for k, v := range r {
		a, b := spotOf(v.P), spotOf(r[(k+1)%len(r)].P)
		length := math.Hypot(b.x-a.x, b.y-a.y)
		if v.Edge >= 0 || length == 0 {
			continue
		}
		along := spot{(b.x - a.x) / length, (b.y - a.y) / length}
		out = append(out, side{i, a, b, along, spot{along.y, -along.x}, length})
	}
	return out
}

// nodes are the points half a joint off every corner that two factory edges make, each once.
func (f *field) nodes() []spot {
	var all []spot
	for i, s := range f.sides {
		t := f.sides[next(f.sides, i)]
		if t.piece != s.piece || s.to != t.from || s.along.x*t.along.y-s.along.y*t.along.x <= 0 {
			continue // no factory corner, or one that turns inward
		}
		both := spot{s.out.x + t.out.x, s.out.y + t.out.y}
		all = append(all, s.to.plus(both, f.joint/2/(1+s.out.dot(t.out))))
	}
	return merged(all, f.near())
}

// next is the edge that goes on from edge i: the one behind it, or the first of its piece.
func next(sides []side, i int) int {
	if i+1 < len(sides) && sides[i+1].piece == sides[i].piece && sides[i+1].from == sides[i].to {
		return i + 1
	}
	for k := i; k >= 0 && sides[k].piece == sides[i].piece; k-- {
		if sides[k].from == sides[i].to {
			return k
		}
	}
	return i
}

// near is how far two roundings of one node may lie apart: a tenth of a millimetre, far under any joint.
func (f *field) near() float64 { return float64(unit.Millimetre) / 10 }

// merged keeps one of points that lie together.
func merged(all []spot, near float64) []spot {
	slices.SortFunc(all, func(a, b spot) int { return cmp.Or(cmp.Compare(a.x, b.x), cmp.Compare(a.y, b.y)) })
	var out []spot
	for _, s := range all {
		known := false
		for k := len(out) - 1; k >= 0 && s.x-out[k].x <= near && !known; k-- {
			known = math.Abs(s.y-out[k].y) <= near
		}
		if !known {
			out = append(out, s)
		}
	}
	return out
}

// nearest is the node at which a joint ends, or the end itself where there is none.
func (f *field) nearest(nodes []spot, end spot) spot {
	reach := f.joint + f.near()
	i, _ := slices.BinarySearchFunc(nodes, end.x-reach, func(n spot, x float64) int { return cmp.Compare(n.x, x) })
	for ; i < len(nodes) && nodes[i].x <= end.x+reach; i++ {
		if math.Abs(nodes[i].y-end.y) <= reach {
			return nodes[i]
		}
	}
	return end
}

// probes is how many ways are looked from a node; a tile's corner there is never narrower than the step between two.
const probes = 24

// meet counts the pieces round a node: four make a cross, three a tee. It looks just beyond the joint's own width.
func (f *field) meet(n spot) int {
	reach := f.joint*math.Sqrt2/2 + float64(unit.Millimetre)
	near := f.around(n, n, reach)
	if len(near) < 3 {
		return len(near)
	}
	var ring [probes]geom.Point
	for k := range ring {
		sin, cos := math.Sincos((float64(k) + 0.5) * 2 * math.Pi / probes)
		ring[k] = n.plus(spot{cos, sin}, reach).grid()
	}
	seen := 0
	for _, i := range near {
		for _, p := range ring {
			if inBox(f.bounds[i], p) && f.pieces[i].OnFace.Contains(p) > 0 {
				seen++
				break
			}
		}
	}
	return seen
}

func inBox(b geom.Rect, p geom.Point) bool {
	return p.X >= b.Min.X && p.X <= b.Max.X && p.Y >= b.Min.Y && p.Y <= b.Max.Y
}

// around lists the pieces whose bounds come within reach of the stretch between two points, in their order.
func (f *field) around(a, b spot, reach float64) []int {
	box := geom.Bound(a.grid(), b.grid())
	wide := geom.Point{X: unit.FromFloat(reach), Y: unit.FromFloat(reach)}
	box.Min, box.Max = box.Min.Sub(wide), box.Max.Add(wide)
	lo, hi := f.square(spotOf(box.Min)), f.square(spotOf(box.Max))
	var out []int
	for x := lo[0]; x <= hi[0]; x++ {
		for y := lo[1]; y <= hi[1]; y++ {
			for _, i := range f.cells[[2]int{x, y}] {
				o := f.bounds[i]
				if o.Min.X <= box.Max.X && box.Min.X <= o.Max.X && o.Min.Y <= box.Max.Y && box.Min.Y <= o.Max.Y && !slices.Contains(out, i) {
					out = append(out, i)
				}
			}
		}
	}
	slices.Sort(out)
	return out
}

// shared pairs the factory edges that face each other across a joint.
func (f *field) shared() []shared {
	var out []shared
	for _, s := range f.sides {
		for _, j := range f.around(s.from, s.to, f.joint+f.near()) {
			if j <= s.piece {
				continue
			}
			for k := f.first[j]; k < len(f.sides) && f.sides[k].piece == j; k++ {
				if x, ok := f.across(s, f.sides[k]); ok {
					out = append(out, x)
				}
			}
		}
	}
	return out
}

// across reports the stretch over which two edges face each other at the distance of the joint.
func (f *field) across(s, t side) (shared, bool) {
	off := spot{t.from.x - s.from.x, t.from.y - s.from.y}
	if s.along.dot(t.along) > -0.9999 || math.Abs(off.dot(s.out)-f.joint) > f.near() {
		return shared{}, false
	}
	hi := off.dot(s.along)
	lo := hi - t.length
	lo, hi = max(lo, 0), min(hi, s.length)
	if hi-lo <= f.joint {
		return shared{}, false // past each other, or corner to corner
	}
	mid := s.from.plus(s.out, f.joint/2)
	return shared{s.piece, t.piece, unit.FromFloat(hi - lo), [2]spot{mid.plus(s.along, lo-f.joint/2), mid.plus(s.along, hi+f.joint/2)}}, true
}

// clips is how many leveling clips a joint between two tiles gets: one near each end, which is a corner of one of
// them; one alone where the two would come together; beyond the longest edge for two, one more for each begun foot.
func clips(length, longest unit.Length) int {
	switch {
	case length < 2*catalog.ClipReach:
		return 1
	case length <= longest:
		return 2
	}
	return 2 + int((length-longest+unit.Foot-1)/unit.Foot)
}
