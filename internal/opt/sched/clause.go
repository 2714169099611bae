package sched

// A clause is lits of which one must be true. The first two are watched.
type clause struct {
	lits    []lit
	learned bool
	worth   float64 // activity: of little worth, a learned one is forgotten
	spread  int     // levels that it joined
}

// A watcher stands at the side of the lit that it watches, and has its value at hand.
type watcher struct{ clause, at int }

// addClause adds a clause at level 0. False: it contradicts what holds there.
func (e *engine) addClause(lits ...lit) bool {
	var open []lit
	for _, l := range lits {
		if e.holds(l) {
			return true
		}
		if !e.excludes(l) {
			open = append(open, l)
		}
	}
	switch len(open) {
	case 0:
		return false
	case 1:
		return e.raise(open[0], reason{})
	}
	e.attach(clause{lits: open})
	return true
}

func (e *engine) attach(c clause) int {
	n := len(e.clauses)
	e.clauses = append(e.clauses, c)
	e.watchLit(n, c.lits[0])
	e.watchLit(n, c.lits[1])
	return n
}

func (e *engine) watchLit(c int, l lit) { e.watch[l.side] = append(e.watch[l.side], watcher{c, l.at}) }

// visit looks at the clauses that watch a lit that the rise of a side has excluded.
func (e *engine) visit(side int) bool {
	list := e.watch[side^1]
	limit := -e.bound[side] // lits of the other side above it are false
	kept := 0
	for i := 0; i < len(list); i++ {
		w := list[i]
		if w.at <= limit {
			list[kept] = w
			kept++
			continue
		}
		e.steps++
		stays, fine := e.rewatch(w.clause, lit{side ^ 1, w.at})
		if stays {
			list[kept] = w
			kept++
		}
		if !fine {
			kept += copy(list[kept:], list[i+1:])
			e.watch[side^1] = list[:kept]
			return false
		}
	}
	e.watch[side^1] = list[:kept]
	return true
}

// rewatch finds another lit to watch in place of gone, which is false; with none left the clause forces its first.
func (e *engine) rewatch(c int, gone lit) (stays, fine bool) {
	lits := e.clauses[c].lits
	if lits[0] == gone {
		lits[0], lits[1] = lits[1], lits[0]
	}
	if e.holds(lits[0]) {
		return true, true
	}
	for i := 2; i < len(lits); i++ {
		if !e.excludes(lits[i]) {
			lits[1], lits[i] = lits[i], lits[1]
			e.watchLit(c, lits[1])
			return false, true
		}
	}
	if e.excludes(lits[0]) {
		e.conflict = e.conflict[:0]
		for _, l := range lits {
			e.conflict = append(e.conflict, l.not())
		}
		return true, false
	}
	return true, e.raise(lits[0], reason{byClause, c, 0})
}

// A card bounds how many switches are on.
type card struct {
	switches []int
	most     int
}

func (e *engine) addCard(switches []int, most int) {
	for _, x := range switches {
		e.cardsOf[x] = append(e.cardsOf[x], len(e.cards))
	}
	e.cards = append(e.cards, card{switches, most})
}

// count keeps a card: once as many are on as may be, all others are off.
func (e *engine) count(c card) bool {
	on := e.scratch[:0]
	for _, x := range c.switches {
		if e.lo(x) > 0 && len(on) <= c.most {
			on = append(on, atLeast(x, 1))
		}
	}
	e.scratch = on
	if len(on) > c.most {
		e.conflict = append(e.conflict[:0], on...)
		return false
	}
	if len(on) < c.most {
		return true
	}
	for _, x := range c.switches {
		if e.lo(x) == 0 && !e.raiseFor(atMost(x, 0), on) {
			return false
		}
	}
	return true
}
