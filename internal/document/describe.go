package document

import (
	"strings"

	"dryfit/internal/text"
)

// Change is one difference between two texts of a document, in the document's own words.
type Change struct {
	Do       text.Verb // Set: another value
	Path     []string  // as it is now; of what is gone, as it was; of a rename, as it was
	Was, Now string    // the values as typed; of a rename the two names
}

// Changes lists what differs between two texts of a document, in the order of the document. Comments and layout are not
// looked at.
func Changes(before, after []byte) []Change {
	was, _ := text.Parse(before)
	now, _ := text.Parse(after)
	var all []Change
	for _, op := range text.Diff(was, now) {
		all = append(all, Change{op.Do, op.Path, flow(nodeAt(was, op.Path)), flow(nodeAt(now, op.Path))})
	}
	return all
}

// Say words a change: "survey > tape > A-C: was 119-3/4, now 119-7/8".
func (c Change) Say() string {
	where := strings.Join(c.Path, " > ")
	switch c.Do {
	case text.Add:
		return "added " + where + ": " + c.Now
	case text.Remove:
		return "removed " + where + ": " + c.Was
	case text.Rename:
		return "renamed " + where + " to " + c.Now
	}
	return where + ": was " + c.Was + ", now " + c.Now
}

// Describe words the changes between two texts of a document, one line each.
func Describe(before, after []byte) []string {
	all := Changes(before, after)
	lines := make([]string, len(all))
	for i, c := range all {
		lines[i] = c.Say()
	}
	return lines
}
