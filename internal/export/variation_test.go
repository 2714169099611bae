package export_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/export"
)

// laidWith is a bond with a tile that it closes with. Basketweave closes where the length is two widths and a joint; herringbone where it is a
// whole number of widths with their joints.
type laidWith struct{ bond, size, joint, more string }

var bonds = []laidWith{
	{"stack", "297 x 197 x 8", "3", ""},
	{"running 1/2", "300 x 75 x 8", "2", "turns: any"},
	{"running 1/3", "597 x 297 x 9", "3", "turns: half"},
	{"running 100 mm", "400 x 250 x 9", "2.5", "turns: none"},
	{"vertical running 1/3", "300 x 100 x 8", "2", "turns: any"},
	{"vertical stack", "250 x 125 x 8", "2", ""},
	{"diagonal", "200 x 200 x 8", "3", "turns: any"},
	{"diagonal running 1/2", "300 x 150 x 8", "3", "turns: half"},
	{"herringbone", "297 x 147 x 8", "3", "turns: any"},
	{"herringbone 45", "447 x 147 x 8", "3", "turns: any"},
	{"double herringbone", "300 x 72.75 x 8", "3", "turns: any"},
	{"basketweave", "297 x 147 x 8", "3", "turns: any"},
	{"hexagon", "200 x 200 x 8", "2", "shape: hexagon"},
	{"pinwheel", "297 x 297 x 8", "3", "turns: any, set: {large: 297 x 297, small: 97 x 97}"},
	{"modular 3", "397 x 397 x 9", "3", "turns: any, set: {large: 397 x 397, tall: 397 x 197, small: 197 x 197}"},
}

// variation writes a small room by chance: out of square, with leaning walls, a window, pipes, at times a band.
func variation(seed uint64) []byte {
	c := rand.New(rand.NewPCG(seed, 20260302))
	w, d := 900+c.IntN(1500), 800+c.IntN(1500)
	ax, ay, bx, by := 0.0, 0.0, float64(w), float64(c.IntN(17)-8)
	cx, cy, dx, dy := float64(w+c.IntN(17)-8), -float64(d), float64(c.IntN(17)-8), -float64(d+c.IntN(17)-8)
	far := func(a, b, x, y float64) string { return fmt.Sprintf("%.0f mm", math.Hypot(a-x, b-y)) }
	down := 900 + c.IntN(200)
	wall, floor := bonds[c.IntN(len(bonds))], bonds[c.IntN(len(bonds))]
	left, up := 60+c.IntN(w/3), 200+c.IntN(500)
	var b strings.Builder
	fmt.Fprintf(&b, "dryfit: 1\nname: by chance\nunits: mm\nmark: %s\nsurvey:\n  corners: A B C D\n  tape: {A-B: %s, B-C: %s, C-D: %s, D-A: %s, A-C: %s, B-D: %s}\n",
		[]string{"1 mm", "0.5 mm", "1/16 in"}[c.IntN(3)], far(ax, ay, bx, by), far(bx, by, cx, cy), far(cx, cy, dx, dy), far(dx, dy, ax, ay), far(ax, ay, cx, cy), far(bx, by, dx, dy))
	fmt.Fprintf(&b, "  level line:\n    down: {A: %d, B: %d, C: %d, D: %d}\n    up: {A: 1200, B: %d, C: 1200, D: 1200}\n",
		down, down+c.IntN(9), down+c.IntN(9), down+c.IntN(9), 1190+c.IntN(20))
	fmt.Fprintf(&b, "walls:\n  back: {along: A-B, build-up: [board 12.5, bed 5, tile], out of plumb: {A: %d, B: %d}}\n", c.IntN(9)-4, c.IntN(9)-4)
	b.WriteString("  right: {along: B-C, build-up: [board 12.5, bed 5, tile]}\n  front: {along: C-D, build-up: [board 12.5]}\n  left: {along: D-A, build-up: [board 12.5]}\n")
	b.WriteString("floor: {build-up: [board 6, bed 4, tile]}\nsetting: {order: [floor, back, right]}\n")
	fmt.Fprintf(&b, "openings:\n  window: {in: back, kind: window, across: %d to %d from A, up: %d to %d above floor, depth: 60}\n", left, left+200+c.IntN(w/3), up, up+300+c.IntN(400))
	fmt.Fprintf(&b, "stub-outs:\n  waste: {in: back, across: %d from B, up: %d above floor, diameter: 40}\n  drain: {in: floor, off: {back: %d, right: %d}, diameter: 50}\n",
		80+c.IntN(200), 300+c.IntN(900), 150+c.IntN(300), 150+c.IntN(300))
	b.WriteString("tiles:\n  strip: {size: 148 x 48 x 8, kind: glass, joint: 2, turns: any, per box: 40}\n")
	for i, t := range []laidWith{wall, floor} {
		fmt.Fprintf(&b, "  t%d: {size: %s, kind: ceramic, joint: %s, per box: %d, breakage: %d, spares: 1", i, t.size, t.joint, 4+c.IntN(20), c.IntN(4))
		if t.more != "" {
			b.WriteString(", " + t.more)
		}
		b.WriteString("}\n")
	}
	fmt.Fprintf(&b, "tools: {kerf: %d, cutter: %s}\n", 1+c.IntN(3), []string{"wet saw", "wet saw", "snap"}[c.IntN(3)])
	look := []string{"even cuts", "fewest tiles", "fewest cuts", "lines up", "holes safe"}[c.IntN(5)]
	fmt.Fprintf(&b, "lay:\n  back:\n    look for: %s\n    fields:\n      main: {tile: t0, bond: %s, joint: %s%s}\n", look, wall.bond, wall.joint, upright(c, wall))
	if c.IntN(2) == 0 {
		low := 150 + c.IntN(700)
		fmt.Fprintf(&b, "      band: {tile: strip, bond: running 1/2, joint: 2, up: %d to %d above floor}\n", low, low+60+c.IntN(100))
	}
	fmt.Fprintf(&b, "  floor: {look for: %s, fields: {main: {tile: t1, bond: %s, joint: %s}}}\n", look, floor.bond, floor.joint)
	return []byte(b.String())
}

// upright turns the tile of a plain bond at times.
func upright(c *rand.Rand, t laidWith) string {
	if c.IntN(3) == 0 && (t.bond == "stack" || strings.HasPrefix(t.bond, "running")) {
		return ", upright: yes"
	}
	return ""
}

// Fifty rooms by chance: each is laid, and its plan.json holds on its own.
func TestRecheckVariations(t *testing.T) {
	n := uint64(50)
	if testing.Short() {
		n = 8
	}
	for seed := range n {
		text := variation(seed)
		p := planned(t, "room.yaml", text)
		laid := 0
		for _, f := range p.Tiling.Faces {
			laid += len(f.Fields)
		}
		if laid < 2 {
			for _, f := range p.Findings {
				if f.Class == diag.Stop {
					t.Logf("line %d: %s", f.At.Line, f.Say(p.Style))
				}
			}
			t.Errorf("room %d is not laid:\n%s", seed, text)
		}
		if wrong := recheck(export.JSON(p)); len(wrong) > 0 {
			t.Errorf("room %d:\n%s\n%s", seed, summary(wrong), text)
		}
	}
}
