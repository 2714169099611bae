package cut

import "testing"

// A vanity of plywood with a drawer bank, and its trim: about what one room asks for.
func BenchmarkVanity(b *testing.B) {
	doc := room(b, "in", table, "stock: {ply: {kind: sheet, size: 96 x 48 x 3/4, price: 72, edge trim: 1/4, other sizes: {48 x 48: 41}, on hand: {rest: 30 x 22}}}",
		kit("ply", "side 30-3/4 x 19-1/4, count: 2; bottom 28-7/8 x 19; rail 28-1/2 x 4, count: 3; divider 24 x 18-1/2; shelf 13-3/4 x 17, count: 2; toe 28-1/2 x 3-1/2; "+
			"door 22 x 14-1/4, count: 2; front 14-1/4 x 7, count: 3, match: bank; dside 16 x 5, count: 6; dend 12 x 5, count: 6; cleat 28-1/2 x 3"))
	for b.Loop() {
		p, _, _ := Make(doc, nil)
		if len(p.Lots[0].Lacking) > 0 {
			b.Fatal("lacks")
		}
		b.ReportMetric(float64(p.Lots[0].Verdict.Money), "milli")
		b.ReportMetric(float64(p.Lots[0].Verdict.Lower), "bound")
	}
}
