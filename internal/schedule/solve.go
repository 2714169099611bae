package schedule

import (
	"strings"

	"dryfit/internal/calendar"
	"dryfit/internal/diag"
	"dryfit/internal/opt/sched"
	"dryfit/internal/unit"
)

// attempt says what is given up, and where the tasks ended before.
type attempt struct {
	allowed      allowance
	dropPromises bool
	ends         []calendar.Moment
	shortest     bool // waits are as in the warmest room that was read
}

// Budgets in steps: for a first plan that bounds the time looked at, and for the best one.
const (
	firstSteps   = 5_000
	limitedSteps = 200_000
	bestSteps    = 800_000
)

// plan makes everything.
func (m *maker) plan() Plan {
	if !m.days.Starts.Known {
		m.found(diag.Unchecked, "days-start", m.days.At, "not checked: no days are planned, the first day of work is missing", "write starts on: 2026-03-07")
		return Plan{}
	}
	m.readPeople()
	m.readTemperatures()
	m.ownTasks()
	m.put(m.faceTasks())
	m.frame()
	m.checkPaces()
	m.ownLinks()
	m.readDone()
	m.allow()
	m.hire()
	m.deliveries()
	m.promises()
	m.lapseMissed()
	if !m.everyoneHasHours() {
		return Plan{}
	}
	return m.best()
}

// best tries the whole plan, and gives up what can not be met: first limits, as little of them as can be; then windows, then promises.
func (m *maker) best() Plan {
	wanted := m.wanted()
	first, found := m.keeping(attempt{allowed: wanted})
	for range 2 { // a coat put on anew has a window of its own
		if found == nil && m.lapseUnmet() {
			_, found = m.keeping(attempt{allowed: wanted})
		}
	}
	if found == nil && len(m.days.Promises) > 0 {
		_, found = m.keeping(attempt{allowed: wanted, dropPromises: true})
	}
	if found == nil {
		m.impossible(first)
		return Plan{}
	}
	return m.tell(found.q, found.r)
}

// solution is a problem with its result.
type solution struct {
	q *problem
	r sched.Result
}

// keeping tries to keep the limits, then to break them as little as can be, then without any. The first result tells why there is none.
func (m *maker) keeping(o attempt) (first sched.Result, found *solution) {
	q, first := m.settled(o)
	if first.Starts != nil {
		return first, &solution{q, first}
	}
	if m.relax(&o) {
		if q, r := m.settled(o); r.Starts != nil {
			return first, &solution{q, r}
		}
	}
	if o.allowed = nil; len(q.Limits) > 0 {
		if q, r := m.settled(o); r.Starts != nil {
			return first, &solution{q, r}
		}
	}
	return first, nil
}

// settled solves until the waits fit the temperatures at which they run: with first plans, with quick ones, and then with the best, which is
// searched for long and so is to be searched for once.
func (m *maker) settled(o attempt) (*problem, sched.Result) {
	q, r := m.first(o)
	for range 2 {
		if m.fits(q, r, &o) {
			break
		}
		q, r = m.first(o)
	}
	for _, steps := range [...]int{limitedSteps, bestSteps} {
		if steps == limitedSteps && !m.changing() {
			continue
		}
		q, r = m.better(q, r, o, steps)
		for range 3 {
			if m.fits(q, r, &o) {
				break
			}
			q, r = m.first(o)
			q, r = m.better(q, r, o, steps)
		}
	}
	return q, m.humble(r, q, o)
}

// fits reports whether no wait takes longer than planned where it lies in the result, and notes when the tasks end there.
func (m *maker) fits(q *problem, r sched.Result, o *attempt) bool {
	if r.Starts == nil || !m.changing() {
		return true
	}
	o.ends = nil
	for i := range m.tasks {
		o.ends = append(o.ends, m.moment(r.Ends[i]))
	}
	waits, holds := m.waitsFrom(*o)
	return covers(q.waits, waits) && covers(q.holds, holds)
}

// humble claims no more than is proven where waits take less time at other times: the bound is then that of the shortest waits.
func (m *maker) humble(r sched.Result, q *problem, o attempt) sched.Result {
	if r.Starts == nil || !m.changing() {
		return r
	}
	o.shortest = true
	least := m.newProblem(q.Horizon)
	least.fill(o)
	if covers(least.waits, q.waits) && covers(least.holds, q.holds) {
		return r
	}
	least.Goals = nil
	if b := m.known.solve(&least.Problem, sched.Options{Steps: firstSteps, Known: r.Starts}); b.Starts != nil {
		r.Bound = min(r.Bound, b.Bound)
	}
	if r.Bound < r.Finish {
		r.Outcome = sched.Feasible
	}
	return r
}

// covers reports whether no wait is longer than planned.
func covers(planned, now []unit.Minutes) bool {
	for i, w := range now {
		if w > planned[i] {
			return false
		}
	}
	return true
}

// first finds a first plan within a generous time.
func (m *maker) first(o attempt) (*problem, sched.Result) {
	q := m.newProblem(m.horizon())
	q.fill(o)
	q.Goals = nil
	r := m.known.solve(&q.Problem, sched.Options{Steps: firstSteps})
	if r.Starts == nil && len(q.Limits) > 0 { // rules of thumb may miss every plan that keeps them
		r = m.known.solve(&q.Problem, sched.Options{Steps: limitedSteps})
	}
	return q, r
}

// better finds the best plan within what the one before took.
func (m *maker) better(q *problem, r sched.Result, o attempt, steps int) (*problem, sched.Result) {
	if r.Starts == nil {
		return q, r
	}
	short := m.newProblem(min(q.Horizon, r.Finish+ticksADay-r.Finish%ticksADay))
	short.fill(o)
	better := m.known.solve(&short.Problem, sched.Options{Steps: steps, Known: r.Starts})
	short.early = earliest{&short.Problem, better}
	if r.Finish == better.Finish {
		short.early = earliest{&q.Problem, r}
	}
	return short, better
}

// mostDays is how far ahead days are planned.
const mostDays = 400

// horizon is a time in which everything can be done one after the other, each with all its waits.
func (m *maker) horizon() int {
	days := 14
	for i := range m.tasks {
		if m.tasks[i].State != Done {
			days += m.daysFor(&m.tasks[i])
		}
	}
	var waits unit.Minutes
	for _, l := range m.links {
		if l.wait != nil {
			waits += m.waited(*l.wait, m.now)
		}
	}
	days += int(waits / unit.Day / 4)
	for _, p := range m.days.Promises {
		if p.On.Known {
			days = max(days, int(p.On.V.At.Since(m.zero)/unit.Day)+30)
		}
	}
	return min(days, mostDays) * ticksADay
}

// daysFor is about how many days a task takes of those who have the fewest hours.
func (m *maker) daysFor(t *task) int {
	least := unit.Minutes(0)
	for p := range m.people {
		if t.allowed&(1<<p) == 0 {
			continue
		}
		var week unit.Minutes
		for _, spans := range m.people[p].hours.Week {
			week += calendar.Long(spans)
		}
		if week > 0 && (least == 0 || week < least) {
			least = week
		}
	}
	if least == 0 {
		return 1
	}
	return int(t.Work*7/least) + 1
}

// impossible says why there is no plan.
func (m *maker) impossible(r sched.Result) {
	var names []string
	for _, j := range r.Trouble.Jobs {
		if j < len(m.tasks) {
			names = append(names, m.tasks[j].Name)
		}
	}
	who, at := diag.T(strings.Join(names, ", ")), m.days.At
	if len(names) > 0 {
		at = m.tasks[r.Trouble.Jobs[0]].At
	}
	switch {
	case r.Trouble.Kind == sched.Cycle:
		m.found(diag.Stop, "jobs-in-circle", at, "these jobs wait for each other in a circle: {0}", "take one of the orders out", who)
	case r.Trouble.Kind == sched.NoRoom && len(names) > 0:
		m.found(diag.Stop, "no-hours", at, "{0} fits in no hours of those who may do it", "give more hours in a row, let it be interrupted, or let somebody help", who)
	case r.Trouble.Kind == sched.EmptyWindow && len(names) > 0:
		m.found(diag.Stop, "no-time", at, "{0} can not be done in its time: what it waits for comes too late", "move what is promised, or give more hours", who)
	default:
		m.found(diag.Stop, "no-plan", at, "no days were found in which everything fits", "give more hours, or take out a promise or a window")
	}
}

// everyoneHasHours tells of tasks whose people have none.
func (m *maker) everyoneHasHours() bool {
	var idle []*task
	asked := 0
	for i := range m.tasks {
		t := &m.tasks[i]
		if t.State == Done || t.Hands == 0 {
			continue
		}
		if asked++; !m.hasHours(t) {
			idle = append(idle, t)
		}
	}
	switch {
	case len(idle) == 0:
		return true
	case len(idle) == asked:
		m.found(diag.Stop, "no-hours", m.days.At, "no work fits in the hours that are told: no days are planned", "write hours: {weekdays: 18:00 to 21:00, Saturday: 8:00 to 17:00}")
	default:
		m.found(diag.Stop, "no-hours", m.placeOf(idle), "{0} fits in no hours of those who may do it", "give more hours in a row, let it be interrupted, or let somebody help", diag.T(few(idle)))
	}
	return false
}

// hasHours: at some time in the next weeks enough of those who may do it are there together.
func (m *maker) hasHours(t *task) bool {
	const weeks = 8 * 7
	for d := m.now.Date(); d < m.now.Date()+weeks; d++ {
		for minute := unit.Minutes(0); minute < unit.Day; minute += tick {
			n := 0
			for p := range m.people {
				if t.allowed&(1<<p) != 0 && within(m.people[p].hours.On(d), minute) {
					n++
				}
			}
			if n >= t.Hands {
				return true
			}
		}
	}
	return false
}

func within(spans []calendar.Span, minute unit.Minutes) bool {
	for _, s := range spans {
		if s.From <= minute && minute+tick <= s.To {
			return true
		}
	}
	return false
}
