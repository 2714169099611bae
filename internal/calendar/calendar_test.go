package calendar

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

// Every day of fourteen centuries against the standard library's calendar.
func TestDatesAgreeWithTheLibrary(t *testing.T) {
	at := time.Date(1600, 1, 1, 0, 0, 0, 0, time.UTC)
	for at.Year() < 3000 {
		y, m, d := at.Date()
		got, ok := NewDate(y, int(m), d)
		if !ok || int64(got) != at.Unix()/86_400 || got.String() != at.Format(time.DateOnly) || got.Weekday().String() != at.Weekday().String() {
			t.Fatalf("%s: %d %v %s %s", at.Format(time.DateOnly), got, ok, got, got.Weekday())
		}
		at = at.AddDate(0, 0, 1)
	}
}

func TestParse(t *testing.T) {
	for _, c := range []struct{ in, want string }{
		{"2026-03-02", "2026-03-02 0:00"}, {"2026-03-02 18:30", "2026-03-02 18:30"}, {"2024-02-29 8:05", "2024-02-29 8:05"}, {"2026-03-02T07:00", "2026-03-02 7:00"},
		{"2026-03-02 24:00", "2026-03-03 0:00"},
		{"2026-02-29", "none"}, {"2026-13-01", "none"}, {"2026-04-31", "none"}, {"26-03-02", "none"}, {"2026-03-02 25:00", "none"}, {"2026-03-02 8:60", "none"},
		{"2026-03-02 8:5", "none"}, {"2026-03-02 -8:00", "none"}, {"2026-+3-02", "none"}, {"", "none"}, {"1066-10-14", "none"},
	} {
		m, _, ok := ParseMoment(c.in)
		if got := m.String(); ok && got != c.want || !ok && c.want != "none" {
			t.Errorf("%q: %s %v, want %s", c.in, got, ok, c.want)
		}
	}
	if d, _ := ParseDate("2026-03-07"); d.Say() != "Sat, March 7" || d.At(510).Say() != "Sat, March 7, 8:30" {
		t.Error(d.Say())
	}
}

// hours reads "Mon-Fri 18-21; Sat 8-12,13-17; 2026-04-03 none".
func hours(t testing.TB, line string) Hours {
	t.Helper()
	var h Hours
	for _, part := range strings.Split(line, "; ") {
		day, times, _ := strings.Cut(part, " ")
		spans := spansOf(t, times)
		if d, ok := ParseDate(day); ok {
			h.Except = append(h.Except, Exception{d, spans})
			continue
		}
		first, last, _ := strings.Cut(day, "-")
		for w := weekday(first); ; w = (w + 1) % 7 {
			h.Week[w] = spans
			if last == "" || w == weekday(last) {
				break
			}
		}
	}
	return h
}

func weekday(s string) Weekday {
	for w := Monday; w < Sunday; w++ {
		if w.String()[:3] == s {
			return w
		}
	}
	return Sunday
}

func spansOf(t testing.TB, s string) []Span {
	var out []Span
	for _, w := range strings.Split(s, ",") {
		from, to, two := strings.Cut(w, "-")
		if !two {
			continue
		}
		a, ok1 := ParseClock(from)
		b, ok2 := ParseClock(to)
		if !ok1 || !ok2 {
			t.Fatal(s)
		}
		out = append(out, Span{a, b})
	}
	return out
}

// 2026-03-02 is a Monday.
func TestBetween(t *testing.T) {
	const work = "Mon-Fri 18-21; Sat 8-12,13-17; 2026-03-04 none; 2026-03-08 0-24; 2026-03-09 0-2,1-3"
	for _, c := range []struct{ from, to, want string }{
		{"2026-03-02", "2026-03-04", "2 18:00-21:00, 3 18:00-21:00"},
		{"2026-03-02 19:00", "2026-03-02 20:30", "2 19:00-20:30"},
		{"2026-03-02 21:00", "2026-03-05 18:00", "3 18:00-21:00"},
		{"2026-03-04", "2026-03-05", ""},
		{"2026-03-07", "2026-03-08", "7 8:00-12:00, 7 13:00-17:00"},
		{"2026-03-07 16:00", "2026-03-10", "7 16:00-17:00, 8 0:00-3:00"},
	} {
		from, _, _ := ParseMoment(c.from)
		to, _, _ := ParseMoment(c.to)
		var got []string
		for _, s := range hours(t, work).Between(from, to) {
			_, _, d := s.From.Date().Civil()
			got = append(got, fmt.Sprintf("%d %s-%s", d, Clock(s.From.Time()), Clock(s.To.Time())))
		}
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s to %s: %v, want %s", c.from, c.to, got, c.want)
		}
	}
}

// Common and Merge minute by minute.
func TestSpansMinuteByMinute(t *testing.T) {
	draw := rapid.Custom(func(t *rapid.T) Span {
		return Span{unit.Minutes(rapid.IntRange(0, 30).Draw(t, "from")), unit.Minutes(rapid.IntRange(0, 30).Draw(t, "to"))}
	})
	in := func(spans []Span, m unit.Minutes) bool {
		for _, s := range spans {
			if s.From <= m && m < s.To {
				return true
			}
		}
		return false
	}
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.SliceOfN(draw, 0, 4).Draw(t, "a"), rapid.SliceOfN(draw, 0, 4).Draw(t, "b")
		merged, both := Merge(a), Common(a, b)
		var long unit.Minutes
		for m := range unit.Minutes(31) {
			if in(a, m) != in(merged, m) || in(both, m) != (in(a, m) && in(b, m)) {
				t.Fatalf("minute %d: %v %v", m, merged, both)
			}
			if in(a, m) {
				long++
			}
		}
		if Long(a) != long {
			t.Fatal(Long(a), long)
		}
		for i := 1; i < len(merged); i++ {
			if merged[i-1].To >= merged[i].From {
				t.Fatal("not apart", merged)
			}
		}
	})
}
