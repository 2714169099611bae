package bar

// pool lists every pattern that a plan of at most target can use: its reduced
// cost is no more than target leaves above the bound that weights prove. Only
// patterns that can take no further piece are listed, for covering is enough;
// those for lacking pieces are not.
// It is not all of them where there are too many.
func (s *search) pool(target int64) (list []pattern, all bool) {
	l := &lister{search: s, room: target*s.m.scale - s.m.worth(s.w), need: append([]int(nil), s.m.need...)}
	if l.room < 0 {
		return nil, true
	}
	l.order()
	if !l.bounds() {
		return nil, false
	}
	for i, st := range s.m.sticks {
		if st.count > 0 && len(st.runs) > 0 {
			l.stick, l.floor = i, st.price*s.m.scale+s.w.excess[i]-l.room
			l.seen = map[string]bool{}
			l.into(0, 0, 0, st.runs[0])
		}
	}
	return l.list, !l.over
}

// maxPool keeps the list small enough to branch on.
const maxPool = 60000

// What it takes to look at an item, and to keep a pattern.
const (
	lookWork = 100
	addWork  = 1500
)

type lister struct {
	*search
	room  int64
	items []item      // of all kinds; the order that they are taken in
	rest  [][]filling // by place in items: what items from there can fill
	stick int
	floor int64 // what the stick must weigh
	need  []int
	takes []take
	seen  map[string]bool
	list  []pattern
	over  bool
}

// order puts the kinds that weigh most for their size first.
func (l *lister) order() {
	for _, k := range l.m.order {
		l.items = append(l.items, item{k, l.m.sizes[k], l.w.piece[k], l.m.need[k]})
	}
}

// bounds makes the lists of fillings, from the last item on.
func (l *lister) bounds() bool {
	var most int64
	for _, st := range l.m.sticks {
		most = max(most, st.longestRun())
	}
	l.rest = make([][]filling, len(l.items)+1)
	k := knapsack{list: []filling{{last: -1}}}
	l.rest[len(l.items)] = append([]filling(nil), k.list...)
	for i := len(l.items) - 1; i >= 0; i-- {
		it := l.items[i]
		copies := min(it.most, int(most/it.size))
		for n := 1; copies > 0; n *= 2 {
			n = min(n, copies)
			copies -= n
			k.merge(0, int32(n), it.size*int64(n), it.value*int64(n), most)
		}
		k.links = k.links[:0]
		if len(k.list) > maxFillings || l.steps.over() {
			return false
		}
		l.rest[i] = append([]filling(nil), k.list...)
		l.steps.spend(k.work)
		k.work = 0
	}
	return true
}

// most is what items from place i on can weigh in a room of that size.
func (l *lister) most(i int, size int64) int64 {
	k := knapsack{list: l.rest[i]}
	return k.best(size).value
}

// later is what the runs behind run can weigh.
func (l *lister) later(run int) int64 {
	var sum int64
	for _, r := range l.m.sticks[l.stick].runs[run+1:] {
		sum += l.most(0, r)
	}
	return sum
}

// into takes items from place i on into a run that has so much room left.
func (l *lister) into(run, i int, value, size int64) {
	if l.steps.spend(lookWork); l.over || l.steps.over() {
		l.over = true
		return
	}
	if value+l.most(i, size)+l.later(run) < l.floor {
		return
	}
	if i == len(l.items) {
		l.next(run, value)
		return
	}
	it := l.items[i]
	n := min(l.need[it.kind], int(max(size, 0)/it.size))
	for ; n >= 0; n-- {
		l.need[it.kind] -= n
		if n > 0 {
			l.takes = append(l.takes, take{it.kind, run, n})
		}
		l.into(run, i+1, value+int64(n)*it.value, size-int64(n)*it.size)
		if n > 0 {
			l.takes = l.takes[:len(l.takes)-1]
		}
		l.need[it.kind] += n
	}
}

// next goes on to the next run, or records the pattern.
func (l *lister) next(run int, value int64) {
	runs := l.m.sticks[l.stick].runs
	if run+1 < len(runs) {
		l.into(run+1, 0, value, runs[run+1])
		return
	}
	if len(l.takes) == 0 || l.hasRoom() {
		return
	}
	l.steps.spend(addWork)
	p := newPattern(l.stick, append([]take(nil), l.takes...))
	if key := p.key(); !l.seen[key] {
		l.seen[key] = true
		l.list = append(l.list, p)
		l.over = len(l.list) > maxPool
	}
}

// hasRoom tells whether some run can take a further piece.
func (l *lister) hasRoom() bool {
	for run, size := range l.m.sticks[l.stick].runs {
		for _, t := range l.takes {
			if t.run == run {
				size -= int64(t.n) * l.m.sizes[t.kind]
			}
		}
		for i := len(l.m.order) - 1; i >= 0; i-- {
			k := l.m.order[i]
			if l.m.sizes[k] > size {
				break
			}
			if l.need[k] > 0 {
				return true
			}
		}
	}
	return false
}
