package schedule

import (
	"slices"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

const varnished = bare + `  hours: {every day: 8:00 to 20:00}
  also: [top]
  done: {coat top 1: {started: 2026-03-02 8:00, took: 30 min}}
`

const varnish = "goods: {floor varnish: {kind: wood finish, coats: 2, cures: {recoat: 4 to 24 h}}}\n"

// A label's window of 4 to 24 h between coats: from 8:30 on the next begins at 12:30 and by 8:30 of the next day, or is sanded first.
func TestRecoatWindowOfALabel(t *testing.T) {
	for from, want := range map[string]string{
		"2026-03-02 9:00": "coat top 2 2 12:30-13:00",
		"2026-03-03 8:30": "coat top 2 3 8:30-9:00",
		"2026-03-03 8:45": "sand before coat top 2 3 8:45-9:15; coat top 2 3 9:15-9:45",
	} {
		p, _, _ := made(t, varnished+"  plan from: "+from+"\n"+varnish)
		if got := lines(p); !strings.Contains(got, "; "+want+";") || strings.Contains(want, "sand") != strings.Contains(got, "sand") {
			t.Errorf("from %s: %s\nwant %s", from, got, want)
		}
	}
}

// A label's times and temperatures come before typical ones: a mortar that says 16 h at 70 °F takes 16 exp(40000/8.314 (1/285.15 -
// 1/294.261)) = 16 x 1.6863 = 27.0 h at 12 °C; a membrane that says 6 h takes 6 h; both say how cold it may be.
func TestLabels(t *testing.T) {
	const goods = `goods:
  grey mortar: {kind: mortar, temperature: 50 to 90 F, cures: {at: 70 F, grout: 16 h, clips: 12 h, walk: 20 h}}
  slow mortar: {kind: mortar, instead of: grey mortar, cures: {grout: 99 h}}
  sheet: {kind: membrane, temperature: 15 to 30 C, cures: {tile: 6 h, flood: 12 h}}
`
	p, found, assumed := made(t, tiled+"  room temperature: 12 C\n"+goods)
	for what, want := range map[string]string{"the mortar hardens": "27 h label of grey mortar", "the membrane dries": "6 h label of sheet", "the membrane cures": "12 h label of sheet"} {
		i := slices.IndexFunc(p.Waits, func(w Wait) bool { return w.What == what })
		if w := p.Waits[i]; w.To.Since(w.From).Hours()+" "+w.Source != want {
			t.Errorf("%s: %s %s, want %s", what, w.To.Since(w.From).Hours(), w.Source, want)
		}
	}
	if !slices.ContainsFunc(found, func(f diag.Finding) bool {
		return f.Code == "below-label" && strings.Contains(f.Say(unit.Style{System: unit.Millimetres}), "12 °C: the label allows no less than 15 °C")
	}) {
		t.Error("a membrane in a room that is too cold for it:", found)
	}
	for _, a := range assumed {
		if strings.Contains(a.Say(unit.Style{}), "the mortar hardens") {
			t.Error("a typical figure beside a label's:", a.Say(unit.Style{}))
		}
	}
}

// What was ordered on March 2 with a lead time of 10 days is there on March 12; nothing is set before. Laying it
// dry, half an hour, waits for that day too: it saves a trip.
func TestGoodsMustBeThere(t *testing.T) {
	p, _, _ := made(t, tiled+"  room temperature: 20 C\ngoods: {grey mortar: {kind: mortar, lead time: 10 days, ordered on: 2026-03-02}}\n")
	set, _ := p.Task("set floor")
	if when(set.Start) != "12 8:30" {
		t.Error(set.Start)
	}
}

// Board that was ordered on March 2 and takes 4 days is there on the morning of the 6th; the other wall's has no order and is at hand.
func TestStockMustBeThere(t *testing.T) {
	p, _, _ := made(t, tiled+"  room temperature: 20 C\nstock: {panel: {kind: sheet, size: 2400 x 1200 x 12, covers: back, lead time: 4 days, ordered on: 2026-03-02}}\n")
	back, _ := p.Task("board back")
	floor, _ := p.Task("board floor")
	if when(back.Start) != "6 8:00" || floor.Start.Date() != p.From.Date() {
		t.Error(back.Start, floor.Start)
	}
}
