package text

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// write gives a tree in one line: scalars as 'text'@line:column, lists in [ ], maps in { }, nothing as ~.
func write(n *Node) string {
	switch n.Kind {
	case Empty:
		return "~"
	case Scalar:
		return fmt.Sprintf("'%s'@%d:%d", n.Text, n.At.Line, n.At.Column)
	case List:
		all := make([]string, len(n.Items))
		for i, c := range n.Items {
			all[i] = write(c)
		}
		return "[" + strings.Join(all, " ") + "]"
	}
	all := make([]string, len(n.Entries))
	for i, e := range n.Entries {
		all[i] = fmt.Sprintf("%s@%d:%d=%s", e.Key, e.At.Line, e.At.Column, write(e.Value))
	}
	return "{" + strings.Join(all, " ") + "}"
}

func codes(found diag.List) string {
	var all []string
	for _, f := range found.Sorted() {
		all = append(all, fmt.Sprintf("%d:%d %s", f.At.Line, f.At.Column, f.Code))
	}
	return strings.Join(all, ", ")
}

func TestParse(t *testing.T) {
	for _, c := range []struct{ src, tree, found string }{
		{"", "~", ""},
		{"# only a comment\n", "~", ""},
		{"a: 1\n", "{a@1:1='1'@1:4}", ""},
		{"a: 1", "{a@1:1='1'@1:4}", ""},
		{"a: 1\r\nb: 2\r\n", "{a@1:1='1'@1:4 b@2:1='2'@2:4}", ""},
		{"\ufeffa: 1\n", "{a@1:1='1'@1:4}", ""},
		{"a:\n  b: x y # c\n", "{a@1:1={b@2:3='x y'@2:6}}", ""},
		{"a: 8' 2-3/8\"\n", "{a@1:1='8' 2-3/8\"'@1:4}", ""},
		{"a: [8' 2\", 3\"]\n", "{a@1:1=['8' 2\"'@1:5 '3\"'@1:12]}", ""},
		{"a: {b: 8' 2\", c: 3\"}\n", "{a@1:1={b@1:5='8' 2\"'@1:8 c@1:15='3\"'@1:18}}", ""},
		{"a: \"q # r\" # c\n", "{a@1:1='q # r'@1:4}", ""},
		{"½: ⅛x\nb: 2\n", "{½@1:1='⅛x'@1:4 b@2:1='2'@2:4}", ""},
		{"a: no\nb: 2026-03-02\nc: 1_000\nd: 1:50\n", "{a@1:1='no'@1:4 b@2:1='2026-03-02'@2:4 c@3:1='1_000'@3:4 d@4:1='1:50'@4:4}", ""},
		{"a:\nb: ~\nc: null\nd: \"\"\n", "{a@1:1=~ b@2:1=~ c@3:1=~ d@4:1=''@4:4}", ""},
		{"- a\n- b\n", "['a'@1:3 'b'@2:3]", ""},
		// Faults, each told and the rest read.
		{"a: 1\na: 2\n", "{a@1:1='1'@1:4}", "2:1 key-twice"},
		{"a: &x 1\nb: *x\n", "{a@1:1='1'@1:4 b@2:1='1'@2:4}", "1:4 anchor, 2:4 alias"},
		{"a: !!str 1\n", "{a@1:1='1'@1:4}", "1:4 tag"},
		{"a: !mine [b]\n", "{a@1:1=['b'@1:11]}", "1:4 tag"},
		{"[a, b]: 1\nc: 2\n", "{c@2:1='2'@2:4}", "1:1 key-not-plain"},
		{"a: 1\n---\nb: 2\n", "{a@1:1='1'@1:4}", "2:1 several-documents"},
		{"a:\n\tb: 1\n", "{a@1:1={b@2:2='1'@2:5}}", "2:1 tab"},
		{"a: 1\x07\nb: 2\n", "{a@1:1='1\ufffd'@1:4 b@2:1='2'@2:4}", "1:5 control-character"},
		{"a: \xff\nb: 2\n", "{a@1:1='\ufffd'@1:4 b@2:1='2'@2:4}", "1:4 not-utf8"},
		{"a: x\u2028y\n", "{a@1:1='x\ufffdy'@1:4}", "1:5 control-character"},
		{"\xff\xfea\x00", "~", "1:1 not-utf8"},
		{"a: @b\nc: `d\ne: 1\n", "{e@3:1='1'@3:4}", "1:4 syntax, 2:4 syntax"},
		{"a: '8' 2\"'\nb: 1\n", "{b@2:1='1'@2:4}", "1:8 quote-trap"},
		{"a: [1, 2\nb: 1\n", "{b@2:1='1'@2:4}", "1:4 syntax"},
		{"a: b: c\nd: 1\n", "{d@2:1='1'@2:4}", "1:5 syntax"},
		{"a:\n  b: 1\n c: 2\nd: 3\n", "{a@1:1={b@2:3='1'@2:6} d@4:1='3'@4:4}", "3:2 syntax"},
	} {
		n, found := Parse([]byte(c.src))
		if got := write(n); got != c.tree {
			t.Errorf("%q:\n got %s\nwant %s", c.src, got, c.tree)
		}
		if got := codes(found); got != c.found {
			t.Errorf("%q: found %s, want %s", c.src, got, c.found)
		}
	}
}

func TestPaths(t *testing.T) {
	n, _ := Parse([]byte("a:\n  b: [x, {c: y}]\n"))
	inner := n.Get("a").Get("b").Items[1]
	for _, c := range []struct{ got, want string }{
		{n.At.Path, ""}, {n.Entries[0].At.Path, "a"}, {inner.At.Path, "a > b > 2"}, {inner.Get("c").At.Path, "a > b > 2 > c"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
	if n.Get("none") != nil {
		t.Error("a key that is not there was found")
	}
}

func TestBounds(t *testing.T) {
	if _, found := Parse([]byte(strings.Repeat("#", MaxBytes+1))); codes(found) != "1:1 too-large" {
		t.Error(codes(found))
	}
	if _, found := Parse([]byte(strings.Repeat("#", MaxBytes))); len(found) > 0 {
		t.Error(codes(found))
	}
	deep := "a: " + strings.Repeat("[", MaxDepth+2) + strings.Repeat("]", MaxDepth+2)
	if _, found := Parse([]byte(deep)); !strings.HasSuffix(codes(found), "too-deep") || len(found) != 1 {
		t.Error(codes(found))
	}
	fits := "a: " + strings.Repeat("[", MaxDepth) + strings.Repeat("]", MaxDepth)
	if _, found := Parse([]byte(fits)); len(found) > 0 {
		t.Error(codes(found))
	}
	if _, found := Parse([]byte(strings.Repeat("a: @b\n", 500))); len(found) > maxFaults {
		t.Errorf("%d faults told", len(found))
	}
	// An alias that stands for itself many times over costs nothing, since aliases are not followed into lists.
	bomb := "a: &a [x, x]\n"
	for c := 'b'; c < 'z'; c++ {
		bomb += fmt.Sprintf("%c: &%c [*%c, *%c, *%c]\n", c, c, c-1, c-1, c-1)
	}
	if _, found := Parse([]byte(bomb)); !found.Stops() {
		t.Error("a bomb of aliases was read")
	}
}

// Every fault says what would mend it.
func TestFaultsSayTheirMend(t *testing.T) {
	for _, src := range []string{"a: @b", "a: '8' 2\"'", "a: b: c", "a: [", "\ta: 1", "a: &b 1", "a: 1\na: 1", "--- 1\n--- 2"} {
		_, found := Parse([]byte(src))
		if len(found) == 0 {
			t.Errorf("%q: nothing found", src)
		}
		for _, f := range found {
			if f.SayMend(unit.DefaultStyle(unit.Inches)) == "" || f.Class != diag.Stop {
				t.Errorf("%q: %+v", src, f)
			}
		}
	}
}

func TestQuoteTrap(t *testing.T) {
	for line, want := range map[string]bool{
		`a: '8' 2"'`: true, `a: "8" 2`: true, `- '8' 2`: true, `a: ['8' 2]`: true, `a: 'open`: true,
		`a: 8' 2"`: false, `a: '8 ft'`: false, `a: "x", b: "y"`: false, `a: ["x"]`: false, `a: 'x' # c`: false, `'a': 1`: false, ``: false,
	} {
		if quoteTrap(line) != want {
			t.Errorf("%s: %v", line, !want)
		}
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"a: 1", "a: {b: [c, 'd']}", "a: '8' 2\"", "- a\n- b", "a: &x 1\nb: *x", "\ta", "a: |\n  x\n  y\n", "? a\n: b", "%YAML 1.2\n---\na", "a: !!binary x", "\xff"} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, src []byte) {
		n, found := Parse(src)
		lines := strings.Split(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(string(src)), "\n")
		for _, x := range found {
			if x.At.Line < 1 || x.At.Line > len(lines) || x.At.Column < 1 || x.At.Column > len([]rune(lines[x.At.Line-1]))+1 {
				t.Errorf("outside the text: %+v", x)
			}
			_ = Snippet(src, x.At.Line, x.At.Column)
		}
		_ = write(n)
	})
}
