package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// batten is a gauge rod as it is marked: a piece of wood to scale from its datum to its last mark, with both edges of every course or
// column on it, their names, and the running positions that its table has.
type batten struct {
	upright bool
	datum   unit.Length
	spans   []report.Span
	marks   []battenMark
}

// battenMark is a numbered place.
type battenMark struct {
	at   unit.Length
	text string
}

// Sizes of a batten on paper.
const (
	battenWide = 8 * draw.MM
	battenHigh = 120 * draw.MM // of an upright one, at most
	battenLine = 4 * draw.MM   // from the wood to its dimension line
	battenEnd  = 3 * draw.MM   // kept at both ends, for numbers that reach beyond the wood
)

// courseBatten stands: the tops of the courses and the foot of the lowest are numbered.
func (w *wall) courseBatten(spans []report.Span) batten {
	at, _, _ := report.Datum(w.p, w.site)
	b := batten{upright: true, datum: at.Y, spans: spans}
	number := func(y unit.Length) {
		b.marks = append(b.marks, battenMark{y, w.p.Style.Bare(report.Up(w.p, w.site, y))})
	}
	number(spans[0].Lo)
	for _, s := range spans {
		number(s.Hi)
	}
	return b
}

// columnBatten lies: the left edges of the columns and the right edge of the last are numbered.
func (w *wall) columnBatten(spans []report.Span) batten {
	at, _, _ := report.Datum(w.p, w.site)
	b := batten{datum: at.X, spans: spans}
	number := func(x unit.Length) { b.marks = append(b.marks, battenMark{x, w.p.Style.Bare(x - at.X)}) }
	for _, s := range spans {
		number(s.Lo)
	}
	number(spans[len(spans)-1].Hi)
	return b
}

// ends are the ends of the wood: it reaches to the datum.
func (b batten) ends() (lo, hi unit.Length) {
	lo, hi = b.datum, b.datum
	for _, s := range b.spans {
		lo, hi = min(lo, s.Lo), max(hi, s.Hi)
	}
	return lo, hi
}

// scaled is a batten on paper: places along it from where it begins, and its own left or lower side.
type scaled struct {
	batten
	n           int64
	begin, side draw.Um
}

// scale finds the largest scale at which a batten is no longer than so much.
func (b batten) scale(long draw.Um) scaled {
	lo, hi := b.ends()
	return scaled{batten: b, n: largest(hi-lo, 0, draw.Span(0, 0, long, 0))}
}

func (s scaled) view() view { return view{n: s.n} }

func (s scaled) long() draw.Um {
	lo, hi := s.ends()
	return s.view().um(hi - lo)
}

func (s scaled) at(l unit.Length) draw.Um {
	lo, _ := s.ends()
	return s.begin + s.view().um(l-lo)
}

// between is the wood from one place to another.
func (s scaled) between(lo, hi unit.Length) draw.Box {
	if s.upright {
		return draw.Span(s.side, s.at(lo), s.side+battenWide, s.at(hi))
	}
	return draw.Span(s.at(lo), s.side, s.at(hi), s.side+battenWide)
}

// run is the dimension line beside the wood, or under it.
func (s scaled) run() parts.Running {
	r := &run{parts.Running{Vertical: s.upright, Feature: s.side, Line: s.side - battenLine, Origin: parts.Mark{At: s.at(s.datum), Text: "0", Bold: true},
		Limits: &parts.Limits{Lo: s.begin - battenEnd, Hi: s.begin + s.long() + battenEnd}}}
	for _, m := range s.marks {
		r.mark(s.at(m.at), m.text, false)
	}
	return r.Running
}

// items draws the wood, its marks and their numbers.
func (s scaled) items() []draw.Item {
	lo, hi := s.ends()
	wood := draw.Rect(s.between(lo, hi), draw.Line(draw.Wide), draw.Fill{})
	wood.Class = "batten"
	out := []draw.Item{wood}
	for _, x := range s.spans {
		b := s.between(x.Lo, x.Hi)
		out = append(out, draw.Rect(b, draw.Line(draw.Narrow), draw.Fill{}))
		if l, ok := (parts.Label{Body: x.Name, Class: "rod", Clear: true}).In(b); ok {
			out = append(out, l.Items()...)
		}
	}
	return append(out, s.run().Items()...)
}

// rod writes the table of a batten, and the batten beside it if it stands, above it if it lies. Where its numbers find no room to scale, and
// on the faces of openings, whose few tiles share one sheet, the table stands alone.
func (w *wall) rod(f *flow, t report.Table, b batten) {
	long := battenHigh
	if !b.upright {
		long = f.room.W() - 2*battenEnd
	}
	s := b.scale(long)
	switch {
	case w.site.Kind == site.RevealFace || !s.run().Fits():
		f.table(t, 0)
	case b.upright:
		f.standing(t, s)
	default:
		f.lying(t, s)
	}
}

func (f *flow) standing(t report.Table, s scaled) {
	f.need(s.long() + 2*battenEnd)
	page, left, top := f.now, f.room.Lo.X, f.room.Hi.Y
	s.begin = top - battenEnd - s.long()
	s.side = left + s.run().Depth() + battenLine
	f.now.add(s.items()...)
	f.room.Lo.X = s.side + battenWide + 2*gap
	t.Title += ", at " + s.view().words()
	f.table(t, 0)
	f.room.Lo.X = left
	if f.now == page {
		f.room.Hi.Y = min(f.room.Hi.Y, s.begin-battenEnd-gap)
	}
}

func (f *flow) lying(t report.Table, s scaled) {
	deep := battenWide + battenLine + s.run().Depth()
	f.need(deep + gap + leastTable)
	s.begin, s.side = f.room.Lo.X+battenEnd, f.room.Hi.Y-battenWide
	f.now.add(s.items()...)
	f.room.Hi.Y -= deep + gap
	t.Title += ", at " + s.view().words()
	f.table(t, 0)
}
