package document

import (
	"fmt"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// expectation is one complaint that a test document expects on its line, written there as
//
//	# want code: regexp
//
// with several divided by " ## ". The regexp is held against the text and the mend as a reader of inches sees them.
type expectation struct {
	line int
	code string
	say  *regexp.Regexp
	met  bool
}

func expectations(t *testing.T, src string) []*expectation {
	t.Helper()
	var all []*expectation
	for i, line := range strings.Split(src, "\n") {
		_, comment, ok := strings.Cut(line, "# want ")
		if !ok {
			continue
		}
		for _, one := range strings.Split(comment, " ## ") {
			code, say, ok := strings.Cut(one, ": ")
			if !ok {
				t.Fatalf("line %d: an expectation needs a code and a regexp", i+1)
			}
			all = append(all, &expectation{line: i + 1, code: code, say: regexp.MustCompile(say)})
		}
	}
	return all
}

func TestBrokenDocuments(t *testing.T) {
	files, err := filepath.Glob("testdata/broken/*.yaml")
	if err != nil || len(files) == 0 {
		t.Fatal("no broken documents", err)
	}
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) {
			src := readFile(t, file)
			_, found := Read(file, src)
			wants := expectations(t, string(src))
			for _, f := range found {
				if !meet(wants, f) {
					t.Errorf("not expected: %s", line(f))
				}
				insideText(t, src, f)
			}
			for _, w := range wants {
				if !w.met {
					t.Errorf("line %d: no finding %s: %s", w.line, w.code, w.say)
				}
			}
		})
	}
}

func meet(wants []*expectation, f diag.Finding) bool {
	s := unit.DefaultStyle(unit.Inches)
	said := f.Say(s) + " | " + f.SayMend(s)
	for _, w := range wants {
		if !w.met && w.line == f.At.Line && w.code == f.Code && w.say.MatchString(said) {
			w.met = true
			return true
		}
	}
	return false
}

func line(f diag.Finding) string {
	s := unit.DefaultStyle(unit.Inches)
	return fmt.Sprintf("%d:%d %s %s: %s | %s", f.At.Line, f.At.Column, f.At.Path, f.Code, f.Say(s), f.SayMend(s))
}

// insideText checks that a finding stands at a place in the file, and that its words have no hole left in them.
func insideText(t *testing.T, src []byte, f diag.Finding) {
	t.Helper()
	lines := strings.Split(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(string(src)), "\n")
	if f.At.Line < 1 || f.At.Line > len(lines) {
		t.Fatalf("outside the file of %d lines: %s", len(lines), line(f))
	}
	if width := len([]rune(lines[f.At.Line-1])); f.At.Column < 1 || f.At.Column > width+1 {
		t.Errorf("outside its line of %d: %s", width, line(f))
	}
	if hole.MatchString(f.Text) && len(f.Values) == 0 || f.Text == "" || f.Code == "" {
		t.Errorf("without words: %+v", f)
	}
	for _, m := range hole.FindAllStringSubmatch(f.Text+f.Mend, -1) {
		if int(m[1][0]-'0') >= len(f.Values) {
			t.Errorf("%s names value %s of %d", f.Code, m[1], len(f.Values))
		}
	}
}

var hole = regexp.MustCompile(`\{([0-9])\}`)
