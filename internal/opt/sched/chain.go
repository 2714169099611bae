package sched

// A Link tells why a job starts no earlier. The chain's last link is a job that ends at the finish; each link's From is
// the job of the link before it.
type Link struct {
	Job      int
	Why      Why
	From     int // the job that it waits for, or -1
	Lag      int // of AfterLag and WithinLag, else -1
	Resource int // of ForResource and ForHours, else -1
	Ready    int // From kept it from starting before; from Ready to its start it waited for hours
}

// Why is what keeps a job from starting earlier.
type Why uint8

// The first five may begin a chain, the others have a From.
const (
	AtOnce      Why = iota // it starts as early as anything may
	Released               // its release
	AsFixed                // it is fixed
	ForHours               // its calendar, or a resource's level, allows nothing before
	ByChoice               // it could start earlier: the plan has another reason, a goal or an end not proven
	AfterLag               // Lag from From
	WithinLag              // greatest Lag: From, that comes later, must not be too far behind
	ForResource            // From holds the Resource
)

// chain follows one cause after another from the last job back.
func (b *board) chain(starts []int) []Link {
	b.load(starts)
	copy(b.low, b.root)
	finish := b.m.finish(starts)
	seen := make([]bool, b.m.jobs)
	var back []Link
	for j := range starts {
		if b.m.shape[j].end[starts[j]] == finish && len(back) == 0 {
			for at := j; at >= 0; {
				seen[at] = true
				l := b.link(at, seen)
				back = append(back, l)
				at = l.From
			}
		}
	}
	for i, k := 0, len(back)-1; i < k; i, k = i+1, k-1 {
		back[i], back[k] = back[k], back[i]
	}
	return back
}

// link looks at the starts before the one that j has, the nearest first, for what rules them out. Hours alone are
// passed over in search of what made j miss the hours before.
func (b *board) link(j int, seen []bool) Link {
	m := b.m
	s := b.start[j]
	l := Link{Job: j, From: -1, Lag: -1, Resource: -1, Ready: s}
	if m.fixed[j] {
		l.Why = AsFixed
		return l
	}
	b.take(j)
	defer b.put(j, s)
	hours := -1 // a resource whose level was too low
	t := m.shape[j].prevStart(s - 1)
	for ; t >= m.low[j]; t = m.shape[j].prevStart(t - 1) {
		l.Ready = t + 1
		if b.lagBehind(j, t, seen, &l) || b.heldBy(j, t, seen, &l, &hours) {
			return l
		}
	}
	l.Ready = m.low[j]
	switch release := m.p.Jobs[j].Release; {
	case hours >= 0:
		l.Why, l.Resource = ForHours, hours
	case m.low[j] > release:
		l.Why = ForHours
	case release > 0:
		l.Why = Released
	}
	return l
}

// lagBehind finds the lag that most keeps j from starting at t.
func (b *board) lagBehind(j, t int, seen []bool, l *Link) bool {
	m := b.m
	worst := 0
	for _, i := range m.in[j] {
		a := &m.arcs[i]
		k := a.From.Job
		if k == j || seen[k] {
			continue
		}
		if by := m.time(a.From, b.start[k]) + a.Ticks - m.time(a.To, t); by > worst {
			worst = by
			l.From, l.Lag, l.Why = k, a.lag, AfterLag
			if a.Ticks < 0 {
				l.Why = WithinLag
			}
		}
	}
	return worst > 0
}

// heldBy finds the job that ends last of those that hold what j would need if it started at t. Where the level alone is
// too low it notes that and says no; where nothing is in the way, j starts later by choice.
func (b *board) heldBy(j, t int, seen []bool, l *Link, hours *int) bool {
	m := b.m
	if level := m.lacking(j, t, m.cap); level >= 0 {
		*hours = m.shortAt(j, level, m.cap)
		return false
	}
	at := m.lacking(j, t, b.free)
	if at < 0 {
		l.Why, l.Ready = ByChoice, b.start[j]
		return true
	}
	r := m.shortAt(j, at, b.free)
	for _, k := range m.users[r] {
		s := b.start[k]
		if s < 0 || seen[k] || s > at || m.shape[k].end[s] <= at || m.holds(k, r, at) == 0 {
			continue
		}
		if l.From < 0 || m.shape[k].end[s] > m.shape[l.From].end[b.start[l.From]] {
			l.From, l.Resource, l.Why = k, r, ForResource
		}
	}
	if l.From < 0 {
		l.Why, l.Ready = ByChoice, b.start[j]
	}
	return true
}
