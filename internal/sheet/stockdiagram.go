package sheet

import (
	"fmt"

	"dryfit/internal/cut"
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/typeset"
)

// diagram is one sheet, board or stick with its cuts, to scale. Hatched is waste; what is kept has its size; pieces have their
// name and the size that they are sawn to, or a letter where there is no room, which the legend explains.
type diagram struct {
	view
	p      plan.Plan
	lot    cut.Lot
	used   cut.Used
	crowd  crowd
	legend []string
}

// diagramEdge is kept round the drawing for the numbers of cuts.
const diagramEdge = 6 * draw.MM

func newDiagram(p plan.Plan, l cut.Lot, u cut.Used, v view) *diagram {
	return &diagram{view: v, p: p, lot: l, used: u}
}

// high is what the drawing takes down the page.
func (d *diagram) high() draw.Um { return d.um(d.used.Size.Width) + gap }

func (d *diagram) items(within draw.Box) []draw.Item {
	whole := geom.Rect{Max: geom.Point{X: d.used.Size.Length, Y: d.used.Size.Width}}
	d.legend = nil
	d.crowd = crowd{within: within}
	out := []draw.Item{draw.Rect(d.box(whole), draw.Line(draw.Wide), draw.Fill{Hatch: draw.Diagonal})}
	for _, u := range d.used.Panels {
		out = append(out, draw.Rect(d.box(u.Rect), draw.Line(draw.Narrow).As(draw.Dashed), draw.Fill{}))
	}
	for _, q := range d.leaves() {
		if q.Piece != cut.NoPiece || q.Keep {
			out = append(out, d.panel(q))
		}
	}
	for _, q := range d.leaves() {
		if q.Piece != cut.NoPiece || q.Keep {
			out = append(out, d.name(q)...)
		}
	}
	return append(out, d.numbers()...)
}

// leaves are the panels that are not divided; what lies behind the stretch of a board that is used begins at that stretch.
func (d *diagram) leaves() []cut.Panel { return report.Leaves(d.used) }

func (d *diagram) panel(q cut.Panel) draw.Item {
	pen, fill := draw.Line(draw.Narrow), draw.Fill{On: true, Color: draw.White}
	if q.Keep {
		pen, fill = draw.Line(draw.Narrow).As(draw.Dashed), draw.Fill{On: true, Color: draw.White, Hatch: draw.Dots}
	}
	r := draw.Rect(d.box(q.Rect), pen, fill)
	r.Class, r.Title = "piece", report.PanelName(d.p, q)
	return r
}

// name writes what a panel is into it: all of it, then less, then a letter.
func (d *diagram) name(q cut.Panel) []draw.Item {
	size := report.Flat(d.p.Style, q.Rect.W(), q.Rect.H())
	if isStick(d.lot) {
		size = d.p.Style.Fine().Format(q.Rect.W())
	}
	full := report.PanelName(d.p, q)
	short := full
	if q.Piece != cut.NoPiece {
		short = d.p.Cut.Pieces[q.Piece].Part.Name
	}
	for _, lines := range [][]string{{full, size}, {short, size}, {full + " " + size}, {short + " " + size}} {
		if items, ok := d.lines(lines, d.box(q.Rect), q.Keep); ok {
			return items
		}
	}
	letter := letterAt(len(d.legend))
	d.legend = append(d.legend, fmt.Sprintf("%s: %s, %s", letter, full, size))
	if items, ok := d.lines([]string{letter}, d.box(q.Rect), q.Keep); ok {
		return items
	}
	b := d.box(q.Rect)
	items, _ := d.crowd.leader(draw.At((b.Lo.X+b.Hi.X)/2, (b.Lo.Y+b.Hi.Y)/2), []string{letter}, func(draw.Box) draw.Um { return 0 })
	return items
}

// letterAt is A to Z, then AA on.
func letterAt(i int) string {
	if i < 26 {
		return string(rune('A' + i))
	}
	return letterAt(i/26-1) + letterAt(i%26)
}

// lines sets words in the middle of a box, lying or upright. False where they do not fit.
func (d *diagram) lines(lines []string, b draw.Box, kept bool) ([]draw.Item, bool) {
	room := b.Inset(600)
	mid := draw.At((b.Lo.X+b.Hi.X)/2, (b.Lo.Y+b.Hi.Y)/2)
	for _, turn := range []int{0, 90} {
		var out []draw.Item
		var boxes []draw.Box
		fits := true
		for i, line := range lines {
			off := typeset.Leading(parts.Small) * draw.Um(len(lines)-1-2*i) / 2
			l := parts.Label{At: mid.Plus(draw.At(0, off)), Body: line, Turn: turn, Clear: !kept, Class: "piece name"}
			if turn == 90 {
				l.At = mid.Plus(draw.At(-off, 0))
			}
			box := typeset.BoxOf(l.Text())
			fits = fits && room.Holds(box) && d.crowd.free(box)
			out, boxes = append(out, l.Items()...), append(boxes, box)
		}
		if fits {
			for _, x := range boxes {
				d.crowd.take(x)
			}
			return out, true
		}
	}
	return nil, false
}

// numbers writes the number of each cut beside the drawing, at an end of its kerf or along it, wherever there is room.
func (d *diagram) numbers() []draw.Item {
	var out []draw.Item
	for _, s := range d.used.Steps {
		a, b := report.KerfLine(d.lot, s)
		p, q := d.point(a), d.point(b)
		var at []draw.XY
		for _, k := range []draw.Um{50, 30, 70, 15, 85, 40, 60, 8, 92} {
			at = append(at, draw.At(p.X+(q.X-p.X)*k/100, p.Y+(q.Y-p.Y)*k/100))
		}
		l := parts.Label{Body: fmt.Sprint(s.Number), Bold: true, Class: "cut number"}
		if items, ok := d.crowd.label(l, at...); ok {
			out = append(out, items...)
			continue
		}
		items, _ := d.crowd.leader(at[0], []string{l.Body}, func(draw.Box) draw.Um { return 0 })
		out = append(out, draw.Group{Class: "cut number", Items: items})
	}
	return out
}
