package sched

// A board is a schedule in the making: what is free by tick, and where the placed jobs are.
type board struct {
	m *model
	lanes
	free   [][]uint64 // by word, by tick
	start  []int      // -1: not placed
	root   []int      // windows from lags and calendars alone
	low    []int      // root, or later where a job has been put off
	high   []int
	steps  int
	finish int // no end after it
	order  []int
	before [][]arc // by job: the lags from others to it
	after  [][]arc // and from it to others, the sink left out
}

// newBoard starts empty but for the fixed jobs. The windows are those of a root propagation.
func newBoard(m *model, e *engine) *board {
	b := &board{m: m, lanes: newLanes(m), start: make([]int, m.jobs), finish: m.horizon}
	b.free = b.table(m.cap)
	b.before, b.after = make([][]arc, m.jobs), make([][]arc, m.jobs)
	for _, a := range m.arcs {
		if i, j := a.From.Job, a.To.Job; i != j && j < m.jobs {
			b.before[j], b.after[i] = append(b.before[j], a), append(b.after[i], a)
		}
	}
	for j := range m.jobs {
		b.root, b.high = append(b.root, e.lo(j)), append(b.high, e.hi(j))
		b.start[j] = -1
	}
	b.low = append(b.low, b.root...)
	for j := range m.jobs {
		if m.fixed[j] {
			b.put(j, m.low[j])
		}
	}
	return b
}

// clear takes all jobs off but the fixed.
func (b *board) clear() {
	for j, s := range b.start {
		if s >= 0 && !b.m.fixed[j] {
			b.take(j)
		}
	}
}

// load puts a whole schedule on the board.
func (b *board) load(starts []int) {
	b.clear()
	for j, s := range starts {
		if b.start[j] < 0 {
			b.put(j, s)
		}
	}
}

func (b *board) put(j, s int) {
	b.start[j] = s
	works := b.m.shape[j].works
	for _, d := range b.draws[j] {
		d.shift(b.free[d.word], s, b.m.shape[j].end[s], works, ^uint64(0))
	}
}

func (b *board) take(j int) {
	s := b.start[j]
	b.start[j] = -1
	works := b.m.shape[j].works
	for _, d := range b.draws[j] {
		d.shift(b.free[d.word], s, b.m.shape[j].end[s], works, 1)
	}
}

// window is where j may start as the lags to the jobs on the board have it.
func (b *board) window(j int) (lo, hi int) {
	m := b.m
	lo, hi = b.low[j], min(b.high[j], m.shape[j].lastEnder(b.finish))
	for i := range b.before[j] {
		a := &b.before[j][i]
		if s := b.start[a.From.Job]; s >= 0 {
			lo = max(lo, m.startFor(a.To, m.time(a.From, s)+a.Ticks))
		}
	}
	for i := range b.after[j] {
		a := &b.after[j][i]
		if s := b.start[a.To.Job]; s >= 0 {
			hi = min(hi, m.startUntil(a.From, m.time(a.To, s)-a.Ticks))
		}
	}
	return lo, hi
}

// earliest is the first start from lo to hi that capacity allows, or -1.
func (b *board) earliest(j, lo, hi int) int {
	sh := b.m.shape[j]
	for s := sh.nextStart(lo); s <= hi; {
		b.steps++
		t := b.lastLacking(j, s)
		if t < 0 {
			return s
		}
		s = sh.nextStart(t + 1)
	}
	return -1
}

// latest is the last start from lo to hi that capacity allows, or -1.
func (b *board) latest(j, lo, hi int) int {
	sh := b.m.shape[j]
	for s := sh.prevStart(hi); s >= lo; {
		b.steps++
		t := b.firstLacking(j, s)
		if t < 0 {
			return s
		}
		s = sh.lastEnder(t)
	}
	return -1
}

// lastLacking is the last tick at which less is free than j would hold if it started at s, or -1.
func (b *board) lastLacking(j, s int) int {
	last, sh := -1, b.m.shape[j]
	for _, d := range b.draws[j] {
		last = max(last, d.lasts(b.free[d.word], max(s, last), sh.end[s], sh.works, b.guards))
	}
	return last
}

// firstLacking is the first such tick, or -1.
func (b *board) firstLacking(j, s int) int {
	sh := b.m.shape[j]
	first := sh.end[s]
	for _, d := range b.draws[j] {
		first = d.firsts(b.free[d.word], s, first, sh.works, b.guards)
	}
	if first == sh.end[s] {
		return -1
	}
	return first
}

// shortOf is a resource of which less is free at a tick than j would hold, or -1.
func (b *board) shortOf(j, t int) int {
	for _, u := range b.m.uses[j] {
		if a := b.m.amount(j, u, t); a > 0 && b.level(b.free, u.resource, t) < a {
			return u.resource
		}
	}
	return -1
}

// sound asks whether starts are those of a schedule, but for limits, by putting one job after the other on the board.
func (b *board) sound(starts []int) bool {
	b.clear()
	copy(b.low, b.root)
	for j, s := range starts {
		if len(starts) != b.m.jobs || s < 0 || s > b.m.horizon || b.m.shape[j].end[s] < 0 {
			return false
		}
		if b.start[j] == s {
			continue
		}
		if lo, hi := b.window(j); b.m.fixed[j] || s < lo || s > hi || b.lastLacking(j, s) >= 0 {
			return false
		}
		b.put(j, s)
	}
	return starts != nil
}
