package sched

import "slices"

// latestStarts gives for each job a start so late, still allowing the finish: the later of where it can go with all
// others as planned and where it goes when all move as late as they can.
func (b *board) latestStarts(starts []int) []int {
	b.load(starts)
	copy(b.low, b.root)
	m := b.m
	b.finish = m.finish(starts)
	out := slices.Clone(starts)
	for j := range out {
		if m.fixed[j] {
			continue
		}
		b.take(j)
		_, hi := b.window(j)
		out[j] = b.latest(j, starts[j], hi)
		b.put(j, starts[j])
	}
	b.justify(true, b.finish)
	for j, s := range b.start {
		out[j] = max(out[j], s)
	}
	return out
}
