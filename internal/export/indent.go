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
	var w indenter
	w.value(compact, "")
	w.WriteByte('\n')
	return w.Bytes()
}

type indenter struct{ bytes.Buffer }

// value writes one value, whose closing bracket stands at the given indent.
func (w *indenter) value(v json.RawMessage, indent string) {
	if v[0] != '{' && v[0] != '[' {
		w.Write(v)
		return
	}
	if len(indent)+len(v) <= lineWidth { // spaces make it longer, so what is too long without them need not be tried
		if flat := spaced(v); len(indent)+len(flat) <= lineWidth {
			w.WriteString(flat)
			return
		}
	}
	w.WriteByte(v[0])
	deeper := indent + "  "
	for i, e := range entries(v) {
		if i > 0 {
			w.WriteByte(',')
		}
		w.WriteString("\n" + deeper + e.key)
		w.value(e.value, deeper)
	}
	w.WriteString("\n" + indent)
	w.WriteByte(v[len(v)-1])
}

// entry is an element of a list, or a key of an object with its colon and its value.
type entry struct {
	key   string
	value json.RawMessage
}

// entries takes an object or a list apart, in its own order.
func entries(v json.RawMessage) []entry {
	d := json.NewDecoder(bytes.NewReader(v))
	next(d.Token)
	var out []entry
	for d.More() {
		var e entry
		if v[0] == '{' {
			e.key = string(encoded(next(d.Token))) + ": "
		}
		next(func() (any, error) { return nil, d.Decode(&e.value) })
		out = append(out, e)
	}
	return out
}

// next reads on in text that was encoded here and so can not be wrong.
func next[T any](read func() (T, error)) T {
	v, err := read()
	if err != nil {
		panic(err)
	}
	return v
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
