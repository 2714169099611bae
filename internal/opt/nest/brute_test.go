package nest

// brute cuts at every place, with every division of the parts: slow and plain.
type brute struct {
	p    Problem
	part []int // index of each single part
	can  map[bruteKey]bool
	room map[bruteKey]int64
}

type bruteKey struct {
	w, h   int64
	set    int
	cut    Cut
	stages int
	rest   bool
}

// anyStages is the number that stands for no limit.
const anyStages = 99

func newBrute(p Problem, unfit []int) *brute {
	b := &brute{p: p, can: map[bruteKey]bool{}, room: map[bruteKey]int64{}}
	skip := map[int]bool{}
	for _, i := range unfit {
		skip[i] = true
	}
	for i, q := range p.Parts {
		for range q.Count {
			if !skip[i] {
				b.part = append(b.part, i)
			}
		}
	}
	return b
}

// is tells whether a set is one part of just that size.
func (b *brute) is(w, h int64, set int) bool {
	for i, k := range b.part {
		if set == 1<<i {
			q := b.p.Parts[k]
			return q.W == w && q.H == h || q.Turns && q.W == h && q.H == w
		}
	}
	return false
}

func (b *brute) area(set int) (a int64) {
	for i, k := range b.part {
		if set>>i&1 == 1 {
			a += b.p.Parts[k].W * b.p.Parts[k].H
		}
	}
	return a
}

// panel tells whether a set can be cut from a panel, first in that direction. A
// rest lies in a stage that has begun, so that it may go on to the next stage.
func (b *brute) panel(k bruteKey) bool {
	if k.set == 0 {
		return true
	}
	if k.w <= 0 || k.h <= 0 || b.area(k.set) > k.w*k.h {
		return false
	}
	if v, ok := b.can[k]; ok {
		return v
	}
	v := b.try(k)
	b.can[k] = v
	return v
}

func (k bruteKey) deeper() bruteKey {
	k.cut, k.rest = k.cut.other(), false
	if k.stages != anyStages {
		k.stages--
	}
	return k
}

func (b *brute) try(k bruteKey) bool {
	if b.is(k.w, k.h, k.set) {
		return true
	}
	if k.stages == 0 {
		return false
	}
	if k.rest && b.panel(k.deeper()) {
		return true
	}
	size := k.w
	if k.cut == Rip {
		size = k.h
	}
	for c := int64(1); c < size; c++ {
		if b.cutAt(k, c, size) {
			return true
		}
	}
	return false
}

func (b *brute) cutAt(k bruteKey, c, size int64) bool {
	first, rest := k.deeper(), k
	rest.rest = true
	if k.cut == Rip {
		first.h, rest.h = c, size-c-b.p.Kerf
	} else {
		first.w, rest.w = c, size-c-b.p.Kerf
	}
	for a := k.set; ; a = (a - 1) & k.set {
		first.set, rest.set = a, k.set^a
		if b.panel(first) && b.panel(rest) {
			return true
		}
		if a == 0 {
			return false
		}
	}
}

// sheet tells whether a set can be cut from a sheet within the rules.
func (b *brute) sheet(s Sheet, set int) bool {
	k := bruteKey{w: s.W - 2*s.Trim, h: s.H - 2*s.Trim, set: set, stages: anyStages}
	if b.p.Stages > 0 {
		k.stages = b.p.Stages
	}
	if b.p.First == Whole {
		k.cut = Rip
		l := k
		l.cut = Crosscut
		return b.panel(k) || b.panel(l)
	}
	k.cut = b.p.First
	if b.panel(k) {
		return true
	}
	k.cut = b.p.First.other()
	if k.stages == 1 {
		return false
	}
	k.stages = 1
	return b.panel(k)
}

// spare is the largest offcut beside a set, with any cuts; -1 where it does not
// fit.
func (b *brute) spare(w, h int64, set int) int64 {
	switch {
	case set == 0 && (w <= 0 || h <= 0 || min(w, h) < b.p.LeastSide):
		return 0
	case set == 0:
		return w * h
	case w <= 0 || h <= 0 || b.area(set) > w*h:
		return -1
	case b.is(w, h, set):
		return 0
	}
	k := bruteKey{w: w, h: h, set: set}
	if v, ok := b.room[k]; ok {
		return v
	}
	v := int64(-1)
	for a := set; ; a = (a - 1) & set {
		for c := int64(1); c < w; c++ {
			v = max(v, both(b.spare(c, h, a), b.spare(w-c-b.p.Kerf, h, set^a)))
		}
		for c := int64(1); c < h; c++ {
			v = max(v, both(b.spare(w, c, a), b.spare(w, h-c-b.p.Kerf, set^a)))
		}
		if a == 0 {
			break
		}
	}
	b.room[k] = v
	return v
}

func both(a, b int64) int64 {
	if a < 0 || b < 0 {
		return -1
	}
	return max(a, b)
}

// answer is what counts, in its order.
type answer struct {
	lack         int
	money, spare int64
}

func (a answer) better(b answer) bool {
	if a.lack != b.lack {
		return a.lack < b.lack
	}
	if a.money != b.money {
		return a.money < b.money
	}
	return a.spare > b.spare
}

// best tries every way to spread the parts over sheets.
func (b *brute) best() answer {
	left := make([]int, len(b.p.Sheets))
	for i, s := range b.p.Sheets {
		left[i] = s.Count
	}
	out := answer{lack: len(b.part) + 1}
	b.spread(1<<len(b.part)-1, left, answer{}, &out)
	return out
}

func (b *brute) spread(set int, left []int, a answer, out *answer) {
	if set == 0 {
		if a.better(*out) {
			*out = a
		}
		return
	}
	low := set & -set
	b.spread(set^low, left, answer{a.lack + 1, a.money, a.spare}, out)
	for sub := set; sub > 0; sub = (sub - 1) & set {
		if sub&low == 0 {
			continue
		}
		for i, s := range b.p.Sheets {
			if left[i] == 0 || !b.sheet(s, sub) {
				continue
			}
			next := answer{a.lack, a.money + s.Price, a.spare}
			if b.p.First == Whole && b.p.Stages == 0 {
				next.spare = max(next.spare, b.spare(s.W-2*s.Trim, s.H-2*s.Trim, sub))
			}
			left[i]--
			b.spread(set^sub, left, next, out)
			left[i]++
		}
	}
}
