package text

import "dryfit/internal/diag"

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

// Join adds one key to a path.
func Join(path, key string) string {
	if path == "" {
		return key
	}
	return path + " > " + key
}
