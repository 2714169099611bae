package report

import (
	"fmt"

	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/schedule"
	"dryfit/internal/takeoff"
	"dryfit/internal/unit"
)

// MixingDays says for each stretch of setting how much to mix, in as many mixes as its pot life asks for, and how much to spread before
// the bed skins over.
func MixingDays(p plan.Plan) Table {
	t := Table{Title: "Mixing, day by day", Empty: "No setting is planned: the days say when.",
		Columns: numbers(text("When", "Face", "Pieces", "Mortar", "Bed", "Mixes", "Powder for each", "Water for each, by weight", "Water for each, by volume", "Spread at once"), 2, 4, 5, 6, 7, 8, 9)}
	shares := sharesOf(p)
	for _, b := range p.Days.Batches {
		t.Rows = append(t.Rows, mixRow(p, b, shares))
	}
	return t
}

// pieceKey finds a piece's share of the bed.
type pieceKey struct{ face, address string }

func sharesOf(p plan.Plan) map[pieceKey]unit.Volume {
	out := map[pieceKey]unit.Volume{}
	for _, x := range p.Takeoff.Pieces {
		out[pieceKey{x.Face, x.Address}] = x.Mortar
	}
	return out
}

func mixRow(p plan.Plan, b schedule.Batch, shares map[pieceKey]unit.Volume) []string {
	var v unit.Volume
	for _, a := range b.Pieces {
		v += shares[pieceKey{b.Face, a}]
	}
	f, _ := p.Takeoff.Face(b.Face)
	row := []string{p.Days.Tasks[b.Task].Sessions[b.Session].From.Say(), b.Face, fmt.Sprint(len(b.Pieces)), orNone(f.Mortar, "none chosen yet"), p.Style.Say(unit.Fills(v)),
		notKnown, notKnown, notKnown, notKnown, notKnown}
	r, ok := p.Takeoff.Recipe(document.Mortar, f.Mortar)
	if !ok || v <= 0 {
		return row
	}
	long := minutesOf(p, b)
	if n, known := mixes(r, long); known {
		row[5] = fmt.Sprint(n)
		m := r.Batch(eachMix(v, n))
		row[6] = p.Style.Say(unit.Weighs(m.Powder))
		if m.WaterKnown {
			row[7], row[8] = p.Style.Say(unit.Weighs(m.WaterMass)), p.Style.Say(unit.Fills(m.Water))
		}
	}
	row[9] = spreadWords(p, b, r, long)
	return row
}

// mixes is in how many mixes a stretch of setting is done, so that each is used up within the pot life; not known where that is not.
func mixes(r takeoff.Recipe, long unit.Minutes) (n int64, known bool) {
	if r.PotLife == 0 {
		return 0, false
	}
	return max(1, int64((long+r.PotLife-1)/r.PotLife)), true
}

// eachMix is what one of several mixes fills, rounded up.
func eachMix(v unit.Volume, n int64) unit.Volume { return unit.Volume((int64(v) + n - 1) / n) }

// minutesOf is the part of its session that a batch takes, by the area of its pieces.
func minutesOf(p plan.Plan, b schedule.Batch) unit.Minutes {
	s := p.Days.Tasks[b.Task].Sessions[b.Session]
	var all unit.Area
	for _, o := range p.Days.Batches {
		if o.Task == b.Task && o.Session == b.Session {
			all += o.Area
		}
	}
	if all <= 0 {
		return s.To.Since(s.From)
	}
	return unit.Minutes(unit.Quantity{N: int64(s.To.Since(s.From))}.Share(int64(b.Area), int64(all)).N)
}

// spreadWords is how much can be combed at once and still be tiled within the open time, at the pace that the days are planned with.
func spreadWords(p plan.Plan, b schedule.Batch, r takeoff.Recipe, long unit.Minutes) string {
	switch {
	case r.OpenTime == 0 || long == 0:
		return notKnown
	case r.OpenTime >= long:
		return "all"
	}
	return p.Style.Say(unit.Quantity{Of: unit.ByArea, N: int64(b.Area) / int64(long) * int64(r.OpenTime)})
}
