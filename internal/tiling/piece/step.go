package piece

import (
	"cmp"
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// setting is a step with the cut that it makes.
type setting struct {
	Step
	line
	hidden unit.Length // of what lies between the cut and where it is measured from
	least  Edge        // of the edges met, the one that forgives least
	narrow unit.Length // the lesser of what is kept at the cut's own ends
	ends   [2]unit.Length
}

// settings are the cuts in the order of work: cuts right across before notches, so that what is measured from is there;
// from the left, the bottom, the right, the top.
func (w *work) settings() []setting {
	out := make([]setting, 0, len(w.lines))
	for _, l := range w.lines {
		out = append(out, w.setting(l))
	}
	slices.SortStableFunc(out, func(a, b setting) int {
		return cmp.Or(cmp.Compare(order(a.line), order(b.line)), cmp.Compare(a.From, b.From))
	})
	for i := range out {
		out[i].Along = w.run(out[i], out)
	}
	return out
}

func order(l line) int {
	if l.partial() {
		return 4 + int(l.facing)
	}
	return int(l.facing)
}

// setting measures one cut and rounds it.
func (w *work) setting(l line) setting {
	s := setting{line: l, least: w.least(l)}
	s.Edge = w.meets(l)
	s.hidden = w.hidden(l)
	if w.corner(l) {
		w.legs(&s)
	} else {
		w.measure(&s)
	}
	w.round(&s)
	return s
}

// measure takes both ends from the factory side that the piece lies to; from the cut on that side, where the side is
// cut off. A cut that stops at another cut is measured where its line meets the tile's sides, since it is marked on the whole tile.
func (w *work) measure(s *setting) {
	f := s.facing
	s.Keep = w.sideName(f)
	s.hidden += w.hiddenAt(f)
	kept := func(t unit.Length) unit.Length { return w.fromSide(f, s.at(f, t)) }
	if o, ok := w.against(s.line); ok {
		s.Keep = "cut: " + w.meets(o)
		s.hidden += w.hidden(o)
		kept = func(t unit.Length) unit.Length { return w.fromSide(f, s.at(f, t)) - w.fromSide(f, o.at(f, t)) }
	}
	a, b := s.line.ends()
	s.ends = [2]unit.Length{along(f, a), along(f, b)}
	s.narrow = narrower(kept(s.ends[0]), kept(s.ends[1]))
	if from, to := kept(0), kept(w.length(f)); !s.partial() && s.gentle() && w.onTile(f, from) && w.onTile(f, to) {
		s.ends = [2]unit.Length{0, w.length(f)}
	}
	s.From, s.To = kept(s.ends[0]), kept(s.ends[1])
}

// narrower is the lesser width of two ends; a piece that runs out to a point is as wide as its other end.
func narrower(a, b unit.Length) unit.Length {
	if min(a, b) <= 0 {
		return max(a, b)
	}
	return min(a, b)
}

// onTile reports whether a mark so far from a side is on the tile.
func (w *work) onTile(f facing, v unit.Length) bool { return v > 0 && v <= w.length(f^1) }

// against finds the cut that lies between this one and the side it would be measured from. Of two cuts that face each
// other and leave no factory side, the one that faces left or down is made first, from the whole tile.
func (w *work) against(l line) (line, bool) {
	f := l.facing
	if w.onPiece(f) || !l.partial() && (f == toLeft || f == toBottom) {
		return line{}, false
	}
	var found []line
	for _, o := range w.lines {
		if o.facing == f.opposite() && !o.partial() {
			found = append(found, o)
		}
	}
	if len(found) != 1 || !found[0].gentle() || !l.gentle() || !found[0].beside(l) {
		return line{}, false
	}
	return found[0], true
}

// beside reports whether a cut runs at least as far as another that faces it, so that both its ends can be measured from it.
func (l line) beside(o line) bool {
	f := l.facing
	a, b := l.ends()
	c, d := o.ends()
	return along(f, a) <= along(f, c) && along(f, b) >= along(f, d)
}

// legs takes what is kept along the two sides that a cut across a corner joins.
func (w *work) legs(s *setting) {
	p, q := facing(-1-s.before), facing(-1-s.after)
	s.Keep = w.sideName(p) + " and " + w.sideName(q)
	s.From, s.To = w.leg(p, s.a, true), w.leg(q, s.b, false)
	s.narrow = min(s.From, s.To)
}

// leg measures along side p, walked counter-clockwise, from its start or to its end.
func (w *work) leg(p facing, end geom.Point, start bool) unit.Length {
	run, full := along(p, end), w.length(p)
	forward := p == toBottom || p == toRight // walked counter-clockwise, these run with the axes
	if forward == start {
		return run
	}
	return full - run
}

// round brings both ends down to a mark of the tape, so that the piece fits: 5-17/32 becomes 5-1/2. A taper too small to be
// set is cut parallel, if the joint forgives it; a cut of a mosaic sheet goes to the chip joint, if the joint forgives it.
func (w *work) round(s *setting) {
	mark := w.Tools.Mark
	s.SawFrom, s.SawTo = s.From.Floor(mark), s.To.Floor(mark)
	if low := min(s.From, s.To).Floor(mark); s.gentle() && (s.From-s.To).Abs() < mark && max(s.From, s.To)-low <= s.least.Forgive {
		s.SawFrom, s.SawTo = low, low
	}
	if c := w.Bond.Chips; c != nil && s.From == s.To {
		if n, keep := c.Keep(s.From); n > 0 && s.From-keep <= s.least.Forgive {
			s.Chips, s.SawFrom, s.SawTo = n, keep, keep
		}
	}
	off := max(s.From-s.SawFrom, s.To-s.SawTo)
	s.Leaves, s.Wide = s.least.Joint+off, off > s.least.Forgive
}

// run says from where to where a cut runs along the kept side; zero for one right across, which needs no telling, and for one across a corner,
// whose ends are told by what is kept. A sloping cut is told by its true ends. A parallel one that ends at another cut ends there as rounded.
func (w *work) run(s setting, all []setting) [2]unit.Length {
	sloping := s.From != s.To
	right := s.ends == [2]unit.Length{0, w.length(s.facing)}
	switch {
	case w.corner(s.line), !s.partial() && (right || !sloping):
		return [2]unit.Length{}
	case sloping:
		return s.ends
	}
	return w.stops(s, all)
}

// stops finds where a parallel cut ends: at another cut as rounded, or at its own ends.
func (w *work) stops(s setting, all []setting) [2]unit.Length {
	out := s.ends
	a, b := s.line.ends()
	for _, o := range all {
		if g := o.facing; g.upright() != s.facing.upright() && o.From == o.To && o.Keep == w.sideName(g) {
			if o.a == a || o.b == a {
				out[0] = w.sawn(o)
			}
			if o.a == b || o.b == b {
				out[1] = w.sawn(o)
			}
		}
	}
	return out
}

// sawn is where a rounded cut lies in the tile.
func (w *work) sawn(s setting) unit.Length {
	switch f := s.facing; f {
	case toRight:
		return w.l - s.SawFrom
	case toTop:
		return w.w - s.SawFrom
	}
	return s.SawFrom
}
