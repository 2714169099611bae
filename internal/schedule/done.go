package schedule

import (
	"strings"

	"dryfit/internal/calendar"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// readDone fixes what has happened.
func (m *maker) readDone() {
	for _, d := range m.days.Done {
		for _, i := range m.refers(document.Name{Text: d.Name, At: d.At}) {
			m.tasks[i].done, m.tasks[i].marked = d, true
			m.happened(&m.tasks[i], d)
		}
	}
	m.imply()
	m.setNow()
	for i := range m.tasks {
		if m.tasks[i].marked || m.tasks[i].implied {
			m.settle(i)
		}
	}
}

// happened works out start and end from what was noted. What was started and neither finished nor took any time is under way.
func (m *maker) happened(t *task, d document.Done) {
	t.State = Done
	took := d.Took.Or(t.Work)
	switch {
	case d.Started.Known && d.Finished.Known:
		t.Start, t.End = m.opening(d.Started.V), m.closing(d.Finished.V)
	case d.Started.Known && d.Took.Known:
		t.Start = m.opening(d.Started.V)
		t.End = t.Start.Plus(took)
	case d.Finished.Known:
		t.End = m.closing(d.Finished.V)
		t.Start = t.End.Plus(-took)
	case d.Started.Known:
		t.Start, t.State = m.opening(d.Started.V), Begun
	default:
		return
	}
	t.Started = true
	t.End = max(t.Start, t.End)
	if d.Took.Known {
		t.Work = took
	}
}

// imply takes as done what is not marked, though something that comes after it is: it ended when that began at the latest. Where that is not
// known, when it ended is not known either.
func (m *maker) imply() {
	for again := true; again; {
		again = false
		for _, l := range m.links {
			from, to := &m.tasks[l.from], &m.tasks[l.to]
			if to.State != Planned && (from.State != Done || from.implied) && from.imply(to) {
				again = true
			}
		}
	}
	m.tellImplied()
}

// imply takes a task as done for one that comes after it and was begun; false where that says nothing new.
func (t *task) imply(by *task) bool {
	if t.implied && (!by.Started || t.Started && t.End <= by.Start) {
		return false
	}
	t.implied, t.State = true, Done
	if by.Started {
		t.Started, t.Start, t.End = true, by.Start, by.Start
	}
	return true
}

func (m *maker) tellImplied() {
	var names []string
	for i := range m.tasks {
		if m.tasks[i].implied {
			names = append(names, m.tasks[i].Name)
		}
	}
	if names != nil {
		m.found(diag.Look, "done-unmarked", m.days.Done[0].At, "not marked done, though what comes after is: {0}; taken as done before it", "mark them too, with their own times: what hardens counts from there", diag.T(strings.Join(names, ", ")))
	}
}

// opening and closing give a date without a time of day the first or the last hour of work on it.
func (m *maker) opening(w document.Moment) calendar.Moment {
	if s := m.hoursOn(w); len(s) > 0 && !w.Timed {
		return w.At.Date().At(s[0].From)
	}
	return w.At
}

func (m *maker) closing(w document.Moment) calendar.Moment {
	s := m.hoursOn(w)
	switch {
	case w.Timed:
		return w.At
	case len(s) > 0:
		return w.At.Date().At(s[len(s)-1].To)
	}
	return w.At.Date().At(unit.Day)
}

func (m *maker) hoursOn(w document.Moment) []calendar.Span { return m.people[0].hours.On(w.At.Date()) }

// setNow finds from when the rest is planned: as written, but not before what has happened; else from the end of the last thing done,
// or the first day of work.
func (m *maker) setNow() {
	first, last, any := calendar.Moment(0), calendar.Moment(0), false
	for i := range m.tasks {
		t := &m.tasks[i]
		if !t.Started {
			continue
		}
		if !any {
			first, last, any = t.Start, t.Start, true
		}
		first, last = min(first, t.Start), max(last, t.Start)
		if t.State == Done {
			last = max(last, t.End)
		}
	}
	m.now = m.days.Starts.V.At(0)
	if m.days.Now.Known {
		m.now = m.days.Now.V.At
	} else if any {
		m.now = max(m.now, last)
	}
	if any && last > m.now {
		m.found(diag.Look, "done-later", m.days.Now.At, "something is marked that happened at {0}, after {1}, from when the rest is planned", "write a later plan from, or mend the mark",
			diag.T(last.Say()), diag.T(m.now.Say()))
		m.now = last
	}
	m.zero = m.begin().Date().At(0)
	if any {
		m.zero = min(m.zero, first.Date().At(0))
	}
}

// settle gives what was done at an unknown time the latest that it can have, and what is under way what is left of it.
func (m *maker) settle(i int) {
	t := &m.tasks[i]
	switch {
	case t.State == Done && !t.Started:
		t.End = m.latestEnd(i)
		t.Start = t.End
		if t.implied {
			return
		}
		m.found(diag.Unchecked, "done-when", t.done.At, "not checked: when {0} was done is missing; what hardens after it is counted from {1}", "write started or finished", diag.T(t.Name), diag.T(t.End.Say()))
	case t.State == Begun:
		if m.worked(t) >= t.Work {
			m.found(diag.Look, "overdue", t.done.At, "{0} should be finished by now: {1} of work were planned", "mark it finished, or say how long it takes under pace", diag.T(t.Name), diag.Time(t.Work))
		}
	case t.done.Took.Known:
		m.comparePace(t)
	}
}

// latestEnd is when a task of which no time is told had ended at the latest: by now, and before what comes after it began.
func (m *maker) latestEnd(i int) calendar.Moment {
	last := m.now
	for _, l := range m.links {
		if to := &m.tasks[l.to]; l.from == i && to.State != Planned && to.Started {
			last = min(last, to.Start)
		}
	}
	return last
}

// worked is the time in which the hands had hours since a task was begun.
func (m *maker) worked(t *task) (sum unit.Minutes) {
	for _, s := range m.people[0].hours.Between(t.Start, m.now) {
		sum += s.To.Since(s.From)
	}
	return sum
}

// comparePace tells the user's own pace where a job took much more or less than planned: a quarter (our own).
func (m *maker) comparePace(t *task) {
	tr, ok := traitOf(t.Kind)
	if !ok || t.Own {
		return
	}
	planned := max(tr.least, m.hours(&t.Task))
	took := t.done.Took.V
	if diff := max(planned-took, took-planned); 4*diff <= planned {
		return
	}
	m.found(diag.Note, "own-pace", t.done.Took.At, "{0} took {1}; planned were {2}", "if that is your pace, write it under pace, and the rest is planned by it", diag.T(t.Name), diag.Time(took), diag.Time(planned))
}
