package plan_test

import (
	"context"
	"testing"

	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// vanityRoom has a vanity with one drawer over the trap of its basin, and a WC before whose bowl the drawer comes out. Studs 60 x 96 in, board 1/2 all round.
const vanityRoom = `dryfit: 1
name: A drawer under a basin
units: in
survey:
  corners: A B C D
  tape to: board
  tape: {A-B: 60, B-C: 45, C-D: 60, D-A: 45, A-C: 75, B-D: 75}
  level line: {down: {A: 40, B: 40, C: 40, D: 40}, up: {A: 55, B: 55, C: 55, D: 55}}
walls:
  back: {along: A-B, build-up: [board 1/2]}
  right: {along: B-C, build-up: [board 1/2]}
  front: {along: C-D, build-up: [board 1/2]}
  left: {along: D-A, build-up: [board 1/2]}
floor: {build-up: [board 1/4]}
stub-outs:
  drain: {in: back, across: center 18 from A, up: 20 above floor, diameter: 1-1/2}
in the wall:
  feed: {in: back, kind: cable, across: 4-1/2 to 5 from A}
  stud: {in: back, kind: stud, across: 2 to 3-1/2 from A}
stock:
  birch: {kind: sheet, size: 96 x 48 x 3/4}
  thin: {kind: sheet, size: 96 x 48 x 1/4}
cabinets:
  vanity:
    in: back
    across: 6 to 30 from A
    stands: wall
    bottom: 10
    height: 32
    depth: 20
    stock: {panels: birch, back: thin, fronts: birch, drawers: birch, drawer bottoms: thin}
    fronts: {drawer: {kind: drawer, height: 12}, lower: {kind: open}}
    slides: {side: 1/2, length: 18}
tops:
  slab: {on: vanity, made of: stone, thickness: 1, depth: 21}
basins:
  bowl: {kind: vessel, on: slab, across: center 18 from A, off: 11, outline: round 15, height: 5, depth: 4, bottom: 1/2, rim: 3/8}
wastes:
  pipe: {from: bowl, to: drain, tailpiece: 11, trap: {size: 1-1/4, drop: 1 to 4, weir: 3, reach: 5 to 14, below: 3-1/2, width: 3}}
fittings:
  bar: {kind: grab bar, in: back, across: center 3 from A, up: center 50 above floor, into: 2}
`

func TestClash(t *testing.T) {
	p, err := plan.Make(context.Background(), "room", []byte(vanityRoom), plan.Options{UpTo: plan.UpToClash})
	if err != nil {
		t.Fatal(err)
	}
	if len(p.Clash.CutOuts) != 1 {
		t.Fatalf("%d cut-outs", len(p.Clash.CutOuts))
	}
	// The drawer's box: 24 wide less two sides of 3/4 and two of 1/2 is 21-1/2, from 7-1/4 on. The trap is 3 wide about 18: from 16-1/2; half an inch is kept: 16 to 20 is 8-3/4 to 12-3/4.
	in := func(n, d int64) unit.Length { return unit.Inch.MulDiv(n, d) }
	c := p.Clash.CutOuts[0]
	if c.From != in(35, 4) || c.To != in(51, 4) {
		t.Errorf("cut from %s to %s, want 8-3/4 to 12-3/4", p.Style.Format(c.From), p.Style.Format(c.To))
	}
	// The trap reaches below the box, so the box becomes a U: its back, 20 long between sides of 3/4, is left to 8-3/4 and from 12-3/4 of 21-1/2.
	parts := map[string]unit.Length{}
	for _, q := range p.Wood.Parts() {
		parts[q.Name] = q.Size.Length
	}
	if parts["drawer box back, left"] != in(8, 1) || parts["drawer box back, right"] != in(8, 1) || parts["drawer cut-out strip, front"] != in(11, 2) || !p.Wood.Cabinets[0].Drawers[0].Cut {
		t.Errorf("the drawer's parts: %v", parts)
	}
	// The bar's screw at 3 is 3/8 in from the edge of nothing: in the stud, 1/2 from its right edge; the cable at 4-1/2 is 1-1/2 off: that stops.
	stops := false
	for _, m := range p.Clash.Meetings {
		stops = stops || m.Other == "feed" && m.Misses && m.Apart == 3*unit.Inch/2
	}
	if !stops {
		t.Error("a cable 1-1/2 in from a screw does not stop")
	}
}
