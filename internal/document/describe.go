package document

import (
	"bytes"
	"slices"
	"strings"

	"dryfit/internal/text"
)

// Change is one difference between two texts of a document, in the document's own words.
type Change struct {
	Do       text.Verb // Set: another value
	Moved    bool      // of an Add: it was there and now stands elsewhere among its neighbors
	Path     []string  // with the names as they are now; of a rename, and of what is gone, as they were
	Was, Now string    // the values as typed; of a rename the two names
}

// Changes lists what differs between two texts of a document. A name that was changed is told once, and not at each of
// its references. Comments and layout are not looked at.
func Changes(before, after []byte) []Change {
	var all []Change
	for _, op := range renamesBetween(before, after) {
		next, found := Apply(before, []Op{op})
		if found.Stops() {
			continue
		}
		before = next
		all = append(all, Change{Do: text.Rename, Path: op.Path, Was: op.Path[len(op.Path)-1], Now: op.Value})
	}
	was, _ := text.Parse(before)
	now, _ := text.Parse(after)
	return append(all, told(nil, was, now)...)
}

// told words the operations that make one tree into another.
func told(above []string, was, now *text.Node) []Change {
	var all []Change
	for _, op := range text.Diff(was, now) {
		a, b := text.At(was, op.Path), text.At(now, op.Path)
		path := slices.Concat(above, op.Path)
		switch {
		case op.Do == text.Remove && b != nil: // told where it is added again
		case op.Do == text.Set && inStep(a, b):
			all = append(all, inList(path, a, b)...)
		case op.Do == text.Add && a != nil && !text.Equal(a, b):
			all = append(all, Change{Do: text.Add, Moved: true, Path: path, Was: typed(a), Now: typed(b)})
		case op.Do == text.Add && a != nil:
			all = append(all, Change{Do: text.Add, Moved: true, Path: path})
		default:
			all = append(all, Change{Do: op.Do, Path: path, Was: typed(a), Now: typed(b)})
		}
	}
	return all
}

// inStep reports whether two lists hold groups of keys that can be told one by one.
func inStep(a, b *text.Node) bool {
	return a.Kind == text.List && b.Kind == text.List && slices.EqualFunc(a.Items, b.Items, func(a, b *text.Node) bool {
		return text.Equal(a, b) || a.Kind == text.Map && b.Kind == text.Map
	})
}

func inList(path []string, a, b *text.Node) []Change {
	var all []Change
	for i := range a.Items {
		all = append(all, told(append(slices.Clone(path), text.Item(i)), a.Items[i], b.Items[i])...)
	}
	return all
}

// typed gives a value as a person typed it.
func typed(n *text.Node) string {
	switch {
	case n == nil:
		return ""
	case n.Kind == text.Empty:
		return "nothing"
	case n.Kind == text.Scalar:
		return n.Text
	}
	return text.Flow(n)
}

// Say words a change: "survey > tape > A-C: was 119-3/4, now 119-7/8".
func (c Change) Say() string {
	where := strings.Join(c.Path, " > ")
	switch {
	case c.Moved && c.Now == "":
		return "moved " + where
	case c.Moved:
		return "moved " + where + ": was " + c.Was + ", now " + c.Now
	case c.Do == text.Add:
		return "added " + where + ": " + c.Now
	case c.Do == text.Remove:
		return "removed " + where + ": was " + c.Was
	case c.Do == text.Rename:
		return "renamed " + where + " to " + c.Now
	}
	return where + ": was " + c.Was + ", now " + c.Now
}

// Describe words the changes between two texts of a document, one line each; none for equal texts.
func Describe(before, after []byte) []string {
	var lines []string
	for _, c := range Changes(before, after) {
		lines = append(lines, c.Say())
	}
	if len(lines) == 0 && !bytes.Equal(before, after) {
		return []string{"comments or layout alone"}
	}
	return lines
}
