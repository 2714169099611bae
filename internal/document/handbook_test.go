package document

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the golden files")

const handbookFile = "../../docs/document.md"

func TestHandbookIsTheFile(t *testing.T) {
	if *update {
		if err := os.MkdirAll(filepath.Dir(handbookFile), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(handbookFile, Handbook(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(readFile(t, handbookFile), Handbook()) {
		t.Error("docs/document.md is not what the table of keys says; run the test with -update")
	}
}

// Every key says what it is, is used by the full document, and has an example that reads at its own place.
func TestEveryKey(t *testing.T) {
	full := string(readFile(t, "testdata/full.yaml"))
	keys := 0
	walkRows(root.shape, nil, func(k row, path []string) {
		keys++
		if k.what == "" || k.example == "" {
			t.Errorf("key %s has no words or no example", k.name)
		}
		if !strings.Contains(full, k.name+":") {
			t.Errorf("the full document does not use %s", k.name)
		}
		src := []byte("units: in\n" + nest(append(path, k.name), k.example))
		if k.name == "units" {
			src = []byte("units: in\n")
		}
		_, found := Read("example", src)
		for _, f := range found {
			if f.Code != "key-missing" && f.Code != "unknown-name" && f.Code != "not-located" && f.Code != "extent-missing" && f.Code != "currency-missing" && f.Code != "move-unknown" {
				t.Errorf("%s\n%s", src, line(f))
			}
		}
	})
	if keys < 100 {
		t.Errorf("only %d keys", keys)
	}
}

// nest writes a value under a path of keys.
func nest(path []string, value string) string {
	var b strings.Builder
	for i, k := range path {
		b.WriteString(strings.Repeat("  ", i) + k + ":")
		if i < len(path)-1 {
			b.WriteString("\n")
		}
	}
	return b.String() + " " + value + "\n"
}

// walkRows visits every key of every record, with the keys above it; a name of the user's is "A", a line "A-B".
func walkRows(s *shape, path []string, see func(row, []string)) {
	for _, a := range s.any {
		walkRows(a, path, see)
	}
	if s.item != nil && s.kind == namedShape {
		path = append(path[:len(path):len(path)], map[bool]string{true: "A-B", false: "A"}[s.names == "line"])
	}
	if s.item != nil {
		walkRows(s.item, path, see)
	}
	for _, k := range s.rows {
		see(k, path[:len(path):len(path)])
		walkRows(k.shape, append(path[:len(path):len(path)], k.name), see)
	}
}

func TestSchemaIsDeterministic(t *testing.T) {
	if !bytes.Equal(Schema(), Schema()) || !bytes.Equal(Handbook(), Handbook()) {
		t.Error("two runs differ")
	}
	if !json.Valid(Schema()) {
		t.Error("no JSON")
	}
}
