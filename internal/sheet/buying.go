package sheet

import (
	"fmt"

	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// goods lists what to buy and how the numbers come about.
func (b *book) goods() {
	f := b.writer(leaf{title: "Tiles to buy", detail: "Whole, cut up, spares, boxes", paper: b.paper.Landscape()})
	f.table(report.Goods(b.p), 0)
	f.notes("", "Breakage and spares are your own numbers, not a share. Buy one lot, and keep what is left over: a later lot differs in size and shade.")
	for _, g := range b.p.Tiling.Goods {
		f.notes("", fmt.Sprintf("%s: %s (proof: %s).", report.GoodName(b.p, g), report.Bound(g), report.ProofWords(g)))
	}
}

// card is for measuring ten tiles of each good whose variation or warpage nobody has measured.
func (b *book) card() {
	var f *flow
	for _, t := range b.p.Document.Tiles {
		if t.Variation.Known && t.Warpage.Known || !b.uses(t.Name) {
			continue
		}
		if f == nil {
			f = b.writer(leaf{title: "Measuring card", detail: "Ten tiles and a straightedge", paper: b.paper.Paper})
			f.notes("", "Take ten tiles from different boxes. Measure length and width at the middle; lay a straightedge over the face corner to corner and along a side, and measure the greatest gap, or rock.",
				"Variation is the largest size less the smallest. Warpage is the greatest gap. Write both into the room document and plan again.",
				"Then lay ten of them in a row with nine spacers and measure the whole: that is the dry-lay reading, which counts before the label.",
				"Lippage allowed between neighbors: "+b.p.Style.Format(rule.LippageNarrow.Limit)+" with joints under "+b.p.Style.Format(rule.WideJoint)+", plus the tile's own warpage ("+rule.LippageNarrow.Cite()+").")
		}
		f.table(cardTable(t.Name, b.p.Style.System), 0)
	}
}

func (b *book) uses(tile string) bool {
	for _, g := range b.p.Tiling.Goods {
		if g.Tile == tile {
			return true
		}
	}
	return false
}

func cardTable(tile string, system unit.System) report.Table {
	u := " (" + system.String() + ")"
	t := report.Table{Title: tile}
	for _, h := range []string{"Tile", "Length" + u, "Width" + u, "Gap, corner to corner" + u, "Gap, along a side" + u} {
		t.Columns = append(t.Columns, report.Column{Head: h})
	}
	for i := range 10 {
		t.Rows = append(t.Rows, []string{fmt.Sprint(i + 1), "________", "________", "________", "________"})
	}
	t.Rows = append(t.Rows, []string{"Largest less smallest", "________", "________", "", ""}, []string{"Greatest", "", "", "________", "________"})
	t.Rows = append(t.Rows, []string{"Ten tiles, nine joints of ____", "________", "", "", ""})
	return t
}

// cutting shows which piece comes out of which tile: tile by tile as drawings.
func (b *book) cutting() {
	var f *flow
	for _, g := range b.p.Tiling.Goods {
		if len(g.From) == 0 {
			continue
		}
		if f == nil {
			f = b.writer(leaf{title: "Cutting plan", detail: "Which piece out of which tile", scale: "as told", paper: b.paper.Paper, caution: silicaCaution})
			f.paragraph("Hatched is waste. Every tile lies as it is sold, its length lying. "+report.KerfWords(b.p), parts.Small, false)
		}
		f.tilesOf(g)
	}
}
