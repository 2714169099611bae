package sched

import "math/bits"

// Lanes pack the levels of several resources into words, so that one subtraction asks about all of them: each resource has
// a lane of its own, whose topmost bit is a guard. In a table of what is free the guards are set; taking away more than is
// free borrows from the lane's own guard, and shows there.
type lanes struct {
	wide   int    // bits of a lane with its guard
	each   int    // lanes in a word
	words  int    // words of all resources
	guards uint64 // of a word
	draws  [][]draw
}

// A draw is what a job takes out of one word while it works and while it pauses.
type draw struct {
	word            int
	working, paused uint64
}

// newLanes makes lanes wide enough for the greatest level and one more, which stands for all that is never free.
func newLanes(m *model) lanes {
	most := 0
	for _, c := range m.cap {
		for _, a := range c {
			most = max(most, a)
		}
	}
	l := lanes{wide: bits.Len(uint(most+1)) + 1}
	l.each = 64 / l.wide
	l.words = (len(m.cap) + l.each - 1) / l.each
	for i := range l.each {
		l.guards |= 1 << (i*l.wide + l.wide - 1)
	}
	for j := range m.jobs {
		l.draws = append(l.draws, l.drawsOf(m.uses[j], most+1))
	}
	return l
}

// at is the word and the place in it of a resource.
func (l *lanes) at(resource int) (word, shift int) {
	return resource / l.each, resource % l.each * l.wide
}

func (l *lanes) drawsOf(uses []hold, never int) []draw {
	var out []draw
	for _, u := range uses {
		word, shift := l.at(u.resource)
		i := 0
		for i < len(out) && out[i].word != word {
			i++
		}
		if i == len(out) {
			out = append(out, draw{word: word})
		}
		out[i].working |= uint64(min(u.working, never)) << shift
		out[i].paused |= uint64(min(u.paused, never)) << shift
	}
	return out
}

// table is what is free of all resources, by word and tick.
func (l *lanes) table(levels [][]int) [][]uint64 {
	free := make([][]uint64, l.words)
	for w := range free {
		free[w] = make([]uint64, len(levels[0]))
		for t := range free[w] {
			free[w][t] = l.guards
		}
	}
	for r, c := range levels {
		word, shift := l.at(r)
		for t, a := range c {
			free[word][t] |= uint64(a) << shift
		}
	}
	return free
}

// level is what is free of one resource at a tick.
func (l *lanes) level(free [][]uint64, resource, t int) int {
	word, shift := l.at(resource)
	return int(free[word][t] >> shift & (1<<(l.wide-1) - 1))
}

// shift adds what the job holds between two ticks to a word of the table, sign times: 1 frees it, the all-ones word takes it.
func (d draw) shift(free []uint64, a, b int, works []bool, sign uint64) {
	free = free[:b]
	if works == nil || d.working == d.paused {
		for t, x := a, sign*d.working; t < b; t++ {
			free[t] += x
		}
		return
	}
	for t := a; t < b; t++ {
		free[t] += sign * d.at(works[t])
	}
}

// lasts is the last tick from a to before b at which free has less than d, or -1.
func (d draw) lasts(free []uint64, a, b int, works []bool, guards uint64) int {
	free = free[:b]
	if works == nil || d.working == d.paused {
		for t := b - 1; t >= a; t-- {
			if (free[t]-d.working)&guards != guards {
				return t
			}
		}
		return -1
	}
	for t := b - 1; t >= a; t-- {
		if (free[t]-d.at(works[t]))&guards != guards {
			return t
		}
	}
	return -1
}

// firsts is the first such tick, or b.
func (d draw) firsts(free []uint64, a, b int, works []bool, guards uint64) int {
	free = free[:b]
	if works == nil || d.working == d.paused {
		for t := a; t < b; t++ {
			if (free[t]-d.working)&guards != guards {
				return t
			}
		}
		return b
	}
	for t := a; t < b; t++ {
		if (free[t]-d.at(works[t]))&guards != guards {
			return t
		}
	}
	return b
}

func (d draw) at(works bool) uint64 {
	if works {
		return d.working
	}
	return d.paused
}
