package schedule

import (
	"slices"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// wallOnly is the wall of tiled alone, its floor bare, on a primer that its label keeps open for a while.
func wallOnly(label string) string {
	s := strings.Replace(tiled, "  floor: {fields: {main: {tile: grey, bond: stack}}}\n", "", 1)
	s = strings.Replace(s, "stub-outs:\n  cold: {in: back, across: 700 from A, up: 500 above floor, diameter: 15}\n", "", 1)
	return s + "  room temperature: 20 C\n  pace: {prime: 30 min, board: 1 h}\ngoods: {deep primer: {kind: primer, for: [back], " + label + "}}\n"
}

// primedFor finds the last coat of primer before a job, and how long after its end that begins.
func primedFor(p Plan, task Task) (long unit.Minutes, ok bool) {
	for _, t := range p.Tasks {
		if t.Kind == Prime && t.End <= task.Start && (!ok || task.Start.Since(t.End) < long) {
			long, ok = task.Start.Since(t.End), true
		}
	}
	return long, ok
}

// The primer that names a wall goes on before its tile, dries for 2 h and takes tile for 6 h. The wall is set in parts, each on another day, for
// the courses must get hold: so it is primed anew before each but the first.
func TestPrimerStaysOpen(t *testing.T) {
	p, found, _ := made(t, wallOnly("open time: 6 h, cures: {tile: 2 h}"))
	parts := 0
	for _, task := range p.Tasks {
		if task.Kind != Set {
			continue
		}
		parts++
		if long, ok := primedFor(p, task); !ok || long < 2*unit.Hour || long > 6*unit.Hour {
			t.Errorf("%s begins %v after its primer: %s", task.Name, long, lines(p))
		}
	}
	n := 0
	for _, f := range found {
		if f.Code == "window-unmet" {
			n++
		}
	}
	if _, again := p.Task("prime before set back 2"); parts < 2 || !again || n != parts-1 {
		t.Errorf("%d parts, %d windows told: %s", parts, n, lines(p))
	}
}

// A primer without a time on its label has no greatest lag, and is primed once.
func TestPrimerWithoutOpenTime(t *testing.T) {
	p, _, _ := made(t, wallOnly("cures: {tile: 2 h}"))
	n := 0
	for _, task := range p.Tasks {
		if task.Kind == Prime {
			n++
		}
	}
	if n != 1 {
		t.Error(lines(p))
	}
}

// Primed on Monday from 8:00 to 8:30, open for 4 h: at 12:30 the wall can still be begun, at 12:45 it is primed anew.
func TestPrimerMissed(t *testing.T) {
	for from, want := range map[string]bool{"2026-03-02 12:30": false, "2026-03-02 12:45": true} {
		src := strings.Replace(wallOnly("open time: 4 h, cures: {tile: 2 h}"), "goods:", "  done: {prime back: {started: 2026-03-02 8:00, took: 30 min}}\n  plan from: "+from+"\ngoods:", 1)
		p, found, _ := made(t, src)
		_, again := p.Task("prime before set back 1")
		set, _ := p.Task("set back 1")
		missed := slices.ContainsFunc(found, func(f diag.Finding) bool { return f.Code == "window-missed" })
		if again != want || missed != want {
			t.Errorf("from %s primed anew: %v, told: %v\n%s", from, again, missed, lines(p))
		}
		if long, ok := primedFor(p, set); !ok || long > 4*unit.Hour {
			t.Errorf("from %s: the wall is begun %v after its primer", from, long)
		}
	}
}

// Where the hours in a row are too short for what is begun in time, it is told that the primer shuts before the end.
func TestPrimerShuts(t *testing.T) {
	src := strings.Replace(wallOnly("open time: 3 h, cures: {tile: 30 min}"), "8:00 to 18:00", "18:00 to 20:00", 1)
	_, found, _ := made(t, strings.Replace(src, "pace: {", "pace: {set: 3 h/m2, ", 1))
	if !slices.ContainsFunc(found, func(f diag.Finding) bool { return f.Code == "primer-shut" }) {
		t.Error(found)
	}
}
