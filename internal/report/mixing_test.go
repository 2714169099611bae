package report_test

import (
	"context"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/unit"
)

// Over all stretches of setting every piece is mixed for once, and the mortar is the takeoff's bed, to a rounding for each piece.
func TestMixingCoversTheBed(t *testing.T) {
	for _, p := range plans() {
		if !p.Days.Planned || len(p.Days.Batches) == 0 {
			t.Fatal(p.Name, "has no days")
		}
		pieces, shares := 0, unit.Volume(0)
		for _, b := range p.Days.Batches {
			pieces += len(b.Pieces)
		}
		for _, x := range p.Takeoff.Pieces {
			shares += x.Mortar
		}
		var bed unit.Volume
		for _, f := range p.Takeoff.Faces {
			bed += f.Bed
		}
		if pieces != len(p.Takeoff.Pieces) {
			t.Errorf("%s: %d pieces in batches, %d laid", p.Name, pieces, len(p.Takeoff.Pieces))
		}
		if off := bed - shares; off > unit.Volume(len(p.Takeoff.Pieces)*30) || off < -unit.Volume(len(p.Takeoff.Pieces)*30) {
			t.Errorf("%s: the pieces' shares are %d mm³, the bed %d", p.Name, shares, bed)
		}
		rows := report.MixingDays(p).Rows
		if len(rows) != len(p.Days.Batches) {
			t.Errorf("%s: %d rows for %d batches", p.Name, len(rows), len(p.Days.Batches))
		}
	}
}

// Without pot life on the label nobody says how many mixes it takes.
func TestMixingUnknown(t *testing.T) {
	for _, p := range demos(t) {
		for i := range p.Takeoff.Recipes {
			p.Takeoff.Recipes[i].PotLife, p.Takeoff.Recipes[i].OpenTime = 0, 0
		}
		for _, r := range report.MixingDays(p).Rows {
			if words := strings.Join(r[5:], " "); words != strings.TrimSpace(strings.Repeat("not known ", 5)) {
				t.Errorf("%s: %s", p.Name, words)
			}
		}
	}
}

// demos are plans of the built-in rooms that a test may change.
func demos(t *testing.T) []plan.Plan {
	t.Helper()
	var out []plan.Plan
	for _, r := range demo.Rooms() {
		p, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{})
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, p)
	}
	return out
}

// The card of a day and the table of mixing are worked by one person at one pail: each names the same powder for each mix, and the same water.
func TestCardsAndTableMixAlike(t *testing.T) {
	for _, p := range plans() {
		cards := ""
		for _, c := range report.DayCards(p) {
			for _, w := range c.Work {
				cards += strings.Join(w.Notes, "\n") + "\n"
			}
		}
		for _, r := range report.MixingDays(p).Rows {
			mixes, powder, water := r[5], r[6], r[8]
			want := powder + " of powder in " + water + " of water"
			if mixes != "1" {
				want = "in " + mixes + " mixes of " + want
			}
			if !strings.Contains(cards, want) {
				t.Errorf("%s, %s: no card says %q", p.Name, r[0], want)
			}
		}
	}
}
