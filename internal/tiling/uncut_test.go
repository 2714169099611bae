package tiling

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/unit"
)

// A tile that lacks 0.3 mm at a corner whose joint forgives it goes in as it is: it is counted, bought and listed as a whole
// one, and comes out of no other. One that lacks 1 mm is cut. The place of the pattern is worked out from where it lies
// at a first pin: what is missing up to the end of the field, and so much more.
func TestLacksNextToNothing(t *testing.T) {
	const pitch = 97 * unit.Inch / 8 // 12 in and a joint of 1/8 in
	for _, c := range []struct {
		lacks unit.Length
		uncut bool
	}{{unit.Millimetre * 3 / 10, true}, {unit.Millimetre, false}} {
		make := func(pin unit.Length) Plan {
			doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", fmt.Sprintf(`
tiles: {plank: {size: 12 x 4 x 3/8, kind: porcelain, joint: 1/8}}
lay: {back: {fields: {main: {tile: plank, pin: {across: %s mm from left, up: 0 above level}}}}}
`, pin.JSON()))
			p, _, _ := Make(doc, solved, Options{})
			return p
		}
		first := make(0).Faces[0].Fields[0]
		end := first.Region.Bounds().Max.X
		at := (end + c.lacks - first.Chosen().Origin.X - 12*unit.Inch) % pitch // so the last tile ends that much beyond
		p := make(at)
		f := p.Faces[0].Fields[0]
		cut, last := 0, 0
		for _, q := range f.Chosen().Pieces {
			if !q.Uncut() {
				cut++
			}
			b := q.OnFace.Bounds()
			if b.Max.X != end || b.H() < 4*unit.Inch {
				continue
			}
			last++
			if q.Uncut() != c.uncut || q.Whole {
				t.Errorf("%s lacks %s mm: uncut %v, whole %v", q.Address, c.lacks.JSON(), q.Uncut(), q.Whole)
			}
			for _, s := range p.Goods[0].From {
				if c.uncut && strings.HasSuffix(s.Piece, " "+q.Address) {
					t.Errorf("%s goes in uncut and comes out of tile %d", q.Address, s.Tile)
				}
			}
		}
		l, g := f.Chosen(), p.Goods[0]
		if last < 10 || l.CutCount != cut || l.Whole != len(l.Pieces)-cut || g.Whole != l.Whole || len(g.From) != cut {
			t.Errorf("lacking %s mm: %d at the end; %d of %d pieces cut, counted %d and %d whole; bought %d whole, %d cut", c.lacks.JSON(), last, cut, len(l.Pieces), l.CutCount, l.Whole, g.Whole, len(g.From))
		}
	}
}
