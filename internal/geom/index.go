package geom

// Where says how a shape lies to a region. Shared boundary alone does not count: a tile flush with a wall is Inside.
type Where uint8

const (
	Outside Where = iota // no area in common
	Inside               // wholly in the region
	Across               // some of each
)

// Covers reports whether all of r lies in the region. Exact.
func (g Region) Covers(r Rect) bool { return g.classify(rectShape(r)) == Inside }

// Meets reports whether r and the region share area. Exact.
func (g Region) Meets(r Rect) bool { return g.classify(rectShape(r)) != Outside }

func (g Region) classify(s shape) Where {
	for _, r := range g {
		for i, v := range r {
			if s.crossedBy(v.P, r.end(i)) {
				return Across
			}
		}
	}
	return sidedness(g.contains(s.inner4(), 4))
}

func sidedness(contains int) Where {
	if contains > 0 {
		return Inside
	}
	return Outside
}

// shape is a convex counter-clockwise outline with its bounds.
type shape struct {
	bounds Rect
	ring   Ring // nil for a rectangle
}

func rectShape(r Rect) shape { return shape{bounds: r} }

// inner4 returns four times a point strictly inside the shape: in a triangle of three of its corners, halfway from one
// to the middle of the others.
func (s shape) inner4() Point {
	if s.ring == nil {
		m := s.bounds.Min.Add(s.bounds.Max)
		return m.Add(m)
	}
	a, i := s.ring[0].P, 2
	for i < len(s.ring)-1 && Cross(a, s.ring[i-1].P, s.ring[i].P) == 0 {
		i++
	}
	return a.Add(a).Add(s.ring[i-1].P).Add(s.ring[i].P)
}

// crossedBy reports whether the segment a b enters the open shape: no line along a side of the shape, nor the line
// a b, has the two on different sides (the separating axes of two convex sets).
func (s shape) crossedBy(a, b Point) bool {
	r := s.bounds
	if max(a.X, b.X) <= r.Min.X || min(a.X, b.X) >= r.Max.X || max(a.Y, b.Y) <= r.Min.Y || min(a.Y, b.Y) >= r.Max.Y {
		return false
	}
	if a.X == b.X || a.Y == b.Y {
		return s.ring == nil || s.ring.enteredBy(a, b)
	}
	if s.ring != nil {
		return s.ring.enteredBy(a, b)
	}
	c := r.Corners()
	return straddles(a, b, c[:])
}

// straddles reports whether some of the points lie strictly left of a->b and some strictly right.
func straddles(a, b Point, points []Point) bool {
	left, right := false, false
	for _, p := range points {
		s := Side(a, b, p)
		left, right = left || s > 0, right || s < 0
	}
	return left && right
}

func (r Ring) enteredBy(a, b Point) bool {
	left, right := false, false
	for i, v := range r {
		s := Side(a, b, v.P)
		left, right = left || s > 0, right || s < 0
		if Side(v.P, r.end(i), a) <= 0 && Side(v.P, r.end(i), b) <= 0 {
			return false
		}
	}
	return left && right
}

// Index answers for thousands of shapes how they lie to one region. The region must not change while it is used.
type Index struct {
	region Region
	bounds Rect
	bands  [][]segment // edges by the horizontal bands that they touch
}

type segment struct{ a, b Point }

// NewIndex prepares a region.
func NewIndex(g Region) *Index {
	edges := 0
	for _, r := range g {
		edges += len(r)
	}
	ix := &Index{region: g, bounds: g.Bounds(), bands: make([][]segment, max(1, min(edges, mostBands)))}
	for _, r := range g {
		for i, v := range r {
			ix.add(segment{v.P, r.end(i)})
		}
	}
	return ix
}

// mostBands bounds the memory: a region of 400 vertices has a few edges in each of 128 bands.
const mostBands = 128

func (ix *Index) add(s segment) {
	for k := ix.band(min(s.a.Y, s.b.Y)); k <= ix.band(max(s.a.Y, s.b.Y)); k++ {
		ix.bands[k] = append(ix.bands[k], s)
	}
}

// Classify says how a rectangle lies to the region.
func (ix *Index) Classify(r Rect) Where { return ix.classify(rectShape(r)) }

// ClassifyConvex says how a convex counter-clockwise ring lies to the region.
func (ix *Index) ClassifyConvex(c Ring) Where { return ix.classify(shape{c.Bounds(), c}) }

func (ix *Index) classify(s shape) Where {
	if !s.bounds.Overlaps(ix.bounds) {
		return Outside
	}
	for k := ix.band(s.bounds.Min.Y); k <= ix.band(s.bounds.Max.Y); k++ {
		for _, e := range ix.bands[k] {
			if s.crossedBy(e.a, e.b) {
				return Across
			}
		}
	}
	return sidedness(ix.contains(s.inner4(), 4))
}

// ClipRect is Region.ClipRect through the index.
func (ix *Index) ClipRect(r Rect, labels [4]Label) Region {
	return ix.clip(RectRing(r, labels[0], labels[1], labels[2], labels[3]), ix.Classify(r))
}

// ClipConvex is Region.ClipConvex through the index: a ring wholly inside comes back as it is.
func (ix *Index) ClipConvex(c Ring) Region { return ix.clip(c, ix.ClassifyConvex(c)) }

func (ix *Index) clip(c Ring, w Where) Region {
	switch w {
	case Inside:
		return Region{c}
	case Outside:
		return nil
	}
	return ix.region.ClipConvex(c)
}
