package web

import (
	"strings"
	"testing"
	"unicode/utf8"
)

// Both pictures of a code show the modules of the code itself, the terminal's two rows a line, with four modules of
// margin (ISO/IEC 18004).
func TestCodeOnTheTerminal(t *testing.T) {
	const link = "http://192.0.2.7:7327/s/AAAAAAAAAAAAAAAAAAAAAA"
	c, err := code(link)
	if err != nil {
		t.Fatal(err)
	}
	out, err := Terminal(link)
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSuffix(out, "\n"), "\n")
	side := c.Size + 2*quietZone
	if len(lines) != (side+1)/2 {
		t.Fatalf("%d lines for %d modules", len(lines), side)
	}
	for i, l := range lines {
		l = strings.TrimSuffix(strings.TrimPrefix(l, "\x1b[30;107m"), "\x1b[0m")
		if utf8.RuneCountInString(l) != side {
			t.Fatalf("line %d has %d signs", i, utf8.RuneCountInString(l))
		}
		x := -quietZone
		for _, sign := range l {
			y := 2*i - quietZone
			upper, lower := sign == '▀' || sign == '█', sign == '▄' || sign == '█'
			if upper != c.Black(x, y) || lower != c.Black(x, y+1) {
				t.Errorf("module %d,%d", x, y)
			}
			x++
		}
	}
}

func TestCodeOnThePage(t *testing.T) {
	p, err := picture("http://192.0.2.7/s/x")
	if err != nil {
		t.Fatal(err)
	}
	has(t, string(p), "<svg", "Code of the link http://192.0.2.7/s/x")
	if strings.Contains(string(p), "style=") {
		t.Error("a style in the page")
	}
}
