package document

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// reader carries what one reading of a document needs: the unit of bare numbers, the findings, and the names that
// were referred to and are looked up when all of the document is read.
type reader struct {
	units unit.System
	found diag.List
	refs  []reference

	unread  []Name                    // lines of the tape with something that is no reading
	lengths map[lengthKey]unit.Length // lengths that were read before, by their text; nil: they are not kept
}

func (r *reader) stop(code string, at diag.Place, what, mend string, v ...diag.Value) {
	r.found.Add(diag.Stop, code, at, what, mend, v...)
}

// want checks the kind of a node.
func (r *reader) want(n *text.Node, k text.Kind, say string) bool {
	if n.Kind == k {
		return true
	}
	r.stop("wrong-shape", n.At, "here stands {0}; {1} is needed", "write {2}",
		diag.T(n.Kind.String()), diag.T(say), diag.T(shapeHint(k)))
	return false
}

func shapeHint(k text.Kind) string {
	switch k {
	case text.Map:
		return "keys and values, indented under the key or in { }"
	case text.List:
		return "values in [ ] or on lines that start with -"
	}
	return "one value behind the colon"
}

// strayKey tells of a key that is none, with the one that was likely meant.
func (r *reader) strayKey(e text.Entry, names []string) {
	mend := "the keys here are: {1}"
	if near := nearest(e.Key, names); near != "" {
		r.stop("unknown-key", e.At, "there is no key {0} here", "did you mean {1}?", diag.T(e.Key), diag.T(near))
		return
	}
	r.stop("unknown-key", e.At, "there is no key {0} here", mend, diag.T(e.Key), diag.T(strings.Join(names, ", ")))
}

func (r *reader) missing(n *text.Node, k row) {
	r.stop("key-missing", n.At, "{0} is missing: {2}", "add it, like {0}: {1}", diag.T(k.name), diag.T(k.example), diag.T(k.what))
}

func (r *reader) empty(e text.Entry, k row) {
	mend := "write {1}, or unknown, or take the key out"
	if k.shape.kind == recordShape || k.shape.kind == namedShape {
		mend = "write its own keys under it, indented by two spaces more, or take it out"
	}
	r.stop("value-missing", e.At, "there is no value for {0}", mend, diag.T(k.name), diag.T(k.shape.say))
}

// unknown notes a fact that is said to be unknown where nothing can be concluded without it.
func (r *reader) unknown(n *text.Node, what string) {
	r.found.Add(diag.Unchecked, "fact-unknown", n.At, "{0} is unknown: what depends on it is not checked", "measure it or look it up, then write it here", diag.T(what))
}

// alike tells of names that differ only in case or hyphens; a reader would mix them up.
func (r *reader) alike(entries []text.Entry, names string) {
	seen := map[string]string{}
	for _, e := range entries {
		k := string(fold(e.Key))
		if first, twice := seen[k]; twice {
			r.stop("name-twice", e.At, "two names for {0} differ only in case or hyphens: {1} and {2}", "give one of them another name",
				diag.T(an(names)), diag.T(first), diag.T(e.Key))
		}
		seen[k] = e.Key
	}
}

// misread tells of a scalar that does not follow its grammar.
func (r *reader) misread(n *text.Node, s *shape, why string) {
	if why == "" {
		why = "not " + s.say
	}
	r.stop("value-unreadable", n.At, "{0} can not be read: {1}", "write {2}", diag.T(short(n.Text)), diag.T(why), diag.T(s.say))
}

// short keeps a hostile value from filling the page.
func short(s string) string {
	runes := []rune(s)
	if len(runes) > 40 {
		return string(runes[:40]) + "…"
	}
	return s
}
