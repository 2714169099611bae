package document

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// Clash is one value that two people changed, each to something else. The values are as they would stand behind the
// colon; an empty one says that there is none.
type Clash struct {
	Path               []string // in the head
	Was, Theirs, Yours string
}

// Merged is what came of putting one person's operations on a text that has moved on since. With a clash or a finding
// that stops, nothing is changed: Text is the head and Ops is empty.
type Merged struct {
	Text    []byte
	Ops     []Op // what made Text from the head, and is to be kept
	Clashes []Clash
	Found   diag.List
}

// Merge applies ops, which were made on base, to head, which headOps made from base. Where nothing is known of how head
// came about (an uploaded text), headOps is nil. Two changes clash where the path of one equals, contains or lies in the
// path of the other and the results differ; the same change made twice is none.
func Merge(base, head []byte, headOps, ops []Op) Merged {
	old, _ := text.Parse(base)
	now, _ := text.Parse(head)
	m := Merged{Text: head}
	for _, op := range ops {
		was, is := nodeAt(old, op.Path), nodeAt(now, op.Path)
		if flow(was) != flow(is) && flow(is) != op.Value {
			m.Clashes = append(m.Clashes, Clash{Path: op.Path, Was: flow(was), Theirs: flow(is), Yours: op.Value})
		}
	}
	if len(m.Clashes) > 0 {
		return m
	}
	out, found := Apply(head, ops)
	m.Found = found
	if !found.Stops() {
		m.Text, m.Ops = out, slices.Clone(ops)
	}
	return m
}

func nodeAt(n *text.Node, path []string) *text.Node {
	for _, k := range path {
		if n = n.Get(k); n == nil {
			return nil
		}
	}
	return n
}

// flow writes a node on one line; nothing is nothing.
func flow(n *text.Node) string {
	if n == nil {
		return ""
	}
	return text.Flow(n)
}
