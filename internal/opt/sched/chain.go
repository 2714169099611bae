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

func origin(j int, why Why, ready int) Link { return Link{j, why, -1, -1, -1, ready} }

// A tracer follows causes back from the last job until one has none before it.
type tracer struct {
	*board
	seen   []bool
	choice bool // a chain may begin with a choice: there is no other
	chain  []Link
}

// chain is one line of causes from a job that starts for a reason of its own to a job that ends at the finish.
func (b *board) chain(starts []int) []Link {
	b.load(starts)
	copy(b.low, b.root)
	finish := b.m.finish(starts)
	for _, choice := range []bool{false, true} {
		t := tracer{board: b, seen: make([]bool, b.m.jobs), choice: choice}
		for j, s := range starts {
			if b.m.shape[j].end[s] == finish && t.trace(j) {
				return t.chain
			}
		}
	}
	for j, s := range starts { // jobs that hold each other: only together they could start earlier
		if b.m.shape[j].end[s] == finish {
			return []Link{origin(j, ByChoice, s)}
		}
	}
	return nil
}

func (t *tracer) trace(j int) bool {
	if t.seen[j] {
		return false
	}
	t.seen[j] = true
	for _, l := range t.causes(j) {
		if l.From < 0 && (l.Why != ByChoice || t.choice) || l.From >= 0 && t.trace(l.From) {
			t.chain = append(t.chain, l)
			return true
		}
	}
	return false
}

// causes are what rules out the nearest start before the one that j has. Hours alone are passed over in search of what
// made j miss the hours before.
func (b *board) causes(j int) []Link {
	m := b.m
	s := b.start[j]
	if m.fixed[j] {
		return []Link{origin(j, AsFixed, s)}
	}
	b.take(j)
	defer b.put(j, s)
	short := -1 // a resource whose level was too low
	for t := m.shape[j].prevStart(s - 1); t >= m.low[j]; t = m.shape[j].prevStart(t - 1) {
		links := append(b.lagsBehind(j, t), b.holders(j, t)...)
		if len(links) > 0 {
			return links
		}
		level := m.lacking(j, t, m.cap)
		if level < 0 {
			return []Link{origin(j, ByChoice, s)}
		}
		short = m.shortAt(j, level, m.cap)
	}
	return []Link{b.opening(j, short)}
}

// opening tells why nothing may start before j's first start.
func (b *board) opening(j, short int) Link {
	release := b.m.p.Jobs[j].Release
	l := origin(j, AtOnce, release)
	switch {
	case short >= 0:
		l.Why, l.Resource = ForHours, short
	case b.m.low[j] > release:
		l.Why = ForHours
	case release > 0:
		l.Why = Released
	}
	return l
}

// lagsBehind are the lags that keep j from starting at t, the one that asks for most first.
func (b *board) lagsBehind(j, t int) []Link {
	m := b.m
	var links []Link
	most := 0
	for _, i := range m.in[j] {
		a := &m.arcs[i]
		if a.From.Job == j {
			continue
		}
		behind := m.time(a.From, b.start[a.From.Job]) + a.Ticks - m.time(a.To, t)
		if behind <= 0 {
			continue
		}
		l := Link{j, AfterLag, a.From.Job, a.lag, -1, t + 1}
		if a.Ticks < 0 {
			l.Why = WithinLag
		}
		if !a.To.End {
			l.Ready = t + behind
		}
		links = append(links, l)
		if behind > most {
			most = behind
			links[0], links[len(links)-1] = links[len(links)-1], links[0]
		}
	}
	return links
}

// holders are the jobs that hold what j would need if it started at t, the one that ends last first;
// none where the level alone is too low.
func (b *board) holders(j, t int) []Link {
	m := b.m
	at := b.lastLacking(j, t)
	if at < 0 || m.lacking(j, t, m.cap) >= 0 {
		return nil
	}
	r := b.shortOf(j, at)
	var links []Link
	last := -1
	for _, k := range m.users[r] {
		s := b.start[k]
		if s < 0 || s > at || m.shape[k].end[s] <= at || m.holds(k, r, at) == 0 {
			continue
		}
		links = append(links, Link{j, ForResource, k, -1, r, t + 1})
		if e := m.shape[k].end[s]; e > last {
			last = e
			links[0], links[len(links)-1] = links[len(links)-1], links[0]
		}
	}
	return links
}
