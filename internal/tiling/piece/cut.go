package piece

import (
	"strings"

	"dryfit/internal/unit"
)

// cut says what to do at the saw.
func (w *work) cut() Cut {
	switch {
	case w.Laid.Whole:
		return Cut{}
	case len(w.lines) == 0: // all its cuts are trifles
		return Cut{Visible: min(w.l, w.w)}
	}
	all := w.settings()
	c := Cut{Kind: w.kind(), Tolerance: w.Tools.Tolerance, Visible: visible(all)}
	for _, s := range all {
		c.Steps = append(c.Steps, s.Step)
		c.MeasureFirst = c.MeasureFirst || w.Tools.Tolerance > s.least.Forgive
	}
	for _, u := range w.under {
		c.MeasureFirst = c.MeasureFirst || w.Tools.Tolerance > u.least.Forgive
	}
	if _, bays := turns(w.shape[0]); bays > 0 || c.Kind == CutOut {
		c.Neck = w.shape.Neck()
	}
	if c.Kind == Straight || c.Kind == Taper {
		c.TaperShows, c.Snaps = !w.hex && shows(all[0].Step), w.snaps(all[0])
	}
	return c
}

// visible is the narrowest width that is seen: of all cuts, what is kept less what the other face's tile hides.
func visible(all []setting) unit.Length {
	var least unit.Length
	for i, s := range all {
		v := max(0, s.narrow-s.hidden)
		if i == 0 || v < least {
			least = v
		}
	}
	return least
}

// tellingTaper is the share of a piece's width, 1 in so many, above which an eye sees its taper: 1/4 in shows on a 1 in strip and not
// on a 9 in one (common practice for the two examples; the limit between them is our choice).
const tellingTaper = 10

// shows reports whether an eye sees the taper of a strip. Of hexagons it sees none: their sides slope anyway.
func shows(s Step) bool {
	return s.SawFrom != s.SawTo && (s.From-s.To).Abs()*tellingTaper > min(s.From, s.To)
}

// snaps reports whether both strips of a single cut are wide enough to break.
func (w *work) snaps(s setting) bool {
	full := w.w
	if s.facing.upright() {
		full = w.l
	}
	kept, off := min(s.SawFrom, s.SawTo), full-max(s.SawFrom, s.SawTo)
	return kept >= w.Tools.LeastStrip && off >= w.Tools.LeastStrip
}

// meets names what a cut meets: "corner A", "corner A, window sill".
func (w *work) meets(l line) string {
	var names []string
	for _, m := range l.meets {
		names = append(names, w.edge(m).Name)
	}
	return strings.Join(names, ", ")
}

// least returns the edge met that forgives least.
func (w *work) least(l line) Edge {
	best := w.edge(l.meets[0])
	for _, m := range l.meets[1:] {
		if e := w.edge(m); e.Forgive < best.Forgive {
			best = e
		}
	}
	return best
}

func (w *work) hidden(l line) unit.Length {
	var most unit.Length
	for _, m := range l.meets {
		most = max(most, w.edge(m).Hidden)
	}
	return most
}

// sideName names the side that a cut is measured from.
func (w *work) sideName(f facing) string {
	name := factory[-f.label()][len(isFactory):]
	if w.hex && f.upright() == (w.proto.Turn&1 == 1) {
		return name + " corner"
	}
	return name
}
