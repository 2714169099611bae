package bar

// offer looks for patterns of what is needed and left that would make l cheaper
// if its duals were y, adds them and tells how many are new and do. The duals
// made whole come back as weights; they are nil where the patterns were too many
// to tell.
func (a *master) offer(l *program, y []float64, need, left []int) (added int, w *weights) {
	w = &weights{by: ProofLP}
	for k := range a.m.sizes {
		w.piece = append(w.piece, a.m.whole(y[k]*a.unit))
	}
	top := a.tops(y, w, need, left, func(p pattern) {
		if c := a.add(p); c >= 0 && a.cheapens(l, c) {
			added++
		}
	})
	if top == nil {
		return added, nil
	}
	for s, v := range top {
		w.excess = append(w.excess, max(0, v-a.m.sticks[s].price*a.m.scale))
	}
	return added, w
}

// cheapens tells whether a new column has a reduced cost below nothing.
func (a *master) cheapens(l *program, col int) bool {
	d := a.lp.cols.cost[col]
	for i, r := range a.lp.cols.rows[col] {
		d -= l.y[r] * a.lp.cols.vals[col][i]
	}
	return d < -tiny
}

// tops is what the runs of each stick can weigh at most; columns that gain are
// told. It is nil where that is not known.
func (a *master) tops(y []float64, w *weights, need, left []int, gain func(pattern)) []int64 {
	items := a.items(w, need)
	slots, floors := a.slots(y, left)
	a.knap.fill(items, slots)
	a.steps.spend(a.knap.work)
	if a.knap.full {
		return nil
	}
	top := make([]int64, len(a.m.sticks))
	for s, st := range a.m.sticks {
		if left[s] == 0 {
			continue
		}
		if len(st.runs) == 1 {
			top[s] = floors[s]
		} else {
			top[s] = 0
		}
		sum := int64(0)
		for _, r := range st.runs {
			if f := a.knap.best(r); f != nil {
				sum += f.value
			}
		}
		top[s] = max(top[s], sum)
		if sum > floors[s]+a.m.scale>>32 {
			a.column(s, w, need, items, floors[s], gain)
			a.apart(s, w, need, items, floors[s], gain)
		}
	}
	return top
}

// items are the kinds that weigh something.
func (a *master) items(w *weights, need []int) []item {
	var items []item
	for k, n := range need {
		if n > 0 && w.piece[k] > 0 {
			items = append(items, item{k, a.m.sizes[k], w.piece[k], n})
		}
	}
	return items
}

// slots are the runs to price, and what each stick must weigh more than to gain.
func (a *master) slots(y []float64, left []int) (slots []slot, floors []int64) {
	for s, st := range a.m.sticks {
		floor := st.price * a.m.scale
		if r := a.rowOf[s]; r >= 0 {
			floor += a.m.whole(-y[r] * a.unit)
		}
		floors = append(floors, floor)
		if left[s] == 0 {
			continue
		}
		if len(st.runs) > 1 {
			floor = -1
		}
		for _, r := range st.runs {
			slots = append(slots, slot{r, floor})
		}
	}
	return slots, floors
}

// column fills the runs of a stick one after the other.
func (a *master) column(s int, w *weights, need []int, items []item, floor int64, gain func(pattern)) {
	rest := append([]int(nil), need...)
	var takes []take
	sum := int64(0)
	for i, r := range a.m.sticks[s].runs {
		knap, its := &a.knap, items
		if i > 0 {
			knap, its = &a.sack, a.items(w, rest)
			knap.fill(its, []slot{{r, -1}})
			a.steps.spend(knap.work)
		}
		f := knap.best(r)
		if f == nil {
			continue
		}
		sum += f.value
		for _, t := range knap.takes(f, its, i) {
			rest[t.kind] -= t.n
			takes = append(takes, t)
		}
	}
	if sum > floor {
		gain(newPattern(s, merged(takes)))
	}
}

// apart offers more columns of a stick with one run, none with a piece of another
// that was offered: they settle more duals at once.
func (a *master) apart(s int, w *weights, need []int, items []item, floor int64, gain func(pattern)) {
	if len(a.m.sticks[s].runs) != 1 {
		return
	}
	size := a.m.sticks[s].runs[0]
	rest := append([]int(nil), need...)
	takes := a.knap.takes(a.knap.best(size), items, 0)
	for range moreColumns {
		for _, t := range takes {
			rest[t.kind] -= t.n
		}
		items = a.items(w, rest)
		a.sack.fill(items, []slot{{size, floor}})
		a.steps.spend(a.sack.work)
		f := a.sack.best(size)
		if f == nil || f.value <= floor {
			return
		}
		takes = a.sack.takes(f, items, 0)
		gain(newPattern(s, merged(append([]take(nil), takes...))))
	}
}

// moreColumns is how many more a stick is asked for.
const moreColumns = 4

// merged adds up the takes of one kind in one run.
func merged(takes []take) []take {
	p := newPattern(0, takes)
	out := p.takes[:0]
	for _, t := range p.takes {
		if n := len(out); n > 0 && out[n-1].kind == t.kind && out[n-1].run == t.run {
			out[n-1].n += t.n
			continue
		}
		out = append(out, t)
	}
	return out
}
