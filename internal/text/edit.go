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
	if len(ops) == 0 {
		return src, nil
	}
	out, found := Parsed(src).Apply(ops)
	return out.Src, found
}

// Source is a text with its tree and what is wrong with it, for who needs more than one of them.
type Source struct {
	Src    []byte
	Tree   *Node
	Faults diag.List
}

// Parsed parses a text once and for all.
func Parsed(src []byte) Source {
	tree, faults := Parse(src)
	return Source{src, tree, faults}
}

// Apply makes changes as the function Apply does. The tree of the changed text comes with it; neither tree is changed.
func (s Source) Apply(ops []Op) (Source, diag.List) {
	var found diag.List
	if s.Faults.Stops() {
		found.Add(diag.Stop, "edit-of-broken-text", s.Tree.At, "the text has faults, so it can not be changed safely", "mend them in the text first")
		return s, append(slices.Clone(s.Faults), found...)
	}
	state := state{s.Src, s.Tree}
	for _, op := range ops {
		next, ok := state.apply(op, &found)
		if !ok {
			return s, found
		}
		state = next
	}
	if len(ops) == 0 {
		return s, found
	}
	return Source{state.src, state.tree, nil}, found // an edit is done only where the changed text has no fault
}

// state is a text without faults and its tree.
type state struct {
	src  []byte
	tree *Node
}

func (s state) apply(op Op, found *diag.List) (state, bool) {
	value, why := op.value()
	if why == "" && len(op.Path) == 0 {
		why = "it names no key"
	}
	var want *Node
	if why == "" {
		want, why = op.on(s.tree, op.Path, value)
	}
	if why != "" {
		found.Add(diag.Stop, "edit-impossible", near(s.tree, op.Path), "{0} {1} can not be done: {2}", "look at the document as it is now",
			diag.T(op.Do.String()), diag.T(strings.Join(op.Path, " > ")), diag.T(why))
		return s, false
	}
	if out, ok := s.splice(want, op, value); ok {
		return out, true
	}
	return s.rewrite(want, op, found)
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
		e, ok := n.child(k)
		if !ok {
			break
		}
		at, n = e.At, e.Value
	}
	return at
}

// splice makes the smallest change. It tries the value as it stood, as typed, then in quotes.
func (s state) splice(want *Node, op Op, value *Node) (state, bool) {
	p := newPage(s.src)
	try := func(cut span, insert string, ok bool) (state, bool) {
		if !ok {
			return s, false
		}
		return read(slices.Concat(s.src[:cut.from], []byte(insert), s.src[cut.to:]), want)
	}
	if op.As != "" {
		if out, ok := try(p.restore(s.tree, op)); ok {
			return out, true
		}
	}
	for _, typed := range op.spellings(value) {
		if out, ok := try(p.change(s.tree, op, typed)); ok {
			return out, true
		}
	}
	return s, false
}

// read parses a text and reports whether it is without a fault and says what is wanted.
func read(src []byte, want *Node) (state, bool) {
	got, found := Parse(src)
	none := got.Kind == Empty && want.Kind == Map && len(want.Entries) == 0
	return state{src, got}, len(found) == 0 && (none || Equal(got, want))
}

func (op Op) spellings(value *Node) []string {
	switch {
	case op.Do == Rename:
		return []string{Quote(op.Value)}
	case op.Do == Remove:
		return []string{""}
	}
	if value.Kind == Empty {
		return []string{"", "~"}
	}
	return []string{strings.TrimSpace(op.Value), Flow(value)}
}

// rewrite writes the smallest entry round the change anew, on one line.
func (s state) rewrite(want *Node, op Op, found *diag.List) (state, bool) {
	for depth := len(op.Path) - 1; depth >= 1; depth-- {
		path := op.Path[:depth]
		old, anew := At(s.tree, path), At(want, path)
		if old == nil || anew == nil {
			continue
		}
		if out, ok := s.splice(want, Op{Do: Set, Path: path, Value: Flow(anew)}, anew); ok {
			found.Add(diag.Note, "edit-rewrote", near(s.tree, path), "{0} was written anew on one line; comments inside it are gone", "", diag.T(strings.Join(path, " > ")))
			return out, true
		}
	}
	found.Add(diag.Stop, "edit-refused", near(s.tree, op.Path), "the text round {0} is laid out in a way that can not be changed safely", "change it in the text itself", diag.T(strings.Join(op.Path, " > ")))
	return s, false
}
