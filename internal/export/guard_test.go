package export_test

import (
	"bytes"
	"encoding/json"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"
)

const uncheckedFile = "testdata/unchecked.txt"

// Every key of plan.json that holds a number or a truth is changed, in up to five places each. Those that nobody notices are listed in a golden
// file, so that it is known what the recheck does not cover, and a key that falls out of it is seen. Lines and columns are the document's, which
// is not in the file.
func TestWhatIsNotRechecked(t *testing.T) {
	if testing.Short() {
		t.Skip("changes some hundreds of numbers")
	}
	missed := map[string]bool{}
	text := demos()[0].json
	for key, paths := range leavesOf(t, text) {
		missed[key] = !noticed(t, text, paths)
	}
	var list []string
	for key, m := range missed {
		if m {
			list = append(list, key)
		}
	}
	slices.Sort(list)
	golden(t, uncheckedFile, strings.Join(list, "\n")+"\n")
}

func golden(t *testing.T, file, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if string(want) != got {
		t.Errorf("%s is\n%sand should be\n%s(run the test with -update to accept)", file, want, got)
	}
}

// leavesOf lists where each key's values stand: by the path without indexes, the paths with them.
func leavesOf(t *testing.T, text []byte) map[string][]mutation {
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	var tree any
	if err := d.Decode(&tree); err != nil {
		t.Fatal(err)
	}
	out := map[string][]mutation{}
	collect(out, tree, "", "")
	return out
}

func collect(out map[string][]mutation, v any, key, path string) {
	add := func(change string) { out[key] = append(out[key], mutation{path: path, change: change}) }
	switch v := v.(type) {
	case map[string]any:
		for k, inner := range v {
			if k == "line" || k == "column" {
				continue
			}
			collect(out, inner, strings.TrimSpace(key+" "+k), strings.TrimSpace(path+" "+k))
		}
	case []any:
		for i, inner := range v {
			collect(out, inner, key, path+" "+strconv.Itoa(i))
		}
	case bool:
		add("=" + strconv.FormatBool(!v))
	case json.Number:
		add("+1")
	}
}

// noticed tries a key's values, spread over the file, until one change is found out.
func noticed(t *testing.T, text []byte, all []mutation) bool {
	slices.SortFunc(all, func(a, b mutation) int { return strings.Compare(a.path, b.path) })
	const tries = 3
	for i := range tries {
		changed, err := all[i*(len(all)-1)/(tries-1)].apply(text)
		if err != nil {
			t.Fatal(err)
		}
		if len(recheck(changed)) > 0 {
			return true
		}
	}
	return false
}
