package sched

import "slices"

// A model is a problem in tables: one shape for each job, one capacity for each tick, and a last job, the sink, that no
// job ends after.
type model struct {
	p       *Problem
	horizon int
	jobs    int // without the sink, whose number it is
	shape   []*shape
	uses    [][]hold
	fixed   []bool
	low     []int // first and last start, before lags
	high    []int
	arcs    []arc
	out, in [][]int // arcs by job
	cap     [][]int // by resource, by tick
	users   [][]int // jobs by resource
	days    []Span
}

// An arc is a lag; lag is its number in the problem or -1 for the arcs that we add. It binds when a lit is true.
type arc struct {
	Lag
	lag  int
	when lit // always: side -1
}

var always = lit{side: -1}

type shapeKey struct {
	calendar, duration int
	whole              bool
}

// newModel tabulates a sound problem.
func newModel(p *Problem) (*model, Trouble) {
	n := len(p.Jobs)
	m := &model{p: p, horizon: p.Horizon, jobs: n, fixed: make([]bool, n+1), uses: make([][]hold, n+1)}
	m.capacities()
	works := make([][]bool, len(p.Calendars))
	for i, c := range p.Calendars {
		works[i] = c.ticks(p.Horizon)
	}
	shapes := map[shapeKey]*shape{}
	for i := range p.Jobs {
		m.fixed[i] = p.Jobs[i].Fixed
		m.uses[i] = holdsOf(p.Jobs[i].Uses)
		if !m.addJob(&p.Jobs[i], works, shapes) {
			return nil, Trouble{Kind: NoRoom, Jobs: []int{i}}
		}
	}
	m.addShape(newShape(endTable(p.Horizon, 0, nil, false), nil), 0, p.Horizon)
	m.connect()
	m.excuseFixed()
	m.days = daySpans(p.Days, p.Horizon)
	for i := range n {
		if !m.fixed[i] && !m.fitsAlone(i) {
			return nil, Trouble{Kind: NoRoom, Jobs: []int{i}}
		}
	}
	return m, Trouble{}
}

func (m *model) addJob(j *Job, works [][]bool, shapes map[shapeKey]*shape) bool {
	var w []bool
	if j.Calendar != Clock {
		w = works[j.Calendar]
	}
	if j.Fixed {
		end := make([]int, m.horizon+1)
		for t := range end {
			end[t] = -1
		}
		if j.Start <= m.horizon {
			end[j.Start] = fixedEnd(j.Start, m.horizon, j.Duration, w)
		}
		m.addShape(newShape(end, w), 0, m.horizon)
	} else {
		key := shapeKey{j.Calendar, j.Duration, j.Whole}
		if shapes[key] == nil {
			shapes[key] = newShape(endTable(m.horizon, j.Duration, w, j.Whole), w)
		}
		due := m.horizon
		if j.Due > 0 {
			due = min(due, j.Due)
		}
		m.addShape(shapes[key], j.Release, due)
	}
	i := len(m.low) - 1
	return m.low[i] <= m.high[i]
}

func (m *model) addShape(s *shape, release, due int) {
	m.shape = append(m.shape, s)
	m.low = append(m.low, s.nextStart(release))
	m.high = append(m.high, s.lastEnder(due))
}

// A hold is what a job has of one resource: while it works and while it pauses.
type hold struct{ resource, working, paused int }

// holdsOf merges the uses of a job by resource and drops those of nothing.
func holdsOf(uses []Use) []hold {
	var out []hold
	for _, u := range uses {
		if u.Amount == 0 {
			continue
		}
		i := slices.IndexFunc(out, func(h hold) bool { return h.resource == u.Resource })
		if i < 0 {
			i = len(out)
			out = append(out, hold{resource: u.Resource})
		}
		out[i].working += u.Amount
		if u.Through {
			out[i].paused += u.Amount
		}
	}
	return out
}

func (m *model) connect() {
	n := m.jobs
	m.out, m.in = make([][]int, n+1), make([][]int, n+1)
	for i, l := range m.p.Lags {
		if !m.fixed[l.From.Job] || !m.fixed[l.To.Job] {
			m.addArc(arc{l, i, always})
		}
	}
	for j := range n {
		m.addArc(arc{AtLeast(End(j), Start(n), 0), -1, always})
	}
	m.users = make([][]int, len(m.cap))
	for j, uses := range m.uses {
		for _, u := range uses {
			m.users[u.resource] = append(m.users[u.resource], j)
		}
	}
}

func (m *model) addArc(a arc) {
	m.out[a.From.Job] = append(m.out[a.From.Job], len(m.arcs))
	m.in[a.To.Job] = append(m.in[a.To.Job], len(m.arcs))
	m.arcs = append(m.arcs, a)
}

// time is when the event happens if its job starts at s.
func (m *model) time(e Event, s int) int {
	if e.End {
		return m.shape[e.Job].end[s]
	}
	return s
}

// startFor is the first start with which the event happens at t or later.
func (m *model) startFor(e Event, t int) int {
	if e.End {
		return m.shape[e.Job].firstEnder(t)
	}
	return m.shape[e.Job].nextStart(t)
}

// startUntil is the last start with which the event happens at t or before.
func (m *model) startUntil(e Event, t int) int {
	if e.End {
		return m.shape[e.Job].lastEnder(t)
	}
	return m.shape[e.Job].prevStart(t)
}

func (m *model) ends(starts []int) []int {
	ends := make([]int, m.jobs)
	for j, s := range starts {
		ends[j] = m.shape[j].end[s]
	}
	return ends
}

func (m *model) finish(starts []int) int {
	last := 0
	for j, s := range starts {
		last = max(last, m.shape[j].end[s])
	}
	return last
}
