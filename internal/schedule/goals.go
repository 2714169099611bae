package schedule

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/opt/sched"
)

// goal is one thing to have few days of, after the earliest finish.
type goal struct {
	what string // "trips", "hire", "lack"
	of   int    // index of the tool, or of the lack
}

// limit is a greatest number of days without something.
type limit struct {
	what string
	at   diag.Place
	days int
}

// lacks are what a household misses, in the order of how much.
var lacks = [...]string{"WC", "water", "power"}

func (m *maker) limitOf(what string) (limit, bool) {
	w := m.days.Without
	v := w.WC
	switch what {
	case "water":
		v = w.Water
	case "power":
		v = w.Power
	}
	return limit{what, v.At, v.V}, v.Known
}

// addGoals: what is limited comes first, then trips, hired days and the rest.
func (q *problem) addGoals(o attempt) {
	m := q.m
	var limited, rest []goal
	for i, what := range lacks {
		if jobs := q.lackJobs(what); len(jobs) > 0 {
			if _, ok := m.limitOf(what); ok {
				limited = append(limited, goal{"lack", i})
			} else {
				rest = append(rest, goal{"lack", i})
			}
		}
	}
	q.goals = append(limited, goal{"trips", 0})
	for i := range m.days.Hired {
		if len(m.hireJobs(i)) > 0 {
			q.goals = append(q.goals, goal{"hire", i})
		}
	}
	q.goals = append(q.goals, rest...)
	for _, g := range q.goals {
		q.Goals = append(q.Goals, q.goalOf(g))
	}
	q.addLimits(o)
}

// addLimits: no plan has more days without something than is allowed.
func (q *problem) addLimits(o attempt) {
	for i, days := range o.allowed {
		if days >= 0 && len(q.lackJobs(lacks[i])) > 0 {
			q.Limits = append(q.Limits, sched.Limit{Goal: q.goalOf(goal{"lack", i}), Most: days + nights(lacks[i])})
		}
	}
}

// nights is what a count of days has too many: the WC is missed at night, and on its last day it is back.
func nights(what string) int {
	if what == "WC" {
		return 1
	}
	return 0
}

func (q *problem) goalOf(g goal) sched.Goal {
	switch {
	case g.what == "trips":
		return sched.Goal{Kind: sched.DaysUsed, Jobs: q.m.roomJobs()}
	case g.what == "hire":
		return sched.Goal{Kind: sched.DaysSpanned, Jobs: q.m.hireJobs(g.of)}
	case lacks[g.of] == "WC":
		return sched.Goal{Kind: sched.DaysSpanned, Jobs: q.lackJobs("WC")}
	}
	return sched.Goal{Kind: sched.DaysUsed, Jobs: q.lackJobs(lacks[g.of])}
}

// wcJobs: what takes the WC away, or the start where it is out already, and what puts it in; nil where nothing does.
func (q *problem) wcJobs() (out int, in []int) {
	out = q.beginJob()
	for i := range q.m.tasks {
		if slices.Contains(q.m.tasks[i].Stops, "WC") {
			out = i
		}
	}
	return out, q.m.of(WC)
}

// lackJobs are the jobs on whose days something is missing, those done too; for the WC, those from the first to the last of which it is.
func (q *problem) lackJobs(what string) []int {
	if what == "WC" {
		if out, in := q.wcJobs(); in != nil {
			return append([]int{out}, in...)
		}
		return nil
	}
	var out []int
	for i := range q.m.tasks {
		if t := &q.m.tasks[i]; t.takesTime() && slices.Contains(t.Stops, what) {
			out = append(out, i)
		}
	}
	return out
}

// takesTime: it is known when, and it is not over at once.
func (t *task) takesTime() bool {
	if t.State == Done {
		return t.Started && t.End > t.Start
	}
	return t.Work > 0
}

// roomJobs are the jobs that somebody comes to the room for; today's done ones too, for somebody is there.
func (m *maker) roomJobs() []int {
	var out []int
	for i := range m.tasks {
		if t := &m.tasks[i]; (t.State != Done || t.Started && t.End.Date() >= m.now.Date()) && !t.Shop && t.Hands > 0 {
			out = append(out, i)
		}
	}
	return out
}

// hire notes on each task the tools that it is hired for.
func (m *maker) hire() {
	for _, h := range m.days.Hired {
		for _, n := range h.For {
			for _, i := range m.refers(n) {
				if t := &m.tasks[i]; !slices.Contains(t.Tools, h.Name) {
					t.Tools = append(t.Tools, h.Name)
				}
			}
		}
	}
}

func (m *maker) hireJobs(tool int) []int {
	var out []int
	for i := range m.tasks {
		if t := &m.tasks[i]; t.State != Done && slices.Contains(t.Tools, m.days.Hired[tool].Name) {
			out = append(out, i)
		}
	}
	return out
}

// promised are the tasks that a promise binds.
type promised struct{ after, before []int }

func (m *maker) promises() {
	for _, p := range m.days.Promises {
		var b promised
		for _, n := range p.After {
			b.after = append(b.after, m.refers(n)...)
		}
		for _, n := range p.Before {
			b.before = append(b.before, m.refers(n)...)
		}
		m.promised = append(m.promised, b)
	}
}
