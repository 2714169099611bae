package fit

import (
	"math"
	"strings"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/place"
	"dryfit/internal/site"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// What a check says of the facts that may move is true: each plain length of the room is made 2 mm more, and every margin then moves by as much as
// its term says, but for what is not in step (a jet, a hypotenuse, rounding), which may be 0.3 mm off; and no margin moves with a fact that it does not
// name among those that it uses.
func TestTermsTellTheTruth(t *testing.T) {
	src := strings.Replace(room, "units: mm", "units: mm\nrules: {sets: [US residential, ADA 2010]}", 1)
	root, _ := text.Parse([]byte(src))
	var paths [][]string
	lengths(root, nil, &paths)
	before := allMoves(t, src, paths)
	moved, tried := 0, 0
	for _, path := range paths {
		node := text.At(root, path)
		l, err := unit.Parse(node.Text, unit.Millimetres)
		if err != nil {
			continue
		}
		const by = 2 * unit.Millimetre
		changed, found := document.Apply([]byte(src), []document.Op{{Do: text.Set, Path: path, Value: (l + by).JSON()}})
		if found.Stops() {
			t.Fatalf("%v: %v", path, found)
		}
		after := allMoves(t, string(changed), paths)
		name := strings.Join(path, " > ")
		tried++
		for _, k := range before.Checks {
			a, ok := after.Find(k.ID)
			if !ok || !k.Length || k.State == NotChecked || a.State == NotChecked || k.State == Told {
				continue
			}
			got := a.Margin - k.Margin
			want := unit.Length(0)
			for _, m := range k.Moves {
				if m.Path == name {
					want = by.MulDiv(int64(m.Per), int64(unit.One))
				}
			}
			if uses := strings.Join(k.Uses, "\n") + "\n"; got != 0 && !strings.Contains(uses, name+"\n") && !strings.Contains(uses, surveyPath) {
				t.Errorf("%s moves with %s, which it does not use", k.ID, name)
			}
			if want != 0 {
				moved++
			}
			if off := math.Abs((got - want).MM()); off > 0.3 && !outOfStep(k.ID) {
				t.Errorf("%s: 2 mm more of %s moves it by %s, not by %s", k.ID, name, got.JSON(), want.JSON())
			}
		}
	}
	if tried < 60 || moved < 200 {
		t.Errorf("%d facts tried, %d margins moved", tried, moved)
	}
}

// outOfStep are checks whose value is a distance across the plan: what they hang on is told, and not how far each fact moves them.
func outOfStep(id string) bool {
	for _, part := range []string{"leaf", "clear in front", "side bar", "clear depth", "knees", "toes", "air gap", "clear floor", "edge to the", "center to the side wall", "handle to the"} {
		if strings.Contains(id, part) {
			return true
		}
	}
	return false
}

// lengths lists the paths of all single values that are plain lengths, readings of tape and level line left out.
func lengths(n *text.Node, path []string, out *[][]string) {
	for _, e := range n.Entries {
		at := append(append([]string{}, path...), e.Key)
		if len(at) == 1 && (e.Key == "survey" || e.Key == "dryfit" || e.Key == "rules" || e.Key == "mark") {
			continue
		}
		if _, err := unit.Parse(e.Value.Text, unit.Millimetres); e.Key != "angle" && e.Value.Kind == text.Scalar && err == nil {
			*out = append(*out, at)
		}
		lengths(e.Value, at, out)
	}
}

// allMoves runs the checks with everything declared to move.
func allMoves(t *testing.T, src string, paths [][]string) Plan {
	t.Helper()
	doc, found := document.Read("room", []byte(src))
	if found.Stops() {
		t.Fatal(found)
	}
	for _, p := range paths {
		doc.Moves = append(doc.Moves, document.Move{Path: p})
	}
	solved, _, _ := site.Solve(doc)
	p, _, _ := Make(doc, solved, place.Make(doc, solved))
	return p
}

func BenchmarkFit(b *testing.B) {
	doc, _ := document.Read("room", []byte(room))
	solved, _, _ := site.Solve(doc)
	for b.Loop() {
		Make(doc, solved, place.Make(doc, solved))
	}
}
