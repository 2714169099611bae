package document

import (
	"bytes"
	"fmt"
	"maps"
	"math/rand/v2"
	"strings"
	"testing"

	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// paths lists the path of every key in a document.
func paths(n *text.Node, above []string) [][]string {
	var all [][]string
	for _, e := range n.Entries {
		path := append(above[:len(above):len(above)], e.Key)
		all = append(append(all, path), paths(e.Value, path)...)
	}
	return all
}

func find(n *text.Node, path []string) *text.Node {
	for _, k := range path {
		n = n.Get(k)
	}
	return n
}

// documents are those that a person would edit: the full one, a first one and a demo.
func documents(t *testing.T) map[string][]byte {
	t.Helper()
	all := map[string][]byte{"starter": Starter(unit.Millimetres, 4)}
	for name, file := range map[string]string{"full": "testdata/full.yaml", "demo": "../demo/gable.yaml"} {
		for i, chunk := range chunks(readFile(t, file)) {
			all[fmt.Sprint(name, " ", i+1)] = chunk
		}
	}
	return all
}

// chunks cuts a document between top-level keys into documents of about fifty lines: an edit of each of its keys parses the
// text anew, and parsing all of a long document for each of its keys takes long.
func chunks(src []byte) [][]byte {
	const lines = 50
	var all [][]byte
	var chunk []byte
	for line := range bytes.Lines(src) {
		top := line[0] != ' ' && line[0] != '#' && line[0] != '\n'
		if top && bytes.Count(chunk, []byte("\n")) >= lines {
			all, chunk = append(all, chunk), nil
		}
		chunk = append(chunk, line...)
	}
	return append(all, chunk)
}

// A value set anywhere changes its own lines and no other, and setting it back gives the same bytes.
func TestSetEveryValue(t *testing.T) {
	for name, src := range documents(t) {
		tree, _ := text.Parse(src)
		for _, path := range paths(tree, nil) {
			n := find(tree, path)
			if n.Kind != text.Scalar {
				continue
			}
			out, found := Apply(src, []Op{{Do: text.Set, Path: path, Value: "7 ft 3/4"}})
			if len(found) > 0 {
				t.Fatalf("%s: set %v: %s", name, path, line(found[0]))
			}
			if changed := changedLines(src, out); len(changed) > 1 || len(changed) == 1 && changed[0] != n.At.Line {
				t.Errorf("%s: set %v changed the lines %v, not %d", name, path, changed, n.At.Line)
			}
			back, found := Apply(out, []Op{{Do: text.Set, Path: path, Value: n.Text}})
			if len(found) > 0 || !n.Quoted && !bytes.Equal(back, src) {
				t.Errorf("%s: set %v back to %s gives other bytes %v", name, path, n.Text, found)
			}
		}
	}
}

func changedLines(a, b []byte) []int {
	one, two := strings.Split(string(a), "\n"), strings.Split(string(b), "\n")
	if len(one) != len(two) {
		return []int{-1, -1}
	}
	var changed []int
	for i := range one {
		if one[i] != two[i] {
			changed = append(changed, i+1)
		}
	}
	return changed
}

// Any key can be taken out, renamed, and another added beside it; comments that stand on lines of their own stay.
func TestChangeEveryKey(t *testing.T) {
	for name, src := range documents(t) {
		tree, _ := text.Parse(src)
		for _, path := range paths(tree, nil) {
			beside := append(path[:len(path)-1:len(path)-1], "quite new")
			for _, op := range []Op{
				{Do: text.Rename, Path: path, Value: "quite new"},
				{Do: text.Add, Path: beside, Value: "{a: 1, b: [2, 3]}"},
				{Do: text.Remove, Path: path},
			} {
				out, found := Apply(src, []Op{op})
				if len(found) > 0 {
					t.Errorf("%s: %v %v: %s", name, op.Do, op.Path, line(found[0]))
					continue
				}
				if op.Do != text.Remove && comments(out) != comments(src) {
					t.Errorf("%s: %v %v lost a comment", name, op.Do, op.Path)
				}
			}
		}
	}
}

func comments(src []byte) int { return strings.Count(string(src), "# ") }

// On any text an operation gives what it says or leaves the text as it was: Apply checks its own result, and this
// checks that it does.
func TestApplyToMutations(t *testing.T) {
	rounds := 600
	if testing.Short() {
		rounds = 150
	}
	docs := corpus(t)
	rng := rand.New(rand.NewPCG(5, 6))
	done := 0
	for i := range rounds {
		src := mutate(docs[i%len(docs)], rng)
		tree, faults := text.Parse(src)
		all := paths(tree, nil)
		if len(all) == 0 {
			continue
		}
		path := all[rng.IntN(len(all))]
		out, found := Apply(src, []Op{{Do: text.Set, Path: path, Value: "new value"}})
		if found.Stops() || faults.Stops() {
			if !bytes.Equal(out, src) || !found.Stops() {
				t.Fatalf("refused, but changed: %v in\n%s", path, src)
			}
			continue
		}
		done++
		after, faults := text.Parse(out)
		if got := find(after, path); faults.Stops() || got.Text != "new value" || len(paths(after, nil)) > len(all) {
			t.Fatalf("set %v gives\n%s\nfrom\n%s", path, out, src)
		}
	}
	if done == 0 {
		t.Error("nothing was ever changed")
	}
}

// A wall is renamed with its references in one go, as an editor would do it.
func TestEditAsAPersonWould(t *testing.T) {
	src := Starter(unit.Inches, 4)
	out, found := Apply(src, []Op{
		{Do: text.Rename, Path: []string{"walls", "wall AB"}, Value: "basin wall"},
		{Do: text.Set, Path: []string{"survey", "tape", "A-C"}, Value: "unknown"},
		{Do: text.Add, Path: []string{"openings", "niche"}, Value: "{in: basin wall, kind: niche, across: 40 to 52 from A, up: 48 to 72 above floor}"},
		{Do: text.Remove, Path: []string{"climate"}},
	})
	if len(found) > 0 {
		t.Fatal(found)
	}
	room, found := Read("starter", out)
	if found.Stops() || room.Walls[0].Name != "basin wall" || len(room.Openings) != 2 || room.Climate.Sun.Known {
		t.Errorf("%v\n%s", found, out)
	}
	if comments(out) != comments(src) {
		t.Error("a comment is lost")
	}
}

// Random sequences on the demos: the tree is what the operations say, worked out on the tree alone, and every comment
// that stands on a line of its own stays, unless a finding owns up to it.
func TestSequencesOnTheDemos(t *testing.T) {
	rounds := 60
	if testing.Short() {
		rounds = 15
	}
	rng := rand.New(rand.NewPCG(7, 8))
	for _, name := range []string{"../demo/gable.yaml", "../demo/quarry-row.yaml"} {
		src := readFile(t, name)
		for range rounds {
			out, want := src, values(src)
			for range 1 + rng.IntN(5) {
				tree, _ := text.Parse(out)
				all := paths(tree, nil)
				path := all[rng.IntN(len(all))]
				o := Op{Do: []text.Verb{text.Set, text.Remove, text.Add}[rng.IntN(3)], Path: path, Value: []string{"7 ft 3/4", "x # y", "a: b", "unknown"}[rng.IntN(4)]}
				if o.Do == text.Add {
					o.Path = append(path[:len(path)-1:len(path)-1], "quite new")
				}
				next, found := Apply(out, []Op{o})
				if found.Stops() {
					continue
				}
				if own := ownLines(next); len(found) == 0 && o.Do == text.Add && own != ownLines(out) {
					t.Errorf("%v %v lost a comment", o.Do, o.Path)
				}
				out, want = next, expect(want, o)
			}
			if got := values(out); !maps.Equal(got, want) {
				t.Fatalf("%s: the document says %v, not %v", name, got, want)
			}
		}
	}
}

// values lists every single value of a document by its path: a list that knows nothing of trees.
func values(src []byte) map[string]string {
	tree, _ := text.Parse(src)
	all := map[string]string{}
	leaves(tree, "", all)
	return all
}

func leaves(n *text.Node, path string, all map[string]string) {
	for _, e := range n.Entries {
		leaves(e.Value, path+"/"+e.Key, all)
	}
	for i, c := range n.Items {
		leaves(c, path+"/"+text.Item(i), all)
	}
	if n.Kind == text.Scalar {
		all[path] = n.Text
	}
}

// expect changes such a list as an operation says.
func expect(all map[string]string, o Op) map[string]string {
	out := maps.Clone(all)
	path := "/" + strings.Join(o.Path, "/")
	maps.DeleteFunc(out, func(p, _ string) bool { return p == path || strings.HasPrefix(p, path+"/") })
	switch {
	case o.Do == text.Remove:
	case o.Value == "x # y":
		out[path] = "x" // the rest is a comment
	default:
		out[path] = o.Value
	}
	return out
}

// ownLines counts the comments that have a line to themselves.
func ownLines(src []byte) int {
	n := 0
	for _, l := range strings.Split(string(src), "\n") {
		if strings.HasPrefix(strings.TrimSpace(l), "#") {
			n++
		}
	}
	return n
}

// One reading changed, as a person at the wall does it, with all the checks; and a wall renamed.
func BenchmarkApply(b *testing.B) {
	src := readFile(b, "../demo/quarry-row.yaml")
	for _, c := range []struct{ name, ops string }{
		{"set", "set survey/tape/A-C = 120-1/4"},
		{"rename", "rename walls/basin wall = long wall by the door"},
	} {
		b.Run(c.name, func(b *testing.B) {
			do := ops(b, c.ops)
			for b.Loop() {
				Apply(src, do)
			}
		})
	}
}

func BenchmarkMerge(b *testing.B) {
	src := readFile(b, "../demo/quarry-row.yaml")
	theirs, yours := ops(b, "set survey/tape/A-B = 71-1/2"), ops(b, "set survey/tape/A-C = 120-1/4")
	head, _ := Apply(src, theirs)
	for b.Loop() {
		Merge(src, head, theirs, yours)
	}
}
