package takeoff_test

import (
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/takeoff"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// A room whose back wall takes 4 x 4 whole tiles: 2020 mm between the studs less two boards of 10 are 2000, less two soft joints of 3
// are 1994 = 4 x 497 + 3 x 2. From the board on the floor, 6 mm over the bare floor, to the ceiling it is 2000 mm too.
const square = `dryfit: 1
name: Square
units: mm
survey:
  corners: A B C D
  tape: {A-B: 2020, B-C: 2020, C-D: 2020, D-A: 2020, A-C: 2856.711, B-D: 2856.711}
  level line: {down: {A: 1006, B: 1006, C: 1006, D: 1006}, up: {A: 1000, B: 1000, C: 1000, D: 1000}}
walls:
  back: {along: A-B, build-up: [gypsum board 10, bed 6, tile]}
  right: {along: B-C, build-up: [gypsum board 10]}
  front: {along: C-D, build-up: [gypsum board 10]}
  left: {along: D-A, build-up: [gypsum board 10]}
floor: {build-up: [board 6]}
setting: {soft joint: 3, floor joint: 3, ceiling joint: 3}
tiles:
  big: {size: 497 x 497 x 10, kind: porcelain, joint: 2, edges: rectified, turns: any}
lay:
  back: {fields: {main: {tile: big, bond: stack}}}
`

type made struct {
	takeoff.Plan
	tiles   tiling.Plan
	found   diag.List
	assumed []diag.Assumption
}

func make(t *testing.T, src string) made {
	t.Helper()
	doc, found := document.Read("square", []byte(src))
	if found.Stops() {
		t.Fatal(words(found))
	}
	room, _, _ := site.Solve(doc)
	tiles, _, _ := tiling.Make(doc, room, tiling.Options{})
	p, list, assumed := takeoff.Make(takeoff.From{Document: doc, Room: room, Tiles: tiles})
	return made{p, tiles, append(found, list...), assumed}
}

func words(l diag.List) string {
	var b strings.Builder
	for _, f := range l {
		b.WriteString(f.Code + ": " + f.Say(unit.DefaultStyle(unit.Millimetres)) + "\n")
	}
	return b.String()
}

// line is the first line of a kind.
func (m made) line(t *testing.T, kind document.GoodKind) takeoff.Line {
	t.Helper()
	for _, l := range m.Lines {
		if l.Kind == kind {
			return l
		}
	}
	t.Fatalf("no line of %s", kind)
	return takeoff.Line{}
}

func (m made) has(code string) bool {
	for _, f := range m.found {
		if f.Code == code {
			return true
		}
	}
	return false
}

// Worked out by hand. Tile: 16 x 497² = 3,952,144 mm². Bed: a 12 mm notch leaves 6 mm, 1.5 mm on the backs: 29.64108 L, at 1.3 kg/L and 10 % more
// 42.3867 kg. Joints: 6 of 1994 x 2 mm less 9 crossings of 4 mm²: 23,892 mm², 10 mm deep 0.23892 L, at 1.6 kg/L and 10 % more 0.4205 kg. Sealant:
// four sides of 1994 mm, 3 mm wide and 1/4 in deep: 4 x 37,985.7 mm³, 10 % more 167.137 mL. Tile weighs 3.952144 m² x 24 kg/m² = 94.851 kg, fresh
// mortar 1.7 x 29.64108 = 50.390 kg, fresh grout 1.9 x 0.23892 = 0.454 kg: on 3.976036 m² 36.6 kg each.
func TestByHand(t *testing.T) {
	m := make(t, square)
	f := m.Faces[0]
	near := func(what string, got, want, within int64) {
		if got < want-within || got > want+within {
			t.Errorf("%s: %d, want %d", what, got, want)
		}
	}
	near("tile, mm²", int64(f.Area/unit.SquareMillimetre), 3_952_144, 1)
	near("comb, µm", int64(f.Comb/unit.Micrometre), 6000, 0)
	near("skim, µm", int64(f.Skim/unit.Micrometre), 1500, 0)
	near("bed, mm³", int64(f.Bed), 29_641_080, 1)
	near("joints, mm³", int64(f.Joints), 238_920, 1)
	near("crosses", int64(f.Crosses), 9, 0)
	near("tees", int64(f.Tees), 0, 0)
	near("straights", int64(f.Straights), 12, 0)
	near("contact", int64(f.Contact), int64(unit.One), 0)
	near("mortar, g", m.line(t, document.Mortar).Need.N/int64(unit.Gram), 42_386, 1)
	near("grout, g", m.line(t, document.Grout).Need.N/int64(unit.Gram), 420, 1)
	near("sealant, mm³", m.line(t, document.Sealant).Need.N, 167_137, 3)
	near("crosses to have", m.line(t, document.CrossSpacers).Need.N, 9, 0)
	near("straights and, under the first course, two to a tile", m.line(t, document.Wedges).Need.N, 12+8, 0)
	near("on a square metre, g", int64(f.Weight.OnEach/unit.Gram), 36_643, 2)
	if g := m.line(t, document.Grout); g.What != "unsanded grout" || !g.Typical {
		t.Errorf("2 mm joints take unsanded grout, by a typical figure: %+v", g)
	}
	sum := unit.Volume(0)
	for _, p := range m.Pieces {
		sum += p.Mortar
	}
	near("the pieces' shares, mm³", int64(sum), 29_641_080, 16)
}

// Gypsum board without skim carries 32 kg/m² (BS 5385-1:2018, from memory), so the wall does not carry its 36.6.
func TestOverload(t *testing.T) {
	m := make(t, square)
	if !m.has("wall-load") || !m.found.Stops() {
		t.Error(words(m.found))
	}
	plain := make(t, strings.ReplaceAll(square, "gypsum board", "board"))
	if plain.found.Stops() || !plain.has("wall-load") || plain.Faces[0].Weight.CarriesKnown {
		t.Error("a board of which nothing is told carries nothing that is known:\n", words(plain.found))
	}
	strong := make(t, strings.ReplaceAll(square, "gypsum board", "board")+"goods: {panel: {kind: board, carries: 50 kg per m2, packs: {1200 x 900 sheet: 20}}}\nbuying: {currency: EUR}\n")
	if strong.has("wall-load") || !strong.Faces[0].Weight.CarriesKnown {
		t.Error(words(strong.found))
	}
}

// A label's number beats a typical one, and what is silent is never zero.
func TestLabelBeatsTypical(t *testing.T) {
	goods := "goods:\n  mix: {kind: mortar, packs: {25 kg bag: 20}, yields: 20 L per 25 kg, waste: 0 %, color: gray}\n  fill: {kind: grout, grain: unsanded, packs: {5 kg bag: 10}}\nbuying: {currency: EUR}\n"
	m := make(t, square+goods)
	l := m.line(t, document.Mortar)
	// 29.64108 L x 25 / 20 = 37.05135 kg.
	if l.Typical || l.Good != "mix" || l.Need.N/int64(unit.Gram) != 37_051 || l.Waste != 0 {
		t.Errorf("%+v", l)
	}
	if g := m.line(t, document.Grout); !g.Typical || g.Good != "fill" {
		t.Errorf("%+v", g)
	}
	ready := make(t, square+strings.Replace(goods, "grain: unsanded", "grain: ready-mixed", 1))
	if g := ready.line(t, document.Grout); g.Known || g.Missing == "" || !ready.has("good-unreckoned") {
		t.Errorf("ready-mixed grout by the kilogram needs its yield: %+v", g)
	}
}

// Each row changes the document and wants the finding, or wants none.
func TestGoodsAgainstTile(t *testing.T) {
	with := func(tile, goods, lay string) string {
		s := strings.Replace(square, "turns: any}", "turns: any"+tile+"}", 1)
		s = strings.Replace(s, "back: {fields", "back: {"+lay+"fields", 1)
		return s + "goods:\n  x: " + goods + "\n"
	}
	for _, c := range []struct {
		what, src, code string
		want            bool
	}{
		{"gray behind light", with(", light: yes", "{kind: mortar, color: gray}", ""), "mortar-shows", true},
		{"white behind light", with(", light: yes", "{kind: mortar, color: bright white}", ""), "mortar-shows", false},
		{"unknown behind light", with(", light: yes", "{kind: mortar}", ""), "mortar-color", true},
		{"sand on polish", with(", polished: yes", "{kind: grout, grain: sanded, joint: 1 to 6}", ""), "grout-scratches", true},
		{"fine on polish", with(", polished: yes", "{kind: grout, grain: unsanded}", ""), "grout-scratches", false},
		{"sand that does not scratch", with(", polished: yes", "{kind: grout, grain: sanded, joint: 1 to 6, scratches: no}", ""), "grout-scratches", false},
		{"sand in 2 mm", with("", "{kind: grout, grain: sanded}", ""), "grout-grain", true},
		{"label's joint", with("", "{kind: grout, grain: sanded, joint: 3 to 15}", ""), "grout-joint", true},
		{"no grain told", with("", "{kind: grout}", ""), "grout-grain", true},
		{"acid on light", with(", light: yes", "{kind: sealant, neutral cure: no, non-staining: yes}", ""), "sealant-acid", true},
		{"silent on light", with(", light: yes", "{kind: sealant}", ""), "sealant-stains", true},
		{"fit for light", with(", light: yes", "{kind: sealant, neutral cure: yes, non-staining: yes}", ""), "sealant-stains", false},
		{"small notch", with("", "{kind: mortar}", "trowel: square 6 x 6, back-butter: no, "), "contact-short", true},                 // 3 of 6 mm: 50 % of 80 %
		{"small notch, buttered", with("", "{kind: mortar}", "trowel: square 6 x 6, back-butter: yes, "), "contact-short", true},      // 4.5 of 6: 75 %
		{"10 mm, buttered", with("", "{kind: mortar}", "trowel: square 10 x 10, back-butter: yes, "), "contact-short", false},         // 6.5 of 6
		{"10 mm, dry", with("", "{kind: mortar}", "trowel: square 10 x 10, back-butter: no, "), "contact-short", false},               // 5 of 6: 83 % of 80 %
		{"10 mm, wet", with("", "{kind: mortar}", "trowel: square 10 x 10, back-butter: no, wet area: yes, "), "contact-short", true}, // 83 % of 95 %
		{"large notch", with("", "{kind: mortar}", "trowel: square 16 x 16, "), "bed-proud", true},                                    // 8 of 6 mm, 1.6 allowed
		{"nothing takes it", with("", "{kind: backer rod, packs: {20 m roll: 4}}", ""), "good-unused", false},
		{"no use for it", with("", "{kind: cleaner}", ""), "good-unused", true},
		{"two of a kind", with("", "{kind: mortar}\n  y: {kind: mortar}", ""), "goods-both", true},
		{"two of a kind, one to compare", with("", "{kind: mortar}\n  y: {kind: mortar, instead of: x}", ""), "goods-both", false},
		{"heavy bag", with("", "{kind: mortar, packs: {25 kg bag: 20}}", ""), "lift", true},
		{"light bag", with("", "{kind: mortar, packs: {20 kg bag: 20}}", ""), "lift", false},
	} {
		if m := make(t, c.src); m.has(c.code) != c.want {
			t.Errorf("%s: %s is %v\n%s", c.what, c.code, !c.want, words(m.found))
		}
	}
}

// Stone is sealed once before it is grouted, and with the coats of the label when the grout has cured: 1994 x 1994 mm three times, at 10 m²/L and 10 % more
// 1.3121 L. Another tile that drinks is sealed after grouting alone.
func TestSealerBeforeGrout(t *testing.T) {
	goods := "goods: {seal: {kind: sealer, covers: 10 m2 per L, coats: 2, packs: {1 L can: 20}}}\n"
	stone := make(t, strings.Replace(square, "kind: porcelain", "kind: stone", 1)+goods).line(t, document.Sealer)
	brick := make(t, strings.Replace(square, "turns: any}", "turns: any, porosity: open}", 1)+goods).line(t, document.Sealer)
	if stone.Need.N/1000 != 1312 || len(stone.Parts) != 2 || brick.Need.N/1000 != 874 || len(brick.Parts) != 1 {
		t.Errorf("stone %+v\nbrick %+v", stone, brick)
	}
}

// A tile whose thickness nobody wrote has joints of unknown depth and a weight that is not known: neither is zero.
func TestThicknessUnknown(t *testing.T) {
	src := strings.Replace(strings.Replace(square, "497 x 497 x 10", "497 x 497", 1), "bed 6, tile]", "bed 6, tile 10]", 1)
	m := make(t, src)
	if len(m.Faces) != 1 || !m.has("grout-unknown") || m.Faces[0].Weight.Known || m.Stack.Known {
		t.Errorf("%+v\n%s", m.Faces, words(m.found))
	}
	for _, l := range m.Lines {
		if l.Kind == document.Grout {
			t.Errorf("grout without a depth: %+v", l)
		}
	}
}

// Clips: 24 stretches of 497 mm with two clips each; the pieces that are set later bear them.
func TestClipsOfRoom(t *testing.T) {
	m := make(t, square+"goods: {stems: {kind: clip stems, joint: 2}, caps: {kind: clip caps}}\n")
	n := 0
	for _, p := range m.Pieces {
		n += p.Clips
	}
	caps := m.line(t, document.ClipCaps)
	if l := m.line(t, document.ClipStems); l.Need.N != 48 || n != 48 || m.Faces[0].Clips != 48 || l.Back || !caps.Back || caps.Need.N != 48 {
		t.Errorf("%d stems, %d on pieces, caps %+v", l.Need.N, n, caps)
	}
	first := m.tiles.Faces[0].Setting[0]
	for _, p := range m.Pieces {
		if p.Address == first && p.Clips != 0 {
			t.Errorf("nothing stands beside the first piece yet, and it bears %d clips", p.Clips)
		}
	}
}
