package nest

import (
	"cmp"
	"slices"
)

// choice is sheets that might hold all parts for less than the best plan costs.
type choice struct {
	open []int
	cost int64
	area float64
}

// maxChoices are looked at, the cheapest first; no more than lookChoices are
// listed.
const (
	maxChoices  = 6
	lookChoices = 5000
)

// choices lists sets of sheets that cost from the bound up to less than the best
// plan and have the area. All sheets of no price are in each.
func (s *search) choices() (list []choice) {
	base := choice{}
	var rest []int
	for i, b := range s.m.sheets {
		if b.price > 0 {
			rest = append(rest, i)
			continue
		}
		for range min(b.count, maxFree) {
			base = base.with(s.m, i)
		}
	}
	look := lookChoices
	s.extend(base, rest, &look, &list)
	slices.SortStableFunc(list, func(a, b choice) int { return cmp.Or(cmp.Compare(a.cost, b.cost), cmp.Compare(b.area, a.area)) })
	return list[:min(len(list), maxChoices)]
}

func (c choice) with(m *model, s int) choice {
	b := m.sheets[s]
	return choice{append(slices.Clone(c.open), s), c.cost + b.price, c.area + float64(b.w)*float64(b.h)}
}

// extend adds sheets of the kinds that are listed.
func (s *search) extend(c choice, rest []int, look *int, list *[]choice) {
	if *look--; *look < 0 || c.cost >= s.cost {
		return
	}
	if c.cost >= s.lower && c.area >= s.m.needArea() {
		*list = append(*list, c)
	}
	for i, k := range rest {
		if count(c.open, k) < s.m.sheets[k].count {
			s.extend(c.with(s.m, k), rest[i:], look, list)
		}
	}
}

func count(open []int, s int) (n int) {
	for _, o := range open {
		if o == s {
			n++
		}
	}
	return n
}

// needArea is the area of all parts.
func (m *model) needArea() (a float64) {
	for k, q := range m.kinds {
		a += float64(q.w) * float64(q.h) * float64(m.need[k])
	}
	return a
}

// choiceShare is the part of what is left that goes into choices.
const choiceShare = 16

// tryChoices looks for plans of the choices, the cheapest first.
func (s *search) tryChoices() {
	if s.done() || s.m.stages != 0 || s.m.scarce {
		return
	}
	st := *s.steps
	st.most = st.share(choiceShare)
	defer func() { s.steps.ops = st.ops }()
	list := s.choices()
	for i, c := range list {
		if c.cost >= s.cost {
			return
		}
		one := steps{st.ops, st.share(len(list) - i)}
		plan, ok := s.m.newCorners(c.open).holdAll(&one)
		st.ops = one.ops
		if ok {
			s.take(plan)
		}
	}
}

// share is the limit for one of so many that follow each other.
func (s *steps) share(n int) int64 {
	used := s.ops / opsPerStep
	return used + (s.most-used+int64(n)-1)/int64(n)
}

// further is a budget of a part of the whole from here on.
func (s *steps) further(part int64) *steps {
	return &steps{s.ops, min(s.most, s.ops/opsPerStep+s.most/part)}
}
