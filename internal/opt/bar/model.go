package bar

import (
	"cmp"
	"slices"
)

// model is a problem with the kerf, the trims and the defects taken out:
// kinds of pieces and sticks that are lists of runs, each with the kerf added.
type model struct {
	sizes  []int64 // of the kinds: length + kerf, falling
	need   []int
	order  []int // kinds by falling size
	sticks []stick
	total  int   // pieces
	lack   int64 // what a lacking piece costs: more than any plan saves by it
	scarce bool  // pieces may lack
	scale  int64 // whole weights for one unit of money
}

// stick is a stock as the solver sees it.
type stick struct {
	price   int64
	count   int     // at most as many as there are pieces
	limited bool    // count may bind
	runs    []int64 // kerf added, in the order along the stick
}

// maxScale is far finer than floats solve the linear program.
const maxScale = 1 << 40

// newModel groups pieces by length; kindOf tells where each went, -1 for unfit.
func newModel(p Problem) (m *model, kindOf []int) {
	m = &model{}
	longest := m.addStocks(p)
	kindOf = m.addPieces(p, longest)
	m.limitCounts()
	m.setLack()
	return m, kindOf
}

func (m *model) addStocks(p Problem) (longest int64) {
	for _, s := range p.Stocks {
		st := stick{price: s.Price, count: s.Count}
		for _, r := range clearRuns(s, p.Trim, p.Kerf) {
			st.runs = append(st.runs, r.To-r.From+p.Kerf)
			if s.Count != 0 {
				longest = max(longest, r.To-r.From)
			}
		}
		m.sticks = append(m.sticks, st)
	}
	return longest
}

func (m *model) addPieces(p Problem, longest int64) (kindOf []int) {
	counts := map[int64]int{}
	for _, q := range p.Pieces {
		if q.Length <= longest && q.Count > 0 {
			counts[q.Length+p.Kerf] += q.Count
			m.total += q.Count
		}
	}
	for size := range counts {
		m.sizes = append(m.sizes, size)
	}
	slices.SortFunc(m.sizes, func(a, b int64) int { return cmp.Compare(b, a) })
	for k, size := range m.sizes {
		m.need = append(m.need, counts[size])
		m.order = append(m.order, k)
	}
	for _, q := range p.Pieces {
		kindOf = append(kindOf, slices.Index(m.sizes, q.Length+p.Kerf))
	}
	return kindOf
}

// limitCounts replaces counts that can not bind, even with one more piece.
func (m *model) limitCounts() {
	for i := range m.sticks {
		s := &m.sticks[i]
		s.limited = s.count != Unlimited && s.count <= m.total
		if !s.limited {
			s.count = m.total
		}
	}
}

// setLack prices a lacking piece. Where an unlimited stick holds the longest
// piece none ever lacks, and more than that stick costs is enough.
func (m *model) setLack() {
	var dearest int64
	always := false
	for _, s := range m.sticks {
		dearest = max(dearest, s.price)
		always = always || !s.limited && len(m.sizes) > 0 && s.longestRun() >= m.sizes[0]
	}
	m.lack = dearest + 1
	if m.scarce = !always; m.scarce {
		m.lack = dearest*int64(m.total+1) + 1
	}
	require(int64(m.total+1) <= maxTotal/m.lack, "too many pieces at that price")
	m.scale = maxScale
	for m.scale > 1 && int64(m.total+1)*m.lack > (1<<60)/m.scale {
		m.scale /= 2
	}
}

func (s stick) longestRun() int64 {
	if len(s.runs) == 0 {
		return 0
	}
	return slices.Max(s.runs)
}

// capacity is what all runs hold together.
func (s stick) capacity() int64 {
	var sum int64
	for _, r := range s.runs {
		sum += r
	}
	return sum
}

// clearRuns lists the stretches of a stick that can be used, from its low end.
func clearRuns(s Stock, trim, kerf int64) []Span {
	defects := slices.Clone(s.Defects)
	slices.SortFunc(defects, func(a, b Span) int { return cmp.Compare(a.From, b.From) })
	var runs []Span
	at, end := trim, s.Length-trim
	for _, d := range defects {
		if d.To <= d.From {
			continue
		}
		if stop := min(d.From, end); stop > at {
			runs = append(runs, Span{at, stop})
		}
		at = max(at, d.To, d.From+kerf)
	}
	if end > at {
		runs = append(runs, Span{at, end})
	}
	return runs
}

// withExtra is the model with one more piece, a kind of its own and the last,
// whatever its size, so that patterns of m are patterns of it.
func (m *model) withExtra(size int64) *model {
	x := *m
	x.sizes = append(slices.Clone(m.sizes), size)
	x.need = append(slices.Clone(m.need), 1)
	at, _ := slices.BinarySearchFunc(m.order, size, func(k int, size int64) int { return cmp.Compare(size, m.sizes[k]) })
	x.order = slices.Insert(slices.Clone(m.order), at, len(m.sizes))
	x.sticks = slices.Clone(m.sticks)
	x.total++
	for i := range x.sticks {
		if !x.sticks[i].limited {
			x.sticks[i].count = x.total
		}
	}
	return &x
}
