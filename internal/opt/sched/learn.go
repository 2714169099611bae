package sched

import "slices"

// A mark is a lit that the conflict rests on: the value needed of its side, and the rise that reached it plus one.
type mark struct{ at, rise int }

// reachedBy is the rise that made l true, or -1 where it held from the start.
func (e *engine) reachedBy(l lit) int {
	i := e.latest[l.side]
	for i >= 0 && e.trail[i].from >= l.at {
		i = e.trail[i].earlier
	}
	return i
}

// rest marks l unless it holds at level 0, and tells how many more marks now lie on or above a trail length.
func (e *engine) rest(l lit, top int, sides *[]int) int {
	i := e.reachedBy(l)
	if i < e.levels[0] {
		return 0
	}
	k := &e.mark[l.side]
	if k.rise == 0 {
		*sides = append(*sides, l.side)
		e.activity[l.side>>1] += e.bump
	} else if k.at >= l.at {
		return 0
	}
	more := 0
	if i >= top {
		more++
	}
	if k.rise > top {
		more--
	}
	*k = mark{l.at, i + 1}
	return more
}

// learn turns the conflict into a clause that has one lit of the last level (the first unique implication point), and
// the level at which it forces that lit. An empty clause: there is no solution at all.
func (e *engine) learn() (lits []lit, level int) {
	e.toConflictLevel()
	if e.level() == 0 {
		return nil, 0
	}
	top := e.levels[e.level()-1]
	var sides []int
	open := 0
	for _, l := range e.conflict {
		open += e.rest(l, top, &sides)
	}
	var uip lit
	for i := len(e.trail) - 1; ; i-- {
		r := e.trail[i]
		k := e.mark[r.side]
		if k.rise != i+1 {
			continue
		}
		if open == 1 {
			uip = lit{r.side, k.at}
			break
		}
		e.mark[r.side] = mark{}
		open--
		if r.why.kind == byClause {
			e.credit(r.why.at)
		}
		e.scratch = e.explain(lit{r.side, k.at}, r.why, e.scratch[:0])
		for _, l := range e.scratch {
			open += e.rest(l, top, &sides)
		}
	}
	lits = e.shorten(uip, sides)
	for _, s := range sides {
		e.mark[s] = mark{}
	}
	return e.order(lits)
}

// toConflictLevel goes back to the level at which the conflict first was one.
func (e *engine) toConflictLevel() {
	last := -1
	for _, l := range e.conflict {
		last = max(last, e.reachedBy(l))
	}
	level, _ := slices.BinarySearch(e.levels, last+1)
	if level < e.level() {
		e.undo(level)
	}
}

// shorten writes the marks down as a clause, without those that follow from the others by one reason.
func (e *engine) shorten(uip lit, sides []int) []lit {
	lits := []lit{uip.not()}
	slices.Sort(sides) // a side may have been marked, resolved and marked again
	for _, s := range slices.Compact(sides) {
		k := e.mark[s]
		if k.rise == 0 || s == uip.side {
			continue
		}
		if !e.follows(lit{s, k.at}, k.rise-1) {
			lits = append(lits, lit{s, k.at}.not())
		}
	}
	return lits
}

// follows asks whether l, reached by rise i, follows from what holds at level 0 and marks that were reached before it.
func (e *engine) follows(l lit, i int) bool {
	r := e.trail[i]
	if r.why.kind == decided {
		return false
	}
	e.scratch = e.explain(l, r.why, e.scratch[:0])
	for _, o := range e.scratch {
		k := e.mark[o.side]
		behind := k.rise > 0 && k.at >= o.at && k.rise-1 < i
		if !behind && e.reachedBy(o) >= e.levels[0] {
			return false
		}
	}
	return true
}

// order puts the lit of the highest level but the first second, and gives its level.
func (e *engine) order(lits []lit) ([]lit, int) {
	best, at := -1, 0
	for i, l := range lits[1:] {
		if r := e.reachedBy(l.not()); r > best {
			best, at = r, i+1
		}
	}
	if at == 0 {
		return lits, 0
	}
	lits[1], lits[at] = lits[at], lits[1]
	level, _ := slices.BinarySearch(e.levels, best+1)
	return lits, level
}

// assert takes the learned clause in and forces its first lit.
func (e *engine) assert(lits []lit, level int) bool {
	spread := e.spread(lits)
	e.undo(level)
	if len(lits) == 1 {
		return e.raise(lits[0], reason{})
	}
	c := e.attach(clause{lits: lits, learned: true, worth: e.bump, spread: spread})
	return e.raise(lits[0], reason{byClause, c, 0})
}

// spread counts the levels that a clause joins (Audemard, Simon, IJCAI 2009).
func (e *engine) spread(lits []lit) int {
	var seen []int
	for _, l := range lits {
		level, _ := slices.BinarySearch(e.levels, e.reachedBy(l.not())+1)
		if !slices.Contains(seen, level) {
			seen = append(seen, level)
		}
	}
	return len(seen)
}

func (e *engine) credit(c int) { e.clauses[c].worth += e.bump }

// decay makes what comes later weigh more.
func (e *engine) decay() {
	const growth, limit = 1 / 0.95, 1e100
	e.bump *= growth
	if e.bump < limit {
		return
	}
	for i := range e.activity {
		e.activity[i] /= limit
	}
	for i := range e.clauses {
		e.clauses[i].worth /= limit
	}
	e.bump /= limit
}

// forget drops the less useful half of the learned clauses. Only at level 0, where no clause is anyone's reason.
func (e *engine) forget() {
	var worth []float64
	for _, c := range e.clauses {
		if c.learned && c.spread > 2 {
			worth = append(worth, c.worth)
		}
	}
	if len(worth) == 0 {
		return
	}
	slices.Sort(worth)
	median := worth[len(worth)/2]
	old := e.clauses
	e.clauses = nil
	for s := range e.watch {
		e.watch[s] = e.watch[s][:0]
	}
	for _, c := range old {
		if !c.learned || c.spread <= 2 || c.worth > median {
			e.attach(c)
		}
	}
}
