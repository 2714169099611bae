package sheet

import (
	"fmt"
	"strings"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
	"dryfit/internal/site"
)

// overview draws the room as measured, the five facts and what the readings say; rest are the sheets that follow the n
// of the overview itself.
func (b *book) overview(rest []*leaf, n int) {
	f := b.writer(leaf{title: "Overview", detail: "The room as measured", paper: b.paper.Paper})
	if len(b.p.Room.Survey.Corners) > 2 && b.p.Room.Survey.Fixed {
		f.roomPlan()
	}
	f.facts()
	f.table(report.Readings(b.p), 0)
	f.notes("", "The readings: "+report.Verdict(b.p)+". Readings that agree with each other can all be wrong in the same way.",
		"Correction: what the adjustment adds to a reading. Against the others: the reading less what all the others make it. Standardised: over 3 is suspect.")
	f.table(report.Corners(b.p), 0)
	f.heights()
	f.table(sheetList(rest, n), 0)
}

// facts are the five that a person wants first.
func (f *flow) facts() {
	t := report.Table{Title: "First of all", Columns: []report.Column{{Head: "Question"}, {Head: "Answer"}}}
	for _, x := range report.Facts(f.p) {
		t.Rows = append(t.Rows, []string{x.Question, strings.ReplaceAll(x.Answer, "; ", "\n")})
	}
	f.table(t, 0)
}

// heights says what "above the finished floor" counts from.
func (f *flow) heights() {
	if !f.p.Room.FinishedKnown {
		f.notes("Heights", "Where the finished floor lies is not known, so nothing is given above it.")
		return
	}
	f.notes("Heights", fmt.Sprintf("Above the finished floor counts from %s: %s.", f.p.Room.FinishedRule, report.FromLevel(f.p.Style, f.p.Room.FinishedFloor)))
}

func sheetList(rest []*leaf, n int) report.Table {
	t := report.Table{Title: "Sheets", Columns: []report.Column{{Head: "Sheet", Align: report.Right}, {Head: "What"}, {Head: "Shows"}, {Head: "Scale"}}}
	t.Rows = append(t.Rows, []string{pages(1, n), "Overview", "The room as measured", ""})
	for i := 0; i < len(rest); {
		k := i + 1
		for k < len(rest) && rest[k].title == rest[i].title && rest[k].detail == rest[i].detail {
			k++
		}
		t.Rows = append(t.Rows, []string{pages(n+i+1, n+k), rest[i].title, rest[i].detail, rest[i].scale})
		i = k
	}
	return t
}

func pages(from, to int) string {
	if from == to {
		return fmt.Sprint(from)
	}
	return fmt.Sprintf("%d–%d", from, to)
}

// roomPlan draws the outline at the top of the page.
func (f *flow) roomPlan() {
	const lettering = 12 * draw.MM // round the outline, for names
	bounds := outline(f.p.Room.Survey.Corners, boardPoint).Bounds()
	whole := f.room
	whole.Lo.Y = whole.Hi.Y - whole.H()*58/100
	inner := whole.Inset(lettering)
	v := view{n: largest(bounds.W(), bounds.H(), inner), of: bounds.Min}
	v.at = draw.At(inner.Lo.X+(inner.W()-v.um(bounds.W()))/2, inner.Hi.Y-v.um(bounds.H()))
	whole.Lo.Y = v.at.Y - lettering
	d := &roomDrawing{flow: f, view: v, crowd: crowd{within: whole}}
	f.now.scale = v.words()
	f.now.add(d.items()...)
	f.room.Hi.Y = whole.Lo.Y - gap
	f.planKey()
}

func (f *flow) planKey() {
	f.paragraph("Thick: board. Thin: finished tile face where tile is set. Lengths are of the board, adjusted; doors and windows as gaps in it.", parts.Small, false)
}

// corner finds a corner by its name.
func (b *book) corner(name string) (site.Corner, bool) {
	for _, c := range b.p.Room.Survey.Corners {
		if c.Name == name {
			return c, true
		}
	}
	return site.Corner{}, false
}
