package schedule

import (
	"fmt"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/opt/sched"
)

// An allowance is the most days without each of the lacks; -1: any number. Nil allows all.
type allowance []int

// wanted is what the document allows.
func (m *maker) wanted() allowance {
	var all allowance
	for _, what := range lacks {
		days := -1
		if l, ok := m.limitOf(what); ok {
			days = l.days
		}
		all = append(all, days)
	}
	return all
}

// leastSteps bound the search for the fewest days that are possible.
const leastSteps = 1_000_000

// relax allows as many days as there have to be at the least, whenever the plan ends: for the WC first, then for water, then for
// power with what went before. False where nothing is limited, or no plan is found even so.
func (m *maker) relax(o *attempt) bool {
	wanted := o.allowed
	o.allowed = allowance{-1, -1, -1}
	limited := false
	for i, days := range wanted {
		q := m.newProblem(m.horizon())
		q.fill(*o)
		if days < 0 || len(q.lackJobs(lacks[i])) == 0 {
			continue
		}
		g, ok := m.known.fewest(&q.Problem, q.goalOf(goal{"lack", i}))
		if !ok {
			return false
		}
		m.fewest[i] = countOf(lacks[i], g)
		if m.changing() { // at other times, what hardens may take less: that there are fewer is not ruled out
			m.fewest[i].Least = 0
		}
		o.allowed[i] = max(days, m.fewest[i].Days)
		limited = true
	}
	return limited
}

// countOf is a goal's count in days without something.
func countOf(what string, g sched.GoalValue) Count {
	return Count{max(0, g.Value-nights(what)), max(0, g.Bound-nights(what))}
}

// overLimit tells what of a limit can not be kept, and the least that can be.
func (m *maker) overLimit(l Lack, fewest Count) {
	const mend = "give more hours or hands so that those jobs fit in fewer days, or allow more"
	said := diag.T(missed(l.What, len(l.Dates)))
	switch before := m.limitedBefore(l.What); {
	case fewest.Least == len(l.Dates) && before == "":
		m.found(diag.Look, "too-long-without", l.At, "{0}, and no plan has fewer; at most {1} were wanted", mend, said, diag.N(l.Limit))
	case fewest.Least == len(l.Dates):
		m.found(diag.Look, "too-long-without", l.At, "{0}, and no plan has fewer that spares {2} as this one does; at most {1} were wanted", mend, said, diag.N(l.Limit), diag.T(before))
	case fewest.Least > 0 && before == "":
		m.found(diag.Look, "too-long-without", l.At, "{0}; at most {1} were wanted; it is proven that there are no fewer than {2}, and not what lies between", mend, said, diag.N(l.Limit), diag.N(fewest.Least))
	default:
		m.found(diag.Look, "too-long-without", l.At, "{0}; at most {1} were wanted; no plan with fewer was found", mend, said, diag.N(l.Limit))
	}
}

// limitedBefore names what is limited and comes before a lack.
func (m *maker) limitedBefore(what string) string {
	var names []string
	for _, other := range lacks {
		if other == what {
			break
		}
		if _, ok := m.limitOf(other); ok {
			names = append(names, other)
		}
	}
	return strings.Join(names, " and ")
}

// missed says on how many days something is missing.
func missed(what string, days int) string {
	say, unit := what+" is off on", "day"
	if what == "WC" {
		say, unit = "no WC is in place on", "night"
	}
	if days != 1 {
		unit += "s"
	}
	return fmt.Sprintf("%s %d %s", say, days, unit)
}
