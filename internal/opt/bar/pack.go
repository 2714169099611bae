package bar

import (
	"cmp"
	"slices"
)

// Pack finds the cutting plan.
func Pack(p Problem) Result {
	p.check()
	st := &steps{limit: p.Budget}
	if p.Budget <= 0 {
		st.limit = DefaultBudget
	}
	m, kindOf := newModel(p)
	res := Result{Lacking: make([]int, len(p.Pieces))}
	for i, k := range kindOf {
		if k < 0 && p.Pieces[i].Count > 0 {
			res.Unfit = append(res.Unfit, i)
		}
	}
	s := newSearch(m, st, -1)
	if m.total > 0 {
		s.run(nil)
	}
	longest := s.remnant(p.Kerf)
	lay(p, m, kindOf, s.best, &res)
	s.report(kindOf, longest, &res)
	return res
}

// report fills in what is proven.
func (s *search) report(kindOf []int, longest int64, res *Result) {
	res.Lower = s.lower
	if s.m.scarce {
		res.Fewest = int(s.lower / s.m.lack)
		res.Lower = max(0, s.lower-s.cost/s.m.lack*s.m.lack)
	}
	res.Longest, res.Steps = max(longest, res.Remnant.Length), s.steps.used
	res.Complete = s.cost <= s.lower && res.Longest == res.Remnant.Length
	res.Proof = Proof{By: s.by, Scale: s.m.scale, Excess: s.w.excess, Penalty: s.m.lack}
	for _, k := range kindOf {
		v := int64(0)
		if k >= 0 {
			v = s.w.piece[k]
		}
		res.Proof.Weights = append(res.Proof.Weights, v)
	}
}

// lay gives the pieces their places: in each run the longest first, from its low
// end on, so that what remains is in one.
func lay(p Problem, m *model, kindOf []int, plan []pattern, res *Result) {
	h := newHand(p, kindOf)
	plan = slices.Clone(plan)
	slices.SortStableFunc(plan, func(a, b pattern) int { return cmp.Compare(a.stick, b.stick) })
	used := make([]int, len(p.Stocks))
	for _, q := range plan {
		if q.stick == lacking {
			for _, t := range q.takes {
				res.Lacking[h.next(t.kind)] += t.n
			}
			continue
		}
		used[q.stick]++
		res.Money += p.Stocks[q.stick].Price
		res.Sticks = append(res.Sticks, h.cut(p, m, q, len(res.Sticks), res))
	}
	for s, st := range p.Stocks {
		if st.Price == 0 && (st.Count == Unlimited || used[s] < st.Count) {
			for _, r := range clearRuns(st, p.Trim, p.Kerf) {
				res.remains(Remnant{s, -1, r.From, r.To - r.From})
			}
		}
	}
}

// remains keeps a remnant if it is longer, or as long and not cut.
func (r *Result) remains(x Remnant) {
	if x.Length > r.Remnant.Length {
		r.Remnant = x
	}
}

// hand deals out the pieces of each kind in the order of the problem.
type hand struct {
	pieces [][]int
	count  []int
}

func newHand(p Problem, kindOf []int) *hand {
	h := &hand{}
	for i, k := range kindOf {
		h.count = append(h.count, p.Pieces[i].Count)
		if k < 0 {
			continue
		}
		for len(h.pieces) <= k {
			h.pieces = append(h.pieces, nil)
		}
		h.pieces[k] = append(h.pieces[k], i)
	}
	return h
}

func (h *hand) next(kind int) int {
	for h.count[h.pieces[kind][0]] == 0 {
		h.pieces[kind] = h.pieces[kind][1:]
	}
	h.count[h.pieces[kind][0]]--
	return h.pieces[kind][0]
}

// cut lays out one stick.
func (h *hand) cut(p Problem, m *model, q pattern, stick int, res *Result) Stick {
	out := Stick{Stock: q.stick}
	for run, r := range clearRuns(p.Stocks[q.stick], p.Trim, p.Kerf) {
		at := r.From
		for _, k := range m.order {
			for _, t := range q.takes {
				if t.kind != k || t.run != run {
					continue
				}
				for range t.n {
					out.Cuts = append(out.Cuts, Cut{h.next(k), at})
					at += m.sizes[k]
				}
			}
		}
		res.remains(Remnant{q.stick, stick, at, r.To - at})
	}
	return out
}
