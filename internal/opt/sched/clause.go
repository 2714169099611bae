package sched

// A clause is lits of which one must be true. The first two are watched.
type clause struct {
	lits    []lit
	learned bool
	worth   float64 // activity: of little worth, a learned one is forgotten
	spread  int     // levels that it joined
}

// A watcher stands at the side of the lit that it watches, and has its value at hand, with another lit of the clause: while
// that one is true the clause need not be looked at (Chu, Harwood, Stuckey, CPAIOR 2009, of SAT solvers).
type watcher struct {
	clause, at       int32
	otherSide, other int32
}

// buckets is into how many the values of a side are divided at most, so that a rise looks at few watchers that it leaves as they are.
const buckets = 64

// A shelf is where the watchers of a side stand: in buckets from first on, by value from low on.
type shelf struct{ first, last, low, shift int }

// addShelf makes room for lits of one side from low to high.
func (e *engine) addShelf(low, high int) {
	s := shelf{first: len(e.watch), low: low}
	for (high-low)>>s.shift >= buckets {
		s.shift++
	}
	s.last = s.first + (high-low)>>s.shift
	e.watch = append(e.watch, make([][]watcher, s.last-s.first+1)...)
	e.shelves = append(e.shelves, s)
}

func (e *engine) bucket(side, at int) int {
	s := &e.shelves[side]
	return min(max(s.first+(at-s.low)>>s.shift, s.first), s.last)
}

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
	e.watchLit(n, c.lits[0], c.lits[1])
	e.watchLit(n, c.lits[1], c.lits[0])
	return n
}

func (e *engine) watchLit(c int, l, other lit) {
	b := e.bucket(l.side, l.at)
	e.watch[b] = append(e.watch[b], watcher{int32(c), int32(l.at), int32(other.side), int32(other.at)})
}

// visit looks at the clauses that watch a lit which a rise has excluded.
func (e *engine) visit(side, from, to int) bool {
	last := e.bucket(side^1, -from)
	for b := e.bucket(side^1, 1-to); b <= last; b++ {
		if len(e.watch[b]) > 0 && !e.visitBucket(b, side^1, 1-to, -from) {
			return false
		}
	}
	return true
}

// visitBucket looks at the watchers of lits of a side from one value to another.
func (e *engine) visitBucket(b, side, from, to int) bool {
	list := e.watch[b]
	kept := 0
	for i := 0; i < len(list); i++ {
		w := list[i]
		if int(w.at) < from || int(w.at) > to || e.bound[w.otherSide] >= int(w.other) {
			list[kept] = w
			kept++
			continue
		}
		e.steps++
		stays, fine := e.rewatch(int(w.clause), lit{side, int(w.at)})
		if stays {
			list[kept] = w
			kept++
		}
		if !fine {
			kept += copy(list[kept:], list[i+1:])
			e.watch[b] = list[:kept]
			return false
		}
	}
	e.watch[b] = list[:kept]
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
			e.watchLit(c, lits[1], lits[0])
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

func (e *engine) addCard(switches []int, most int) int {
	for _, x := range switches {
		e.cardsOf[x] = append(e.cardsOf[x], len(e.cards))
	}
	e.cards = append(e.cards, card{switches, most})
	return len(e.cards) - 1
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
