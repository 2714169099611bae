package schedule

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// primerNamed is where a primer is told that names a subject whose build-up has none: it goes on first.
func (m *maker) primerNamed(s *subject) (at diag.Place, asked bool) {
	if slices.ContainsFunc(s.layers, func(l document.Layer) bool { return l.What == document.MembraneLayer && lastWord(l.Label, "primer") }) {
		return at, false
	}
	for _, g := range m.goods(document.Primer, s.name) {
		if len(g.For) > 0 {
			return g.At, true
		}
	}
	return at, false
}

// openFor is how long at most a coat waits for what goes on it: its open time, else the end of its window for the next coat; of several
// goods the shortest. It is 0 where no label says it.
func (m *maker) openFor(k Kind, subject string) (most unit.Minutes) {
	if k != Prime {
		return 0
	}
	for _, g := range m.goods(document.Primer, subject) {
		open := g.OpenTime.Or(0)
		if open == 0 && g.Cures.Recoat.Known {
			open = g.Cures.Recoat.V.To
		}
		if open > 0 && (most == 0 || open < most) {
			most = open
		}
	}
	return most
}

// primersShut tells of work that goes on when the primer under it takes nothing any more, though it was begun in time.
func (t *teller) primersShut() {
	for _, l := range t.m.links {
		from, to := &t.m.tasks[l.from], &t.m.tasks[l.to]
		if l.most == 0 || l.lapsed || from.Kind != Prime || to.State == Done {
			continue
		}
		if shut := t.end(l.from).Plus(l.most); t.end(l.to) > shut {
			t.m.found(diag.Look, "primer-shut", to.At, "{0} goes on after {1}, when the primer of {2} is open no more", "prime in pieces, each as much as is covered in time, or give more hours in a row",
				diag.T(to.Name), diag.T(shut.Say()), diag.T(to.Subject))
		}
	}
}
