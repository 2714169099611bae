package sheet

import (
	"dryfit/internal/report"
	"dryfit/internal/tiling"
)

// rods are the gauge rods (story poles) of a face: where each course and column begins and ends, to be marked on a
// batten in one go from its datum; drawn as that batten, to scale.
func (w *wall) rods(f *flow) {
	f.notes("", "Mark all positions from the datum and none from the mark before: then no error grows. Each is rounded to the tape by itself; "+
		"the differences are of the rounded positions, so they add up.", "Check the rod against the wall at both ends before the first tile is set.")
	for _, z := range w.face.Fields {
		if all := report.Courses(z); len(all) > 0 {
			w.rod(f, report.CourseRod(w.p, w.site, z), w.courseBatten(all))
		}
		for _, r := range report.Columns(z) {
			t := report.ColumnRod(w.p, w.site, r)
			if len(w.face.Fields) > 1 {
				t.Title += ", " + z.Name
			}
			w.rod(f, t, w.columnBatten(r.Spans))
		}
	}
}

func (w *wall) hasRods() bool {
	for _, z := range w.face.Fields {
		if hasRuns(z) {
			return true
		}
	}
	return false
}

func hasRuns(z tiling.Field) bool { return len(report.Courses(z)) > 0 || len(report.Columns(z)) > 0 }
