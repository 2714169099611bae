package sched

import "slices"

// A lit says that a bound has reached a value. Variable x has two sides: 2x is its lower bound, 2x+1 its upper bound
// negated, so that every bound only ever rises: {2x, v} is x >= v, {2x+1, -v} is x <= v.
type lit struct{ side, at int }

func atLeast(x, v int) lit { return lit{2 * x, v} }
func atMost(x, v int) lit  { return lit{2*x + 1, -v} }

// not is x <= v-1 of x >= v, and the other way around: starts are whole.
func (l lit) not() lit { return lit{l.side ^ 1, 1 - l.at} }

// A reason is why a bound rose, kept so that the lits behind it can be written down when they are asked for.
type reason struct {
	kind    reasonKind
	at, len int
}

type reasonKind uint8

const (
	decided  reasonKind = iota
	byArc               // arcs[at]
	byClause            // clauses[at], whose first lit it is
	byLits              // pool[at : at+len]
)

// A rise is one step of one bound. earlier is the rise of the same side before it, or -1.
type rise struct {
	side, from, to int
	earlier        int
	why            reason
}

// An engine holds the bounds of all variables (starts of jobs, the sink, then switches of 0 and 1) and makes them
// consistent. It is the state of the complete search.
type engine struct {
	m       *model
	arcs    []arc
	out, in [][]int // arcs by job
	bound   []int
	latest  []int // by side: its last rise, or -1
	trail   []rise
	levels  []int // length of the trail at each decision
	pools   []int // length of the pool at each decision
	pool    []lit
	head    int // rises before it are propagated

	conflict []lit // true together, and impossible

	load             [][]int // by resource and tick: what is held whatever happens
	dirtyLo, dirtyHi []int   // by resource: the ticks whose load has risen
	overR, overT     int     // a tick with more load than capacity; overR < 0: none

	switched [][]int // by side: arcs that bind when it has risen

	clauses []clause
	watch   [][]watcher // by bucket
	shelves []shelf     // by side
	cards   []card
	cardsOf [][]int // by variable

	mark     []mark // by side, for analysis
	activity []float64
	bump     float64
	steps    int
	scratch  []lit
}

func newEngine(m *model) *engine {
	e := &engine{m: m, arcs: slices.Clone(m.arcs), overR: -1, bump: 1}
	for j := range m.out {
		e.out, e.in = append(e.out, slices.Clone(m.out[j])), append(e.in, slices.Clone(m.in[j]))
	}
	for j := 0; j <= m.jobs; j++ {
		e.addVariable(m.low[j], m.high[j])
	}
	for _, c := range m.cap {
		e.load = append(e.load, make([]int, len(c)))
		e.dirtyLo, e.dirtyHi = append(e.dirtyLo, 0), append(e.dirtyHi, len(c))
	}
	for j := range m.jobs {
		e.shift(j, m.high[j], m.shape[j].end[m.low[j]], 1)
	}
	return e
}

func (e *engine) addVariable(low, high int) int {
	e.bound = append(e.bound, low, -high)
	e.latest = append(e.latest, -1, -1)
	e.addShelf(low, max(low, high))
	e.addShelf(-max(low, high), -low)
	e.mark = append(e.mark, mark{}, mark{})
	e.activity = append(e.activity, 0)
	e.cardsOf = append(e.cardsOf, nil)
	e.switched = append(e.switched, nil, nil)
	return len(e.activity) - 1
}

func (e *engine) lo(x int) int        { return e.bound[2*x] }
func (e *engine) hi(x int) int        { return -e.bound[2*x+1] }
func (e *engine) set(x int) bool      { return e.bound[2*x] == -e.bound[2*x+1] }
func (e *engine) holds(l lit) bool    { return e.bound[l.side] >= l.at }
func (e *engine) excludes(l lit) bool { return e.bound[l.side^1] > -l.at }

// snap moves a bound to the next start that the job's shape allows.
func (e *engine) snap(l lit) int {
	x := l.side >> 1
	if x > e.m.jobs {
		return l.at
	}
	if l.side&1 == 0 {
		return e.m.shape[x].nextStart(l.at)
	}
	return -e.m.shape[x].prevStart(-l.at)
}

// raise makes l true, for a reason. On false the conflict is set.
func (e *engine) raise(l lit, why reason) bool {
	if e.holds(l) {
		return true
	}
	to := e.snap(l)
	if e.bound[l.side^1] > -to {
		e.conflict = e.explain(l, why, e.conflict[:0])
		e.conflict = append(e.conflict, lit{l.side ^ 1, 1 - l.at})
		return false
	}
	from := e.bound[l.side]
	e.trail = append(e.trail, rise{l.side, from, to, e.latest[l.side], why})
	e.latest[l.side] = len(e.trail) - 1
	e.bound[l.side] = to
	e.steps++
	e.reshape(l.side, from, to, 1)
	return true
}

func (e *engine) raiseFor(l lit, lits []lit) bool {
	if e.holds(l) {
		return true
	}
	at := len(e.pool)
	e.pool = append(e.pool, lits...)
	return e.raise(l, reason{byLits, at, len(lits)})
}

func (e *engine) level() int { return len(e.levels) }

func (e *engine) decide(l lit) {
	e.levels = append(e.levels, len(e.trail))
	e.pools = append(e.pools, len(e.pool))
	e.raise(l, reason{})
}

// undo takes back all decisions above a level.
func (e *engine) undo(level int) {
	if level >= e.level() {
		return
	}
	e.overR = -1
	for i := len(e.trail) - 1; i >= e.levels[level]; i-- {
		r := e.trail[i]
		e.reshape(r.side, r.from, r.to, -1)
		e.bound[r.side] = r.from
		e.latest[r.side] = r.earlier
	}
	e.trail = e.trail[:e.levels[level]]
	e.pool = e.pool[:e.pools[level]]
	e.levels, e.pools = e.levels[:level], e.pools[:level]
	e.head = len(e.trail)
	for r := range e.dirtyLo { // bounds are as they were after a propagation that ended
		e.dirtyLo[r], e.dirtyHi[r] = len(e.load[r]), 0
	}
}

// explain appends true lits that together make l true, as its reason has it.
func (e *engine) explain(l lit, why reason, to []lit) []lit {
	switch why.kind {
	case byArc:
		if a := &e.arcs[why.at]; a.when.side >= 0 {
			to = append(to, a.when)
		}
		return append(to, e.behindArc(e.arcs[why.at], l))
	case byClause:
		for _, o := range e.clauses[why.at].lits[1:] {
			to = append(to, o.not())
		}
	case byLits:
		return append(to, e.pool[why.at:why.at+why.len]...)
	}
	return to
}

// behindArc is the weakest lit about one job of an arc that makes l, about the other, true.
func (e *engine) behindArc(a arc, l lit) lit {
	m := e.m
	if l.side == 2*a.To.Job { // the start before l.at is too early, so the event comes after its time
		raw := 0
		if s := m.shape[a.To.Job].prevStart(l.at - 1); s >= 0 {
			raw = m.time(a.To, s) + 1
		}
		return atLeast(a.From.Job, m.startFor(a.From, raw-a.Ticks))
	}
	raw := m.horizon
	if s := m.shape[a.From.Job].nextStart(-l.at + 1); s <= m.horizon {
		raw = m.time(a.From, s) - 1
	}
	return atMost(a.To.Job, m.startUntil(a.To, raw+a.Ticks))
}
