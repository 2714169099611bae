package nest

// carver turns slabs into panels with places. So many stages inward it looks
// whether the last panel of a stage, not cut down to what lies in it, leaves more.
type carver struct {
	m    *model
	kerf int64
	ends int
}

// panels divides a panel by cuts of one direction. The panel's sizes hold their
// kerf; what comes out are real sizes.
func (c carver) panels(s *slab, p Panel, cut Cut) []Panel {
	if s == nil || s.blank() {
		return c.waste(p)
	}
	if s.cut != cut {
		return c.last(s, p, cut)
	}
	first, rest := divide(p, cut, s.a.along(cut))
	return append(c.panels(s.a, first, cut), c.panels(s.b, rest, cut)...)
}

// last is the last panel of a stage and the waste behind it.
func (c carver) last(s *slab, p Panel, cut Cut) []Panel {
	try := c.ends > 0
	c.ends--
	first, rest := divide(p, cut, s.along(cut))
	out := append(flat(c.across(s, first, cut.other()), cut), c.waste(rest)...)
	if !try || len(c.waste(rest)) == 0 {
		return out
	}
	if q := c.across(s, p, cut.other()); c.m.spare(q).better(c.m.spare(Panel{Cut: cut, Into: out, Part: NoPart})) {
		return flat(q, cut)
	}
	return out
}

// flat joins cuts of the same direction into one stage.
func flat(p Panel, cut Cut) []Panel {
	if p.Cut == cut {
		return p.Into
	}
	return []Panel{p}
}

// across is a panel that is divided the given way if at all; the slab fills it
// in the direction across.
func (c carver) across(s *slab, p Panel, cut Cut) Panel {
	if s.blank() {
		return c.real(p)
	}
	if s.cut == Whole && s.w == p.W && s.h == p.H {
		q := c.real(p)
		q.Part, q.Turned = s.kind, s.turned
		return q
	}
	into := c.panels(s, p, cut)
	if len(into) == 1 && extent(into[0], cut)+c.kerf == extent(p, cut) {
		return into[0]
	}
	q := c.real(p)
	q.Cut, q.Into = cut, into
	return q
}

// waste is nothing where the kerf takes it all.
func (c carver) waste(p Panel) []Panel {
	if p.W <= c.kerf || p.H <= c.kerf {
		return nil
	}
	return []Panel{c.real(p)}
}

// real takes the kerf off.
func (c carver) real(p Panel) Panel {
	return Panel{X: p.X, Y: p.Y, W: p.W - c.kerf, H: p.H - c.kerf, Part: NoPart}
}

func extent(p Panel, cut Cut) int64 {
	if cut == Crosscut {
		return p.W
	}
	return p.H
}

// divide cuts a panel whose sizes hold their kerf.
func divide(p Panel, cut Cut, at int64) (first, rest Panel) {
	first, rest = p, p
	if cut == Crosscut {
		first.W, rest.X, rest.W = at, p.X+at, p.W-at
	} else {
		first.H, rest.Y, rest.H = at, p.Y+at, p.H-at
	}
	return first, rest
}

// stages is how many stages a panel's parts are away from it.
func (p Panel) stages() int {
	if p.Cut == Whole {
		return 0
	}
	most := 0
	for _, q := range p.Into {
		most = max(most, q.stages())
	}
	return most + 1
}

// obeys tells whether a clear sheet keeps the rules of first cut and stages.
func (m *model) obeys(p Panel) bool {
	depth := p.stages()
	if m.first != Whole && p.Cut == m.first.other() {
		if depth > 1 {
			return false
		}
		depth = 2
	}
	return m.stages == 0 || depth <= m.stages
}

// lookEnds is how far inward the ends of stages are looked at.
const lookEnds = 3

// carve makes the panels of a pattern in the way that leaves the largest offcut.
func (m *model) carve(p pattern) (Panel, bool) {
	s := m.sheets[p.sheet]
	clear := Panel{W: s.w, H: s.h}
	var best Panel
	found := false
	for _, c := range []carver{{m, m.kerf, 0}, {m, m.kerf, lookEnds}} {
		for _, cut := range []Cut{Rip, Crosscut} {
			if m.first == cut.other() && found {
				continue
			}
			q := c.across(p.slab, clear, cut)
			if m.obeys(q) && (!found || m.spare(q).better(m.spare(best))) {
				best, found = q, true
			}
		}
	}
	return best, found
}

// spare is the largest offcut of a panel.
func (m *model) spare(p Panel) Offcut {
	if p.Part != NoPart {
		return Offcut{}
	}
	if p.Cut == Whole {
		if min(p.W, p.H) < m.least {
			return Offcut{}
		}
		return Offcut{X: p.X, Y: p.Y, W: p.W, H: p.H}
	}
	var best Offcut
	for _, q := range p.Into {
		if o := m.spare(q); o.better(best) {
			best = o
		}
	}
	return best
}
