package sched

import "slices"

// latestStarts gives for each job a start so late, still allowing the finish: the later of where it can go with all
// others as planned and where it goes when all move as late as they can. Both keep the limits.
func (b *board) latestStarts(starts []int) []int {
	b.load(starts)
	copy(b.low, b.root)
	m := b.m
	b.finish = m.finish(starts)
	out := slices.Clone(starts)
	for j := range out {
		if !m.fixed[j] {
			out[j] = b.latestAlone(j)
		}
	}
	if b.justify(true, b.finish); m.within(b.start) {
		for j, s := range b.start {
			out[j] = max(out[j], s)
		}
	}
	return out
}

// latestAlone is how late a job may start with all others where they are.
func (b *board) latestAlone(j int) int {
	was := b.start[j]
	b.take(j)
	_, hi := b.window(j)
	s := b.latest(j, was, hi)
	b.put(j, s)
	for !b.m.within(b.start) {
		b.take(j)
		s = b.latest(j, was, b.m.shape[j].prevStart(s-1))
		b.put(j, s)
	}
	b.take(j)
	b.put(j, was)
	return s
}
