package schedule

import (
	"slices"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/text"
	"dryfit/internal/tiling"
)

// furnished adds what is built and put in, and two walls that are tiled; every job on any of it is named by it.
const furnished = tiled + `  room temperature: 20 C
cabinets:
  chest: {in: front, across: 300 to 900 from C, stands: wall, bottom: 200, height: 600, depth: 400}
tops:
  slab: {on: chest}
basins: {bowl: {kind: vessel, on: slab}}
taps: {spout: {serves: bowl, mounted: deck, on: slab}}
WCs: {pan: {kind: floor, against: left, outlet: unknown}}
fittings: {glass: {kind: mirror, in: front}, lamp: {kind: light, in: front}}
trim: {skirt: {kind: baseboard, along: [front], stock: lath}}
stock: {lath: {kind: stick, size: 2400 x 60 x 12}}
`

// planned plans a document whose things are not told whole.
func planned(src string) (Plan, diag.List) {
	doc, _ := document.Read("x", []byte(src))
	room, _, _ := site.Solve(doc)
	tiles, _, _ := tiling.Make(doc, room, tiling.Options{Quick: true})
	p, notes, _ := Make(doc, room, tiles)
	return p, notes
}

// Each thing in turn gets another name, with every job on it marked: the plan knows every mark by the new name.
func TestRenamedJobsAreFollowed(t *testing.T) {
	p, _ := planned(furnished)
	for path, name := range map[string]string{"walls/back": "rear", "cabinets/chest": "box", "tops/slab": "plank", "basins/bowl": "dish", "taps/spout": "faucet",
		"WCs/pan": "seat", "fittings/glass": "pane", "fittings/lamp": "light", "trim/skirt": "board"} {
		old := path[strings.Index(path, "/")+1:]
		src, marked := "  done:\n", 0
		for _, task := range p.Tasks {
			if task.Subject == old {
				src += "    " + task.Name + ": {took: 1 h}\n"
				marked++
			}
			if task.Subject != "" && !document.JobNamed(string(task.Kind)) {
				t.Errorf("%s is named by what it is done on, and the document does not know it", task.Name)
			}
		}
		src = strings.Replace(furnished, "  room temp", src+"  room temp", 1)
		out, found := document.Apply([]byte(src), []document.Op{{Do: text.Rename, Path: strings.Split(path, "/"), Value: name}})
		if found.Stops() || marked == 0 {
			t.Fatal(path, found, marked)
		}
		now, notes := planned(string(out))
		done := 0
		for _, task := range now.Tasks {
			if task.Subject == name && task.State == Done {
				done++
			}
		}
		if done != marked || slices.ContainsFunc(notes, func(f diag.Finding) bool { return f.Code == "unknown-job" }) {
			t.Errorf("%s: %d of %d marks are known: %v", path, done, marked, notes)
		}
	}
}

// A mark without any time says that the job is done, and all that it comes after: the days are planned on, from now.
func TestMarkWithoutTimes(t *testing.T) {
	p, found, _ := made(t, tiled+"  room temperature: 20 C\n  done: {seal back: {took: 1 h}}\n")
	if !p.Planned || !slices.ContainsFunc(found, func(f diag.Finding) bool { return f.Code == "done-unmarked" }) {
		t.Fatal("no plan, or nothing is told of what is not marked")
	}
	for _, name := range []string{"board back", "set back 1", "grout back", "seal back", "set floor"} {
		if task, _ := p.Task(name); task.State != Done || task.End > p.From {
			t.Errorf("%s: %v until %v", name, task.State, task.End)
		}
	}
	if task, _ := p.Task("grout floor"); task.State != Planned {
		t.Error("nothing on the wall comes after the floor's grout")
	}
}

// A ledger goes up when the board is on and before the first course stands on it; another trim waits for clean tile.
func TestLedgerBeforeItsCourse(t *testing.T) {
	p, _ := planned(strings.Replace(furnished, "trim: {", "trim: {rest: {kind: ledger, along: [back], stock: lath}, ", 1))
	at := func(name string) Task { task, _ := p.Task(name); return task }
	up, first, board, skirt := at("ledger rest"), at("set back 1"), at("board back"), at("trim skirt")
	if !p.Planned || up.Name == "" || up.Start < board.End || up.End > first.Start || skirt.Start < at("clean back").End {
		t.Errorf("board until %v, ledger %v to %v, set from %v, skirt from %v", board.End, up.Start, up.End, first.Start, skirt.Start)
	}
}
