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
	return b.Bytes()
}

// lineWidth is how long an object or a list may be to stand on one line: a vertex, a source, a step.
const lineWidth = 120

// indented writes JSON for reading: what fits on one line stands on one, the rest is broken at every entry.
func indented(compact []byte) []byte {
	d := json.NewDecoder(bytes.NewReader(compact))
	d.UseNumber()
	w := indenter{from: d, text: compact}
	w.value("")
	w.WriteByte('\n')
	return w.Bytes()
}

type indenter struct {
	bytes.Buffer
	from *json.Decoder
	text []byte
}

// value writes the next value, whose entries stand one step further in than the given indent.
func (w *indenter) value(indent string) {
	var raw json.RawMessage
	if err := w.from.Decode(&raw); err != nil {
		panic(err) // it was encoded here
	}
	w.raw(raw, indent)
}

func (w *indenter) raw(raw json.RawMessage, indent string) {
	if flat := spaced(raw); len(flat)+len(indent) <= lineWidth || raw[0] != '{' && raw[0] != '[' {
		w.WriteString(flat)
		return
	}
	inner := indenter{from: json.NewDecoder(bytes.NewReader(raw)), text: raw}
	open, _ := inner.from.Token()
	w.WriteString(open.(json.Delim).String())
	deeper := indent + "  "
	for first := true; inner.from.More(); first = false {
		if !first {
			w.WriteByte(',')
		}
		w.WriteString("\n" + deeper)
		if raw[0] == '{' {
			key, _ := inner.from.Token()
			w.WriteString(strings.TrimSpace(string(encoded(key))) + ": ")
		}
		inner.value(deeper)
		inner.WriteTo(w)
	}
	end, _ := inner.from.Token()
	w.WriteString("\n" + indent + end.(json.Delim).String())
}

// spaced puts a space after each comma and colon outside of strings.
func spaced(raw []byte) string {
	var b strings.Builder
	quoted, escaped := false, false
	for _, c := range bytes.TrimSpace(raw) {
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
