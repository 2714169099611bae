package schedule

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Days without something, worked out by hand. In two hours a day from 8 to 10, a and b take the water, d waits 24 h for a, and b
// comes after e: the earliest plan has a and e on the 2nd, b and d on the 3rd.
func TestLimits(t *testing.T) {
	const jobs = `
  hours: {every day: 8:00 to 10:00}
  jobs:
    a: {takes: 1 h, waits: 24 h, before: d, takes away: water}
    b: {takes: 1 h, after: e, takes away: water}
    d: {takes: 1 h}
    e: {takes: 1 h}`
	const wc = `
  hours: {every day: 8:00 to 10:00}
  also: [WC]
  jobs:
    out: {takes: 1 h, takes away: WC}
    wet: {takes: 1 h, after: out, waits: 48 h, before: WC}`
	for _, c := range []struct{ name, days, want, lacks, finding string }{
		{"none limited", jobs, "a 2 8:00-9:00; e 2 9:00-10:00; b 3 8:00-9:00; d 3 9:00-10:00", "water 2 3", ""},
		{"a limit that costs nothing", jobs + "\n  at most without: {water: 2}", "a 2 8:00-9:00; e 2 9:00-10:00; b 3 8:00-9:00; d 3 9:00-10:00", "water 2 3", ""},
		{"one that puts the finish off: a and b on a day without e", jobs + "\n  at most without: {water: 1}",
			"e 2 8:00-9:00; a 3 8:00-9:00; b 3 9:00-10:00; d 4 9:00-10:00", "water 3", ""},
		{"one that no plan can keep", jobs + "\n  at most without: {water: 0}",
			"e 2 8:00-9:00; a 3 8:00-9:00; b 3 9:00-10:00; d 4 9:00-10:00", "water 3", "water is off on 1 day, and no plan has fewer; at most 0 were wanted"},
		{"what happened counts", jobs + "\n  at most without: {water: 1}\n  done: {a: {started: 2026-03-02 8:00, took: 1 h}}",
			"a 2 8:00-9:00; e 2 9:00-10:00; b 3 8:00-9:00; d 3 9:00-10:00", "water 2 3", "water is off on 2 days, and no plan has fewer; at most 1 were wanted"},
		{"nights without a WC: out and wet end at 10, and 48 h later nobody is there", wc + "\n  at most without: {WC: 3}",
			"out 2 8:00-9:00; wet 2 9:00-10:00; WC 5 8:00-9:00", "WC 2 3 4, water 5", ""},
		{"fewer can not be", wc + "\n  at most without: {WC: 2}",
			"out 2 8:00-9:00; wet 2 9:00-10:00; WC 5 8:00-9:00", "WC 2 3 4, water 5", "no WC is in place on 3 nights, and no plan has fewer; at most 2 were wanted"},
	} {
		src := strings.Replace(bare, "pace: {", "pace: {WC: 1 h, waste test: 0 h, ", 1)
		p, found, _ := made(t, src+strings.TrimPrefix(c.days, "\n")+"\n")
		if got := strings.Replace(lines(p), "; waste test", "", 1); !strings.HasPrefix(got, c.want) {
			t.Errorf("%s:\n got %s\nwant %s", c.name, got, c.want)
		}
		if got := lackLine(p); got != c.lacks {
			t.Errorf("%s: without %s, want %s", c.name, got, c.lacks)
		}
		if got := overLimits(found); got != c.finding {
			t.Errorf("%s: told %q, want %q", c.name, got, c.finding)
		}
	}
}

func lackLine(p Plan) string {
	var out []string
	for _, l := range p.Lacks {
		s := l.What
		for _, d := range l.Dates {
			_, _, day := d.Civil()
			s += fmt.Sprint(" ", day)
		}
		if l.Count.Days != len(l.Dates) {
			s += fmt.Sprintf(" counted %d", l.Count.Days)
		}
		out = append(out, s)
	}
	return strings.Join(out, ", ")
}

func overLimits(found diag.List) string {
	var out []string
	for _, f := range found {
		if f.Code == "too-long-without" {
			out = append(out, f.Say(unit.Style{}))
		}
	}
	return strings.Join(out, "; ")
}
