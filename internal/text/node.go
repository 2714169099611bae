package text

import (
	"slices"
	"strconv"
	"strings"

	"dryfit/internal/diag"
)

// Kind is what a node is.
type Kind uint8

const (
	Empty Kind = iota // a key with nothing behind it
	Scalar
	List
	Map
)

func (k Kind) String() string {
	return [...]string{"nothing", "a single value", "a list", "a group of keys"}[k]
}

// Node is one value of the tree.
type Node struct {
	Kind    Kind
	Text    string // of a scalar, unquoted
	Quoted  bool
	Flow    bool    // a list in [ ] or a map in { }
	AsIs    bool    // the text stands letter for letter at its place, behind the quote mark if it is quoted
	Items   []*Node // of a list
	Entries []Entry // of a map, in document order, each key once
	At      diag.Place
}

// Entry is one key of a map with its value.
type Entry struct {
	Key   string
	At    diag.Place // of the key
	Value *Node
}

// Get returns the value of a key, or nil.
func (n *Node) Get(key string) *Node {
	for _, e := range n.Entries {
		if e.Key == key {
			return e.Value
		}
	}
	return nil
}

// At returns the node at a path of keys and of places in lists ("#2"), or nil.
func At(n *Node, path []string) *Node {
	for _, k := range path {
		e, ok := n.child(k)
		if !ok {
			return nil
		}
		n = e.Value
	}
	return n
}

// child gives the entry of a key, or of a place in a list. A value of a list stands for itself: it has no key.
func (n *Node) child(key string) (Entry, bool) {
	if i, ok := item(key); ok && n.Kind == List && i < len(n.Items) {
		return Entry{At: n.Items[i].At, Value: n.Items[i]}, true
	}
	if i := n.index(key); i >= 0 {
		return n.Entries[i], true
	}
	return Entry{}, false
}

// Item gives the part of a path that stands for a place in a list, counted from 0.
func Item(i int) string { return "#" + strconv.Itoa(i+1) }

// item reads a place in a list.
func item(key string) (i int, ok bool) {
	digits, ok := strings.CutPrefix(key, "#")
	n, err := strconv.Atoi(digits)
	if !ok || err != nil || n < 1 || Item(n-1) != key {
		return 0, false
	}
	return n - 1, true
}

// index finds a key among the entries, or -1.
func (n *Node) index(key string) int {
	return slices.IndexFunc(n.Entries, func(e Entry) bool { return e.Key == key })
}

// place gives where a new entry goes: in front of a key, or behind all.
func (n *Node) place(before string) int {
	if i := n.index(before); i >= 0 {
		return i
	}
	return len(n.Entries)
}

// Join adds one key to a path.
func Join(path, key string) string {
	if path == "" {
		return key
	}
	return path + " > " + key
}

// WithText returns the tree with another text in the single value at a path; the old tree stays as it is. False: there is no
// single value there.
func WithText(n *Node, path []string, to string) (*Node, bool) {
	if len(path) == 0 {
		if n.Kind != Scalar {
			return nil, false
		}
		return &Node{Kind: Scalar, Text: to, At: n.At}, true
	}
	e, ok := n.child(path[0])
	if !ok {
		return nil, false
	}
	below, ok := WithText(e.Value, path[1:], to)
	if !ok {
		return nil, false
	}
	out := *n
	if i, isItem := item(path[0]); isItem && n.Kind == List {
		out.Items = slices.Clone(n.Items)
		out.Items[i] = below
		return &out, true
	}
	out.Entries = slices.Clone(n.Entries)
	out.Entries[n.index(path[0])].Value = below
	return &out, true
}
