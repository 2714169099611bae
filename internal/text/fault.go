package text

import (
	"errors"
	"strings"

	"go.yaml.in/yaml/v4"

	"dryfit/internal/diag"
)

// fault tells one syntax fault and takes its entry out of the lines. It reports whether there is anything left to
// parse again.
func fault(err error, s *source, found *diag.List) bool {
	at, message := locate(err, s.lines)
	text, mend := "this is no YAML: {0}", "write `key: value`, two spaces of indent for each level, and close every bracket"
	code := "syntax"
	switch {
	case quoteTrap(s.lines[at.Line-1]):
		code, text = "quote-trap", "a value that starts with a quote mark ends at the next one, so the rest of the line can not be read"
		mend = "write the length without quotes round it: 8' 2-3/8\" or 8 ft 2-3/8 in"
	case strings.Contains(message, "mapping values are not allowed"):
		mend = "one key on a line; put a value that has a colon and a space in it in quotes"
	case strings.Contains(message, "cannot start any token"):
		mend = "a value can not start with @, ` or %; put it in quotes"
	}
	found.Add(diag.Stop, code, s.at("", at.Line, at.Column), text, mend, diag.T(message))
	return takeOut(s.lines, at.Line-1)
}

// locate gives the place of a fault. A bracket or a quote that is never closed is told where it opens.
func locate(err error, lines []string) (diag.Place, string) {
	at, message := diag.Place{Line: 1, Column: 1}, err.Error()
	var load *yaml.LoadError
	if errors.As(err, &load) {
		message = load.Message
		at.Line, at.Column = load.Mark.Line, load.Mark.Column
		if load.ContextMark.Line > 0 && load.ContextMark.Line < load.Mark.Line && unclosed(load.ContextMsg) {
			at.Line, at.Column = load.ContextMark.Line, load.ContextMark.Column
		}
	}
	at.Line = min(max(at.Line, 1), len(lines))
	for at.Line > 1 && strings.TrimSpace(lines[at.Line-1]) == "" {
		at.Line--
	}
	at.Column = min(max(at.Column, 1), len([]rune(lines[at.Line-1]))+1)
	return at, message
}

func unclosed(context string) bool {
	return strings.Contains(context, "flow") || strings.Contains(context, "quoted")
}

// takeOut blanks a line and what is indented under it. Where the line is blank already, as at the end of a file, it
// gives up.
func takeOut(lines []string, i int) bool {
	if strings.TrimSpace(lines[i]) == "" {
		return false
	}
	indent := indentOf(lines[i])
	lines[i] = ""
	for i++; i < len(lines) && (strings.TrimSpace(lines[i]) == "" || indentOf(lines[i]) > indent); i++ {
		lines[i] = ""
	}
	return true
}

func indentOf(s string) int { return len(s) - len(strings.TrimLeft(s, " ")) }

// quoteTrap reports whether some value on the line starts with a quote mark and goes on after its end.
func quoteTrap(line string) bool {
	for _, start := range []string{": ", "- ", "[", ", "} {
		for rest := line; ; {
			_, after, ok := strings.Cut(rest, start)
			if !ok {
				break
			}
			rest = after
			if goesOn(strings.TrimLeft(after, " ")) {
				return true
			}
		}
	}
	return false
}

func goesOn(value string) bool {
	if value == "" || value[0] != '\'' && value[0] != '"' {
		return false
	}
	end := strings.IndexByte(value[1:], value[0])
	if end < 0 {
		return true
	}
	after := strings.TrimLeft(value[end+2:], " ")
	return after != "" && !strings.ContainsRune(",]}#:", rune(after[0]))
}
