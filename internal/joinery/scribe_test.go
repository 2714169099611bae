package joinery

import (
	"strings"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/unit"
)

func scribed(t testing.TB, words string) (Scribe, string) {
	t.Helper()
	p, r := trimmed(t, "  ply: {kind: sheet, size: 96 x 48 x 3/4}\ntops:\n  ledge: {in: front, across: 24 to 60 from C, up: 32, made of: sheet, stock: ply, thickness: 3/4, depth: 20}\nscribes:\n  back: "+words+"\n")
	if len(p.Scribes) == 0 {
		return Scribe{}, codes(r)
	}
	return p.Scribes[0], codes(r)
}

// A top set parallel stands 1/8, 1/4 and 1/16 off the wall: where it stands off most nothing is cut, elsewhere the difference.
func TestScribe(t *testing.T) {
	s, found := scribed(t, "{for: ledge, offsets: {0: 1/8, 12: 1/4, 36: 1/16}, leave: 3/16}")
	if found != "" || len(s.Line) != 3 || exact(s.Needs) != "3/16" {
		t.Fatal(found, s)
	}
	for i, want := range []string{"1/8", "0", "3/16"} {
		if got := exact(s.Line[i].Cut); got != want {
			t.Errorf("station %d: %s, want %s", i, got, want)
		}
	}
	for _, c := range []struct{ words, want string }{
		{"{for: ledge, offsets: {0: 1/8, 36: 1/4}, leave: 3/32}", "scribe-short"},
		{"{for: ledge, offsets: {0: 1/8, 36: 1/4}}", "scribe-leave"},
		{"{for: ledge, offsets: {0: 1/8, 37: 1/4}, leave: 1}", "scribe-long"},
		{"{for: ledge, offsets: {0: 1/8}, leave: 1}", "wood-missing"},
		{"{for: ledge, leave: 1}", "wood-missing"}, // no readings of the wall either
	} {
		if _, got := scribed(t, c.words); got != c.want {
			t.Errorf("%s: %q, want %q", c.words, got, c.want)
		}
	}
}

// A profile, read along the wall and + into the room, seen from a part that lies from 10 to 30: the wall comes nearest at 20.
func TestProfileAsOffsets(t *testing.T) {
	in := func(n int64) unit.Length { return unit.Inch.MulDiv(n, 16) }
	var profile []document.Station
	for _, p := range [][2]int64{{0, 0}, {20, 4}, {40, 0}} {
		profile = append(profile, document.Station{X: unit.Length(p[0]) * unit.Inch, Value: in(p[1])})
	}
	got := offsetsOf(profile, 10*unit.Inch, 30*unit.Inch)
	want := [][2]unit.Length{{0, in(2)}, {10 * unit.Inch, 0}, {20 * unit.Inch, in(2)}}
	if len(got) != len(want) {
		t.Fatal(got)
	}
	for i, w := range want {
		if got[i].X != w[0] || got[i].Value != w[1] {
			t.Errorf("%d: %v, want %v", i, got[i], w)
		}
	}
}

// A sheet 36 x 20 x 3/4: 2 x (720 + 27 + 15) = 1524 square inches; three coats at 10 m2 a liter: 0.98322 m2 x 3 / 10 = 0.294967 L.
func TestFinish(t *testing.T) {
	p, r := trimmed(t, `  ply: {kind: sheet, size: 96 x 48 x 3/4}
tops:
  ledge: {in: front, across: 24 to 60 from C, up: 32, made of: sheet, stock: ply, thickness: 3/4, depth: 20}
finish:
  oil: {on: [ledge], coats: 3, covers: 10 m2/L, between coats: 12, until used: 72}
  bare: {on: [ledge], coats: 2}
`)
	f := p.Finishes[0]
	if f.Area != 1524*unit.SquareInch || !f.Covered || f.Volume != 294_967 {
		t.Errorf("%d sq in, %d mm3 %s", f.Area/unit.SquareInch, f.Volume, codes(r))
	}
	if p.Finishes[1].Covered {
		t.Error("a can that covers nobody knows what")
	}
	if strings.Contains(codes(r), "wood-missing") {
		t.Error(codes(r))
	}
}
