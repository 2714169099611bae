package sheet

import (
	"slices"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
)

// pipeCaution stands on every sheet that is taken to pipes and wires.
const pipeCaution = "Before a pipe is opened: shut the water off and let it run dry. Before a box is opened: switch its breaker off and prove the wires dead with a tester proven just before. " +
	"Two lift a WC or a heavy basin. Licensed plumbers and electricians decide what is connected, and test it."

// fit shows whether all fits: the checks, the plan, each wall with its heights, each basin from the side, and what is roughed in.
func (b *book) fit() {
	if len(b.p.Fit.Checks)+len(b.p.Fit.Card) == 0 {
		return
	}
	b.checks()
	b.clearances()
	for _, w := range report.FitWalls(b.p) {
		b.frontElevation(w)
	}
	for _, x := range b.p.Fit.Places.Basins {
		b.sideSection(x.Name)
	}
	for _, w := range report.SpotWalls(b.p) {
		b.roughIn(w)
	}
}

// checks lists all clearances, what misses and what is not known first, then what would mend it and how near the rest is.
func (b *book) checks() {
	f := b.writer(leaf{title: "Fit", detail: "Clearances, what mends them", paper: b.paper.Landscape(), caution: pipeCaution})
	f.paragraph(report.FitAnswer(b.p), parts.Small, true)
	f.remedies()
	f.table(report.CheckTable(b.p), 0)
	if b.mended {
		f.table(report.Margins(b.p, b.mends, len(b.mends.Margins)), 0)
	}
}

// remedies tells for each check that misses what would mend it.
func (f *flow) remedies() {
	if !f.mended {
		return
	}
	if all, ok := report.Together(f.p, f.mends); ok {
		f.notes("The least that mends all", append([]string{all.Words + "."}, all.Then...)...)
	}
	for _, l := range report.Checks(f.p) {
		var lines []string
		for _, r := range report.Remedies(f.p, f.mends, l.ID) {
			lines = append(lines, r.Words+f.then(r))
		}
		f.notes(capital(l.Words), lines...)
	}
}

// then says what a remedy spoils. What else reads otherwise after a change that spoils nothing is told with the joint change alone.
func (f *flow) then(r report.Remedy) string {
	if len(r.Then) == 0 || len(r.Ops) > 0 {
		return ""
	}
	out := ": "
	for i, t := range r.Then {
		if i > 0 {
			out += "; "
		}
		out += t
	}
	return out + "."
}

// notKnown says below a drawing what is not in it, and why.
func (f *flow) notKnown(missing []string) {
	slices.Sort(missing)
	missing = slices.Compact(missing)
	if len(missing) == 0 {
		return
	}
	words := "Not in the drawing, because it is not known: "
	for i, m := range missing {
		if i > 0 {
			words += ", "
		}
		words += m
	}
	f.paragraph(words+".", parts.Small, false)
}

// fitBelow is what is kept below a drawing of the fit for its words.
const fitBelow = 30 * draw.MM
