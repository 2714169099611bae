package nest

import (
	"cmp"
	"slices"
)

// diver makes plans of the fillings: it solves the linear program, takes the
// fillings that it takes most, and solves it again for what is left.
type diver struct {
	f    *filler
	pool *pool
}

// price adds fillings that the linear program lacks; it tells whether some were
// found.
func (d *diver) price(a *master) bool {
	worth, excess := a.duals()
	found := false
	for _, s := range d.f.m.usable(a.stock) {
		p, v := d.f.fill(s, worth, a.need)
		if v <= d.f.m.sheets[s].price*d.f.m.scale+excess[s]+d.f.m.scale/1024 {
			continue
		}
		if d.pool.add(p) {
			a.take(p)
			found = true
		}
	}
	return found
}

// relax solves the linear program for a need, with new fillings.
func (d *diver) relax(need, stock []int, rounds int) *master {
	a := d.f.m.newMaster(need, stock)
	for _, p := range d.pool.list {
		a.take(p)
	}
	for range rounds {
		if !a.solve(d.f.steps) || d.f.steps.over() || !d.price(a) {
			break
		}
	}
	a.solve(d.f.steps)
	return a
}

// dive makes a plan that costs less than limit, or gives none.
func (d *diver) dive(rounds int, limit int64, sway uint64) ([]pattern, bool) {
	m := d.f.m
	need, stock := slices.Clone(m.need), m.stock()
	var plan []pattern
	var cost int64
	for sum(need) > 0 {
		if d.f.steps.over() {
			return nil, false
		}
		a := d.relax(slices.Clone(need), slices.Clone(stock), rounds)
		took := d.fix(a, need, stock, &sway)
		if len(took) == 0 {
			took = m.leaveOut(need)
			clear(need)
		}
		plan = append(plan, took...)
		if cost += m.cost(took); cost >= limit {
			return nil, false
		}
	}
	return plan, true
}

// fix takes fillings of the program: all that it takes wholly, else the one that
// it takes most; sway now and then takes another.
func (d *diver) fix(a *master, need, stock []int, sway *uint64) (plan []pattern) {
	list := a.taken()
	slices.SortStableFunc(list, func(p, q chosen) int {
		return cmp.Or(cmp.Compare(q.x, p.x), cmp.Compare(p.p.key(), q.p.key()))
	})
	if len(list) > 2 && *sway != 0 {
		*sway = *sway*6364136223846793005 + 1442695040888963407
		i := int(*sway>>33) % min(4, len(list))
		list[0], list[i] = list[i], list[0]
	}
	for i, c := range list {
		for n := 0; i == 0 && n == 0 || float64(n) < c.x-1e-4-0.0001; n++ {
			if i > 0 && float64(n+1) > c.x+1e-4 {
				break
			}
			p, ok := d.cutDown(c.p, need, stock)
			if !ok {
				break
			}
			plan = append(plan, p)
		}
	}
	return plan
}

// cutDown takes a filling off the need, without the parts that are not needed.
func (d *diver) cutDown(p pattern, need, stock []int) (pattern, bool) {
	if stock[p.sheet] == 0 {
		return p, false
	}
	left := slices.Clone(need)
	s := p.slab.prune(left)
	if s == nil {
		return p, false
	}
	copy(need, left)
	stock[p.sheet]--
	return d.f.m.patternOf(p.sheet, s), true
}
