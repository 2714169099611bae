package pair

import "slices"

// solver searches for the fewest blanks. It holds the best known answer and the
// highest bound; it is done when they meet.
type solver struct {
	c      *cutter
	need   []int    // pieces of each kind
	shared [][]bool // kinds that share a blank, two by two
	budget int

	blanks int
	best   []*bag
	loose  [][]laid // the best answer, where bags do not hold it

	lower    int
	proof    string
	complete bool
}

// newSolver looks at every two kinds. That work is not counted in the budget.
func newSolver(c *cutter, budget int) *solver {
	s := &solver{c: c, budget: budget, complete: true}
	for k := range c.kinds {
		s.need = append(s.need, len(c.kinds[k].pieces))
		s.shared = append(s.shared, make([]bool, len(c.kinds)))
		for l := range k + 1 {
			s.shared[k][l] = c.two(k, l)
			s.shared[l][k] = s.shared[k][l]
		}
	}
	c.steps, c.work = 0, 0
	s.blanks = s.total() + 1
	return s
}

func (s *solver) shares(k, l int) bool { return s.shared[k][l] }

// solve goes from what is quick to what is thorough, until nothing is left to
// gain or to spend.
func (s *solver) solve() {
	s.counting()
	s.offer(s.pairUp(s.need))
	if s.closed() {
		return
	}
	s.crowded()
	for _, step := range []func(){s.nestle, s.shelve, s.withBags} {
		if s.closed() {
			return
		}
		step()
	}
}

// withBags takes the steps that put no more than maxBag pieces in a blank, if
// that can be better than what is known.
func (s *solver) withBags() {
	if s.total() > maxBag*(s.blanks-1) {
		s.complete = false
		return
	}
	for _, step := range []func(){s.firstFit, s.merge, s.search} {
		if !s.closed() {
			step()
		}
	}
}

func (s *solver) total() (n int) {
	for _, m := range s.need {
		n += m
	}
	return n
}

func (s *solver) closed() bool { return s.blanks <= s.lower }

// offer takes an answer if it is the best so far.
func (s *solver) offer(bags []*bag) {
	if len(bags) < s.blanks {
		s.blanks, s.best, s.loose = len(bags), slices.Clone(bags), nil
	}
}

// offerLaid takes an answer that bags do not hold.
func (s *solver) offerLaid(blanks [][]laid) {
	if len(blanks) < s.blanks {
		s.blanks, s.best, s.loose = len(blanks), nil, blanks
	}
}

// search enumerates what can share a blank, bounds by it, and branches.
func (s *solver) search() {
	list := s.enumerate()
	s.complete = list.all
	if list.all && !list.three {
		s.raise(len(s.pairUp(s.need)), ProofMatching)
		return
	}
	for _, b := range s.best {
		list.bound, list.cover = append(list.bound, newPattern(b)), append(list.cover, newPattern(b))
	}
	units, full := s.weigh(list.bound)
	if list.all {
		s.raise(ceilDiv(s.weightOf(units), full), ProofLP)
	}
	if s.closed() {
		return
	}
	done := s.branch(list.cover, units, full, s.budget)
	s.complete = s.complete && done
	if list.all && !list.open && done {
		s.raise(s.blanks, ProofExhaustive)
	}
}

// left is what may still be spent.
func (s *solver) left() int { return max(s.budget-s.c.steps, 0) }

// pivotCost is the size of tableau that one step pays for.
const pivotCost = 1 << 12

// weigh finds weights of the kinds by the linear program.
func (s *solver) weigh(list []pattern) (units []int64, full int64) {
	rows := make([][]float64, len(list))
	for p := range list {
		rows[p] = make([]float64, len(s.need))
		for i, k := range list[p].kinds {
			rows[p][k] = float64(list[p].count[i])
		}
	}
	cost := 1 + len(rows)*len(s.need)/pivotCost
	y, pivots, ok := weights(rows, s.need, s.left()/cost)
	s.c.steps += pivots * cost
	if !ok { // sizes are weights too, if not the best
		s.complete = false
		blank, size := s.sizes()
		for k := range y {
			y[k] = float64(size(k)) / float64(blank)
		}
	}
	return fixed(list, y)
}

func (s *solver) weightOf(units []int64) int64 {
	var sum int64
	for k, n := range s.need {
		sum += units[k] * int64(n)
	}
	return sum
}
