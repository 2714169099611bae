package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// Op is one change to a document: set, add, remove or rename at a path of keys.
type Op = text.Op

// Apply makes changes to the text of a document in place, all or none, and keeps comments, order and layout of what is
// not changed. It looks at the text alone: whether the changed document makes sense is for Read to say. A name that
// other keys refer to is renamed where it stands; the references are operations of their own.
func Apply(src []byte, ops []Op) ([]byte, diag.List) { return text.Apply(src, ops) }
