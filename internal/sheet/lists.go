package sheet

import "dryfit/internal/report"

// setting lists the pieces of a face in the order in which they go up.
func (w *wall) setting(f *flow) {
	f.notes("", report.WholeWords(w.face)+".",
		"Cut to: rounded down to the tape so that the piece fits; exact sizes stand beside. Two numbers are the two ends of a taper, the lower or left end first. Sides are those of the tile as it is sold, its length lying.",
		"Measured first: where there is a line, the wall may differ by more than the joint forgives. Take the size at the wall, write it there, cut to it.")
	f.table(report.Pieces(w.p, w.face), 0)
	f.notes("Assumed here", w.assumed()...)
}

// saw lists the cuts of a face in the order of settings.
func (w *wall) saw(f *flow) {
	f.notes("", "Set the fence once, cut every piece on the line. A piece that is measured first is not cut from this list alone.")
	f.table(report.Saw(w.p, w.face), 0)
}
