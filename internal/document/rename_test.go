package document

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// op reads one operation: "set a/b = value", "add a/b = value", "rename a/b = name", "remove a/b".
func op(t testing.TB, s string) Op {
	t.Helper()
	left, value, _ := strings.Cut(s, " = ")
	verb, path, _ := strings.Cut(left, " ")
	o := Op{Path: strings.Split(path, "/"), Value: value}
	if err := o.Do.UnmarshalText([]byte(verb)); err != nil {
		t.Fatalf("%s: %v", s, err)
	}
	return o
}

// ops reads operations with semicolons between.
func ops(t testing.TB, s string) []Op {
	t.Helper()
	var all []Op
	for _, one := range strings.Split(s, "; ") {
		if one != "" {
			all = append(all, op(t, one))
		}
	}
	return all
}

// The names of this document are words that stand nowhere else. So what a renaming has to give can be worked out without
// knowing what a reference is: the new word for every old one.
func TestRenameFollowsReferences(t *testing.T) {
	src := string(readFile(t, "testdata/edit/names.yaml"))
	if _, found := Read("names", []byte(src)); found.Stops() {
		t.Fatal(found)
	}
	unquoted := strings.NewReplacer(`'Kilo'`, "Kilo", `"November-Kilo"`, "November-Kilo", `'green wall'`, "green wall", `"shell"`, "shell")
	for _, c := range []struct{ path, name string }{
		{"walls/green wall", "red tiled wall"},
		{"walls/amber wall", "ocher"},
		{"openings/hatch", "porthole"},
		{"openings/recess", "alcove"},
		{"center lines/tap axis", "middle"},
		{"tiles/gray slate", "blue stone"},
		{"tiles/shell", "nacre # 2, [1: x]"},
		{"survey/corners/Kilo", "Q"},
		{"survey/corners/Lima", "L2"},
		{"survey/points/Papa", "Nail"},
	} {
		o := Op{Do: text.Rename, Path: strings.Split(c.path, "/"), Value: c.name}
		out, found := Apply([]byte(src), []Op{o})
		old := o.Path[len(o.Path)-1]
		want := strings.ReplaceAll(unquoted.Replace(src), old, text.Quote(c.name)) // a reference may lose its quote marks
		if got := unquoted.Replace(string(out)); len(found) > 0 || got != want || strings.Count(want, text.Quote(c.name)) < 2 {
			t.Errorf("%s: %v\n%s", c.path, found, lineDiff(want, got))
		}
		if _, found := Read("names", out); found.Stops() {
			t.Errorf("%s: %v", c.path, found)
		}
	}
}

// lineDiff shows the lines that differ.
func lineDiff(want, got string) string {
	a, b := strings.Split(want, "\n"), strings.Split(got, "\n")
	var out strings.Builder
	for i := range max(len(a), len(b)) {
		var x, y string
		if i < len(a) {
			x = a[i]
		}
		if i < len(b) {
			y = b[i]
		}
		if x != y {
			out.WriteString("want " + x + "\n got " + y + "\n")
		}
	}
	return out.String()
}

// A name that would not read back as the same name everywhere is refused, and nothing is changed.
func TestRenameRefused(t *testing.T) {
	src := readFile(t, "testdata/edit/names.yaml")
	for _, c := range []struct{ op, code string }{
		{"rename walls/green wall = amber wall", "name-unusable"},             // is a wall already
		{"rename walls/green wall = floor", "name-unusable"},                  // the floor is a face
		{"rename survey/corners/Kilo = Lima", "name-unusable"},                // a corner already
		{"rename survey/corners/Kilo = Papa", "name-unusable"},                // a point, which the tape would mix up
		{"rename survey/points/Papa = Mike", "name-unusable"},                 // a corner
		{"rename survey/corners/Kilo = two words", "name-unusable"},           // would be two corners
		{"rename survey/corners/Kilo = K-1", "name-unusable"},                 // a hyphen parts the ends of a line
		{"rename survey/corners/Kilo = K,", "name-unusable"},                  // a comma parts names
		{"rename survey/corners/Kilo = left", "name-unusable"},                // "from left" means the left end
		{"rename center lines/tap axis = tap to board", "name-unusable"},      // "of tap to board" is a line called tap
		{"rename openings/hatch = recess", "name-unusable"},                   // an opening already
		{"rename walls/green wall =  spaced", "name-unusable"},                // a value loses its blanks
		{"rename walls/nowhere = wall", "edit-impossible"},                    // there is none
		{"rename survey/corners/Zulu = Z", "edit-impossible"},                 // there is none
		{"rename survey/points/Zulu = Z", "edit-impossible"},                  // there is none, in a list
		{"rename survey/corners/Kilo = ", "edit-impossible"},                  // no name at all
		{"rename walls/green wall = ", "edit-impossible"},                     // no name at all
		{"remove survey/corners/Kilo", "edit-impossible"},                     // a corner is a word of a list; that list is set
		{"rename setting/order/#2 = amber wall", "edit-impossible"},           // a value of a list has no name
		{"rename walls/green wall = green wall; remove x", "edit-impossible"}, // the first alone is fine
	} {
		out, found := Apply(src, ops(t, c.op))
		if len(found) != 1 || found[0].Code != c.code || string(out) != string(src) {
			t.Errorf("%s: %v, want %s", c.op, found, c.code)
		}
		if len(found) > 0 && found[0].At.Line == 0 {
			t.Errorf("%s: no place", c.op)
		}
	}
}

// What may still move is called by the words that lead to it: a renamed thing is renamed there too, and a thing of another kind that bears the
// same name is not.
func TestRenameFollowsWhatMayMove(t *testing.T) {
	const src = "dryfit: 1\nname: n\nunits: in\nsurvey: {corners: A B C D, tape: {A-B: 70}}\nwalls:\n  low: {along: A-B, build-up: [board 1/2]}\n" +
		"stub-outs:\n  low: {in: low, across: 30 from A, up: 8 above floor, diameter: 5/8, stands out: 2}\n" +
		"wastes:\n  drain: {from: unknown, to: unknown, tailpiece: 8}\nmay move:\n  low > build-up > board: 1/8\n  low > stands out: 1/2\n  drain > tailpiece: 1\n"
	for _, c := range []struct{ op, want string }{
		{"rename walls/low = high", "  high > build-up > board: 1/8\n  low > stands out: 1/2\n  drain > tailpiece: 1\n"},
		{"rename stub-outs/low = cold", "  low > build-up > board: 1/8\n  cold > stands out: 1/2\n  drain > tailpiece: 1\n"},
		{"rename wastes/drain = trap", "  low > build-up > board: 1/8\n  low > stands out: 1/2\n  trap > tailpiece: 1\n"},
	} {
		out, found := Apply([]byte(src), ops(t, c.op))
		if _, moves, _ := strings.Cut(string(out), "may move:\n"); len(found) > 0 || moves != c.want {
			t.Errorf("%s: %v\n%s", c.op, found, moves)
		}
		back, _ := Invert([]byte(src), ops(t, c.op))
		if undone, found := Apply(out, back); string(undone) != src {
			t.Errorf("%s is not taken back: %v\n%s", c.op, found, undone)
		}
	}
}

// What only looks like a reference keeps its name: a field or a pipe of the same name, a word in a comment or a kind.
func TestRenameLeavesTheRestAlone(t *testing.T) {
	src := readFile(t, "../demo/quarry-row.yaml")
	out, found := Apply(src, ops(t, "rename openings/window = pane"))
	if len(found) > 0 {
		t.Fatal(found)
	}
	want := strings.NewReplacer("\n  window:\n", "\n  pane:\n", "window > sill", "pane > sill").Replace(string(src))
	if string(out) != want {
		t.Error(lineDiff(want, string(out)))
	}
}

// What else is wrong with a document keeps no reference back.
func TestRenameInABrokenDocument(t *testing.T) {
	for _, c := range []struct{ src, want string }{
		{"dryfit: 99\nwalls: {one: {along: A-B}}\nsetting: {back wall: one}\n", "dryfit: 99\nwalls: {two: {along: A-B}}\nsetting: {back wall: two}\n"},
		{"dryfit: x\nunits: furlongs\nwalls: {one: 5}\nsetting: {back wall: one, order: {a: one}}\n", "dryfit: x\nunits: furlongs\nwalls: {two: 5}\nsetting: {back wall: two, order: {a: one}}\n"},
		{"walls: {one: {along: nowhere}}\nlay: {one: {fields: 7}}\n", "walls: {two: {along: nowhere}}\nlay: {two: {fields: 7}}\n"},
	} {
		out, found := Apply([]byte(c.src), ops(t, "rename walls/one = two"))
		if len(found) > 0 || string(out) != c.want {
			t.Errorf("%s%v\n%s", c.src, found, out)
		}
	}
}

// What is done on a wall or a thing is called by its name, wherever a job's name may stand; a job of the user's own keeps its name, and a job on
// another thing of a longer name is not meant.
func TestRenameFollowsJobs(t *testing.T) {
	const src = "dryfit: 1\nname: n\nunits: in\nsurvey: {corners: A B C D, tape: {A-B: 70}}\nwalls:\n  low: {along: A-B, build-up: [board 1/2]}\n  low 3: {along: B-C, build-up: [board 1/2]}\n" +
		"cabinets:\n  chest: {in: low}\ntops:\n  slab: {on: chest}\nWCs:\n  WC: {kind: floor, against: low, outlet: unknown}\n"
	const days = "days:\n  hands:\n    me: {does: [set, set low, coat chest 2]}\n  jobs:\n    grout low: {takes: 1 h, after: [set low 1, set low 3], by: me}\n    look: {takes: 1 h, before: grout low}\n  done:\n    set low 2: {took: 3 h}\n    Board  low: {took: 1 h}\n    WC: {took: 1 h}\n" +
		"  promises:\n    visit: {on: 2026-03-12 9:00, after: set low, before: [install chest, install slab]}\n  hired:\n    saw: {for: [set low 3, sand before coat chest 2]}\n"
	if _, found := Read("n", []byte(src+days)); slices.ContainsFunc(found, func(f diag.Finding) bool { return f.Code == "unknown-name" && f.At.Path != "walls > low 3 > along" }) {
		t.Fatal(found)
	}
	for _, c := range []struct {
		op    string
		swaps []string // what changes among the days
	}{
		{"rename walls/low = high", []string{"set low,", "set high,", "set low 1", "set high 1", "set low 2", "set high 2", "Board  low", "board high"}},
		{"rename walls/low 3 = end", []string{"set low 3", "set end"}},
		{"rename cabinets/chest = box", []string{"coat chest 2", "coat box 2", "install chest", "install box"}},
		{"rename tops/slab = plank", []string{"install slab", "install plank"}},
		{"rename WCs/WC = pan", []string{"    WC: {", "    WC pan: {"}},
		{"rename days/hands/me = Ada", []string{"    me: {", "    Ada: {", "by: me", "by: Ada"}},
		{"rename days/jobs/grout low = fill it", []string{"grout low", "fill it"}},
	} {
		out, found := Apply([]byte(src+days), ops(t, c.op))
		_, got, _ := strings.Cut(string(out), "days:\n")
		want := strings.NewReplacer(c.swaps...).Replace(days[len("days:\n"):])
		if len(found) > 0 || got != want {
			t.Errorf("%s: %v\n%s", c.op, found, lineDiff(want, got))
		}
		back, _ := Invert([]byte(src+days), ops(t, c.op))
		undone, found := Apply(out, back)
		if now, _ := Read("n", undone); found.Stops() || !reflect.DeepEqual(jobNamesOf(now), jobNamesOf(first(Read("n", []byte(src+days))))) {
			t.Errorf("%s is not taken back: %v\n%s", c.op, found, undone)
		}
	}
}

func first(r Room, _ diag.List) Room { return r }

// jobNamesOf lists every name of a job that a document says.
func jobNamesOf(r Room) (all []string) {
	for _, d := range r.Days.Done {
		all = append(all, d.Name)
	}
	for _, j := range r.Days.Own {
		for _, n := range append(slices.Clone(j.After), j.Before...) {
			all = append(all, j.Name, n.Text)
		}
	}
	return all
}
