package geom

// Simple reports whether no two edges of the ring cross or touch but neighbors at their common vertex. If not, i < j
// are the first two edges that do. An edge of no length clashes with its neighbors.
func (r Ring) Simple() (ok bool, i, j int) {
	n := len(r)
	for i := range n {
		for j := i + 1; j < n; j++ {
			if r.clash(i, j) {
				return false, i, j
			}
		}
	}
	return n > 2, 0, 0
}

// clash reports whether edges i < j share more than a neighbor's vertex.
func (r Ring) clash(i, j int) bool {
	a, b, c, d := r[i].P, r.end(i), r[j].P, r.end(j)
	switch {
	case j == i+1 && i == 0 && j == len(r)-1:
		return true
	case j == i+1:
		return a == b || c == d || Cross(a, b, d) == 0 && dot(b, a, b, d) > 0
	case i == 0 && j == len(r)-1:
		return c == d || Cross(c, a, b) == 0 && dot(a, c, a, b) > 0
	}
	return segmentsMeet(a, b, c, d)
}
