package lay_test

import (
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/lay/laytest"
	"dryfit/internal/unit"
)

// wall is 4,790 by 2,440 mm and a little out of square, with four openings; 298 by 98 mm tile in thirds: 370 pieces.
const wall = "0,0 4790,3 4783,2436 6,2440 / 600,300 1200,300 1200,1100 600,1100 / 1800,1200 2500,1200 2500,2000 1800,2000 / " +
	"3100,0.5 3900,1 3900,2000 3100,2000 / 4200,900 4500,900 4500,1400 4200,1400"

func stubs() []lay.Hit {
	var out []lay.Hit
	for i, p := range []string{"300,500", "452,520", "1500,180", "1650,181", "2700,1100", "2850,1333"} {
		out = append(out, lay.Hit{Index: i, Center: laytest.Point(p), Drill: 35 * unit.Millimetre})
	}
	return out
}

func BenchmarkWall(b *testing.B) {
	field, bond, hits := lay.On(laytest.Face(wall)), bondtest.Make("running 1/3, 298x98, 2"), stubs()
	pieces, _ := field.Lay(bond, geom.Point{X: 123456}, hits)
	for b.Loop() {
		field.Lay(bond, geom.Point{X: 123456}, hits)
	}
	b.ReportMetric(float64(len(pieces)), "pieces")
}

// floor is 9 by 7 m, turned by 45 degrees into the pattern's frame.
func floor() geom.Region {
	room := laytest.Face("0,0 9000,0 9020,5000 6000,5010 6000,7000 0,7020 / 2000,2000 2600,2000 2600,2300 2000,2300")
	return room.In(geom.Frame{Angle: 45 * unit.Degree})
}

func BenchmarkHerringboneFloor(b *testing.B) {
	field, bond := lay.On(floor()), bondtest.Make("herringbone 45, 298x73, 2")
	pieces, _ := field.Lay(bond, geom.Point{}, nil)
	for b.Loop() {
		field.Lay(bond, geom.Point{}, nil)
	}
	b.ReportMetric(float64(len(pieces)), "pieces")
}

func BenchmarkSurveyHerringbone(b *testing.B) {
	field, bond := lay.On(floor()), bondtest.Make("herringbone 45, 298x73, 2")
	for b.Loop() {
		field.Survey(bond, geom.Point{})
	}
}
