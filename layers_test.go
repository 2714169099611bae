// Package dryfit_test keeps the import policy: layers.txt is the rule, and this test reads the imports.
package dryfit_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

const module = "dryfit/"

// policy reads layers.txt: "package: what it may import of ours", both as paths below internal/ or cmd/.
func policy(t *testing.T) map[string][]string {
	t.Helper()
	text, err := os.ReadFile("layers.txt")
	if err != nil {
		t.Fatal(err)
	}
	rules := map[string][]string{}
	for i, line := range strings.Split(string(text), "\n") {
		line, _, _ = strings.Cut(line, "#")
		if strings.TrimSpace(line) == "" {
			continue
		}
		name, list, ok := strings.Cut(line, ":")
		name = strings.TrimSpace(name)
		if _, twice := rules[name]; !ok || twice {
			t.Fatalf("layers.txt:%d: want one line \"package: imports\" for each package", i+1)
		}
		rules[name] = strings.Fields(list)
	}
	return rules
}

// sources lists each package's own imports, its tests left out.
func sources(t *testing.T) map[string][]string {
	t.Helper()
	found := map[string][]string{}
	err := filepath.WalkDir(".", func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(p, ".go") || strings.HasSuffix(p, "_test.go") {
			return err
		}
		f, err := parser.ParseFile(token.NewFileSet(), p, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		name := short(path.Dir(filepath.ToSlash(p)))
		found[name] = append(found[name], ours(f.Imports)...)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return found
}

func short(dir string) string { return strings.TrimPrefix(dir, "internal/") }

func TestLayers(t *testing.T) {
	rules := policy(t)
	found := sources(t)
	for name, imports := range found {
		allowed, ok := rules[name]
		if !ok {
			t.Errorf("package %s is not in layers.txt: say where it stands", name)
		}
		for _, i := range imports {
			if !slices.Contains(allowed, i) && !permitted(allowed, i) {
				t.Errorf("%s imports %s, which layers.txt does not allow: move the code", name, i)
			}
		}
	}
	for name := range rules {
		if _, ok := found[name]; !ok {
			t.Errorf("layers.txt names %s, which does not exist", name)
		}
	}
}

// permitted lets "opt/*" stand for every package below opt.
func permitted(allowed []string, name string) bool {
	return slices.ContainsFunc(allowed, func(a string) bool {
		stem, star := strings.CutSuffix(a, "*")
		return star && strings.HasPrefix(name, stem)
	})
}

// TestLayersHaveNoCycle proves that the policy itself is layered: following it never leads back.
func TestLayersHaveNoCycle(t *testing.T) {
	rules := policy(t)
	state := map[string]int{}
	var visit func(string)
	visit = func(name string) {
		if state[name] == 1 {
			t.Fatalf("layers.txt goes in a circle through %s", name)
		}
		if state[name] != 0 {
			return
		}
		state[name] = 1
		for other := range rules {
			if other != name && (slices.Contains(rules[name], other) || permitted(rules[name], other)) {
				visit(other)
			}
		}
		state[name] = 2
	}
	for name := range rules {
		visit(name)
	}
}

func ours(specs []*ast.ImportSpec) []string {
	var names []string
	for _, s := range specs {
		p, err := strconv.Unquote(s.Path.Value)
		if err == nil && strings.HasPrefix(p, module) {
			names = append(names, short(strings.TrimPrefix(p, module)))
		}
	}
	return names
}
