package takeoff

import (
	"math"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/lining"
	"dryfit/internal/rule"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// A cartridge of 10.1 fl oz (29.5735 mL each: 16 CFR 500.19) fills a 1/4 x 1/4 in bead of 24.3 ft. 300 mL fill 8.33 m of 6 x 6 mm,
// 12.0 m of 5 x 5 mm, and 16.67 m of a triangular fillet of 6 mm.
func TestCartridges(t *testing.T) {
	for _, c := range []struct {
		what      string
		cartridge unit.Volume
		metre     unit.Volume // what one metre takes
		want      float64     // metres
		within    float64
	}{
		{"1/4 in bead", 298_693, Bead(unit.Metre, unit.Inch/4, unit.Inch/4), 24.3 * 0.3048, 0.05 * 0.3048},
		{"6 mm bead", 300_000, Bead(unit.Metre, 6*mm, 6*mm), 8.33, 0.005},
		{"5 mm bead", 300_000, Bead(unit.Metre, 5*mm, 5*mm), 12, 0.005},
		{"6 mm fillet", 300_000, Fillet(unit.Metre, 6*mm), 16.67, 0.005},
	} {
		if got := float64(c.cartridge) / float64(c.metre); math.Abs(got-c.want) > c.within {
			t.Errorf("%s: %.3f m, want %.2f", c.what, got, c.want)
		}
	}
}

// Equal up to 1/2 in, at least 1/4 and at most 1/2 in deep (ASTM C1193, from memory), never deeper than the joint.
func TestBeadDepth(t *testing.T) {
	for _, c := range [][3]unit.Length{{in / 8, in, in / 4}, {3 * in / 8, in, 3 * in / 8}, {in, 2 * in, in / 2}, {in / 8, 3 * in / 16, 3 * in / 16}} {
		if got := rule.BeadDepth(c[0], c[1]); got != c[2] {
			t.Errorf("%d wide, %d deep: %d, want %d", c[0], c[1], got, c[2])
		}
	}
}

// Plaster carries 20 kg/m², of which 70 % are 14: porcelain of 18 kg/m² is bedded solid (trade press of 23 July 2018 quoting BS 5385-1:2018).
func TestSolidBed(t *testing.T) {
	plaster := unit.Mass(rule.PlasterCarries.Number) * unit.Kilogram
	for kg, want := range map[unit.Mass]bool{13: false, 14: false, 15: true, 18: true} {
		if NeedsSolidBed(kg*unit.Kilogram, plaster) != want {
			t.Errorf("%d kg/m²", kg)
		}
	}
}

// A wall 96 x 90 in with sheets of 3 x 5 ft: 3 rows, 2 across; seams 2 x 96 + 1 x 90 in. Studs every 16 in: 7; screws every 8 in on 36, 36 and 18 in: 6, 6 and 4 on each.
func TestSheets(t *testing.T) {
	r := sheets(96*in, 90*in, [2]unit.Length{3 * unit.Foot, 5 * unit.Foot})
	if r.count != 3 || r.across != 2 || r.seams != 282*in || r.screws(16*in, 8*in) != 7*16 {
		t.Errorf("%+v, %d screws", r, r.screws(16*in, 8*in))
	}
}

// Two sheets of 60 x 36 side by side and one of 120 x 24 over them cover 120 x 60: seams 36 and 120. Studs every 16, screws every 8: on a sheet of 60 x 36 five
// rows of 6, on the long one nine of 4.
func TestLaidSheets(t *testing.T) {
	rect := func(x, y, w, h unit.Length) geom.Rect {
		return geom.Rect{Min: geom.Point{X: x * in, Y: y * in}, Max: geom.Point{X: (x + w) * in, Y: (y + h) * in}}
	}
	region := func(r geom.Rect) geom.Region { return geom.Region{geom.RectRing(r, 0, 0, 0, 0)} }
	var laid []lining.Sheet
	for _, r := range []geom.Rect{rect(0, 0, 60, 36), rect(60, 0, 60, 36), rect(0, 36, 120, 24)} {
		laid = append(laid, lining.Sheet{Rect: r, Region: region(r)})
	}
	if got := joints(site.Face{Board: region(rect(0, 0, 120, 60))}, laid); got != 156*in {
		t.Errorf("seams of %v in", got/in)
	}
	if got := screwsOf(laid, 16*in, 8*in); got != 2*5*6+9*4 {
		t.Errorf("%d screws", got)
	}
}

func TestMeanProfile(t *testing.T) {
	// 0 at the ends, 4 mm in the middle: mean 2 mm.
	if got := meanProfile(stations(1000, 4), 2000*mm); got != 2*mm {
		t.Error(got)
	}
	if meanProfile(nil, 2000*mm) != 0 || meanProfile(nil, 0) != 0 {
		t.Error("no profile has a mean")
	}
}

func stations(x, y unit.Length) []document.Station {
	return []document.Station{{X: x * mm, Value: y * mm}}
}
