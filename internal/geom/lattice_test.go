package geom

import (
	"math/rand/v2"
	"testing"

	sf "github.com/peterstace/simplefeatures/geom"

	"dryfit/internal/unit"
)

// Rooms, holes and tiles with all corners on a coarse lattice: lines of the tile run through corners of the room, along
// its edges and through holes' corners all the time. Pieces and areas must be the library's.
func TestClipConvexOnALattice(t *testing.T) {
	r := lattice{rand.New(rand.NewPCG(3, 3))}
	for k := range 8000 {
		g := r.room(4 + r.IntN(9))
		tile := r.tile()
		compare(t, cell, k, g, tile)
		if t.Failed() {
			return
		}
	}
}

// Rooms whose holes touch the outline and each other in points, with tiles whose lines touch them in more points: what
// hangs together in points only comes apart.
func TestClipConvexWithTouchingHoles(t *testing.T) {
	r := lattice{rand.New(rand.NewPCG(9, 3))}
	for k, cases := 0, 0; cases < 1500; k++ {
		g := r.room(4 + r.IntN(9))[:1]
		for range 12 {
			hole := r.convex(1 + r.IntN(3)).moved(r.point(0, 9).Add).Reverse()
			if h := append(g[:len(g):len(g)], hole); libraryTakes(h) {
				g = h
			}
		}
		if len(g.touches()) == 0 {
			continue
		}
		cases++
		compare(t, cell, k, g, r.tile())
		if t.Failed() {
			return
		}
	}
}

// libraryTakes reports whether the rings make one valid polygon for the library.
func libraryTakes(g Region) bool {
	var rings []sf.LineString
	for _, r := range g {
		rings = append(rings, lineString(r))
	}
	return sf.NewPolygon(rings).Validate() == nil
}

// cell is divisible by many numbers, so that most crossings on the lattice need no rounding.
const cell unit.Length = 2520 * 64

type lattice struct{ *rand.Rand }

func (l lattice) point(lo, hi int) Point {
	return pt(cell*unit.Length(lo+l.IntN(hi-lo+1)), cell*unit.Length(lo+l.IntN(hi-lo+1)))
}

// room draws corners, joins them in the order drawn and takes crossings out by reversing what lies between (each time
// the outline gets shorter, so this ends), then cuts up to two holes.
func (l lattice) room(corners int) Region {
	for {
		ring := make(Ring, corners)
		for i := range ring {
			ring[i] = Vertex{l.point(0, 10), Label(i + 1)}
		}
		for range 200 {
			ok, i, j := ring.Simple()
			if ok {
				return l.withHoles(ring)
			}
			for a, b := i+1, j; a < b; a, b = a+1, b-1 {
				ring[a].P, ring[b].P = ring[b].P, ring[a].P
			}
		}
	}
}

func (l lattice) withHoles(outer Ring) Region {
	if outer.Area2() < 0 {
		outer = outer.Reverse()
	}
	g := Region{outer}
	for range 4 {
		hole := l.convex(1 + l.IntN(3))
		if at := l.point(0, 9); len(g) < 3 && apart(g, hole.moved(at.Add)) {
			g = append(g, hole.moved(at.Add).Reverse())
		}
	}
	return g
}

func (l lattice) tile() Ring {
	return l.convex(1 + l.IntN(8)).moved(l.point(-1, 8).Add)
}

// convex draws a box, a triangle, a diamond or a slanting quadrilateral of about the given size in cells.
func (l lattice) convex(size int) Ring {
	for {
		var ring Ring
		s := unit.Length(size) * cell
		switch l.IntN(4) {
		case 0:
			ring = RectRing(Rect{Max: pt(s, cell*unit.Length(1+l.IntN(size)))}, 101, 102, 103, 104)
		case 1:
			ring = Ring{{pt(0, s), 101}, {pt(s, 0), 102}, {pt(2*s, s), 103}, {pt(s, 2*s), 104}}
		case 2:
			ring = Ring{{l.point(0, size), 101}, {l.point(0, size), 102}, {l.point(0, size), 103}}
		default:
			ring = Ring{{l.point(0, size), 101}, {l.point(0, size), 102}, {l.point(0, size), 103}, {l.point(0, size), 104}}
		}
		if convex(ring) && ring.Area2() > 0 {
			if ok, _, _ := ring.Simple(); ok {
				return ring
			}
		}
	}
}
