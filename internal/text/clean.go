package text

import (
	"bytes"
	"strconv"
	"strings"
	"unicode/utf8"

	"dryfit/internal/diag"
)

// source is the text as the YAML reader gets it, line for line. A tab of the indent has become two spaces, so that
// columns behind it are one too far for each.
type source struct {
	lines []string
	tabs  []int // in the indent of each line
}

// at gives the place that a line and column of the reader stand for in the file.
func (s *source) at(path string, line, column int) diag.Place {
	if line >= 1 && line <= len(s.tabs) {
		column = max(1, column-s.tabs[line-1])
	}
	return diag.Place{Path: path, Line: line, Column: column}
}

// clean makes the text fit for the YAML reader, line for line: byte order mark off, bad bytes and control
// characters to the replacement character, tabs of the indent to spaces, each told once. It gives up only on a file that is too large.
func clean(src []byte, found *diag.List) (s *source, ok bool) {
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
	s = &source{lines: strings.Split(text, "\n")}
	s.tabs = make([]int, len(s.lines))
	for i, line := range s.lines {
		s.lines[i], s.tabs[i] = cleanLine(line, i+1, found)
	}
	return s, true
}

func cleanLine(s string, line int, found *diag.List) (clean string, tabs int) {
	if !utf8.ValidString(s) {
		at := diag.Place{Line: line, Column: badColumn(s)}
		found.Add(diag.Stop, "not-utf8", at, "a character that is not UTF-8", "save the file as UTF-8")
		s = strings.ToValidUTF8(s, string(utf8.RuneError))
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
		return strings.ReplaceAll(indent, "\t", "  ") + s[len(indent):], strings.Count(indent, "\t")
	}
	return s, 0
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
		return utf8.RuneError
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
