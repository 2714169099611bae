package sheet

import (
	"strings"

	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
)

// days are the cards of every day that still has work, what the days come to, and the bar chart.
func (b *book) days() {
	if !b.p.Days.Planned {
		return
	}
	f := b.writer(leaf{title: "Days", detail: "What to do when, and what waits", paper: b.paper.Paper})
	f.paragraph(report.DaysAnswer(b.p), parts.Large, true)
	f.table(report.DayFacts(b.p), 0)
	if clips := report.ClipWords(b.p); clips != "" {
		f.notes("", clips)
	}
	f.notes("Why it does not end earlier", report.CausesOf(b.p)...)
	for _, c := range report.DayCards(b.p) {
		if c.When != "done" {
			f.card(c)
		}
	}
	f.notes("While it hardens", report.MeanwhileOf(b.p)...)
	f.table(report.Hardening(b.p), 0)
	b.bars()
}

// card is one day: a line for each session, with room to tick it off.
func (f *flow) card(c report.DayCard) {
	t := report.Table{Title: c.Title, Columns: []report.Column{{Head: "Done"}, {Head: "When"}, {Head: "Job"}, {Head: "Who"}, {Head: "Where"}, {Head: "Mind"}}}
	if c.When != "" {
		t.Title += ": " + c.When
	}
	for _, w := range c.Work {
		notes := w.Notes
		if w.Part != "" {
			notes = append([]string{sentence(w.Part)}, notes...)
		}
		done := ""
		if w.Done {
			done = "done"
		}
		t.Rows = append(t.Rows, []string{done, w.Time, w.Job, w.Who, w.Place, strings.Join(notes, "\n")})
	}
	f.table(t, 0)
	if len(c.Waiting) > 0 {
		f.notes("Waiting", c.Waiting...)
	}
}

func sentence(s string) string { return capital(s) + "." }
