package figure

import (
	"slices"
	"testing"

	"dryfit/internal/unit"

	"pgregory.net/rapid"
)

const mm = unit.Millimetre

func TestCancels(t *testing.T) {
	floor := Fact("level line", -1000*mm)
	rim, stub := floor.Add(Fact("rim", 850*mm)), floor.Add(Fact("stub", 500*mm))
	gap := rim.Sub(stub)
	if gap.V != 350*mm || len(gap.Facts()) != 2 || gap.Per("level line") != 0 || gap.Per("stub") != -unit.One {
		t.Errorf("%+v", gap)
	}
}

func TestMissingStays(t *testing.T) {
	f := Fact("a", mm).Add(Missing("b")).Sub(Fact("c", mm)).Half()
	g := Max(Fact("a", mm), f)
	for _, x := range []Figure{f, g, Min(f, g), f.Neg(), f.Moving(3 * mm), f.Times(2, 3)} {
		if x.Known() || !slices.Equal(x.Missing, []string{"b"}) || x.V != 0 {
			t.Errorf("%+v", x)
		}
	}
}

func TestChoice(t *testing.T) {
	a, b := Fact("a", 5*mm), Fact("b", 7*mm)
	if m := Max(a, b); m.V != 7*mm || m.Per("b") != unit.One || m.Per("a") != 0 || !slices.Equal(m.Facts(), []string{"a", "b"}) {
		t.Errorf("%+v", m)
	}
	if m := Min(a, b); m.V != 5*mm || m.Per("a") != unit.One || !slices.Equal(m.Facts(), []string{"a", "b"}) {
		t.Errorf("%+v", m)
	}
}

// What a figure says of its terms is true: change one fact and the length moves by Per of it.
func TestTermsTellTheTruth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		facts := rapid.SliceOfN(rapid.Int64Range(-1000, 1000), 3, 3).Draw(t, "facts")
		ops := rapid.SliceOfN(rapid.IntRange(0, 6), 1, 8).Draw(t, "ops")
		make := func(facts []int64) Figure {
			f := Fact("a", unit.Length(facts[0])*mm)
			others := []Figure{Fact("b", unit.Length(facts[1])*mm), Fact("c", unit.Length(facts[2])*mm)}
			for i, op := range ops {
				g := others[i%2]
				switch op {
				case 0, 1:
					f = f.Add(g)
				case 2, 3:
					f = f.Sub(g)
				case 4:
					f = f.Neg()
				case 5:
					f = f.Times(3, 2)
				case 6:
					f = f.Plus(3 * mm)
				}
			}
			return f
		}
		f := make(facts)
		for i, name := range []string{"a", "b", "c"} {
			moved := slices.Clone(facts)
			moved[i] += 4
			want := f.V + (4*mm).MulDiv(int64(f.Per(name)), int64(unit.One))
			if got := make(moved).V; (got - want).Abs() > unit.Length(len(ops)) {
				t.Fatalf("%s: %d, want %d", name, got, want)
			}
		}
	})
}
