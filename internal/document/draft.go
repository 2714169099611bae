package document

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Draft is a document to try changes on: its text is parsed once, and read again with single values replaced. What it reads is what
// Read would of the changed text, but for places behind a changed value on its line. It is for one goroutine.
type Draft struct {
	name    string
	tree    *text.Node
	found   diag.List
	lengths map[lengthKey]unit.Length // those that were read before, by their text
}

// NewDraft parses a document's text.
func NewDraft(name string, src []byte) Draft { return DraftOf(name, text.Parsed(src)) }

// DraftOf begins from a text that is parsed already. Its tree is not changed.
func DraftOf(name string, src text.Source) Draft {
	return Draft{name, src.Tree, src.Faults, map[lengthKey]unit.Length{}}
}

// Text returns the single value at a path, as it stands.
func (d Draft) Text(path []string) (string, bool) {
	n := text.At(d.tree, path)
	if n == nil || n.Kind != text.Scalar {
		return "", false
	}
	return n.Text, true
}

// With reads the document as it would be with the values of these operations, all of which set a single value that is there.
// False: one of them does not.
func (d Draft) With(ops []Op) (Room, diag.List, bool) {
	tree := d.tree
	for _, op := range ops {
		next, ok := text.WithText(tree, op.Path, op.Value)
		if op.Do != text.Set || !ok {
			return Room{}, nil, false
		}
		tree = next
	}
	room, found := (&reader{found: slices.Clone(d.found), lengths: d.lengths}).document(d.name, tree)
	return room, found, true
}
