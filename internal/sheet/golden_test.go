package sheet_test

import (
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/draw"
	"dryfit/internal/sheet"
	"dryfit/internal/typeset"
)

// What the books of the built-in rooms say, page by page: words in the order in which they are drawn, those on one
// line of a table together. Numbers of pieces on drawings are left out; another test holds those against the plan.
func TestWordsOfDemos(t *testing.T) {
	kept := map[string]bool{}
	for _, r := range demo.Rooms() {
		p := planned(t, r)
		got := words(sheet.Book(p, sheet.Paper{}))
		name := filepath.Join("testdata", stem(r)+".txt")
		kept[name] = true
		if *update {
			if err := os.WriteFile(name, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(name)
		if err != nil {
			t.Fatalf("%v; go test ./internal/sheet -update writes it", err)
		}
		if line, a, b := firstDifference(string(want), got); line > 0 {
			t.Errorf("%s:%d says %q, the book %q; if that is right: go test ./internal/sheet -update", name, line, a, b)
		}
	}
	orphans(t, kept)
}

func orphans(t *testing.T, kept map[string]bool) {
	files, err := filepath.Glob("testdata/*.txt")
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if !kept[f] {
			t.Errorf("%s belongs to no room", f)
		}
	}
}

func words(pages []draw.Page) string {
	var b strings.Builder
	for i, p := range pages {
		fmt.Fprintf(&b, "== %d %s\n", i+1, p.Title)
		var line []string
		var last typeset.Placed
		flush := func() {
			if len(line) > 0 {
				fmt.Fprintln(&b, strings.Join(line, " | "))
			}
			line = nil
		}
		for _, x := range typeset.Placements(p) {
			if slices.Contains([]string{"number", "caution", "ruler", "field"}, x.Text.Class) {
				continue
			}
			if x.Text.At.Y != last.Text.At.Y || x.Text.Class != last.Text.Class {
				flush()
			}
			line, last = append(line, x.Text.Body), x
		}
		flush()
	}
	return b.String()
}

// firstDifference gives the first line that differs, from 1; 0 where none does.
func firstDifference(want, got string) (line int, a, b string) {
	w, g := strings.Split(want, "\n"), strings.Split(got, "\n")
	for i := range max(len(w), len(g)) {
		switch {
		case i >= len(w):
			return i + 1, "(nothing)", g[i]
		case i >= len(g):
			return i + 1, w[i], "(nothing)"
		case w[i] != g[i]:
			return i + 1, w[i], g[i]
		}
	}
	return 0, "", ""
}

// The same plan gives the same pages, and a paper that is not named fits the room's units.
func TestBookIsTheSameTwice(t *testing.T) {
	for _, r := range demo.Rooms() {
		p := planned(t, r)
		a, b := sheet.Book(p, sheet.Paper{}), sheet.Book(p, sheet.PaperNamed("auto", p.Style.System))
		if !reflect.DeepEqual(a, b) {
			t.Errorf("%s: two books differ", r.File)
		}
	}
}
