package document

import (
	"bytes"
	"iter"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// Invert gives the operations that undo others: applied to what ops make of src, they give src again, byte for byte where
// no entry had to be written anew, else all its values in their order. They can also be applied to a later text, by Merge.
// The findings say why ops can not be applied, or not be undone; then there are no operations.
func Invert(src []byte, ops []Op) ([]Op, diag.List) {
	var all []Op
	var found diag.List
	for _, op := range ops {
		next, told := applyOne(src, op)
		found = append(found, told...)
		if told.Stops() {
			return nil, found
		}
		back, told := undoOne(src, next, op)
		if told.Stops() {
			return nil, append(found, told...)
		}
		all = slices.Concat(back, all)
		src = next
	}
	return all, found
}

// undoOne tries the ways to undo one operation: the first that gives the bytes, else the first that gives the values
// and the comments, else the values.
func undoOne(before, after []byte, op Op) ([]Op, diag.List) {
	if bytes.Equal(before, after) {
		return nil, nil
	}
	was, _ := text.Parse(before)
	var best []Op
	most := -1
	var refused diag.List
	for way := range waysBack(was, before, after, op) {
		got, found := Apply(after, way)
		switch tree, _ := text.Parse(got); {
		case found.Stops():
			refused = found
		case bytes.Equal(got, before):
			return way, nil
		case same(tree, was) && commentLines(got) > most:
			best, most = way, commentLines(got)
		}
	}
	if most < 0 {
		return nil, refused
	}
	return best, nil
}

// same reports whether two trees are equal; a document without keys is one without anything.
func same(a, b *text.Node) bool {
	return text.Equal(a, b) || len(a.Entries)+len(a.Items)+len(a.Text)+len(b.Entries)+len(b.Items)+len(b.Text) == 0
}

// commentLines counts lines with a mark that may start a comment.
func commentLines(src []byte) int {
	n := 0
	for line := range bytes.Lines(src) {
		if bytes.HasPrefix(line, []byte("#")) || bytes.Contains(line, []byte(" #")) {
			n++
		}
	}
	return n
}

// waysBack adds to the ways of the text one for a name: call it as before, then set right what already said the new name
// and was none of its references.
func waysBack(was *text.Node, before, after []byte, op Op) iter.Seq[[]Op] {
	return func(yield func([]Op) bool) {
		named := naming(op) != nil
		for way := range text.Back(before, after, op) {
			if !yield(way) || named && !yield(alsoSetRight(was, after, way)) {
				return
			}
			named = false
		}
	}
}

func alsoSetRight(was *text.Node, after []byte, way []Op) []Op {
	called, _ := Apply(after, way)
	tree, _ := text.Parse(called)
	return slices.Concat(way, text.Diff(tree, was))
}
