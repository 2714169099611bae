package takeoff

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/fit"
	"dryfit/internal/unit"
)

// fixtures lists the small parts that fixtures take and none comes with, each as what was fitted asks for it.
func (m *maker) fixtures(parts []fit.Part) {
	for _, p := range parts {
		g, named := m.smallPart(p)
		what := p.Kind.String()
		if !named {
			what += m.sized(p)
		}
		m.add(p.Kind, what, g, named, part{Part: Part{For: p.For + m.asked(p), Amount: unit.Count(pieces(p.Kind))}})
	}
}

// pieces is how many of a part one fixture takes: a WC is held by two bolts.
func pieces(k document.GoodKind) int {
	if k == document.WCBolts {
		return 2
	}
	return 1
}

// smallPart is the good for a part: the smallest whose size suits, else one that tells no size, else one that is told not to suit.
func (m *maker) smallPart(p fit.Part) (best document.Good, named bool) {
	rank := -1
	for _, g := range m.doc.Goods {
		if g.Kind != p.Kind || g.InsteadOf.Known || g.InsteadOf.Unknown {
			continue
		}
		r := suits(p, g)
		if r > rank || r == rank && r == suitsWell && g.Size.V < best.Size.V {
			best, rank, named = g, r, true
		}
	}
	if named {
		m.tellSize(p, best, rank)
	}
	return best, named
}

// How well a good suits a part.
const (
	suitsNot = iota
	suitsUnknown
	suitsWell
)

func suits(p fit.Part, g document.Good) int {
	switch {
	case !g.Size.Known || len(p.Missing) > 0:
		return suitsUnknown
	case p.LeastKnown && g.Size.V < p.Least || p.MostKnown && g.Size.V > p.Most:
		return suitsNot
	}
	return suitsWell
}

// tellSize tells of a good that is too short or too large, and of a size that is not known where one is asked for.
func (m *maker) tellSize(p fit.Part, g document.Good, rank int) {
	limits := p.LeastKnown || p.MostKnown
	switch {
	case rank == suitsNot:
		m.found(diag.Look, "part-unsuited", g.Size.At, "{0} is {1}; {2} {3} must be{4}", "order one that is", diag.T(g.Name), diag.F(g.Size.V), diag.T("the "+p.Kind.String()), diag.T(p.For), diag.T(m.within(p)))
	case len(p.Missing) > 0:
		m.found(diag.Unchecked, "part-unchecked", p.At, "not checked: whether {0} suits, {1}; {2} missing", "measure it or look it up on the data sheet, and write it", diag.T(g.Name), diag.T(p.For), diag.T(missingWords(p)))
	case limits && !g.Size.Known:
		m.found(diag.Unchecked, "part-unchecked", g.At, "not checked: whether {0} suits, {1}; its size is missing, and it must be{2}", "copy its size from the shelf", diag.T(g.Name), diag.T(p.For), diag.T(m.within(p)))
	}
}

func missingWords(p fit.Part) string {
	var out []string
	for _, path := range p.Missing {
		out = append(out, fit.Words(path))
	}
	if len(out) == 1 {
		return out[0] + " is"
	}
	return strings.Join(out, ", ") + " are"
}

// sized says which size a part has to have, behind its name.
func (m *maker) sized(p fit.Part) string {
	if r := m.within(p); r != "" {
		return "," + r
	}
	return ""
}

// asked says for what line of the reckoning a size is asked.
func (m *maker) asked(p fit.Part) string {
	switch r := m.within(p); {
	case len(p.Missing) > 0:
		return "; which size is not known, " + missingWords(p) + " missing"
	case r != "":
		return ":" + r
	}
	return ""
}

// within words the sizes that do, rounded to the safe side as finely as a tape shows.
func (m *maker) within(p fit.Part) string {
	style := unit.DefaultStyle(m.doc.Units)
	say := style.Format
	least, most := upTo(p.Least, style.Mark), p.Most/max(1, style.Mark)*max(1, style.Mark)
	switch {
	case p.LeastKnown && p.MostKnown && p.Least == p.Most:
		return " " + style.Fine().Format(p.Least)
	case p.LeastKnown && p.MostKnown:
		return " " + say(least) + " to " + say(most)
	case p.LeastKnown:
		return " " + say(least) + " or more"
	case p.MostKnown:
		return " " + say(most) + " or less"
	}
	return ""
}

// upTo rounds a length up to a mark of the tape.
func upTo(l, mark unit.Length) unit.Length {
	if mark <= 0 {
		return l
	}
	return unit.Length(up(l, mark)) * mark
}
