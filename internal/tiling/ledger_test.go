package tiling

import (
	"testing"

	"dryfit/internal/unit"
)

// The floor falls 1/4 in along the wall, the course is 12 in, the joint at the bottom 1/8 in: the ledger stands 12-1/8
// above the finished floor at its low end, and the bottom cuts run from 12 to 11-3/4. Worked by hand: 1/8 + 12; 12 - 1/4.
// The fall is read at the studs, half an inch beyond the tile at each end, so the low cut is exact only after it is
// rounded to fit.
func TestLedgerAtTheLowestPoint(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40-1/4, C: 40-1/4, D: 40", `
tiles:
  plain: {size: 12 x 12 x 3/8, kind: ceramic, joint: 1/8, turns: any}
lay:
  back:
    fields:
      main: {tile: plain, bond: stack, joint: 1/8, to: 48-1/4 above floor}
  floor:
    fields:
      main: {tile: plain, bond: stack, joint: 1/8}
`)
	p, _, _ := Make(doc, solved, Options{})
	l := p.Faces[0].Ledger
	if l == nil {
		t.Fatal("no ledger")
	}
	if l.AboveFloor != in(t, "12-1/8") || l.CutHigh != in(t, "12") || l.CutLow.Floor(unit.Sixteenth) != in(t, "11-3/4") {
		t.Errorf("ledger %v, cuts %v to %v", l.AboveFloor.In(), l.CutHigh.In(), l.CutLow.In())
	}
}

// A layout held so that a joint runs over the floor's slope leaves a first course that runs out on the way: no ledger could
// stand on it. By hand: the joint crossing is held 12-1/8 in over the floor's high end, so the course under it reaches from
// 1/16 in over that to 1/16 in under the held line; the ledger is at that top: 12-1/16 over the high end and 1/4 more over
// the low one, with cuts of 12 to 12-1/16 less the joint of 1/8 at the floor.
func TestLedgerStandsOnNoCourseThatRunsOut(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40-1/4, C: 40-1/4, D: 40", `
tiles:
  plain: {size: 12 x 12 x 3/8, kind: ceramic, joint: 1/8, turns: any}
lay:
  back:
    fields:
      main: {tile: plain, bond: stack, joint: 1/8, pin: {across: 30 from A, up: 12-1/8 above floor}}
`)
	p, _, _ := Make(doc, solved, Options{})
	l := p.Faces[0].Ledger
	if l == nil || l.AboveFloor.Round(unit.Sixteenth) != in(t, "12-5/16") || l.CutHigh != in(t, "12") || l.CutLow.Round(unit.Sixteenth) != in(t, "11-15/16") {
		t.Fatalf("%+v", l)
	}
}
