package tiling

import (
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// Ten tiles and nine 3 mm joints of 3,021 mm make a tile of 299.4 mm: (3021 - 27) / 10.
func TestDryLayReplacesTheLabel(t *testing.T) {
	for _, c := range []struct {
		length, want unit.Length // in 1/10 mm
		code         string
	}{
		{30210, 2994, "dry-lay"},
		{30270, 3000, "dry-lay"},
		{27210, 3000, "dry-lay-doubtful"}, // a tile miscounted: the label stays
	} {
		const tenth = unit.Millimetre / 10
		m := &maker{}
		tile := document.Tile{Name: "plain", DryLay: document.DryLay{Given: true, Tiles: 10, Joints: 9, Joint: 3 * unit.Millimetre, Length: c.length * tenth}}
		tile.Length = document.Value[unit.Length]{V: 300 * unit.Millimetre, Known: true}
		tile.Width = tile.Length
		g := good{tile: tile, sizes: sizes(tile)}
		m.dryLay(&g)
		if g.sizes[0].Length != c.want*tenth || g.sizes[0].Width != 300*unit.Millimetre {
			t.Errorf("%d: length %v", c.length, g.sizes[0].Length.MM())
		}
		if len(m.findings) != 1 || m.findings[0].Code != c.code {
			t.Errorf("%d: findings %v", c.length, m.findings)
		}
	}
}

// laid plans one tile on the back wall of the test room and returns the codes of the findings of package tiling.
func laid(t *testing.T, tile, field string) (Plan, string) {
	t.Helper()
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", "\ntiles:\n  plain: {"+tile+"}\nlay:\n  back: {fields: {main: {tile: plain, "+field+"}}}\n")
	p, found, _ := Make(doc, solved, Options{})
	var codes []string
	for _, f := range found {
		if f.Class != diag.Note {
			codes = append(codes, f.Code)
		}
	}
	return p, strings.Join(codes, " ")
}

// Each rule just inside and just outside its limit (ANSI A108.02 4.3.7, 4.3.8, 4.3.8.1, 4.3.8.2, as quoted in package rule).
func TestRulesAtTheirLimits(t *testing.T) {
	const small = "size: 12 x 6 x 3/8, kind: ceramic, turns: any, variation: 1/32, warpage: 0"
	const large = "size: 24 x 12 x 3/8, kind: porcelain, edges: rectified, turns: any, variation: 1/32, warpage: 1/32"
	for _, c := range []struct{ tile, field, want string }{
		{small, "bond: stack, joint: 3/32", ""},
		{small, "bond: stack, joint: 5/64", "joint-narrow"},
		{small, "bond: running 1/2, joint: 1/8", ""},
		{large, "bond: running 1/3, joint: 5/32", ""},
		{large, "bond: running 1/3, joint: 9/64", "offset-joint-narrow"},
		{large, "bond: running 1/2, joint: 5/32", "offset-too-far"},
		{large, "bond: running 2/3, joint: 5/32", ""},
		{large, "bond: stack, joint: 1/8", ""},
		{strings.Replace(large, "kind: porcelain", "kind: stone", 1), "bond: stack, joint: 1/8", ""},
		{strings.Replace(large, "kind: porcelain, edges: rectified, turns: any, variation: 1/32, warpage: 1/32",
			"kind: stone, turns: any, variation: 1/32, warpage: 3/64", 1), "bond: stack, joint: 1/8", "lippage"},
	} {
		if _, got := laid(t, c.tile, c.field); got != c.want {
			t.Errorf("{%s} {%s}: found %q, want %q", c.tile, c.field, got, c.want)
		}
	}
}

// EJ171's example: a yearly range of 115 °F is 15 over 100 and adds 1/16 in to the 1/2 in at 12 ft (computed).
func TestOutsideMovementJoint(t *testing.T) {
	doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", "\nclimate: {exterior: yes, yearly range: 115 F}"+plainTile+"lay:\n  back: {fields: {main: {tile: plain, bond: stack}}}\n")
	_, found, _ := Make(doc, solved, Options{})
	for _, f := range found {
		if f.Code == "movement-width" {
			if got, want := f.Say(unit.DefaultStyle(unit.Inches)), "must be 9/16 in wide"; !strings.Contains(got, want) {
				t.Errorf("%q lacks %q", got, want)
			}
			return
		}
	}
	t.Error("the width of the joints was not told")
}

func TestMixedLots(t *testing.T) {
	for _, c := range []struct{ tile, want string }{
		{"lot: A14, caliber: 9", ""}, {"lot: \"A14, A15\"", "lots-mixed"}, {"caliber: \"9, 10\"", "calibers-mixed"},
	} {
		if _, got := laid(t, "size: 12 x 12 x 3/8, kind: ceramic, turns: any, variation: 0, warpage: 0, "+c.tile, "bond: stack, joint: 1/8"); got != c.want {
			t.Errorf("%s: found %q, want %q", c.tile, got, c.want)
		}
	}
}
