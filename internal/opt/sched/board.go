package sched

// A board is a schedule in the making: what is free by tick, and where the placed jobs are.
type board struct {
	m      *model
	free   [][]int
	start  []int // -1: not placed
	root   []int // windows from lags and calendars alone
	low    []int // root, or later where a job has been put off
	high   []int
	steps  int
	finish int // no end after it
}

// newBoard starts empty but for the fixed jobs. The windows are those of a root propagation.
func newBoard(m *model, e *engine) *board {
	b := &board{m: m, start: make([]int, m.jobs), finish: m.horizon}
	for _, c := range m.cap {
		b.free = append(b.free, append([]int(nil), c...))
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
	b.hold(j, s, -1)
}

func (b *board) take(j int) {
	b.hold(j, b.start[j], 1)
	b.start[j] = -1
}

func (b *board) hold(j, s, sign int) {
	for _, u := range b.m.uses[j] {
		free := b.free[u.resource]
		for t := s; t < b.m.shape[j].end[s]; t++ {
			free[t] += sign * b.m.amount(j, u, t)
		}
	}
}

// window is where j may start as the lags to the jobs on the board have it.
func (b *board) window(j int) (lo, hi int) {
	m := b.m
	lo, hi = b.low[j], min(b.high[j], m.shape[j].lastEnder(b.finish))
	for _, i := range m.in[j] {
		if a := &m.arcs[i]; a.From.Job != j && b.start[a.From.Job] >= 0 {
			lo = max(lo, m.startFor(a.To, m.time(a.From, b.start[a.From.Job])+a.Ticks))
		}
	}
	for _, i := range m.out[j] {
		if a := &m.arcs[i]; a.To.Job != j && a.To.Job < m.jobs && b.start[a.To.Job] >= 0 {
			hi = min(hi, m.startUntil(a.From, m.time(a.To, b.start[a.To.Job])-a.Ticks))
		}
	}
	return lo, hi
}

// earliest is the first start from lo to hi that capacity allows, or -1.
func (b *board) earliest(j, lo, hi int) int {
	sh := b.m.shape[j]
	for s := sh.nextStart(lo); s <= hi; {
		b.steps++
		t := b.m.lacking(j, s, b.free)
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

func (b *board) firstLacking(j, s int) int {
	for t := s; t < b.m.shape[j].end[s]; t++ {
		if b.m.shortAt(j, t, b.free) >= 0 {
			return t
		}
	}
	return -1
}
