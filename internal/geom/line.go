package geom

// line is a directed line; what lies left of it is kept. For lines along the axes dist is a plain difference of
// coordinates, and the crossing is exact in one coordinate.
type line struct {
	a, b  Point
	label Label
	axis  axis
	ends  bool // a and b are corners of the outline that clips
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

// cornerReach is how far, in counts of 1/16000 mm, a corner of the clipping outline may be missed where a line meets an
// edge that the line before has made: less than a count for the rounding of that edge's ends, 2/√3 of it where the
// lines meet at 60°, and less than a count for rounding again.
const cornerReach = 2

// snap puts a crossing that has missed a corner of the clipping outline on it.
func (l line) snap(p Point) Point {
	if !l.ends {
		return p
	}
	for _, corner := range [2]Point{l.a, l.b} {
		if d := p.Sub(corner); d.X.Abs() <= cornerReach && d.Y.Abs() <= cornerReach {
			return corner
		}
	}
	return p
}
