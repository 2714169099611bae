package schedule

import (
	"cmp"
	"slices"

	"dryfit/internal/calendar"
	"dryfit/internal/diag"
	"dryfit/internal/opt/sched"
	"dryfit/internal/unit"
)

// teller makes the plan out of the numbers.
type teller struct {
	m     *maker
	q     *problem
	r     sched.Result
	order []int // tasks by start
	place []int // of each task in the plan
	Plan
}

func (m *maker) tell(q *problem, r sched.Result) Plan {
	t := &teller{m: m, q: q, r: r}
	t.Planned, t.From, t.Finish, t.Optimal = true, m.now, m.moment(r.Finish), r.Outcome == sched.Optimal
	t.Bound = m.moment(r.Bound)
	t.sort()
	t.tasks()
	t.assign()
	t.waits()
	t.meanwhile()
	t.chain()
	t.counts()
	t.cards()
	t.batches()
	t.remarks()
	return t.Plan
}

// sort orders the tasks by start, then by end, then by name.
func (t *teller) sort() {
	for i := range t.m.tasks {
		t.order = append(t.order, i)
	}
	slices.SortStableFunc(t.order, func(a, b int) int {
		return cmp.Or(cmp.Compare(t.start(a), t.start(b)), cmp.Compare(t.end(a), t.end(b)), cmp.Compare(t.m.tasks[a].Name, t.m.tasks[b].Name))
	})
	t.place = make([]int, len(t.order))
	for i, j := range t.order {
		t.place[j] = i
	}
}

// start and end are as noted of what is done, else as planned.
func (t *teller) start(i int) calendar.Moment {
	if j := &t.m.tasks[i]; j.State != Planned {
		return j.Start
	}
	return t.m.moment(t.r.Starts[i])
}

func (t *teller) end(i int) calendar.Moment {
	if j := &t.m.tasks[i]; j.State == Done {
		return j.End
	}
	return t.m.moment(t.r.Ends[i])
}

func (t *teller) tasks() {
	for _, i := range t.order {
		j := t.m.tasks[i].Task
		j.Start, j.End = t.start(i), t.end(i)
		j.Latest = j.Start
		if j.State == Planned {
			j.Latest = t.m.moment(t.r.Latest[i])
			j.Slack = j.Latest.Since(j.Start)
		}
		j.Sessions = t.sessions(i, j)
		t.Tasks = append(t.Tasks, j)
	}
}

// sessions are the stretches in which a task is worked on.
func (t *teller) sessions(i int, j Task) []Session {
	job := t.q.Jobs[i]
	if j.State == Done || job.Calendar == sched.Clock {
		return []Session{{From: j.Start, To: j.End}}
	}
	var out []Session
	for _, s := range t.q.Calendars[job.Calendar] {
		from, to := max(s.From, t.r.Starts[i]), min(s.To, t.r.Ends[i])
		if from < to {
			out = append(out, Session{From: t.m.moment(from), To: t.m.moment(to)})
		}
	}
	return out
}

// assign names who works: those jobs go first that the fewest people may do. Where nobody is there throughout a session, it is
// handed over, and told as two.
func (t *teller) assign() {
	var order []int
	for i, j := range t.Tasks {
		if j.State != Done {
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return cmp.Compare(popcount(t.m.tasks[t.order[a]].allowed), popcount(t.m.tasks[t.order[b]].allowed))
	})
	busy := make([][]bool, len(t.m.people))
	for p := range busy {
		busy[p] = make([]bool, t.q.Horizon)
	}
	for _, i := range order {
		var all []Session
		for _, s := range t.Tasks[i].Sessions {
			all = append(all, t.staff(busy, &t.m.tasks[t.order[i]], s)...)
		}
		t.Tasks[i].Sessions = all
	}
}

// staff divides a session by who works.
func (t *teller) staff(busy [][]bool, j *task, s Session) (out []Session) {
	from, to := t.m.ticksTo(s.From), t.m.ticksTo(s.To)
	if j.Hands == 0 {
		return []Session{s}
	}
	for from < to {
		crew, until := t.crew(busy, j, from, to)
		one := Session{From: t.m.moment(from), To: t.m.moment(until)}
		for _, p := range crew {
			one.Who = append(one.Who, t.m.people[p].name)
			for k := from; k < until; k++ {
				busy[p][k] = true
			}
		}
		out, from = append(out, one), until
	}
	return out
}

// crew picks the people who can stay longest from a tick on, and tells until when they all can.
func (t *teller) crew(busy [][]bool, j *task, from, to int) (crew []int, until int) {
	stays := make([]int, len(t.m.people))
	for p := range t.m.people {
		stays[p] = from
		for j.allowed&(1<<p) != 0 && stays[p] < to && t.q.free[p][stays[p]] && !busy[p][stays[p]] {
			stays[p]++
		}
		if stays[p] > from {
			crew = append(crew, p)
		}
	}
	slices.SortStableFunc(crew, func(a, b int) int { return stays[b] - stays[a] })
	crew = crew[:min(len(crew), j.Hands)]
	until = to
	for _, p := range crew {
		until = min(until, stays[p])
	}
	slices.Sort(crew)
	return crew, until
}

func popcount(set uint32) (n int) {
	for ; set != 0; set &= set - 1 {
		n++
	}
	return n
}

// waits lists what hardens, each once for the task that it follows, with the first task that waits for it.
func (t *teller) waits() {
	for i, l := range t.m.links {
		if l.wait != nil {
			t.wait(l.from, l.to, *l.wait, t.q.waits[i], t.until(l), false)
		}
	}
	for i, b := range t.m.blocks {
		t.wait(b.task, -1, b.wait, t.q.holds[i], 0, true)
	}
	slices.SortStableFunc(t.Waits, func(a, b Wait) int { return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.To, b.To)) })
}

func (t *teller) until(l link) calendar.Moment {
	if l.most == 0 || l.lapsed {
		return 0
	}
	return t.end(l.from).Plus(l.most)
}

func (t *teller) wait(from, to int, w wait, long unit.Minutes, until calendar.Moment, alone bool) {
	begin := t.end(from)
	out := Wait{After: t.place[from], Before: -1, What: w.what, From: begin, To: begin.Plus(long), Until: until, Label: w.label, AtKnown: w.atKnown,
		Source: w.source, Slower: long > w.label.Time, NoWalk: alone}
	if temps := t.m.tempsOf(w.subject); len(temps) > 0 {
		out.Measured = true
		out.Coldest, _ = temps.Range(unit.Minutes(out.From), unit.Minutes(out.To))
	}
	if to >= 0 {
		out.Before = t.place[to]
	}
	for i := range t.Waits {
		if o := &t.Waits[i]; o.After == out.After && o.What == out.What && o.Until == out.Until {
			o.NoWalk = o.NoWalk || alone
			if o.Before < 0 || out.Before >= 0 && out.Before < o.Before {
				o.Before = out.Before
			}
			return
		}
	}
	t.Waits = append(t.Waits, out)
	t.m.checkWarmth(w, &t.Tasks[out.After], out.To)
}

// meanwhile lists for each wait the tasks that are begun while it runs.
func (t *teller) meanwhile() {
	for i := range t.Waits {
		w := &t.Waits[i]
		for j, task := range t.Tasks {
			if task.Start >= w.From && task.Start < w.To {
				w.Meanwhile = append(w.Meanwhile, j)
			}
		}
	}
}

// counts tells the goals: days in the room, of hire, without something.
func (t *teller) counts() {
	for i, g := range t.q.goals {
		v := t.r.Goals[i]
		c := Count{v.Value, v.Bound}
		switch g.what {
		case "trips":
			t.Trips = c
		case "hire":
			t.hire(g.of, c)
		case "lack":
			t.lack(g.of, countOf(lacks[g.of], v))
		}
	}
	slices.SortFunc(t.Lacks, func(a, b Lack) int { return cmp.Compare(a.What, b.What) })
}

func (t *teller) hire(tool int, c Count) {
	h := Hire{Tool: t.m.days.Hired[tool].Name, At: t.m.days.Hired[tool].At, Count: c}
	for _, i := range t.m.hireJobs(tool) {
		j := t.Tasks[t.place[i]]
		from, to := j.Sessions[0].From.Date(), lastDate(j)
		if h.From == 0 || from < h.From {
			h.From = from
		}
		h.To = max(h.To, to)
	}
	t.Hires = append(t.Hires, h)
}

func lastDate(j Task) calendar.Date { return (j.Sessions[len(j.Sessions)-1].To - 1).Date() }

// lack lists the days on which something is missing and holds them against the limit.
func (t *teller) lack(i int, c Count) {
	l := Lack{What: lacks[i], At: t.m.days.At, Count: c, Limit: -1, Dates: t.missing(lacks[i])}
	if limit, ok := t.m.limitOf(l.What); ok {
		l.Limit, l.At = limit.days, limit.at
	}
	if l.Limit >= 0 && len(l.Dates) > l.Limit {
		t.m.overLimit(l, t.m.fewest[i])
	}
	t.Lacks = append(t.Lacks, l)
}

// missing are the dates on which something is missing: for the WC, those on which there is none at night.
func (t *teller) missing(what string) []calendar.Date {
	var dates []calendar.Date
	for _, i := range t.q.lackJobs(what) {
		if i >= len(t.m.tasks) {
			dates = append(dates, t.m.begin().Date())
			continue
		}
		j := t.Tasks[t.place[i]]
		if len(j.Sessions) == 0 {
			dates = append(dates, j.Start.Date())
		}
		for _, s := range j.Sessions {
			dates = append(dates, between(s.From.Date(), max(s.From, s.To-1).Date())...)
		}
	}
	slices.Sort(dates)
	dates = slices.Compact(dates)
	if n := len(dates); what == "WC" && n > 0 {
		return between(dates[0], dates[n-1]-1)
	}
	return dates
}

func between(from, to calendar.Date) []calendar.Date {
	var out []calendar.Date
	for d := from; d <= to; d++ {
		out = append(out, d)
	}
	return out
}

// cards gives each day its work and what waits when the work is over.
func (t *teller) cards() {
	byDate := map[calendar.Date]int{}
	for i, j := range t.Tasks {
		for s, w := range j.Sessions {
			d := w.From.Date()
			n, ok := byDate[d]
			if !ok {
				n = len(t.Cards)
				byDate[d] = n
				t.Cards = append(t.Cards, Card{Date: d})
			}
			t.Cards[n].Work = append(t.Cards[n].Work, CardWork{i, s})
		}
	}
	slices.SortFunc(t.Cards, func(a, b Card) int { return cmp.Compare(a.Date, b.Date) })
	for n := range t.Cards {
		c := &t.Cards[n]
		session := func(w CardWork) Session { return t.Tasks[w.Task].Sessions[w.Session] }
		slices.SortStableFunc(c.Work, func(a, b CardWork) int { return cmp.Compare(session(a).From, session(b).From) })
		over := session(c.Work[0]).To
		for _, w := range c.Work {
			over = max(over, session(w).To)
		}
		for i, w := range t.Waits {
			if w.From <= over && over < w.To {
				c.Waiting = append(c.Waiting, i)
			}
		}
	}
}

// remarks tells what the plan is worth.
func (t *teller) remarks() {
	m := t.m
	if !t.Optimal {
		m.found(diag.Note, "not-proven", m.days.At, "the last job ends at {0}; it is proven that no plan ends before {1}, and not that there is none between", "", diag.T(t.Finish.Say()), diag.T(t.Bound.Say()))
	}
	if len(m.temps) == 0 && slices.ContainsFunc(t.Waits, func(w Wait) bool { return w.AtKnown }) {
		m.found(diag.Unchecked, "room-temperature", m.days.At, "not checked: whether the room is warm enough for what hardens, its temperature is missing", "write room temperature: 62 F; in a colder room cement takes longer than its label says")
	}
	m.assumeSurfaces(t.Waits, t.Tasks)
	t.primersShut()
	for _, l := range t.r.Broken {
		t.broken(t.q.Lags[l])
	}
	for i, p := range m.days.Promises {
		if p.On.Known {
			t.Promises = append(t.Promises, Promise{p.Name, p.At, p.On.V.At, t.kept(i)})
		}
	}
	for _, p := range t.Promises {
		if !p.Kept {
			m.found(diag.Stop, "promise-broken", p.At, "{0} at {1} can not be kept: what must be done before it is not", "move it, or give more hours before it", diag.T(p.Name), diag.T(p.On.Say()))
		}
	}
}

// kept: what comes before the promise ends by then, and what comes after it begins later.
func (t *teller) kept(i int) bool {
	on := t.m.days.Promises[i].On.V.At
	for _, j := range t.m.promised[i].after {
		if t.end(j) > on {
			return false
		}
	}
	for _, j := range t.m.promised[i].before {
		if t.start(j) < on {
			return false
		}
	}
	return true
}

// broken tells of work that was done before what it had to wait for.
func (t *teller) broken(l sched.Lag) {
	n := len(t.m.tasks)
	if l.From.Job >= n || l.To.Job >= n {
		return
	}
	from, to := &t.m.tasks[l.From.Job], &t.m.tasks[l.To.Job]
	if l.Ticks < 0 {
		t.m.found(diag.Look, "done-late", from.done.At, "{0} was begun later after {1} than its window allows", "look at it before you go on: the coat may not hold", diag.T(from.Name), diag.T(to.Name))
		return
	}
	t.m.found(diag.Look, "done-early", to.done.At, "{0} was begun {1} after {2}; it should have waited {3}", "look at it before you go on: tap the tile, scratch the grout, and let it rest", diag.T(to.Name),
		diag.Time(max(0, to.Start.Since(from.End))), diag.T(from.Name), diag.Time(unit.Minutes(l.Ticks)*tick))
}
