package search

import (
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// get finds a measure of a candidate.
func get(t *testing.T, c Candidate, n judge.Name) judge.Measure {
	t.Helper()
	for _, m := range c.Measures {
		if m.Name == n {
			return m
		}
	}
	t.Fatalf("no measure %q", n)
	return judge.Measure{}
}

// A wall of 1000 with tiles of 300: starting at 0 or at 100 leaves 100 on one side; at 200 it leaves 200 on both. No
// piece appears or vanishes at 200: it is where the two cuts are equal.
func TestEqualCutsBeatBreakpoints(t *testing.T) {
	in := read(t, "room 1000 300 | tile 300 300 0 | mark 1")
	for _, row := range []struct{ offset, narrowest unit.Length }{{0, 100}, {100, 100}, {200, 200}} {
		c := Judge(in, geom.Point{X: row.offset * unit.Millimetre})
		if got := get(t, c, judge.NarrowestCut).Length; got != row.narrowest*unit.Millimetre {
			t.Errorf("offset %d: narrowest %s, want %d", row.offset, got.JSON(), row.narrowest)
		}
	}
	in.Order = []judge.Name{judge.NarrowestCut}
	best := Best(in).Finalists[0]
	if got := get(t, best, judge.NarrowestCut).Length; got != 200*unit.Millimetre {
		t.Errorf("best narrowest cut is %s, want 200", got.JSON())
	}
}

// The rule of the row (NAVEDTRA 14044 p. 7: fractional tiles at both ends of a row, of equal width): ten tiles of 300
// and a remainder of 70. Starting whole at one end leaves a cut of 70 - 3 at the other. A joint on the center line
// leaves (3100-3)/2 = 1548.5 each side, which is five tiles and joints and 33.5; a tile on it leaves (3100-300)/2 = 1400,
// which is a joint, four tiles with theirs, and 185.
func TestRowOffersTheBalancedAnswer(t *testing.T) {
	in := read(t, "room 3100 300 | tile 300 300 3 | mark 0.5")
	for _, preset := range judge.Presets() {
		in.Order = preset.Order
		balanced := false
		for _, c := range Best(in).Finalists {
			left := (c.Origin.X - 3*unit.Millimetre) % (303 * unit.Millimetre)
			balanced = balanced || left == 185*unit.Millimetre && get(t, c, judge.NarrowestCut).Length == left
		}
		if !balanced {
			t.Errorf("%s: no layout with a cut of 185 at both ends is offered", preset.Name)
		}
		if preset.Name == "even cuts" {
			first := Best(in).Finalists[0]
			if got := get(t, first, judge.NarrowestCut).Length; got != 185*unit.Millimetre || get(t, first, judge.Balance).Cost != 0 {
				t.Errorf("even cuts: the first has a cut of %s", got.JSON())
			}
		}
	}
}

// What is covered by the next wall's tile does not count: with 100 hidden at the left a cut of 250 shows 150, and so
// does a cut of 150 at the right. 1000 = 250 + two tiles + 150.
func TestBalanceIsOfWhatIsSeen(t *testing.T) {
	in := read(t, "room 1000 300 | tile 300 300 0 | mark 1 | hidden left 100")
	first := Best(in).Finalists[0]
	if first.Origin.X != 250*unit.Millimetre {
		t.Errorf("starts at %s, want 250", first.Origin.X.JSON())
	}
	if got := get(t, first, judge.NarrowestCut).Length; got != 150*unit.Millimetre {
		t.Errorf("shows %s, want 150", got.JSON())
	}
}

// Measures of one layout, worked out beside each row. A leaning edge is measured at the ends of a tile's core, so that
// its width is right to less than the mark.
func TestMeasuresByHand(t *testing.T) {
	for _, row := range []struct {
		line string
		x, y unit.Length
		name judge.Name
		want int64 // micrometres, or a count
		at   string
	}{
		// 1000 = 3 x 300 + 100
		{"room 1000 600 | tile 300 300 0", 0, 0, judge.NarrowestCut, 100_000, "right"},
		// the wall leans out: 100 at the floor
		{"room 1000 600 | taper 20 | tile 300 300 0", 0, 0, judge.NarrowestCut, 100_000, "right"},
		// leaning in: 1000 - 60 at the top of the second course
		{"room 1000 600 | taper -60 | tile 300 300 0", 0, 0, judge.NarrowestCut, 40_000, "right"},
		// it runs over a joint: something runs out to nothing
		{"room 900 600 | taper 20 | tile 300 300 0", 0, 0, judge.NarrowestCut, 0, "right"},
		// a running bond starts its second course half a tile on: 1000 - 150 = 2 x 300 + 250, and 150 at the left
		{"room 1000 600 | tile 300 300 0 | running 1/2", 0, 0, judge.NarrowestCut, 100_000, "right"},
		{"room 1000 600 | tile 300 300 0 | running 1/2", 50_000, 0, judge.NarrowestCut, 50_000, "left"},
		// a wall narrower than a tile: what is left is the wall
		{"room 200 600 | tile 300 300 0", -50_000, 0, judge.NarrowestCut, 200_000, "left"},
		// a pier between an opening and the corner: 20 to the joint at 900 and 100 after it; 120 within one tile
		{"room 1000 600 | open w 500 0 880 600 | tile 300 300 0", 0, 0, judge.NarrowestCut, 20_000, "w, right"},
		{"room 1030 600 | open w 500 0 910 600 | tile 300 300 0", 0, 0, judge.NarrowestCut, 120_000, "w, right"},
		// four rows of four tiles; the last row and column are cut: 3 + 3 + 1
		{"room 1000 1000 | tile 300 300 0", 0, 0, judge.CutCount, 7, ""},
		// a hole of 300 in the middle of whole tiles takes one away and cuts none
		{"room 900 900 | open w 300 300 600 600 | tile 300 300 0", 0, 0, judge.CutCount, 0, ""},
		{"room 900 900 | open w 310 300 600 600 | tile 300 300 0", 0, 0, judge.CutCount, 1, ""},
		// edges at 310 (leg 10), 600 (joint), 300 (joint), 560 (leg 40 left of 300 above)
		{"room 900 900 | open w 310 300 600 560 | tile 300 300 0", 0, 0, judge.OpeningJoints, 290_000 + 260_000, "w, left"},
		// center 450 of three tiles is a tile center; 500 is 50 off it and 100 off a joint
		{"room 900 300 | tile 300 300 0", 0, 0, judge.Balance, 0, ""},
		{"room 900 300 | tile 300 300 0 | center 500", 0, 0, judge.Balance, 50_000, ""},
		// running 1/2: 525 is the middle of a quarter point, about which each course mirrors the next
		{"room 900 600 | tile 300 300 0 | running 1/2 | center 525", 0, 0, judge.Balance, 0, ""},
		// joints at 300-303 and 603-606: 450 is 147 below the second and 147 above the first; 301 is in a joint
		{"room 900 900 | tile 300 300 3 | sight 450", 0, 0, judge.SightLines, 147_000, "sight 450"},
		{"room 900 900 | tile 300 300 3 | sight 301", 0, 0, judge.SightLines, 0, ""},
		{"room 900 900 | tile 300 300 3 | sight 310 | sight 620", 0, 0, judge.SightLines, 7_000 + 14_000, "sight 620"},
		// rim: 100 - 20 from the joint at 0; on a joint: less its radius
		{"room 900 900 | tile 300 300 3 | hole 100 150 40", 0, 0, judge.HolesClear, 80_000, "hole 1"},
		{"room 900 900 | tile 300 300 3 | hole 301 150 40", 0, 0, judge.HolesClear, -20_000, "hole 1"},
		// the second course is 151.5 on: tiles from 151.5 to 451.5, joints at 148.5 and 451.5 on; up, 303 to 603: 97 less 20
		{"room 900 900 | tile 300 300 3 | running 1/2 | hole 303 400 40", 0, 0, judge.HolesClear, 77_000, "hole 1"},
		// 60 of 300 shows at the right: a sliver under 75, in both courses, weight 3
		{"room 960 600 | tile 300 300 0 | weight right 3", 0, 0, judge.SliverPlaces, 6, "right"},
		// the same at the ceiling: as many tiles as fit along 960, begun ones counted
		{"room 900 660 | tile 300 300 0", 0, 0, judge.SliverPlaces, 3, "ceiling"},
		{"room 960 600 | tile 300 300 0 | weight right 0", 0, 0, judge.SliverPlaces, 0, ""},
	} {
		in := read(t, row.line+" | mark 0.5")
		m := get(t, Judge(in, geom.Point{X: row.x * unit.Micrometre, Y: row.y * unit.Micrometre}), row.name)
		got := int64(m.Length / unit.Micrometre)
		if m.IsCount {
			got = int64(m.Count)
		}
		if off := got - row.want; off < 0 || off > 100 || m.IsCount && off > 0 || row.at != "" && m.Where != row.at {
			t.Errorf("%s: %s is %d (%s), want %d (%s)", row.line, row.name, got, m.Where, row.want, row.at)
		}
	}
}
