package text

import (
	"strings"
	"testing"
)

// hostile values: what a person pastes, and what somebody sends who means harm.
var hostile = []string{
	"x", "", " ", "~", "null", "no", "# x", "a # x", "a: b", "a:", ": a", "- a", "? a", "{", "}", "[", "]", "{a", "a}", "[a, b", ",", "a, b", "'", "''", "'a", "\"", "\"a", "a\"b",
	"8' 2-3/8\"", "'8' 2\"", "&a", "*a", "!a", "!!str a", "|", ">", "|-", "%", "@", "`", "---", "...", "--- a", "<<", "=", "\\", "\\n", "a\nb", "a\r\nb", "\n", "\t", "a\tb", "\u0085", "\u2028", "\ufeff",
	"\x00", "\x07", "\xff", "½ \" ⅜", "🛁", "#", "#1", "a > b", strings.Repeat("x", 5000), strings.Repeat("[", 200), strings.Repeat("a: ", 50), "{a: {b: 1}}", "{<<: 1}", "{a: 1, a: 2}", "[&x 1, *x]", "1e999",
}

var layouts = []string{
	"k: old # c\nnext: 1\n", "k:\n  old: 1 # c\nnext: 1\n", "top: {k: old, next: 1} # c\n", "top:\n  - k: old # c\n    next: 1\n", "top: [{k: old}, 1] # c\n",
}

// Every value is written so that it reads back as what it says, or refused; the rest of the text stays.
func TestHostileValues(t *testing.T) {
	for _, src := range layouts {
		before, _ := Parse([]byte(src))
		path := pathTo(before, "k")
		for _, v := range hostile {
			got, found := Apply([]byte(src), []Op{{Do: Set, Path: path, Value: v}})
			if found.Stops() {
				if string(got) != src {
					t.Errorf("%q in %q is refused, and %q written", v, src, got)
				}
				continue
			}
			after, faults := Parse(got)
			if n := At(after, path); len(faults) > 0 || n == nil || !says(n, v) || !strings.Contains(string(got), "# c") {
				t.Errorf("%q in %q gives %q %v", v, src, got, faults)
			}
		}
	}
}

// The same as names.
func TestHostileNames(t *testing.T) {
	for _, src := range layouts {
		before, _ := Parse([]byte(src))
		path := pathTo(before, "k")
		for _, v := range hostile {
			got, found := Apply([]byte(src), []Op{{Do: Rename, Path: path, Value: v}})
			if found.Stops() {
				if string(got) != src {
					t.Errorf("%q in %q is refused, and %q written", v, src, got)
				}
				continue
			}
			after, faults := Parse(got)
			if len(faults) > 0 || At(after, append(path[:len(path)-1:len(path)-1], v)) == nil || At(after, path) != nil && v != "k" {
				t.Errorf("%q in %q gives %q %v", v, src, got, faults)
			}
		}
	}
}

// says reports whether a value is what was typed: as YAML where that is well formed, else as plain words.
func says(n *Node, typed string) bool {
	if n.Kind == Scalar && n.Text == strings.TrimSpace(typed) {
		return true
	}
	doc, faults := Parse([]byte("v: " + typed))
	v := doc.Get("v")
	return len(faults) == 0 && v != nil && Equal(v, n)
}

// pathTo finds a key anywhere.
func pathTo(n *Node, key string) []string {
	for _, e := range n.Entries {
		if e.Key == key {
			return []string{key}
		}
		if below := pathTo(e.Value, key); below != nil {
			return append([]string{e.Key}, below...)
		}
	}
	for i, c := range n.Items {
		if below := pathTo(c, key); below != nil {
			return append([]string{Item(i)}, below...)
		}
	}
	return nil
}

// Whatever the text and the operation: no panic, all or nothing, and the undo gives the tree back.
func FuzzApply(f *testing.F) {
	for i, src := range layouts {
		f.Add(src, uint8(i), "k", "top", hostile[i*7%len(hostile)], "k: 1 # c\n")
	}
	f.Add("a:\n  - 1\n  - 2\n", uint8(1), "#2", "a", "x", "")
	f.Fuzz(func(t *testing.T, src string, verb uint8, key, above, value, as string) {
		path := []string{key}
		if above != "" {
			path = []string{above, key}
		}
		op := Op{Do: Verb(verb % 4), Path: path, Value: value, As: as, Before: value}
		got, found := Apply([]byte(src), []Op{op})
		if found.Stops() {
			if string(got) != src {
				t.Fatalf("refused, but changed: %q", got)
			}
			return
		}
		was, _ := Parse([]byte(src))
		if now, faults := Parse(got); faults.Stops() {
			t.Fatalf("%q has faults: %v (%v)", got, faults, now)
		}
		ways := Back([]byte(src), got, op)
		for way := range ways {
			back, found := Apply(got, way)
			if tree, _ := Parse(back); !found.Stops() && Equal(tree, was) {
				return
			}
		}
		if was.Kind == Map && len(was.Entries) > 0 {
			t.Fatalf("%+v on %q gives %q, and nothing takes it back", op, src, got)
		}
	})
}
