package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/lining"
	"dryfit/internal/report"
)

// lining shows the sheets of board on each face that a stock covers, as seen from the room.
func (b *book) lining() {
	if len(b.p.Lining.Faces) == 0 {
		return
	}
	f := b.writer(leaf{title: "Board", detail: "Sheets on the faces", scale: "as told", paper: b.paper.Paper, caution: woodCaution})
	f.paragraph("As seen from the room. Joints keep off the corners of openings; fix only into studs and blocking, and clear of what is recorded in the wall.", parts.Small, false)
	for _, face := range b.p.Lining.Faces {
		f.lined(face)
	}
}

func (f *flow) lined(face lining.Face) {
	var bounds geom.Rect
	for i, s := range face.Sheets {
		if i == 0 {
			bounds = s.Rect
		}
		bounds = bounds.With(s.Rect.Min).With(s.Rect.Max)
	}
	v := view{n: largest(bounds.W(), bounds.H(), draw.Span(0, 0, f.room.W(), 100*draw.MM)), of: bounds.Min}
	high := v.um(bounds.H())
	f.need(high + 30*draw.MM)
	f.paragraph(capital(face.Name)+", "+face.Stock+", "+v.words(), parts.Small, true)
	v.at = draw.At(f.room.Lo.X, f.room.Hi.Y-high)
	f.now.add(linedItems(face, v)...)
	f.room.Hi.Y -= high + gap
	f.table(report.Lining(f.p, face), 0)
}

func linedItems(face lining.Face, v view) []draw.Item {
	var out, words []draw.Item
	for _, s := range face.Sheets {
		out = append(out, draw.Path{Class: "board sheet", Title: s.Name, Rings: v.rings(s.Region), Closed: true, Pen: draw.Line(draw.Normal)})
		if t, ok := (parts.Label{Body: s.Name, Clear: true, Class: "sheet name"}).In(v.box(s.Rect)); ok && s.Region.Contains(middle(s.Rect)) > 0 {
			words = append(words, t.Items()...)
		}
	}
	return append(out, words...)
}

func middle(r geom.Rect) geom.Point {
	return geom.Point{X: (r.Min.X + r.Max.X) / 2, Y: (r.Min.Y + r.Max.Y) / 2}
}
