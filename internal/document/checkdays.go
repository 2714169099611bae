package document

import "dryfit/internal/diag"

// checkDays holds what is written of days against itself. Which jobs there are only the schedule knows.
func (r *reader) checkDays(d *Days) {
	for _, j := range d.Own {
		if j.Waits.Known && j.Within.Known && j.Within.V < j.Waits.V {
			r.stop("window-shut", j.Within.At, "what comes after {0} would have to begin within {1}, but waits {2}", "make within longer than waits, or take one out",
				diag.T(j.Name), diag.Time(j.Within.V), diag.Time(j.Waits.V))
		}
	}
	for _, d := range d.Done {
		r.checkDone(d)
	}
}

func (r *reader) checkDone(d Done) {
	if !d.Started.Known || !d.Finished.Known {
		return
	}
	long := d.Finished.V.At.Since(d.Started.V.At)
	switch {
	case long < 0:
		r.stop("done-backward", d.Finished.At, "{0} was finished before it was started", "check both dates", diag.T(d.Name))
	case d.Took.Known && d.Started.V.Timed && d.Finished.V.Timed && d.Took.V > long:
		r.found.Add(diag.Look, "done-longer", d.Took.At, "{0} took {1} of work, but only {2} passed from start to finish", "check the times; hours of two people count once",
			diag.T(d.Name), diag.Time(d.Took.V), diag.Time(long))
	}
}
