package search

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/unit"
)

func patternRoom(rng *rand.Rand) string {
	w, h := 600+rng.IntN(900), 500+rng.IntN(700)
	line := fmt.Sprintf("room %d %d", w, h)
	xs, ys := spread(rng, w), spread(rng, h)
	for i := range rng.IntN(3) {
		x0, x1, y0, y1 := xs[2*i], xs[2*i+1], ys[2*i], ys[2*i+1]
		line += fmt.Sprintf(" | open o%d %d %d %d %d", i, min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1))
	}
	bonds := []string{"tile 197 97 3 | herringbone", "tile 197 97 3 | diagonal herringbone", "tile 147 147 3 | diagonal stack",
		"tile 297 97 3 | diagonal running 1/3", "tile 197 97 3 | basketweave", "tile 150 150 3 | hexagon"}
	return line + fmt.Sprintf(" | taper %d | %s | mark 1", rng.IntN(20), bonds[rng.IntN(len(bonds))])
}

// The census looks at tiles along edges and halves most of them in one go; the layout itself clips every tile of the
// room. Cut tiles and the least side of the box round any piece must be the same.
func TestCensusAgainstLayingEveryTile(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 14))
	for range 200 {
		line := patternRoom(rng)
		in := read(t, line)
		o := geom.Point{X: unit.Length(rng.IntN(300_000)) * unit.Micrometre, Y: unit.Length(rng.IntN(300_000)) * unit.Micrometre}
		got := newCensus(&in).assess(o)
		narrow, cut := laid(&in, o)
		if (got.length[narrowest]-narrow).Abs() > 2 || int(got.costs[cuts]) != cut {
			t.Fatalf("%s\norigin %v: narrowest %s, %d cut; laid %s, %d cut", line, o, got.length[narrowest].JSON(),
				got.costs[cuts], narrow.JSON(), cut)
		}
	}
}

// laid measures the pieces of a whole layout.
func laid(in *Input, o geom.Point) (least unit.Length, cut int) {
	pieces, dropped := lay.On(in.Region).Lay(in.Bond, o, nil)
	done := map[[3]int]bool{}
	for _, p := range append(pieces, dropped...) {
		proto := in.Bond.Protos[p.Proto]
		full := 2 * int64(proto.W) * int64(proto.H)
		if proto.Ring != nil {
			full = proto.Ring.Area2()
		}
		box := p.Shape.Bounds()
		w := min(box.W(), box.H())
		if p.Whole || w < in.Mark || full-p.Shape.Area2() < 2*int64(in.Mark)*int64(max(proto.W, proto.H)) {
			continue
		}
		if k := [3]int{p.Course, p.Column, p.Proto}; !done[k] {
			done[k] = true
			cut++
		}
		if least == 0 || w < least {
			least = w
		}
	}
	return least, cut
}

// Halving a tile by an edge that runs right across it is the clip by that edge's line.
func TestHalvedAgainstClipping(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 16))
	const w, h = 300_000, 200_000
	tile := geom.RectRing(geom.Rect{Max: geom.Point{X: w, Y: h}}, 0, 0, 0, 0)
	seen := map[relation]int{}
	at := func() geom.Point {
		return geom.Point{X: unit.Length(rng.IntN(3*w)) - w, Y: unit.Length(rng.IntN(4*h)) - h}
	}
	for range 3000 {
		a, b := at(), at()
		if a == b {
			continue
		}
		r := crosses(tile, a, b)
		seen[r]++
		half := geom.Region{tile}.HalfPlane(a, b, 1)
		switch r {
		case through:
			got := halved(tile, side{a: a, b: b})
			if box := half.Bounds(); got.area2 != half.Area2() || got.box != box {
				t.Fatalf("%v %v: halved to %d in %v, clipped to %d in %v", a, b, got.area2, got.box, half.Area2(), half.Bounds())
			}
		case beside:
			for k := range 101 {
				p := geom.Point{X: a.X + (b.X-a.X).MulDiv(int64(k), 100), Y: a.Y + (b.Y-a.Y).MulDiv(int64(k), 100)}
				if 1 < p.X && p.X < w-1 && 1 < p.Y && p.Y < h-1 {
					t.Fatalf("%v %v passes, but %v is inside", a, b, p)
				}
			}
		}
	}
	if seen[through] < 100 || seen[beside] < 100 || seen[unclear] < 100 {
		t.Errorf("the tile was not crossed in all ways: %v", seen)
	}
}

// A bounded search is at least as good as every place of its grid, says what it did, and claims nothing exact.
func TestBoundedIsNoWorseThanItsGrid(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 18))
	for range 12 {
		line := patternRoom(rng)
		in := read(t, line)
		in.settle()
		in.Order = judge.Presets()[rng.IntN(5)].Order
		res := Best(in)
		c := &climber{in: &in, census: newCensus(&in), order: ranked(in.Order), seen: map[geom.Point]costs{}}
		grid, _ := c.grid()
		first := c.cost(res.Finalists[0].Origin)
		for _, g := range grid {
			if compareCosts(c.order, &g.costs, &first) < 0 {
				t.Fatalf("%s: %v is better than %v", line, g.origin, res.Finalists[0].Origin)
			}
		}
		if res.Exact || res.Coarse <= res.Resolution || res.Evaluated < roughest*roughest || res.Evaluated > 500 {
			t.Errorf("%s: %d judged, %s to %s", line, res.Evaluated, res.Coarse.JSON(), res.Resolution.JSON())
		}
		for _, m := range res.Finalists[0].Measures {
			if m.Exact {
				t.Errorf("%s: %s is called exact", line, m.Name)
			}
		}
	}
}

// At 45 degrees the center line is a diagonal of the pattern: tile centers and crossings of joints lie on it at every
// pitch over the root of two.
func TestDiagonalIsCenteredOnTileCorners(t *testing.T) {
	in := read(t, "room 1500 1200 | tile 297 297 3 | diagonal stack | center 750 | mark 0.5")
	first := Best(in).Finalists[0]
	if m := get(t, first, judge.Balance); m.Cost != 0 {
		t.Errorf("the best lies %s off center", m.Length.JSON())
	}
	face := geom.Frame{Angle: 45 * unit.Degree}.Out(first.Origin.Add(geom.Point{X: 297 * unit.Millimetre / 2, Y: 297 * unit.Millimetre / 2}))
	half := 300 / math.Sqrt2 / 2 * 1 // tile centers and crossings by turns
	off := math.Mod(face.X.MM()-750, half)
	if off = min(math.Abs(off), half-math.Abs(off)); off > 0.5 {
		t.Errorf("a tile center lies %.2f off", off)
	}
}

func TestSearchedSaysHow(t *testing.T) {
	for _, row := range []struct{ bond, want string }{
		{"running 1/2", "every 0.5 mm of both offsets"},
		{"herringbone", "a bounded search"},
	} {
		in := read(t, strings.Replace(bathWall, "running 1/2", row.bond, 1))
		if got := Best(in).Searched.Say(unit.DefaultStyle(unit.Millimetres)); !strings.HasSuffix(got, row.want) {
			t.Errorf("%s: %q", row.bond, got)
		}
	}
}
