package sched

// Solve finds a schedule with the earliest finish, or the best one that the steps allow.
func Solve(p *Problem, o Options) Result {
	if t := p.flaw(); t.Kind != NoTrouble {
		return Result{Outcome: Malformed, Trouble: t}
	}
	m, t := newModel(p)
	if t.Kind == NoTrouble {
		t, _ = m.cycle()
	}
	if t.Kind != NoTrouble {
		return Result{Outcome: Infeasible, Trouble: t}
	}
	s := &solver{m: m, steps: o.Steps, known: o.Known, around: vicinity{free: 300, dice: 1}}
	if s.steps <= 0 {
		s.steps = DefaultSteps
	}
	return s.solve()
}

// A solver keeps what the stages know.
type solver struct {
	m     *model
	steps int // that may be spent
	known []int
	*climb
	bound  int
	proof  Proof
	spent  int // apart from those that the climb counts
	top    *search
	bottom *search
	around vicinity
	closed bool // nothing better than the best exists
}

func (s *solver) solve() Result {
	if s.m.jobs == 0 {
		return Result{Outcome: Optimal}
	}
	e := newEngine(s.m)
	e.pairs()
	if !e.root() {
		return Result{Outcome: Infeasible, Trouble: s.emptied(e), Steps: e.steps}
	}
	if i := e.restrict(); i >= 0 {
		return Result{Outcome: Infeasible, Trouble: Trouble{Kind: OverLimit, Item: i}, Steps: e.steps}
	}
	s.climb = newClimb(newBoard(s.m, e))
	s.firstBound(e)
	if s.sound(s.known) {
		s.offer(s.known)
	}
	s.construct()
	s.rounds()
	r := s.result()
	r.Steps = s.used()
	return r
}

// ready is an engine at its root, with all rules, of a model that has been found to have one.
func (m *model) ready() *engine {
	e := newEngine(m)
	e.pairs()
	if !e.root() || e.restrict() >= 0 {
		panic("sched: a root that held fails")
	}
	return e
}

// emptied names the job without a start in a conflict at the root.
func (s *solver) emptied(e *engine) Trouble {
	t := Trouble{Kind: EmptyWindow}
	for _, l := range e.conflict { // the last lit is the bound that another ran into; of a fixed job, blame the other
		if j := l.side >> 1; j < s.m.jobs && (t.Jobs == nil || !s.m.fixed[j]) {
			t.Jobs = []int{j}
		}
	}
	return t
}

// firstBound is the longest path, or what capacity adds to it: finishes are refuted one by one from below.
func (s *solver) firstBound(e *engine) {
	bare := *s.m
	bare.users = make([][]int, len(bare.users))
	bare.uses = make([][]hold, len(bare.uses))
	path := newEngine(&bare)
	if !path.root() {
		panic("sched: lags alone fail where lags and capacities do not")
	}
	s.bound = path.lo(s.m.jobs)
	if capacity := s.refute(e); capacity > s.bound {
		s.bound, s.proof = capacity, ByCapacity
	}
	s.spent += e.steps + path.steps
}

// refute raises the finish while windows and energy exclude it.
func (s *solver) refute(e *engine) int {
	n := s.m.jobs
	limit := e.steps + s.steps/10
	f := e.lo(n)
	for ; f < s.m.horizon && e.steps < limit; f++ {
		e.decide(atMost(n, f))
		possible := e.propagate() && !e.overfull()
		e.undo(0)
		if possible {
			break
		}
	}
	return f
}

func (s *solver) used() int { return s.spent + s.climb.steps/placements }

// placements is about how many placements tried cost as much as one step.
const placements = 4

// rounds gives the searches turns of growing length: around the best schedule by lists and by complete search of its
// vicinity, below it, and above the bound; the last gets less, for a better schedule is worth more than a better bound.
func (s *solver) rounds() {
	budget := s.steps
	if len(s.m.p.Goals) > 0 {
		budget /= 2
	}
	left := func(turn int) int { return max(0, min(turn, budget-s.used())) }
	for turn := 1 + budget/64; !s.done() && s.used() < budget; turn += turn / 2 {
		s.improve(s.bound, left(2*turn)*placements)
		for _, search := range []func(int){s.fromAbove, s.nearby, func(turn int) { s.fromBelow(turn / 8) }} {
			if !s.done() {
				search(left(turn))
			}
		}
	}
}

func (s *solver) done() bool { return s.closed || s.best != nil && s.end == s.bound }

// fromAbove looks for a schedule that ends before the best one.
func (s *solver) fromAbove(turn int) {
	if s.top == nil {
		s.top = newSearch(s.m.ready(), 0)
	}
	before := s.top.steps
	s.top.limit = before + turn
	starts, v := s.top.descend(s.best, s.justified)
	s.spent += s.top.steps - before
	if starts != nil {
		s.offer(starts)
	}
	if v == exhausted {
		s.nothingBetter()
	}
}

// nothingBetter: the best schedule is proven the best, or there is none.
func (s *solver) nothingBetter() {
	s.closed = true
	if s.best != nil && s.end > s.bound {
		s.bound, s.proof = s.end, BySearch
	}
}

// fromBelow asks whether the bound itself can be the finish.
func (s *solver) fromBelow(turn int) {
	for turn > 0 && !s.done() {
		if s.bottom == nil {
			s.bottom = newSearch(s.m.ready(), 0)
			if !s.bottom.raise(atMost(s.m.jobs, s.bound), reason{}) {
				s.raiseBound()
				continue
			}
		}
		before := s.bottom.steps
		s.bottom.limit = before + turn
		v := s.bottom.next()
		turn -= s.bottom.steps - before
		s.spent += s.bottom.steps - before
		switch v {
		case found:
			s.offer(s.bottom.starts())
		case exhausted:
			s.raiseBound()
		}
	}
}

func (s *solver) raiseBound() {
	s.bottom = nil
	s.bound++
	s.proof = BySearch
	s.closed = s.bound > s.m.horizon
}

// result puts together what is known, after the goals.
func (s *solver) result() Result {
	m := s.m
	r := Result{Bound: s.bound, Proof: s.proof}
	switch {
	case s.best == nil && s.closed:
		return Result{Outcome: Infeasible, Trouble: Trouble{Kind: NoneFits}}
	case s.best == nil:
		r.Outcome, r.Trouble.Kind = Unknown, OverspentSearch
		return r
	case s.end == s.bound:
		r.Outcome = Optimal
	default:
		r.Outcome = Feasible
	}
	best, goals, took := m.goals(s.best, max(s.steps-s.used(), s.steps/4))
	s.spent += took
	r.Starts = s.tidy(best)
	r.Goals = goals
	for i, v := range m.values(r.Starts) {
		r.Goals[i].Value = v
	}
	r.Ends, r.Finish = m.ends(r.Starts), m.finish(r.Starts)
	r.Latest = s.latestStarts(r.Starts)
	r.Chain = s.chain(r.Starts)
	r.Broken = m.broken()
	return r
}

// broken lists the lags between fixed jobs that did not hold.
func (m *model) broken() []int {
	var out []int
	for i, l := range m.p.Lags {
		if !m.fixed[l.From.Job] || !m.fixed[l.To.Job] {
			continue
		}
		if m.time(l.From, m.low[l.From.Job])+l.Ticks > m.time(l.To, m.low[l.To.Job]) {
			out = append(out, i)
		}
	}
	return out
}
