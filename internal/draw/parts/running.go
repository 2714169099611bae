package parts

import (
	"sort"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Mark is one place of a running dimension and what stands there.
type Mark struct {
	At   draw.Um
	Text string
	Bold bool
}

// Running is superimposed running dimensioning (ISO 129-1): one line from a common origin, which has a circle, and
// a value for each place, in line with its extension line. Places are x, or y where the run is vertical; Feature
// and Line are on the other axis: where the thing measured ends, and where the dimension line lies. Values that
// would cover each other move along as little as may be, with a line that leads to them; where one row has no room
// within the limits they stand in two rows.
type Running struct {
	Vertical      bool
	Origin        Mark // where everything is measured from, usually with the text "0"
	Feature, Line draw.Um
	Marks         []Mark
	Size          draw.Um // height of lettering; 0 is Small
	Limits        *Limits // where values may stand; nil is anywhere
}

// laid is a run with the places of its values found.
type laid struct {
	Running
	axis
	size, out draw.Um
	marks     []Mark    // by place, the origin among them
	slots     []draw.Um // where each value stands along
	half      draw.Um   // half of what a value needs along
	rows      int
	fits      bool
}

// Items draws the run.
func (r Running) Items() []draw.Item {
	l := r.lay()
	first, last := l.marks[0].At, l.marks[len(l.marks)-1].At
	out := []draw.Item{l.stroke(dimPen, first, r.Line, last, r.Line)}
	for _, m := range r.Marks {
		if m.At != r.Origin.At {
			out = append(out, l.tick(m.At, r.Line))
		}
	}
	out = append(out, draw.Circle{C: l.at(r.Origin.At, r.Line), R: originR, Pen: draw.Line(dimPen), Fill: draw.Fill{On: true, Color: draw.White}})
	for i := range l.marks {
		out = append(out, l.lead(i), l.value(i))
	}
	return out
}

// Fits says whether all values stand within the limits. Where they do not, they are drawn beyond them, and the run
// wants to be split over sheets.
func (r Running) Fits() bool { return r.lay().fits }

// Depth is how far the run reaches beyond its line, away from the thing measured.
func (r Running) Depth() draw.Um {
	l := r.lay()
	var depth draw.Um
	for i := range l.marks {
		_, _, lo, hi := l.reach(typeset.BoxOf(l.value(i)))
		depth = max(depth, (lo-r.Line)*l.out, (hi-r.Line)*l.out)
	}
	return depth
}

func (r Running) lay() laid {
	l := laid{Running: r, axis: axis{r.Vertical}, size: sized(r.Size), out: outward(r.Feature, r.Line), rows: 1, fits: true}
	l.marks = append([]Mark{r.Origin}, r.Marks...)
	sort.SliceStable(l.marks, func(i, j int) bool { return l.marks[i].At < l.marks[j].At })
	l.half = l.size * 7 / 10 // Leading with 1.4 heights, the least of ISO 3098-1
	for _, m := range l.marks {
		lo, hi, _, _ := l.reach(typeset.BoxOf(l.letter(m, 0, 0)))
		l.half = max(l.half, -lo+lineClear/2, hi+lineClear/2)
	}
	l.place(2 * l.half)
	if !l.fits {
		l.rows = 2
		l.place(l.half + lineClear)
	}
	return l
}

// place spreads the values with one distance between neighbors.
func (l *laid) place(apart draw.Um) {
	want, gaps := make([]draw.Um, len(l.marks)), make([]draw.Um, len(l.marks)-1)
	for i, m := range l.marks {
		want[i] = m.At
		if i > 0 {
			gaps[i-1] = apart
		}
	}
	var within *Limits
	if l.Limits != nil {
		within = &Limits{l.Limits.Lo + l.half, l.Limits.Hi - l.half}
		l.fits = apart*draw.Um(len(gaps)) <= within.Hi-within.Lo
	}
	l.slots = spread(want, gaps, within)
}

// letter is a value in line with its extension line: along the x axis it is turned, along the y axis it is not.
func (l laid) letter(m Mark, along, across draw.Um) draw.Text {
	t := draw.Text{Class: "dimension", Size: l.size, Bold: m.Bold, Body: m.Text}
	if l.vertical {
		t.At = l.at(along-l.size/2, across)
	} else {
		t.Turn, t.At = 90, l.at(along+l.size/2, across)
	}
	if l.out < 0 {
		t.Anchor = draw.End
	}
	return t
}

// slant is the depth over which lines lead aside: half of the greatest move, within bounds; none when none moves.
func (l laid) slant() draw.Um {
	var move draw.Um
	for i, m := range l.marks {
		move = max(move, l.slots[i]-m.At, m.At-l.slots[i])
	}
	if move == 0 {
		return 0
	}
	return max(slantLow, min(slantHigh, move/2))
}

// row is the depth, from the dimension line, at which the values of a row begin.
func (l laid) row(n int) draw.Um {
	depth := beyond + l.slant()
	if n == 0 {
		return depth
	}
	var wide draw.Um
	for i := 0; i < len(l.marks); i += 2 {
		wide = max(wide, typeset.Width(l.marks[i].Text, l.size, l.marks[i].Bold))
	}
	return depth + labelOff + wide + lineClear
}

func (l laid) rowOf(i int) int { return i % l.rows }

func (l laid) value(i int) draw.Text {
	return l.letter(l.marks[i], l.slots[i], l.Line+l.out*(l.row(l.rowOf(i))+labelOff))
}

// lead is the extension line of a place and, where its value moved, the line on to it.
func (l laid) lead(i int) draw.Path {
	at, slot := l.marks[i].At, l.slots[i]
	p := l.extension(at, l.Feature, l.Line)
	if slot != at {
		p.Rings[0] = append(p.Rings[0], l.at(slot, l.Line+l.out*(beyond+l.slant())))
	} else {
		p.Rings[0][1] = l.at(at, l.Line+l.out*l.row(0))
	}
	if l.rowOf(i) > 0 {
		p.Rings[0] = append(p.Rings[0], l.at(slot, l.Line+l.out*l.row(1)))
	}
	return p
}
