package document

import (
	"bytes"
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
	return map[string][]byte{"full": readFile(t, "testdata/full.yaml"), "starter": Starter(unit.Millimetres, 4), "demo": readFile(t, "../demo/gable.yaml")}
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
	for name, src := range map[string][]byte{"full": readFile(t, "testdata/full.yaml"), "starter": Starter(unit.Inches, 4)} {
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
