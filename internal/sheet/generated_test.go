package sheet_test

import (
	"context"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/document"
	"dryfit/internal/draw"
	"dryfit/internal/plan"
	"dryfit/internal/sheet"
	"dryfit/internal/typeset"
)

// change is one fact of a built-in room and what it may be instead.
type change struct {
	was  string
	many []string
}

// changes keep a room valid: other tile, bonds, places, levels, readings (they may disagree then), names.
var changes = map[string][]change{
	"quarry-row.yaml": {
		{"size: 24 x 12 x 3/8\n    kind: stone", []string{"size: 12 x 12 x 3/8\n    kind: stone", "size: 8 x 4 x 3/8\n    kind: stone", "size: 36 x 6 x 1/2\n    kind: stone", "size: 18 x 18 x 3/8\n    kind: stone"}},
		{"size: 24 x 12 x 3/8\n    kind: porcelain", []string{"size: 16 x 16 x 3/8\n    kind: porcelain", "size: 9 x 3 x 3/8\n    kind: porcelain", "size: 32 x 8 x 3/8\n    kind: porcelain",
			"size: 8 x 8 x 3/8\n    shape: hexagon\n    kind: porcelain", "size: 16 x 16 x 3/8\n    set: {large: 15-13/16 x 15-13/16, tall: 15-13/16 x 7-13/16, small: 7-13/16 x 7-13/16}\n    kind: porcelain", "size: 12 x 12 x 3/8\n    chip: 1-7/8\n    chip joint: 1/8\n    kind: mosaic"}},
		{"size: 6 x 2 x 3/8", []string{"size: 4 x 2 x 3/8", "size: 12 x 2 x 3/8"}},
		{"main: {tile: slate, bond: stack, joint: 1/8}\n      band", []string{"main: {tile: slate, bond: running 1/2, joint: 1/8}\n      band", "main: {tile: slate, bond: diagonal, joint: 1/8}\n      band"}},
		{"{tile: slate, bond: stack, joint: 1/8, to: 48 above floor}", []string{"{tile: slate, bond: vertical running 1/2, joint: 1/8, to: 40 above floor}", "{tile: slate, bond: running 1/3, joint: 3/16}"}},
		{"bond: running 1/3, joint: 3/16", []string{"bond: herringbone, joint: 3/16", "bond: stack, joint: 1/4", "bond: diagonal, joint: 3/16", "bond: herringbone 45, joint: 1/8", "bond: hexagon, joint: 1/8", "bond: modular 3, joint: 3/16", "bond: pinwheel, joint: 3/16"}},
		{"across: 34 to 58 from B", []string{"across: 20 to 51 from B", "across: 40 to 46 from B"}},
		{"up: 44 to 80 above floor", []string{"up: 30 to 70 above floor", "up: 60 to 84-1/2 above floor"}},
		{"A-B: 71-7/16", []string{"A-B: 71", "A-B: 72-1/4"}},
		{"down: {A: 40-1/8,", []string{"down: {A: 42,", "down: {A: 39-1/2,"}},
		{"name: Quarry Row washroom", []string{"name: The washroom beside the long back stairs of the old weighing house at the quarry", "name: \u202e \"?\" ∅"}},
		{"basin wall", []string{"wall of the long stone basin", "b"}},
		{"hot stop", []string{"stop valve of the hot water", "h"}},
	},
	"gable.yaml": {
		{"size: 597 x 297 x 9", []string{"size: 297 x 297 x 9", "size: 197 x 97 x 9", "size: 897 x 447 x 10"}},
		{"size: 450 x 72 x 10", []string{"size: 600 x 147 x 10", "size: 297 x 147 x 10"}},
		{"bond: herringbone 45", []string{"bond: herringbone", "bond: basketweave", "bond: running 1/2", "bond: stack"}},
		{"bond: running 1/3, joint: 4}\n  knee", []string{"bond: vertical running 1/2, joint: 4}\n  knee", "bond: diagonal, joint: 4}\n  knee"}},
		{"across: 1490 to 1790 from F", []string{"across: 1200 to 1720 from F", "across: 1600 to 1680 from F"}},
		{"up: 1100 to 1500 above floor", []string{"up: 1150 to 1900 above floor", "up: 1200 to 1260 above floor"}},
		{"A-B: 2412", []string{"A-B: 2400", "A-B: 2422"}},
		{"down: {A: 1002,", []string{"down: {A: 1030,", "down: {A: 990,"}},
		{"    dry lay: {tiles: 10, joints: 9, joint: 3, length: 2994, along: width}\n", []string{""}},
		{"name: Gable washroom", []string{"name: G", "name: Waschraum unter dem Giebel, Größe und Höhe in Millimetern gemessen an einem Sonntag"}},
		{"short wall", []string{"short wall beside the return", "s"}},
	},
}

// vary changes each fact of a room in one case of three.
func vary(r demo.Room, rnd *rand.Rand) string {
	text := string(r.Text)
	for _, c := range changes[r.File] {
		if rnd.IntN(3) == 0 {
			text = strings.ReplaceAll(text, c.was, c.many[rnd.IntN(len(c.many))])
		}
	}
	return text
}

// Each change finds what it is to change.
func TestChangesApply(t *testing.T) {
	for _, r := range demo.Rooms() {
		for _, c := range changes[r.File] {
			if !strings.Contains(string(r.Text), c.was) {
				t.Errorf("%s no longer says %q", r.File, c.was)
			}
		}
	}
}

// generatedRooms is how many varied rooms are drawn, one laid face each: what a face's sheets need does not depend on
// the other faces, and laying all of them would take minutes. Every tenth of them is planned to the end, with what is built, bought and done
// each day; the others up to their tiles.
const generatedRooms = 100

// No text covers another or leaves its page, whatever the room is like; each number and row is there.
func TestSheetsOfGeneratedRooms(t *testing.T) {
	rooms := demo.Rooms()
	laid := 0
	var known plan.Known
	for i := range generatedRooms {
		rnd := rand.New(rand.NewPCG(uint64(i), 7))
		r := rooms[i%len(rooms)]
		text := vary(r, rnd)
		p := planFace(t, r.File, text, rnd, i%20 < 2, &known)
		paper := draw.Papers()[rnd.IntN(4)]
		pages := sheet.Book(p, sheet.PaperNamed(paper.Name, p.Style.System))
		where := fmt.Sprintf("room %d (%s) on %s", i, r.File, paper.Name)
		for n, page := range pages {
			for _, o := range typeset.Overlaps(page) {
				t.Errorf("%s, page %d %s: %v", where, n+1, page.Title, o)
			}
		}
		laid += checkPieces(t, where, p, pages)
		if t.Failed() && testing.Verbose() {
			t.Log(text)
		}
	}
	if laid < generatedRooms*9/10 {
		t.Errorf("only %d of %d rooms had a face to draw", laid, generatedRooms)
	}
}

func planFace(t *testing.T, file, text string, rnd *rand.Rand, whole bool, known *plan.Known) plan.Plan {
	doc, _ := document.Read(file, []byte(text))
	if len(doc.Lay) == 0 {
		t.Fatalf("nothing to lay in\n%s", text)
	}
	o := plan.Options{Face: doc.Lay[rnd.IntN(len(doc.Lay))].Face, Known: known}
	if !whole {
		o.UpTo = plan.UpToTiling
	}
	p, err := plan.Make(context.Background(), file, []byte(text), o)
	if err != nil {
		t.Fatal(err)
	}
	return p
}
