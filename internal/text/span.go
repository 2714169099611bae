package text

import (
	"bytes"
	"strings"
	"unicode/utf8"
)

// page finds where things stand in the bytes of a file that parses without a fault.
type page struct {
	src   []byte
	start []int // of each line
}

func newPage(src []byte) *page {
	p := &page{src: src, start: []int{0}}
	if bytes.HasPrefix(src, bom) {
		p.start[0] = len(bom)
	}
	for i := 0; i < len(src); i++ {
		if src[i] == '\n' || src[i] == '\r' && (i+1 == len(src) || src[i+1] != '\n') {
			p.start = append(p.start, i+1)
		}
	}
	return p
}

var bom = []byte("\xef\xbb\xbf")

// offset gives the byte of a line and a column, or false outside the text.
func (p *page) offset(line, column int) (int, bool) {
	if line < 1 || line > len(p.start) || column < 1 {
		return 0, false
	}
	at := p.start[line-1]
	for ; column > 1; column-- {
		if at >= len(p.src) {
			return 0, false
		}
		_, width := utf8.DecodeRune(p.src[at:])
		at += width
	}
	return at, at <= len(p.src)
}

// span is a stretch of bytes, the end not included.
type span struct{ from, to int }

// key gives the span of an entry's key.
func (p *page) key(e Entry) (span, bool) {
	at, ok := p.offset(e.At.Line, e.At.Column)
	if !ok {
		return span{}, false
	}
	return p.scalar(at, e.Key)
}

// scalar gives the span of a quoted scalar, or of a plain one on one line.
func (p *page) scalar(at int, text string) (span, bool) {
	rest := p.src[at:]
	switch {
	case len(rest) > 0 && rest[0] == '\'':
		return p.quoted(at, '\'')
	case len(rest) > 0 && rest[0] == '"':
		return p.quoted(at, '"')
	}
	return span{at, at + len(text)}, bytes.HasPrefix(rest, []byte(text))
}

// quoted looks for the end of a quoted scalar: two single quotes are one, a backslash escapes in double quotes.
func (p *page) quoted(at int, mark byte) (span, bool) {
	for i := at + 1; i < len(p.src); i++ {
		switch {
		case mark == '"' && p.src[i] == '\\':
			i++
		case p.src[i] == mark && mark == '\'' && i+1 < len(p.src) && p.src[i+1] == mark:
			i++
		case p.src[i] == mark:
			return span{at, i + 1}, true
		}
	}
	return span{}, false
}

// value gives the span of an entry's value; of an empty one the point behind the colon, or the word
// that says so.
func (p *page) value(e Entry) (span, bool) {
	if e.Value.Kind != Empty {
		return p.node(e.Value)
	}
	if at, ok := p.offset(e.Value.At.Line, e.Value.At.Column); ok {
		for _, word := range []string{"~", "null"} {
			if bytes.HasPrefix(p.src[at:], []byte(word)) {
				return span{at, at + len(word)}, true
			}
		}
	}
	colon, ok := p.colon(e)
	return span{colon, colon}, ok
}

// colon gives the point behind the colon of an entry.
func (p *page) colon(e Entry) (int, bool) {
	k, ok := p.key(e)
	if !ok {
		return 0, false
	}
	at := k.to + len(p.src[k.to:]) - len(bytes.TrimLeft(p.src[k.to:], " "))
	return at + 1, at < len(p.src) && p.src[at] == ':'
}

func (p *page) node(n *Node) (span, bool) {
	at, ok := p.offset(n.At.Line, n.At.Column)
	if !ok {
		return span{}, false
	}
	switch {
	case n.Kind == Scalar:
		if !n.Quoted && !n.AsIs {
			return span{}, false
		}
		return p.scalar(at, n.Text)
	case n.Flow:
		return p.flow(at, n)
	case n.Kind == Map && len(n.Entries) > 0:
		last, ok := p.value(n.Entries[len(n.Entries)-1])
		return span{at, last.to}, ok
	case n.Kind == List && len(n.Items) > 0:
		last, ok := p.node(n.Items[len(n.Items)-1])
		return span{at, last.to}, ok
	}
	return span{}, false
}

// flow gives the span of a list in [ ] or a map in { }: its end is the first bracket behind its last part.
func (p *page) flow(at int, n *Node) (span, bool) {
	inner := at + 1
	if len(n.Entries) > 0 {
		last, ok := p.value(n.Entries[len(n.Entries)-1])
		if !ok {
			return span{}, false
		}
		inner = last.to
	}
	if len(n.Items) > 0 {
		last, ok := p.node(n.Items[len(n.Items)-1])
		if !ok {
			return span{}, false
		}
		inner = last.to
	}
	end := p.skip(inner)
	return span{at, end + 1}, end < len(p.src) && strings.IndexByte("]}", p.src[end]) >= 0
}

// skip goes over blanks, line ends, commas and comments.
func (p *page) skip(at int) int {
	for at < len(p.src) {
		switch c := p.src[at]; {
		case c == '#':
			for at < len(p.src) && p.src[at] != '\n' && p.src[at] != '\r' {
				at++
			}
		case strings.IndexByte(" \t\r\n,", c) >= 0:
			at++
		default:
			return at
		}
	}
	return at
}

// lines widens a span to whole lines, with the last line's end.
func (p *page) lines(s span) span {
	for s.from > 0 && p.src[s.from-1] != '\n' && p.src[s.from-1] != '\r' {
		s.from--
	}
	if s.from == 0 && bytes.HasPrefix(p.src, bom) {
		s.from = len(bom)
	}
	s.to = p.lineEnd(s.to)
	return s
}

// lineEnd gives the point behind the end of the line that a point stands on.
func (p *page) lineEnd(at int) int {
	for at < len(p.src) && p.src[at] != '\n' && p.src[at] != '\r' {
		at++
	}
	if at < len(p.src) && p.src[at] == '\r' {
		at++
	}
	if at < len(p.src) && p.src[at] == '\n' {
		at++
	}
	return at
}

// newline gives the line end that the file uses.
func (p *page) newline() string {
	if bytes.Contains(p.src, []byte("\r\n")) {
		return "\r\n"
	}
	return "\n"
}
