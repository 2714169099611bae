package sched

import "slices"

// A verdict is how a search ended.
type verdict uint8

const (
	spent     verdict = iota // the steps ran out
	exhausted                // no solution is left
	found
	refused // no solution is left under what was assumed
)

// A search looks for solutions by decisions, each "this job no later than now": a job that is refused its earliest
// start is only taken up again later. Which job: at first the one that can start first, then by what conflicts name.
type search struct {
	*engine
	limit    int // of steps
	restarts int
	conf     int // conflicts since the restart
	allconf  int
	learned  int // clauses since the last forgetting
	keep     int
	assume   []lit // decided first; where one is refused, nothing is left
	prefer   []int // starts to try first where they still may be: those of the best schedule
}

func newSearch(e *engine, limit int) *search { return &search{engine: e, limit: limit, keep: 1500} }

// next goes on until all variables are set, nothing is left, or the steps are spent.
func (s *search) next() verdict {
	for {
		if !s.propagate() {
			if !s.resolve() {
				return exhausted
			}
			continue
		}
		if s.steps > s.limit {
			return spent
		}
		if s.conf >= s.patience() {
			s.restart()
			continue
		}
		if n := s.level(); n < len(s.assume) {
			if s.excludes(s.assume[n]) {
				return refused
			}
			s.decide(s.assume[n])
			continue
		}
		l, open := s.choose()
		if !open {
			return found
		}
		s.decide(l)
	}
}

// resolve learns from the conflict and goes back to where the lesson matters.
func (s *search) resolve() bool {
	for {
		if s.level() == 0 {
			return false
		}
		lits, level := s.learn()
		if len(lits) == 0 {
			return false
		}
		s.conf++
		s.allconf++
		s.learned++
		s.decay()
		if s.assert(lits, level) {
			return true
		}
	}
}

// patience is the conflicts until a restart: 100 times the sequence 1 1 2 1 1 2 4 ... (Luby, Sinclair, Zuckerman 1993).
func (s *search) patience() int { return 100 * luby(s.restarts+1) }

func luby(i int) int {
	for k := 1; ; k++ {
		if i == 1<<k-1 {
			return 1 << (k - 1)
		}
		if i < 1<<k-1 {
			return luby(i - (1<<(k-1) - 1))
		}
	}
}

func (s *search) restart() {
	s.undo(0)
	s.restarts++
	s.conf = 0
	if s.learned >= s.keep {
		s.forget()
		s.learned = 0
		s.keep += s.keep / 10
	}
}

// choose is the next decision; false when all is set.
func (s *search) choose() (lit, bool) {
	best, n := -1, s.m.jobs
	byTime := s.restarts%2 == 0
	for x := range s.activity {
		if x == n || s.set(x) || byTime && x > n {
			continue
		}
		if best < 0 || s.before(x, best, byTime && x < n && best < n) {
			best = x
		}
	}
	if best < 0 {
		if s.set(n) {
			return lit{}, false
		}
		return atMost(n, s.lo(n)), true
	}
	return s.value(best, byTime), true
}

func (s *search) before(x, y int, byTime bool) bool {
	if byTime {
		if s.lo(x) != s.lo(y) {
			return s.lo(x) < s.lo(y)
		}
		if s.hi(x) != s.hi(y) {
			return s.hi(x) < s.hi(y)
		}
	}
	return s.activity[x] > s.activity[y]
}

// value is the decision on a variable: no later than its earliest, or toward the preferred start.
func (s *search) value(x int, byTime bool) lit {
	if byTime || x >= len(s.prefer) {
		return atMost(x, s.lo(x))
	}
	switch p := s.prefer[x]; {
	case p <= s.lo(x) || p > s.hi(x):
		return atMost(x, s.lo(x))
	case p == s.hi(x):
		return atLeast(x, p)
	default:
		return atMost(x, p)
	}
}

// starts are the starts of all jobs in a solution.
func (s *search) starts() []int {
	out := make([]int, s.m.jobs)
	for j := range out {
		out[j] = s.lo(j)
	}
	return out
}

// descend finds ever earlier finishes than one of starts (nil: any) until none is left.
func (s *search) descend(starts []int, better func([]int) []int) ([]int, verdict) {
	for {
		if starts != nil {
			s.prefer = slices.Clone(starts)
			s.undo(0)
			if !s.raise(atMost(s.m.jobs, s.m.finish(starts)-1), reason{}) {
				return starts, exhausted
			}
		}
		switch v := s.next(); v {
		case found:
			starts = better(s.starts())
		default:
			return starts, v
		}
	}
}
