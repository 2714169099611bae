package plan_test

import (
	"context"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Every number of the built-in rooms is made unknown in turn. Unknown must stay unknown: whatever then changes in the
// measured room is owned up to by a finding or an assumption that was not there before; nothing turns into a silent zero.
func TestEveryNumberUnknownInTurn(t *testing.T) {
	for _, r := range demo.Rooms() {
		root, _ := text.Parse(r.Text)
		before := measured(t, r.File, r.Text)
		for _, path := range numbers(root, nil) {
			src, found := document.Apply(r.Text, []document.Op{{Do: text.Set, Path: path, Value: "unknown"}})
			if found.Stops() {
				t.Errorf("%s: %s can not be made unknown: %v", r.File, strings.Join(path, " > "), found)
				continue
			}
			after := measured(t, r.File, src)
			if !changed(before, after) || said(before, after) || spare(path, before, after) {
				continue
			}
			t.Errorf("%s: with %s unknown the room is another, and nothing is said", r.File, strings.Join(path, " > "))
		}
	}
}

// spare: a tape reading more than needed may go without a word. The rest still fixes the shape, to within what the readings
// disagree by, and one fewer stands on the overview.
func spare(path []string, before, after plan.Plan) bool {
	a, b := before.Room.Survey, after.Room.Survey
	const share = 1000
	return path[1] == "tape" && b.Fixed && b.Freedom < a.Freedom && max(a.Area, b.Area)-min(a.Area, b.Area) < a.Area/share
}

func measured(t *testing.T, file string, src []byte) plan.Plan {
	t.Helper()
	p, err := plan.Make(context.Background(), file, src, plan.Options{UpTo: plan.UpToSite})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// numbers lists the paths of all single values that hold a digit.
func numbers(n *text.Node, path []string) [][]string {
	var out [][]string
	for _, e := range n.Entries {
		at := append(slices.Clone(path), e.Key)
		if e.Value.Kind == text.Scalar && strings.ContainsAny(e.Value.Text, "0123456789") && len(at) > 1 {
			out = append(out, at)
		}
		out = append(out, numbers(e.Value, at)...)
	}
	return out
}

// changed compares what sheets would print of the two rooms.
func changed(a, b plan.Plan) bool {
	if len(a.Room.Faces) != len(b.Room.Faces) || a.Room.Survey.Area != b.Room.Survey.Area || a.Room.FinishedFloor != b.Room.FinishedFloor {
		return true
	}
	for i, f := range a.Room.Faces {
		g := b.Room.Faces[i]
		if f.Cut.Area() != g.Cut.Area() || len(f.Holes) != len(g.Holes) || len(f.Openings) != len(g.Openings) || f.BedMost != g.BedMost {
			return true
		}
	}
	return false
}

// said reports whether the second plan has a finding or an assumption that the first has not.
func said(a, b plan.Plan) bool {
	before := words(a)
	return slices.ContainsFunc(words(b), func(w string) bool { return !slices.Contains(before, w) })
}

func words(p plan.Plan) []string {
	var out []string
	for _, f := range p.Findings {
		if f.Class != diag.Note {
			out = append(out, f.Code+" "+f.Say(unit.DefaultStyle(unit.Millimetres)))
		}
	}
	for _, a := range p.Assumed {
		out = append(out, a.Say(unit.DefaultStyle(unit.Millimetres)))
	}
	return out
}
