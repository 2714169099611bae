package parts

import (
	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Leader is a line from a note to what it speaks of (ISO 128-22): a dot on a surface, an oblique line, a level one
// under the words. The words stand on the side of the knee that is away from the tip.
type Leader struct {
	Tip, Knee draw.XY
	Lines     []string // the note, its last line just above the level line
	Size      draw.Um
	Bold      bool
}

// Items draws the leader.
func (l Leader) Items() []draw.Item {
	const dot = 500
	end := draw.At(l.Knee.X+l.sign()*l.wide(), l.Knee.Y)
	out := []draw.Item{
		draw.Stroke(draw.Line(dimPen), l.Tip, l.Knee, end),
		draw.Circle{C: l.Tip, R: dot, Fill: draw.Fill{On: true, Color: draw.Black}},
	}
	for _, t := range l.texts() {
		out = append(out, t)
	}
	return out
}

// Box is what the note covers, its level line included.
func (l Leader) Box() draw.Box {
	b := draw.Span(min(l.Knee.X, l.Knee.X+l.sign()*l.wide()), l.Knee.Y, max(l.Knee.X, l.Knee.X+l.sign()*l.wide()), l.Knee.Y)
	for _, t := range l.texts() {
		b.Hi.Y = max(b.Hi.Y, typeset.BoxOf(t).Hi.Y)
	}
	return b
}

func (l Leader) sign() draw.Um {
	if l.Knee.X < l.Tip.X {
		return -1
	}
	return 1
}

func (l Leader) wide() draw.Um {
	var w draw.Um
	for _, line := range l.Lines {
		w = max(w, typeset.Width(line, sized(l.Size), l.Bold))
	}
	return w
}

func (l Leader) texts() []draw.Text {
	size := sized(l.Size)
	var out []draw.Text
	for i, line := range l.Lines {
		at := draw.At(l.Knee.X, l.Knee.Y+textOff+draw.Um(len(l.Lines)-1-i)*typeset.Leading(size))
		t := draw.Text{Class: "note", At: at, Size: size, Bold: l.Bold, Body: line}
		if l.sign() < 0 {
			t.Anchor = draw.End
		}
		out = append(out, t)
	}
	return out
}
