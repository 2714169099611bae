package nest

import "slices"

// coarse is a model whose sizes are counted in steps: parts rounded down, sheets
// too. What fits a sheet fits it still, since rounded sizes add up to no more
// than the rounded sum; so a bound for it is a bound for the model. It leaves
// out first cut and stages, and limits of the parts.
type coarse struct {
	*model
	a []axes
}

// maxCoarse is the most steps of a side.
const maxCoarse = 240

func (m *model) coarse() *coarse {
	var longest int64
	for _, s := range m.sheets {
		longest = max(longest, s.w, s.h)
	}
	step := (longest + maxCoarse - 1) / maxCoarse
	if longest <= maxDense && m.allFull() {
		step = 1
	}
	c := *m
	c.first, c.stages = Whole, 0
	c.kinds, c.sheets = slices.Clone(m.kinds), slices.Clone(m.sheets)
	for i := range c.kinds {
		c.kinds[i].w, c.kinds[i].h = c.kinds[i].w/step, c.kinds[i].h/step
	}
	for i := range c.sheets {
		c.sheets[i].w, c.sheets[i].h = c.sheets[i].w/step, c.sheets[i].h/step
	}
	c.need = slices.Clone(m.need)
	for i, k := range c.kinds {
		if min(k.w, k.h) == 0 { // it must not count: any number of it fits
			c.kinds[i], c.need[i] = kind{w: 1, h: 1}, 0
		}
	}
	out := &coarse{model: &c}
	for _, s := range c.sheets {
		out.a = append(out.a, c.fullAxes(s))
	}
	return out
}

// allFull tells whether the points of all axes are few enough as they are.
func (m *model) allFull() bool {
	for _, s := range m.sheets {
		if a := m.axes(s, func(int) bool { return true }); !a.x.full || !a.y.full {
			return false
		}
	}
	return true
}

// fullAxes have every sum of sizes.
func (m *model) fullAxes(s sheet) axes {
	a := m.axes(s, func(int) bool { return true })
	return axes{newAxis(a.sizesX, s.w, maxDense+1, true), newAxis(a.sizesY, s.h, maxDense+1, true), a.sizesX, a.sizesY}
}

// heaviest is the filling of a sheet that weighs most when parts are without
// limit; no filling of the model weighs more.
func (c *coarse) heaviest(s int, weight []int64, st *steps) (pattern, int64) {
	f := newFilling(c.model, c.a[s].x, c.a[s].y, weight, nil)
	slab, v := f.whole()
	st.spend(f.ops + len(f.places))
	return c.patternOf(s, slab), v
}

// lpWeights solves the linear program over fillings without limits of parts and
// makes weights of its duals, for as many rounds as there are steps.
func (m *model) lpWeights(st *steps, enough int64, keep func(*weights)) {
	c := m.coarse()
	a := m.newMaster(c.need, m.stock())
	a.free = true
	best := int64(0)
	for a.solve(st) && !st.over() {
		worth, excess := a.duals()
		for k, n := range c.need {
			if n == 0 {
				worth[k] = 0
			}
		}
		w, added := c.offer(a, worth, excess, st)
		if v := m.worth(w); v > best {
			best = v
			keep(w)
		}
		if !added || m.proves(w) >= enough {
			return
		}
	}
}

// offer adds the heaviest filling of each sheet and makes of the duals weights
// that hold.
func (c *coarse) offer(a *master, worth, excess []int64, st *steps) (*weights, bool) {
	heavy := make([]int64, len(c.sheets))
	added := false
	for s := range c.sheets {
		p, v := c.heaviest(s, worth, st)
		heavy[s] = v
		if full := c.sheets[s].price*c.scale + excess[s]; v > full+full/4096+int64(len(c.kinds)) {
			a.take(p)
			added = true
		}
	}
	return c.shrunk(worth, excess, heavy), added
}

// shrunk lowers the weights until the heaviest filling of every sheet that has a
// price weighs no more than that and its excess.
func (c *coarse) shrunk(worth, excess, heavy []int64) *weights {
	num, den := int64(1), int64(1)
	for s, b := range c.sheets {
		full := b.price*c.scale + excess[s]
		if full > 0 && heavy[s] > 0 && lessRatio(full, heavy[s], num, den) {
			num, den = full, heavy[s]
		}
	}
	w := &weights{by: ProofLP}
	for _, v := range worth {
		w.part = append(w.part, ratio(v, num, den))
	}
	for s, b := range c.sheets {
		w.excess = append(w.excess, max(0, ratio(heavy[s], num, den)-b.price*c.scale))
	}
	return w
}
