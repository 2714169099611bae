package parts

import (
	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Chain is a run of dimensions end to end (ISO 129-1, chain dimensioning): n+1 places and n texts between them.
// Places are x, or y where the run is vertical; Feature and Line are on the other axis: where the thing measured
// ends, and where the dimension line lies. A text that has no room between its marks moves outward, with a line
// to the middle of what it measures.
type Chain struct {
	Vertical      bool
	Feature, Line draw.Um
	At            []draw.Um // ascending
	Texts         []string
	Size          draw.Um // height of lettering; 0 is Small
	Limits        *Limits // where moved texts may stand; nil is anywhere
}

// chainClear is kept on either side of a text that moved out, so that two do not read as one.
const chainClear = draw.MM

// Dimension is one dimension, a chain of one.
type Dimension struct {
	Vertical      bool
	From, To      draw.Um
	Feature, Line draw.Um
	Text          string
	Size          draw.Um
}

// Items draws the dimension.
func (d Dimension) Items() []draw.Item { return d.chain().Items() }

// Depth is how far the dimension reaches beyond its line, away from the thing measured.
func (d Dimension) Depth() draw.Um { return d.chain().Depth() }

func (d Dimension) chain() Chain {
	at := []draw.Um{min(d.From, d.To), max(d.From, d.To)}
	return Chain{Vertical: d.Vertical, Feature: d.Feature, Line: d.Line, At: at, Texts: []string{d.Text}, Size: d.Size}
}

// Items draws the chain: line, extension lines, strokes, texts.
func (c Chain) Items() []draw.Item {
	if len(c.At) < 2 {
		return nil
	}
	a := axis{c.Vertical}
	out := []draw.Item{a.stroke(dimPen, c.At[0], c.Line, c.At[len(c.At)-1], c.Line)}
	for _, at := range c.At {
		out = append(out, a.extension(at, c.Feature, c.Line), a.tick(at, c.Line))
	}
	for i, text := range c.Texts {
		if c.inside(i) {
			out = append(out, c.text(text, c.middle(i), c.baseline(textOff)))
		}
	}
	return append(out, c.moved()...)
}

// Depth is how far the chain reaches beyond its line, away from the thing measured.
func (c Chain) Depth() draw.Um {
	depth := beyond
	a := axis{c.Vertical}
	for _, it := range c.Items() {
		if t, ok := it.(draw.Text); ok {
			_, _, lo, hi := a.reach(typeset.BoxOf(t))
			depth = max(depth, (lo-c.Line)*c.out(), (hi-c.Line)*c.out())
		}
	}
	return depth
}

func (c Chain) out() draw.Um { return outward(c.Feature, c.Line) }

func (c Chain) middle(i int) draw.Um { return (c.At[i] + c.At[i+1]) / 2 }

// inside says whether a text stands between its marks, clear of the strokes.
func (c Chain) inside(i int) bool {
	return width(c.Texts[i], sized(c.Size))+2*tickHalf <= c.At[i+1]-c.At[i]
}

func (c Chain) text(body string, along, across draw.Um) draw.Text {
	t := draw.Text{Class: "dimension", At: axis{c.Vertical}.at(along, across), Size: sized(c.Size), Anchor: draw.Middle, Body: body}
	if c.Vertical {
		t.Turn = 90
	}
	return t
}

// above is the direction in which lettering stands up from its line: y, and for turned lettering minus x.
func (c Chain) above() draw.Um {
	if c.Vertical {
		return -1
	}
	return 1
}

// baseline is the place across of lettering that stands so far above the line.
func (c Chain) baseline(off draw.Um) draw.Um { return c.Line + c.above()*off }

// moved draws the texts that have no room, side by side in one row outward of the line.
func (c Chain) moved() []draw.Item {
	var which []int
	var want, half, apart []draw.Um
	for i, text := range c.Texts {
		if c.inside(i) {
			continue
		}
		which, want = append(which, i), append(want, c.middle(i))
		half = append(half, width(text, sized(c.Size))/2+chainClear)
		if n := len(half); n > 1 {
			apart = append(apart, half[n-2]+half[n-1])
		}
	}
	var out []draw.Item
	for k, at := range spread(want, apart, c.Limits.shrunk(half)) {
		out = append(out, c.ledTo(which[k], at)...)
	}
	return out
}

// shrunk takes half of the first and last label off the limits, which then bound the middles.
func (l *Limits) shrunk(half []draw.Um) *Limits {
	if l == nil || len(half) == 0 {
		return l
	}
	return &Limits{l.Lo + half[0], l.Hi - half[len(half)-1]}
}

// ledTo draws text i at a place along, with its line, which first runs straight past the strokes and the row of
// texts that had room, then aside.
func (c Chain) ledTo(i int, along draw.Um) []draw.Item {
	size := sized(c.Size)
	straight, base := beyond, textOff
	if c.out() == c.above() {
		straight += size
	} else {
		base += size
	}
	a, mid := axis{c.Vertical}, c.middle(i)
	bend, near := c.Line+c.out()*straight, c.Line+c.out()*(straight+slantLow)
	return []draw.Item{
		draw.Stroke(draw.Line(draw.Fine), a.at(mid, c.Line), a.at(mid, bend), a.at(along, near)),
		c.text(c.Texts[i], along, near+c.out()*base),
	}
}
