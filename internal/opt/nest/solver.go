package nest

import "slices"

// Pack finds the cutting plan.
func Pack(p Problem) Result {
	p.check()
	m, unfit := newModel(p)
	st := &steps{most: int64(p.Budget)}
	if p.Budget <= 0 {
		st.most = DefaultBudget
	}
	s := newSearch(m, st)
	s.run()
	r := s.result(p)
	r.Unfit = unfit
	return r
}

// search looks for the cheapest plan of a model.
type search struct {
	m     *model
	f     *filler
	d     *diver
	steps *steps
	best  []pattern
	cost  int64
	spare int64 // area of the largest offcut of best
	lower int64
	w     *weights // what proves the bound before any search
	by    string
	whole bool // every plan was tried, for the offcut too
}

func newSearch(m *model, st *steps) *search {
	f := newFiller(m, st)
	s := &search{m: m, f: f, d: &diver{f, newPool()}, steps: st, by: ProofArea}
	s.w = &weights{by: ProofArea, part: make([]int64, len(m.kinds)), excess: make([]int64, len(m.sheets))}
	s.best = m.leaveOut(m.need)
	s.cost = m.cost(s.best)
	return s
}

func (s *search) run() {
	if s.m.total == 0 {
		s.whole = true
		return
	}
	s.prove(s.m.areaWeights())
	s.prove(s.m.dualWeights(s.steps))
	if s.m.total <= ExactParts && s.exhaust() {
		return
	}
	if s.tryChoices(); s.done() {
		return
	}
	s.fillings()
	s.tryChoices()
	if s.done() {
		return
	}
	s.m.lpWeights(&steps{s.steps.ops, s.steps.most/3 + s.steps.ops/2}, s.cost, s.prove)
	s.dives()
}

func (s *search) done() bool { return s.cost <= s.lower || s.steps.over() }

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

// exhaust tries every plan; false where the budget does not reach.
func (s *search) exhaust() bool {
	e := s.m.exact(s.steps)
	if !e.found || s.steps.over() {
		return false
	}
	s.best, s.cost = e.patterns(), e.cost
	if s.cost > s.lower {
		s.lower, s.by = s.cost, ProofExhaustive
	}
	s.whole = s.m.first == Whole && s.m.stages == 0
	return true
}

// take keeps a plan if it is cheaper, or leaves the larger offcut for the same.
func (s *search) take(plan []pattern) {
	for _, p := range plan {
		s.d.pool.add(p)
	}
	plan = s.f.downsize(plan)
	c := s.m.cost(plan)
	if c > s.cost {
		return
	}
	spare, ok := s.m.largest(plan)
	require(ok, "a filling that breaks the rules")
	if c < s.cost || spare > s.spare {
		s.best, s.cost, s.spare = plan, c, spare
	}
}

// largest is the area of the largest offcut of a plan.
func (m *model) largest(plan []pattern) (int64, bool) {
	var best Offcut
	for _, p := range plan {
		if p.sheet == lacking {
			continue
		}
		q, ok := m.carve(p)
		if !ok {
			return 0, false
		}
		if o := m.spare(q); o.better(best) {
			best = o
		}
	}
	return best.Area(), true
}

// powers of the area are what parts are first taken to be worth; the higher, the
// sooner large parts are cut.
var powers = [...]float64{1.3, 1.1, 1.6, 1}

// rounds is how many plans are made with each power.
const rounds = 12

// fillings makes plans for a part of the budget.
func (s *search) fillings() {
	first := *s.steps
	first.most /= 4
	s.plans(&first, func() bool { return s.done() || first.over() })
}

// plans makes plans by worths that follow the waste, and keeps what is better.
func (s *search) plans(st *steps, enough func() bool) {
	f := *s.f
	f.steps = st
	defer func() { s.steps.ops = st.ops }()
	for i, power := range powers {
		w := newWorths(s.m, power)
		f.inStrips(i%2 == 1)
		for range rounds {
			plan := f.greedy(w.whole(), slices.Clone(s.m.need), s.m.stock())
			if s.take(plan); enough() {
				return
			}
			w.learn(plan, power, 0.5)
		}
	}
}

// fewDives ends the search where further dives have found nothing.
const fewDives = 12

// dives makes plans from the linear program.
func (s *search) dives() {
	s.d.relax(slices.Clone(s.m.need), s.m.stock(), 100)
	for sway := uint64(0); sway < fewDives && !s.done(); sway++ {
		s.f.inStrips(sway%3 == 2)
		if plan, ok := s.d.dive(4, s.cost, sway); ok {
			s.take(plan)
			sway = 0
		}
	}
	s.f.inStrips(false)
}
