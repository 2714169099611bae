package bar

import "slices"

// search looks for the cheapest covering of a model.
type search struct {
	m      *model
	a      *master
	steps  *steps
	best   []pattern
	cost   int64 // of best
	lower  int64
	w      *weights // what proves the bound before any search
	by     string
	enough int64 // a plan that costs no more ends the search; -1 for none
	stuck  bool  // the linear program could not be finished
}

func newSearch(m *model, st *steps, enough int64) *search {
	return &search{m: m, a: newMaster(m, st), steps: st, enough: enough,
		w: &weights{by: ProofMaterial, piece: make([]int64, len(m.sizes)), excess: make([]int64, len(m.sticks))}}
}

// greedyNodes is how long greedy looks at each run.
const greedyNodes = 2000

// run searches until the plan is proven the best, or good enough, or shown that
// none is.
func (s *search) run(seeds []pattern) {
	s.best = s.m.greedy(slices.Clone(s.m.need), s.m.left(), greedyNodes)
	s.cost = s.m.cost(s.best)
	s.by = ProofMaterial
	s.prove(s.m.material())
	s.prove(s.m.dualFeasible())
	if s.done() {
		return
	}
	s.a.seed(seeds)
	s.a.seed(s.best)
	s.relax()
	s.close()
}

// done tells whether more search is of no use.
func (s *search) done() bool {
	return s.cost <= s.lower || s.enough >= 0 && (s.cost <= s.enough || s.lower > s.enough)
}

// prove takes a bound if it is higher.
func (s *search) prove(w *weights) {
	if w == nil || s.m.worth(w) <= s.m.worth(s.w) {
		return
	}
	s.w = w
	if l := s.m.proves(w); l > s.lower {
		s.lower, s.by = l, w.by
	}
}

// take keeps a plan if it is cheaper.
func (s *search) take(cover []pattern) {
	plan := s.m.trimmed(cover)
	if c := s.m.cost(plan); c < s.cost {
		s.best, s.cost = plan, c
	}
}

// relax solves the linear program.
func (s *search) relax() {
	left := s.m.left()
	for !s.steps.over() {
		if !s.a.primal(s.a.lp) {
			break
		}
		added, w := s.a.offer(s.a.lp, s.m.need, left)
		if w == nil {
			break
		}
		s.prove(w)
		if added == 0 || s.done() {
			return
		}
	}
	s.stuck = true
}

// close raises the target from the bound until a plan meets it or the budget
// is spent.
func (s *search) close() {
	for grow := int64(0); !s.done() && !s.stuck && !s.steps.over(); {
		target := min(s.lower+grow, s.cost-1)
		if s.enough >= 0 {
			target = s.enough
		}
		if s.dive(target); s.done() {
			return
		}
		if s.cost > target && !s.branch(target) {
			return
		}
		if s.cost > target {
			s.lower, s.by = max(s.lower, s.m.reachable(target+1)), ProofExhaustive
		}
		step, _ := s.m.priceStep()
		grow = max(2*grow, step)
	}
}
