package geom

import "math"

// ClipRect returns the part of g in r. Edges along r's sides have labels[0..3] for left, bottom, right, top.
func (g Region) ClipRect(r Rect, labels [4]Label) Region {
	return g.ClipConvex(RectRing(r, labels[0], labels[1], labels[2], labels[3]))
}

// ClipConvex returns the part of g in the convex counter-clockwise ring c. Edges along c's edges have c's labels. The
// least len(c) labels of all are used within and must not be g's.
func (g Region) ClipConvex(c Ring) Region {
	var clip clipper
	g = g.near(c.Bounds())
	for k, v := range c {
		if len(g) == 0 {
			return nil
		}
		l := lineThrough(v.P, c.end(k), sideLabel(k))
		l.ends, l.before, l.after = true, sideLabel((k+len(c)-1)%len(c)), sideLabel((k+1)%len(c))
		g = clip.clip(g, l)
	}
	g.nameSides(c)
	return g.unknotted()
}

// sideLabel is the label of a clipping outline's edge k while it clips, so that each can be told from all others.
func sideLabel(k int) Label { return math.MinInt32 + Label(k) }

// nameSides gives edges along c the labels of c. Only rings that clipping has made have such edges.
func (g Region) nameSides(c Ring) {
	for _, r := range g {
		for i := range r {
			if k := int(r[i].Edge) - math.MinInt32; k < len(c) {
				r[i].Edge = c[k].Edge
			}
		}
	}
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
