package takeoff

import (
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/fit"
	"dryfit/internal/unit"
)

func sized(name string, kind document.GoodKind, size unit.Length) document.Good {
	return document.Good{Name: name, Kind: kind, Size: document.Value[unit.Length]{V: size, Known: size > 0}}
}

// What is bought is what suits the fit: the shortest line that reaches, the tailpiece that hangs right; what suits not or is not known is told.
func TestPartsAreWhatFits(t *testing.T) {
	line := fit.Part{Kind: document.SupplyLine, For: "from stop to WC", Least: 11 * in, LeastKnown: true}
	tail := fit.Part{Kind: document.Tailpiece, For: "of drain", Least: 7 * in, LeastKnown: true, Most: 10 * in, MostKnown: true}
	lost := fit.Part{Kind: document.Tailpiece, For: "of drain", Missing: []string{"wastes > drain > trap > drop"}}
	nine, twelve, twenty := sized("short", document.SupplyLine, 9*in), sized("middle", document.SupplyLine, 12*in), sized("long", document.SupplyLine, 20*in)
	for _, c := range []struct {
		what  string
		part  fit.Part
		goods []document.Good
		good  string
		line  string
		code  string
	}{
		{"the shortest that reaches", line, []document.Good{twenty, nine, twelve}, "middle", "supply line", ""},
		{"none reaches", line, []document.Good{nine}, "short", "supply line", "part-unsuited"},
		{"a size that is not told", line, []document.Good{nine, sized("loose", document.SupplyLine, 0)}, "loose", "supply line", "part-unchecked"},
		{"no good at all", line, nil, "", "supply line, 11 in or more", ""},
		{"too long", tail, []document.Good{sized("tube", document.Tailpiece, 12*in)}, "tube", "tailpiece", "part-unsuited"},
		{"just as long as it may be", tail, []document.Good{sized("tube", document.Tailpiece, 10*in)}, "tube", "tailpiece", ""},
		{"no good, between two lengths", tail, nil, "", "tailpiece, 7 in to 10 in", ""},
		{"a fact is missing", lost, []document.Good{sized("tube", document.Tailpiece, 10*in)}, "tube", "tailpiece", "part-unchecked"},
	} {
		p, found, _ := Make(From{Document: document.Room{Goods: c.goods}, Parts: []fit.Part{c.part}})
		l := p.Lines[0]
		code := ""
		for _, f := range found {
			if f.Class != diag.Unchecked || f.Code == "part-unchecked" {
				code = f.Code
				break
			}
		}
		if l.Good != c.good || l.What != c.line || l.Need != unit.Count(1) || code != c.code {
			t.Errorf("%s: %q of %q, %v, %q; want %q of %q, %q", c.what, l.What, l.Good, l.Need, code, c.line, c.good, c.code)
		}
	}
}
