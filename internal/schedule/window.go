package schedule

import (
	"dryfit/internal/cure"
	"dryfit/internal/diag"
	"dryfit/internal/opt/sched"
	"dryfit/internal/unit"
)

// lapseMissed finds windows that have shut already: the coat before is done, and from now on its time is over.
func (m *maker) lapseMissed() {
	for i := range m.links {
		l := &m.links[i]
		from, to := &m.tasks[l.from], &m.tasks[l.to]
		switch {
		case l.most == 0 || from.State != Done:
		case to.State == Planned && from.End.Plus(l.most) < m.now:
			m.lapse(i)
			m.found(diag.Look, "window-missed", from.done.At, "{0} had to begin within {1} after {2}, by {3}: it is sanded first", "sand the whole face dull, clean off the dust, then coat",
				diag.T(to.Name), diag.Time(l.most), diag.T(from.Name), diag.T(from.End.Plus(l.most).Say()))
		}
	}
}

// lapse gives a window up: there is sanding before the next coat.
func (m *maker) lapse(i int) {
	l := &m.links[i]
	l.lapsed = true
	from, to := l.from, l.to
	t := &m.tasks[to]
	sand := m.add(Sand, t.Subject, t.At, Basis{})
	m.tasks[sand].Name, m.tasks[sand].Part, m.tasks[sand].Shop = nameOf(Sand, "before "+t.Name, 0), t.Part, t.Shop
	m.tasks[sand].allowed = t.allowed
	w := wait{what: "it dries", source: "as written"}
	if l.wait != nil {
		w = *l.wait
	}
	m.waits(from, sand, w)
	m.after(sand, to)
}

// lapseUnmet gives up the one window without which there is a plan, or else all that are still open, and tells of it; false
// where there is none.
func (m *maker) lapseUnmet() bool {
	open := m.openWindows()
	for _, i := range open {
		m.links[i].lapsed = true
		q := m.newProblem(m.horizon())
		q.fill(attempt{})
		r := sched.Solve(&q.Problem, sched.Options{Steps: firstSteps})
		m.links[i].lapsed = false
		if r.Starts != nil {
			open = []int{i}
			break
		}
	}
	for _, i := range open {
		l := m.links[i]
		m.lapse(i)
		m.found(diag.Look, "window-unmet", m.tasks[l.to].At, "{0} can not begin within {1} after {2} in these hours: it is sanded first", "give hours in that window, or count on the sanding",
			diag.T(m.tasks[l.to].Name), diag.Time(l.most), diag.T(m.tasks[l.from].Name))
	}
	return len(open) > 0
}

func (m *maker) openWindows() (open []int) {
	for i, l := range m.links {
		if l.most > 0 && !l.lapsed && m.tasks[l.to].State != Done {
			open = append(open, i)
		}
	}
	return open
}

// checkWarmth tells of waits that run in a room that is colder or warmer than the label allows, or in which nothing hardens.
func (m *maker) checkWarmth(w wait, task *Task, from, to unit.Minutes) {
	if len(m.temps) == 0 {
		return
	}
	coldest, warmest := m.temps.Range(from, to)
	switch {
	case m.long(w, task.End) == cure.Never:
		m.found(diag.Stop, "too-cold", task.At, "at {0} nothing hardens after {1}", "heat the room", diag.Temp(coldest), diag.T(task.Name))
	case w.warmth != nil && coldest < w.warmth.from:
		m.found(diag.Look, "below-label", w.warmth.at, "{0} after {1} at {2}: the label allows no less than {3}", "heat the room and the surface before and while it cures", diag.T(w.what), diag.T(task.Name), diag.Temp(coldest), diag.Temp(w.warmth.from))
	case w.warmth != nil && warmest > w.warmth.to:
		m.found(diag.Look, "above-label", w.warmth.at, "{0} after {1} at {2}: the label allows no more than {3}", "cool the room, or work in the morning", diag.T(w.what), diag.T(task.Name), diag.Temp(warmest), diag.Temp(w.warmth.to))
	}
}
