package bond_test

import (
	"math"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/unit"
)

// What a bond says of its goods. Basketweave closes when the length is two widths and a joint: 597 = 2·297 + 3, and
// 600 = 2·300 + 0 only without a joint, which is none; at 3 mm it lacks 603 - 600. Modular sets: (length + joint)/modules is one number.
func TestWhatBondsSay(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{"basketweave, 597x297, 3", ""},
		{"basketweave, 600x300, 3", "bond-does-not-close: basketweave does not close with these sizes at a joint of 3 mm: they miss by 3 mm: 600 mm against 2 × 300 mm + 3 mm / no joint up to 12.7 mm makes these sizes close: choose another bond or tile made for it"},
		{"basketweave, 604x300, 3", "bond-does-not-close: basketweave does not close with these sizes at a joint of 3 mm: they miss by 1 mm: 604 mm against 2 × 300 mm + 3 mm / a joint of 4 mm would make it close"},
		{"basketweave, 300x98, 3", ""}, // three in a block: 300 = 3·98 + 2·3
		{"basketweave, 300x97, 3", "bond-does-not-close: basketweave does not close with these sizes at a joint of 3 mm: they miss by 3 mm: 300 mm against 3 × 97 mm + 2 × 3 mm / a joint of 4.5 mm would make it close"},
		{"basketweave, 620x300, 3", "bond-does-not-close: basketweave does not close with these sizes at a joint of 3 mm: they miss by 17 mm: 620 mm against 2 × 300 mm + 3 mm / no joint up to 12.7 mm makes these sizes close: choose another bond or tile made for it"}, // 20 mm is no joint
		{"basketweave, 597.2x297, 3", "bond-eased: basketweave closes with some joints 3.1 mm instead of 3 mm / "},
		{"modular 3, 397x397 397x197 197x197, 3", ""},
		{"modular 3, 400x400 400x200 200x200, 3", "bond-does-not-close: modular 3 does not close with these sizes at a joint of 3 mm: they miss by 3 mm: 400 mm against 2 × 200 mm + 3 mm / no joint up to 12.7 mm makes these sizes close: choose another bond or tile made for it"},
		{"modular 3, 397x397 397x197 197x197, 5", "bond-does-not-close: modular 3 does not close with these sizes at a joint of 5 mm: they miss by 2 mm: 397 mm against 2 × 197 mm + 5 mm / a joint of 3 mm would make it close"},
		{"modular 4, 597x397 397x397 397x197 197x197, 3", ""},
		{"modular 4, 600x397 397x397 397x197 197x197, 3", "bond-does-not-close: modular 4 does not close with these sizes at a joint of 3 mm: they miss by 6 mm: 2 × 600 mm against 3 × 397 mm + 3 mm / no joint up to 12.7 mm makes these sizes close: choose another bond or tile made for it"},
		{"modular 4, 397x397 397x197 197x197, 3", "bond-sizes: modular 4 is laid of 4 sizes of tile, and the tile has 3 / choose a bond for 3 sizes, or give the tile's sizes as a set"},
		{"pinwheel, 400x300 100x100, 3", "bond-needs-squares: pinwheel is laid of two squares, and a tile of this set measures 400 mm by 300 mm / choose two square sizes, or another bond"},
		{"ladder, 400x300, 3", "bond-unknown: no bond is called ladder / "},
		{"stack, 0x300, 3", "bond-size-absurd: a tile for stack needs a length and a width from 5 mm to 4000 mm, and a joint of zero or more / correct the tile's sizes or the joint"},
		{"stack, 600x4, 3", "bond-size-absurd: a tile for stack needs a length and a width from 5 mm to 4000 mm, and a joint of zero or more / correct the tile's sizes or the joint"},
		{"stack, 600x300, -3", "bond-size-absurd: a tile for stack needs a length and a width from 5 mm to 4000 mm, and a joint of zero or more / correct the tile's sizes or the joint"},
		{"running 1/-2, 600x300, 3", "bond-offset: the offset running 1/-2 is no share of a tile / write a fraction such as 1/3, or a length"},
	} {
		b, found := bond.Make(bondtest.Parse(c.line))
		if got := say(found); got != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.line, got, c.want)
		}
		if (len(b.Protos) == 0) != found.Stops() {
			t.Errorf("%s: %d protos and stop = %v", c.line, len(b.Protos), found.Stops())
		}
	}
}

func say(found diag.List) string {
	var out []string
	mm := unit.DefaultStyle(unit.Millimetres)
	for _, f := range found {
		out = append(out, f.Code+": "+f.Say(mm)+" / "+f.SayMend(mm))
	}
	return strings.Join(out, "; ")
}

// The joint that a finding offers does close the bond.
func TestTheOfferedJointCloses(t *testing.T) {
	for _, line := range []string{"basketweave, 604x300, 3", "basketweave, 300x97, 3", "modular 3, 397x397 397x197 197x197, 5", "modular 4, 597x397 397x397 397x197 197x197, 2"} {
		spec, goods := bondtest.Parse(line)
		_, found := bond.Make(spec, goods)
		goods.Joint = unit.Length(found[0].Values[6].Num)
		if _, found := bond.Make(spec, goods); len(found) > 0 {
			t.Errorf("%s: at %v: %v", line, goods.Joint.MM(), say(found))
		}
	}
}

func TestNames(t *testing.T) {
	for line, want := range map[string]string{
		"running 1/3, 600x300, 3": "running 1/3", "vertical running 1/2, 600x300, 3": "vertical running 1/2",
		"running 100 mm back, 600x300, 3": "running 100 mm to and fro", "diagonal stack, 300x300, 3": "diagonal",
		"diagonal running 1/2, 300x300, 3": "diagonal running 1/2", "herringbone 45, 300x100, 3": "herringbone 45",
	} {
		if got := bondtest.Make(line).Name; got != want {
			t.Errorf("%s is called %q, want %q", line, got, want)
		}
	}
}

// Shifts: exact thirds are rounded once each and do not drift; lengths step on until the cycle closes.
func TestShifts(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{"running 1/2, 597x297, 3", "0 300"},
		{"running 1/3, 597x297, 3", "0 200 400"},
		{"running 2/3, 597x297, 3", "0 400 200"},
		{"running 2/6, 597x297, 3", "0 200 400"},
		{"running 1/3 back, 597x297, 3", "0 200"},
		{"running -1/3, 597x297, 3", "0 400 200"},
		{"running 5/5, 597x297, 3", "0"},
		{"running 250 mm, 597x297, 3", "0 250 500 150 400 50 300 550 200 450 100 350"},
		{"running 250 mm back, 597x297, 3", "0 250"},
		{"running 1/3, 597x297, 3.1", "0 200.0333125 400.0666875"}, // thirds of 600.1 mm = 9,601,600 counts: 3,200,533.33 and 6,401,066.67
		{"vertical running 1/3, 597x297, 3", "0 100 200"},
		{"stack, 597x297, 3", "0"},
	} {
		var got []string
		for _, s := range bondtest.Make(c.line).Shifts {
			got = append(got, s.JSON())
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%s: %s, want %s", c.line, got, c.want)
		}
	}
}

// Regular hexagons: six neighbors at one distance, the pitch (across the flats and a joint), so that the joint is the
// same on all six sides; the cell of two has the area √3·pitch², that of two hexagons grown by half a joint.
func TestHexagonJoints(t *testing.T) {
	for _, line := range []string{"hexagon, 200, 3", "hexagon, 200, 3 upright", "hexagon, 203.3, 2.1"} {
		b := bondtest.Make(line)
		_, goods := bondtest.Parse(line)
		pitch := float64(goods.Sizes[0].Width + goods.Joint)
		cells := b.Cover(window, geom.Point{})
		middle := nearest(cells, geom.Point{})
		near := 0
		for _, c := range cells {
			d := c.Rect.Min.Sub(middle.Rect.Min)
			dist := math.Hypot(float64(d.X), float64(d.Y))
			if c != middle && dist < 1.2*pitch {
				near++
				if math.Abs(dist-pitch) > 1 {
					t.Errorf("%s: a neighbor at %v, want %v", line, dist, pitch)
				}
			}
		}
		if near != 6 {
			t.Errorf("%s: %d neighbors", line, near)
		}
		if want := math.Sqrt(3) * pitch * pitch; math.Abs(float64(b.CellArea())-want) > 4*pitch {
			t.Errorf("%s: cell %d, want %v", line, b.CellArea(), want)
		}
	}
}

func nearest(cells []bond.Cell, p geom.Point) bond.Cell {
	best := cells[0]
	for _, c := range cells {
		if geom.Dist(c.Rect.Min, p) < geom.Dist(best.Rect.Min, p) {
			best = c
		}
	}
	return best
}

// Chips: a 298 mm sheet of 48 mm chips with 2 mm joints has 6 chips (6·48 + 5·2 = 298) and joints at 49, 99 … 249.
func TestChipJoints(t *testing.T) {
	c := bond.Chips{Size: bondtest.MM("48"), Joint: bondtest.MM("2")}
	for _, x := range []struct {
		length string
		count  int
		keep   string
	}{{"298", 6, "298"}, {"297", 5, "248"}, {"248", 5, "248"}, {"50", 1, "48"}, {"48", 1, "48"}, {"47", 0, "0"}} {
		if n, l := c.Keep(bondtest.MM(x.length)); n != x.count || l != bondtest.MM(x.keep) {
			t.Errorf("%s holds %d chips, %v mm", x.length, n, l.MM())
		}
	}
	got := c.Joints(bondtest.MM("298"))
	for k, want := range []string{"49", "99", "149", "199", "249"} {
		if len(got) != 5 || got[k] != bondtest.MM(want) {
			t.Fatalf("joints %v", got)
		}
	}
}
