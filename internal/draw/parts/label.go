package parts

import (
	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Label is a word on a surface, such as a piece's number, centered, with the hatching interrupted behind it as
// ISO 128-50 asks.
type Label struct {
	At    draw.XY // the middle of the word
	Body  string
	Size  draw.Um // 0 is Small
	Bold  bool
	Turn  int
	Class string
	Clear bool // nothing behind it: where the surface has no hatch
}

const labelClear draw.Um = 500 // from the word to the hatching

// Text is the lettering alone.
func (l Label) Text() draw.Text {
	size := sized(l.Size)
	t := draw.Text{Class: l.Class, At: draw.At(l.At.X, l.At.Y-size/2), Size: size, Anchor: draw.Middle, Turn: l.Turn, Bold: l.Bold, Body: l.Body}
	if l.Turn == 90 {
		t.At = draw.At(l.At.X+size/2, l.At.Y)
	}
	return t
}

// Box is what the label covers.
func (l Label) Box() draw.Box { return typeset.BoxOf(l.Text()).Inset(-labelClear) }

// Items draws the label.
func (l Label) Items() []draw.Item {
	if l.Clear {
		return []draw.Item{l.Text()}
	}
	return []draw.Item{draw.Rect(l.Box(), draw.Pen{}, draw.Fill{On: true, Color: draw.White}), l.Text()}
}

// In puts the label in the middle of a box, turned where it only fits so. It returns false where it fits neither
// way: the caller then sets a Leader instead.
func (l Label) In(b draw.Box) (Label, bool) {
	l.At = draw.At((b.Lo.X+b.Hi.X)/2, (b.Lo.Y+b.Hi.Y)/2)
	for _, l.Turn = range []int{0, 90} {
		if b.Holds(l.Box()) {
			return l, true
		}
	}
	return l, false
}
