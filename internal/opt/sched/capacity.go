package sched

// capacities tabulates the levels by tick.
func (m *model) capacities() {
	m.cap = make([][]int, len(m.p.Resources))
	for r, levels := range m.p.Resources {
		m.cap[r] = make([]int, m.horizon+1)
		for i, l := range levels {
			to := m.horizon + 1
			if i+1 < len(levels) {
				to = min(to, levels[i+1].From)
			}
			for t := l.From; t < to; t++ {
				m.cap[r][t] = l.Amount
			}
		}
	}
}

// ticks tabulates which ticks work; none does that would end after the horizon.
func (c Calendar) ticks(horizon int) []bool {
	works := make([]bool, horizon+1)
	for _, s := range c {
		for t := s.From; t < min(s.To, horizon); t++ {
			works[t] = true
		}
	}
	return works
}

// excuseFixed raises the capacity where fixed jobs hold more: they did, and nobody else may.
func (m *model) excuseFixed() {
	for r := range m.cap {
		load := make([]int, m.horizon+1)
		for _, j := range m.users[r] {
			if !m.fixed[j] {
				continue
			}
			for t := m.low[j]; t < m.shape[j].end[m.low[j]]; t++ {
				load[t] += m.holds(j, r, t)
			}
		}
		for t, l := range load {
			m.cap[r][t] = max(m.cap[r][t], l)
		}
	}
}

// amount is what j holds by u at a tick between its start and its end.
func (m *model) amount(j int, u hold, t int) int {
	if m.shape[j].worksAt(t) {
		return u.working
	}
	return u.paused
}

// holds is what j holds of r at a tick between its start and its end.
func (m *model) holds(j, r, t int) int {
	for _, u := range m.uses[j] {
		if u.resource == r {
			return m.amount(j, u, t)
		}
	}
	return 0
}

// fitsAlone asks whether the job has any start with capacity for it.
func (m *model) fitsAlone(j int) bool {
	for s := m.low[j]; s <= m.high[j]; s = m.shape[j].nextStart(s + 1) {
		if m.lacking(j, s, m.cap) < 0 {
			return true
		}
	}
	return false
}

// lacking is the last tick at which free has not what j would hold if it starts at s, or -1.
func (m *model) lacking(j, s int, free [][]int) int {
	for t := m.shape[j].end[s] - 1; t >= s; t-- {
		if m.shortAt(j, t, free) >= 0 {
			return t
		}
	}
	return -1
}

// shortAt is a resource of which free has too little for j at a tick, or -1.
func (m *model) shortAt(j, t int, free [][]int) int {
	for _, u := range m.uses[j] {
		if a := m.amount(j, u, t); a > 0 && free[u.resource][t] < a {
			return u.resource
		}
	}
	return -1
}

// daySpans are the days up to the horizon, and one more instant for what ends at it.
func daySpans(first []int, horizon int) []Span {
	var days []Span
	for i, from := range first {
		to := horizon + 1
		if i+1 < len(first) {
			to = min(to, first[i+1])
		}
		if from < to {
			days = append(days, Span{from, to})
		}
	}
	return days
}
