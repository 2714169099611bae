package nest

import "slices"

// ExactParts is the number of parts up to which every plan is tried.
const ExactParts = 6

// exact tries every way to spread few parts over sheets.
type exact struct {
	m     *model
	u     *units
	ways  map[way]*pattern
	spare map[way]Offcut
	plan  []way
	stock []int

	best   []way
	cost   int64
	offcut Offcut
	found  bool
	steps  *steps
}

// way is a set of units in a sheet.
type way struct{ set, sheet int }

func (m *model) exact(st *steps) *exact {
	e := &exact{m: m, u: m.units(m.need), ways: map[way]*pattern{}, spare: map[way]Offcut{},
		stock: m.stock(), steps: st}
	e.spread(1<<len(e.u.kind)-1, 0)
	return e
}

// spread takes the lowest unit that is left, with others, into some sheet.
func (e *exact) spread(left int, cost int64) {
	e.steps.spend(opsPerStep / 16)
	if e.found && cost > e.cost || e.steps.over() {
		return
	}
	if left == 0 {
		e.judge(cost)
		return
	}
	low := left & -left
	rest := left ^ low
	for a := rest; ; a = (a - 1) & rest {
		for s := range e.m.sheets {
			if e.stock[s] > 0 && e.pattern(way{low | a, s}) != nil {
				e.stock[s]--
				e.follow(way{low | a, s}, left, cost+e.m.sheets[s].price)
				e.stock[s]++
			}
		}
		if a == 0 {
			break
		}
	}
	if e.m.scarce {
		e.follow(way{low, lacking}, left, cost+e.m.lack)
	}
}

func (e *exact) follow(w way, left int, cost int64) {
	e.plan = append(e.plan, w)
	e.spread(left&^w.set, cost)
	e.plan = e.plan[:len(e.plan)-1]
}

// judge keeps the plan if it is the best so far.
func (e *exact) judge(cost int64) {
	var o Offcut
	for _, w := range e.plan {
		if w.sheet == lacking {
			continue
		}
		if q := e.spareOf(w); q.better(o) {
			o = q
		}
	}
	if !e.found || cost < e.cost || o.better(e.offcut) {
		e.found, e.cost, e.offcut, e.best = true, cost, o, slices.Clone(e.plan)
	}
}

// pattern is a way to cut a set from a sheet, or nil.
func (e *exact) pattern(w way) *pattern {
	if p, ok := e.ways[w]; ok {
		return p
	}
	var p *pattern
	if s := e.u.fit(w.set, e.m.sheets[w.sheet]); s != nil {
		q := e.m.patternOf(w.sheet, s)
		p = &q
	}
	e.ways[w] = p
	return p
}

func (e *exact) spareOf(w way) Offcut {
	o, ok := e.spare[w]
	if !ok {
		p, fine := e.m.layOut(*e.pattern(w))
		require(fine, "a filling that breaks the rules")
		o = e.m.spare(p)
		e.spare[w] = o
	}
	return o
}

// patterns is the best plan.
func (e *exact) patterns() (plan []pattern) {
	for _, w := range e.best {
		if w.sheet == lacking {
			k := e.u.kind[firstUnit(w.set)]
			plan = append(plan, pattern{sheet: lacking, takes: []take{{k, 1}}})
			continue
		}
		plan = append(plan, *e.pattern(w))
	}
	return plan
}

func firstUnit(set int) int {
	for i := 0; ; i++ {
		if set>>i&1 == 1 {
			return i
		}
	}
}
