package export_test

import (
	"bytes"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/emersion/go-ical"

	"dryfit/internal/demo"
	"dryfit/internal/export"
)

// events reads a calendar with another's parser: start, end and summary by identity.
func events(t *testing.T, src []byte) map[string]*ical.Component {
	t.Helper()
	cal, err := ical.NewDecoder(bytes.NewReader(src)).Decode()
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]*ical.Component{}
	for _, e := range cal.Children {
		id := e.Props.Get(ical.PropUID).Value
		if out[id] != nil {
			t.Errorf("two events are %s", id)
		}
		out[id] = e
	}
	return out
}

// Every session and every wait of the demos comes back from an independent parser with its times; lines end and fold after RFC 5545, 3.1.
func TestCalendarReadsBack(t *testing.T) {
	for _, r := range demos() {
		src := export.Calendar(r.plan)
		for _, line := range strings.SplitAfter(string(src), "\r\n") {
			if len(strings.TrimSuffix(line, "\r\n")) > 75 || strings.Contains(strings.TrimSuffix(line, "\r\n"), "\n") || !utf8.ValidString(line) {
				t.Errorf("%s: a line of %d octets: %q", r.file, len(line), line)
			}
		}
		want := len(r.plan.Days.Waits)
		all := events(t, src)
		starts := map[string]bool{}
		for _, e := range all {
			at, err1 := e.Props.DateTime(ical.PropDateTimeStart, time.UTC)
			to, err2 := e.Props.DateTime(ical.PropDateTimeEnd, time.UTC)
			if err1 != nil || err2 != nil || to.Before(at) || e.Props.Get(ical.PropDateTimeStamp) == nil {
				t.Fatal(e, err1, err2)
			}
			name, err := e.Props.Text(ical.PropSummary)
			if err != nil {
				t.Fatal(err)
			}
			starts[at.Format("2006-01-02 15:04")+" "+to.Format("15:04")+" "+name] = true
		}
		for _, j := range r.plan.Days.Tasks {
			for _, s := range j.Sessions {
				want++
				name := j.Name
				if len(s.Who) > 0 {
					name += " (" + strings.Join(s.Who, " and ") + ")"
				}
				if k := stamp(s.From.String()) + " " + stamp(s.To.String())[11:] + " " + name; !starts[k] {
					t.Errorf("%s: no event %s", r.file, k)
				}
			}
		}
		if len(all) != want || want == 0 {
			t.Errorf("%s: %d events of %d", r.file, len(all), want)
		}
	}
}

// stamp writes an hour with two figures.
func stamp(s string) string {
	if date, clock, _ := strings.Cut(s, " "); len(clock) == 4 {
		return date + " 0" + clock
	}
	return s
}

// What is planned anew keeps its identities: reading the file again moves events.
func TestCalendarKeepsIdentities(t *testing.T) {
	src, text := demos()[0], demo.Rooms()[0].Text
	later := bytes.Replace(text, []byte("starts on: 2026-03-07"), []byte("starts on: 2026-03-06"), 1)
	later = bytes.Replace(later, []byte("plan from: 2026-03-09 18:00"), []byte("plan from: 2026-03-14 8:00"), 1)
	p := planned(t, src.file, later)
	before, after := events(t, export.Calendar(src.plan)), events(t, export.Calendar(p))
	kept, moved := 0, 0
	for id, e := range after {
		if was := before[id]; was != nil {
			kept++
			if was.Props.Get(ical.PropDateTimeStart).Value != e.Props.Get(ical.PropDateTimeStart).Value {
				moved++
			}
			if was.Name != e.Name {
				t.Error("another kind of event")
			}
		}
	}
	if kept < len(before)*8/10 || moved == 0 {
		t.Errorf("%d of %d events kept, %d moved", kept, len(before), moved)
	}
}
