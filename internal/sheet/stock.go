package sheet

import (
	"dryfit/internal/cut"
	"dryfit/internal/document"
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/plan"
	"dryfit/internal/report"
)

const woodCaution = "Saws: guard and riving knife in place, eyes, ears, no gloves at the blade, the cut piece free to fall. Wood dust harms lungs; some boards free silica when they are cut: suction and a fitted respirator."

// stock shows which sheet, board or stick is cut by which cuts, what is bought and what is kept.
func (b *book) stock() {
	if len(b.p.Cut.Lots) == 0 {
		return
	}
	f := b.writer(leaf{title: "Sheets and sticks", detail: "What to buy, what out of what", scale: "as told", paper: b.paper.Paper, caution: woodCaution})
	f.table(report.StockBuy(b.p), 0)
	f.table(report.Offcuts(b.p), 0)
	for i, l := range b.p.Cut.Lots {
		f.lot(i, l)
	}
	b.labels()
}

// lot draws each sheet, board or stick of a stock with its cuts, then lists its pieces.
func (f *flow) lot(i int, l cut.Lot) {
	f.need(70 * draw.MM)
	f.paragraph(capital(l.Stock), parts.Large, true)
	f.paragraph(report.LotWords(f.p, l)+" "+report.KerfOf(f.p, l), parts.Small, false)
	for _, u := range l.Used {
		f.used(l, u)
	}
	f.table(report.StockPieces(f.p, i), 0)
}

// used draws one sheet with its cuts numbered, and lists them.
func (f *flow) used(l cut.Lot, u cut.Used) {
	n := largest(u.Size.Length, u.Size.Width, draw.Span(0, 0, f.room.W(), 110*draw.MM))
	d := newDiagram(f.p, l, u, view{n: n})
	f.need(d.high() + 30*draw.MM)
	f.paragraph(report.UsedWords(f.p, l, u)+", "+d.words(), parts.Small, true)
	d.at = draw.At(f.room.Lo.X, f.room.Hi.Y-d.um(u.Size.Width))
	drawn := draw.Group{Class: "stock", Items: d.items(f.room)}
	f.now.add(drawn)
	f.room.Hi.Y = min(f.room.Hi.Y-d.high(), reach(drawn).Lo.Y-gap) // numbers of thin pieces may stand below the drawing
	for _, line := range d.legend {
		f.paragraph(line, parts.Small, false)
	}
	f.table(report.CutSteps(f.p, l, u), 0)
}

// StockOnScreen draws one sheet, board or stick with its cuts, for a page on a screen.
func StockOnScreen(p plan.Plan, l cut.Lot, u cut.Used) draw.Page {
	long := draw.Um(int64(u.Size.Length) / perUm)
	d := newDiagram(p, l, u, view{n: max(1, int64((long+screenSize-1)/screenSize))})
	d.at = draw.At(diagramEdge, diagramEdge)
	page := draw.Page{Title: report.UsedWords(p, l, u), W: d.um(u.Size.Length) + 2*diagramEdge, H: d.um(u.Size.Width) + 2*diagramEdge}
	page.Items = d.items(draw.Span(0, 0, page.W, page.H))
	return page
}

// Legend is what the letters of a drawing on a screen stand for.
func Legend(p plan.Plan, l cut.Lot, u cut.Used) []string {
	long := draw.Um(int64(u.Size.Length) / perUm)
	d := newDiagram(p, l, u, view{n: max(1, int64((long+screenSize-1)/screenSize))})
	d.at = draw.At(diagramEdge, diagramEdge)
	d.items(draw.Span(0, 0, d.um(u.Size.Length)+2*diagramEdge, d.um(u.Size.Width)+2*diagramEdge))
	return d.legend
}

// isStick reports whether only lengths count.
func isStick(l cut.Lot) bool { return l.Kind == document.StickStock }
