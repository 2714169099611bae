package text

import (
	"bytes"
	"regexp"
	"strings"
)

// What stood in a text before an operation changed it can be put back letter for letter, with its lines and comments, by
// an operation that carries it. What is carried is only ever layout: the result must still read as the value says.

// restore finds the bytes to cut for an operation that carries its text as it stood.
func (p *page) restore(tree *Node, op Op) (cut span, insert string, ok bool) {
	parent, above, path := walk(tree, op.Path)
	i := parent.index(path[0])
	switch {
	case len(path) > 1 || parent.Kind != Map:
		return span{}, "", false
	case op.Do == Rename:
		cut, ok = p.key(parent.Entries[i])
		return cut, op.As, ok
	case i >= 0:
		cut, ok = p.behindColon(parent, i)
		return cut, op.As, ok && keepsComments(p.src[cut.from:cut.to], op.As)
	case len(parent.Entries) == 0:
		return span{}, "", false
	case parent.Flow:
		return p.restoreFlow(parent, op)
	}
	return p.restoreLines(parent, above, op)
}

// behindColon gives the span of a value from the colon on; in a block it goes to the end of the line.
func (p *page) behindColon(parent *Node, i int) (span, bool) {
	value, ok1 := p.value(parent.Entries[i])
	colon, ok2 := p.colon(parent.Entries[i])
	if !ok1 || !ok2 {
		return span{}, false
	}
	if !parent.Flow {
		value.to = p.lineStop(value.to)
	}
	return span{colon, value.to}, true
}

// lineStop gives the end of a line, without what ends it.
func (p *page) lineStop(at int) int {
	for at < len(p.src) && p.src[at] != '\n' && p.src[at] != '\r' {
		at++
	}
	return at
}

var (
	comment  = regexp.MustCompile(`(?m)(^|[ \t])#[^\r\n]*`)
	comments = regexp.MustCompile(`[ \t]#`) // two on one line, where the lines between them are gone
)

// keepsComments reports whether a text has every comment of the one that it takes the place of.
func keepsComments(old []byte, anew string) bool {
	for _, all := range comment.FindAll(old, -1) {
		for _, c := range comments.Split(string(all), -1) {
			if !strings.Contains(anew, strings.TrimSpace(c)) {
				return false
			}
		}
	}
	return true
}

func (p *page) restoreFlow(parent *Node, op Op) (span, string, bool) {
	i := parent.place(op.Before)
	if i < len(parent.Entries) {
		next, ok := p.key(parent.Entries[i])
		return span{next.from, next.from}, op.As, ok
	}
	last, ok := p.value(parent.Entries[i-1])
	return span{last.to, last.to}, op.As, ok
}

// restoreLines puts lines back into a block. Comments and blank lines that stood above the entry may still be there: then
// they are not written twice.
func (p *page) restoreLines(parent *Node, above []Entry, op Op) (span, string, bool) {
	at, ok := p.above(parent, above, parent.place(op.Before))
	if !ok {
		return span{}, "", false
	}
	cut := span{at, at}
	if lead := leading(op.As); bytes.HasPrefix(p.src[at:], []byte(lead)) {
		cut.to += len(lead)
	}
	return cut, op.As, true
}

// leading gives the blank lines and comments that a text starts with.
func leading(s string) string {
	at := 0
	for _, line := range strings.SplitAfter(s, "\n") {
		if t := strings.TrimSpace(line); t != "" && t[0] != '#' {
			break
		}
		at += len(line)
	}
	return s[:at]
}

// above gives where the lines that belong to the i-th entry of a block start: behind the entry before; for the first,
// behind the line of the key that the block stands under.
func (p *page) above(parent *Node, above []Entry, i int) (int, bool) {
	switch {
	case i > 0:
		return p.gap(parent, i)
	case len(above) == 0:
		return p.start[0], true
	}
	colon, ok := p.colon(above[len(above)-1])
	return p.lineEnd(colon), ok
}
