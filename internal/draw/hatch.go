package draw

import "sort"

// Hatch lines are made here, in whole micrometres, so that every encoder prints the same ones. They lie on one
// grid for the whole page: neighbors with the same hatch read as one material (ISO 128-50 lets one hatching
// run through parts of one item).
const (
	hatchPitch Um = 2_800 // along an axis; 2 mm between lines at 45 degrees
	dotPitch   Um = 2_000
	dotLength  Um = 300
)

// HatchPen is the pen of the lines that Segments returns.
func HatchPen(h Hatch) Pen {
	if h == Dots {
		return Pen{Width: dotLength}
	}
	return Pen{Width: Fine, Color: Gray}
}

// Segment is one hatch line.
type Segment struct{ A, B XY }

// HatchLines returns the lines of the path's hatch, clipped to its rings (even-odd).
func (p Path) HatchLines() []Segment { return hatched(p.Fill.Hatch, ringShape(p.Rings)) }

// HatchLines returns the lines of the circle's hatch.
func (c Circle) HatchLines() []Segment { return hatched(c.Fill.Hatch, c) }

// shape is what can be hatched: its reach, and where a line crosses it. A line is a*x + b*y = k with a, b in
// {-1, 0, 1}; the crossings come sorted and in pairs, each pair one line inside.
type shape interface {
	reach() Box
	crossings(a, b, k Um) []XY
}

func hatched(h Hatch, s shape) []Segment {
	switch h {
	case Diagonal:
		return ruled(s, 1, -1)
	case Counter:
		return ruled(s, 1, 1)
	case Cross:
		return append(ruled(s, 1, -1), ruled(s, 1, 1)...)
	case Dots:
		return dotted(s)
	}
	return nil
}

// ruled draws the lines x + b*y = k for every multiple k of the pitch.
func ruled(s shape, a, b Um) []Segment {
	r := s.reach()
	lo, hi := a*r.Lo.X+min(b*r.Lo.Y, b*r.Hi.Y), a*r.Hi.X+max(b*r.Lo.Y, b*r.Hi.Y)
	var out []Segment
	for k := up(lo, hatchPitch); k <= hi; k += hatchPitch {
		out = append(out, paired(s.crossings(a, b, k))...)
	}
	return out
}

func paired(at []XY) []Segment {
	var out []Segment
	for i := 0; i+1 < len(at); i += 2 {
		if at[i] != at[i+1] {
			out = append(out, Segment{at[i], at[i+1]})
		}
	}
	return out
}

// dotted puts short dashes on a staggered grid, those only that lie wholly inside.
func dotted(s shape) []Segment {
	r := s.reach()
	var out []Segment
	for y := up(r.Lo.Y, dotPitch); y <= r.Hi.Y; y += dotPitch {
		odd := y / dotPitch & 1
		for _, run := range paired(s.crossings(0, 1, y)) {
			for x := up(run.A.X, dotPitch) + odd*dotPitch/2; x+dotLength <= run.B.X; x += dotPitch {
				out = append(out, Segment{XY{x, y}, XY{x + dotLength, y}})
			}
		}
	}
	return out
}

// up is the first multiple of pitch that is not below v.
func up(v, pitch Um) Um { return -floorDiv(-v, pitch) * pitch }

func floorDiv(a, b Um) Um {
	q := a / b
	if a%b != 0 && (a < 0) != (b < 0) {
		q--
	}
	return q
}

// half rounds n/d half up; d is positive.
func half(n, d Um) Um { return floorDiv(2*n+d, 2*d) }

type ringShape [][]XY

func (s ringShape) reach() Box {
	var b Box
	first := true
	for _, ring := range s {
		for _, p := range ring {
			if first {
				b, first = Box{p, p}, false
			}
			b = Box{XY{min(b.Lo.X, p.X), min(b.Lo.Y, p.Y)}, XY{max(b.Hi.X, p.X), max(b.Hi.Y, p.Y)}}
		}
	}
	return b
}

func (s ringShape) crossings(a, b, k Um) []XY {
	var at []XY
	for _, ring := range s {
		for i, p := range ring {
			q := ring[(i+1)%len(ring)]
			dp, dq := a*p.X+b*p.Y-k, a*q.X+b*q.Y-k
			// An end on the line counts as above it, so that a corner on the line is crossed twice or not at all.
			if dp >= 0 == (dq >= 0) {
				continue
			}
			if dp < dq { // always from above, so that neighbors round a shared edge alike
				p, q, dp, dq = q, p, dq, dp
			}
			at = append(at, XY{p.X + half((q.X-p.X)*dp, dp-dq), p.Y + half((q.Y-p.Y)*dp, dp-dq)})
		}
	}
	sortAlong(at)
	return at
}

func sortAlong(at []XY) {
	sort.Slice(at, func(i, j int) bool {
		if at[i].X != at[j].X {
			return at[i].X < at[j].X
		}
		return at[i].Y < at[j].Y
	})
}

func (c Circle) reach() Box {
	return Box{XY{c.C.X - c.R, c.C.Y - c.R}, XY{c.C.X + c.R, c.C.Y + c.R}}
}

// crossings of a circle: the chord's middle is the center moved by e along (a, b)/n, n = a²+b², where e is how far
// the center is off the line; half the chord is sqrt((n R² - e²))/n along the line.
func (c Circle) crossings(a, b, k Um) []XY {
	n, e := a*a+b*b, a*c.C.X+b*c.C.Y-k
	left := n*c.R*c.R - e*e
	if left <= 0 {
		return nil
	}
	h := half(root(left), n)
	mid := XY{c.C.X - half(a*e, n), c.C.Y - half(b*e, n)}
	at := []XY{{mid.X - b*h, mid.Y + a*h}, {mid.X + b*h, mid.Y - a*h}}
	sortAlong(at)
	return at
}

// root is the whole part of the square root, by Newton's rule in integers.
func root(v Um) Um {
	r := v
	for next := (r + 1) / 2; next < r; next = (r + v/r) / 2 {
		r = next
	}
	return r
}
