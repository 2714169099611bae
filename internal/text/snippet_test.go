package text

import (
	"strings"
	"testing"
)

func TestSnippet(t *testing.T) {
	src := "dryfit: 1\r\nunits: in\nname: ½ room\n  x: y\n"
	for _, c := range []struct {
		line, column int
		want         string
	}{
		{2, 8, "1 | dryfit: 1\n2 | units: in\n  |        ^\n3 | name: ½ room\n"},
		{1, 1, "1 | dryfit: 1\n  | ^\n2 | units: in\n"},
		{3, 9, "2 | units: in\n3 | name: ½ room\n  |         ^\n4 |   x: y\n"},
		{4, 3, "3 | name: ½ room\n4 |   x: y\n  |   ^\n"},
		{4, 99, "3 | name: ½ room\n4 |   x: y\n  |       ^\n"},
		{2, 0, "1 | dryfit: 1\n2 | units: in\n3 | name: ½ room\n"},
		{0, 1, ""}, {6, 1, ""}, {-1, 1, ""},
	} {
		if got := Snippet([]byte(src), c.line, c.column); got != c.want {
			t.Errorf("%d:%d\n%s\nwant\n%s", c.line, c.column, got, c.want)
		}
	}
}

func TestSnippetAlignsNumbers(t *testing.T) {
	src := strings.Repeat("a\n", 8) + "nine\nten\n"
	if got, want := Snippet([]byte(src), 9, 2), " 8 | a\n 9 | nine\n   |  ^\n10 | ten\n"; got != want {
		t.Errorf("got\n%s", got)
	}
}

// A long line is cut so that the caret stays in sight.
func TestSnippetCutsLongLines(t *testing.T) {
	src := strings.Repeat("x", 500) + "!" + strings.Repeat("y", 500)
	got := Snippet([]byte(src), 1, 501)
	lines := strings.Split(got, "\n")
	at := strings.IndexByte(lines[1], '^')
	if at < 0 || lines[0][at] != '!' || len(lines[0]) > snippetWidth+4 {
		t.Errorf("got\n%s", got)
	}
}
