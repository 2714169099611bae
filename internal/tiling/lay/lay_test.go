package lay_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	sf "github.com/peterstace/simplefeatures/geom"
	"pgregory.net/rapid"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/lay/laytest"
	"dryfit/internal/unit"
)

// Layouts worked by hand. Each piece: course-column, with part; "=" for a whole tile, else width x height of the outline's bounds
// in the tile's own frame in millimetres.
func TestLayouts(t *testing.T) {
	for _, c := range []struct{ face, bond, origin, want string }{
		{"1000x300", "stack, 300x300, 0", "200,0", "0:-1 200x300, 0:0 =, 0:1 =, 0:2 200x300"},
		{"600x200", "stack, 297x97, 3", "0,0", "0:0 =, 0:1 =, 1:0 =, 1:1 ="},
		{"600x100", "stack, 297x97, 3 upright", "0,0", "0:0 100x97, 0:1 100x97, 0:2 100x97, 0:3 100x97, 0:4 100x97, 0:5 100x97"},
		{"600x197", "running 1/2, 297x97, 3", "0,0", "0:0 =, 0:1 =, 1:-1 147x97, 1:0 =, 1:1 150x97"},
		{"1000x300 - 100x300@300,0", "stack, 500x300, 0", "0,0", "0:0 300x300, 0:0b 100x300, 0:1 ="},
		{"1000x300 - 100x100@600,100", "stack, 500x300, 0", "0,0", "0:0 =, 0:1 500x300"},
		{"300.4x300", "stack, 300x300, 0", "0,0", "0:0 ="},              // 0.4 mm more: falls into the joint
		{"300.6x300", "stack, 300x300, 0", "0,0", "0:0 =, 0:1 0.6x300"}, // 0.6 mm is a piece, if a bad one
		{"0,0 600,0 600,100 0,200", "stack, 600x300, 0", "0,0", "0:0 600x200"},
		{"300x100", "herringbone, 197x97, 3", "0,0", "0:0 =, 0:1 97x97"},
	} {
		got := layout(lay.Lay(laytest.Face(c.face), bondtest.Make(c.bond), laytest.Point(c.origin), nil))
		if got != c.want {
			t.Errorf("%s, %s:\n got %s\nwant %s", c.face, c.bond, got, c.want)
		}
	}
}

func layout(pieces []lay.Piece) string {
	var out []string
	for _, p := range pieces {
		s := fmt.Sprintf("%d:%d", p.Course, p.Column)
		if p.Part > 0 {
			s += string(rune('a' + p.Part))
		}
		if p.Whole {
			out = append(out, s+" =")
			continue
		}
		b := p.Shape.Bounds()
		out = append(out, s+" "+b.W().JSON()+"x"+b.H().JSON())
	}
	return strings.Join(out, ", ")
}

// Pieces, dropped strips and joints are the whole field: for every tile, its parts have the area
// that the textbook clipper gives for it, so nothing is lost or laid twice.
func TestPiecesAndJointsFillTheField(t *testing.T) {
	for _, line := range bondtest.All {
		b := bondtest.Make(line)
		t.Run(line, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				g := laytest.Draw(t)
				origin := geom.Point{X: unit.Length(rapid.Int64Range(-1e7, 1e7).Draw(t, "x")), Y: unit.Length(rapid.Int64Range(-1e7, 1e7).Draw(t, "y"))}
				pieces, dropped := lay.On(g).Lay(b, origin, nil)
				checkTiles(t, g, b, origin, append(dropped, pieces...))
			})
		})
	}
}

// checkTiles compares tile by tile. A constructed corner is rounded by at most half a count each way, which moves an
// area by less than 0.71 of the perimeter for each.
func checkTiles(t *rapid.T, g geom.Region, b bond.Bond, origin geom.Point, pieces []lay.Piece) {
	got := map[geom.Point]float64{}
	for _, p := range pieces {
		got[p.At] += float64(p.Shape.Area2()) / 2
		if r := (geom.Rect{Max: geom.Point{X: max(b.Protos[p.Proto].W, b.Protos[p.Proto].H), Y: max(b.Protos[p.Proto].W, b.Protos[p.Proto].H)}}); !holds(r, p.Shape.Bounds()) {
			t.Fatalf("a piece leaves its tile: %v", p.Shape)
		}
	}
	for _, c := range b.Cover(g.Bounds(), origin) {
		want := clippedArea(g, b.Ring(c))
		slack := 0.71*2*float64(c.Rect.W()+c.Rect.H()) + 1e-9*float64(c.Rect.W().Times(c.Rect.H()))
		if math.Abs(got[c.Rect.Min]-want) > slack {
			t.Fatalf("tile %d:%d has pieces of %.0f, the field there %.0f", c.Course, c.Column, got[c.Rect.Min], want)
		}
		delete(got, c.Rect.Min)
	}
	if len(got) > 0 {
		t.Fatalf("pieces of tiles that are not in the bond: %v", got)
	}
}

func holds(r, o geom.Rect) bool {
	return r.Min.X <= o.Min.X && r.Min.Y <= o.Min.Y && o.Max.X <= r.Max.X && o.Max.Y <= r.Max.Y
}

// The same by a second library: each piece, carried back to the pattern, lies in the field (their difference has no area but that
// of rounding), the parts of a tile are as many as the library finds, and whole tiles measure exactly L·W.
func TestPiecesLieInTheField(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := bondtest.Make(rapid.SampledFrom(bondtest.All).Draw(t, "bond"))
		g := laytest.Draw(t)
		pieces, dropped := lay.On(g).Lay(b, geom.Point{}, nil)
		field := library(t, g)
		parts := map[geom.Point]int{}
		for _, p := range append(dropped, pieces...) {
			parts[p.At]++
			if whole := b.Protos[p.Proto]; p.Whole && whole.Ring == nil && p.Shape.Area() != whole.W.Times(whole.H) {
				t.Fatalf("a whole tile measures %d", p.Shape.Area())
			}
			out, err := sf.Difference(library(t, lay.OnPattern(p, b)), field)
			if err != nil || out.Area() > 0.71*perimeter(p.Shape) {
				t.Fatalf("piece %d:%d sticks out by %v (%v)", p.Course, p.Column, out.Area(), err)
			}
		}
		for _, c := range b.Cover(g.Bounds(), geom.Point{}) {
			part, err := sf.Intersection(library(t, geom.Region{b.Ring(c)}), field)
			if n := big(part, 8*float64(c.Rect.W()+c.Rect.H())); err != nil || n > parts[c.Rect.Min] {
				t.Fatalf("tile %d:%d has %d parts, the library finds %d (%v)", c.Course, c.Column, parts[c.Rect.Min], n, err)
			}
		}
	})
}

// Any point of the field lies in exactly one piece, or in none if it lies in no tile; any point outside lies in none. Points
// within a few counts of an edge are left out, since constructed corners are rounded.
func TestEveryPointIsInOnePieceOrInAJoint(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := bondtest.Make(rapid.SampledFrom(bondtest.All).Draw(t, "bond"))
		g := laytest.Draw(t)
		pieces, dropped := lay.On(g).Lay(b, geom.Point{}, nil)
		pieces = append(pieces, dropped...)
		for range 40 {
			p := geom.Point{X: unit.Length(rapid.Int64Range(-35e6, 35e6).Draw(t, "x")), Y: unit.Length(rapid.Int64Range(-35e6, 35e6).Draw(t, "y"))}
			want := tilesAt(b, p)
			if g.Contains(p) < 0 {
				want = 0
			}
			if got, sure := piecesAt(pieces, b, p); got != want && sure {
				t.Fatalf("%v lies in %d pieces, want %d", p, got, want)
			}
		}
	})
}

func tilesAt(b bond.Bond, p geom.Point) (n int) {
	one := geom.Point{X: 1, Y: 1}
	b.Each(geom.Rect{Min: p.Sub(one), Max: p.Add(one)}, geom.Point{}, func(c bond.Cell) {
		if b.Ring(c).Contains(p) > 0 {
			n++
		}
	})
	return n
}

// piecesAt counts the pieces round a point; it is sure where no edge is within a few counts, as constructed corners are rounded.
func piecesAt(pieces []lay.Piece, b bond.Bond, p geom.Point) (n int, sure bool) {
	sure = true
	for _, q := range pieces {
		shape := lay.OnPattern(q, b)
		if shape.Contains(p) > 0 {
			n++
		}
		sure = sure && lay.Rim(shape, p) > 4
	}
	return n, sure
}

// big counts the polygons with more area than rounding makes.
func big(g sf.Geometry, least float64) int {
	n := 0
	for _, p := range g.Dump() {
		if p.Area() > least {
			n++
		}
	}
	return n
}

func perimeter(g geom.Region) float64 {
	var sum float64
	for _, r := range g {
		for i, v := range r {
			sum += float64(geom.Dist(v.P, r[(i+1)%len(r)].P))
		}
	}
	return sum
}
