package document

import (
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

func TestStarterReads(t *testing.T) {
	for _, units := range []unit.System{unit.Inches, unit.Millimetres} {
		for corners := 3; corners <= 12; corners++ {
			room, found := Read("starter", Starter(units, corners))
			for _, f := range found {
				if f.Class == diag.Stop || f.Class == diag.Look {
					t.Errorf("%v, %d corners: %s", units, corners, line(f))
				}
			}
			if len(room.Survey.Corners) != corners || len(room.Walls) != corners || len(room.Lay) != 2 {
				t.Errorf("%v: %d corners, %d walls for %d", units, len(room.Survey.Corners), len(room.Walls), corners)
			}
			if need := 2*corners - 3; len(room.Survey.Tape) < need {
				t.Errorf("%d corners: %d readings do not fix the shape; it takes %d", corners, len(room.Survey.Tape), need)
			}
		}
	}
}
