package document

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

func TestParseBond(t *testing.T) {
	running := func(n, d int) Bond { return Bond{Kind: RunningBond, Num: n, Den: d} }
	for _, c := range []struct {
		typed string
		bare  unit.System
		want  Bond
		says  string
	}{
		{"stack", unit.Inches, Bond{Kind: StackBond}, "stack"},
		{" Stack ", unit.Inches, Bond{Kind: StackBond}, "stack"},
		{"vertical stack", unit.Inches, Bond{Kind: StackBond, Vertical: true}, "vertical stack"},
		{"running", unit.Inches, running(1, 2), "running 1/2"},
		{"running 1/3", unit.Inches, running(1, 3), "running 1/3"},
		{"running  2/6", unit.Inches, running(1, 3), "running 1/3"},
		{"running 1/3", unit.Millimetres, running(1, 3), "running 1/3"},
		{"running 33 %", unit.Inches, running(33, 100), "running 33/100"},
		{"running 33%", unit.Inches, running(33, 100), "running 33/100"},
		{"running 0.25", unit.Inches, running(1, 4), "running 1/4"},
		{"running 8", unit.Inches, Bond{Kind: RunningBond, Shift: 8 * unit.Inch}, "running 8 in"},
		{"running 1/3 m", unit.Inches, Bond{}, ""}, // a third of a metre is not on the grid
		{"running 3/8 in", unit.Millimetres, Bond{Kind: RunningBond, Shift: 3 * unit.Inch / 8}, "running 3/8 in"},
		{"running 200", unit.Millimetres, Bond{Kind: RunningBond, Shift: 200 * unit.Millimetre}, "running 200 mm"},
		{"vertical running 1/2", unit.Inches, Bond{Kind: RunningBond, Vertical: true, Num: 1, Den: 2}, "vertical running 1/2"},
		{"running 1/3 to and fro", unit.Inches, Bond{Kind: RunningBond, Num: 1, Den: 3, Back: true}, "running 1/3 to and fro"},
		{"Running 8  in to and  fro", unit.Inches, Bond{Kind: RunningBond, Shift: 8 * unit.Inch, Back: true}, "running 8 in to and fro"},
		{"running to and fro", unit.Inches, Bond{Kind: RunningBond, Num: 1, Den: 2, Back: true}, "running 1/2 to and fro"},
		{"vertical running 25 % to and fro", unit.Inches, Bond{Kind: RunningBond, Vertical: true, Num: 1, Den: 4, Back: true}, "vertical running 1/4 to and fro"},
		{"diagonal", unit.Inches, Bond{Kind: StackBond, Diagonal: true}, "diagonal"},
		{"diagonal running 1/2", unit.Inches, Bond{Kind: RunningBond, Diagonal: true, Num: 1, Den: 2}, "diagonal running 1/2"},
		{"herringbone", unit.Inches, Bond{Kind: HerringboneBond}, "herringbone"},
		{"herringbone 45", unit.Inches, Bond{Kind: HerringboneBond, Diagonal: true}, "herringbone 45"},
		{"double herringbone 45", unit.Inches, Bond{Kind: DoubleHerringboneBond, Diagonal: true}, "double herringbone 45"},
		{"basketweave", unit.Inches, Bond{Kind: BasketweaveBond}, "basketweave"},
		{"hexagon", unit.Inches, Bond{Kind: HexagonBond}, "hexagon"},
		{"pinwheel", unit.Inches, Bond{Kind: PinwheelBond}, "pinwheel"},
		{"modular 3", unit.Inches, Bond{Kind: ModularBond, Sizes: 3}, "modular 3"},
		{"modular 4", unit.Inches, Bond{Kind: ModularBond, Sizes: 4}, "modular 4"},
		{"modular 5", unit.Inches, Bond{}, ""},
		{"stack 1/2", unit.Inches, Bond{}, ""},
		{"running 0", unit.Inches, Bond{}, ""},
		{"running 0/3", unit.Inches, Bond{}, ""},
		{"running 3/3", unit.Inches, Bond{}, ""},
		{"running 1/0", unit.Inches, Bond{}, ""},
		{"running 100 %", unit.Inches, Bond{}, ""},
		{"running -1/3", unit.Inches, Bond{}, ""},
		{"running half", unit.Inches, Bond{}, ""},
		{"running 30 ft", unit.Inches, Bond{}, ""},
		{"running 1/3 to fro", unit.Inches, Bond{}, ""},
		{"stack to and fro", unit.Inches, Bond{}, ""},
		{"herringbone to and fro", unit.Inches, Bond{}, ""},
		{"herringbone 30", unit.Inches, Bond{}, ""},
		{"runningbond", unit.Inches, Bond{}, ""},
		{"", unit.Inches, Bond{}, ""},
	} {
		got, why, mend := ParseBond(c.typed, c.bare)
		if c.says == "" {
			if why == "" || mend == "" {
				t.Errorf("%q was taken for %v", c.typed, got)
			}
			continue
		}
		if got != c.want || why != "" || got.String() != c.says {
			t.Errorf("%q: %+v %q %s, want %+v %q", c.typed, got, got, why, c.want, c.says)
		}
	}
}

// Every name that a person is told can be read, and what is read is written so that it reads as the same bond.
func TestBondNamesRead(t *testing.T) {
	if len(BondNames()) < len(bondRows) {
		t.Fatal("a bond has no name")
	}
	for _, n := range BondNames() {
		b, why, _ := ParseBond(n, unit.Inches)
		if why != "" || b.String() != n {
			t.Errorf("%q: %s, %q", n, why, b)
		}
	}
}

func TestBondReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		shift := unit.Length(rapid.Int64Range(1, int64(4*unit.Metre)).Draw(t, "shift"))
		b := Bond{Kind: RunningBond, Shift: shift, Vertical: rapid.Bool().Draw(t, "vertical"), Back: rapid.Bool().Draw(t, "back")}
		got, why, _ := ParseBond(b.String(), rapid.SampledFrom([]unit.System{unit.Inches, unit.Millimetres}).Draw(t, "units"))
		if got != b {
			t.Fatalf("%q reads as %+v, %s; was %+v", b, got, why, b)
		}
	})
}

func TestPresetsAndMeasuresDiffer(t *testing.T) {
	all := strings.Join(append(Presets(), Measures()...), "|")
	for _, w := range append(Presets(), Measures()...) {
		if strings.Count("|"+all+"|", "|"+w+"|") != 1 {
			t.Errorf("%s is there twice", w)
		}
	}
}
