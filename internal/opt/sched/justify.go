package sched

import "slices"

// justify moves each job of the full board as late (or as early) as the others let it, the last (first) job first. No
// schedule ends later for it; both in turn is double justification (Valls, Ballestin, Quintanilla 2005).
func (b *board) justify(late bool, finish int) {
	b.finish = finish
	for _, j := range b.byTime(late) {
		if b.m.fixed[j] {
			continue
		}
		s := b.start[j]
		lo, hi := b.window(j)
		if late && hi <= s || !late && lo >= s {
			continue
		}
		b.take(j)
		if late {
			s = b.latest(j, s, hi)
		} else {
			s = b.earliest(j, lo, s)
		}
		b.put(j, s)
	}
	b.finish = b.m.horizon
}

// byTime lists the jobs by falling end or by rising start. The list is good until the next call.
func (b *board) byTime(falling bool) []int {
	n := b.m.jobs
	list := b.order[:0]
	for j, s := range b.start {
		if falling {
			s = b.m.horizon - b.m.shape[j].end[s]
		}
		list = append(list, s*n+j)
	}
	slices.Sort(list)
	for i := range list {
		list[i] %= n
	}
	b.order = list
	return list
}

// polish justifies right and left until the finish stops falling.
func (b *board) polish() int {
	f := b.m.finish(b.start)
	for {
		b.justify(true, f)
		b.justify(false, f)
		g := b.m.finish(b.start)
		if g >= f {
			return g
		}
		f = g
	}
}
