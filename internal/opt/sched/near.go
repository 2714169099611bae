package sched

import "slices"

// A vicinity is where a better schedule is looked for by complete search: some jobs are free, all others start about when
// they do now (large neighborhood search: Shaw, CP 1998; around a schedule: Palpant, Artigues, Michelon, Annals of OR 131
// (2004) 237-257). What is learned there holds everywhere and stays. How many are free follows from how it goes.
type vicinity struct {
	free int // jobs of a thousand
	dice dice
}

// patch is the steps for one choice of free jobs, before the next is tried.
const patch = 60_000

// nearby looks around the best schedule for one that ends sooner, in many choices of free jobs.
func (s *solver) nearby(turn int) {
	limit := s.top.steps + turn
	for !s.done() && s.best != nil && s.top.steps < limit {
		before := s.top.steps
		s.top.limit = min(before+patch, limit)
		v := s.top.near(s.around.pins(s.m, s.best), s.best)
		s.spent += s.top.steps - before
		switch v {
		case found:
			s.offer(s.justified(s.top.starts()))
		case exhausted:
			s.nothingBetter()
		default:
			s.around.learn(v)
		}
	}
}

// near searches for an end before that of starts, with lits assumed.
func (s *search) near(assumed []lit, starts []int) verdict {
	s.undo(0)
	if !s.raise(atMost(s.m.jobs, s.m.finish(starts)-1), reason{}) {
		return exhausted
	}
	s.assume, s.prefer = assumed, slices.Clone(starts)
	v := s.next()
	s.assume = nil
	return v
}

// learn frees more jobs where a choice was searched to its end, fewer where it was not.
func (a *vicinity) learn(v verdict) {
	if v == refused {
		a.free = min(1000, a.free+1+a.free/50)
	} else {
		a.free = max(100, a.free-a.free/25)
	}
}

// pins are the lits that hold all jobs but the free ones near their starts. Each may be a start earlier, or the end could
// not move, and a few ticks more to either side.
func (a *vicinity) pins(m *model, starts []int) []lit {
	free := a.choose(m, starts)
	about := a.dice.throw(3)
	var pins []lit
	for j, s := range starts {
		if free[j] || m.fixed[j] {
			continue
		}
		sh := m.shape[j]
		pins = append(pins, atMost(j, sh.prevStart(s+about)), atLeast(j, sh.prevStart(s-1-about)))
	}
	return pins
}

// choose frees jobs: those nearest to a moment, or any.
func (a *vicinity) choose(m *model, starts []int) []bool {
	list := m.everyJob()
	far := make([]int, m.jobs)
	moment := a.dice.throw(m.finish(starts) + 1)
	byTime := a.dice.throw(3) == 0
	for j, s := range starts {
		far[j] = a.dice.throw(64)
		if byTime {
			far[j] += 64 * max(s-moment, moment-m.shape[j].end[s], 0)
		}
	}
	slices.SortStableFunc(list, func(x, y int) int { return far[x] - far[y] })
	free := make([]bool, m.jobs)
	for _, j := range list[:min(m.jobs, 2+m.jobs*a.free/1000)] {
		free[j] = true
	}
	return free
}
