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
	t := Trouble{Kind: Cycle}
	for at := last; ; {
		e := edges[by[at]]
		if e.lag >= 0 {
			t.Lags = append(t.Lags, e.lag)
		}
		if !slices.Contains(t.Jobs, e.to/2) {
			t.Jobs = append(t.Jobs, e.to/2)
		}
		if at = e.from; at == last {
			break
		}
	}
	slices.Reverse(t.Lags)
	slices.Reverse(t.Jobs)
	return t, true
}
