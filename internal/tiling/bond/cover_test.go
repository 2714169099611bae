package bond_test

import (
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/unit"
)

// window is about four tiles wide and high, away from the origin.
var window = geom.Rect{Min: geom.Point{X: -1900 * 16000, Y: -1700*16000 + 7}, Max: geom.Point{X: 1100*16000 + 3, Y: 1500 * 16000}}

// Every bond covers the plane: tiles with their share of the joint (half a joint on each side, here a whole one at the
// right and the top) neither overlap nor leave a gap. No overlap is seen pair by pair; no gap follows from the areas:
// the shares in a cell of the lattice have exactly the cell's area.
func TestBondsCoverThePlane(t *testing.T) {
	for _, line := range bondtest.All {
		b := bondtest.Make(line)
		if b.Protos[0].Ring != nil {
			continue // hexagons: TestHexagonJoints
		}
		var area unit.Area
		for _, p := range b.Protos {
			area += (p.W + b.Joint).Times(p.H + b.Joint)
		}
		if area != b.CellArea() {
			t.Errorf("%s: tiles and joints measure %d, the cell %d", line, area, b.CellArea())
		}
		if a, c, ok := overlap(b.Cover(window, geom.Point{}), b.Joint); ok {
			t.Errorf("%s: %v and %v are nearer than the joint", line, a, c)
		}
	}
}

// overlap finds two cells nearer than the joint.
func overlap(cells []bond.Cell, joint unit.Length) (a, c bond.Cell, ok bool) {
	for i, a := range cells {
		grown := a.Rect
		grown.Max = grown.Max.Add(geom.Point{X: joint, Y: joint})
		for _, c := range cells[i+1:] {
			other := c.Rect
			other.Max = other.Max.Add(geom.Point{X: joint, Y: joint})
			if grown.Overlaps(other) {
				return a, c, true
			}
		}
	}
	return a, c, false
}

// Herringbone closes for any sizes and any joint; so do running bonds and pinwheels.
func TestBondsCloseForAnySizes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := unit.Length(rapid.Int64Range(40*16000, 700*16000).Draw(t, "length"))
		w := unit.Length(rapid.Int64Range(40*16000, int64(l)).Draw(t, "width"))
		goods := bond.Goods{Sizes: []bond.Size{{Length: l, Width: w}}, Joint: unit.Length(rapid.Int64Range(0, 160000).Draw(t, "joint"))}
		spec := bond.Spec{Kind: rapid.SampledFrom([]bond.Kind{bond.Herringbone, bond.DoubleHerringbone, bond.Running, bond.Pinwheel}).Draw(t, "kind")}
		spec.Num, spec.Den = rapid.IntRange(-3, 9).Draw(t, "num"), rapid.IntRange(1, 9).Draw(t, "den")
		if spec.Kind == bond.Pinwheel {
			goods.Sizes = []bond.Size{{Length: l, Width: l}, {Length: w, Width: w}}
		}
		b, found := bond.Make(spec, goods)
		if len(found) > 0 {
			t.Fatalf("%v", found)
		}
		small := geom.Rect{Max: geom.Point{X: 3 * l, Y: 3 * l}}
		if a, c, ok := overlap(b.Cover(small, geom.Point{X: w}), b.Joint); ok {
			t.Fatalf("%v and %v are nearer than the joint", a, c)
		}
		var area unit.Area
		for _, p := range b.Protos {
			area += (p.W + b.Joint).Times(p.H + b.Joint)
		}
		if area != b.CellArea() {
			t.Fatalf("tiles and joints measure %d, the cell %d", area, b.CellArea())
		}
	})
}

// Cover against the slow obvious way: every lattice step in a square far larger than needed.
func TestCoverIsComplete(t *testing.T) {
	for _, line := range bondtest.All {
		b := bondtest.Make(line)
		origin := geom.Point{X: 12345, Y: -54321}
		want := map[bond.Cell]bool{}
		for i := -90; i <= 90; i++ {
			for j := -90; j <= 90; j++ {
				for k := range b.Protos {
					if c := place(b, k, i, j, origin); c.Rect.Overlaps(window) {
						want[c] = true
					}
				}
			}
		}
		got := b.Cover(window, origin)
		for _, c := range got {
			if !want[c] {
				t.Errorf("%s: %v is no cell of the window", line, c)
			}
		}
		if len(got) != len(want) {
			t.Errorf("%s: %d cells, want %d", line, len(got), len(want))
		}
	}
}

// Tiles that only touch the window are not in it.
func TestCoverLeavesOutWhatTouches(t *testing.T) {
	mm := func(v int64) unit.Length { return unit.Length(v) * unit.Millimetre }
	for _, c := range []struct {
		line string
		w, h unit.Length
		want int
	}{
		{"stack, 300x200, 0", mm(600), mm(400), 4},
		{"stack, 300x200, 0", mm(600) + 1, mm(400), 6},
		{"stack, 300x200, 2", mm(602), mm(404), 4},
		{"stack, 300x200, 2", mm(604), mm(404) + 1, 6},
	} {
		got := bondtest.Make(c.line).Cover(geom.Rect{Max: geom.Point{X: c.w, Y: c.h}}, geom.Point{})
		if len(got) != c.want {
			t.Errorf("%s over %v x %v: %d cells, want %d", c.line, c.w.MM(), c.h.MM(), len(got), c.want)
		}
	}
}

func place(b bond.Bond, k, i, j int, origin geom.Point) bond.Cell {
	p := b.Protos[k]
	at := origin.Add(p.At)
	at.X += b.U.X*unit.Length(i) + b.V.X*unit.Length(j)
	at.Y += b.U.Y*unit.Length(i) + b.V.Y*unit.Length(j)
	return bond.Cell{Course: p.Course + i*b.CourseBy[0] + j*b.CourseBy[1], Column: p.Column + i*b.ColumnBy[0] + j*b.ColumnBy[1],
		Proto: k, Rect: geom.Rect{Min: at, Max: geom.Point{X: at.X + p.W, Y: at.Y + p.H}}}
}

// Addresses name one cell each, rise along the cover, and stay when the origin moves a little or the window grows.
func TestAddressesAreUniqueAndStay(t *testing.T) {
	type address struct{ course, column int }
	for _, line := range bondtest.All {
		b := bondtest.Make(line)
		at := map[address]geom.Point{}
		last := address{-1 << 60, 0}
		for _, c := range b.Cover(window, geom.Point{}) {
			a := address{c.Course, c.Column}
			if _, twice := at[a]; twice {
				t.Errorf("%s: address %v twice", line, a)
			}
			if a.course < last.course || a.course == last.course && a.column <= last.column {
				t.Errorf("%s: %v after %v", line, a, last)
			}
			at[a], last = c.Rect.Min, a
		}
		wider := window
		wider.Max.X += 999_999
		step := geom.Point{X: 77, Y: -31}
		for _, c := range b.Cover(wider, step) {
			if p, ok := at[address{c.Course, c.Column}]; ok && p.Add(step) != c.Rect.Min {
				t.Errorf("%s: %v moved from %v to %v", line, c, p, c.Rect.Min)
			}
		}
	}
}

func BenchmarkCover(b *testing.B) {
	floor := geom.Rect{Max: geom.Point{X: 10_000 * 16000, Y: 6_000 * 16000}}
	for _, line := range []string{"running 1/3, 600x300, 3", "herringbone 45, 400x60, 2"} {
		bond := bondtest.Make(line)
		b.Run(line, func(b *testing.B) {
			for range b.N {
				bond.Cover(floor, geom.Point{})
			}
		})
	}
}
