package sched

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// The tables of a shape say what a walk over all starts says.
func TestShape(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 1)
		p.Jobs[0].Fixed = false
		m, trouble := newModel(p)
		if trouble.Kind != NoTrouble {
			return
		}
		s, h := m.shape[0], p.Horizon
		first := func(ok func(start, end int) bool) int {
			for at := 0; at <= h; at++ {
				if _, end, may := ticksOf(&Problem{Horizon: h, Jobs: []Job{free(p.Jobs[0])}, Calendars: p.Calendars}, 0, at); may && ok(at, end) {
					return at
				}
			}
			return h + 1
		}
		last := func(ok func(start, end int) bool) int {
			found := -1
			for at := 0; at <= h; at++ {
				if f := first(func(start, end int) bool { return start == at && ok(start, end) }); f == at {
					found = at
				}
			}
			return found
		}
		for v := -2; v <= h+3; v++ {
			for _, c := range []struct {
				name      string
				got, want int
			}{
				{"next", s.nextStart(v), first(func(a, _ int) bool { return a >= v })},
				{"prev", s.prevStart(v), last(func(a, _ int) bool { return a <= v })},
				{"first ender", s.firstEnder(v), first(func(_, e int) bool { return e >= v })},
				{"last ender", s.lastEnder(v), last(func(_, e int) bool { return e <= v })},
			} {
				if c.got != c.want {
					t.Fatalf("%s(%d) is %d, want %d: %+v %+v", c.name, v, c.got, c.want, p.Jobs[0], p.Calendars)
				}
			}
		}
	})
}

func free(j Job) Job {
	j.Release, j.Due = 0, 0
	return j
}

// Whatever is decided: each rise follows from lits that held before it, no bound excludes a schedule that keeps all
// decisions, the load is that of the compulsory parts, and undoing gives back what was.
func TestEngineInvariants(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 6)
		m, trouble := newModel(p)
		if trouble.Kind != NoTrouble {
			return
		}
		e := newEngine(m)
		e.pairs()
		if !e.root() {
			return
		}
		was := slices.Clone(e.bound)
		for range rapid.IntRange(1, 6).Draw(t, "decisions") {
			x := rapid.IntRange(0, m.jobs-1).Draw(t, "job")
			if e.set(x) {
				continue
			}
			e.decide(atMost(x, m.shape[x].prevStart(rapid.IntRange(e.lo(x), e.hi(x)-1).Draw(t, "at"))))
			if !e.propagate() {
				for _, l := range e.conflict {
					if !e.holds(l) {
						t.Fatalf("conflict names %v, which does not hold", l)
					}
				}
				break
			}
			reasonsHold(t, e)
			loadsHold(t, e)
		}
		e.undo(0)
		loadsHold(t, e)
		if !slices.Equal(e.bound, was) {
			t.Fatalf("%v after undoing, %v before", e.bound, was)
		}
	})
}

func reasonsHold(t *rapid.T, e *engine) {
	for i := range e.trail {
		r := e.trail[i]
		if r.why.kind == decided || e.level() == 0 || i < e.levels[0] {
			continue
		}
		for _, l := range e.explain(lit{r.side, r.to}, r.why, nil) {
			if at := e.reachedBy(l); !e.holds(l) || at >= i {
				t.Fatalf("rise %d rests on %v, reached by rise %d", i, l, at)
			}
		}
	}
}

func loadsHold(t *rapid.T, e *engine) {
	for r := range e.load {
		for at, load := range e.load[r] {
			want := 0
			for _, j := range e.m.users[r] {
				if e.covers(j, at) {
					want += e.m.holds(j, r, at)
				}
			}
			if load != want {
				t.Fatalf("load of %d at %d is %d, want %d", r, at, load, want)
			}
		}
	}
}

// Each learned clause keeps every schedule that the problem has: none that is found by trying all starts breaks it.
func TestLearnedClausesKeepAllSchedules(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 4)
		p.Goals = nil
		m, trouble := newModel(p)
		if trouble.Kind != NoTrouble {
			return
		}
		e := newEngine(m)
		if !e.root() {
			return
		}
		s := newSearch(e, 1<<30)
		for s.next() == found { // go on to the next schedule by forbidding this one's finish
			finish := s.lo(m.jobs)
			s.undo(0)
			if !s.raise(atMost(m.jobs, finish-1), reason{}) {
				break
			}
			all := schedules(p, finish-1)
			for _, c := range s.clauses {
				for _, starts := range all {
					if c.learned && !satisfied(c, append(slices.Clone(starts), m.finish(starts))) {
						t.Fatalf("clause %v excludes %v\n%+v", c.lits, starts, p)
					}
				}
			}
		}
	})
}

// satisfied: the sink may stand anywhere from the finish on; at the finish most lits about it hold.
func satisfied(c clause, values []int) bool {
	return slices.ContainsFunc(c.lits, func(l lit) bool {
		v := values[l.side>>1]
		return l.side&1 == 0 && v >= l.at || l.side&1 == 1 && -v >= l.at
	})
}

// schedules lists all that end by a finish.
func schedules(p *Problem, finish int) [][]int {
	var all [][]int
	at := make([]*placed, len(p.Jobs))
	var try func(j int)
	try = func(j int) {
		if j == len(at) {
			var starts []int
			for _, a := range at {
				starts = append(starts, a.start)
			}
			all = append(all, starts)
			return
		}
		for s := 0; s <= p.Horizon; s++ {
			if work, end, ok := ticksOf(p, j, s); ok && end <= finish {
				at[j] = &placed{s, end, work}
				if fault(p, at) == "" {
					try(j + 1)
				}
				at[j] = nil
			}
		}
	}
	try(0)
	return all
}

// The pace of restarts is 1 1 2 1 1 2 4 (Luby, Sinclair, Zuckerman 1993).
func TestPace(t *testing.T) {
	var got []int
	for i := 1; i <= 15; i++ {
		got = append(got, luby(i))
	}
	if want := []int{1, 1, 2, 1, 1, 2, 4, 1, 1, 2, 1, 1, 2, 4, 8}; !slices.Equal(got, want) {
		t.Error(got)
	}
}
