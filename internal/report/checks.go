package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/fit"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// CheckLine is one clearance or connection in words.
type CheckLine struct {
	ID      string
	Path    string // of what is checked
	Group   string
	State   string // "misses", "not checked", "fits", "told"
	Words   string // "basin tap: outlet above the rim"
	Value   string
	Limit   string // "at least 1 in"
	Margin  string // "1/4 in to spare"
	Source  string
	Mend    string
	Missing []MissingFact
}

// MissingFact is a fact without which a check could not be made.
type MissingFact struct {
	Words string
	Path  []string
}

// checkOrder is how a person reads states: what is wrong, what nobody knows, then the rest.
var checkOrder = map[fit.State]int{fit.Misses: 0, fit.NotChecked: 1, fit.Fits: 2, fit.Told: 3}

// Checks are all clearances and connections: what misses first, what is not checked next.
func Checks(p plan.Plan) []CheckLine {
	var out []CheckLine
	for _, k := range sortedChecks(p.Fit.Checks) {
		out = append(out, checkLine(p.Style, k))
	}
	return out
}

func sortedChecks(all []fit.Check) []fit.Check {
	out := slices.Clone(all)
	slices.SortStableFunc(out, func(a, b fit.Check) int { return cmp.Compare(checkOrder[a.State], checkOrder[b.State]) })
	return out
}

func checkLine(s unit.Style, k fit.Check) CheckLine {
	l := CheckLine{ID: k.ID, Path: k.At.Path, Group: k.Group, State: k.State.String(), Source: k.Cite,
		Words: worded(s, k.What, k.Values), Mend: worded(s, k.Mend, k.Values)}
	for _, m := range k.Missing {
		l.Missing = append(l.Missing, MissingFact{fit.Words(m), strings.Split(m, " > ")})
	}
	if k.State == fit.NotChecked {
		return l
	}
	l.Value = k.Value.Say(s)
	if k.State != fit.Told {
		l.Limit, l.Margin = checkLimit(s, k), checkMargin(s, k)
	}
	return l
}

func worded(s unit.Style, template string, values []diag.Value) string {
	return diag.Finding{Text: template, Values: values}.Say(s)
}

func checkLimit(s unit.Style, k fit.Check) string {
	switch {
	case !k.Length:
		return k.Limit.Say(s)
	case k.Most:
		return "at most " + k.Limit.Say(s)
	}
	return "at least " + k.Limit.Say(s)
}

// checkMargin is what is left to the limit. A margin finer than a fine mark is shown exactly: rounding it would say that nothing is left or missing.
func checkMargin(s unit.Style, k fit.Check) string {
	switch {
	case !k.Length:
		return ""
	case k.Margin == 0:
		return "nothing to spare"
	case k.Margin > 0:
		return Fine(s, k.Margin) + " to spare"
	case k.Most:
		return Fine(s, -k.Margin) + " too much"
	}
	return Fine(s, -k.Margin) + " short"
}

// Fine words a length that decides something: to 1/64 in or 0.1 mm, and exactly where that would show it as nothing.
func Fine(s unit.Style, l unit.Length) string {
	if l.Abs() <= unit.Inch/64 {
		return diag.X(l).Say(s)
	}
	return diag.F(l).Say(s)
}

// CheckTable is the same for paper and files.
func CheckTable(p plan.Plan) Table {
	return checkTable(Checks(p), func(CheckLine) bool { return true })
}

func checkTable(all []CheckLine, of func(CheckLine) bool) Table {
	t := Table{Title: "Clearances and connections", Columns: numbers(text("", "What", "Is", "Asked", "Left", "Asked by"), 2),
		Empty: "Nothing is placed yet, so nothing is checked."}
	for _, l := range all {
		if !of(l) {
			continue
		}
		value := l.Value
		if l.State == fit.NotChecked.String() {
			value = MissingWords(l)
		}
		t.Rows = append(t.Rows, []string{l.State, l.Words, value, l.Limit, l.Margin, l.Source})
	}
	return t
}

// MissingWords says which facts a check lacks.
func MissingWords(l CheckLine) string {
	var words []string
	for _, m := range l.Missing {
		words = append(words, m.Words)
	}
	return list(words) + " missing"
}

// CheckCount counts checks by what came of them.
type CheckCount struct{ Fits, Misses, NotChecked, Told int }

// CountChecks counts them.
func CountChecks(p plan.Plan) CheckCount {
	var n [fit.Told + 1]int
	for _, k := range p.Fit.Checks {
		n[k.State]++
	}
	return CheckCount{n[fit.Fits], n[fit.Misses], n[fit.NotChecked], n[fit.Told]}
}

// FitAnswer says whether all fits: what is not known stands before what fits.
func FitAnswer(p plan.Plan) string {
	n := CountChecks(p)
	if n.Fits+n.Misses+n.NotChecked == 0 {
		return "Nothing is placed yet, so nothing is checked."
	}
	first := Count(n.NotChecked, "clearance is", "clearances are") + " not checked, "
	if n.NotChecked == 0 {
		first = ""
	}
	return fmt.Sprintf("%s%s assumed; %s. %d of %d clearances fit.", first, Count(p.FitAssumed, "fact is", "facts are"), missWords(n.Misses), n.Fits, n.Fits+n.Misses+n.NotChecked)
}

func missWords(n int) string {
	if n == 0 {
		return "none is missed"
	}
	return Count(n, "does not fit", "do not fit")
}

// Spots is the rough-in card of one wall: every point from the level line and from the edge of a stud, for work in an open wall.
func Spots(p plan.Plan, wall string) Table {
	s := p.Style
	t := Table{Title: "Rough-in, " + wall, Empty: "Nothing is roughed in on this wall.",
		Columns: numbers(text("What", "Kind", "From the studs at the left corner", "Its edges from there", "From a stud's edge", "From the level line", "Over the finished floor", "Build-up to come"), 2, 3, 5, 6, 7)}
	for _, c := range p.Fit.Card {
		if c.Wall == wall {
			t.Rows = append(t.Rows, []string{c.Name, c.What, s.Format(c.FromCorner) + " (" + c.Corner + ")", spotEdges(p, c), fromStud(s, c), level(s, c.Level), s.Format(c.OverFloor), Fine(s, c.BuildUp)})
		}
	}
	return t
}

// spotEdges tells the left and the right edge of a pipe or a box, from the studs at the left corner: where no center can be seen, the tape goes to
// an edge.
func spotEdges(p plan.Plan, c fit.Spot) string {
	wide := SpotWidth(p, c)
	if wide == 0 {
		return ""
	}
	left := c.FromCorner - wide/2
	return p.Style.Bare(left) + " and " + p.Style.Bare(left+wide)
}

// SpotWidth is the diameter of a pipe or the width of a box of the card; 0 for what has neither, or where it is not known.
func SpotWidth(p plan.Plan, c fit.Spot) unit.Length {
	if s, ok := p.Fit.Places.Stub(c.Name); ok && s.Doc.At == c.At {
		return s.Doc.Diameter.Or(0)
	}
	if b, ok := p.Fit.Places.Box(c.Name); ok && b.Doc.At == c.At && b.Placed {
		return b.Rect.W()
	}
	return 0
}

func fromStud(s unit.Style, c fit.Spot) string {
	switch {
	case c.Stud == "":
		return "no stud is recorded"
	case c.FromStud < 0:
		return s.Format(-c.FromStud) + " left of " + c.Stud
	}
	return s.Format(c.FromStud) + " right of " + c.Stud
}

func level(s unit.Style, l unit.Length) string {
	switch {
	case l < 0:
		return s.Format(-l) + " below"
	case l > 0:
		return s.Format(l) + " above"
	}
	return "on it"
}

// SpotWalls are the walls that have something roughed in, in the order of the card.
func SpotWalls(p plan.Plan) []string {
	var out []string
	for _, c := range p.Fit.Card {
		if !slices.Contains(out, c.Wall) {
			out = append(out, c.Wall)
		}
	}
	return out
}
