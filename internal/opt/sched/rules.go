package sched

import "slices"

// lists are the jobs in the order of each priority rule (Kolisch, EJOR 90 (1996) 320-333): latest start, latest finish,
// most followers, least slack, most work behind.
func (b *board) lists(ahead [][]int) [][]int {
	m := b.m
	followers, work := m.behind(ahead)
	rules := []func(j int) int{
		func(j int) int { return b.high[j] },
		func(j int) int { return m.shape[j].end[b.high[j]] },
		func(j int) int { return -followers[j] },
		func(j int) int { return b.high[j] - b.root[j] },
		func(j int) int { return -work[j] },
	}
	var out [][]int
	for _, key := range rules {
		list := m.everyJob()
		slices.SortStableFunc(list, func(x, y int) int { return key(x) - key(y) })
		out = append(out, list)
	}
	return out
}

// behind counts for each job the jobs that come after it, near and far, and their duration with its own.
func (m *model) behind(ahead [][]int) (count, work []int) {
	after := make([][]int, m.jobs)
	for j, list := range ahead {
		for _, i := range list {
			after[i] = append(after[i], j)
		}
	}
	count, work = make([]int, m.jobs), make([]int, m.jobs)
	seen := make([]int, m.jobs)
	for j := range m.jobs {
		todo := []int{j}
		seen[j] = j + 1
		for len(todo) > 0 {
			i := todo[len(todo)-1]
			todo = todo[:len(todo)-1]
			count[j]++
			work[j] += m.shape[i].end[m.low[i]] - m.low[i]
			for _, k := range after[i] {
				if seen[k] != j+1 {
					seen[k] = j + 1
					todo = append(todo, k)
				}
			}
		}
	}
	return count, work
}
