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
