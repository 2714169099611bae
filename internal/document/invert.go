package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// Invert gives the operations that undo others: applied to what ops make of src, they give src again. The findings say
// why ops can not be applied; then there is nothing to undo.
func Invert(src []byte, ops []Op) ([]Op, diag.List) {
	after, found := Apply(src, ops)
	if found.Stops() {
		return nil, found
	}
	was, _ := text.Parse(src)
	now, _ := text.Parse(after)
	return text.Diff(now, was), found
}
