package text

import (
	"strings"
)

// change finds the bytes to cut and what to put in their place.
func (p *page) change(tree *Node, op Op, typed string) (cut span, insert string, ok bool) {
	parent, above, path := walk(tree, op.Path)
	i := parent.index(path[0])
	switch {
	case parent.Kind == List:
		return p.changeItem(parent, above, op.Do, path[0], typed)
	case op.Do == Rename:
		cut, ok = p.key(parent.Entries[i])
		return cut, typed, ok
	case op.Do == Remove:
		return p.remove(parent, i, above)
	case i >= 0 && typed == "" && parent.Flow: // a colon with nothing behind it reads badly in a line
		return span{}, "", false
	case i >= 0:
		return p.replace(parent.Entries[i], typed)
	}
	return p.insert(parent, above, nestFlow(path, typed), op.Before)
}

// walk goes down a path as far as it is there: to the last node that is, the entries on the way, the rest of the path.
func walk(tree *Node, path []string) (parent *Node, above []Entry, rest []string) {
	parent = tree
	for len(path) > 1 {
		e, ok := parent.child(path[0])
		if !ok {
			break
		}
		above = append(above, e)
		parent, path = e.Value, path[1:]
	}
	return parent, above, path
}

// nestFlow writes a value under the keys that are not there yet.
func nestFlow(path []string, typed string) string {
	for i := len(path) - 1; i > 0; i-- {
		typed = "{" + Quote(path[i]) + ": " + typed + "}"
	}
	return Quote(path[0]) + ": " + typed
}

// replace puts a value in the place of another. One that starts below its key gives way to one on the key's line.
func (p *page) replace(e Entry, typed string) (span, string, bool) {
	old, ok := p.value(e)
	if !ok {
		return span{}, "", false
	}
	if e.Value.Kind == Empty && old.from == old.to {
		return old, " " + typed, true
	}
	if typed == "" {
		colon, ok := p.colon(e)
		return span{colon, old.to}, "", ok
	}
	if e.Value.At.Line == e.At.Line {
		return old, typed, true
	}
	colon, ok := p.colon(e)
	if !ok {
		return span{}, "", false
	}
	comment := strings.TrimRight(string(p.src[colon:p.lineEnd(colon)]), "\r\n") // nothing else stands behind the colon
	return span{colon, old.to}, " " + typed + comment, true
}

// insert adds an entry to a map, in front of a key or as the last. Comments above that key stay with it.
func (p *page) insert(parent *Node, above []Entry, entry, before string) (span, string, bool) {
	i := parent.place(before)
	switch {
	case parent.Kind == Empty && len(above) > 0:
		return p.replace(above[len(above)-1], "{"+entry+"}")
	case parent.Kind == Empty:
		return p.atEnd(entry)
	case parent.Flow:
		return p.insertFlow(parent, i, entry)
	case len(parent.Entries) == 0:
		return span{}, "", false
	}
	end, ok := p.gap(parent, i)
	text := strings.Repeat(" ", parent.Entries[0].At.Column-1) + entry + p.newline()
	if end == len(p.src) && !p.endsLine() {
		text = p.newline() + strings.TrimSuffix(text, p.newline())
	}
	return span{end, end}, text, ok
}

// gap gives the start of a line where an entry can go in front of the i-th of a block: behind the one before, or above
// the first.
func (p *page) gap(parent *Node, i int) (int, bool) {
	if i > 0 {
		old, ok := p.value(parent.Entries[i-1])
		return p.lineEnd(old.to), ok
	}
	first, ok := p.key(parent.Entries[0])
	return p.lines(first).from, ok
}

func (p *page) endsLine() bool {
	return len(p.src) == 0 || p.src[len(p.src)-1] == '\n' || p.src[len(p.src)-1] == '\r'
}

// atEnd adds the first entry to a file without any.
func (p *page) atEnd(entry string) (span, string, bool) {
	text := entry + p.newline()
	if !p.endsLine() {
		text = p.newline() + text
	}
	return span{len(p.src), len(p.src)}, text, true
}

func (p *page) insertFlow(parent *Node, i int, entry string) (span, string, bool) {
	whole, ok := p.node(parent)
	switch {
	case !ok:
		return span{}, "", false
	case len(parent.Entries) == 0:
		return span{whole.from + 1, whole.to - 1}, entry, true
	case i < len(parent.Entries):
		next, ok := p.key(parent.Entries[i])
		return span{next.from, next.from}, entry + ", ", ok
	}
	last, ok := p.value(parent.Entries[i-1])
	return span{last.to, last.to}, ", " + entry, ok
}

// remove takes an entry out; the last one leaves an empty map behind.
func (p *page) remove(parent *Node, i int, above []Entry) (span, string, bool) {
	e := parent.Entries[i]
	key, ok1 := p.key(e)
	value, ok2 := p.value(e)
	if !ok1 || !ok2 {
		return span{}, "", false
	}
	switch {
	case parent.Flow:
		return p.removeFlow(parent, i, span{key.from, value.to})
	case len(parent.Entries) == 1 && len(above) > 0:
		return p.replace(above[len(above)-1], "{}")
	}
	return p.lines(span{key.from, value.to}), "", true
}

// removeFlow takes an entry out of { } with one of the commas beside it.
func (p *page) removeFlow(parent *Node, i int, cut span) (span, string, bool) {
	ok := true
	switch {
	case i+1 < len(parent.Entries):
		var next span
		next, ok = p.key(parent.Entries[i+1])
		cut.to = next.from
	case i > 0:
		var before span
		before, ok = p.value(parent.Entries[i-1])
		cut.from = before.to
	}
	return cut, "", ok
}
