package piece_test

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/lay/laytest"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// Holes of 30 mm in tile of 300 by 200, worked by hand: from which edge, how far, and how far the rim is from the nearest edge.
func TestHolesFromEdges(t *testing.T) {
	for _, c := range []struct{ name, face, origin, at, want string }{
		{"whole: from left and bottom", "300x200", "0,0", "100,60", "100 left, 60 bottom; rim 45"},
		{"cut at the right: from the left, and from the cut", "250x200", "0,0", "100,60", "100 left (150 cut: e2), 60 bottom; rim 45"},
		{"cut at the left: from the right, and from the cut", "250x200", "-50,0", "100,60", "150 right (100 cut: e4), 60 bottom; rim 45"},
		{"cut both ways: from the cut and from the last joint", "250x150", "0,0", "100,60", "100 left (150 cut: e2), 60 bottom (90 cut: e3); rim 45"},
		{"between walls: from the factory side that stands at one of them, and from the cut", "200x200", "-50,0", "120,60", "120 left (80 cut: e2), 60 bottom; rim 45"},
		{"between walls that lean: from the nearer cut", "10,0 210,0 200,200 20,200", "-50,0", "120,100", "85 cut: e2, 100 bottom; rim 69.8939375"}, // square to the slope 85·200/√(200² + 10²) = 84.894,
		{"sloping cut: at the hole's height", "0,0 260,0 240,200 0,200", "0,0", "100,100", "100 left (150 cut: e2), 100 bottom; rim 85"},
		{"near an edge", "300x200", "0,0", "20,60", "20 left, 60 bottom; rim 5"},
		{"over the edge", "250x200", "0,0", "240,60", "240 left (10 cut: e2), 60 bottom; bite"},
	} {
		for _, bond := range []string{"stack, 300x200, 0", "stack, 200x300, 0 upright"} {
			if got := holeIn(c.face, bond, c.origin, c.at); got != c.want {
				t.Errorf("%s, %s: %s, want %s", c.name, bond, got, c.want)
			}
		}
	}
}

func holeIn(face, bond, origin, center string) string {
	region, b, at := laytest.Face(face), bondtest.Make(bond), laytest.Point(origin)
	f := piece.Field{Bond: b, Numbers: piece.Number(b, region.Bounds(), at), Edges: map[geom.Label]piece.Edge{}, Holes: []string{"", "basin cold"}}
	for l := geom.Label(1); l < 9; l++ {
		f.Edges[l] = piece.Edge{Name: fmt.Sprintf("e%d", l)}
	}
	hit := lay.Hit{Index: 1, Center: laytest.Point(center), Drill: 30 * unit.Millimetre}
	p := piece.Describe(piece.Input{Laid: lay.Lay(region, b, at, []lay.Hit{hit})[0], Field: f})
	return holeLine(p.Holes[0])
}

func holeLine(h piece.PieceHole) string {
	side := func(from unit.Length, edge string, cut unit.Length, cutEdge string) string {
		s := from.JSON() + " " + edge
		if cutEdge != "" {
			s += " (" + cut.JSON() + " " + cutEdge + ")"
		}
		return s
	}
	s := side(h.FromX, h.EdgeX, h.CutX, h.CutEdgeX) + ", " + side(h.FromY, h.EdgeY, h.CutY, h.CutEdgeY)
	if h.Bite {
		return s + "; bite"
	}
	return s + "; rim " + h.ToEdge.JSON()
}

// On a hexagon, 200 across the flats, holes are taken from the flats and from the corners that are left. The nearest side is the lower right one, at 60 degrees:
// 100 - (20·cos 60 + 15.470·sin 60) = 76.6025 from the center.
func TestHolesInHexagons(t *testing.T) {
	for _, c := range []struct{ face, at, want string }{
		{"0,0 400,0 400,231 0,231", "120,100", "120 left, 100 bottom corner; rim 61.6025"},
		{"30,0 400,0 400,231 30,231", "120,100", "80 right (90 cut: e4), 100 bottom corner; rim 61.6025"},
		{"0,0 400,0 400,200 0,200", "120,100", "120 left, 100 bottom corner (100 cut: e3); rim 61.6025"},
		{"0,20 400,20 400,200 0,200", "120,100", "120 left, 80 cut: e1; rim 61.6025"},
	} {
		region, b := laytest.Face(c.face), bondtest.Make("hexagon, 200, 0")
		f := piece.Field{Bond: b, Edges: map[geom.Label]piece.Edge{1: {Name: "e1"}, 3: {Name: "e3"}, 4: {Name: "e4"}}}
		hit := lay.Hit{Center: laytest.Point(c.at), Drill: 30 * unit.Millimetre}
		for _, laid := range lay.Lay(region, b, geom.Point{}, []lay.Hit{hit}) {
			if laid.Course != 0 || laid.Column != 0 {
				continue
			}
			if got := holeLine(piece.Describe(piece.Input{Laid: laid, Field: f}).Holes[0]); got != c.want {
				t.Errorf("%s: %s, want %s", c.face, got, c.want)
			}
		}
	}
}

// The core bit is the least of the person's bits that is wide enough.
func TestBits(t *testing.T) {
	named := piece.Field{Bond: bondtest.Make("stack, 300x200, 0"), Holes: []string{"", "basin cold"}}
	hit := lay.Hit{Index: 1, Center: laytest.Point("9,9"), Drill: 1}
	if got := piece.Describe(piece.Input{Laid: lay.Lay(laytest.Face("300x200"), named.Bond, geom.Point{}, []lay.Hit{hit})[0], Field: named}); got.Holes[0].Name != "basin cold" {
		t.Errorf("the hole is called %q", got.Holes[0].Name)
	}
	for bits, want := range map[string]string{"": "0", "25 40 32 68": "32", "30": "30", "29.9": "0", "68 35": "35"} {
		var have []unit.Length
		for s := range strings.FieldsSeq(bits) {
			have = append(have, bondtest.MM(s))
		}
		b := bondtest.Make("stack, 300x200, 0")
		f := piece.Field{Bond: b, Tools: piece.Tools{Bits: have}}
		laid := lay.Lay(laytest.Face("300x200"), b, geom.Point{}, []lay.Hit{{Center: laytest.Point("150,100"), Drill: 30 * unit.Millimetre}})
		if got := piece.Describe(piece.Input{Laid: laid[0], Field: f}).Holes[0].Bit; got != bondtest.MM(want) {
			t.Errorf("of %q: %v, want %s", bits, got.MM(), want)
		}
	}
}
