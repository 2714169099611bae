package nest

import "slices"

// filler fills sheets and counts what it spends.
type filler struct {
	m     *model
	steps *steps
	fixed []*axes // by sheet, where the points are the same for every filling
	strip *model  // the model with few stages; nil for its own
}

// stripStages is a strip, what lies in it, and its trimming. Fillings of so few
// stages keep more of what a panel may hold in sight, and so find now and then
// what the free ones miss.
const stripStages = 3

// inStrips fills with few stages from now on, or again with those of the model.
func (f *filler) inStrips(yes bool) {
	f.strip = nil
	if yes && (f.m.stages == 0 || f.m.stages > stripStages) {
		m := *f.m
		m.stages = stripStages
		f.strip = &m
	}
}

type axes struct {
	x, y           *axis
	sizesX, sizesY []int64
}

func newFiller(m *model, st *steps) *filler {
	return &filler{m: m, steps: st, fixed: make([]*axes, len(m.sheets))}
}

// axesOf are the axes of a sheet for the kinds that are of use. On a long axis
// making them takes long, so that they are made once for all kinds.
func (f *filler) axesOf(s int, use func(k int) bool) axes {
	b := f.m.sheets[s]
	if b.w <= maxDense && b.h <= maxDense {
		return f.m.axes(b, use)
	}
	if f.fixed[s] == nil {
		a := f.m.axes(b, func(int) bool { return true })
		f.fixed[s] = &a
	}
	return *f.fixed[s]
}

func (m *model) axes(b sheet, use func(k int) bool) axes {
	var ws, hs []int64
	for k, q := range m.kinds {
		if !use(k) {
			continue
		}
		if q.w <= b.w && q.h <= b.h {
			ws, hs = append(ws, q.w), append(hs, q.h)
		}
		if q.turns && q.h <= b.w && q.w <= b.h {
			ws, hs = append(ws, q.h), append(hs, q.w)
		}
	}
	ws, hs = distinct(ws), distinct(hs)
	just := m.first != Whole || m.stages > 0
	return axes{newAxis(ws, b.w, maxPoints, just), newAxis(hs, b.h, maxPoints, just), ws, hs}
}

// fill gives a good filling of a sheet with no more than left of each kind, and
// what it is worth.
func (f *filler) fill(s int, worth []int64, left []int) (pattern, int64) {
	a := f.axesOf(s, func(k int) bool { return left[k] > 0 && worth[k] > 0 })
	m := f.m
	if f.strip != nil && !a.x.even && !a.y.even {
		m = f.strip
	}
	fl := newFilling(m, a.x, a.y, worth, f.most(s, left))
	slab, v := fl.whole()
	f.steps.spend(fl.ops + len(fl.places))
	return f.m.patternOf(s, slab), v
}

// most is how many of each kind a sheet can hold at all.
func (f *filler) most(s int, left []int) []int {
	b := f.m.sheets[s]
	out := make([]int, len(left))
	for k, n := range left {
		q := f.m.kinds[k]
		if n > 0 {
			out[k] = int(min(int64(n), b.w*b.h/(q.w*q.h), 1<<20))
		}
	}
	return out
}

// usable lists the sheets of which there are some left.
func (m *model) usable(stock []int) (out []int) {
	for s, n := range stock {
		if n > 0 {
			out = append(out, s)
		}
	}
	return out
}

// stock is how many there are of each sheet.
func (m *model) stock() (out []int) {
	for _, s := range m.sheets {
		out = append(out, s.count)
	}
	return out
}

// takeOff counts a pattern off what is needed.
func (p pattern) takeOff(need []int) {
	for _, t := range p.takes {
		need[t.kind] -= t.n
	}
}

// leaveOut lists a pattern for each part that is still needed.
func (m *model) leaveOut(need []int) (out []pattern) {
	for k, n := range need {
		for range n {
			out = append(out, pattern{sheet: lacking, takes: []take{{k, 1}}, slab: m.leaf(k, false)})
		}
	}
	return out
}

// distinct sorts sizes and drops repeats.
func distinct(sizes []int64) []int64 {
	slices.Sort(sizes)
	return slices.Compact(sizes)
}
