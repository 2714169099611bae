package order

import (
	"strings"
	"testing"

	"dryfit/internal/calendar"
	"dryfit/internal/cut"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/schedule"
	"dryfit/internal/takeoff"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

func on(t *testing.T, s string) calendar.Moment {
	t.Helper()
	d, ok := calendar.ParseDate(s)
	if !ok {
		t.Fatal(s)
	}
	return d.At(18 * unit.Hour)
}

// The yard takes 10 days. The floor's setting may start on March 20 at the latest, the wall's on March 25; a part of the floor that is done needs
// nothing more. Mortar for both is needed on the 20th, so ordered by the 10th; for the wall alone on the 25th and by the 15th.
func TestOrderBy(t *testing.T) {
	days := func(from string) schedule.Plan {
		return schedule.Plan{From: on(t, from), Tasks: []schedule.Task{
			{Kind: schedule.Set, Subject: "floor", State: schedule.Done, Latest: on(t, "2026-03-01")},
			{Kind: schedule.Set, Subject: "wall", Latest: on(t, "2026-03-25")},
			{Kind: schedule.Set, Subject: "floor", Latest: on(t, "2026-03-20")},
		}}
	}
	for _, c := range []struct {
		what, faces, ordered, from string
		need, order, code          string
	}{
		{"both", "floor wall", "", "2026-03-01", "2026-03-20", "2026-03-10", ""},
		{"the wall", "wall", "", "2026-03-01", "2026-03-25", "2026-03-15", ""},
		{"a face without a job: the first that sets", "niche", "", "2026-03-01", "2026-03-20", "2026-03-10", ""},
		{"too late", "wall", "", "2026-03-16", "2026-03-25", "2026-03-15", "order-late"},
		{"on the last day", "wall", "", "2026-03-15", "2026-03-25", "2026-03-15", ""},
		{"ordered in time", "wall", "2026-03-15", "2026-03-16", "2026-03-25", "", ""},
		{"ordered too late", "wall", "2026-03-16", "2026-03-16", "2026-03-25", "", "delivery-late"},
	} {
		src := shelf
		if c.ordered == "" {
			src = replaced(src, ", ordered on: 2026-03-02", "")
		} else {
			src = replaced(src, "2026-03-02", c.ordered)
		}
		doc, found := document.Read("shelf", []byte(src))
		if found.Stops() {
			t.Fatal(found)
		}
		line := takeoff.Line{Kind: document.Mortar, What: "mortar", Good: "mortar", Known: true, Need: unit.Weighs(unit.Pound)}
		for _, f := range strings.Fields(c.faces) {
			line.Parts = append(line.Parts, takeoff.Part{Face: f, Takes: unit.Weighs(unit.Pound)})
		}
		p, list, _ := Make(doc, tiling.Plan{}, cut.Plan{}, takeoff.Plan{Lines: []takeoff.Line{line}}, days(c.from))
		l := p.Lines[0]
		if l.NeedBy != c.need || l.OrderBy != c.order || codes(list) != c.code {
			t.Errorf("%s: needed %s, order by %s, %q; want %s, %s, %q", c.what, l.NeedBy, l.OrderBy, codes(list), c.need, c.order, c.code)
		}
	}
}

func codes(l diag.List) string {
	var out []string
	for _, f := range l {
		out = append(out, f.Code)
	}
	return strings.Join(out, " ")
}

// Where no days are planned, no date is made up.
func TestNoDays(t *testing.T) {
	p, _ := made(t, shelf)
	for _, l := range p.Lines {
		if l.NeedBy != "" || l.OrderBy != "" {
			t.Errorf("%+v", l)
		}
	}
}
