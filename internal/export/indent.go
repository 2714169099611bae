package export

import (
	"bytes"
	"encoding/json"
	"strings"
)

// encoded is the plain JSON of a value that can not fail to encode.
func encoded(v any) []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false) // paths have ">" in them, and the file is no web page
	if err := e.Encode(v); err != nil {
		panic(err) // view types hold nothing that JSON can not
	}
	return bytes.TrimSpace(b.Bytes())
}

// lineWidth is how long an object or a list may be to stand on one line: a vertex, a source, a step.
const lineWidth = 120

// indented writes JSON for reading: what fits on one line stands on one, the rest is broken at every entry.
func indented(compact []byte) []byte {
	w := indenter{text: compact, end: brackets(compact)}
	w.value(0, "")
	w.WriteByte('\n')
	return w.Bytes()
}

// indenter walks over compact JSON that was encoded here and so can not be wrong.
type indenter struct {
	bytes.Buffer
	text []byte
	end  map[int]int // where each opening bracket is closed
}

// value writes the value at i, whose closing bracket stands at the given indent, and returns where it ends.
func (w *indenter) value(i int, indent string) int {
	end, open := w.end[i]
	if !open {
		end = pastScalar(w.text, i)
		w.Write(w.text[i:end])
		return end
	}
	if w.fits(i, end+1, len(indent)) {
		w.WriteString(spaced(w.text[i : end+1]))
		return end + 1
	}
	w.WriteByte(w.text[i])
	for k := i + 1; k < end; {
		k = w.entry(k, w.text[i] == '{', indent+"  ")
		if w.text[k] == ',' {
			w.WriteByte(',')
			k++
		}
	}
	w.WriteString("\n" + indent)
	w.WriteByte(w.text[end])
	return end + 1
}

// fits reports whether a value has room on one line. Spaces make it longer, so what is too long without them need not be tried.
func (w *indenter) fits(i, end, indent int) bool {
	return indent+end-i <= lineWidth && indent+len(spaced(w.text[i:end])) <= lineWidth
}

// entry writes one entry on a line of its own and returns where it ends.
func (w *indenter) entry(k int, keyed bool, indent string) int {
	w.WriteString("\n" + indent)
	if keyed {
		colon := pastScalar(w.text, k)
		w.Write(w.text[k:colon])
		w.WriteString(": ")
		k = colon + 1
	}
	return w.value(k, indent)
}

// brackets maps each opening bracket to its closing one.
func brackets(text []byte) map[int]int {
	out := map[int]int{}
	var open []int
	for i := 0; i < len(text); i++ {
		switch text[i] {
		case '"':
			i = pastScalar(text, i) - 1
		case '{', '[':
			open = append(open, i)
		case '}', ']':
			out[open[len(open)-1]] = i
			open = open[:len(open)-1]
		}
	}
	return out
}

// pastScalar returns where the string, number or word at i ends.
func pastScalar(text []byte, i int) int {
	if text[i] != '"' {
		if n := bytes.IndexAny(text[i:], ",:]}"); n >= 0 {
			return i + n
		}
		return len(text)
	}
	for i++; text[i] != '"'; i++ {
		if text[i] == '\\' {
			i++
		}
	}
	return i + 1
}

// spaced puts a space after each comma and colon outside of strings.
func spaced(compact []byte) string {
	var b strings.Builder
	quoted, escaped := false, false
	for _, c := range compact {
		b.WriteByte(c)
		switch {
		case escaped:
			escaped = false
		case quoted && c == '\\':
			escaped = true
		case c == '"':
			quoted = !quoted
		case !quoted && (c == ',' || c == ':'):
			b.WriteByte(' ')
		}
	}
	return b.String()
}
