package sched

import (
	"fmt"
	"slices"
)

// The checker knows the meaning of a problem and nothing of how it is solved: it walks the ticks.

// ticksOf walks a job from its start: the ticks at which it works, and its end. ok is false where it may not start.
func ticksOf(p *Problem, j, start int) (work []int, end int, ok bool) {
	job := &p.Jobs[j]
	at := func(t int) bool {
		if job.Calendar == Clock {
			return true
		}
		return slices.ContainsFunc(p.Calendars[job.Calendar], func(s Span) bool { return s.From <= t && t < s.To })
	}
	ok = job.Fixed || job.Duration == 0 || at(start)
	t := start
	for ; len(work) < job.Duration && t <= p.Horizon; t++ {
		switch {
		case at(t):
			work = append(work, t)
		case job.Whole && !job.Fixed:
			ok = false
		}
	}
	ok = ok && len(work) == job.Duration && t <= p.Horizon
	if job.Fixed {
		return work, t, ok && start == job.Start
	}
	return work, t, ok && start >= job.Release && (job.Due == 0 || t <= job.Due)
}

// placed is one job in a schedule.
type placed struct {
	start, end int
	work       []int
}

// fault is the first thing wrong with the placed jobs (nil: not placed), or "".
func fault(p *Problem, at []*placed) string {
	for i, l := range p.Lags {
		a, b := at[l.From.Job], at[l.To.Job]
		if a == nil || b == nil || p.Jobs[l.From.Job].Fixed && p.Jobs[l.To.Job].Fixed {
			continue
		}
		if when(a, l.From)+l.Ticks > when(b, l.To) {
			return fmt.Sprintf("lag %d", i)
		}
	}
	for r := range p.Resources {
		for t := range p.Horizon + 1 {
			if overheld(p, at, r, t) {
				return fmt.Sprintf("resource %d at %d", r, t)
			}
		}
	}
	return ""
}

func when(a *placed, e Event) int {
	if e.End {
		return a.end
	}
	return a.start
}

func overheld(p *Problem, at []*placed, r, t int) bool {
	level := 0
	for _, l := range p.Resources[r] {
		if l.From <= t {
			level = l.Amount
		}
	}
	all, fixed := 0, 0
	for j, a := range at {
		if a == nil || t < a.start || t >= a.end {
			continue
		}
		for _, u := range p.Jobs[j].Uses {
			if u.Resource == r && (u.Through || slices.Contains(a.work, t)) {
				all += u.Amount
				if p.Jobs[j].Fixed {
					fixed += u.Amount
				}
			}
		}
	}
	return all > max(level, fixed)
}

// place puts all jobs where a schedule has them, or says which may not be there.
func place(p *Problem, starts []int) ([]*placed, string) {
	var at []*placed
	for j, s := range starts {
		work, end, ok := ticksOf(p, j, s)
		if !ok {
			return nil, fmt.Sprintf("job %d at %d", j, s)
		}
		at = append(at, &placed{s, end, work})
	}
	return at, ""
}

// countDays is what a goal counts in a schedule.
func countDays(p *Problem, g Goal, at []*placed) int {
	first, last, used := -1, -1, map[int]bool{}
	for d, from := range p.Days {
		to := p.Horizon + 1
		if d+1 < len(p.Days) {
			to = p.Days[d+1]
		}
		for _, j := range g.Jobs {
			work := at[j].work
			if len(work) == 0 {
				work = []int{at[j].start}
			}
			if slices.ContainsFunc(work, func(t int) bool { return from <= t && t < to }) {
				used[d] = true
			}
		}
		if used[d] {
			last = d
			if first < 0 {
				first = d
			}
		}
	}
	if g.Kind == DaysUsed || first < 0 {
		return len(used)
	}
	return last - first + 1
}

// overLimit is the first limit that a schedule breaks, or -1.
func overLimit(p *Problem, at []*placed) int {
	return slices.IndexFunc(p.Limits, func(l Limit) bool { return countDays(p, l.Goal, at) > l.Most })
}

// wrong checks a whole result for what can be checked without solving: "" when all is well.
func wrong(p *Problem, r *Result) string {
	if r.Outcome != Optimal && r.Outcome != Feasible {
		return ""
	}
	at, bad := place(p, r.Starts)
	if bad == "" {
		bad = fault(p, at)
	}
	if bad != "" {
		return bad
	}
	finish := 0
	for j, a := range at {
		finish = max(finish, a.end)
		if a.end != r.Ends[j] {
			return fmt.Sprintf("end of %d: %d, not %d", j, a.end, r.Ends[j])
		}
	}
	if finish != r.Finish || r.Bound > finish || (r.Outcome == Optimal) != (r.Bound == finish) {
		return fmt.Sprintf("finish %d, result says %d, bound %d, outcome %d", finish, r.Finish, r.Bound, r.Outcome)
	}
	if i := overLimit(p, at); i >= 0 {
		return fmt.Sprintf("limit %d", i)
	}
	for i, g := range p.Goals {
		if v := countDays(p, g, at); v != r.Goals[i].Value || r.Goals[i].Bound > v {
			return fmt.Sprintf("goal %d counts %d, result says %v", i, v, r.Goals[i])
		}
	}
	return wrongChain(p, r, at)
}

// wrongChain checks that each link's cause does rule out the start before Ready, and that the chain holds together.
func wrongChain(p *Problem, r *Result, at []*placed) string {
	from := -1
	for i, l := range r.Chain {
		switch {
		case l.From != from && i > 0 || i == 0 && l.From >= 0:
			return fmt.Sprintf("link %d comes from %d", i, l.From)
		case !linkHolds(p, l, at):
			return fmt.Sprintf("link %d does not hold: %+v", i, l)
		}
		from = l.Job
	}
	if len(r.Starts) > 0 && (from < 0 || at[from].end != r.Finish) {
		return "chain does not end at the finish"
	}
	return ""
}

func linkHolds(p *Problem, l Link, at []*placed) bool {
	sooner := l.Ready - 1
	work, end, _ := ticksOf(p, l.Job, sooner)
	early := &placed{sooner, end, work}
	switch l.Why {
	case AfterLag, WithinLag:
		lag := p.Lags[l.Lag]
		return lag.From.Job == l.From && lag.To.Job == l.Job && when(at[l.From], lag.From)+lag.Ticks > when(early, lag.To)
	case ForResource:
		moved := slices.Clone(at)
		moved[l.Job] = early
		alone := make([]*placed, len(at))
		alone[l.Job], alone[l.From] = early, at[l.From]
		return fault(p, moved) != "" && at[l.From].start < end && at[l.From].end > sooner && uses(p, l.From, l.Resource) &&
			uses(p, l.Job, l.Resource)
	case AsFixed:
		return p.Jobs[l.Job].Fixed
	case Released:
		return p.Jobs[l.Job].Release > 0 && at[l.Job].start >= p.Jobs[l.Job].Release
	case ForHours:
		return at[l.Job].start > p.Jobs[l.Job].Release
	}
	return true
}

func uses(p *Problem, j, r int) bool {
	return slices.ContainsFunc(p.Jobs[j].Uses, func(u Use) bool { return u.Resource == r && u.Amount > 0 })
}
