package schedule

import (
	"slices"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// A cold outside wall in a room of 20 °C: what hardens on it takes 24 h x 1.5848 = 38.0 h at 12 °C (E = 40 kJ/mol), on the floor 24 h; a wall
// that is warmer than its room helps nothing.
func TestColdWall(t *testing.T) {
	for temps, want := range map[string][2]string{
		"room temperature: 20 C\n  surface temperature: {back: 12 C}":               {"38 h", "24 h"},
		"room temperature: 20 C\n  surface temperature: {back: {2026-03-01: 12 C}}": {"38 h", "24 h"},
		"room temperature: 12 C\n  surface temperature: {back: 20 C, floor: 30 C}":  {"38 h", "38 h"},
		"room temperature: 12 C\n  surface temperature: {back: unknown}":            {"24 h", "38 h"},
		"surface temperature: {back: 12 C}":                                         {"38 h", "24 h"},
	} {
		p, found, _ := made(t, tiled+"  "+temps+"\n")
		for i, face := range []string{"back", "floor"} {
			k := slices.IndexFunc(p.Waits, func(w Wait) bool { return w.What == "the mortar hardens" && p.Tasks[w.After].Subject == face })
			if got := p.Waits[k].To.Since(p.Waits[k].From).Hours(); got != want[i] {
				t.Errorf("%s: %s on %s, want %s", temps, got, face, want[i])
			}
		}
		if missing := slices.ContainsFunc(found, func(f diag.Finding) bool { return f.Code == "room-temperature" }); missing != !strings.Contains(temps, "room") {
			t.Errorf("%s: the room's temperature is told missing: %v", temps, missing)
		}
	}
}

// The label's range holds for the air and for the surface; of which nothing is told is taken to be as warm as the room, and listed.
func TestSurfaceAgainstLabel(t *testing.T) {
	const goods = "goods: {mix: {kind: mortar, temperature: 10 to 30 C, cures: {at: 20 C, grout: 24 h}}}\n"
	for temps, want := range map[string]string{
		"room temperature: 20 C\n  surface temperature: {back: 8 C}":              "below-label the surface",
		"room temperature: 20 C\n  surface temperature: {back: 12 C}":             "",
		"room temperature: 8 C\n  surface temperature: {back: 12 C, floor: 12 C}": "below-label the room",
		"room temperature: 20 C\n  surface temperature: {floor: 33 C}":            "above-label the surface",
		"room temperature: 20 C\n  surface temperature: {back: unknown}":          "surface-temperature",
	} {
		_, found, assumed := made(t, tiled+"  "+temps+"\n"+goods)
		got := map[string]bool{}
		for _, f := range found {
			switch f.Code {
			case "below-label", "above-label":
				got[f.Code+" "+f.Values[4].Text] = true
			case "surface-temperature":
				got[f.Code] = true
			}
		}
		if len(got) > 1 || want != "" && !got[want] || want == "" && len(got) > 0 {
			t.Errorf("%s: %v, want %q", temps, got, want)
		}
		listed := slices.ContainsFunc(assumed, func(a diag.Assumption) bool {
			return a.Say(unit.DefaultStyle(unit.Millimetres)) == "the surface of floor is as warm as the room"
		})
		if listed != !strings.Contains(temps, "floor") {
			t.Errorf("%s: the floor is listed as assumed: %v", temps, listed)
		}
	}
}
