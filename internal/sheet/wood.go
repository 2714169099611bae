package sheet

import (
	"fmt"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/joinery"
	"dryfit/internal/report"
)

// shopCaution stands on every sheet that is taken to a saw for wood.
const shopCaution = "Saws and routers: guard and riving knife in place, eyes, ears, no gloves at the blade, stop the blade before a piece is freed. Wood dust harms lungs: " +
	"suction and a fitted respirator. Oily rags can set fire to themselves: spread them out to dry outdoors. A cabinet or a slab is heavy: lift it by two, and keep it from falling until it is screwed on."

// wood shows what is built: each cabinet taken apart and its parts, tops, lines to scribe, trim, finish.
func (b *book) wood() {
	for _, c := range b.p.Wood.Cabinets {
		b.cabinet(c)
	}
	for _, t := range b.p.Wood.Tops {
		b.top(t)
	}
	for _, s := range b.p.Wood.Scribes {
		b.scribe(s)
	}
	b.trim()
}

func (b *book) shop(title, detail, scale string, paper draw.Paper) *flow {
	return b.writer(leaf{title: title, detail: detail, scale: scale, paper: paper, caution: shopCaution})
}

// cabinet draws a cabinet taken apart, lists its parts and fronts, then draws every part that something is done to.
func (b *book) cabinet(c joinery.Cabinet) {
	f := b.shop(capital(c.Name), "Taken apart, and its parts", "as told", b.paper.Paper)
	for _, line := range report.CabinetWords(b.p, c) {
		f.paragraph(line, parts.Small, false)
	}
	f.exploded(c)
	f.table(report.CabinetParts(b.p, c), 0)
	if len(c.Fronts) > 0 {
		f.table(report.Fronts(b.p, c), 0)
	}
	f = b.shop(capital(c.Name), "Parts and their cuts", "as told", b.paper.Paper)
	f.paragraph("Every part lies face up, its front edge toward you, its left end at your left hand. Hatched is cut into the face; dashed is cut into the back, an edge or an end. "+
		"Parts that are not drawn are plain rectangles.", parts.Small, false)
	for i, q := range c.Parts() {
		f.partDrawing(i+1, q)
	}
}

// top draws a slab from above.
func (b *book) top(t joinery.Top) {
	f := b.shop(capital(t.Name), "From above, its holes, how it is held", "as told", b.paper.Landscape())
	f.slab(t)
	for _, line := range report.TopWords(b.p, t) {
		f.paragraph(line, parts.Small, false)
	}
	if len(t.Holes) > 0 {
		f.table(report.TopHoles(b.p, t), 0)
	}
	if len(t.Moves.Slots) > 0 {
		f.table(report.Slots(b.p, t), 0)
	}
	if len(t.Moves.Gaps) > 0 {
		f.table(report.Plays(b.p, t), 0)
	}
	b.holeTemplates(t)
}

// trim lists all lengths, then the finish.
func (b *book) trim() {
	if len(b.p.Wood.Trim) == 0 && len(b.p.Wood.Finishes) == 0 {
		return
	}
	f := b.shop("Trim and finish", "Lengths on long and short point", "", b.paper.Landscape())
	if len(b.p.Wood.Trim) > 0 {
		f.paragraph("Angles are how far the saw is swung or tilted from square. Of a corner, half of what it lacks to 180° is sawn on each side. Measure each run again before it is cut.", parts.Small, false)
	}
	for _, t := range b.p.Wood.Trim {
		f.table(report.TrimLengths(b.p, t), 0)
	}
	if len(b.p.Wood.Finishes) > 0 {
		f.table(report.Finishes(b.p), 0)
		f.notes("", "Finish both faces and all cut edges alike before anything is fixed. The time on the can goes before what is written here.")
	}
}

// numberOf finds a part's number in the list of its cabinet.
func numberOf(c joinery.Cabinet, name string) string {
	for i, q := range c.Parts() {
		if q.Name == name {
			return fmt.Sprint(i + 1)
		}
	}
	return ""
}
