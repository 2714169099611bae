package plan_test

import (
	"context"
	"encoding/json"
	"fmt"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/text"
)

// moved are edits as a hand and a keyboard make them, one after the other: pins that come, move and go, and changes of
// the face that make what was found before worth nothing.
func moved(face string) [][]document.Op {
	field := []string{"lay", face, "fields", "main"}
	set := func(key, value string) []document.Op {
		return []document.Op{{Do: text.Set, Path: append(field[:4:4], key), Value: value}}
	}
	pin := func(i int) []document.Op {
		return set("pin", fmt.Sprintf("{across: %d from left, up: %d above level}", 10+i, 5+2*i))
	}
	if face == "floor" {
		pin = func(i int) []document.Op {
			return set("pin", fmt.Sprintf("{off: {basin wall: %d, window wall: %d}}", 20+i, 30+i))
		}
	}
	edits := [][]document.Op{
		nil, pin(0), pin(1), pin(0),
		set("joint", "3/16 in"), pin(2),
		{{Do: text.Set, Path: []string{"tools", "kerf"}, Value: "1 in"}},
		{{Do: text.Set, Path: []string{"tools", "core bits"}, Value: "[7/8 in]"}},
		{{Do: text.Set, Path: []string{"lay", face, "look for"}, Value: "fewest cuts"}},
		{{Do: text.Remove, Path: append(field[:4:4], "pin")}},
		{{Do: text.Set, Path: []string{"mark"}, Value: "1/8 in"}},
		{{Do: text.Set, Path: []string{"setting", "soft joint"}, Value: "1/4 in"}},
	}
	if face != "floor" { // a plate that is taller than wide: its width changes the pieces and not what the search sees
		at := []string{"boxes", "plate"}
		edits = append(edits,
			[]document.Op{{Do: text.Add, Path: at, Value: "{in: " + face + ", across: center 24 from left, up: center 10 above level, width: 2, height: 4}"}},
			[]document.Op{{Do: text.Set, Path: append(at, "width"), Value: "3-1/2"}})
	}
	return edits
}

// What runs before found changes nothing in a plan: after each of many edits it is, to the byte, the plan of one who
// begins with nothing.
func TestKnownChangesNothing(t *testing.T) {
	r := demo.Rooms()[0]
	var known plan.Known
	for _, face := range []string{"basin wall", "window wall", "floor"} {
		src := r.Text
		for i, ops := range moved(face) {
			next, found := document.Apply(src, ops)
			if found.Stops() {
				t.Fatalf("%s, edit %d: %v", face, i, found)
			}
			src = next
			for _, quick := range []bool{true, false} {
				o := plan.Options{UpTo: plan.UpToTiling, Face: face, Quick: quick}
				plain := told(t, r.File, src, o)
				o.Known = &known
				if helped := told(t, r.File, src, o); helped != plain {
					t.Errorf("%s, edit %d, quick %v: another plan than from nothing", face, i, quick)
				}
			}
		}
	}
}

// told is all of a plan's tile work, what is found and what is assumed.
func told(t *testing.T, file string, src []byte, o plan.Options) string {
	t.Helper()
	p, err := plan.Make(context.Background(), file, src, o)
	if err != nil {
		t.Fatal(err)
	}
	b, err := json.Marshal([]any{p.Tiling, p.Findings, p.Assumed})
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// A face that is planned alone is the same as in the plan of the whole room: its mark too, and the joints that it
// continues from another face, which is then laid but not told of.
func TestFaceAloneAsInTheRoom(t *testing.T) {
	for _, r := range demo.Rooms() {
		whole, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{UpTo: plan.UpToTiling})
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range whole.Tiling.Faces {
			alone, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{UpTo: plan.UpToTiling, Face: f.Name})
			if err != nil || len(alone.Tiling.Faces) != 1 {
				t.Fatalf("%s: %s alone: %d faces, %v", r.File, f.Name, len(alone.Tiling.Faces), err)
			}
			want, _ := json.Marshal(f)
			if got, _ := json.Marshal(alone.Tiling.Faces[0]); string(got) != string(want) {
				t.Errorf("%s: %s alone (%s) is laid otherwise than in the whole room (%s)", r.File, f.Name, alone.Tiling.Faces[0].Mark, f.Mark)
			}
		}
	}
}

// So it is with the whole plan, while stock, hours and readings change and change back.
func TestKnownChangesNothingOfTheWhole(t *testing.T) {
	r := demo.Rooms()[0]
	var known plan.Known
	src := r.Text
	set := func(value string, path ...string) []document.Op {
		return []document.Op{{Do: text.Set, Path: path, Value: value}}
	}
	for i, ops := range [][]document.Op{
		nil, set("Another name", "name"), set("1/16", "tools", "saws", "track saw", "kerf"), set("30.00", "stock", "birch 1/4", "price"), set("8:00 to 15:00", "days", "hands", "Robin", "hours", "Saturday"), set("64-3/4", "survey", "tape", "P-B"), nil,
	} {
		next, found := document.Apply(src, ops)
		if found.Stops() {
			t.Fatalf("edit %d: %v", i, found)
		}
		src = next
		var got [2]string
		for k, o := range []plan.Options{{}, {Known: &known}} {
			p, err := plan.Make(context.Background(), r.File, src, o)
			if err != nil {
				t.Fatal(err)
			}
			b, err := json.Marshal([]any{p.Tiling, p.Cut, p.Days, p.Order, p.Findings, p.Assumed})
			if err != nil {
				t.Fatal(err)
			}
			got[k] = string(b)
		}
		if got[0] != got[1] {
			t.Errorf("edit %d: another plan than from nothing", i)
		}
	}
}
