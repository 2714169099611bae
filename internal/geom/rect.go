package geom

// Bound returns the least rectangle that holds both points.
func Bound(p, q Point) Rect {
	return Rect{Point{min(p.X, q.X), min(p.Y, q.Y)}, Point{max(p.X, q.X), max(p.Y, q.Y)}}
}

// With returns the least rectangle that holds r and p.
func (r Rect) With(p Point) Rect {
	return Rect{Point{min(r.Min.X, p.X), min(r.Min.Y, p.Y)}, Point{max(r.Max.X, p.X), max(r.Max.Y, p.Y)}}
}

// Overlaps reports whether the two rectangles share area.
func (r Rect) Overlaps(o Rect) bool {
	return r.Min.X < o.Max.X && o.Min.X < r.Max.X && r.Min.Y < o.Max.Y && o.Min.Y < r.Max.Y
}

// touches reports whether the closed rectangles share a point.
func (r Rect) touches(o Rect) bool {
	return r.Min.X <= o.Max.X && o.Min.X <= r.Max.X && r.Min.Y <= o.Max.Y && o.Min.Y <= r.Max.Y
}

// holds reports whether o lies in the closed rectangle r.
func (r Rect) holds(o Rect) bool {
	return r.Min.X <= o.Min.X && o.Max.X <= r.Max.X && r.Min.Y <= o.Min.Y && o.Max.Y <= r.Max.Y
}

// Corners returns the corners counter-clockwise from the lower left.
func (r Rect) Corners() [4]Point {
	return [4]Point{r.Min, {r.Max.X, r.Min.Y}, r.Max, {r.Min.X, r.Max.Y}}
}
