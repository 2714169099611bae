package text

import (
	"slices"
	"strings"

	"dryfit/internal/diag"
)

// Apply makes changes to the text of a document in place: comments, order and layout of all that is not changed stay
// byte for byte. It does all of the operations or none. After each one the new text is parsed, and its tree must equal
// the operation on the old tree; where the small change does not give that, the smallest entry round it is written
// anew on one line (its comments are lost, and a note says so); where that fails too, the change is refused.
func Apply(src []byte, ops []Op) ([]byte, diag.List) {
	var found diag.List
	out := src
	for _, op := range ops {
		next, ok := apply(out, op, &found)
		if !ok {
			return src, found
		}
		out = next
	}
	return out, found
}

func apply(src []byte, op Op, found *diag.List) ([]byte, bool) {
	tree, faults := Parse(src)
	if faults.Stops() {
		*found = append(*found, faults...)
		found.Add(diag.Stop, "edit-of-broken-text", tree.At, "the text has faults, so it can not be changed safely", "mend them in the text first")
		return nil, false
	}
	value, why := op.value()
	if why == "" && len(op.Path) == 0 {
		why = "it names no key"
	}
	var want *Node
	if why == "" {
		want, why = op.on(tree, op.Path, value)
	}
	if why != "" {
		found.Add(diag.Stop, "edit-impossible", near(tree, op.Path), "{0} {1} can not be done: {2}", "look at the document as it is now",
			diag.T(op.Do.String()), diag.T(strings.Join(op.Path, " > ")), diag.T(why))
		return nil, false
	}
	if out, ok := splice(src, tree, want, op, value); ok {
		return out, true
	}
	return rewrite(src, tree, want, op, found)
}

// value gives the tree of what an operation writes. What is no YAML by itself is taken as plain words.
func (op Op) value() (_ *Node, why string) {
	if strings.ContainsAny(op.Value, "\r\n") {
		return nil, "a value stands on one line"
	}
	if op.Do == Remove || op.Do == Rename {
		if op.Do == Rename && strings.TrimSpace(op.Value) == "" {
			return nil, "a name is needed"
		}
		return nil, ""
	}
	if op.Value == "~" {
		return &Node{}, ""
	}
	n, found := Parse([]byte("x: " + op.Value))
	v := n.Get("x")
	if len(found) > 0 || v == nil || len(n.Entries) != 1 || v.Kind == Empty && strings.TrimSpace(op.Value) != "" {
		return &Node{Kind: Scalar, Text: strings.TrimSpace(op.Value), Quoted: true}, ""
	}
	if v.Kind == Empty {
		return nil, "a value is needed; remove takes a key out"
	}
	return v, ""
}

// near gives the place of the last entry on a path that is there.
func near(n *Node, path []string) diag.Place {
	at := n.At
	for _, k := range path {
		i := slices.IndexFunc(n.Entries, func(e Entry) bool { return e.Key == k })
		if i < 0 {
			break
		}
		at, n = n.Entries[i].At, n.Entries[i].Value
	}
	return at
}

// splice makes the smallest change. It tries the value as typed, then in quotes.
func splice(src []byte, tree, want *Node, op Op, value *Node) ([]byte, bool) {
	for _, typed := range op.spellings(value) {
		p := newPage(src)
		cut, insert, ok := p.change(tree, op, typed)
		if !ok {
			continue
		}
		out := slices.Concat(src[:cut.from], []byte(insert), src[cut.to:])
		if is(out, want) {
			return out, true
		}
	}
	return nil, false
}

// is reports whether a text parses without a fault into a tree.
func is(src []byte, want *Node) bool {
	got, found := Parse(src)
	return len(found) == 0 && (Equal(got, want) || got.Kind == Empty && want.Kind == Map && len(want.Entries) == 0)
}

func (op Op) spellings(value *Node) []string {
	switch {
	case op.Do == Rename:
		return []string{Quote(op.Value)}
	case op.Do == Remove:
		return []string{""}
	}
	return []string{strings.TrimSpace(op.Value), Flow(value)}
}

// rewrite writes the smallest entry round the change anew, on one line.
func rewrite(src []byte, tree, want *Node, op Op, found *diag.List) ([]byte, bool) {
	for depth := len(op.Path) - 1; depth >= 1; depth-- {
		path := op.Path[:depth]
		old, anew := at(tree, path), at(want, path)
		if old == nil || anew == nil {
			continue
		}
		if out, ok := splice(src, tree, want, Op{Do: Set, Path: path, Value: Flow(anew)}, anew); ok {
			found.Add(diag.Note, "edit-rewrote", near(tree, path), "{0} was written anew on one line; comments inside it are gone", "", diag.T(strings.Join(path, " > ")))
			return out, true
		}
	}
	found.Add(diag.Stop, "edit-refused", near(tree, op.Path), "the text round {0} is laid out in a way that can not be changed safely", "change it in the text itself", diag.T(strings.Join(op.Path, " > ")))
	return nil, false
}

// at gives the node at a path, or nil.
func at(n *Node, path []string) *Node {
	for _, k := range path {
		if n = n.Get(k); n == nil {
			return nil
		}
	}
	return n
}
