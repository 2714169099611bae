package tiling

import (
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// A wall 60 in wide at the board, between side walls whose tile is there already: 11/16 to 59-5/16 for tile. It is held so
// that the last column is thinner than the tile's 3/8 in. By hand: tile and joint are 12-1/8 in; a joint's middle at 10-9/16
// comes back at 10-9/16 + 4 x 12-1/8 = 59-1/16, half a joint more is 59-1/8, and 3/16 in are left.
func TestStripsThinnerThanTheirTile(t *testing.T) {
	for _, c := range []struct {
		pin  string
		said bool
	}{{"10-9/16", true}, {"6", false}} {
		doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", `
tiles:
  plain: {size: 12 x 12 x 3/8, kind: ceramic, joint: 1/8, turns: any}
lay:
  back:
    fields:
      main: {tile: plain, bond: stack, joint: 1/8, pin: {across: `+c.pin+` from A to board, up: 6 above floor}}
`)
		_, found, _ := Make(doc, solved, Options{})
		said := ""
		for _, f := range found {
			if f.Code == "cuts-too-thin" && f.Class == diag.Look {
				said = f.Say(unit.DefaultStyle(unit.Inches))
			}
		}
		if (said != "") != c.said || c.said && !strings.Contains(said, "with 3/16 in") {
			t.Errorf("pinned at %s: %q", c.pin, said)
		}
	}
}
