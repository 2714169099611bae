package sheet

import (
	"fmt"

	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
)

// findings lists what stops work first, then what to look at, what is not checked, and notes; after them what was
// assumed.
func (b *book) findings() {
	f := b.writer(leaf{title: "Findings", detail: "What stops, is not checked, assumed", paper: b.paper.Paper})
	stops, looks, unchecked, notes := report.Tally(b.p.Findings)
	f.paragraph(fmt.Sprintf("Stops work: %d. To look at: %d. Not checked: %d. Notes: %d. What is not listed as checked was not checked.", stops, looks, unchecked, notes), parts.Small, true)
	f.table(report.Findings(b.p), 0)
	f.table(report.Assumed(b.p), 0)
}
