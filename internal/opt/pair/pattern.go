package pair

// pattern is a bag as counts of its kinds.
type pattern struct {
	bag   *bag
	kinds []int
	count []int
}

func newPattern(b *bag) pattern {
	p := pattern{bag: b}
	for _, k := range b.kinds() {
		if n := len(p.kinds); n > 0 && p.kinds[n-1] == k {
			p.count[n-1]++
			continue
		}
		p.kinds = append(p.kinds, k)
		p.count = append(p.count, 1)
	}
	return p
}

// weight adds up the units of the pieces in the pattern.
func (p pattern) weight(units []int64) int64 {
	var sum int64
	for i, k := range p.kinds {
		sum += units[k] * int64(p.count[i])
	}
	return sum
}

// patterns holds the sets of pieces that may share a blank and can take no more
// piece of their last kind or a later one.
type patterns struct {
	cover []pattern // a layout is known
	bound []pattern // none is excluded
	three bool      // three or more may share
	open  bool      // some have no layout and are not excluded
	all   bool      // nothing is missing
}

// maxPatterns keeps the linear program small.
const maxPatterns = 4000

// enumerate lists the patterns for half of what is left to spend. Where that or
// maxPatterns does not hold them all, it begins again with half of the rest and
// gives each kind its share, so that none is left out.
func (s *solver) enumerate() *patterns {
	list := s.listed(s.c.steps, s.c.steps+s.left()/2, 1)
	if list.all {
		return list
	}
	return s.listed(s.c.steps, s.c.steps+s.left()/2, len(s.need))
}

// listed enumerates within the limits, released in as many equal parts, one a
// kind.
func (s *solver) listed(start, limit, parts int) *patterns {
	e := &enumeration{solver: s, used: make([]int, len(s.need)), list: &patterns{all: true}}
	for k := range s.need {
		part := min(k+1, parts)
		e.steps, e.most = start+(limit-start)*part/parts, maxPatterns*part/parts
		e.stop = false
		e.extend(s.c.ones[k], k)
	}
	return e.list
}

type enumeration struct {
	*solver
	used        []int
	steps, most int // limits: of steps, of patterns
	stop        bool
	list        *patterns
}

// extend records b with all that can be added to it, from kind last on.
func (e *enumeration) extend(b *bag, last int) {
	e.used[last]++
	anyMore, yesMore := false, false
	for k := last; k < len(e.need) && !e.stop; k++ {
		more, v := e.tryAdd(b, k)
		if v == no {
			continue
		}
		anyMore, yesMore = true, yesMore || v == yes
		e.extend(more, k)
	}
	e.used[last]--
	e.record(b, anyMore, yesMore)
}

// tryAdd looks at b with one more of kind k.
func (e *enumeration) tryAdd(b *bag, k int) (*bag, verdict) {
	if e.used[k] == e.need[k] || !e.sharesWith(b, k) {
		return nil, no
	}
	more := e.c.grow(b, k)
	e.stop = e.c.steps >= e.steps || len(e.list.bound) >= e.most
	if more == nil || e.stop {
		e.list.all = false
		return nil, no
	}
	if more.n == 2 {
		return more, yes
	}
	v := e.c.fits(more)
	e.list.three = e.list.three || v != no
	e.list.open = e.list.open || v == open
	return more, v
}

func (e *enumeration) record(b *bag, anyMore, yesMore bool) {
	known := b.n < 3 || e.c.fits(b) == yes
	if !anyMore {
		e.list.bound = append(e.list.bound, newPattern(b))
	}
	if known && !yesMore {
		e.list.cover = append(e.list.cover, newPattern(b))
	}
}

// sharesWith tells whether kind k shares a blank with each piece of b.
func (s *solver) sharesWith(b *bag, k int) bool {
	for i := range b.n {
		if !s.shares(int(b.key[i])-1, k) {
			return false
		}
	}
	return true
}
