package judge

import (
	"slices"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

func TestPresetsNameEveryMeasureOnce(t *testing.T) {
	want := slices.Sorted(slices.Values(All()))
	for _, p := range Presets() {
		if got := slices.Sorted(slices.Values(p.Order)); !slices.Equal(got, want) || len(got) != 9 {
			t.Errorf("%s lists %v", p.Name, got)
		}
		if p.Says == "" || strings.ToLower(p.Name) != p.Name {
			t.Errorf("%q is not in plain words", p.Name)
		}
	}
}

// asked -> the first measures of the order; unknown
func TestOrderOf(t *testing.T) {
	for _, row := range []string{
		" -> slivers in sight, balance, narrowest cut;",
		"even cuts -> slivers in sight, balance, narrowest cut;",
		"fewest tiles -> tiles to buy, slivers in sight;",
		"narrowest neck -> narrowest neck, slivers in sight, balance;",
		"sight lines, holes safe -> sight lines, holes clear of joints, narrowest neck;",
		"sight lines, nonsense, balance -> sight lines, balance, slivers in sight; nonsense",
	} {
		asked, rest, _ := strings.Cut(row, " -> ")
		first, unknown, _ := strings.Cut(rest, ";")
		got, bad := OrderOf(list(asked))
		want := list(first)
		if len(got) != 9 {
			t.Errorf("%q: %d measures, want all 9", asked, len(got))
		}
		for i, w := range want {
			if string(got[i]) != w {
				t.Errorf("%q: place %d is %q, want %q", asked, i+1, got[i], w)
			}
		}
		if !slices.Equal(bad, list(unknown)) {
			t.Errorf("%q: unknown %v, want %q", asked, bad, unknown)
		}
	}
}

func list(s string) []string {
	if s = strings.TrimSpace(s); s == "" {
		return nil
	}
	return strings.Split(s, ", ")
}

func TestJoinKeepsEachReasonsValues(t *testing.T) {
	a := Because("{0} of {1}", diag.N(1), diag.T("{0}"))
	b := Because("{1} before {0}", diag.L(unit.Inch), diag.T("x"))
	got := Join("; ", a, Reason{}, b)
	if want := "{0} of {1}; {3} before {2}"; got.Text != want || len(got.Values) != 4 {
		t.Errorf("joined %q with %d values, want %q with 4", got.Text, len(got.Values), want)
	}
}

var inches = unit.DefaultStyle(unit.Inches)

func TestSayInTheReadersUnits(t *testing.T) {
	quarter := unit.Inch / 4
	for _, row := range []struct {
		m    Measure
		want string
	}{
		{Measure{Name: NarrowestCut, Length: 5 * quarter, Cost: -40, Where: "window, left"}, "the narrowest cut shows 1-1/4 in (window, left)"},
		{Measure{Name: NarrowestCut, None: true}, "no width is cut"},
		{Measure{Name: SliverPlaces, IsCount: true, Count: 3, Cost: 3, Where: "floor"}, "slivers in sight: 3 (some at floor)"},
		{Measure{Name: SliverPlaces, IsCount: true}, "no slivers in sight"},
		{Measure{Name: Balance, Length: quarter / 100}, "the cuts left and right of the center line are alike"},
		{Measure{Name: SightLines, Length: quarter, Cost: 8, Where: "window"}, "courses miss the sight lines by a total of 1/4 in (most at window)"},
		{Measure{Name: HolesClear, Length: -quarter, Cost: 8, Where: "spout"}, "a joint runs 1/4 in inside a hole's rim (spout)"},
		{Measure{Name: HolesClear, Length: quarter, Cost: -8, Where: "spout"}, "the nearest hole's rim is 1/4 in from a joint (spout)"},
		{Measure{Name: CutCount, IsCount: true, Count: 12, Cost: 12}, "tiles to cut: 12"},
		{Measure{Name: TilesToBuy, IsCount: true, None: true}, "tiles not counted"},
	} {
		if got := Say(row.m).Say(inches); got != row.want {
			t.Errorf("got %q, want %q", got, row.want)
		}
	}
}

func TestThanComparesOrSaysBoth(t *testing.T) {
	a := Measure{Name: NarrowestCut, Length: 4 * unit.Inch, Cost: -128}
	b := Measure{Name: NarrowestCut, Length: unit.Inch, Cost: -32}
	none := Measure{Name: NarrowestCut, None: true}
	sliver := func(n int) Measure { return Measure{Name: SliverPlaces, IsCount: true, Count: n, Cost: int64(n)} }
	hole := func(n unit.Length) Measure { return Measure{Name: HolesClear, Length: n * unit.Inch, Cost: -int64(n)} }
	for _, row := range []struct {
		m, o Measure
		want string
	}{
		{a, b, "the narrowest cut shows 4 in, against 1 in"},
		{none, b, "no width is cut, against 1 in"},
		{b, none, "the narrowest cut shows 1 in, against none"},
		{sliver(2), sliver(0), "slivers in sight: 2, against none"},
		{sliver(0), sliver(2), "no slivers in sight, against 2"},
		{hole(-1), hole(2), "a joint runs 1 in inside a hole's rim, against 2 in clear of it"},
		{hole(2), hole(-1), "the nearest hole's rim is 2 in from a joint, against 1 in inside the rim"},
	} {
		if got := Than(row.m, row.o).Say(inches); got != row.want {
			t.Errorf("got %q, want %q", got, row.want)
		}
	}
}

func TestEveryMeasureHasWords(t *testing.T) {
	for _, n := range All() {
		for _, m := range []Measure{{Name: n, Cost: 1}, {Name: n}, {Name: n, None: true}} {
			if m.None && (n == SliverPlaces || n == CutCount) {
				continue // they can always be counted
			}
			if r := Than(m, m); strings.HasPrefix(r.Text, ",") || strings.HasSuffix(r.Text, " ") {
				t.Errorf("%s has no words for %+v: %q", n, m, r.Text)
			}
		}
	}
}
