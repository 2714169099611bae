package pair

// Pack finds the fewest blanks that it can within the budget, and a bound. The
// same problem always gives the same result.
func Pack(p Problem) Result {
	p.check()
	if p.Budget == 0 {
		p.Budget = DefaultBudget
	}
	kinds, unfit := group(p)
	loose, tight := newCutter(p, kinds).parted()
	c := newCutter(p, loose)
	s := newSolver(c, p.Budget)
	s.solve()

	return s.written(p, unfit, tight)
}

// written is the best answer, with the pieces that share no blank.
func (s *solver) written(p Problem, unfit []int, tight []kind) Result {
	w := newWriter(p, unfit)
	for i, l := range s.layouts() {
		w.blank(i, s.c.kinds, l)
	}
	for _, k := range tight {
		w.alone(k)
	}
	r := w.result
	r.Lower, r.Proof = s.lower+len(r.Tight), s.proof
	r.Steps, r.Complete = s.c.steps, s.complete
	return r
}

// parted takes out the kinds that rule 4 does not allow even alone.
func (c *cutter) parted() (loose, tight []kind) {
	for k, b := range c.ones {
		if c.fits(b) == no {
			tight = append(tight, c.kinds[k])
		} else {
			loose = append(loose, c.kinds[k])
		}
	}
	return loose, tight
}

// layouts places the pieces of the best answer.
func (s *solver) layouts() [][]laid {
	if s.loose != nil {
		return s.loose
	}
	var out [][]laid
	for _, b := range s.best {
		out = append(out, s.c.layout(b))
	}
	return out
}

// writer hands the pieces of each kind to the places found for them.
type writer struct {
	result Result
	next   map[int]int // by the first piece of a kind: how many of it are placed
}

func newWriter(p Problem, unfit []int) *writer {
	w := &writer{result: Result{Unfit: unfit}, next: map[int]int{}}
	for i := range p.Pieces {
		w.result.Placements = append(w.result.Placements, Placement{Piece: i, Blank: -1})
	}
	return w
}

func (w *writer) blank(n int, kinds []kind, ls []laid) {
	for _, l := range ls {
		k := kinds[l.kind]
		first := k.pieces[0].index
		m := k.pieces[w.next[first]]
		w.next[first]++
		w.result.Placements[m.index] = Placement{m.index, n, m.turns[l.pose], l.x, l.y}
	}
	w.result.Blanks = n + 1
}

// alone gives each piece of a tight kind a blank.
func (w *writer) alone(k kind) {
	for _, m := range k.pieces {
		s := k.spots[0]
		w.result.Placements[m.index] = Placement{m.index, w.result.Blanks, m.turns[s.pose], s.x, s.y}
		w.result.Tight = append(w.result.Tight, m.index)
		w.result.Blanks++
	}
}
