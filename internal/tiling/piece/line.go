package piece

import (
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// line is one cut: neighboring cut edges in one straight line, whatever they meet.
type line struct {
	a, b          geom.Point // the piece lies on the left
	meets         []geom.Label
	before, after geom.Label // labels of the edges at its ends; 0 or more for another cut
	bay           [2]bool    // the outline turns inward at a, at b
	facing        facing
}

// cutLines returns the cuts along a ring, in its order.
func cutLines(r geom.Ring, hex bool) []line {
	r = startAtTurn(r)
	var out []line
	for i, v := range r {
		prev, next, after := r[(i+len(r)-1)%len(r)], r[(i+1)%len(r)], r[(i+2)%len(r)]
		n := len(out)
		switch {
		case v.Edge < 0:
			continue
		case i > 0 && prev.Edge >= 0 && geom.Cross(out[n-1].a, out[n-1].b, next.P) == 0:
			out[n-1].grow(v.Edge)
		default:
			out = append(out, line{a: v.P, meets: []geom.Label{v.Edge}, before: prev.Edge})
			out[n].bay[0] = geom.Side(prev.P, v.P, next.P) < 0
		}
		last := &out[len(out)-1]
		last.b, last.after = next.P, next.Edge
		last.bay[1] = geom.Side(v.P, next.P, after.P) < 0
	}
	for i := range out {
		out[i].facing = out[i].towards(hex)
	}
	return out
}

func (l *line) grow(meets geom.Label) {
	if !slices.Contains(l.meets, meets) {
		l.meets = append(l.meets, meets)
	}
}

// partial reports whether the cut stops within the tile.
func (l line) partial() bool { return l.bay[0] || l.bay[1] }

// gentle reports whether the cut runs along an axis but for a slope of a third: a wall out of plumb, no diagonal.
func (l line) gentle() bool {
	d := l.b.Sub(l.a)
	x, y := d.X.Abs(), d.Y.Abs()
	return 3*min(x, y) <= max(x, y)
}

// startAtTurn turns the ring's list so that it does not begin in the middle of a straight line.
func startAtTurn(r geom.Ring) geom.Ring {
	n := len(r)
	for i := range r {
		if geom.Cross(r[(i+n-1)%n].P, r[i].P, r[(i+1)%n].P) != 0 {
			return slices.Concat(r[i:], r[:i])
		}
	}
	return r
}

// facing is the direction in which the piece lies from a cut: towards the side that the cut is measured from.
type facing uint8

const (
	toLeft facing = iota
	toBottom
	toRight
	toTop
)

// towards is the side that a cut is measured from. A cut between two opposite sides of a tile is measured along them, however much it
// slopes; any other across its main direction.
func (l line) towards(hex bool) facing {
	d := l.b.Sub(l.a)
	upright := d.Y.Abs() >= d.X.Abs()
	if !hex && l.before < 0 && l.after < 0 && l.before != l.after && (l.before-l.after)&1 == 0 {
		upright = l.before&1 == 0 // from bottom to top or back
	}
	switch {
	case upright && d.Y > 0:
		return toLeft
	case upright:
		return toRight
	case d.X > 0:
		return toTop
	}
	return toBottom
}

func (f facing) opposite() facing { return f ^ 2 }
func (f facing) upright() bool    { return f&1 == 0 } // measured along x

// label is the factory side of a rectangle that lies there.
func (f facing) label() geom.Label { return -1 - geom.Label(f) }

// ends returns the lower or left end first.
func (l line) ends() (geom.Point, geom.Point) {
	if f := l.facing; f == toRight || f == toBottom {
		return l.b, l.a
	}
	return l.a, l.b
}

// from measures a point from the tile's side in the given direction.
func (w *work) from(f facing, p geom.Point) unit.Length { return w.fromSide(f, place(f, p)) }

// fromSide measures a coordinate from that side.
func (w *work) fromSide(f facing, v unit.Length) unit.Length {
	switch f {
	case toRight:
		return w.l - v
	case toTop:
		return w.w - v
	}
	return v
}

// place is the point's coordinate on the axis that f measures.
func place(f facing, p geom.Point) unit.Length {
	if f.upright() {
		return p.X
	}
	return p.Y
}

// along measures a point along that side, from its left or lower end.
func along(f facing, p geom.Point) unit.Length {
	if f.upright() {
		return p.Y
	}
	return p.X
}

// length is the length of that side.
func (w *work) length(f facing) unit.Length {
	if f.upright() {
		return w.w
	}
	return w.l
}

// at returns the place of the cut, measured along the axis that f measures, where its own run has the ordinate t.
func (l line) at(f facing, t unit.Length) unit.Length {
	a, b := l.a, l.b
	if !f.upright() {
		a, b = geom.Point{X: a.Y, Y: a.X}, geom.Point{X: b.Y, Y: b.X}
	}
	if a.Y > b.Y {
		a, b = b, a
	}
	if a.Y == b.Y {
		return a.X
	}
	return a.X + (b.X-a.X).MulDiv(int64(t-a.Y), int64(b.Y-a.Y))
}

// corner reports whether the cut runs from one factory side to the one next to it.
func (w *work) corner(l line) bool {
	return !w.hex && l.before < 0 && l.after < 0 && (l.before-l.after)&1 != 0
}
