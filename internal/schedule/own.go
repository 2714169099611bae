package schedule

import (
	"dryfit/internal/cure"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// ownTasks adds the user's own jobs; what they come after is looked up when all jobs are there.
func (m *maker) ownTasks() {
	for _, j := range m.days.Own {
		if !j.Takes.Known {
			m.found(diag.Unchecked, "job-hours", j.At, "not checked: {0} is not planned, how long it takes is missing", "write takes: 2 h", diag.T(j.Name))
			continue
		}
		t := task{Task: Task{Name: j.Name, Kind: Own, Subject: "", At: j.At, Own: true, Work: j.Takes.V, Hands: j.Hands.Or(1),
			Shop: j.Shop.Or(false), Whole: j.InOne.Or(false), SignOff: j.SignBy.V}}
		for _, s := range j.Stops {
			t.Stops = append(t.Stops, s.Text)
		}
		m.tasks = append(m.tasks, t)
	}
}

// ownLinks puts the user's jobs in their order. A wait of one lies before everything that comes after it.
func (m *maker) ownLinks() {
	for _, j := range m.days.Own {
		me := m.named(j.Name)
		if len(me) == 0 {
			continue
		}
		for _, n := range j.After {
			for _, from := range m.refers(n) {
				m.ownLink(from, me[0], m.ownJob(m.tasks[from].Name))
			}
		}
		for _, n := range j.Before {
			for _, to := range m.refers(n) {
				m.ownLink(me[0], to, &j)
			}
		}
	}
}

// ownJob is the job of the user's own of that name, or nil.
func (m *maker) ownJob(name string) *document.Job {
	for i := range m.days.Own {
		if m.days.Own[i].Name == name {
			return &m.days.Own[i]
		}
	}
	return nil
}

// ownLink keeps the order of two jobs, and the wait of the first where it is the user's own. A job that comes after one that
// hardens (a wall that is grouted, say) may begin when that ends: what it must wait for, the user says.
func (m *maker) ownLink(from, to int, first *document.Job) {
	if from == to {
		m.found(diag.Stop, "job-after-itself", m.tasks[to].At, "{0} can not come after itself", "take it out of its own list", diag.T(m.tasks[to].Name))
		return
	}
	l := link{from: from, to: to}
	if first != nil && first.Waits.Known {
		l.wait = &wait{what: "it dries", label: cure.Label{Time: first.Waits.V}, source: "as written", at: first.Waits.At}
	}
	if first != nil && first.Within.Known {
		l.most = max(first.Within.V, unit.Minutes(1))
	}
	m.links = append(m.links, l)
}
