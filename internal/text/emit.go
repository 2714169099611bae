package text

import (
	"encoding/json"
	"strings"
)

// Flow writes a tree on one line, as it would stand behind a colon.
func Flow(n *Node) string {
	switch n.Kind {
	case Scalar:
		return Quote(n.Text)
	case List:
		all := make([]string, len(n.Items))
		for i, c := range n.Items {
			all[i] = Flow(c)
		}
		return "[" + strings.Join(all, ", ") + "]"
	case Map:
		all := make([]string, len(n.Entries))
		for i, e := range n.Entries {
			all[i] = Quote(e.Key) + ": " + Flow(e.Value)
		}
		return "{" + strings.Join(all, ", ") + "}"
	}
	return "~"
}

// Quote writes a scalar plainly where it reads back as itself, as key and as value, in a block and in brackets; else in
// double quotes.
func Quote(s string) string {
	if s != "" && !strings.ContainsAny(s, "\r\n") && readsPlainly(s) {
		return s
	}
	out := &strings.Builder{}
	enc := json.NewEncoder(out) // JSON strings are YAML's double-quoted scalars
	enc.SetEscapeHTML(false)
	if err := enc.Encode(s); err != nil {
		panic(err) // a string can not fail
	}
	return strings.TrimSuffix(out.String(), "\n")
}

// Typed writes a scalar as the value of an operation: as it is where it reads back as itself behind a colon, else quoted.
func Typed(s string) string {
	n := &Node{Kind: Map, Entries: []Entry{{Key: "x", Value: &Node{Kind: Scalar, Text: s}}}}
	if got, found := Parse([]byte("x: " + s)); len(found) == 0 && !strings.ContainsAny(s, "\r\n") && Equal(got, n) && !got.Get("x").Quoted {
		return s
	}
	return Quote(s)
}

// readsPlainly tries a scalar in each of the four places.
func readsPlainly(s string) bool {
	plain := &Node{Kind: Scalar, Text: s}
	pair := &Node{Kind: Map, Entries: []Entry{{Key: s, Value: plain}}}
	block, found1 := Parse([]byte(s + ": " + s))
	flow, found2 := Parse([]byte("[{" + s + ": " + s + "}, " + s + ", 1]"))
	return len(found1) == 0 && len(found2) == 0 && Equal(block, pair) && !block.Entries[0].Value.Quoted &&
		Equal(flow, &Node{Kind: List, Items: []*Node{pair, plain, {Kind: Scalar, Text: "1"}}})
}
