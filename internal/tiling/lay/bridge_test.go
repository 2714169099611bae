package lay

import (
	"slices"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// A box whose lower edge stands 0.3 mm above a joint leaves no hair of tile under it: the cut goes through to the joint, the
// piece is open below, and the hair is among what is dropped, so that nothing of the field is lost.
func TestHairUnderAnOpeningFallsIntoTheJoint(t *testing.T) {
	mm := func(tenths int) unit.Length { return unit.Length(tenths) * unit.Millimetre / 10 }
	at := func(x, y int) geom.Point { return geom.Point{X: mm(x), Y: mm(y)} }
	tile := geom.Rect{Max: at(3000, 3000)}
	for _, c := range []struct {
		name   string
		hole   geom.Rect
		rings  int // of the piece
		strips int
	}{
		{"hair below", geom.Rect{Min: at(1000, 3), Max: at(1500, 800)}, 1, 1},
		{"hair at the right", geom.Rect{Min: at(1000, 1000), Max: at(2997, 1500)}, 1, 1},
		{"hairs above and at the left", geom.Rect{Min: at(2, 1000), Max: at(500, 2998)}, 1, 2},
		{"half a millimetre stays", geom.Rect{Min: at(1000, 5), Max: at(1500, 800)}, 2, 0},
	} {
		part, err := geom.Region{geom.RectRing(tile, Left, Bottom, Right, Top)}.Minus([]geom.Region{{geom.RectRing(c.hole, 1, 2, 3, 4)}})
		if err != nil {
			t.Fatal(err)
		}
		left, strips := unbridged(part, tile)
		left = slices.DeleteFunc(left, thin) // where two hairs meet a speck stays; it is dropped as any thin part
		if len(left) != 1 || len(left[0]) != c.rings || len(strips) != c.strips {
			t.Errorf("%s: %d parts, %v, %d strips", c.name, len(left), left, len(strips))
		}
		area := left[0].Area()
		for _, s := range strips {
			area += s.Area()
		}
		if c.strips < 2 && area != part.Area() {
			t.Errorf("%s: %d of %d", c.name, area, part.Area())
		}
	}
}

// A border at an outside corner of a floor that is not square: the cut along one wall leans, 0.2 mm off the tile's side at
// one end and 0.3 mm at the other. No saw leaves that, so the L loses its hair of a leg.
func TestHairBesideALeaningCutFallsIntoTheJoint(t *testing.T) {
	mm := func(tenths int) unit.Length { return unit.Length(tenths) * unit.Millimetre / 10 }
	at := func(x, y int) geom.Point { return geom.Point{X: mm(x), Y: mm(y)} }
	tile := geom.Rect{Max: at(1000, 1000)}
	for _, c := range []struct {
		name  string
		far   int // how far the cut's other end is from the tile's side, in tenths
		clean bool
	}{{"a hair", 3, true}, {"level", 2, true}, {"wide at one end", 9, false}} {
		l := geom.Region{{
			{P: at(0, 0), Edge: Bottom}, {P: at(1000, 0), Edge: Right}, {P: at(1000, 1000), Edge: Top},
			{P: at(400, 1000), Edge: 1}, {P: at(400, 2), Edge: 2}, {P: at(0, c.far), Edge: Left},
		}}
		left, _ := unbridged(l, tile)
		left = slices.DeleteFunc(left, thin)
		if got := len(left) == 1 && left[0].Bounds().Min.X >= mm(400); got != c.clean {
			t.Errorf("%s: %v", c.name, left)
		}
	}
}
