package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// Op is one change to a document: set, add, remove or rename at a path of keys.
type Op = text.Op

// Apply makes changes to the text of a document in place, all or none, and keeps comments, order and layout of what is
// not changed. It looks at the text alone: whether the changed document makes sense is for Read to say.
//
// What is renamed where it gets its name keeps its references: they are renamed with it, and the same names are
// reached by the same keys before and after, or nothing is done. Walls, openings, center lines and tiles get their names
// as keys; corners and points get theirs in a list of words, so that the path to rename corner A is survey, corners, A.
//
// Where a path comes to a list, "#2" stands for its second value, to set, take out, or add in front of. A place in a list
// is no name: it can not be renamed, and Merge takes a list as one value, since a place means another thing when somebody
// has added to the list.
func Apply(src []byte, ops []Op) ([]byte, diag.List) {
	var found diag.List
	out := src
	for _, op := range ops {
		next, told := applyOne(out, op)
		found = append(found, told...)
		if told.Stops() {
			return src, found
		}
		out = next
	}
	return out, found
}

// ApplyTo makes changes as Apply does, to a text that is parsed already; the tree of what comes out comes with it.
func ApplyTo(src text.Source, ops []Op) (text.Source, diag.List) {
	for _, op := range ops {
		if naming(op) != nil {
			out, found := Apply(src.Src, ops)
			return text.Parsed(out), found
		}
	}
	return src.Apply(ops)
}

func applyOne(src []byte, op Op) ([]byte, diag.List) {
	if kinds := naming(op); kinds != nil {
		return rename(src, op, kinds)
	}
	return text.Apply(src, []Op{op})
}
