package document

import (
	"bytes"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/text"
)

// Every single change to a document can be taken back, to the byte: comments, blank lines and spacing are there again.
func TestInvertGivesTheBytes(t *testing.T) {
	docs := documents(t)
	docs["names"] = readFile(t, "testdata/edit/names.yaml")
	for name, src := range docs {
		tree, _ := text.Parse(src)
		for i, path := range paths(tree, nil) {
			beside := append(slices.Clone(path[:len(path)-1]), "quite new")
			all := []Op{{Do: text.Set, Path: path, Value: "7 ft"}, {Do: text.Remove, Path: path}, {Do: text.Add, Path: beside, Value: "{a: 1}"}, {Do: text.Rename, Path: path, Value: "Quite"}}
			takeBack(t, name, src, all[(i+i/4)%4]) // each in turn: all of them take long
		}
	}
}

func takeBack(t *testing.T, name string, src []byte, o Op) {
	t.Helper()
	out, found := Apply(src, []Op{o})
	if found.Stops() {
		return // told by the tests of Apply
	}
	back, found := Invert(src, []Op{o})
	if found.Stops() {
		t.Errorf("%s: %v %v: %v", name, o.Do, o.Path, found)
		return
	}
	got, found := Apply(out, back)
	quoted := bytes.ContainsAny(src, `'"`) && o.Do == text.Rename // a reference that had quote marks may come back without
	if found.Stops() || !quoted && !bytes.Equal(got, src) || !sameKeys(got, src) || comments(got) != comments(src) {
		t.Errorf("%s: %v %v is not taken back by %v: %v\n%s", name, o.Do, o.Path, back, found, lineDiff(string(src), string(got)))
	}
}

// A name that something had referred to in vain before is no reference of the renamed thing: undo leaves it alone.
func TestInvertRenameToANameThatWasMissed(t *testing.T) {
	src := []byte("walls:\n  one: {along: A-B}\nsetting: {back wall: two}\n")
	do := ops(t, "rename walls/one = two")
	back, found := Invert(src, do)
	if found.Stops() {
		t.Fatal(found)
	}
	if got := apply(t, apply(t, src, do), back); !bytes.Equal(got, src) {
		t.Errorf("%v\n%s", back, got)
	}
}

// Layouts that are written anew still give their comments back, since the undo carries the lines as they stood.
func TestInvertOfWhatWasWrittenAnew(t *testing.T) {
	for _, c := range []struct{ src, op string }{
		{"a:\n  b: |\n    long\n    text\n  c: 1 # c\nd: 2 # d\n", "set a/b = short"},
		{"a:\n  # about b\n  b: 1 # b\n\n  # about c\n  c: 2 # c\n# foot\n", "set a = 1"},
		{"a:\n  # about b\n  b: 1 # b\n# foot\n", "remove a/b"},
		{"a: 1\n# about b\nb:   2   # b\n# about c\nc: 3\n", "remove b"},
		{"# head\na: 1\nb: 2\n", "remove a"},
		{"a: 1\n\n# about b\nb: 2 # b", "remove b"},
		{"a: {b: 1,  c: 2,   d: 3} # k\n", "remove a/c"},
		{"a: { b: 1 } # k\n", "remove a/b"},
		{"a:   # c\nb: 1\n", "set a = 5"},
		{"a:\nb: 1\n", "set a = 5"},
		{"a:\nb: 1\n", "set a/x/y = 5"},
		{"a: {b: ~}\n", "set a/b = 5"},
		{"a: 'q # r' # c\n", "set a = 2"},
		{"a: {'b': 1, c: 2}\n", "rename a/b = d"},
		{"a:\r\n  - 1 # one\r\n  - 2\r\nb: 3\r\n", "set a = [1]"},
		{"a: [1, 2, 3]\n", "remove a/#2"},
		{"a: [1, 2]\n", "add a/#1 = 0"},
		{"a:\n  - {b: 1} # one\n  - {b: 2}\n", "set a/#2/b = 3"},
		{"\ufeffa: 1 # one\nb: 2\n", "remove a"},
		{"# only words\n", "set a = 1"},
	} {
		do := ops(t, c.op)
		back, found := Invert([]byte(c.src), do)
		if found.Stops() {
			t.Errorf("%q %s: %v", c.src, c.op, found)
			continue
		}
		if got := apply(t, apply(t, []byte(c.src), do), back); string(got) != c.src {
			t.Errorf("%q %s, back by %v: %q", c.src, c.op, back, got)
		}
	}
}

// A comment that somebody wrote after the change stays when the change is taken back.
func TestInvertKeepsLaterComments(t *testing.T) {
	src := []byte("a:\n  b: 1 # b\nc: 2\n")
	do := ops(t, "set a = 5")
	back, _ := Invert(src, do)
	later := bytes.Replace(apply(t, src, do), []byte("\nc:"), []byte(" # later\n# and this\nc:"), 1)
	got := apply(t, later, back)
	if !bytes.Contains(got, []byte("# later")) || !bytes.Contains(got, []byte("# and this")) || !sameKeys(got, src) {
		t.Errorf("%s\nof\n%s", got, later)
	}
}

func TestInvertOfWhatCanNotBeDone(t *testing.T) {
	back, found := Invert([]byte("a: 1\n"), ops(t, "set a = 2; remove b"))
	if back != nil || !found.Stops() {
		t.Errorf("%v %v", back, found)
	}
}

// Any sequence of operations is taken back: all values in their order, every comment, and mostly every byte. And what
// was taken back can be done again.
func TestInvertSequences(t *testing.T) {
	src := readFile(t, "testdata/edit/names.yaml")
	tree, _ := text.Parse(src)
	all := paths(tree, nil)
	rapid.Check(t, func(t *rapid.T) {
		do := drawOps(t, "some", src, all)
		back, found := Invert(src, do)
		if found.Stops() {
			t.Fatalf("%v: %v", do, found)
		}
		after := apply(t, src, do)
		undone := apply(t, after, back)
		if was, _ := text.Parse(undone); !text.Equal(was, tree) || comments(undone) != comments(src) {
			t.Fatalf("%v taken back by %v:\n%s", do, back, lineDiff(string(src), string(undone)))
		}
		again, found := Invert(after, back)
		if found.Stops() {
			t.Fatalf("%v can not be done again: %v", do, found)
		}
		if redone := apply(t, undone, again); !sameKeys(redone, after) {
			t.Fatalf("%v done again by %v:\n%s", do, again, lineDiff(string(after), string(redone)))
		}
	})
}
