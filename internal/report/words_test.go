package report

import (
	"testing"

	"dryfit/internal/tiling"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

const in, mm = unit.Inch, unit.Millimetre

var (
	inches = unit.DefaultStyle(unit.Inches)
	metric = unit.DefaultStyle(unit.Millimetres)
)

func TestStepWords(t *testing.T) {
	for _, c := range []struct {
		step  piece.Step
		style unit.Style
		want  string
		exact string
	}{
		{piece.Step{Keep: "left", From: 177 * in / 32, To: 177 * in / 32, SawFrom: 11 * in / 2, SawTo: 11 * in / 2}, inches, "keep 5-1/2 from left", "5-17/32"},
		{piece.Step{Keep: "bottom", From: 12 * in, To: 47 * in / 4, SawFrom: 12 * in, SawTo: 47 * in / 4}, inches, "keep 12 to 11-3/4 from bottom", "12 to 11-3/4"},
		{piece.Step{Keep: "bottom and left", From: 30 * mm, To: 40 * mm, SawFrom: 30 * mm, SawTo: 40 * mm}, metric, "across the corner: keep 30 along bottom, 40 along left", "30 to 40"},
		{piece.Step{Keep: "cut: corner A", From: 100*mm + mm/2, To: 100*mm + mm/2, SawFrom: 100 * mm, SawTo: 100 * mm, Along: [2]unit.Length{0, 55 * mm}}, metric,
			"keep 100 from the cut at corner A, over 0 to 55 along it", "100.5"},
		{piece.Step{Keep: "right", From: 75 * mm, To: 75 * mm, SawFrom: 73 * mm, SawTo: 73 * mm, Chips: 3}, metric, "keep 73 from right (3 chips)", "75"},
	} {
		if got := StepWords(c.style, c.step); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
		if got := ExactStep(c.style, c.step); got != c.exact {
			t.Errorf("exactly %q, want %q", got, c.exact)
		}
	}
}

func TestHoleWords(t *testing.T) {
	for _, c := range []struct {
		hole piece.PieceHole
		want string
	}{
		{piece.PieceHole{Name: "hot stop", Drill: 7 * in / 8, Bit: in, FromX: 8 * in, EdgeX: "left", FromY: 21 * in / 2, EdgeY: "bottom"},
			"hot stop Ø7/8: center 8 from left, 10-1/2 from bottom; bit 1"},
		{piece.PieceHole{Name: "waste", Drill: 2 * in, FromX: 3 * in, EdgeX: "right", FromY: in, EdgeY: "top", CutX: 4 * in, CutEdgeX: "cut: corner B"},
			"waste Ø2: center 3 from right, 1 from top; 4 from the cut at corner B; no bit of yours is wide enough"},
		{piece.PieceHole{Name: "pipe", Drill: in, Bit: in, Bite: true, FromX: 0, EdgeX: "left", FromY: in, EdgeY: "top"},
			"pipe Ø1: center 0 from left, 1 from top; crosses the edge, cut as a notch"},
		{piece.PieceHole{Name: "pipe", Drill: in, Bite: true, FromX: -in / 8, EdgeX: "left", FromY: -in / 128, EdgeY: "top", CutY: -3 * in / 16, CutEdgeY: "cut: floor"},
			"pipe Ø1: center 1/8 beyond left, 0 from top; 3/16 beyond the cut at floor; crosses the edge, cut as a notch"},
	} {
		if got := HoleWords(inches, c.hole); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}

func TestFromLevel(t *testing.T) {
	for y, want := range map[unit.Length]string{
		0: "at the level line", in / 64: "at the level line", -28 * in: "28 in below the level line", 3 * in / 2: "1-1/2 in above the level line",
	} {
		if got := FromLevel(inches, y); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

func TestBound(t *testing.T) {
	for want, g := range map[string]tiling.Good{
		"nothing is cut from it":               {},
		"1 tile is cut up; no way needs fewer": {CutFrom: 1, Least: 1},
		"9 tiles are cut up; no way needs fewer than 8, so at most 1 could be saved": {CutFrom: 9, Least: 8},
	} {
		if got := Bound(g); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

func TestListAndCount(t *testing.T) {
	for want, words := range map[string][]string{"": nil, "a": {"a"}, "a and b": {"a", "b"}, "a, b and c": {"a", "b", "c"}} {
		if got := list(words); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if Count(1, "tile", "tiles") != "1 tile" || Count(0, "tile", "tiles") != "0 tiles" {
		t.Error("tiles are not counted as a person counts them")
	}
}
