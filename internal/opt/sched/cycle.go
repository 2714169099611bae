package sched

import "slices"

// An edge of the network of events: start of job j is node 2j, its end 2j+1.
type edge struct{ from, to, ticks, lag int }

func (m *model) edges() []edge {
	var out []edge
	for j := range m.jobs {
		d := m.p.Jobs[j].Duration
		out = append(out, edge{2 * j, 2*j + 1, d, -1})
		if m.p.Jobs[j].Calendar == Clock {
			out = append(out, edge{2*j + 1, 2 * j, -d, -1})
		}
	}
	for _, a := range m.arcs {
		if a.lag >= 0 {
			out = append(out, edge{node(a.From), node(a.To), a.Ticks, a.lag})
		}
	}
	return out
}

func node(e Event) int {
	if e.End {
		return 2*e.Job + 1
	}
	return 2 * e.Job
}

// cycle finds lags that ask for more around a ring than no time at all (Bellman, Ford: a longest path that never ends).
func (m *model) cycle() (Trouble, bool) {
	edges := m.edges()
	dist := make([]int, 2*m.jobs)
	by := make([]int, 2*m.jobs)
	last := -1
	for range 2*m.jobs + 1 {
		last = -1
		for i, e := range edges {
			if d := dist[e.from] + e.ticks; d > dist[e.to] {
				dist[e.to], by[e.to], last = d, i, e.to
			}
		}
		if last < 0 {
			return Trouble{}, false
		}
	}
	for range 2 * m.jobs { // surely in the ring after so many steps back
		last = edges[by[last]].from
	}
	var ring []edge
	for at := last; len(ring) == 0 || at != last; at = ring[len(ring)-1].from {
		ring = append(ring, edges[by[at]])
	}
	slices.Reverse(ring)
	return named(ring), true
}

// named tells a ring from its first job on.
func named(ring []edge) Trouble {
	begin := 0
	for i, e := range ring {
		before := ring[(i+len(ring)-1)%len(ring)].from / 2
		if e.from/2 < ring[begin].from/2 || e.from/2 == ring[begin].from/2 && before != e.from/2 {
			begin = i
		}
	}
	t := Trouble{Kind: Cycle}
	for i := range ring {
		e := ring[(begin+i)%len(ring)]
		if e.lag >= 0 {
			t.Lags = append(t.Lags, e.lag)
		}
		if !slices.Contains(t.Jobs, e.from/2) {
			t.Jobs = append(t.Jobs, e.from/2)
		}
	}
	return t
}
