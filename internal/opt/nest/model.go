package nest

import "slices"

// kind is parts that are alike for the saw. Sizes hold their kerf: see rule 3.
type kind struct {
	w, h  int64
	turns bool
	parts []int // indices of the parts, as often as each is wanted
}

// sheet is a clear sheet that something fits, its kerf added.
type sheet struct {
	of          int // index in the problem
	w, h, price int64
	count       int
	limited     bool
}

// model is a problem without kerf, trim and names.
type model struct {
	kerf   int64
	kinds  []kind
	sheets []sheet
	need   []int // how many of each kind
	total  int
	first  Cut
	stages int
	least  int64 // of the sides of an offcut
	lack   int64 // cost of a part that is left out: more than any plan
	scarce bool  // parts may have to be left out
	scale  int64 // whole weights for a unit of money
}

// newModel also lists the parts that fit no sheet.
func newModel(p Problem) (m *model, unfit []int) {
	m = &model{kerf: p.Kerf, first: p.First, stages: p.Stages, least: p.LeastSide}
	if m.stages > maxStages {
		m.stages = 0
	}
	for i, s := range p.Sheets {
		w, h := s.W-2*s.Trim+p.Kerf, s.H-2*s.Trim+p.Kerf
		if w > p.Kerf && h > p.Kerf && s.Count != 0 {
			m.sheets = append(m.sheets, sheet{i, w, h, s.Price, s.Count, s.Count != Unlimited})
		}
	}
	unfit = m.addParts(p)
	m.limit()
	return m, unfit
}

func (m *model) addParts(p Problem) (unfit []int) {
	index := map[kind3]int{}
	for i, q := range p.Parts {
		k := kind{w: q.W + p.Kerf, h: q.H + p.Kerf, turns: q.Turns && q.W != q.H}
		if k.turns && k.w < k.h {
			k.w, k.h = k.h, k.w
		}
		if !m.holds(k) {
			unfit = append(unfit, i)
			continue
		}
		if q.Count == 0 {
			continue
		}
		at, seen := index[kind3{k.w, k.h, k.turns}]
		if !seen {
			at = len(m.kinds)
			index[kind3{k.w, k.h, k.turns}] = at
			m.kinds = append(m.kinds, k)
		}
		m.kinds[at].parts = append(m.kinds[at].parts, slices.Repeat([]int{i}, q.Count)...)
	}
	for _, k := range m.kinds {
		m.need = append(m.need, len(k.parts))
		m.total += len(k.parts)
	}
	return unfit
}

type kind3 struct {
	w, h  int64
	turns bool
}

// holds tells whether some sheet can be cut down to a part within the rules.
func (m *model) holds(k kind) bool {
	return slices.ContainsFunc(m.sheets, func(s sheet) bool {
		return m.single(s, k.w, k.h) || k.turns && m.single(s, k.h, k.w)
	})
}

// single tells whether a part of that size alone can be cut from a sheet.
func (m *model) single(s sheet, w, h int64) bool {
	if w > s.w || h > s.h {
		return false
	}
	cross, rip := w < s.w, h < s.h
	need := 0
	if cross {
		need++
	}
	if rip {
		need++
	}
	if need == 1 && (m.first == Rip && cross || m.first == Crosscut && rip) {
		need = 2
	}
	return m.stages == 0 || need <= m.stages
}

// limit drops what no plan can use and prices a part that is left out.
func (m *model) limit() {
	var dearest int64
	for i := range m.sheets {
		s := &m.sheets[i]
		dearest = max(dearest, s.price)
		if !s.limited || s.count > m.total {
			s.count = m.total
		}
	}
	m.scarce = slices.ContainsFunc(m.kinds, func(k kind) bool { return !m.always(k) })
	m.lack = dearest*int64(m.total) + 1
	m.scale = 1
	for m.scale < 1<<24 && m.lack*int64(m.total+1) < maxWorth/4/m.scale {
		m.scale *= 2
	}
}

// always tells whether a sheet without limit holds the kind.
func (m *model) always(k kind) bool {
	return slices.ContainsFunc(m.sheets, func(s sheet) bool {
		return (!s.limited || s.count >= m.total) &&
			(m.single(s, k.w, k.h) || k.turns && m.single(s, k.h, k.w))
	})
}

// maxWorth keeps sums of weights within a word.
const maxWorth = 1 << 61

// steps is the budget.
type steps struct{ ops, most int64 }

const opsPerStep = 4096

func (s *steps) spend(ops int) { s.ops += int64(ops) }
func (s *steps) over() bool    { return s.ops >= s.most*opsPerStep }
