package geom

// line is a directed line; what lies left of it is kept. For lines along the axes dist is a plain difference of
// coordinates, and the crossing is exact in one coordinate.
type line struct {
	a, b  Point
	label Label
	axis  axis

	ends          bool  // a and b are corners of the outline that clips, where it meets
	before, after Label // the lines before and after it
}

type axis uint8

const (
	oblique axis = iota
	right        // along +x: keeps what is above
	left         // along -x: keeps what is below
	up           // along +y: keeps what is to the left
	down         // along -y: keeps what is to the right
)

func lineThrough(a, b Point, l Label) line {
	at := oblique
	switch {
	case a.Y == b.Y && a.X < b.X:
		at = right
	case a.Y == b.Y:
		at = left
	case a.X == b.X && a.Y < b.Y:
		at = up
	case a.X == b.X:
		at = down
	}
	return line{a: a, b: b, label: l, axis: at}
}

// dist returns a positive multiple of p's signed distance: positive left of the line, zero on it.
func (l line) dist(p Point) int64 {
	switch l.axis {
	case right:
		return int64(p.Y - l.a.Y)
	case left:
		return int64(l.a.Y - p.Y)
	case up:
		return int64(l.a.X - p.X)
	case down:
		return int64(p.X - l.a.X)
	}
	return Cross(l.a, l.b, p)
}

// meet returns where an edge p q with label edge crosses the line. Where the lines before and after it have
// made the edge, that is the corner between them, which rounded ends would miss.
func (l line) meet(p, q Point, dp, dq int64, edge Label) Point {
	switch {
	case l.ends && edge == l.before:
		return l.a
	case l.ends && edge == l.after:
		return l.b
	}
	return crossing(p, q, dp, dq)
}
