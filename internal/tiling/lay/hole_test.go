package lay_test

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/lay/laytest"
	"dryfit/internal/unit"
)

// Holes of 40 mm in tiles of 300 by 200 with joints of 2 mm, by hand. "0:0 at 150,100" is a hole in the tile's own frame; a "!" marks
// one that crosses the piece's edge.
func TestHoles(t *testing.T) {
	const stack = "stack, 300x200, 2"
	for _, c := range []struct{ name, face, bond, at, want string }{
		{"in the middle", "602x402", stack, "150,100", "0:0 at 150,100"},
		{"in the second tile, from its own corner", "602x402", stack, "402,302", "1:1 at 100,100"},
		{"on the joint: two bites", "602x402", stack, "301,100", "0:0 at 301,100!, 0:1 at -1,100!"},
		{"on the crossing: four bites", "602x402", stack, "301,201", "0:0 at 301,201!, 0:1 at -1,201!, 1:0 at 301,-1!, 1:1 at -1,-1!"},
		{"rim just off the edge", "602x402", stack, "280,100", "0:0 at 280,100"},
		{"rim just over the edge", "602x402", stack, "280.001,100", "0:0 at 280.001,100!"},
		{"over the edge and the joint", "602x402", stack, "285,100", "0:0 at 285,100!, 0:1 at -17,100!"},
		{"beside the piece that the wall cut", "602x402 - 100x402@200,0", stack, "250,100", ""},
		{"in one part of a cut tile", "602x402 - 50x402@200,0", stack, "215,100", "0:0 at 215,100!"},
		{"touches a part", "602x402 - 50x402@200,0", stack, "220,100", ""},
		{"outside", "602x402", stack, "-50,100", ""},
		{"in an upright tile: 40 up from its foot and 30 from its left is 40 along and 200-30 up", "402x302", "stack, 300x200, 2 upright", "30,40", "0:0 at 40,170"},
	} {
		pieces := lay.Lay(laytest.Face(c.face), bondtest.Make(c.bond), geom.Point{}, []lay.Hit{{Index: 7, Center: laytest.Point(c.at), Drill: 40 * unit.Millimetre}})
		var got []string
		for _, p := range pieces {
			for _, h := range p.Holes {
				s := fmt.Sprintf("%d:%d at %s,%s", p.Course, p.Column, h.Center.X.JSON(), h.Center.Y.JSON())
				if h.Bite {
					s += "!"
				}
				if h.Index != 7 || h.Drill != 40*unit.Millimetre {
					t.Errorf("%s: %+v", c.name, h)
				}
				got = append(got, s)
			}
		}
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
}

// A hole carried back from the tile's frame is where it was, whichever way the tile lies.
func TestHolesComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := bondtest.Make(rapid.SampledFrom(bondtest.All).Draw(t, "bond"))
		at := geom.Point{X: unit.Length(rapid.Int64Range(-8e6, 8e6).Draw(t, "x")), Y: unit.Length(rapid.Int64Range(-8e6, 8e6).Draw(t, "y"))}
		face := laytest.Face("-700,-700 700,-700 700,700 -700,700")
		for _, p := range lay.Lay(face, b, geom.Point{}, []lay.Hit{{Center: at, Drill: 30 * unit.Millimetre}}) {
			for _, h := range p.Holes {
				dot := lay.Piece{Proto: p.Proto, At: p.At, Shape: geom.Region{{{P: h.Center}}}}
				if got := lay.OnPattern(dot, b)[0][0].P; got != at {
					t.Fatalf("%v came back as %v", at, got)
				}
			}
		}
	})
}
