package sheet

import (
	"dryfit/internal/report"
)

// lists are the pieces of a face: in the order of setting for the wall, in the order of settings for the saw.
func (w *wall) lists() {
	worked, _ := report.Worked(w.face)
	if len(worked) == 0 {
		return
	}
	f := w.writer(leaf{title: w.name, detail: "Pieces in the order of setting", paper: w.paper.Landscape(), caution: silicaCaution})
	f.notes("", report.WholeWords(w.face)+".",
		"Cut to: rounded down to the tape so that the piece fits; exact sizes stand beside. Two numbers are the two ends of a taper, the lower or left end first. Sides are those of the tile as it is sold, its length lying.",
		"Measured first: where there is a line, the wall may differ by more than the joint forgives. Take the size at the wall, write it there, cut to it.")
	f.table(report.Pieces(w.p, w.face), 0)
	g := w.writer(leaf{title: w.name, detail: "Cuts in the order of saw settings", paper: w.paper.Paper, caution: silicaCaution})
	g.notes("", "Set the fence once, cut every piece on the line. A piece that is measured first is not cut from this list alone.")
	g.table(report.Saw(w.p, w.face), 0)
}
