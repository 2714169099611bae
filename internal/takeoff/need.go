package takeoff

import (
	"slices"

	"dryfit/internal/catalog"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// need is a line being collected: parts as they are measured on the plan, before a label turns them into goods.
type need struct {
	kind  document.GoodKind
	what  string
	good  document.Good
	named bool
	back  bool
	parts []part
}

// part is one measured share with what may stand in for a label that is silent.
type part struct {
	Part
	typical *catalog.Typical
	coats   int  // that go without saying; 0: one
	told    bool // the coats are the person's own
	fixed   bool // the coats are so many whatever the label says
	area    unit.Area
	trowel  document.Trowel
}

// add puts a measured share on the line of its good.
func (m *maker) add(kind document.GoodKind, what string, good document.Good, named bool, p part) *need {
	if p.Amount.N <= 0 {
		return &need{}
	}
	for _, n := range m.needs {
		if n.kind == kind && n.what == what && n.good.Name == good.Name {
			n.parts = append(n.parts, p)
			return n
		}
	}
	n := &need{kind: kind, what: what, good: good, named: named, parts: []part{p}}
	m.needs = append(m.needs, n)
	return n
}

// lines turns what was measured into what has to be had, for each good and for those it is compared with.
func (m *maker) lines() {
	for _, n := range m.needs {
		m.out.Lines = append(m.out.Lines, m.line(*n, n.good, n.named))
		for _, g := range m.doc.Goods {
			if n.named && g.InsteadOf.Known && g.InsteadOf.V == n.good.Name {
				l := m.line(*n, g, true)
				l.InsteadOf = n.good.Name
				m.out.Lines = append(m.out.Lines, l)
			}
		}
	}
}

func (m *maker) line(n need, g document.Good, named bool) Line {
	l := Line{Kind: n.kind, What: n.what, Good: g.Name, At: g.At, Known: true, Back: n.back}
	var sum unit.Quantity
	for i, p := range n.parts {
		r := m.takes(g, named, p)
		p.Part.Takes, p.Part.Known = r.takes, r.known
		l.Parts = append(l.Parts, p.Part)
		l.Typical = l.Typical || r.typical
		l.Source = joined(l.Source, r.source)
		if !r.known || i > 0 && sum.Of != r.takes.Of {
			l.Known, l.Missing = false, joined(l.Missing, r.missing)
			continue
		}
		sum = unit.Quantity{Of: r.takes.Of, N: sum.N + r.takes.N}
	}
	if l.Known {
		l.Waste = m.waste(g, named, n, sum.Of)
		l.Need = sum.Share(int64(unit.One+l.Waste), int64(unit.One))
		return l
	}
	m.unreckoned(l, g, named)
	return l
}

// unreckoned tells of a line that lacks a figure.
func (m *maker) unreckoned(l Line, g document.Good, named bool) {
	if named {
		m.found(diag.Unchecked, "good-unreckoned", g.At, "not reckoned: how much {0} is needed; {1} is missing", "copy it from the label", diag.T(g.Name), diag.T(l.Missing))
		return
	}
	m.found(diag.Unchecked, "good-unreckoned", diag.Place{Path: "goods"}, "not reckoned: how much {0} is needed; no good is named for it", "add one under goods, with what its label says", diag.T(l.What))
}

// joined adds words that are not there yet.
func joined(s, more string) string {
	switch {
	case more == "" || s == more:
		return s
	case s == "":
		return more
	case slices.Contains(splitWords(s), more):
		return s
	}
	return s + "; " + more
}

func splitWords(s string) []string {
	var out []string
	from := 0
	for i := 0; i+1 < len(s); i++ {
		if s[i] == ';' && s[i+1] == ' ' {
			out, from = append(out, s[from:i]), i+2
		}
	}
	return append(out, s[from:])
}

// waste is what the good's label or the person says is lost, else the usual share; of what is counted nothing is lost.
func (m *maker) waste(g document.Good, named bool, n need, of unit.Dimension) unit.Ratio {
	switch {
	case g.Waste.Known:
		return g.Waste.V
	case of == unit.ByCount:
		return 0
	}
	m.assume(placeOf(g, named), "common practice: 5 to 15 %", "{0} more {1} for what stays in the pail, on the tools and in offcuts", diag.Percent(catalog.Waste), diag.T(nameOf(g, named, n.what)))
	return catalog.Waste
}

func placeOf(g document.Good, named bool) diag.Place {
	if named {
		return g.At
	}
	return diag.Place{Path: "goods"}
}

func nameOf(g document.Good, named bool, what string) string {
	if named {
		return g.Name
	}
	return what
}
