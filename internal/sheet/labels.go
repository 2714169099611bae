package sheet

import (
	"dryfit/internal/cut"
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
	"dryfit/internal/typeset"
)

// labelColumns is how many labels to cut out and stick on pieces stand side by side.
const labelColumns = 3

// labels are for sticking on pieces as they come off the saw: what each is, its size, its grain, which side is up.
func (b *book) labels() {
	f := b.writer(leaf{title: "Labels", detail: "To cut out and stick on the pieces", paper: b.paper.Paper})
	var row []cut.Piece
	for _, q := range b.p.Cut.Pieces {
		if q.Lot < 0 || q.Used < 0 {
			continue
		}
		if row = append(row, q); len(row) == labelColumns {
			f.labelRow(row)
			row = nil
		}
	}
	f.labelRow(row)
}

func (f *flow) labelRow(row []cut.Piece) {
	if len(row) == 0 {
		return
	}
	wide := (f.room.W() - (labelColumns-1)*gap) / labelColumns
	var all [][]string
	most := 0
	for _, q := range row {
		lines := labelText(f, q, wide-4*draw.MM)
		all = append(all, lines)
		most = max(most, len(lines))
	}
	high := draw.Um(most)*typeset.Leading(parts.Small) + 6*draw.MM
	f.need(high + gap)
	for i, lines := range all {
		lo := draw.At(f.room.Lo.X+draw.Um(i)*(wide+gap), f.room.Hi.Y-high)
		f.now.add(draw.Rect(draw.Box{Lo: lo, Hi: lo.Plus(draw.At(wide, high))}, draw.Line(draw.Narrow).As(draw.Dashed), draw.Fill{}))
		for k, line := range lines {
			at := draw.At(lo.X+2*draw.MM, lo.Y+high-2*draw.MM-parts.Small-draw.Um(k)*typeset.Leading(parts.Small))
			f.now.add(draw.Text{Class: "label", At: at, Size: parts.Small, Bold: k == 0, Body: line})
		}
		f.now.add(draw.Text{Class: "label", At: draw.At(lo.X+wide/2, lo.Y+1200), Size: parts.Tiny, Anchor: draw.Middle, Body: "front edge"})
	}
	f.room.Hi.Y -= high + gap
}

// labelText is the piece's name and what a label says of it, broken to a width.
func labelText(f *flow, q cut.Piece, wide draw.Um) []string {
	out := typeset.Wrap(q.Name, parts.Small, true, wide)
	for _, line := range report.LabelLines(f.p, q) {
		out = append(out, typeset.Wrap(line, parts.Small, false, wide)...)
	}
	return out
}
