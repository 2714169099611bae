package text

import (
	"testing"

	"pgregory.net/rapid"
)

// The operations that Diff gives make the one tree into the other, in the text, whatever the trees.
func TestDiffMakesTheOther(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := group(t), group(t)
		src := []byte("# head\n" + blockOf(a))
		got, found := Apply(src, Diff(a, b))
		tree, _ := Parse(got)
		if found.Stops() || !Equal(tree, b) && len(b.Entries) > 0 {
			t.Fatalf("%q to %s gives %q: %v", src, Flow(b), got, found)
		}
	})
}

// group draws a map: the top of a document.
func group(t *rapid.T) *Node {
	n := &Node{Kind: Map}
	for _, k := range rapid.SliceOfNDistinct(rapid.SampledFrom([]string{"a", "b", "c", "d e", "f: g"}), 0, 5, rapid.ID).Draw(t, "keys") {
		n.Entries = append(n.Entries, Entry{Key: k, Value: tree(t, 2)})
	}
	return n
}

// blockOf writes a map with each of its keys on a line.
func blockOf(n *Node) string {
	s := ""
	for _, e := range n.Entries {
		s += Quote(e.Key) + ": " + Flow(e.Value) + " # c\n"
	}
	return s
}

// The least that can be said is said: keys that stay are not touched, one that moves is taken out and added.
func TestDiff(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want []string
	}{
		{"a: 1", "a: 1", nil},
		{"a: 1", "a: 2", []string{"set a"}},
		{"a: {b: 1, c: 2}", "a: {b: 1, c: 3}", []string{"set c"}},
		{"a: 1\nb: 2\nc: 3", "b: 2\nc: 3\na: 1", []string{"remove a", "add a"}},
		{"a: 1\nb: 2\nc: 3", "c: 3\na: 1\nb: 2", []string{"remove c", "add c"}},
		{"a: 1\nb: 2", "a: 1\nx: 9\nb: 2", []string{"add x"}},
		{"a: [1, 2]", "a: [1, 3]", []string{"set a"}},
		{"a: {b: 1}", "a: 1", []string{"set a"}},
		{"", "a: 1", []string{"add a"}},
		{"a: 1", "", []string{"remove a"}},
	} {
		a, _ := Parse([]byte(c.a))
		b, _ := Parse([]byte(c.b))
		ops := Diff(a, b)
		if len(ops) != len(c.want) {
			t.Errorf("%q to %q: %v", c.a, c.b, ops)
			continue
		}
		for i, op := range ops {
			if got := op.Do.String() + " " + op.Path[len(op.Path)-1]; got != c.want[i] {
				t.Errorf("%q to %q: %s, want %s", c.a, c.b, got, c.want[i])
			}
		}
	}
}
