package schedule

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/calendar"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// bare is a document without walls: only the user's own jobs are planned, between protecting and cleaning.
const bare = "dryfit: 1\nname: x\nunits: in\nsurvey: {corners: A B C, tape: {A-B: 71}}\ndays:\n  starts on: 2026-03-02\n  pace: {protect: 0 h, final clean: 0 h}\n"

// made plans a document, and looks whether the plan is sound.
func made(t testing.TB, src string) (Plan, diag.List, []diag.Assumption) {
	t.Helper()
	doc, found := document.Read("x", []byte(src))
	for _, f := range found {
		if f.Class == diag.Stop {
			t.Fatalf("line %d: %s", f.At.Line, f.Say(unit.DefaultStyle(doc.Units)))
		}
	}
	var room site.Room
	var tiles tiling.Plan
	if len(doc.Lay) > 0 {
		room, _, _ = site.Solve(doc)
		tiles, _, _ = tiling.Make(doc, room, tiling.Options{Quick: true})
	}
	p, notes, assumed := Make(doc, room, tiles)
	if bad := wrong(doc.Days, p); bad != "" {
		t.Fatalf("%s\n%s\n%s", bad, src, lines(p))
	}
	return p, notes, assumed
}

// lines tells the user's jobs: "paint 2 8:00-12:00 13:00-14:00".
func lines(p Plan) string {
	var out []string
	for _, t := range p.Tasks {
		if t.Kind == Protect || t.Kind == FinalClean {
			continue
		}
		line := t.Name
		for _, s := range t.Sessions {
			line += " " + when(s.From) + "-" + calendar.Clock(s.To.Time())
			if len(s.Who) > 0 && s.Who[0] != "you" {
				line += " " + strings.Join(s.Who, "+")
			}
		}
		out = append(out, line)
	}
	return strings.Join(out, "; ")
}

func when(m calendar.Moment) string {
	_, _, d := m.Date().Civil()
	return fmt.Sprintf("%d %s", d, calendar.Clock(m.Time()))
}

// 2026-03-02 is a Monday. All worked out by hand.
func TestDays(t *testing.T) {
	for _, c := range []struct{ name, days, want string }{
		{"one after the other", `
  hours: {every day: 8:00 to 17:00}
  jobs: {a: {takes: 2 h}, b: {takes: 3 h, after: a}}`, "a 2 8:00-10:00; b 2 10:00-13:00"},
		{"work pauses overnight", `
  hours: {weekdays: 18:00 to 21:00}
  jobs: {a: {takes: 5 h}}`, "a 2 18:00-21:00 3 18:00-20:00"},
		{"but not what is done in one go: that waits for Saturday", `
  hours: {weekdays: 18:00 to 21:00, Saturday: 8:00 to 17:00}
  jobs: {a: {takes: 5 h, in one go: yes}}`, "a 7 8:00-13:00"},
		{"a quarter hour is begun", `
  hours: {every day: 8:00 to 17:00}
  jobs: {a: {takes: 50 min}, b: {takes: 1 min, after: a}}`, "a 2 8:00-9:00; b 2 9:00-9:15"},
		{"drying runs through the night", `
  hours: {every day: 8:00 to 17:00}
  jobs: {a: {takes: 9 h, waits: 16 h, before: b}, b: {takes: 1 h}}`, "a 2 8:00-17:00; b 3 9:00-10:00"},
		{"and the shop work fills it", `
  hours: {every day: 8:00 to 17:00}
  jobs: {a: {takes: 1 h, waits: 24 h, before: b}, b: {takes: 1 h}, c: {takes: 8 h, place: shop}}`, "a 2 8:00-9:00; c 2 9:00-17:00; b 3 9:00-10:00"},
		{"a holiday", `
  hours: {every day: 8:00 to 12:00}
  holidays: [2026-03-03 to 2026-03-04]
  jobs: {a: {takes: 6 h}}`, "a 2 8:00-12:00 5 8:00-10:00"},
		{"a date with hours of its own", `
  hours: {every day: 8:00 to 12:00, 2026-03-02: none, 2026-03-03: 6:00 to 7:00}
  jobs: {a: {takes: 2 h}}`, "a 3 6:00-7:00 4 8:00-9:00"},
		{"two hands wait for the helper; the other job saves a trip by waiting too", `
  hours: {every day: 8:00 to 12:00}
  hands: {me: {}, Kim: {hours: {Saturday: 9:00 to 11:00}}}
  jobs: {a: {takes: 1 h, hands: 2}, b: {takes: 1 h}}`, "b 7 8:00-9:00 me; a 7 9:00-10:00 me+Kim"},
		{"who may do it", `
  hours: {every day: 8:00 to 12:00}
  hands: {me: {does: [a, protect, final clean]}, Kim: {}}
  jobs: {a: {takes: 4 h}, b: {takes: 4 h, by: Kim}}`, "a 2 8:00-12:00 me; b 2 8:00-12:00 Kim"},
		{"a small room", `
  hours: {every day: 8:00 to 12:00}
  hands: {me: {}, Kim: {}}
  room for: 1
  jobs: {a: {takes: 4 h}, b: {takes: 4 h, by: Kim}}`, "a 2 8:00-12:00 me; b 3 8:00-12:00 Kim"},
		{"a promise is waited for, and what comes before it saves a trip", `
  hours: {every day: 8:00 to 12:00}
  jobs: {a: {takes: 1 h}, b: {takes: 1 h}}
  promises: {inspection: {on: 2026-03-04 9:00, after: a, before: b}}`, "a 4 8:00-9:00; b 4 9:00-10:00"},
		{"a window draws the first to the second", `
  hours: {every day: 8:00 to 12:00}
  jobs: {long: {takes: 11 h}, a: {takes: 1 h, within: 1 h, in one go: yes}, b: {takes: 1 h, after: [a, long]}}`, "long 2 8:00-12:00 3 8:00-12:00 4 8:00-11:00; a 5 8:00-9:00; b 5 9:00-10:00"},
		{"what is done stays, the rest is planned from now", `
  hours: {every day: 8:00 to 12:00}
  plan from: 2026-03-04 10:00
  jobs: {a: {takes: 2 h, waits: 24 h}, b: {takes: 1 h, after: a}, c: {takes: 1 h}}
  done: {a: {started: 2026-03-04 7:00, took: 3 h}}`, "a 4 7:00-10:00; c 4 10:00-11:00; b 5 10:00-11:00"},
		{"what is under way takes what is left", `
  hours: {every day: 8:00 to 12:00}
  plan from: 2026-03-02 10:00
  jobs: {a: {takes: 5 h}, b: {takes: 1 h, after: a}}
  done: {a: {started: 2026-03-02 9:00}}`, "a 2 9:00-12:00 3 8:00-10:00; b 3 10:00-11:00"},
		{"finished on a day, no time noted: at the end of its hours", `
  hours: {every day: 8:00 to 12:00}
  jobs: {a: {takes: 1 h, waits: 20 h}, b: {takes: 1 h, after: a}}
  done: {a: {finished: 2026-03-03}}`, "a 3 11:00-12:00; b 4 8:00-9:00"},
		{"hired days are few", `
  hours: {every day: 8:00 to 9:00}
  jobs: {a: {takes: 1 h}, b: {takes: 1 h, waits: 24 h}, c: {takes: 1 h, after: b}, d: {takes: 1 h}, e: {takes: 1 h, waits: 70 h, before: g}, g: {takes: 1 h}}
  hired: {saw: {for: [a, d]}}`, ""},
	} {
		p, found, _ := made(t, bare+c.days[1:]+"\n")
		if got := lines(p); c.want != "" && got != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.name, got, c.want)
		}
		for _, f := range found {
			if f.Class == diag.Stop {
				t.Errorf("%s: %s", c.name, f.Say(unit.Style{}))
			}
		}
		if !p.Optimal {
			t.Errorf("%s: not optimal", c.name)
		}
		for _, h := range p.Hires {
			if h.Count.Days != 2 || h.Count.Least != 2 {
				t.Errorf("%s: hired %+v", c.name, h)
			}
		}
	}
}

// What can not be planned is told with its names and what would mend it.
func TestFindings(t *testing.T) {
	for _, c := range []struct{ days, code, say, mend string }{
		{`jobs: {a: {takes: 1 h, after: b}, b: {takes: 1 h, after: c}, c: {takes: 1 h, after: a}}`, "jobs-in-circle", "these jobs wait for each other in a circle: ", "take one"},
		{`jobs: {a: {takes: 1 h, after: a}}`, "job-after-itself", "a can not come after itself", "take it out"},
		{`jobs: {paint: {takes: 1 h}, b: {takes: 1 h, after: piant}}`, "unknown-job", "there is no job called piant", "did you mean paint?"},
		{`done: {sett basin wall: {finished: 2026-03-02}}`, "unknown-job", "no job called sett basin wall", "there are: "},
		{`pace: {painting: 2 h}`, "unknown-job", "there is no kind of job called painting", "there are: "},
		{`pace: {WC: 2 h/m2}`, "pace-of", "the pace of WC can not be for an area", "write it like this: 2 h"},
		{`hands: {me: {does: [protect]}}`, "nobody", "nobody may do final clean", "let somebody do it"},
		{`jobs: {lift: {takes: 1 h, hands: 2}}`, "hands-few", "lift takes 2 people, and 1 may do it", "name a helper"},
		{`hours: {Monday: none}`, "no-hours", "no work fits in the hours that are told", "write hours"},
		{`
  hands: {me: {hours: {Monday: 8 to 9}}, Kim: {hours: {Tuesday: 8 to 9}}}
  jobs: {lift: {takes: 1 h, hands: 2}}`, "no-hours", "lift fits in no hours of those who may do it", "let somebody help"},
		{`jobs: {a: {takes: unknown}}`, "job-hours", "not checked: a is not planned", "write takes"},
		{`
  jobs: {a: {takes: 9 h}}
  promises: {visit: {on: 2026-03-03 9:00, after: a}}`, "promise-broken", "visit at Tue, March 3, 9:00 can not be kept", "move it"},
		{`
  jobs: {a: {takes: 1 h, waits: 24 h}, b: {takes: 1 h, after: a}}
  done: {a: {started: 2026-03-02 8:00, took: 1 h}, b: {started: 2026-03-02 18:00, took: 1 h}}`, "done-early", "b was begun 9 h after a; it should have waited 24 h", "tap the tile"},
		{`
  jobs: {a: {takes: 1 h}}
  done: {a: {took: 1 h}}`, "done-when", "not checked: when a was done is missing", "write started or finished"},
		{`
  jobs: {a: {takes: 2 h}}
  plan from: 2026-03-03 9:00
  done: {a: {started: 2026-03-04 8:00, took: 1 h}}`, "done-later", "after Tue, March 3, 9:00", "write a later"},
		{`
  jobs: {a: {takes: 1 h}}
  plan from: 2026-03-06
  done: {a: {started: 2026-03-02 18:00}}`, "overdue", "a should be finished by now: 1 h of work were planned", "mark it finished"},
		{`jobs: {a: {takes: 1 h, takes away: water}, b: {takes: 1 h, takes away: water, after: a}}
  hours: {every day: 8 to 9}
  at most without: {water: 1}`, "too-long-without", "water is off on 2 days, and no plan has fewer; at most 1 were wanted", "fewer days"},
		{`
  pace: {protect: 2 h}
  done: {protect: {started: 2026-03-02 18:00, took: 1 h}}`, "own-pace", "protect took 1 h; planned were 2 h", "write it under pace"},
		{`
  hours: {Saturday: 8 to 12}
  jobs: {a: {takes: 1 h, waits: 4 h, within: 24 h}, b: {takes: 1 h, after: a}}`, "window-unmet", "b can not begin within 24 h after a in these hours: it is sanded first", "give hours in that window"},
	} {
		src := strings.Replace(bare, "  pace: {protect: 0 h, final clean: 0 h}\n", "", 1) + "  " + strings.TrimPrefix(c.days, "\n  ") + "\n"
		_, found, _ := made(t, src)
		var got []string
		ok := false
		for _, f := range found {
			say, mend := f.Say(unit.Style{}), f.SayMend(unit.Style{})
			ok = ok || f.Code == c.code && strings.Contains(say, c.say) && strings.Contains(mend, c.mend) && f.At.Line > 0
			got = append(got, f.Code+": "+say+" | "+mend)
		}
		if !ok {
			t.Errorf("%s\nwant %s: %s | %s\n got %s", c.days, c.code, c.say, c.mend, strings.Join(got, "\n     "))
		}
	}
	p, found, _ := made(t, strings.Replace(bare, "starts on: 2026-03-02", "starts on: unknown", 1))
	if p.Planned || len(found) != 1 || found[0].Code != "days-start" || found[0].Class != diag.Unchecked {
		t.Errorf("an unknown start: %v", found)
	}
}

// A document that says nothing of days gets none, and nothing is told.
func TestSilent(t *testing.T) {
	p, found, assumed := made(t, strings.Split(bare, "days:")[0])
	if p.Planned || len(found)+len(assumed) > 0 {
		t.Error(found, assumed)
	}
}

// A varnish that takes its next coat from 4 to 24 h after the one before: the second coat was missed, so it is sanded.
func TestMissedWindowAddsSanding(t *testing.T) {
	const days = `  hours: {every day: 8:00 to 20:00}
  jobs:
    varnish 1: {takes: 30 min, waits: 4 h, within: 24 h, place: shop}
    varnish 2: {takes: 30 min, after: varnish 1, place: shop}
  done: {varnish 1: {started: 2026-03-02 8:00, took: 30 min}}
`
	p, found, _ := made(t, bare+days+"  plan from: 2026-03-03 8:15\n")
	if got := lines(p); got != "varnish 1 2 8:00-8:30; varnish 2 3 8:15-8:45" || len(found) > 0 {
		t.Errorf("in its window: %s %v", got, found)
	}
	p, found, _ = made(t, bare+days+"  plan from: 2026-03-03 8:45\n")
	if got := lines(p); got != "varnish 1 2 8:00-8:30; sand before varnish 2 3 8:45-9:15; varnish 2 3 9:15-9:45" || len(found) != 1 || found[0].Code != "window-missed" {
		t.Errorf("missed: %s %v", got, found)
	}
}

// Clips a day 120, 90, 60: stems 270; caps 120 if a day is stripped before the next is set, 210 if it overlaps one, 270 if two.
func TestClipsComeBack(t *testing.T) {
	day := func(n int) calendar.Moment { return calendar.Date(n).At(8 * unit.Hour) }
	for overlap, caps := range map[int]int{0: 120, 1: 210, 2: 270} {
		var uses []ClipUse
		for i, n := range []int{120, 90, 60} {
			uses = append(uses, ClipUse{n, day(i), day(i + 1 + overlap)})
		}
		if got := ReuseClips(uses); got != (Clips{270, caps}) {
			t.Errorf("overlapping %d: %+v", overlap, got)
		}
	}
}
