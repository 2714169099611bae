package schedule

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/calendar"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// tiled is a small room with a floor on a membrane and one wall, both laid.
const tiled = `dryfit: 1
name: x
units: mm
survey:
  corners: A B C D
  tape: {A-B: 1500, B-C: 1200, C-D: 1500, D-A: 1200, A-C: 1921, B-D: 1921}
  level line: {down: {A: 1000, B: 1000, C: 1000, D: 1000}, up: {A: 1400, B: 1400, C: 1400, D: 1400}}
walls:
  back: {along: A-B, build-up: [board 12, bed 5, tile]}
  right: {along: B-C, build-up: [plaster 12]}
  front: {along: C-D, build-up: [plaster 12]}
  left: {along: D-A, build-up: [plaster 12]}
floor: {build-up: [board 12, membrane 1, bed 5, tile]}
tiles:
  grey: {size: 300 x 300 x 8, kind: ceramic, joint: 3}
stub-outs:
  cold: {in: back, across: 700 from A, up: 500 above floor, diameter: 15}
lay:
  back: {fields: {main: {tile: grey, bond: stack}}}
  floor: {fields: {main: {tile: grey, bond: stack}}}
days:
  starts on: 2026-03-02
  hours: {every day: 8:00 to 18:00}
`

// The jobs of the room, in an order that keeps what hides what: pressure test, board, membrane, flood test, tile, clips, grout, sealer.
func TestJobsOfARoom(t *testing.T) {
	p, found, assumed := made(t, tiled+"  room temperature: 20 C\n  also: [WC]\n")
	for _, f := range found {
		if f.Code != "hands-few" {
			t.Error(f.Say(unit.Style{}))
		}
	}
	for _, pair := range [][2]string{
		{"protect", "pressure test"}, {"pressure test", "board back"}, {"board back", "set back 1"}, {"board floor", "membrane floor"},
		{"membrane floor", "flood test floor"}, {"flood test floor", "dry-lay floor"}, {"dry-lay floor", "set floor"}, {"set floor", "set back 1"}, {"set back 1", "set back 2"},
		{"set back 2", "clips back"}, {"clips back", "grout back"}, {"grout back", "clean back"}, {"clean back", "seal back"}, {"set floor", "clips floor"}, {"clean back", "silicone"},
		{"seal floor", "WC"}, {"WC", "waste test"}, {"silicone", "waste test"}, {"waste test", "final clean"},
	} {
		a, ok1 := p.Task(pair[0])
		b, ok2 := p.Task(pair[1])
		if !ok1 || !ok2 || a.End > b.Start {
			t.Errorf("%s ends %s %v, %s begins %s %v", pair[0], a.End, ok1, pair[1], b.Start, ok2)
		}
	}
	for _, c := range []struct {
		after, what string
		hours       unit.Minutes
	}{
		{"set floor", "the mortar hardens", 24}, {"grout back", "the grout cures", 72}, {"flood test floor", "water stands on the membrane", 24}, {"silicone", "the sealant cures", 24},
	} {
		i := slices.IndexFunc(p.Waits, func(w Wait) bool { return p.Tasks[w.After].Name == c.after && w.What == c.what })
		if i < 0 || p.Waits[i].To.Since(p.Waits[i].From) != c.hours*unit.Hour || p.Waits[i].Slower {
			t.Errorf("%s after %s: %v", c.what, c.after, p.Waits)
		}
	}
	for _, a := range assumed {
		if a.Source == "" || !strings.Contains(a.Source, "practice") {
			t.Errorf("%s has no source", a.Say(unit.Style{}))
		}
	}
}

// At 12 °C the mortar's 24 h at 20 °C take 38.0 h; the membrane and the sealant keep their label. At 30 °C all stay.
func TestColdRoom(t *testing.T) {
	for temp, want := range map[string]string{"12 C": "38 h, 114.1 h, 24 h", "30 C": "24 h, 72 h, 24 h"} {
		p, _, _ := made(t, tiled+"  room temperature: "+temp+"\n")
		var got []string
		for _, what := range []string{"the mortar hardens", "the grout cures", "the membrane dries"} {
			i := slices.IndexFunc(p.Waits, func(w Wait) bool { return w.What == what })
			got = append(got, p.Waits[i].To.Since(p.Waits[i].From).Hours())
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%s: %v, want %s", temp, got, want)
		}
	}
}

// A room that turns cold in the middle of the work: each wait is as long as the temperatures that it runs at make it.
func TestRoomThatTurnsCold(t *testing.T) {
	p, _, _ := made(t, tiled+"  room temperature: {2026-03-02: 20 C, 2026-03-06: 5 C}\n")
	slow := 0
	for _, w := range p.Waits {
		if w.AtKnown && w.To < cold && w.Slower || w.AtKnown && w.From >= cold && !w.Slower {
			t.Errorf("%s from %s to %s: %v", w.What, w.From, w.To, w.Slower)
		}
		if w.Slower {
			slow++
		}
	}
	if slow == 0 || slow == len(p.Waits) {
		t.Error("the cold makes no difference")
	}
}

// cold is when the room turns cold.
var cold = func() calendar.Moment { m, _, _ := calendar.ParseMoment("2026-03-06"); return m }()

// Without a temperature it is not checked; and what happened at 54 °F counts from there.
func TestTemperatureFromWhatHappened(t *testing.T) {
	_, found, _ := made(t, tiled)
	if !slices.ContainsFunc(found, func(f diag.Finding) bool { return f.Code == "room-temperature" && f.Class == diag.Unchecked }) {
		t.Error("nothing is told of the missing temperature")
	}
	p, _, _ := made(t, tiled+"  done: {set floor: {started: 2026-03-04 8:00, took: 3 h, temperature: 54 F}}\n")
	i := slices.IndexFunc(p.Waits, func(w Wait) bool { return p.Tasks[w.After].Name == "set floor" && w.What == "the mortar hardens" })
	// 24 exp(40000/8.314 (1/285.372 - 1/293.15)) = 24 x 1.5637 h
	if got := p.Waits[i].To.Since(p.Waits[i].From).Hours(); got != "37.5 h" {
		t.Error(got)
	}
}

// The sessions of a wall set all of its pieces, each once, in the order of setting.
func TestBatches(t *testing.T) {
	doc, _ := document.Read("x", []byte(tiled))
	p, _, _ := made(t, strings.Replace(tiled, "8:00 to 18:00", "18:00 to 19:00", 1)+"  room temperature: 20 C\n")
	if doc.Lay == nil || len(p.Batches) < 5 {
		t.Fatal(p.Batches)
	}
	got := map[string][]string{}
	for _, b := range p.Batches {
		if len(b.Pieces) == 0 || b.Area <= 0 {
			t.Error("an empty batch", b)
		}
		got[b.Face] = append(got[b.Face], b.Pieces...)
	}
	if n := len(got["floor"]); n < 20 || n > 25 { // 1.5 x 1.2 m less board and bed of one wall, in tiles of 300: 5 x 4 and cuts
		t.Errorf("%d pieces on the floor", n)
	}
	for face, list := range got {
		sorted := slices.Sorted(slices.Values(list))
		if len(slices.Compact(sorted)) != len(list) {
			t.Errorf("%s: a piece is set twice", face)
		}
	}
}

// Random days: whatever is written, the plan is sound or says why there is none.
func TestRandomDays(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		src := bare + drawDays(r)
		doc, found := document.Read("x", []byte(src))
		if found.Stops() {
			r.Fatalf("%s\n%v", src, found)
		}
		p, notes, _ := Make(doc, site.Room{}, tiling.Plan{})
		if bad := wrong(doc.Days, p); bad != "" {
			r.Fatalf("%s\n%s\n%s", bad, src, lines(p))
		}
		if !p.Planned && !notes.Stops() {
			r.Fatalf("no plan and no reason\n%s\n%v", src, notes)
		}
		for _, l := range p.Lacks {
			if over := overLimits(notes); p.Planned && (l.Limit >= 0 && len(l.Dates) > l.Limit) != strings.Contains(over, missed(l.What, len(l.Dates))) {
				r.Fatalf("without %s %v, at most %d, told %q\n%s", l.What, l.Dates, l.Limit, over, src)
			}
		}
	})
}

func drawDays(r *rapid.T) string {
	n := rapid.IntRange(1, 6).Draw(r, "jobs")
	var b strings.Builder
	hours := rapid.SampledFrom([]string{"every day: 8:00 to 12:00", "weekdays: 18:00 to 21:00, Saturday: [8:00 to 12:00, 13:00 to 17:00]", "Saturday: 9 to 15"})
	fmt.Fprintf(&b, "  hours: {%s}\n", hours.Draw(r, "hours"))
	if rapid.Bool().Draw(r, "helper") {
		fmt.Fprintf(&b, "  hands: {me: {}, Kim: {hours: {%s}}, Lee: {hours: {%s}, does: [j0, j1, protect]}}\n", hours.Draw(r, "Kim"), hours.Draw(r, "Lee"))
	}
	fmt.Fprintf(&b, "  room for: %d\n  jobs:\n", rapid.IntRange(1, 2).Draw(r, "room"))
	for i := range n {
		fmt.Fprintf(&b, "    j%d: {takes: %d min, hands: %d", i, rapid.IntRange(0, 500).Draw(r, "takes"), rapid.IntRange(0, 2).Draw(r, "hands"))
		if i > 0 && rapid.Bool().Draw(r, "follows") {
			fmt.Fprintf(&b, ", after: j%d", rapid.IntRange(0, i-1).Draw(r, "after"))
		}
		waits := rapid.IntRange(0, 30).Draw(r, "waits")
		if waits > 0 {
			fmt.Fprintf(&b, ", waits: %d h", waits)
		}
		if rapid.IntRange(0, 3).Draw(r, "window") == 0 {
			fmt.Fprintf(&b, ", within: %d h", waits+rapid.IntRange(1, 40).Draw(r, "within"))
		}
		if rapid.IntRange(0, 2).Draw(r, "takes away") == 0 {
			fmt.Fprintf(&b, ", takes away: [%s]", rapid.SampledFrom([]string{"water", "power", "water, power"}).Draw(r, "away"))
		}
		fmt.Fprintf(&b, ", place: %s, in one go: %s}\n", rapid.SampledFrom([]string{"room", "shop"}).Draw(r, "place"), rapid.SampledFrom([]string{"yes", "no"}).Draw(r, "whole"))
	}
	if rapid.IntRange(0, 2).Draw(r, "done") == 0 {
		fmt.Fprintf(&b, "  done: {j0: {started: 2026-03-0%d 9:00, took: %d min}}\n", rapid.IntRange(2, 5).Draw(r, "day"), rapid.IntRange(10, 300).Draw(r, "took"))
	}
	if rapid.Bool().Draw(r, "limited") {
		fmt.Fprintf(&b, "  at most without: {water: %d, power: %d}\n", rapid.IntRange(0, 3).Draw(r, "water"), rapid.IntRange(0, 3).Draw(r, "power"))
	}
	if rapid.IntRange(0, 2).Draw(r, "promise") == 0 {
		fmt.Fprintf(&b, "  promises: {visit: {on: 2026-03-%02d 10:00, after: j0}}\n", rapid.IntRange(2, 20).Draw(r, "on"))
	}
	return b.String()
}
