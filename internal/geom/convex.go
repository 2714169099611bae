package geom

// ClipRect returns the part of g in r. Edges along r's sides have labels[0..3] for left, bottom, right, top.
func (g Region) ClipRect(r Rect, labels [4]Label) Region {
	return g.ClipConvex(RectRing(r, labels[0], labels[1], labels[2], labels[3]))
}

// ClipConvex returns the part of g in the convex counter-clockwise ring c. Edges along c's edges have c's labels.
func (g Region) ClipConvex(c Ring) Region {
	square := c.square()
	g = g.near(c.Bounds())
	for i, v := range c {
		if len(g) == 0 {
			return nil
		}
		l := lineThrough(v.P, c.end(i), v.Edge)
		l.ends = !square
		g = g.clip(l)
	}
	return g.unknotted()
}

// near returns the rings whose bounds share area with r; the others have no part in what lies in r.
func (g Region) near(r Rect) Region {
	out := make(Region, 0, len(g))
	for _, ring := range g {
		if ring.Bounds().Overlaps(r) {
			out = append(out, ring)
		}
	}
	return out
}

// square reports whether all edges run along the axes: then corners come out exactly.
func (r Ring) square() bool {
	for i, v := range r {
		if e := r.end(i); e.X != v.P.X && e.Y != v.P.Y {
			return false
		}
	}
	return true
}
