package schedule

import (
	"math/bits"
	"slices"

	"dryfit/internal/calendar"
	"dryfit/internal/cure"
	"dryfit/internal/opt/sched"
	"dryfit/internal/unit"
)

// tick is what times are counted in.
const tick = 15 * unit.Minutes(1)

const ticksADay = int(unit.Day / tick)

// block keeps everybody out of the room after a task: nobody walks on wet tile.
type block struct {
	task int
	wait wait
}

func (m *maker) block(task int, w wait) { m.blocks = append(m.blocks, block{task, w}) }

// problem is the plan as numbers. Jobs are the tasks in their order, then the blocks, then the promises, then one instant at
// the start.
type problem struct {
	m *maker
	sched.Problem
	free   [][]bool // by person, by tick
	cals   map[crew]int
	unions []uint32 // sets of people who are counted together
	space  int      // the resource
	waits  []unit.Minutes
	holds  []unit.Minutes // of the blocks
	goals  []goal
	early  earliest
}

// earliest is a plan with the same finish in which nothing is put off to save a day: it tells why the finish is not earlier.
type earliest struct {
	*sched.Problem
	sched.Result
}

// crew is who may do a task and how many of them it takes.
type crew struct {
	allowed uint32
	hands   int
}

func (m *maker) ticksTo(w calendar.Moment) int { return int((w.Since(m.zero) + tick - 1) / tick) }

func (m *maker) moment(t int) calendar.Moment { return m.zero.Plus(unit.Minutes(t) * tick) }

// begin is the first day of work, or now where that comes first.
func (m *maker) begin() calendar.Moment { return min(m.days.Starts.V.At(0), m.now) }

func ticks(d unit.Minutes) int { return int((d + tick - 1) / tick) }

func (q *problem) blockJob(i int) int   { return len(q.m.tasks) + i }
func (q *problem) promiseJob(i int) int { return len(q.m.tasks) + len(q.m.blocks) + i }
func (q *problem) beginJob() int        { return q.promiseJob(len(q.m.days.Promises)) }

// newProblem tabulates hours, people and space over a number of ticks.
func (m *maker) newProblem(horizon int) *problem {
	q := &problem{m: m, cals: map[crew]int{}}
	q.Horizon = horizon
	q.Days = nil
	for t := 0; t < horizon; t += ticksADay {
		q.Days = append(q.Days, t)
	}
	for _, p := range m.people {
		q.free = append(q.free, m.freeTicks(p, horizon))
	}
	q.unions = m.unionsOf()
	for _, u := range q.unions {
		q.Resources = append(q.Resources, q.level(u))
	}
	q.space = len(q.Resources)
	q.Resources = append(q.Resources, sched.Constant(m.roomFor()))
	return q
}

// defaultSpace is how many work in a small room without being in each other's way (common practice).
const defaultSpace = 2

func (m *maker) roomFor() int { return m.days.RoomFor.Or(defaultSpace) }

// freeTicks marks the whole ticks in which a person works.
func (m *maker) freeTicks(p person, horizon int) []bool {
	free := make([]bool, horizon)
	for _, s := range p.hours.Between(m.zero, m.moment(horizon)) {
		for t := m.ticksTo(s.From); t < int(s.To.Since(m.zero)/tick); t++ {
			free[t] = true
		}
	}
	return free
}

// unionsOf lists the sets of people that tasks are for, and all unions of them: what is done at one time fits the people who are
// there exactly when it fits each of these (Hall's theorem).
func (m *maker) unionsOf() []uint32 {
	var out []uint32
	for i := range m.tasks {
		if a := m.tasks[i].allowed; m.tasks[i].State != Done && m.tasks[i].Hands > 0 && !slices.Contains(out, a) {
			out = append(out, a)
		}
	}
	for i := 0; i < len(out) && len(out) < mostUnions; i++ {
		for j := range i {
			if u := out[i] | out[j]; !slices.Contains(out, u) {
				out = append(out, u)
			}
		}
	}
	slices.Sort(out)
	return out
}

// mostUnions bounds the sets; more come of no real crew.
const mostUnions = 64

func (q *problem) count(set uint32, t int) (n int) {
	for p := range q.free {
		if set&(1<<p) != 0 && q.free[p][t] {
			n++
		}
	}
	return n
}

// level is how many people of a set are there. At hours when none is, nothing is done anyway, and the level stays as it was.
func (q *problem) level(set uint32) sched.Resource {
	var r sched.Resource
	for t := range q.Horizon {
		if n := q.count(set, t); n > 0 && (r == nil || r[len(r)-1].Amount != n) {
			from := t
			if r == nil {
				from = 0
			}
			r = append(r, sched.Level{From: from, Amount: n})
		}
	}
	if r == nil {
		return sched.Constant(bits.OnesCount32(set))
	}
	return r
}

// calendar is when enough of a crew are there.
func (q *problem) calendar(c crew) int {
	if i, ok := q.cals[c]; ok {
		return i
	}
	var spans sched.Calendar
	for t := range q.Horizon {
		if q.count(c.allowed, t) < c.hands {
			continue
		}
		if n := len(spans); n > 0 && spans[n-1].To == t {
			spans[n-1].To = t + 1
		} else {
			spans = append(spans, sched.Span{From: t, To: t + 1})
		}
	}
	q.cals[c] = len(q.Calendars)
	q.Calendars = append(q.Calendars, spans)
	return q.cals[c]
}

// fill makes the jobs and what binds them.
func (q *problem) fill(o attempt) {
	m := q.m
	for i := range m.tasks {
		q.Jobs = append(q.Jobs, q.job(i))
	}
	q.waits, q.holds = m.waitsFrom(o)
	q.addBlocks()
	q.addPromises(o)
	q.Jobs = append(q.Jobs, sched.Job{Calendar: sched.Clock, Fixed: true, Start: m.ticksTo(m.begin())})
	for i, l := range m.links {
		q.addLink(l, q.waits[i])
	}
	q.addGoals(o)
}

// job is a task as numbers.
func (q *problem) job(i int) sched.Job {
	m, t := q.m, &q.m.tasks[i]
	if t.State == Done {
		start := int(t.Start.Since(m.zero) / tick)
		return sched.Job{Calendar: sched.Clock, Fixed: true, Start: start, Duration: m.ticksTo(t.End) - start}
	}
	j := sched.Job{Duration: ticks(t.Work), Release: m.ticksTo(max(m.now, t.there)), Calendar: sched.Clock}
	if t.Hands > 0 {
		j.Calendar = q.calendar(crew{t.allowed, t.Hands})
		j.Uses = q.uses(t)
		j.Whole = t.Whole && j.Duration <= q.longest(j.Calendar)
	}
	if t.State == Begun {
		j.Fixed, j.Whole, j.Start = true, false, int(t.Start.Since(m.zero)/tick)
		j.Duration = q.workedTicks(j) + max(1, ticks(t.Work-m.worked(t)))
	}
	return j
}

// workedTicks are those of a begun job's calendar that have passed.
func (q *problem) workedTicks(j sched.Job) (n int) {
	if j.Calendar == sched.Clock {
		return 0
	}
	for _, s := range q.Calendars[j.Calendar] {
		n += max(0, min(s.To, q.m.ticksTo(q.m.now))-max(s.From, j.Start))
	}
	return n
}

func (q *problem) uses(t *task) []sched.Use {
	var uses []sched.Use
	for r, u := range q.unions {
		if t.allowed&^u == 0 {
			uses = append(uses, sched.Use{Resource: r, Amount: t.Hands})
		}
	}
	if !t.Shop {
		uses = append(uses, sched.Use{Resource: q.space, Amount: min(t.Hands, q.m.roomFor())})
	}
	return uses
}

// longest is the longest stretch of a calendar.
func (q *problem) longest(cal int) (n int) {
	for _, s := range q.Calendars[cal] {
		n = max(n, s.To-s.From)
	}
	return n
}

// addBlocks: from the end of a task on, the room is full for a while.
func (q *problem) addBlocks() {
	for i, b := range q.m.blocks {
		full := []sched.Use{{Resource: q.space, Amount: q.m.roomFor()}}
		q.Jobs = append(q.Jobs, sched.Job{Duration: ticks(q.holds[i]), Calendar: sched.Clock, Uses: full})
		t, j := &q.m.tasks[b.task], &q.Jobs[q.blockJob(i)]
		if t.State == Done {
			j.Fixed, j.Start = true, q.m.ticksTo(t.End)
			continue
		}
		q.Lags = append(q.Lags, sched.AtLeast(sched.End(b.task), sched.Start(q.blockJob(i)), 0), sched.AtMost(sched.End(b.task), sched.Start(q.blockJob(i)), 0))
	}
}

// addPromises: instants at their dates, behind and before what they bind. One of the past binds nothing any more.
func (q *problem) addPromises(o attempt) {
	m := q.m
	for i, p := range m.days.Promises {
		on := m.ticksTo(p.On.V.At)
		past := !p.On.Known || p.On.V.At < m.now || o.dropPromises || on > q.Horizon
		if past {
			on = 0
		}
		q.Jobs = append(q.Jobs, sched.Job{Calendar: sched.Clock, Fixed: true, Start: on})
		if past {
			continue
		}
		for _, t := range m.promised[i].after {
			q.Lags = append(q.Lags, sched.AtLeast(sched.End(t), sched.Start(q.promiseJob(i)), 0))
		}
		for _, t := range m.promised[i].before {
			q.Lags = append(q.Lags, sched.AtLeast(sched.Start(q.promiseJob(i)), sched.Start(t), 0))
		}
	}
}

func (q *problem) addLink(l link, long unit.Minutes) {
	m := q.m
	from := &m.tasks[l.from]
	lag := ticks(long)
	if from.State == Done {
		lag = m.ticksTo(from.End.Plus(long)) - m.ticksTo(from.End)
	}
	q.Lags = append(q.Lags, sched.AtLeast(sched.End(l.from), sched.Start(l.to), lag))
	if l.most > 0 && !l.lapsed {
		q.Lags = append(q.Lags, sched.AtMost(sched.End(l.from), sched.Start(l.to), int(l.most/tick)))
	}
}

// waitsFrom gives the waits of links and blocks, counted from where the tasks ended in the plan before, if there was one.
func (m *maker) waitsFrom(o attempt) (waits, holds []unit.Minutes) {
	at := func(task int) calendar.Moment {
		switch {
		case m.tasks[task].State == Done:
			return m.tasks[task].End
		case o.ends == nil:
			return m.now
		}
		return o.ends[task]
	}
	lasts := m.waited
	if o.shortest {
		lasts = m.shortest
	}
	for _, l := range m.links {
		var long unit.Minutes
		if l.wait != nil {
			long = lasts(*l.wait, at(l.from))
		}
		waits = append(waits, long)
	}
	for _, b := range m.blocks {
		holds = append(holds, lasts(b.wait, at(b.task)))
	}
	return waits, holds
}

// waited is long, and what the label says where the cold lets nothing harden: that is told elsewhere.
func (m *maker) waited(w wait, from calendar.Moment) unit.Minutes {
	if long := m.long(w, from); long != cure.Never {
		return long
	}
	return w.label.Time
}
