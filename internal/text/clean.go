package text

import (
	"bytes"
	"strconv"
	"strings"
	"unicode/utf8"

	"dryfit/internal/diag"
)

// clean makes the text fit for the YAML reader, line for line: byte order mark off, bad bytes and control
// characters to "?", tabs of the indent to spaces, each told once. It gives up only on a file that is too large.
func clean(src []byte, found *diag.List) (lines []string, ok bool) {
	if len(src) > MaxBytes {
		found.Add(diag.Stop, "too-large", diag.Place{Line: 1, Column: 1},
			"the file has {0} bytes; a room has at most {1}", "check that this is a room document", diag.N(len(src)), diag.N(MaxBytes))
		return nil, false
	}
	src = bytes.TrimPrefix(src, []byte("\xef\xbb\xbf"))
	if bytes.HasPrefix(src, []byte("\xff\xfe")) || bytes.HasPrefix(src, []byte("\xfe\xff")) {
		found.Add(diag.Stop, "not-utf8", diag.Place{Line: 1, Column: 1}, "the file is UTF-16", "save it as UTF-8")
		return nil, false
	}
	text := strings.ReplaceAll(strings.ReplaceAll(string(src), "\r\n", "\n"), "\r", "\n")
	lines = strings.Split(text, "\n")
	for i := range lines {
		lines[i] = cleanLine(lines[i], i+1, found)
	}
	return lines, true
}

func cleanLine(s string, line int, found *diag.List) string {
	if !utf8.ValidString(s) {
		at := diag.Place{Line: line, Column: badColumn(s)}
		found.Add(diag.Stop, "not-utf8", at, "a character that is not UTF-8", "save the file as UTF-8")
		s = strings.ToValidUTF8(s, "?")
	}
	if i := strings.IndexFunc(s, control); i >= 0 {
		at := diag.Place{Line: line, Column: utf8.RuneCountInString(s[:i]) + 1}
		found.Add(diag.Stop, "control-character", at, "a control character that can not be seen", "take it out")
		s = strings.Map(visible, s)
	}
	indent := s[:len(s)-len(strings.TrimLeft(s, " \t"))]
	if tab := strings.IndexByte(indent, '\t'); tab >= 0 && strings.TrimSpace(s) != "" {
		at := diag.Place{Line: line, Column: tab + 1}
		found.Add(diag.Stop, "tab", at, "a tab in the indent", "indent with spaces, two for each level")
		s = strings.ReplaceAll(indent, "\t", "  ") + s[len(indent):]
	}
	return s
}

// control finds what the YAML reader refuses, and the three line breaks that it would count and we would not.
func control(r rune) bool {
	if r == '\u0085' || r == '\u2028' || r == '\u2029' || r == '\ufeff' {
		return true
	}
	return r != '\t' && r < ' ' || r >= 0x7f && r < 0xa0 || r >= 0xfffe && r <= 0xffff
}

func visible(r rune) rune {
	if control(r) {
		return '?'
	}
	return r
}

func badColumn(s string) int {
	column := 1
	for len(s) > 0 {
		r, n := utf8.DecodeRuneInString(s)
		if r == utf8.RuneError && n == 1 {
			break
		}
		s, column = s[n:], column+1
	}
	return column
}

func itoa(n int) string { return strconv.Itoa(n) }
