package export_test

import (
	"go/parser"
	"go/token"
	"path/filepath"
	"strings"
	"testing"
)

// Everything that the built-in rooms' plans claim is recomputed from plan.json alone.
func TestRecheckDemos(t *testing.T) {
	for _, r := range demos() {
		if wrong := recheck(r.json); len(wrong) > 0 {
			t.Errorf("%s:\n%s", r.file, summary(wrong))
		}
	}
}

// The checker leans on nothing of ours: its files import the standard library alone.
func TestRecheckStandsAlone(t *testing.T) {
	files, err := filepath.Glob("recheck_*_test.go")
	if err != nil || len(files) < 6 {
		t.Fatal(files, err)
	}
	for _, name := range files {
		f, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ImportsOnly)
		if err != nil {
			t.Fatal(err)
		}
		for _, i := range f.Imports {
			if path := strings.Trim(i.Path.Value, `"`); strings.Contains(path, ".") || strings.HasPrefix(path, "dryfit") {
				t.Errorf("%s imports %s", name, path)
			}
		}
	}
}
