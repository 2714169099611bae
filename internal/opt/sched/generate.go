package sched

// ahead lists for each job those that a lag of 0 or more puts before it: they are placed first.
func (m *model) ahead() [][]int {
	out := make([][]int, m.jobs)
	for _, a := range m.arcs {
		if a.Ticks >= 0 && a.To.Job < m.jobs && a.To.Job != a.From.Job {
			out[a.To.Job] = append(out[a.To.Job], a.From.Job)
		}
	}
	return out
}

// serial places the jobs of a list one by one, each as early as it may be. Where greatest lags leave a job no place,
// what holds it back is put off and all begins anew, a few times; then it gives up.
func (b *board) serial(list []int, ahead [][]int) bool {
	copy(b.low, b.root)
	for range b.m.jobs {
		j := b.serialOnce(list, ahead)
		if j < 0 {
			return true
		}
		if !b.putOff(j) {
			return false
		}
	}
	return false
}

// serialOnce is -1 or the job that found no place.
func (b *board) serialOnce(list []int, ahead [][]int) int {
	b.clear()
	done := 0 // the list is placed before it
	for {
		for done < len(list) && b.start[list[done]] >= 0 {
			done++
		}
		if done == len(list) {
			return -1
		}
		j := b.firstReady(list[done:], ahead)
		lo, hi := b.window(j)
		s := b.earliest(j, lo, hi)
		if s < 0 {
			return j
		}
		b.put(j, s)
	}
}

// firstReady is the first job off the board with all that is ahead of it on the board; in a ring simply the first.
func (b *board) firstReady(list []int, ahead [][]int) int {
	for _, j := range list {
		if b.start[j] < 0 && b.ready(ahead[j]) {
			return j
		}
	}
	return list[0]
}

func (b *board) ready(ahead []int) bool {
	for _, i := range ahead {
		if b.start[i] < 0 {
			return false
		}
	}
	return true
}

// putOff raises the earliest starts of those that a greatest lag ties to j, to where j next finds capacity.
func (b *board) putOff(j int) bool {
	m := b.m
	lo, _ := b.window(j)
	s := b.earliest(j, lo, b.high[j])
	if s < 0 {
		return false
	}
	moved := false
	for _, i := range m.out[j] {
		a := &m.arcs[i]
		k := a.To.Job
		if k == m.jobs || k == j || b.start[k] < 0 || m.fixed[k] {
			continue
		}
		if need := m.startFor(a.To, m.time(a.From, s)+a.Ticks); need > b.start[k] {
			b.low[k] = max(b.low[k], need)
			moved = true
		}
	}
	return moved
}

// parallel always places next the job that can start first, by the order of the list among those.
func (b *board) parallel(list []int, ahead [][]int) bool {
	copy(b.low, b.root)
	b.clear()
	for {
		best, at := -1, 0
		for _, j := range list {
			if b.start[j] >= 0 || !b.ready(ahead[j]) {
				continue
			}
			lo, hi := b.window(j)
			if s := b.earliest(j, lo, hi); s >= 0 && (best < 0 || s < at) {
				best, at = j, s
			}
		}
		if best < 0 {
			return b.full()
		}
		b.put(best, at)
	}
}

func (b *board) full() bool { return b.ready(b.m.everyJob()) }

func (m *model) everyJob() []int {
	all := make([]int, m.jobs)
	for j := range all {
		all[j] = j
	}
	return all
}
