package text

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// Snippet prints the line of a place with one line before and after it, and a caret under the column:
//
//	3 | survey:
//	4 |   corners: A B C D
//	  |            ^
//	5 |   tape: {A-B: 71-3/8}
//
// A place outside the text gives nothing. Long lines are cut round the caret.
func Snippet(src []byte, line, column int) string {
	lines := strings.Split(strings.ReplaceAll(string(src), "\r\n", "\n"), "\n")
	if line < 1 || line > len(lines) {
		return ""
	}
	column = min(column, utf8.RuneCountInString(lines[line-1])+1)
	first, last := max(line-1, 1), min(line+1, len(lines))
	width := len(fmt.Sprint(last))
	from := max(0, column-1-snippetWidth*3/4)
	var b strings.Builder
	for n := first; n <= last; n++ {
		if n == last && n > line && lines[n-1] == "" && n == len(lines) {
			break
		}
		fmt.Fprintln(&b, strings.TrimRight(fmt.Sprintf("%*d | %s", width, n, window(lines[n-1], from)), " "))
		if n == line && column > 0 {
			fmt.Fprintf(&b, "%*s | %s^\n", width, "", strings.Repeat(" ", column-1-from))
		}
	}
	return b.String()
}

// snippetWidth keeps a snippet on a narrow terminal.
const snippetWidth = 88

func window(line string, from int) string {
	runes := []rune(strings.ReplaceAll(strings.ToValidUTF8(line, "?"), "\t", " "))
	if from >= len(runes) {
		return ""
	}
	return string(runes[from:min(len(runes), from+snippetWidth)])
}
