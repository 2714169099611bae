package text

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// do reads one operation: "set a/b = value", "add a/b = value", "rename a/b = name", "remove a/b".
func do(t testing.TB, s string) Op {
	t.Helper()
	left, value, _ := strings.Cut(s, " = ")
	verb, path, ok := strings.Cut(left, " ")
	verbs := map[string]Verb{"set": Set, "add": Add, "remove": Remove, "rename": Rename}
	v, known := verbs[verb]
	if !ok || !known {
		t.Fatalf("no operation: %s", s)
	}
	return Op{Do: v, Path: strings.Split(path, "/"), Value: value}
}

func TestApply(t *testing.T) {
	for _, c := range []struct{ src, op, want, found string }{
		// A value is replaced where it stands.
		{"a: 1 # one\nb: 2\n", "set a = 3", "a: 3 # one\nb: 2\n", ""},
		{"a: 1", "set a = 8' 2-3/8\"", "a: 8' 2-3/8\"", ""},
		{"a:   1   # c\r\nb: 2\r\n", "set b = 4", "a:   1   # c\r\nb: 4\r\n", ""},
		{"a: {b: 1, c: 2}   # k\n", "set a/b = x y", "a: {b: x y, c: 2}   # k\n", ""},
		{"a: {b: 8' 2\", c: 3\"}\n", "set a/c = 4\"", "a: {b: 8' 2\", c: 4\"}\n", ""},
		{"a: 'q # r' # c\n", "set a = 2", "a: 2 # c\n", ""},
		{"a: \"q \\\" r\" # c\n", "set a = 2", "a: 2 # c\n", ""},
		{"a: 'it''s'\n", "set a = 2", "a: 2\n", ""},
		{"a: [1, 2,\n    3] # c\nb: 1\n", "set a = [4]", "a: [4] # c\nb: 1\n", ""},
		{"a: [1, # x ]\n    3] # c\nb: 1\n", "set a = 4", "a: 4 # c\nb: 1\n", ""},
		{"½x: ⅜ # c\n", "set ½x = ⅝", "½x: ⅝ # c\n", ""},
		{"\ufeffa: 1\nb: 2\n", "set a = 3", "\ufeffa: 3\nb: 2\n", ""},
		// A value that would not read back as itself is put in quotes.
		{"a: {b: 1, c: 2}\n", "set a/b = x, y", "a: {b: \"x, y\", c: 2}\n", ""},
		{"a: 1\n", "set a = x: y", "a: \"x: y\"\n", ""},
		{"a: 1\n", "set a = @home", "a: \"@home\"\n", ""},
		{"a: 1\n", "set a = '8' 2\"", "a: \"'8' 2\\\"\"\n", ""},
		// A block gives way to a value on the key's line, and a comment there stays.
		{"a: # c\n  b: 1\n  # in\n  d: 2\ne: 3\n", "set a = 5", "a: 5 # c\ne: 3\n", ""},
		{"a:\n  - 1\n  - 2\nb: 3\n", "set a = [1, 3]", "a: [1, 3]\nb: 3\n", ""},
		{"a:\nb: 1\n", "set a = 5", "a: 5\nb: 1\n", ""},
		{"a:   # c\nb: 1\n", "set a = 5", "a: 5   # c\nb: 1\n", ""},
		{"a: {b: ~}\nc: null # c\n", "set a/b = 2", "a: {b: 2}\nc: null # c\n", ""},
		{"a: {b: ~}\nc: null # c\n", "set c = 2", "a: {b: ~}\nc: 2 # c\n", ""},
		// New keys.
		{"a:\n  b: 1 # c\n# foot\nd: 2\n", "set a/x = 3", "a:\n  b: 1 # c\n  x: 3\n# foot\nd: 2\n", ""},
		{"a:\n  b: 1", "add a/x = 3", "a:\n  b: 1\n  x: 3", ""},
		{"a: {b: 1}\n", "add a/x = 3", "a: {b: 1, x: 3}\n", ""},
		{"a: {}\n", "add a/x = 3", "a: {x: 3}\n", ""},
		{"a:\nb: 1\n", "add a/x = 3", "a: {x: 3}\nb: 1\n", ""},
		{"a: 1\n", "set b/c/d = 3", "a: 1\nb: {c: {d: 3}}\n", ""},
		{"", "set a = 1", "a: 1\n", ""},
		{"# only words\n", "set a = 1", "# only words\na: 1\n", ""},
		{"a: 1\n", "add x y/b: c = 3", "a: 1\nx y: {\"b: c\": 3}\n", ""},
		{"a:\n  b:\n    c: 1\n  d: 2\n", "add a/b/x = {y: [1, 2]}", "a:\n  b:\n    c: 1\n    x: {y: [1, 2]}\n  d: 2\n", ""},
		// Keys that go.
		{"a: 1\nb: 2 # c\n# k\nd: 3\n", "remove b", "a: 1\n# k\nd: 3\n", ""},
		{"a: 1\nb:\n  c: 2\n  d: 3\ne: 4\n", "remove b", "a: 1\ne: 4\n", ""},
		{"a: {b: 1, c: 2, d: 3}\n", "remove a/b", "a: {c: 2, d: 3}\n", ""},
		{"a: {b: 1, c: 2, d: 3}\n", "remove a/c", "a: {b: 1, d: 3}\n", ""},
		{"a: {b: 1, c: 2, d: 3}\n", "remove a/d", "a: {b: 1, c: 2}\n", ""},
		{"a: {b: 1}\n", "remove a/b", "a: {}\n", ""},
		{"a:\n  b: 1\nc: 2\n", "remove a/b", "a: {}\nc: 2\n", ""},
		{"a: 1\n", "remove a", "", ""},
		{"a: 1\nb: 2", "remove b", "a: 1\n", ""},
		// Names.
		{"a: # c\n  b: 1\n", "rename a = x y", "x y: # c\n  b: 1\n", ""},
		{"a: {'b': 1, c: 2}\n", "rename a/b = d", "a: {d: 1, c: 2}\n", ""},
		{"a: 1\n", "rename a = b: c", "\"b: c\": 1\n", ""},
		{"a: 1\nb: 2\n", "rename a = a", "a: 1\nb: 2\n", ""},
		// Layouts that can not be spliced are written anew, as little as possible, and that is said.
		{"a:\n  b: |\n    long\n    text\n  c: 1 # c\nd: 2 # d\n", "set a/b = short", "a: {b: short, c: 1} # c\nd: 2 # d\n", "edit-rewrote"},
		{"a: {b: x\n  y, c: 1} # c\n", "set a/b = 2", "a: {b: 2, c: 1} # c\n", "edit-rewrote"},
		{"a: {b: x\n  y} # c\n", "set a/b = 2", "", "edit-refused"},
		// What can not be done.
		{"a: 1\n", "add a = 2", "", "edit-impossible"},
		{"a: 1\n", "remove b", "", "edit-impossible"},
		{"a: 1\n", "remove b/c", "", "edit-impossible"},
		{"a: 1\n", "rename b = c", "", "edit-impossible"},
		{"a: 1\nb: 2\n", "rename a = b", "", "edit-impossible"},
		{"a: 1\n", "rename a = ", "", "edit-impossible"},
		{"a: 1\n", "set a/b = 2", "", "edit-impossible"},
		{"a: [1]\n", "set a/1 = 2", "", "edit-impossible"},
		{"a: 1\n", "set a = ", "", "edit-impossible"},
		{"a: 1\n", "set a = x\ny: 2", "", "edit-impossible"},
		{"a: @\nb: 2\n", "set b = 1", "", "edit-of-broken-text"},
		{"a: |\n  long\n  text\nb: 2\n", "set a = 1", "", "edit-refused"},
	} {
		src := []byte(c.src)
		got, found := Apply(src, []Op{do(t, c.op)})
		code := ""
		if len(found) > 0 {
			code = found[len(found)-1].Code
		}
		if code != c.found {
			t.Errorf("%q %s: found %q, want %q", c.src, c.op, code, c.found)
		}
		want := c.want
		if found.Stops() {
			want = c.src
		}
		if string(got) != want {
			t.Errorf("%q %s:\n got %q\nwant %q", c.src, c.op, got, want)
		}
	}
}

// All or nothing: an operation that can not be done leaves the text as it was before the first.
func TestApplyIsAllOrNothing(t *testing.T) {
	src := "a: 1\nb: 2\n"
	got, found := Apply([]byte(src), []Op{do(t, "set a = 5"), do(t, "remove c")})
	if string(got) != src || !found.Stops() {
		t.Errorf("%q %v", got, found)
	}
	got, found = Apply([]byte(src), []Op{do(t, "set a = 5"), do(t, "remove b"), do(t, "add c = 6")})
	if string(got) != "a: 5\nc: 6\n" || len(found) > 0 {
		t.Errorf("%q %v", got, found)
	}
	if got, found := Apply([]byte(src), []Op{{Do: Set}}); string(got) != src || !found.Stops() {
		t.Errorf("%q %v", got, found)
	}
}

func TestFlowReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := tree(t, 3)
		got, found := Parse([]byte("x: " + Flow(want)))
		if len(found) > 0 || !Equal(got.Get("x"), want) {
			t.Fatalf("%s reads as %s %v", Flow(want), write(got), found)
		}
	})
}

// tree draws a tree of maps, lists and scalars, among them those that YAML could take for something else.
func tree(t *rapid.T, deep int) *Node {
	scalar := rapid.OneOf(rapid.SampledFrom([]string{"x", "8' 2-3/8\"", "'8' 2\"", "a: b", "a #b", "- a", "? a", "[", "}", "~", "null", "no", "1", "", " x ", "@", "%a", "&a", "*a", "!a", "|", ">", "---", "½", "a,b", "\"", "\\", "x:", ":x", "#", "=", "<<", "\u00e9\u2028", "tab\tx"}),
		rapid.StringMatching(`[ -~]{0,8}`))
	kind := rapid.IntRange(0, 3).Draw(t, "kind")
	if deep == 0 || kind < 2 {
		return &Node{Kind: Scalar, Text: scalar.Draw(t, "scalar")}
	}
	n := &Node{Kind: Kind(kind)}
	seen := map[string]bool{"": true}
	for range rapid.IntRange(0, 3).Draw(t, "parts") {
		k := scalar.Draw(t, "key")
		if n.Kind == List {
			n.Items = append(n.Items, tree(t, deep-1))
		} else if !seen[k] {
			seen[k] = true
			n.Entries = append(n.Entries, Entry{Key: k, Value: tree(t, deep-1)})
		}
	}
	return n
}
