package diag

import (
	"encoding/json"
	"math/rand/v2"
	"slices"
	"testing"

	"dryfit/internal/unit"
)

var (
	inches = unit.DefaultStyle(unit.Inches)
	metric = unit.DefaultStyle(unit.Millimetres)
)

func TestSayEachKind(t *testing.T) {
	for _, c := range []struct {
		v      Value
		in, mm string
	}{
		{T("basin wall"), "basin wall", "basin wall"},
		{L(59*unit.Inch + unit.Inch/2), "59-1/2 in", "1511 mm"}, // 59.5 x 25.4 = 1511.3
		{L(unit.Inch / 64), "0 in", "0 mm"},
		{X(unit.Inch / 64), "1/64 in", "0.396875 mm"}, // 25.4 / 64
		{N(42), "42", "42"},
		{N(int64(-1)), "-1", "-1"},
		{Angle(90 * unit.Degree), "90.00°", "90.00°"},
		{Angle(-unit.Degree / 8), "-0.12°", "-0.12°"}, // -0.125, half up
		{Angle(unit.Degree / 8), "0.13°", "0.13°"},
		{Area(100 * unit.SquareFoot), "100.0 sq ft", "9.29 m²"}, // 16 CFR 500.19: 929.0304 cm² each
		{Area(0), "0.0 sq ft", "0.00 m²"},
		{Percent(20_000), "2 %", "2 %"},
		{Percent(333_000), "33.3 %", "33.3 %"},
		{Percent(333_333), "33.3333 %", "33.3333 %"},
		{Percent(-5_000), "-0.5 %", "-0.5 %"},
		{Percent(unit.One), "100 %", "100 %"},
		{Percent(0), "0 %", "0 %"},
		{Temp(12 * unit.Celsius), "53.6 °F", "12 °C"},
		{Time(90), "1 h 30 min", "1 h 30 min"},
	} {
		if got := c.v.Say(inches); got != c.in {
			t.Errorf("%+v in inches: %q, want %q", c.v, got, c.in)
		}
		if got := c.v.Say(metric); got != c.mm {
			t.Errorf("%+v in millimetres: %q, want %q", c.v, got, c.mm)
		}
	}
}

func TestFillIsOnePass(t *testing.T) {
	for _, c := range []struct {
		template string
		values   []Value
		want     string
	}{
		{"plain", nil, "plain"},
		{"{0} and {1}", []Value{T("{1}"), T("b")}, "{1} and b"}, // a user's own text is not filled again
		{"{1} and {0}", []Value{T("{1}"), T("{0}")}, "{0} and {1}"},
		{"{0}{0}", []Value{N(7)}, "77"},
		{"{2} of {0}", []Value{N(1)}, "{2} of 1"},
		{"{10}", []Value{N(0), N(1), N(2), N(3), N(4), N(5), N(6), N(7), N(8), N(9), N(10)}, "10"},
		{"{in: {0}}", []Value{T("x")}, "{in: x}"},
		{"{", []Value{T("x")}, "{"},
		{"{0", []Value{T("x")}, "{0"},
		{"{-1}{x}{}", []Value{T("x")}, "{-1}{x}{}"},
		{"}{0}{", []Value{T("x")}, "}x{"},
	} {
		f := Finding{Text: c.template, Mend: c.template, Values: c.values}
		if got := f.Say(inches); got != c.want {
			t.Errorf("%q: %q, want %q", c.template, got, c.want)
		}
		if got := f.SayMend(inches); got != c.want {
			t.Errorf("mend %q: %q, want %q", c.template, got, c.want)
		}
		if got := (Assumption{Text: c.template, Values: c.values}).Say(inches); got != c.want {
			t.Errorf("assumption %q: %q, want %q", c.template, got, c.want)
		}
	}
}

// Whatever the order in which findings come, they are shown in one order, and equal ones once.
func TestSorted(t *testing.T) {
	at := func(line, column int) Place { return Place{Line: line, Column: column} }
	var want List
	want.Add(Stop, "a", at(1, 1), "one", "")
	want.Add(Stop, "a", at(1, 2), "one", "")
	want.Add(Stop, "b", at(1, 2), "one", "")
	want.Add(Stop, "b", at(1, 2), "two", "", T("x"))
	want.Add(Stop, "b", at(1, 2), "two", "", T("y"))
	want.Add(Stop, "b", at(1, 2), "two", "mend", T("y"))
	want.Add(Stop, "a", at(2, 1), "one", "")
	want.Add(Look, "a", at(1, 1), "one", "")
	want.Add(Unchecked, "a", at(1, 1), "one", "")
	want.Add(Note, "a", at(1, 1), "one", "")
	rng := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		mixed := append(slices.Clone(want), want...)
		rng.Shuffle(len(mixed), func(i, j int) { mixed[i], mixed[j] = mixed[j], mixed[i] })
		before := slices.Clone(mixed)
		got := mixed.Sorted()
		if !slices.EqualFunc(got, want, Finding.same) {
			t.Fatalf("got %+v", got)
		}
		if !slices.EqualFunc(mixed, before, Finding.same) {
			t.Fatal("sorting changed the list itself")
		}
	}
}

func TestStops(t *testing.T) {
	var l List
	l.Add(Look, "a", Place{}, "x", "")
	if l.Stops() {
		t.Error("a look does not stop work")
	}
	f := l.Add(Stop, "b", Place{}, "x", "")
	f.Rule = "r"
	if !l.Stops() || l[1].Rule != "r" {
		t.Error("a stop stops work, and Add gives the finding itself")
	}
}

func TestClassWords(t *testing.T) {
	for c, want := range map[Class]string{Stop: "stop", Look: "look", Unchecked: "not checked", Note: "note"} {
		if c.String() != want {
			t.Errorf("%d: %s", c, c)
		}
	}
}

func TestFindingJSON(t *testing.T) {
	var l List
	l.Add(Look, "gap", Place{Path: "walls > a", Line: 3, Column: 5}, "{0} off", "shim", L(unit.Inch))
	b, err := json.Marshal(l)
	want := `[{"code":"gap","class":1,"at":{"path":"walls \u003e a","line":3,"column":5},"text":"{0} off","mend":"shim","values":[{"kind":1,"num":406400}]}]`
	if err != nil || string(b) != want {
		t.Errorf("%s, %v", b, err)
	}
}
