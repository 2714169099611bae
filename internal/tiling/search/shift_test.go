package search

import (
	"fmt"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// input -> moves, worked out by hand: joints of a stack of 300 with joints of 4 are at 300-304, 604-608, 908-912 …
func TestShiftByHand(t *testing.T) {
	for _, row := range []struct{ line, want string }{
		// 604 across is two tiles and a joint: 6 to the left to 304 and 908. 608 up: 10 up to 300 and 908, both in joints
		{"room 1500 1500 | open niche 310 290 914 898 moves 20 | tile 300 300 4", "niche -6 10"},
		// 2 to the left the right side is at 912, where a tile begins
		{"room 1500 1500 | open niche 310 290 914 894 moves 5 | tile 300 300 4", "niche -2 0"},
		// it may not move so far
		{"room 1500 1500 | open niche 310 290 914 894 moves 1 | tile 300 300 4", ""},
		// it stays
		{"room 1500 1500 | open niche 310 290 914 894 | tile 300 300 4", ""},
		// a door that reaches the floor moves sideways only
		{"room 1500 1500 | open door 310 0 914 1200 moves 20 | tile 300 300 4", "door -6 0"},
		// it sits on joints already
		{"room 1500 1500 | open niche 304 304 908 908 moves 20 | tile 300 300 4", ""},
	} {
		in := read(t, row.line+" | mark 1")
		got := ""
		for _, m := range Shift(in, geom.Point{}) {
			got += fmt.Sprintf("%s %s %s", m.Opening, m.Across.JSON(), m.Up.JSON())
		}
		if got != row.want {
			t.Errorf("%s: got %q, want %q", row.line, got, row.want)
		}
	}
}

// Moving the opening and judging the layout anew shows what was promised, and no other markable move shows less.
func TestShiftAgainstMovingTheOpening(t *testing.T) {
	for _, bond := range []string{"stack", "running 1/2", "vertical running 1/2"} {
		line := func(dx, dy unit.Length) string {
			return fmt.Sprintf("room 1500 1400 | open niche %d %d %d %d moves 30 | tile 290 140 3 | %s | mark 5", 300+dx, 290+dy, 880+dx, 705+dy, bond)
		}
		off := func(dx, dy unit.Length) unit.Length {
			return get(t, Judge(read(t, line(dx, dy)), geom.Point{}), judge.OpeningJoints).Length
		}
		moves := Shift(read(t, line(0, 0)), geom.Point{})
		if len(moves) != 1 {
			t.Fatalf("%s: moves %v", bond, moves)
		}
		m := moves[0]
		got := off(m.Across/unit.Millimetre, m.Up/unit.Millimetre)
		for dx := unit.Length(-30); dx <= 30; dx += 5 {
			for dy := unit.Length(-30); dy <= 30; dy += 5 {
				if least := off(dx, dy); least < got {
					t.Errorf("%s: moving %d %d leaves %s cut off, the move found %s", bond, dx, dy, least.JSON(), got.JSON())
				}
			}
		}
	}
}

// A move is told by what it changes: joints, what is cut off, or both, and never by a tie.
func TestShiftWords(t *testing.T) {
	mm := unit.DefaultStyle(unit.Millimetres)
	at := func(joints, off int) fit { return fit{unit.Length(off) * unit.Millimetre, joints} }
	for want, c := range map[string][2]fit{
		"1 of its sides falls on a joint instead of none":                                                                   {at(0, 354), at(1, 354)},
		"2 of its sides fall on joints instead of 1":                                                                        {at(1, 354), at(2, 353)},
		"a total of 120 mm is cut off the tiles beside it instead of 354 mm":                                                {at(2, 354), at(2, 120)},
		"4 of its sides fall on joints instead of none; a total of 0 mm is cut off the tiles beside it instead of 354 mm":   {at(0, 354), at(4, 0)},
		"none of its sides falls on a joint instead of 1; a total of 20 mm is cut off the tiles beside it instead of 40 mm": {at(1, 40), at(0, 20)},
	} {
		if got := shiftWords(c[0], c[1], 2*unit.Millimetre).Say(mm); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
