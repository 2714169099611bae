package schedule

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/opt/sched"
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
			a := m.afresh(i)
			m.found(diag.Look, "window-missed", from.done.At, "{0} had to begin within {1} after {2}, by {3}: "+a.first, a.mend,
				diag.T(m.tasks[m.links[i].to].Name), diag.Time(m.links[i].most), diag.T(m.tasks[m.links[i].from].Name), diag.T(m.tasks[m.links[i].from].End.Plus(m.links[i].most).Say()))
		}
	}
}

// afresh is what makes a surface take the next coat again when its time is over.
type afresh struct {
	kind        Kind
	first, mend string
}

func (m *maker) afresh(i int) afresh {
	if m.tasks[m.links[i].from].Kind == Prime {
		return afresh{Prime, "it is primed anew first", "wipe off the dust, prime what is not covered yet, and let it dry"}
	}
	return afresh{Sand, "it is sanded first", "sand the whole face dull, clean off the dust, then coat"}
}

// lapse gives a window up: there is sanding before the next coat, or a new coat of primer whose own window must be met.
func (m *maker) lapse(i int) {
	l := &m.links[i]
	l.lapsed = true
	if l.again {
		return
	}
	from, to, most := l.from, l.to, l.most
	t := &m.tasks[to]
	w := wait{what: "it dries", source: "as written"}
	if l.wait != nil {
		w = *l.wait
	}
	kind, at := m.afresh(i).kind, t.At
	name, part, shop, allowed, basis := nameOf(kind, "before "+t.Name, 0), t.Part, t.Shop, t.allowed, Basis{}
	if kind == Prime {
		basis = Basis{Area: t.Basis.Area}
	}
	again := m.add(kind, t.Subject, at, basis)
	a := &m.tasks[again]
	a.Name, a.Part, a.Shop, a.allowed = name, part, shop, allowed
	if kind == Prime {
		m.after(from, again)
		m.links = append(m.links, link{from: again, to: to, wait: &w, most: most, again: true})
		return
	}
	m.waits(from, again, w)
	m.after(again, to)
}

// lapseUnmet gives up as few windows as it takes for a plan, one alone if that is enough, and tells of each; false where none is open.
func (m *maker) lapseUnmet() bool {
	open := m.openWindows()
	if alone := slices.IndexFunc(open, func(i int) bool { return m.plansWithout([]int{i}) }); alone >= 0 {
		open = open[alone : alone+1]
	} else {
		open = m.leastLapsed(open)
	}
	for _, i := range open {
		l, first := m.links[i], m.afresh(i).first
		m.lapse(i)
		if l.again {
			first = "no time for it was found even then"
		}
		m.found(diag.Look, "window-unmet", m.tasks[l.to].At, "{0} can not begin within {1} after {2} in these hours: "+first, "give hours in that window, or count on the work that it adds",
			diag.T(m.tasks[l.to].Name), diag.Time(l.most), diag.T(m.tasks[l.from].Name))
	}
	return len(open) > 0
}

// leastLapsed keeps every window, one after the other, that the plan can do with.
func (m *maker) leastLapsed(open []int) []int {
	if !m.plansWithout(open) {
		return open
	}
	for _, i := range slices.Clone(open) {
		if rest := slices.DeleteFunc(slices.Clone(open), func(j int) bool { return j == i }); m.plansWithout(rest) {
			open = rest
		}
	}
	return open
}

// plansWithout reports whether there is a plan once some windows are given up.
func (m *maker) plansWithout(windows []int) bool {
	for _, i := range windows {
		m.links[i].lapsed = true
	}
	q := m.newProblem(m.horizon())
	q.fill(attempt{})
	r := m.known.solve(&q.Problem, sched.Options{Steps: firstSteps})
	for _, i := range windows {
		m.links[i].lapsed = false
	}
	return r.Starts != nil
}

func (m *maker) openWindows() (open []int) {
	for i, l := range m.links {
		if l.most > 0 && !l.lapsed && m.tasks[l.to].State != Done {
			open = append(open, i)
		}
	}
	return open
}
