package pair

// span is a set of sizes of a panel along one axis that a layout can be cut
// from: v alone, or v and everything above it.
type span struct {
	v    int64
	up   bool
	trim int64 // where not 0: cut the panel down to this first
}

// covers tells whether every size in o is in s.
func (s span) covers(o span) bool {
	if s.up {
		return s.v <= o.v
	}
	return !o.up && s.v == o.v
}

// blank holds the numbers that rules of cutting need.
type blank struct{ w, h, kerf, least int64 }

// raised is the part of s that a cut may leave as a panel.
func (b blank) raised(s span) (span, bool) {
	if s.v < b.least {
		s.v = b.least
		return s, s.up
	}
	return s, true
}

// along adds two panels side by side, with the cut between them. Where the axis
// is fixed (both its sides are the blank's) the sum must come out at full.
func (b blank) along(s, t span, fixed bool, full int64) (span, bool) {
	s, okS := b.raised(s)
	t, okT := b.raised(t)
	sum := s.v + b.kerf + t.v
	up := s.up || t.up
	if !okS || !okT || sum > full {
		return span{}, false
	}
	if fixed {
		return span{v: full}, up || sum == full
	}
	return span{v: sum, up: up}, true
}

// across holds two panels to one size, the one the cut between them has.
func across(s, t span) (span, bool) {
	switch {
	case s.up && t.up:
		return span{v: max(s.v, t.v), up: true}, true
	case s.up:
		return span{v: t.v}, t.v >= s.v
	case t.up:
		return span{v: s.v}, s.v >= t.v
	}
	return span{v: s.v}, s.v == t.v
}

// forms lists s and what taking waste off the panel adds to it. On a fixed axis
// waste would take away a side of the blank: there the pieces trim their own.
func (b blank) forms(s span, fixed bool) []span {
	if fixed || s.up || s.v < b.least {
		return []span{s}
	}
	trimmed := span{v: s.v + b.least, up: true, trim: s.v}
	if b.least == 0 {
		return []span{trimmed}
	}
	return []span{s, trimmed}
}

// single is the span of panels that a piece of size v is cut from. low and high
// tell which sides it keeps, fixed whether the panel is the full size.
func (b blank) single(v int64, fixed bool, full int64) (span, bool) {
	if !fixed {
		return span{v: v}, v <= full
	}
	room := full - v
	return span{v: full}, room == 0 || room >= b.least && v >= b.least
}

// option is one way to cut a bag of pieces from a panel.
type option struct {
	x, y span
	pose int  // for a bag of one piece
	cut  Side // Left: the first cut is upright; Bottom: it is level; 0: a piece
	a, b *bag // the bags on the low and on the high side of the cut
	i, j int  // which option of each
}

func (o option) covers(p option) bool { return o.x.covers(p.x) && o.y.covers(p.y) }

// keepBest adds o unless an option there already allows all that it does, and
// drops those that it covers. Nothing may refer to opts by index yet.
func keepBest(opts []option, o option) []option {
	for _, p := range opts {
		if p.covers(o) {
			return opts
		}
	}
	kept := opts[:0]
	for _, p := range opts {
		if !o.covers(p) {
			kept = append(kept, p)
		}
	}
	return append(kept, o)
}
