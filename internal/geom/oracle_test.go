package geom

import (
	"math"
	"math/rand/v2"
	"testing"

	sf "github.com/peterstace/simplefeatures/geom"

	"dryfit/internal/unit"
)

// textbookArea is the area of the subject in a convex counter-clockwise clip after Sutherland and Hodgman, "Reentrant
// polygon clipping", Communications of the ACM 17 (1974), in floating point: right in area, not in pieces.
func textbookArea(g Region, clip Ring) float64 {
	var sum float64
	for _, r := range g {
		var pts [][2]float64
		for _, v := range r {
			pts = append(pts, [2]float64{float64(v.P.X), float64(v.P.Y)})
		}
		for i, v := range clip {
			pts = textbookClip(pts, v.P, clip.end(i))
		}
		sum += shoelace(pts)
	}
	return sum
}

func textbookClip(pts [][2]float64, a, b Point) (out [][2]float64) {
	d := func(p [2]float64) float64 {
		return float64(b.X-a.X)*(p[1]-float64(a.Y)) - float64(b.Y-a.Y)*(p[0]-float64(a.X))
	}
	for i, p := range pts {
		q := pts[(i+1)%len(pts)]
		dp, dq := d(p), d(q)
		if dp >= 0 {
			out = append(out, p)
		}
		if dp > 0 && dq < 0 || dp < 0 && dq > 0 {
			s := dp / (dp - dq)
			out = append(out, [2]float64{p[0] + s*(q[0]-p[0]), p[1] + s*(q[1]-p[1])})
		}
	}
	return out
}

func shoelace(pts [][2]float64) (sum float64) {
	for i := 2; i < len(pts); i++ {
		sum += (pts[i-1][0]-pts[0][0])*(pts[i][1]-pts[0][1]) - (pts[i][0]-pts[0][0])*(pts[i-1][1]-pts[0][1])
	}
	return sum / 2
}

// rooms draws rooms and tiles: star outlines of 4 to 15 corners with 0 to 2 holes, rectangles and hexagons turned by
// multiples of 15°, a quarter of them with a corner on a corner of the room.
type rooms struct {
	*rand.Rand
	grid unit.Length // ordinates are multiples of it
}

func (r rooms) snap(v float64) unit.Length {
	return unit.Length(math.Round(v/float64(r.grid))) * r.grid
}

func (r rooms) star(x, y, size float64, corners int) Ring {
	for {
		var ring Ring
		for k := range corners {
			a := (float64(k) + 0.8*r.Float64()) * 2 * math.Pi / float64(corners)
			d := size * (0.35 + 0.65*r.Float64())
			ring = append(ring, Vertex{pt(r.snap(x+d*math.Cos(a)), r.snap(y+d*math.Sin(a))), Label(k + 1)})
		}
		if ok, _, _ := ring.Simple(); ok && ring.Area2() > 0 {
			return ring
		}
	}
}

func (r rooms) room() Region {
	const size = 2000 * float64(unit.Millimetre)
	g := Region{r.star(0, 0, size, 4+r.IntN(12))}
	for h := range r.IntN(3) {
		hole := r.star((float64(h)*2-1)*size/9, (r.Float64()-0.5)*size/5, size/9, 4+r.IntN(4)).Reverse()
		if apart(g, hole) {
			g = append(g, hole)
		}
	}
	return g
}

// apart reports whether the hole lies in g and touches none of its rings.
func apart(g Region, hole Ring) bool {
	for i, v := range hole {
		if g.Contains(v.P) <= 0 {
			return false
		}
		for _, r := range g {
			for k := range r {
				if segmentsMeet(v.P, hole.end(i), r[k].P, r.end(k)) {
					return false
				}
			}
		}
	}
	return true
}

// tile draws until rounding to the grid has left the tile convex.
func (r rooms) tile(g Region) Ring {
	for {
		if tile := r.anyTile(g); convex(tile) {
			return tile
		}
	}
}

func (r rooms) anyTile(g Region) Ring {
	const size = 2000 * float64(unit.Millimetre)
	turn := float64(r.IntN(24)) * math.Pi / 12
	var ring Ring
	if r.IntN(2) == 0 {
		w, h := size*(0.05+r.Float64()), size*(0.05+r.Float64())
		ring = r.turned(turn, [][2]float64{{0, 0}, {w, 0}, {w, h}, {0, h}})
	} else {
		ring = r.turned(turn, hexagon(size*(0.05+0.6*r.Float64())))
	}
	to := pt(r.snap(size*(r.Float64()*2-1.5)), r.snap(size*(r.Float64()*2-1.5)))
	if r.IntN(4) == 0 {
		to = g[0][r.IntN(len(g[0]))].P.Sub(ring[r.IntN(len(ring))].P)
	}
	return ring.moved(to.Add)
}

func hexagon(side float64) (pts [][2]float64) {
	for k := range 6 {
		a := float64(k) * math.Pi / 3
		pts = append(pts, [2]float64{side * math.Cos(a), side * math.Sin(a)})
	}
	return pts
}

func (r rooms) turned(by float64, pts [][2]float64) Ring {
	var ring Ring
	c, s := math.Cos(by), math.Sin(by)
	for k, p := range pts {
		ring = append(ring, Vertex{pt(r.snap(p[0]*c-p[1]*s), r.snap(p[0]*s+p[1]*c)), Label(101 + k)})
	}
	return ring
}

// 10,000 rooms against a textbook clipper (area) and simplefeatures (area and number of parts), on a grid of 1/16000
// mm, of a micrometer and of 50 mm, where much coincides.
func TestClipConvexAgainstLibrary(t *testing.T) {
	for _, grid := range []unit.Length{1, unit.Micrometre, 50 * unit.Millimetre} {
		r := rooms{rand.New(rand.NewPCG(1, uint64(grid))), grid}
		for k := range 3400 {
			g := r.room()
			compare(t, grid, k, g, r.tile(g))
			if t.Failed() {
				return
			}
		}
	}
}

func convex(r Ring) bool {
	for i := range r {
		if Side(r[i].P, r.end(i), r.end((i+1)%len(r))) <= 0 {
			return false
		}
	}
	return true
}

func compare(t *testing.T, grid unit.Length, k int, g Region, tile Ring) {
	t.Helper()
	got := g.ClipConvex(tile)
	want, err := sf.Intersection(toLibrary(g), toLibrary(Region{tile}))
	if err != nil {
		t.Fatal(err)
	}
	area, slack := float64(got.Area2())/2, slackOf(got)
	if d := math.Abs(area - want.Area()); d > slack {
		t.Errorf("grid %d, case %d: area off the library's by %.0f, more than %.0f", grid, k, d, slack)
	}
	if d := math.Abs(area - textbookArea(g, tile)); d > slack {
		t.Errorf("grid %d, case %d: area off the textbook's by %.0f, more than %.0f", grid, k, d, slack)
	}
	if a, b := len(got.Parts()), parts(want); a != b {
		t.Errorf("grid %d, case %d: %d parts, the library has %d\nroom %s\ntile %s\n got %s\nwant %s", grid, k, a, b, show(g), show(Region{tile}), show(got), want.AsText())
	}
	checkIndex(t, g, tile, got, slack)
	checkLabels(t, got, append(sources(g, false), sources(Region{tile}, false)...))
	for _, ring := range got {
		if ok, i, j := ring.Simple(); !ok {
			t.Errorf("grid %d, case %d: edges %d and %d of %s meet", grid, k, i, j, show(Region{ring}))
		}
	}
}

// checkIndex holds the index against the clipped area: all of the tile, none, or some.
func checkIndex(t *testing.T, g Region, tile Ring, got Region, slack float64) {
	t.Helper()
	ix := NewIndex(g)
	if a, b := show(got), show(ix.ClipConvex(tile)); a != b {
		t.Errorf("through the index %s, without it %s", b, a)
	}
	area, whole, where := float64(got.Area2()), float64(tile.Area2()), ix.ClassifyConvex(tile)
	if where != g.classify(shape{tile.Bounds(), tile}) {
		t.Errorf("index says %d, region does not", where)
	}
	wrong := where == Inside && area != whole || where == Outside && area != 0 ||
		where == Across && (area > whole+slack || area < whole && area > whole-1 || area < 0)
	if wrong {
		t.Errorf("classified as %d, but %.0f of %.0f are in the room", where, area, whole)
	}
}

// checkLabels finds for every edge a source edge of its label that it lies on.
func checkLabels(t *testing.T, got Region, all []source) {
	t.Helper()
	for _, r := range got {
		for i, v := range r {
			if !labelFits(v, r.end(i), all) {
				t.Errorf("no edge labelled %d runs from %v to %v", v.Edge, v.P, r.end(i))
			}
		}
	}
}

func labelFits(v Vertex, end Point, all []source) bool {
	for _, s := range all {
		if s.label == v.Edge && DistToSegment(v.P, s.a, s.b) <= onGrid && DistToSegment(end, s.a, s.b) <= onGrid {
			return true
		}
	}
	return false
}

// slackOf allows what rounding can move: every edge by up to a count across, and a few square counts for the corners.
func slackOf(g Region) float64 {
	sum := 64.0
	for _, r := range g {
		for i, v := range r {
			sum += float64(Dist(v.P, r.end(i)))
		}
	}
	return sum
}

func parts(g sf.Geometry) (n int) {
	for _, s := range g.Dump() {
		if p, ok := s.AsPolygon(); ok && !p.IsEmpty() {
			n++
		}
	}
	return n
}
