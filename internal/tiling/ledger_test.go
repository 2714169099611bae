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
