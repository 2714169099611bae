package piece_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/lay/laytest"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// Courses count from the bottom, columns from the left end of each course, and further parts of a tile have letters.
func TestAddresses(t *testing.T) {
	for _, c := range []struct{ face, bond, origin, want string }{
		{"600x400", "stack, 300x200, 0", "0,0", "1-1 1-2 2-1 2-2"},
		{"600x400", "stack, 300x200, 0", "100,100", "1-1 1-2 1-3 2-1 2-2 2-3 3-1 3-2 3-3"},
		{"600x400", "running 1/2, 300x200, 0", "0,0", "1-1 1-2 2-1 2-2 2-3"},
		{"600.3x400.3", "stack, 300x200, 0", "0.3,0.3", "1-1 1-2 2-1 2-2"}, // 0.3 mm at the left and below is no piece and has no number
		{"300x400 - 100x250@100,-0", "stack, 300x200, 0", "0,0", "1-1 1-1b 2-1"},
		{"600x400 - 300x200@0,0", "stack, 300x200, 0", "0,0", "1-2 2-1 2-2"}, // an opening takes no number away from others
		{"0,0 600,0 600,400 300,400 300,200 0,200", "stack, 300x200, 0", "0,0", "1-1 1-2 2-2"},
	} {
		if got := addresses(describe(c.face, c.bond, c.origin)); got != c.want {
			t.Errorf("%s, %s: %s, want %s", c.face, c.bond, got, c.want)
		}
	}
	if got := addresses(describe("300x200", "stack, 300x200, 0", "0,0", func(f *piece.Field) { f.Mark = "B " })); got != "B 1-1" {
		t.Errorf("with a mark: %s", got)
	}
}

func addresses(pieces []piece.Piece) string {
	var out []string
	for _, p := range pieces {
		out = append(out, p.Address)
	}
	return strings.Join(out, " ")
}

// On any face and bond addresses are unique, count from 1, and stay when an opening is made; the outline on the face has the
// piece's area but for rounding, at 45 degrees too.
func TestAddressesOnAnyFace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := bondtest.Make(rapid.SampledFrom(bondtest.All).Draw(t, "bond"))
		frame := geom.Frame{Origin: geom.Point{X: 99, Y: -5}, Angle: b.Angle}
		face := laytest.Draw(t)
		region := face.In(frame)
		f := piece.Field{Bond: b, Frame: frame, Numbers: piece.Number(b, region.Bounds(), geom.Point{})}
		at := map[string]geom.Point{}
		for _, laid := range lay.Lay(region[:1], b, geom.Point{}, nil) {
			p := piece.Describe(piece.Input{Laid: laid, Field: f})
			if _, twice := at[p.Address]; twice || p.Course < 1 || p.Column < 1 {
				t.Fatalf("address %s", p.Address)
			}
			at[p.Address] = laid.At
			if d := float64(p.OnFace.Area2() - p.InTile.Area2()); d > 3*outline(p.InTile) || -d > 3*outline(p.InTile) {
				t.Fatalf("%s is off by %v on the face", p.Address, d)
			}
		}
		for _, laid := range lay.Lay(region, b, geom.Point{}, nil) {
			p := piece.Describe(piece.Input{Laid: laid, Field: f})
			if was, ok := at[p.Address]; ok && was != laid.At {
				t.Fatalf("%s was at %v and is at %v", p.Address, was, laid.At)
			}
		}
	})
}

func outline(g geom.Region) float64 {
	var sum unit.Length
	for _, r := range g {
		for i, v := range r {
			sum += geom.Dist(v.P, r[(i+1)%len(r)].P)
		}
	}
	return float64(sum)
}

// Edges are listed once each, factory sides first; those that meet a neighbor are kept.
func TestEdges(t *testing.T) {
	for _, c := range []struct{ face, bond, piece, want string }{
		{"450x402", "stack, 300x200, 2", "1-2", "factory left*, factory bottom, factory top*, cut: e2"},
		{"450x402", "stack, 300x200, 2", "1-1", "factory left*, factory bottom*, factory right*, factory top*"},
		{"402x150", "stack, 300x200, 2 upright", "1-2", "factory bottom, factory right, factory left*, cut: e3"},
		{"0,0 300,0 300,120 180,120 180,200 0,200", "stack, 300x200, 0", "1-1", "factory left, factory bottom, factory right, factory top, cut: e3, cut: e4"},
		{"350x400", "hexagon, 200, 0", "2-2", "factory lower right*, factory upper right*, factory upper left*, factory left*, factory lower left*, cut: e2"},
		{"400x350", "hexagon, 200, 0 upright", "2-2", "factory upper right*, factory top*, factory upper left*, factory lower left*, factory bottom*, factory lower right*"},
	} {
		origin := "0,0"
		var got []string
		for _, e := range find(t, describe(c.face, c.bond, origin), c.piece).Edges {
			name := e.Name
			if e.Keep {
				name += "*"
			}
			got = append(got, name)
		}
		if s := strings.Join(got, ", "); s != c.want {
			t.Errorf("%s %s:\n got %s\nwant %s", c.face, c.piece, s, c.want)
		}
	}
}

// Hexagons are cut from flats and corners. 200 across the flats is 230.94 across the corners; the second course stands on the
// face's bottom with its lower corners.
func TestHexagonCuts(t *testing.T) {
	for _, c := range []struct{ face, piece, want string }{
		{"150x200", "2-2", "straight; e2: left corner 149"}, // upright: it stands on a flat side, 0.06 mm from the wall
		{"350x150", "2-1", "straight; e3: bottom corner 150"},
		{"150x230", "2-1", "odd; e2: left 150; e3: bottom corner 230"},
		{"150x400", "2-1", "straight; e2: left 150"},
	} {
		bond, origin := "hexagon, 200, 0", "0,0"
		if c.piece == "2-2" {
			bond, origin = bond+" upright", "231,0"
		}
		if got := say(find(t, describe(c.face, bond, origin), c.piece).Cut); got != c.want {
			t.Errorf("%s: %s, want %s", c.face, got, c.want)
		}
	}
}
