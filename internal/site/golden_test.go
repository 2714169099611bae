package site

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

var update = flag.Bool("update", false, "write the golden files")

// The loft as a person writes it, and all that is said of it: its words are read by people, so they are kept where people can read them.
func TestGoldenLoft(t *testing.T) {
	text, err := os.ReadFile("testdata/loft.yaml")
	if err != nil {
		t.Fatal(err)
	}
	doc, list := document.Read("loft.yaml", text)
	if list.Stops() {
		t.Fatalf("the test's own document does not read: %+v", list)
	}
	got := describe(doc)
	const golden = "testdata/loft.golden"
	if *update {
		if err := os.WriteFile(golden, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("the loft differs from %s; it is now:\n%s", golden, got)
	}
}

func describe(doc document.Room) string {
	r, list, assumed := Solve(doc)
	st := unit.Style{System: doc.Units, Mark: unit.Inch / 64}
	var b strings.Builder
	p := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	p("finished floor %s: %s", st.Format(r.FinishedFloor), r.FinishedRule)
	for _, c := range r.Survey.Corners {
		p("corner %s raw %s, %s board %s, %s outside %v, floor %s %v, ceiling %s %v", c.Name, st.Bare(c.Raw.X), st.Bare(c.Raw.Y), st.Bare(c.Board.X), st.Bare(c.Board.Y), c.Outside,
			st.Bare(c.BareFloor), c.FloorKnown, st.Bare(c.CeilingY), c.CeilingKnown)
	}
	for _, rd := range r.Survey.Readings {
		p("reading %s %s, to the studs %s, residual %s, closing %s", rd.Name, st.Bare(rd.Measured), st.Bare(rd.ToStud), st.Bare(rd.Residual), st.Bare(rd.Closing))
	}
	for _, f := range r.Faces {
		p("\nface %s, order %d, %.3f sq ft, to tile %.3f sq ft", f.Name, f.Order, f.Board.Area().SqFt(), f.Cut.Area().SqFt())
		for _, ring := range f.Board {
			for _, v := range ring {
				p("  %s, %s then %s", st.Bare(v.P.X), st.Bare(v.P.Y), f.Edges[v.Edge-1].Name)
			}
		}
		for _, e := range f.Edges {
			p("  %s: gap %s, hidden %s, joint %s, runs %v", e.Name, st.Bare(e.Gap), st.Bare(e.Hidden), st.Bare(e.Joint), e.Runs)
		}
		for _, h := range f.Holes {
			p("  hole %s at %s, %s", h.Name, st.Bare(h.Center.X), st.Bare(h.Center.Y))
		}
	}
	p("")
	for _, f := range list {
		p("%s %s, %s line %d: %s | %s", f.Class, f.Code, f.At.Path, f.At.Line, f.Say(st), f.SayMend(st))
	}
	for _, a := range assumed {
		p("assumed, %s: %s (%s)", a.At.Path, a.Say(st), a.Source)
	}
	return b.String()
}

// The same text read with another unit for bare numbers, all lengths having units of their own, gives the same counts.
func TestUnitsOfADocument(t *testing.T) {
	text, err := os.ReadFile("testdata/loft.yaml")
	if err != nil {
		t.Fatal(err)
	}
	inches := shape(t, string(text))
	mm := shape(t, strings.NewReplacer("units: in", "units: mm", "{0: 0,", "{0 mm: 0 mm,").Replace(string(text)))
	if inches != mm {
		t.Errorf("in inches:\n%s\nin millimetres:\n%s", inches, mm)
	}
}

func shape(t *testing.T, text string) string {
	doc, list := document.Read("loft.yaml", []byte(text))
	if list.Stops() {
		t.Fatalf("%+v", list)
	}
	r, _, _ := Solve(doc)
	var b strings.Builder
	for _, f := range r.Faces {
		fmt.Fprintln(&b, f.Name, f.Board, f.Cut, f.Holes)
	}
	for _, f := range r.Faces {
		for _, e := range f.Edges {
			e.At = diag.Place{}
			fmt.Fprintln(&b, f.Name, e)
		}
	}
	return b.String()
}
