package document

import (
	"cmp"
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// naming gives the kinds that a renamed thing is referred to as, or nil where the operation renames nothing that has
// references.
func naming(op Op) []string {
	switch {
	case op.Do != text.Rename:
		return nil
	case len(op.Path) == 2:
		return referred[op.Path[0]]
	case len(op.Path) == 3:
		if kinds, ok := inGroups[op.Path[0]+" > "+op.Path[1]]; ok {
			return kinds
		}
		return nil
	}
	return nil
}

// inGroups are the kinds of what has its name one level deeper.
var inGroups = map[string][]string{
	"buying > suppliers": {"supplier"}, "survey > corners": {"corner", "point"}, "survey > points": {"point"},
	"days > hands": {"hand"}, "days > jobs": {"job"},
}

// referred are the kinds as which the things of a collection are referred to; the last few only by what may still move.
var referred = map[string][]string{
	"walls": {"wall", "face"}, "openings": {"opening", "face"}, "center lines": {"center line"}, "stub-outs": {"stub-out"},
	"tiles": {"tile"}, "goods": {"good"}, "stock": {"stock"}, "cabinets": {"cabinet"}, "tops": {"top"}, "trim": {"trim"},
	"basins": {"basin"}, "taps": {"tap"}, "WCs": {"WC"},
	"boxes": {"box"}, "wastes": {"waste"}, "stops": {"stop valve"}, "fittings": {"fitting"}, "people": {"person"},
}

// pointPath reports whether a path leads to the name of a corner or a point, which is a word of a list and no key.
func pointPath(path []string) bool {
	return len(path) == 3 && path[0] == "survey" && (path[1] == "corners" || path[1] == "points")
}

// rename renames a thing with all that refers to it, and checks that every reference reads back.
func rename(src []byte, op Op, kinds []string) ([]byte, diag.List) {
	tree, faults := text.Parse(src)
	if faults.Stops() {
		return text.Apply(src, []Op{op})
	}
	n := renaming{kinds, op.Path[len(op.Path)-1], op.Value}
	before := referencesIn(tree)
	if n.taken(before.names) {
		return src, n.refuse(tree, op.Path, "another thing has that name")
	}
	out, found := text.Apply(src, n.steps(tree, before, op))
	if found.Stops() {
		return src, found
	}
	after, _ := text.Parse(out)
	if !n.kept(before, referencesIn(after)) {
		return src, n.refuse(tree, op.Path, "what refers to it could not be read any more")
	}
	return out, found
}

// steps gives the operations on the text that a renaming is made of.
func (n renaming) steps(tree *text.Node, in references, op Op) []Op {
	return slices.Concat(n.follow(tree, in.refs), n.ways(tree, op), n.jobs(tree, in.names), n.atHome(tree, op))
}

// ways renames the keys of "may move" that lead through the renamed thing to a figure, whatever else bears its name.
func (n renaming) ways(tree *text.Node, op Op) []Op {
	if tree.Get(movesKey) == nil {
		return nil
	}
	r := &reader{units: (&reader{}).unitsOf(tree)}
	room, _ := root.read(r, tree)
	r.leadTo(tree, &room)
	var ops []Op
	for _, m := range room.Moves {
		words := splitWords(m.Words)
		i := slices.Index(words, n.old)
		if i < 0 || len(m.Path) < len(op.Path) || !slices.Equal(m.Path[:len(op.Path)], op.Path) {
			continue
		}
		words[i] = n.new
		ops = append(ops, Op{Do: text.Rename, Path: []string{movesKey, m.Words}, Value: strings.Join(words, " > ")})
	}
	return ops
}

// stepsOf gives the operations on the text that any operation is made of.
func stepsOf(src []byte, op Op) []Op {
	kinds := naming(op)
	if kinds == nil {
		return []Op{op}
	}
	tree, _ := text.Parse(src)
	n := renaming{kinds, op.Path[len(op.Path)-1], op.Value}
	return n.steps(tree, referencesIn(tree), op)
}

// renaming is a change of one name.
type renaming struct {
	kinds    []string
	old, new string
}

func (n renaming) refuse(tree *text.Node, path []string, why string) diag.List {
	var found diag.List
	at := tree.At
	for i := range path {
		if node := text.At(tree, path[:i+1]); node != nil {
			at = node.At
		}
	}
	found.Add(diag.Stop, "name-unusable", at, "{0} can not be called {1}: {2}", "choose another name",
		diag.T(short(n.old)), diag.T(short(n.new)), diag.T(why))
	return found
}

// taken reports whether something that is referred to in the same way has the new name already.
func (n renaming) taken(names map[string][]string) bool {
	return n.new != n.old && slices.ContainsFunc(n.kinds, func(k string) bool { return slices.Contains(names[k], n.new) })
}

// means reports whether a reference is to the renamed thing, and what it has to say instead.
func (n renaming) means(ref reference) (now string, yes bool) {
	if !slices.ContainsFunc(ref.kinds, func(k string) bool { return slices.Contains(n.kinds, k) }) {
		return ref.name, false
	}
	if ref.name == n.old && (n.kinds[0] != "opening" || slices.Contains(ref.kinds, "opening")) {
		return n.new, true
	}
	if part, ok := strings.CutPrefix(ref.name, n.old+" > "); ok && n.kinds[0] == "opening" && slices.Contains(ref.kinds, "face") {
		return n.new + " > " + part, true
	}
	return ref.name, false
}

// references are all that a document refers to, in its order, and all names that it gives.
type references struct {
	refs  []reference
	names map[string][]string
}

// referencesIn reads them whatever else is wrong with the document, its version included.
func referencesIn(tree *text.Node) references {
	r := &reader{units: (&reader{}).unitsOf(tree)}
	room, _ := root.read(r, tree)
	return references{r.refs, room.names()}
}

// kept reports whether a document refers to the same things as before, by the new name.
func (n renaming) kept(before, after references) bool {
	same := slices.EqualFunc(before.refs, after.refs, func(a, b reference) bool {
		name, _ := n.means(a)
		return name == b.name && slices.Equal(a.kinds, b.kinds)
	})
	for kind, names := range before.names {
		same = same && slices.EqualFunc(names, after.names[kind], func(a, b string) bool {
			name, _ := n.means(reference{kinds: []string{kind}, name: a})
			return name == b
		})
	}
	return same
}

// follow gives the operations that make references say the new name: values first, then keys, the deepest first, so
// that no path changes before it is used.
func (n renaming) follow(tree *text.Node, refs []reference) []Op {
	spots := map[diag.Place]spot{}
	standing(tree, nil, spots)
	var ops []Op
	done := map[diag.Place]bool{}
	for _, ref := range refs {
		s, there := spots[placeOf(ref.at)]
		now, mine := n.means(ref)
		if !there || !mine || done[placeOf(ref.at)] {
			continue
		}
		done[placeOf(ref.at)] = true
		ops = append(ops, s.rename(ref, now))
	}
	slices.SortStableFunc(ops, func(a, b Op) int {
		return cmp.Or(cmp.Compare(a.Do, b.Do), cmp.Compare(len(b.Path), len(a.Path)))
	})
	return ops
}

// placeOf drops the path, which is written with > between keys that may have one.
func placeOf(at diag.Place) diag.Place { return diag.Place{Line: at.Line, Column: at.Column} }

// spot is where a name can stand: a key, or a single value.
type spot struct {
	path  []string
	key   bool
	typed string
}

// standing lists the spots of a tree by place.
func standing(n *text.Node, path []string, spots map[diag.Place]spot) {
	for _, e := range n.Entries {
		here := append(slices.Clone(path), e.Key)
		spots[placeOf(e.At)] = spot{here, true, e.Key}
		standing(e.Value, here, spots)
	}
	for i, c := range n.Items {
		standing(c, append(slices.Clone(path), text.Item(i)), spots)
	}
	if n.Kind == text.Scalar {
		spots[placeOf(n.At)] = spot{path, false, n.Text}
	}
}

func (s spot) rename(ref reference, now string) Op {
	typed := renameIn(s.typed, ref.name, now)
	if s.key {
		return Op{Do: text.Rename, Path: s.path, Value: typed}
	}
	return Op{Do: text.Set, Path: s.path, Value: text.Typed(typed)}
}

// renameIn changes a name in the text that refers to it: alone, as an end of a line A-B, or as what a place counts from.
func renameIn(typed, old, now string) string {
	plain := strings.Join(strings.Fields(typed), " ")
	m := acrossPattern.FindStringSubmatchIndex(plain)
	counts := m != nil && plain[m[10]:m[11]] == old
	at := strings.LastIndex(typed, old)
	switch left, right, isLine := strings.Cut(typed, "-"); {
	case counts && plain == typed:
		return typed[:m[10]] + now + typed[m[11]:]
	case at >= 0 && (counts || strings.TrimSpace(typed) == old || plain == "on "+old):
		return typed[:at] + now + typed[at+len(old):]
	case isLine:
		return end(left, old, now) + "-" + end(right, old, now)
	}
	return typed
}

func end(s, old, now string) string {
	if strings.TrimSpace(s) == old {
		return strings.Replace(s, old, now, 1)
	}
	return s
}

// atHome gives the operation that changes the name where it is given.
func (n renaming) atHome(tree *text.Node, op Op) []Op {
	if !pointPath(op.Path) {
		return []Op{op}
	}
	list := text.At(tree, op.Path[:2])
	switch {
	case list == nil:
		return []Op{op}
	case list.Kind == text.Scalar:
		return n.inWords(list, op.Path[:2])
	}
	for i, c := range list.Items {
		if ops := n.inWords(c, append(slices.Clone(op.Path[:2]), text.Item(i))); ops[0].Do == text.Set {
			return ops
		}
	}
	return []Op{op} // there is none, as the text will say
}

// inWords changes one of several words.
func (n renaming) inWords(list *text.Node, path []string) []Op {
	rest := list.Text
	for done := ""; rest != ""; {
		word := rest[:len(rest)-len(strings.TrimLeftFunc(rest, func(c rune) bool { return !separates(c) }))]
		if word == n.old {
			return []Op{{Do: text.Set, Path: path, Value: text.Typed(done + n.new + rest[len(word):])}}
		}
		gap := rest[len(word):]
		gap = gap[:len(gap)-len(strings.TrimLeftFunc(gap, separates))]
		done, rest = done+word+gap, rest[len(word)+len(gap):]
	}
	return []Op{{Do: text.Rename, Path: append(slices.Clone(path), n.old), Value: n.new}}
}
