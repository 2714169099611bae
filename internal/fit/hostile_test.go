package fit

import (
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/place"
	"dryfit/internal/site"
	"dryfit/internal/text"
)

// No figure, however absurd, makes the checks fall over; and whatever is made of the room, each check that is made has its facts.
func TestAbsurdFigures(t *testing.T) {
	root, _ := text.Parse([]byte(room))
	var paths [][]string
	lengths(root, nil, &paths)
	for _, path := range paths {
		for _, value := range []string{"0", "0.001", "33000", "-900", "unknown"} {
			src, found := document.Apply([]byte(room), []document.Op{{Do: text.Set, Path: path, Value: value}})
			if found.Stops() {
				continue
			}
			doc, _ := document.Read("room", src)
			solved, _, _ := site.Solve(doc)
			p, _, _ := Make(doc, solved, place.Make(doc, solved))
			seen := map[string]bool{}
			for _, k := range p.Checks {
				if seen[k.ID] {
					t.Errorf("%v = %s: two checks are called %s", path, value, k.ID)
				}
				seen[k.ID] = true
				if (k.State == NotChecked) != (len(k.Missing) > 0) || k.State != Told && k.State != NotChecked && len(k.Uses) == 0 {
					t.Errorf("%v = %s: %s is %s, misses %v and uses %v", path, value, k.ID, k.State, k.Missing, k.Uses)
				}
			}
		}
	}
}

// A document of walls alone is told nothing, and one without walls is no trouble.
func TestNothingToFit(t *testing.T) {
	for _, src := range []string{"", "dryfit: 1\nname: x\nunits: mm\nsurvey: {corners: A B C, tape: {A-B: 1000}}\n", "dryfit: 1\nname: x\nunits: mm\nsurvey: {corners: A B C, tape: {A-B: 1000}}\nbasins: {b: {kind: vessel, on: nothing}}\ntaps: {t: {serves: b, mounted: wall}}\nWCs: {w: {kind: floor, against: x, outlet: y}}\n"} {
		doc, _ := document.Read("room", []byte(src))
		solved, _, _ := site.Solve(doc)
		p, _, _ := Make(doc, solved, place.Make(doc, solved))
		for _, k := range p.Checks {
			if k.State == Fits || k.State == Misses {
				t.Errorf("%s is %s", k.ID, k.State)
			}
		}
	}
}
