package document

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// Clash is one value that two people changed, each to something else. The values are as they would stand behind the
// colon; an empty one says that there is none. Where one of the two gave the thing a name, the value is that name.
type Clash struct {
	Path               []string // with the names of the head
	Was, Theirs, Yours string
}

// Merged is what came of putting one person's operations on a text that has moved on since. With a clash or a finding
// that stops, nothing is changed: Text is the head and Ops is empty.
type Merged struct {
	Text    []byte
	Ops     []Op // what made Text from the head, and is to be kept; none where the head says it all already
	Clashes []Clash
	Found   diag.List
}

// Merge applies ops, which were made on base, to head, which headOps made from base. Where nothing is known of how head
// came about (an uploaded text), headOps is nil. Two changes clash where the path of one equals, contains or lies in the
// path of the other and the results differ; the same change made twice is none. A list counts as one value: a place in it
// means another thing when somebody has added to it. A new name is no change of what bears it, and the other person's
// operations follow it, in their paths and in what they say.
func Merge(base, head []byte, headOps, ops []Op) Merged {
	if headOps == nil {
		headOps = renamesBetween(base, head)
	}
	g := merging{base: base, head: head, mine: base}
	g.takeNames(headOps)
	for _, op := range ops {
		if !g.step(op) {
			break
		}
	}
	if len(g.clashes) > 0 || g.found.Stops() {
		return Merged{Text: head, Clashes: g.clashes, Found: g.found}
	}
	return Merged{Text: g.head, Ops: g.ops, Found: g.found}
}

// merging carries three texts on, operation by operation: the base under the head's names, the head, and what the
// person saw. So an operation meets on base and on head what those before it have left, and what still differs there is
// the other person's.
type merging struct {
	base, head, mine []byte
	names            []Op // that the head gave
	ops              []Op
	clashes          []Clash
	found            diag.List
}

// takeNames gives the base the names of the head.
func (g *merging) takeNames(headOps []Op) {
	for _, op := range headOps {
		if op.Do != text.Rename {
			continue
		}
		if next, found := applyOne(g.base, op); !found.Stops() {
			g.base, g.names = next, append(g.names, op)
		}
	}
}

// step takes one operation over. It reports false where there is no going on.
func (g *merging) step(op Op) bool {
	mine, found := applyOne(g.mine, op)
	if found.Stops() {
		g.found = append(g.found, found...)
		return false
	}
	now, clash := g.translate(op, mine)
	g.mine = mine
	base, found := applyOne(g.base, now)
	switch {
	case clash != nil && found.Stops():
		base = g.base
	case found.Stops():
		return g.refused(now, found)
	}
	held := holding(g.base, base, g.head, now)
	switch {
	case clash != nil:
		g.clashes = append(g.clashes, *clash)
	case held.clash != nil:
		g.clashes = append(g.clashes, *held.clash)
	case held.done: // the base stays: what comes later at this path is held against what they made of it
		return true
	default:
		g.base = base
		return g.take(now)
	}
	g.base = base
	return true
}

// refused tells why an operation can not be done under the head's names: mostly because the head has given the name that
// it needs to another thing, or has taken out what is here taken out and added again.
func (g *merging) refused(op Op, found diag.List) bool {
	old, _ := text.Parse(g.base)
	now, _ := text.Parse(g.head)
	path, yours := op.Path, op.Value
	if op.Do == text.Rename {
		yours, path = flow(text.At(old, path)), append(slices.Clone(path[:len(path)-1]), op.Value)
	}
	was, theirs := flow(text.At(old, path)), flow(text.At(now, path))
	switch {
	case op.Do == text.Add && was != theirs:
		g.clashes = append(g.clashes, Clash{path, was, theirs, yours})
		return true
	case theirs != "" && op.Do != text.Remove:
		g.clashes = append(g.clashes, Clash{path, "", theirs, yours})
		return true
	case len(g.clashes) == 0: // after a clash later operations may well have nothing to stand on
		g.found = append(g.found, found...)
	}
	return false
}

// take applies an operation to the head.
func (g *merging) take(op Op) bool {
	head, found := applyOne(g.head, op)
	g.found = append(g.found, found...)
	if !found.Stops() {
		g.head, g.ops = head, append(g.ops, op)
	}
	return !found.Stops()
}

// held is what holding an operation against the head has shown.
type held struct {
	clash *Clash
	done  bool // the head says so already
}

// holding compares what an operation changes on the base with what stands there in the head.
func holding(base, next, head []byte, op Op) held {
	old, _ := text.Parse(base)
	mine, _ := text.Parse(next)
	now, _ := text.Parse(head)
	path := upToList(old, op.Path)
	if op.Do == text.Rename {
		return holdingName(old, now, path, op)
	}
	if gone := goneAbove(old, now, path); gone != nil {
		path = gone
	}
	was, theirs, yours := flow(text.At(old, path)), flow(text.At(now, path)), flow(text.At(mine, path))
	switch {
	case was == theirs:
		return held{}
	case theirs == yours:
		return held{done: true}
	}
	return held{clash: &Clash{path, was, theirs, yours}}
}

// holdingName looks whether the thing to be renamed is still there, and the name still free.
func holdingName(old, now *text.Node, path []string, op Op) held {
	last := len(path) - 1
	beside := append(slices.Clone(path[:last]), op.Value)
	was, theirs, other := text.At(old, path), text.At(now, path), text.At(now, beside)
	switch {
	case op.Value == path[last]:
		return held{done: true}
	case was != nil && theirs == nil:
		return held{clash: &Clash{path, flow(was), "", op.Value}}
	case pointPath(path) && !slices.Contains(pointsOf(text.At(now, path[:2])), path[last]):
		return held{clash: &Clash{path[:2], flow(text.At(old, path[:2])), flow(text.At(now, path[:2])), op.Value}}
	case other != nil && text.At(old, beside) == nil:
		return held{clash: &Clash{beside, "", flow(other), flow(was)}}
	}
	return held{}
}

// upToList cuts a path where it goes into a list.
func upToList(tree *text.Node, path []string) []string {
	for i := range path {
		if n := text.At(tree, path[:i]); n != nil && n.Kind == text.List {
			return path[:i]
		}
	}
	return path
}

// goneAbove gives the first part of a path that leads to keys in the base and to none in the head, or nil.
func goneAbove(old, now *text.Node, path []string) []string {
	for i := 1; i < len(path); i++ {
		was, is := text.At(old, path[:i]), text.At(now, path[:i])
		if was != nil && was.Kind == text.Map && (is == nil || is.Kind != text.Map) {
			return path[:i]
		}
	}
	return nil
}

// flow writes a node on one line; nothing is nothing.
func flow(n *text.Node) string {
	if n == nil {
		return ""
	}
	return text.Flow(n)
}
