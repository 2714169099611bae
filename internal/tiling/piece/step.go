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
		return 4 + int(l.facing())
	}
	return int(l.facing())
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
// cut off.
func (w *work) measure(s *setting) {
	f := s.facing()
	a, b := s.ends()
	s.Keep, s.From, s.To = w.sideName(f), w.from(f, a), w.from(f, b)
	if o, ok := w.against(s.line); ok {
		s.Keep = "cut: " + w.meets(o)
		s.From, s.To = (place(f, a) - o.at(f, along(f, a))).Abs(), (place(f, b) - o.at(f, along(f, b))).Abs()
		s.hidden += w.hidden(o)
	}
}

// against finds the cut that lies between this one and the side it would be measured from. Of two cuts that face each
// other and leave no factory side, the one that faces left or down is made first, from the whole tile.
func (w *work) against(l line) (line, bool) {
	f := l.facing()
	if w.onPiece(f) || !l.partial() && (f == toLeft || f == toBottom) {
		return line{}, false
	}
	var found []line
	for _, o := range w.lines {
		if o.facing() == f.opposite() && !o.partial() {
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
	f := l.facing()
	a, b := l.ends()
	c, d := o.ends()
	return along(f, a) <= along(f, c) && along(f, b) >= along(f, d)
}

// legs takes what is kept along the two sides that a cut across a corner joins.
func (w *work) legs(s *setting) {
	p, q := facing(-1-s.before), facing(-1-s.after)
	s.Keep = w.sideName(p) + " and " + w.sideName(q)
	s.From, s.To = w.leg(p, s.a, true), w.leg(q, s.b, false)
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
func (w *work) run(s setting, all []setting) (out [2]unit.Length) {
	a, b := s.ends()
	f := s.facing()
	sloping := s.From != s.To
	if w.corner(s.line) || !s.partial() && !(sloping && w.within(s.line)) {
		return out
	}
	out = [2]unit.Length{along(f, a), along(f, b)}
	for _, o := range all {
		if g := o.facing(); !sloping && g.upright() != f.upright() && o.From == o.To && o.Keep == w.sideName(g) {
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

// within reports whether a cut ends short of the tile's sides.
func (w *work) within(l line) bool {
	a, b := l.ends()
	f := l.facing()
	return along(f, a) != 0 || along(f, b) != w.length(f)
}

// sawn is where a rounded cut lies in the tile.
func (w *work) sawn(s setting) unit.Length {
	switch f := s.facing(); f {
	case toRight:
		return w.l - s.SawFrom
	case toTop:
		return w.w - s.SawFrom
	}
	return s.SawFrom
}
