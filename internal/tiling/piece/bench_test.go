package piece_test

import (
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/lay/laytest"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// What a drag of the offset costs on one face: laying and describing a wall out of square with four openings and six
// stub-outs, and a herringbone floor at 45 degrees.
func BenchmarkLayAndDescribe(b *testing.B) {
	const wall = "0,0 4790,3 4783,2436 6,2440 / 600,300 1200,300 1200,1100 600,1100 / 1800,1200 2500,1200 2500,2000 1800,2000 / " +
		"3100,0.5 3900,1 3900,2000 3100,2000 / 4200,900 4500,900 4500,1400 4200,1400"
	for _, c := range []struct{ name, face, bond string }{
		{"wall", wall, "running 1/3, 298x118, 2"},
		{"floor", "0,0 9000,0 9020,5000 6000,5010 6000,7000 0,7020", "herringbone 45, 298x73, 2"},
	} {
		b.Run(c.name, func(b *testing.B) {
			bond := bondtest.Make(c.bond)
			frame := geom.Frame{Angle: bond.Angle}
			region := laytest.Face(c.face).In(frame)
			field, hits := lay.On(region), stubs()
			f := piece.Field{Bond: bond, Frame: frame, Tools: piece.Tools{Mark: unit.Millimetre}}
			n := 0
			for b.Loop() {
				f.Numbers = piece.Number(bond, region.Bounds(), geom.Point{})
				laid, _ := field.Lay(bond, geom.Point{}, hits)
				for _, p := range laid {
					piece.Describe(piece.Input{Laid: p, Field: f})
				}
				n = len(laid)
			}
			b.ReportMetric(float64(n), "pieces")
		})
	}
}

func stubs() []lay.Hit {
	var out []lay.Hit
	for i, p := range []string{"300,500", "452,520", "1500,180", "1650,181", "2700,1100", "2850,1333"} {
		out = append(out, lay.Hit{Index: i, Center: laytest.Point(p), Drill: 35 * unit.Millimetre})
	}
	return out
}
