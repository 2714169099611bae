package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/report"
	"dryfit/internal/site"
)

// opening is what is drawn and dimensioned of an opening: where the tile ends; on a face as it was measured, where the board does.
func (d *facade) opening(o site.Opening) geom.Rect {
	if len(d.face.Fields) == 0 {
		return o.Rect
	}
	return report.TileOpening(d.site, o)
}

func (d *facade) openings() []draw.Item {
	var out []draw.Item
	for _, o := range d.site.Openings {
		out = append(out, crossed(d.box(d.opening(o)))...)
		if d.offBoard(o) {
			edge := draw.Rect(d.box(o.Rect), hiddenPen, draw.Fill{})
			edge.Class, edge.Title = "board edge", o.Name+", board's edge"
			out = append(out, edge)
		}
	}
	return out
}

// crossed draws an opening: its outline and both diagonals.
func crossed(b draw.Box) []draw.Item {
	pen := draw.Line(draw.Fine)
	frame := draw.Rect(b, draw.Line(draw.Normal), draw.Fill{On: true, Color: draw.White})
	frame.Class = "opening"
	return []draw.Item{frame, draw.Stroke(pen, b.Lo, b.Hi), draw.Stroke(pen, draw.At(b.Lo.X, b.Hi.Y), draw.At(b.Hi.X, b.Lo.Y))}
}

// offBoard reports whether the board's edge at an opening is so far from where the tile ends that the drawing shows two lines.
func (d *facade) offBoard(o site.Opening) bool {
	const apart = (draw.Normal + draw.Narrow) / 2
	tile, board := d.box(d.opening(o)), d.box(o.Rect)
	return max(abs(tile.Lo.X-board.Lo.X), abs(tile.Lo.Y-board.Lo.Y), abs(tile.Hi.X-board.Hi.X), abs(tile.Hi.Y-board.Hi.Y)) > apart
}

// hasBoardEdges reports whether the drawing shows a board's edge beside an opening.
func (d *facade) hasBoardEdges() bool {
	for _, o := range d.site.Openings {
		if d.offBoard(o) {
			return true
		}
	}
	return false
}

func (d *facade) openingNames() []draw.Item {
	var out []draw.Item
	for _, o := range d.site.Openings {
		b := d.box(d.opening(o))
		l, ok := parts.Label{Body: o.Name, Class: "opening"}.In(b.Inset(gap / 2))
		if ok {
			items, _ := d.label(l, l.At)
			out = append(out, items...)
			continue
		}
		note, _ := d.leader(l.At, []string{o.Name}, d.overTile)
		out = append(out, note...)
	}
	return out
}
