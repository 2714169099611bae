package document

import (
	"testing"

	"dryfit/internal/unit"
)

// PS 20, dry dressed sizes in inches, as a trade table prints them.
func TestDressed(t *testing.T) {
	for nominal, want := range map[string][2]string{
		"1x2": {"3/4", "1-1/2"}, "1x12": {"3/4", "11-1/4"}, "2x3": {"1-1/2", "2-1/2"}, "2x4": {"1-1/2", "3-1/2"}, "2x6": {"1-1/2", "5-1/2"},
		"2x8": {"1-1/2", "7-1/4"}, "2x10": {"1-1/2", "9-1/4"}, "2x12": {"1-1/2", "11-1/4"}, "3x10": {"2-1/2", "9-1/4"}, "4x14": {"3-1/2", "13-1/4"}, "2x16": {"1-1/2", "15-1/4"},
	} {
		thick, wide, ok := dressed(nominal)
		s := unit.DefaultStyle(unit.Inches)
		if !ok || s.Bare(thick) != want[0] || s.Bare(wide) != want[1] {
			t.Errorf("%s: %s x %s, want %s x %s", nominal, s.Bare(thick), s.Bare(wide), want[0], want[1])
		}
	}
	for _, bad := range []string{"", "2", "x", "2x7", "2x", "axb", "9x10", "6x10"} {
		if _, _, ok := dressed(bad); ok {
			t.Errorf("%q was taken", bad)
		}
	}
}
