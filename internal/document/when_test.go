package document

import (
	"testing"

	"dryfit/internal/unit"
)

// Lengths of time to the minute, half up; temperatures to a thousandth of a degree.
func TestWhen(t *testing.T) {
	for in, want := range map[string]unit.Minutes{"45 min": 45, "3 h": 180, "1 h 30 min": 90, "1.5 hours": 90, "3 days": 4320, "1 week": 10_080, "0.01 h": 1, "0 min": 0, "2days 4hrs": 3120} {
		if got, why := parseLasting(in); got != want || why != "" {
			t.Errorf("%s: %d %s", in, got, why)
		}
	}
	for _, in := range []string{"", "3", "h", "-3 h", "− 1 day", "3 fortnights", "1e9 h", "3 h and a bit"} {
		if got, why := parseLasting(in); why == "" {
			t.Errorf("%q read as %d", in, got)
		}
	}
}

// 1.2 h/m² are 4320 s; 30 sq ft an hour are 3600/(30 x 0.09290304) = 1291.67 s/m² (16 CFR 500.19: a square foot is 929.0304 cm²).
func TestPace(t *testing.T) {
	room, found := Read("x", []byte(`{dryfit: 1, name: x, units: in, survey: {corners: A B C, tape: {A-B: 71}}, days: {pace: {
  a: 1.2 h/m2, b: 30 sq ft/h, c: 2 h, d: 10 min/ft, e: 2 m/h, f: 7 min/sq ft, g: unknown, h: 2.5 m²/h}}}`))
	if len(found) > 0 {
		t.Fatal(found)
	}
	want := []Speed{{PerArea, 4320}, {PerArea, 1292}, {Each, 7200}, {PerLength, 1969}, {PerLength, 1800}, {PerArea, 4521}, {}, {PerArea, 1440}}
	for i, p := range room.Days.Pace {
		if p.Speed.V != want[i] || p.Speed.Known == (p.Kind == "g") {
			t.Errorf("%s: %+v, want %+v", p.Kind, p.Speed, want[i])
		}
	}
}
