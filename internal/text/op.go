package text

import (
	"fmt"
	"slices"
)

// Verb is what an operation does.
type Verb uint8

const (
	Set    Verb = iota // give the key at the path this value; the key and the keys above it come into being where needed
	Add                // as Set, but the key must not be there yet
	Remove             // take the key and its value out
	Rename             // give the key this name; its value and its place stay
)

var verbs = [...]string{"set", "add", "remove", "rename"}

func (v Verb) String() string { return verbs[v] }

// MarshalText writes the verb as a word, so that kept operations can be read by a person and by later versions.
func (v Verb) MarshalText() ([]byte, error) { return []byte(v.String()), nil }

// UnmarshalText reads the word.
func (v *Verb) UnmarshalText(b []byte) error {
	i := slices.Index(verbs[:], string(b))
	if i < 0 {
		return fmt.Errorf("there is no operation %q", b)
	}
	*v = Verb(i)
	return nil
}

// Op is one change to a document. A path is made of keys; where it comes to a list, "#2" stands for the second value of
// the list, and to add "#2" puts a value in front of it. The values of a list have no names.
type Op struct {
	Do     Verb     `json:"do"`
	Path   []string `json:"path"`
	Value  string   `json:"value,omitempty"`  // of set and add: what would stand behind the colon, on one line; of rename: the new name
	Before string   `json:"before,omitempty"` // of a key that comes into being: the key that it goes in front of; empty or gone: it is the last
	As     string   `json:"as,omitempty"`     // of set and add: the same value as it stood in a text, with its lines and comments; used where it fits
}

// on applies an operation to a tree and returns the new tree; the old one stays as it is. Why says why it can not be.
func (op Op) on(n *Node, path []string, value *Node) (_ *Node, why string) {
	if n.Kind == Empty && (op.Do == Set || op.Do == Add) {
		n = &Node{Kind: Map}
	}
	if n.Kind == List {
		return op.onList(n, path, value)
	}
	if n.Kind != Map {
		return nil, "there are no keys here"
	}
	i := n.index(path[0])
	out := *n
	out.Entries = slices.Clone(n.Entries)
	if len(path) > 1 {
		return op.below(&out, i, path, value)
	}
	switch {
	case op.Do == Add && i >= 0:
		return nil, "there is one already"
	case (op.Do == Remove || op.Do == Rename) && i < 0:
		return nil, "there is none"
	case op.Do == Remove:
		out.Entries = slices.Delete(out.Entries, i, i+1)
	case op.Do == Rename && op.Value != path[0] && n.Get(op.Value) != nil:
		return nil, "there is one of that name already"
	case op.Do == Rename:
		out.Entries[i].Key = op.Value
	case i >= 0:
		out.Entries[i].Value = value
	default:
		out.Entries = slices.Insert(out.Entries, n.place(op.Before), Entry{Key: path[0], Value: value})
	}
	return &out, ""
}

// below goes one key further down.
func (op Op) below(out *Node, i int, path []string, value *Node) (_ *Node, why string) {
	if i < 0 && (op.Do == Remove || op.Do == Rename) {
		return nil, "there is none"
	}
	child := &Node{Kind: Map}
	if i >= 0 {
		child = out.Entries[i].Value
	}
	child, why = op.on(child, path[1:], value)
	if why != "" {
		return nil, why
	}
	if i < 0 {
		out.Entries = append(out.Entries, Entry{Key: path[0], Value: child})
	} else {
		out.Entries[i].Value = child
	}
	return out, ""
}

// onList applies an operation to a value of a list, or below one.
func (op Op) onList(n *Node, path []string, value *Node) (_ *Node, why string) {
	i, ok := item(path[0])
	out := *n
	out.Items = slices.Clone(n.Items)
	last := len(path) == 1
	switch {
	case !ok:
		return nil, "a list has no keys; #1 is its first value"
	case last && op.Do == Rename:
		return nil, "a value of a list has no name"
	case last && op.Do == Add && i <= len(n.Items):
		out.Items = slices.Insert(out.Items, i, value)
	case i >= len(n.Items):
		return nil, "the list is shorter"
	case last && op.Do == Remove:
		out.Items = slices.Delete(out.Items, i, i+1)
	case last:
		out.Items[i] = value
	default:
		out.Items[i], why = op.on(n.Items[i], path[1:], value)
	}
	return &out, why
}

// Equal reports whether two trees hold the same keys and values in the same order, wherever they stand.
func Equal(a, b *Node) bool {
	if a.Kind != b.Kind || a.Text != b.Text {
		return false
	}
	return slices.EqualFunc(a.Items, b.Items, Equal) &&
		slices.EqualFunc(a.Entries, b.Entries, func(a, b Entry) bool { return a.Key == b.Key && Equal(a.Value, b.Value) })
}
