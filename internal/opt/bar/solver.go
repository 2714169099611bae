package bar

import (
	"math"
	"slices"
)

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
	dives  int   // so far
	plain  bool  // no dives
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

// relax solves the linear program. Many of its bases are degenerate, so the
// needs are first changed by trifles that differ, then set right.
func (s *search) relax() {
	right := slices.Clone(s.a.lp.b)
	s.a.lp.setB(trifled(right, len(s.m.need)))
	if s.improve() {
		s.a.lp.setB(right)
		s.stuck = s.a.dual(s.a.lp, math.Inf(1)) != optimal || !s.improve()
		return
	}
	s.stuck = true
}

// trifled adds to each of the first so many numbers a little, spread by the
// golden section so that sums of a few do not agree.
func trifled(b []float64, many int) []float64 {
	const least, section = 1e-4, 0.6180339887498949
	b = slices.Clone(b)
	for k := range b[:many] {
		_, part := math.Modf(float64(k+1) * section)
		b[k] += least * (1 + part)
	}
	return b
}

// improve adds patterns until none makes the linear program cheaper; false where
// that did not come to an end. Duals leap about, so patterns are looked for
// between them and the weights that prove most so far (smoothing: Wentges,
// International Transactions in OR 4, 1997).
func (s *search) improve() bool {
	left := s.m.left()
	center := copied(s.a.lp.y)
	var most int64
	for !s.steps.over() {
		if !s.a.primal(s.a.lp) {
			return false
		}
		for _, part := range []float64{smooth, 0} {
			y := between(s.a.lp.y, center, part)
			added, w := s.a.offer(s.a.lp, y, s.m.need, left)
			if w == nil {
				return false
			}
			if v := s.m.worth(w); v > most {
				center, most = y, v
				s.prove(w)
			}
			if s.done() || added == 0 && part == 0 {
				return true
			}
			if added > 0 {
				break
			}
		}
	}
	return false
}

// smooth is how far from the duals toward the best weights to look.
const smooth = 0.7

func between(from, to []float64, part float64) []float64 {
	v := copied(from)
	for i := range v {
		v[i] += part * (to[i] - from[i])
	}
	return v
}

// close lowers the cost by dives, then raises the bound until they meet or the
// budget is spent.
func (s *search) close() {
	s.descend()
	for grow := int64(0); !s.done() && !s.stuck && !s.steps.over(); {
		target := min(s.lower+grow, s.cost-1)
		if s.enough >= 0 {
			target = s.enough
		}
		if !s.branch(target) {
			return
		}
		if s.cost > target {
			s.lower, s.by = max(s.lower, s.m.reachable(target+1)), ProofExhaustive
		}
		step, _ := s.m.priceStep()
		grow = max(2*grow, step)
	}
}

// descend dives for less and less, until a dive fails.
func (s *search) descend() {
	for !s.done() && !s.stuck {
		target := s.lower + (s.cost-1-s.lower)/2
		if s.enough >= 0 {
			target = s.enough
		}
		cost := s.cost
		if s.dive(target); s.cost < cost {
			continue
		}
		if target == s.cost-1 || s.enough >= 0 {
			return
		}
		if s.dive(s.cost - 1); s.cost == cost {
			return
		}
	}
}
